import { commutationError, shaftMagnetErrorBound, shaftMagnetField } from '../../kinematics/index.js'
import { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { drivenJoints, motorOf, type OfDrivenJoints, ofDrivenJoints } from '../numbers.js'
import { angle, length, ratio } from './bench.js'
import { driveFacts } from './drive-facts.js'
import { throughGeometry } from './through-geometry.js'

/** The angle error of an encoder over a shaft magnet that is mounted so far off. */
export interface MagnetError {
  /** Gap between the sensor and the magnet. */
  readonly gap: Quantity<'length'>
  /** Offset of sensor and of magnet, each. */
  readonly offset: Quantity<'length'>
  /** Lean of sensor and of magnet, each. */
  readonly tilt: Quantity<'angle'>
  /** Field at the sensor. */
  readonly field: Quantity<'magneticFluxDensity'>
  /** Largest error at the motor, every direction at its worst, and at the joints. */
  readonly atMotor: Quantity<'angle'>
  /** The same error at each joint, through its reduction. */
  readonly atJoint: OfDrivenJoints<Quantity<'angle'>>
  /** Torque left of what the current would make; absent without pole pairs. */
  readonly torqueLeft: Quantity<'ratio'> | undefined
}

/** A usual magnet: a disc of 6 mm by 2.5 mm, sintered neodymium. */
export const MAGNET = { radius: 3e-3, length: 2.5e-3, remanence: 1.2 } as const
const GAPS = [1e-3, 1.5e-3, 2.5e-3]
const DEGREE = Math.PI / 180
/** Offsets and leans of a jig and of a mount by eye. */
const MOUNTS = [
  [0.1e-3, DEGREE],
  [0.3e-3, DEGREE],
  [0.3e-3, 3 * DEGREE],
] as const

/** Errors of the encoder by gap, offset and tilt. @internal */
export function magnetErrors(leg: LegModel): MagnetError[] {
  const pairs = Math.max(...drivenJoints(leg.x).map((joint) => motorOf(leg.x, joint).polePairs ?? 0))
  return GAPS.flatMap((gap) => {
    const { field, curvature, slope } = shaftMagnetField.si({ ...MAGNET, gap })
    return MOUNTS.map(([offset, tilt]): MagnetError => {
      const { firstHarmonic, secondHarmonic } = shaftMagnetErrorBound.si({
        curvature,
        slope,
        sensorOffset: offset,
        sensorLean: tilt,
        magnetOffset: offset,
        magnetLean: tilt,
      })
      const error = firstHarmonic + secondHarmonic
      return {
        gap: length(gap),
        offset: length(offset),
        tilt: angle(tilt),
        field: new Quantity(field, 'magneticFluxDensity'),
        atMotor: angle(error),
        atJoint: ofDrivenJoints(leg.x, (joint) => angle(joint === 'knee' ? kneeError(leg, error) : error / driveFacts(leg, joint).ratio)),
        torqueLeft: pairs === 0 ? undefined : ratio(commutationError.si({ angleError: error, polePairs: pairs }).torqueLeft),
      }
    })
  })
}

/** Largest error of the knee for one of both motors. From a drum on the hip axis the error of the hip's drum enters it as well. */
function kneeError(leg: LegModel, error: number): number {
  const through = throughGeometry(leg.x)
  const knee = error / driveFacts(leg, 'knee').ratio
  if (through === undefined) return knee
  const atDrums = knee + error / driveFacts(leg, 'hip').ratio
  return through.most((knee) => atDrums / Math.abs(through.ratio(knee)))
}
