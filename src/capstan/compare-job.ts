import type { Given } from '../formula/index.js'
import { type FrictionRange, RANGE } from './drive-specification.js'

/** Job of the three reductions, as `compareReductions` reads it. */
export const JOB = {
  /** Torque at the joint, the same for all three. */
  torque: { kind: 'torque', above: 0 },
  /** Radius of the wheel on the joint: centre line of the drum, pitch circle of belt pulley and gear. */
  wheelRadius: { kind: 'length', above: 0 },
  /** Required reduction; belt and gear take the nearest whole teeth. */
  ratio: { kind: 'ratio', min: 1 },
  /** Distance of the axes for cord and belt; the gears' own follows from their teeth. */
  centreDistance: { kind: 'length', above: 0 },
  /** Axial room: width of the belt, face width of the gears. */
  width: { kind: 'length', above: 0 },
  cord: {
    fields: {
      /** Axial rigidity of the bedded-in cord. */
      axialRigidity: { kind: 'axialRigidity', above: 0 },
      /** Tension of both spans at rest. */
      pretension: { kind: 'force', above: 0 },
      /** Friction, cord on pinion and drum: low and high end. */
      friction: RANGE,
      /** Full turns of cord on the pinion besides the part turn between the spans. */
      pinionTurns: { kind: 'count', min: 0 },
      /** Wrap on the drum from tangent point to anchor, each side. */
      drumWrap: { kind: 'angle', above: 0 },
      /** Whether friction alone holds the cord on the pinion or a clamp in the middle of its wraps. */
      hold: { oneOf: ['frictionOnly', 'clampedMidPinion'], default: 'frictionOnly' },
      /** Highest tension the cord may carry, ends and bends counted. */
      allowableTension: { kind: 'force', above: 0 },
    },
  },
  /** The toothed belt. */
  belt: {
    fields: {
      /** Pitch of the teeth. */
      pitch: { kind: 'length', above: 0 },
      /** Width of a tooth at its root, along the belt. */
      rootWidth: { kind: 'length', above: 0 },
      /** Shear stress the teeth may carry. */
      allowableShear: { kind: 'stress', above: 0 },
      /** Axial rigidity of the belt at this width. */
      axialRigidity: { kind: 'axialRigidity', above: 0 },
      /** Tension of both spans at rest; half the tangential force keeps the slack span from going loose. */
      pretension: { kind: 'force', above: 0 },
      /** Clearance between a tooth and its groove, along the pitch line. Default: a prior of ours. */
      backlash: { kind: 'length', min: 0, optional: true },
    },
  },
  /** The pair of spur gears. */
  gear: {
    fields: {
      /** Module. */
      module: { kind: 'length', above: 0 },
      /** Bending stress the tooth root may carry. */
      allowableStress: { kind: 'stress', above: 0 },
      /** Backlash along the pitch circle. Default: the least of the standard. */
      backlash: { kind: 'length', min: 0, optional: true },
    },
  },
} as const

type Specified = Given<typeof JOB>
/** The job that the three reductions are compared at. */
export type ReductionJob = Omit<Specified, 'cord'> & {
  /** The cord drive. */
  readonly cord: Omit<Specified['cord'], 'friction'> & {
    /** Friction of the cord on the pulleys: a number, an interval or a property. */
    readonly friction: FrictionRange
  }
}
