import { cordToCut } from '../../capstan/index.js'
import { hexNut, metricThread, washer } from '../../fasteners/index.js'
import type { Quantity } from '../../units/index.js'
import { JOINTS, type Joint, type Prepared } from '../numbers.js'
import { benchDrive, length } from './bench.js'

/** A cord to cut from the spool. */
export interface CordCut {
  readonly joint: Joint
  readonly cord: string
  /** What to cut, both tails and end fittings in it. */
  readonly cutLength: Quantity<'length'>
  /** Anchor to anchor along its way. */
  readonly workingLength: Quantity<'length'>
  /** From end fitting to end fitting, laid straight without tension: the way and the slack that assembly needs. */
  readonly betweenEnds: Quantity<'length'>
  /** Free tail at each end. */
  readonly tail: Quantity<'length'>
  /** Cord inside each end fitting. */
  readonly endLength: Quantity<'length'>
  readonly ends: string
  /** Where to clamp it on the pinion, from one cut end; absent where friction alone holds it. */
  readonly clampAt: Quantity<'length'> | undefined
}

/** A pin to cut, or the length to order it in. */
export interface PinCut {
  readonly joint: Joint
  readonly size: string
  /** Both bosses, the lug and its gaps. */
  readonly length: Quantity<'length'>
}

/** The hip shaft to make from a bolt. */
export interface ShaftCut {
  readonly thread: string
  readonly propertyClass: string
  /** From the outer face of the far bearing to the plane of the leg; what head and hub need comes on top. */
  readonly leastLength: Quantity<'length'>
  readonly innerThread: string
  /** Core hole for the inner thread: its nominal diameter less its pitch. */
  readonly tapDrill: Quantity<'length'>
  /** Full thread, and the drilled depth with three pitches of run-out. */
  readonly threadDepth: Quantity<'length'>
  readonly drillDepth: Quantity<'length'>
}

/** Bolts to lay out. */
export interface BoltCut {
  readonly group: 'stack' | 'motor'
  readonly thread: string
  readonly propertyClass: string
  /** For one leg: the motor's group counts twice. */
  readonly count: number
  /** Grip, washers, nut and two pitches that stand out; into tapped metal one and a half diameters instead of a nut. */
  readonly leastLength: Quantity<'length'>
}

/** What to cut and lay out before assembly. */
export interface CutList {
  readonly cords: readonly CordCut[]
  readonly pins: readonly PinCut[]
  readonly shaft: ShaftCut
  readonly bolts: readonly BoltCut[]
}

/** Cord inside one end, in cord diameters (a bonded ferrule has its own length). */
export const END_DIAMETERS = { splice: 72, swagedSleeve: 12, knot: 30 } as const

/** Cut list of a leg. `tail` is SI. @internal */
export function cutList(leg: Prepared, tail: number): CutList {
  return {
    cords: JOINTS.map((joint) => cordCut(leg, joint, tail)),
    pins: JOINTS.map((joint) => {
      const { size, lugThickness, gap } = leg.x.pins[joint]
      return { joint, size, length: length(lugThickness + 2 * (gap + leg.x.bosses[joint].engagement)) }
    }),
    shaft: shaftCut(leg),
    bolts: [boltCut(leg, 'motor'), boltCut(leg, 'stack')],
  }
}

/** Cord inside one end of a drive, SI. @internal */
export function endLengthOf({ x, drives }: Prepared, joint: Joint): number {
  const { ends } = x.drives[joint]
  if (ends === 'bondedFerrule') return x.bondedEnd?.length ?? 0
  return END_DIAMETERS[ends] * drives[joint].cord.diameter
}

function cordCut(leg: Prepared, joint: Joint, tailLength: number): CordCut {
  const drive = leg.x.drives[joint]
  const { cord } = leg.drives[joint]
  const { span, drumRadius, drumWrap, pinionRadius, pinionWrap } = benchDrive(leg, joint)
  const endLength = endLengthOf(leg, joint)
  const { cutLength, workingLength } = cordToCut.si({
    span,
    drumRadius,
    drumWrapTotal: 2 * drumWrap,
    pinionRadius,
    pinionWrap,
    groovePitch: drive.drum.groovePitch,
    endLength,
    tailLength,
    // Laid without tension: the tensioner takes up all stretch.
    strain: 0,
  })
  return {
    joint,
    cord: `${drive.cord} (${cord.fibre}, ${length(cord.diameter)})`,
    cutLength: length(cutLength + drive.tensioner.slackAtAssembly),
    workingLength: length(workingLength),
    betweenEnds: length(workingLength + drive.tensioner.slackAtAssembly),
    tail: length(tailLength),
    endLength: length(endLength),
    ends: drive.ends,
    clampAt: drive.hold === 'clampedMidPinion' ? length((cutLength + drive.tensioner.slackAtAssembly) / 2) : undefined,
  }
}

/** Run-out of a tap in a blind hole, in pitches. */
const RUN_OUT = 3

function shaftCut({ x, bearing }: Prepared): ShaftCut {
  const { shaft, bearings } = x
  const inner = metricThread.si(shaft.innerThread)
  return {
    thread: shaft.thread,
    propertyClass: shaft.propertyClass,
    leastLength: length(bearings.spacing + bearing.width + bearings.overhang),
    innerThread: shaft.innerThread,
    tapDrill: length(inner.diameter - inner.pitch),
    threadDepth: length(shaft.innerEngagement),
    drillDepth: length(shaft.innerEngagement + RUN_OUT * inner.pitch),
  }
}

function boltCut({ x }: Prepared, group: 'stack' | 'motor'): BoltCut {
  const bolts = x.bolts[group]
  const { diameter, pitch } = metricThread.si(bolts.thread)
  const grip = bolts.stack.reduce((sum, { thickness }) => sum + thickness, 0)
  const tapped = bolts.nut === 'tappedMetal'
  const washers = bolts.washers ? (tapped ? 1 : 2) * washer.si(bolts.thread).thickness : 0
  const hold = tapped ? 1.5 * diameter : hexNut.si(bolts.thread).height + 2 * pitch
  return {
    group,
    thread: bolts.thread,
    propertyClass: bolts.propertyClass,
    count: bolts.count * (group === 'motor' ? JOINTS.length : 1),
    leastLength: length(grip + washers + hold),
  }
}
