import { hexNut, metricThread, washer } from '../../fasteners/index.js'
import type { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { bearingsOf, bossAt, cordJoints, drivenJoints, JOINTS, type Joint, jointOf, motorOf, partOf, pinAt, shaftOf } from '../numbers.js'
import { type BearingNumbers, bearingOf } from '../schema/tables.js'
import { length } from './bench.js'
import { screwBetween } from './catalogue-lengths.js'
import { type CordCut, cordCut } from './cord-cut.js'
import { type PinCut, pinCut } from './pin-cut.js'

/** The hip shaft to make from a bolt. */
export interface ShaftCut {
  /** Thread of the bolt that the shaft is made from. */
  readonly thread: string
  /** Property class of that bolt. */
  readonly propertyClass: string
  /** From the outer face of the far bearing to the plane of the leg; what head and hub need comes on top. */
  readonly leastLength: Quantity<'length'>
  /** Thread of the hole in the shaft's end. */
  readonly innerThread: string
  /** Core hole for the inner thread: its nominal diameter less its pitch. */
  readonly tapDrill: Quantity<'length'>
  /** Full thread, and the drilled depth with three pitches of run-out. */
  readonly threadDepth: Quantity<'length'>
  /** Depth to drill, with three pitches of run-out. */
  readonly drillDepth: Quantity<'length'>
}

/** Bolts to lay out. */
export interface BoltCut {
  /** Name of the group. */
  readonly group: string
  /** Thread of the bolts. */
  readonly thread: string
  /** Property class of the bolts. */
  readonly propertyClass: string
  /** For one leg: the group of a motor counts for each joint that has it. */
  readonly count: number
  /** Grip, washers, nut and two pitches that stand out; into tapped metal one diameter instead of a nut. */
  readonly leastLength: Quantity<'length'>
  /** Into a tapped motor: grip, washer and depth of its thread. A longer screw shorts the winding. Absent with a nut. */
  readonly mostLength: Quantity<'length'> | undefined
  /** Length to buy; absent where the catalogue has none that is long enough and not too long. */
  readonly catalogue: Quantity<'length'> | undefined
}

/** Parts to cut and lay out before assembly. */
export interface CutList {
  /** Cords to cut from the spool. */
  readonly cords: readonly CordCut[]
  /** Pins to cut or to order. */
  readonly pins: readonly PinCut[]
  /** Absent for a leg without a hip shaft. */
  readonly shaft: ShaftCut | undefined
  /** Bolts to lay out, group by group. */
  readonly bolts: readonly BoltCut[]
}

/** Cut list of a leg. `tail` is SI. @internal */
export function cutList(leg: LegModel, tail: number, threadDepth?: number): CutList {
  return {
    cords: cordJoints(leg.x).map((joint) => cordCut(leg, joint, tail)),
    pins: pressedJoints(leg.x).map((joint) => {
      const { size, lugThickness, gap } = pinAt(leg.x, joint)
      return pinCut(joint, size, lugThickness + 2 * gap, bossAt(leg.x, joint).engagement)
    }),
    shaft: leg.x.joints.hip.shaft === undefined ? undefined : shaftCut(leg),
    bolts: boltGroups(leg.x).map((group) => boltCut(leg, group, threadDepth)),
  }
}

/** Depth of the thread in a motor, in diameters, where neither its document nor a measurement has it. */
export const DEPTH = 1.5
/** Run-out of a tap in a blind hole, in pitches. */
const RUN_OUT = 3

function shaftCut({ x }: LegModel): ShaftCut {
  const [shaft, bearings, inner] = [shaftOf(x), bearingsOf(x), metricThread.si(shaftOf(x).innerThread)]
  return {
    thread: shaft.thread,
    propertyClass: shaft.propertyClass,
    leastLength: length((bearingOf(bearings.size, bearings.own) as BearingNumbers).width / 2 + bearings.spacing + bearings.overhang),
    innerThread: shaft.innerThread,
    tapDrill: length(inner.diameter - inner.pitch),
    threadDepth: length(shaft.innerEngagement),
    drillDepth: length(shaft.innerEngagement + RUN_OUT * inner.pitch),
  }
}

/** Joints with a pin that is pressed into a boss. @internal */
export const pressedJoints = (x: LegNumbers): readonly Joint[] =>
  JOINTS.filter((joint) => x.joints[joint].pin !== undefined && x.joints[joint].boss !== undefined)

/** Groups of bolts of a leg, those of the motors first. @internal */
export const boltGroups = (x: LegNumbers): readonly string[] => {
  const ofMotors = drivenJoints(x).map((joint) => jointOf(x, joint).motorBolts)
  return [...new Set([...ofMotors, ...Object.keys(x.bolts)])].filter((name) => name !== undefined)
}

function boltCut({ x }: LegModel, group: string, threadDepth?: number): BoltCut {
  const bolts = partOf(x.bolts, group, 'group of bolts')
  const { diameter, pitch } = metricThread.si(bolts.thread)
  const grip = bolts.stack.reduce((sum, { thickness }) => sum + thickness, 0)
  const tapped = bolts.nut === 'tappedMetal'
  const washers = bolts.washers ? (tapped ? 1 : 2) * washer.si(bolts.thread).thickness : 0
  const hold = tapped ? diameter : hexNut.si(bolts.thread).height + 2 * pitch
  const min = grip + washers + hold
  const held = drivenJoints(x).filter((joint) => jointOf(x, joint).motorBolts === group)
  const depths = held.map((joint) => motorOf(x, joint).tapDepth)
  // Motors that share a group share its screws: the shallowest holes count.
  const depth = threadDepth ?? Math.min(...(depths.length > 0 ? depths : [undefined]).map((depth) => depth ?? DEPTH * diameter))
  const max = tapped ? grip + washers + depth : undefined
  const screw = screwBetween(min, max ?? min + 2 * diameter + 5e-3)
  return {
    group,
    thread: bolts.thread,
    propertyClass: bolts.propertyClass,
    count: bolts.count * Math.max(1, held.length),
    leastLength: length(min),
    mostLength: max === undefined ? undefined : length(max),
    catalogue: screw === undefined ? undefined : length(screw),
  }
}
