import { cordToCut } from '../../capstan/index.js'
import type { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { bondedEndOf, type DrivenJoint, driveOf } from '../numbers.js'
import { benchDrive, inMillimetres, length } from './bench.js'

/** A cord to cut from the spool. */
export interface CordCut {
  /** Joint of the drive. */
  readonly joint: DrivenJoint
  /** Name of the cord in the document. */
  readonly cord: string
  /** Length to cut, with both tails and end fittings. */
  readonly cutLength: Quantity<'length'>
  /** Anchor to anchor along its way. */
  readonly workingLength: Quantity<'length'>
  /** From end fitting to end fitting, laid straight without tension: the way and the slack that assembly needs. */
  readonly betweenEnds: Quantity<'length'>
  /** Free tail at each end. */
  readonly tail: Quantity<'length'>
  /** Cord inside each end fitting. */
  readonly endLength: Quantity<'length'>
  /** How the ends are finished. */
  readonly ends: string
  /** Where to clamp it on the pinion, from one cut end; absent where friction alone holds it. */
  readonly clampAt: Quantity<'length'> | undefined
}

/** Cord inside one end, in cord diameters (a bonded ferrule has its own length). */
export const END_DIAMETERS = { splice: 72, swagedSleeve: 12, knot: 30 } as const

/** Cord inside one end of a drive, SI. @internal */
function endLengthOf({ x, drives }: LegModel, joint: DrivenJoint): number {
  const { ends } = driveOf(x, joint, 'cord')
  if (ends === 'bondedFerrule') return bondedEndOf(x, joint)?.length ?? 0
  return END_DIAMETERS[ends] * drives[joint].cord.diameter
}

/** The cord of a joint's drive to cut. `tailLength` is SI. @internal */
export function cordCut(leg: LegModel, joint: DrivenJoint, tailLength: number): CordCut {
  const drive = driveOf(leg.x, joint, 'cord')
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
    cord: `${drive.cord} (${cord.fibre}, ${inMillimetres(cord.diameter)})`,
    cutLength: length(cutLength + drive.tensioner.slackAtAssembly),
    workingLength: length(workingLength),
    betweenEnds: length(workingLength + drive.tensioner.slackAtAssembly),
    tail: length(tailLength),
    endLength: length(endLength),
    ends: drive.ends,
    clampAt: drive.hold === 'clampedMidPinion' ? length((cutLength + drive.tensioner.slackAtAssembly) / 2) : undefined,
  }
}
