import type { Quantity } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { beltOrCordOf } from '../second-stage.js'
import { motorAngle } from '../workshop-lines.js'
import { angle, ratio } from './bench.js'
import type { GravityTerms } from './control-gains.js'
import type { JointControl } from './control-joint.js'
import { phrase } from './sheet-units.js'
import { type ThroughGeometry, throughGeometry } from './through-geometry.js'

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

/** How the motors follow the joints where rod, belt or cord drives the knee from a drum on the hip axis. */
export interface ThroughHip {
  /** From one limit of the knee to the other. */
  readonly rows: readonly ThroughHipRow[]
  /** Angles, torques and gravity of both drums, and what the controllers cannot know. */
  readonly rules: readonly string[]
}

/** Rows of the table from one end of the knee's travel to the other. */
const ROWS = 9

/** How the motors follow the joints; absent where the motor of the knee turns with the knee alone. @internal */
export function throughHip(leg: LegModel, knee: JointControl, gravity: GravityTerms): ThroughHip | undefined {
  const through = throughGeometry(leg.x)
  return through && { rows: rowsOf(through, knee), rules: [...rulesOf(through, knee, gravity), ...lossesOf(leg)] }
}

/** Losses between hip axis and knee that the controllers cannot measure; a rod has next to none. */
function lossesOf({ x }: LegModel): readonly string[] {
  const second = beltOrCordOf(x)
  if (second === undefined) return []
  return [
    `The ${second.kind} along the upper link loses ${ratio(1 - second.efficiency)
      .in('%')
      .toFixed(
        0,
      )} %: the drum of the knee bears its torque over ${second.efficiency} while it drives the knee, and times ${second.efficiency} while the knee drives it.`,
  ]
}

function rowsOf(through: ThroughGeometry, { sign, ratio: turns }: JointControl): ThroughHipRow[] {
  return Array.from({ length: ROWS }, (_, i) => {
    const knee = through.lowest + ((through.highest - through.lowest) * i) / (ROWS - 1)
    const drum = through.drum(0, knee)
    return {
      kneeAngle: angle(knee),
      drumAngle: angle(drum),
      motorAngle: angle(motorAngle.si({ sign, ratio: turns.si, drum })),
      ratio: ratio(through.ratio(knee)),
    }
  })
}

const PROTECTED = { rod: 'rod and rod pins', belt: 'the belt along the upper link', cord: 'the cord along the upper link' } as const

function rulesOf(through: ThroughGeometry, { sign, ratio: turns }: JointControl, { thigh, shank, springs }: GravityTerms): string[] {
  const zero =
    through.zeroKnee === 0
      ? 'a straight knee'
      : phrase`the knee at ${angle(through.zeroKnee)}, because the rod does not reach at a straight knee`
  return [
    `The drum of the knee turns by the hip angle and by the drum angle of the table. Its motor turns ${Number((sign < 0 ? -turns.si : turns.si).toPrecision(5))} times as far. Zero is the upper link straight down and ${zero}.`,
    'Torque of the drum of the knee: torque of the knee over the ratio of the table. Torque of the drum of the hip: torque of the hip less that of the drum of the knee.',
    phrase`Gravity at the drums, leg in the air and the body level: hip ${thigh} × sin(hip) + ${shank} × (1 − 1/ratio) × sin(hip + knee); knee ${shank} / ratio × sin(hip + knee).`,
    ...(springs.length === 0
      ? []
      : [
          'Take the torque of a spring, listed with the gravity of the joints, off that of its joint first. The drums hold the rest by the same rule.',
        ]),
    'When the hip turns and the motor of the knee stands still, the knee turns back by the hip angle over the ratio.',
    'A controller knows the angle of its own motor. One program must turn both angles into those of hip and knee, and hold the soft limits there: one angle of the motor of the knee is another knee angle at each hip angle.',
    `Torque, stiffness, inertia, gains and current limits of the knee are at its drum. The limits protect ${PROTECTED[through.kind]} as well, ${through.kind === 'rod' ? 'at the knee angle where these bear most' : 'with its own losses and age'}.`,
  ]
}
