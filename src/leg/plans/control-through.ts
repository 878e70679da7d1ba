import type { Quantity } from '../../units/index.js'
import type { Prepared } from '../numbers.js'
import { angle, ratio } from './bench.js'
import type { GravityTerms } from './control-gains.js'
import type { JointControl } from './control-joint.js'
import { type RodGeometry, rodGeometry } from './rod-geometry.js'

/** A knee angle with the angles of drum and motor, thigh straight down, and the turns of the drum for one of the knee. */
export interface ThroughHipRow {
  /** Angle of the knee. */
  readonly kneeAngle: Quantity<'angle'>
  /** Angle of its drum. */
  readonly drumAngle: Quantity<'angle'>
  /** Angle of its motor, with sign. */
  readonly motorAngle: Quantity<'angle'>
  /** Turns of the drum for one of the knee. */
  readonly ratio: Quantity<'ratio'>
}

/** How the motors follow the joints where a rod drives the knee from a drum on the hip axis. */
export interface ThroughHip {
  /** From one limit of the knee to the other. */
  readonly rows: readonly ThroughHipRow[]
  /** Angles, torques and gravity of both drums, and what the controllers cannot know. */
  readonly rules: readonly string[]
}

/** Rows of the table from one end of the knee's travel to the other. */
const ROWS = 9

/** How the motors follow the joints; absent where the motor of the knee turns with the knee alone. @internal */
export function throughHip(leg: Prepared, knee: JointControl, gravity: GravityTerms): ThroughHip | undefined {
  const rod = rodGeometry(leg.x)
  return rod && { rows: rowsOf(rod, knee), rules: rulesOf(rod, knee, gravity) }
}

function rowsOf(rod: RodGeometry, { sign, ratio: turns }: JointControl): ThroughHipRow[] {
  return Array.from({ length: ROWS }, (_, i) => {
    const knee = rod.lowest + ((rod.highest - rod.lowest) * i) / (ROWS - 1)
    const drum = rod.drum(0, knee)
    return { kneeAngle: angle(knee), drumAngle: angle(drum), motorAngle: angle(sign * turns.si * drum), ratio: ratio(rod.ratio(knee)) }
  })
}

function rulesOf(rod: RodGeometry, { sign, ratio: turns }: JointControl, { thigh, shank }: GravityTerms): string[] {
  const zero =
    rod.zeroKnee === 0 ? 'a straight knee' : `the knee at ${angle(rod.zeroKnee)}, because the rod does not reach at a straight knee`
  return [
    `The drum of the knee turns by the hip angle and by the drum angle of the table. Its motor turns ${Number((sign * turns.si).toPrecision(5))} times as far. Zero is the thigh straight down and ${zero}.`,
    'Torque of the drum of the knee: torque of the knee over the ratio of the table. Torque of the drum of the hip: torque of the hip less that of the drum of the knee.',
    `Gravity at the drums, leg in the air and the body level: hip ${thigh} × sin(hip) + ${shank} × (1 − 1/ratio) × sin(hip + knee); knee ${shank} / ratio × sin(hip + knee).`,
    'When the hip turns and the motor of the knee stands still, the knee turns back by the hip angle over the ratio.',
    'A controller knows the angle of its own motor. One program must turn both angles into those of hip and knee, and hold the soft limits there: one angle of the motor of the knee is another knee angle at each hip angle.',
    'Torque, stiffness, inertia, gains and current limits of the knee are at its drum. The limits protect rod and rod pins as well, at the knee angle where these bear most.',
  ]
}
