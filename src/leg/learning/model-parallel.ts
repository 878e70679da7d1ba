import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import { NoValueError } from '../no-value.js'
import type { Joint } from '../numbers.js'
import { springLawOf } from '../parallel-torque.js'
import { type SpringLaw, springTorqueAt } from '../parts/springs/law.js'
import { line } from '../run/index.js'
import { type Accuracy, errorOf } from './instrument-errors.js'
import { counterweightOf, counterweightPath } from './measured-joints.js'
import { fieldParameter, type LogModel, type Parameter } from './model.js'

/** The spring of a joint. Throws a `NoValueError` where it has none. */
function lawOf(leg: LegModel, joint: Joint): SpringLaw {
  const law = springLawOf(leg, joint)
  if (law === undefined) throw new NoValueError(`the ${joint} has no spring`)
  return law
}
/** Rate of the spring of a joint by document or wire. @internal */
export const springRateOf = (leg: LegModel, joint: Joint): number => {
  const { torsion, extension } = lawOf(leg, joint)
  return (torsion ?? extension)?.rate as number
}

/** Free lengths and initial tensions of springs from stock, half of what holds 95 % of them in standard deviations (assumption). */
const LENGTH_SIGMA = 0.01 / 1.96
const TENSION_SIGMA = 0.1 / 1.96
/** A weight on a kitchen scale. */
const MASS_SIGMA = 0.01 / 1.96
const TURN = 2 * Math.PI

/** What a log of a spring depends on, and the spring that it makes. */
function springParameters(leg: LegModel, joint: Joint, log: string) {
  const path = `joints.${joint}.spring`
  const { torsion, extension } = lawOf(leg, joint)
  const rate = fieldParameter(`${path}.rate`, `the rate of the spring of the ${joint}`, springRateOf(leg, joint), 0.05, `log ${log}`)
  if (torsion !== undefined) {
    const freeAngle: Parameter = {
      ...fieldParameter(`${path}.freeAngle`, `the free angle of the spring of the ${joint}`, torsion.freeAngle, 0.1, `log ${log}`),
      low: -TURN,
      high: TURN,
      scale: 'plain',
    }
    return {
      rate,
      learns: [rate.id, freeAngle.id],
      parameters: [rate, freeAngle],
      law: (at: (id: string) => number): SpringLaw => ({ torsion: { ...torsion, rate: at(rate.id), freeAngle: at(freeAngle.id) } }),
    }
  }
  const own = extension as NonNullable<typeof extension>
  const length = fieldParameter(
    `${path}.freeLength`,
    `the free length of the spring of the ${joint}`,
    own.freeLength,
    LENGTH_SIGMA,
    'measure it between the insides of the hooks with a calliper',
  )
  const tension = fieldParameter(
    `${path}.initialTension`,
    `the initial tension of the spring of the ${joint}`,
    own.initialTension,
    TENSION_SIGMA,
    'hang weights on the spring until its coils just open',
  )
  const opens = own.initialTension > 0
  return {
    rate,
    learns: [rate.id],
    parameters: opens ? [rate, length, tension] : [rate, length],
    law: (at: (id: string) => number): SpringLaw => ({
      extension: {
        ...own,
        rate: at(rate.id),
        freeLength: at(length.id),
        initialTension: opens ? at(tension.id) : 0,
      },
    }),
  }
}

/** Torque of a spring on its joint over the angle: what the joint pushes with it, less what it pushes without. @internal */
export function springModel(leg: LegModel, log: string, joint: Joint, accuracy: Accuracy): LogModel {
  const { parameters, learns, law } = springParameters(leg, joint, log)
  const [gain, zero] = [errorOf(log, 'springTorque', 'torque gain', accuracy), errorOf(log, 'springTorque', 'angle zero', accuracy)]
  return {
    log,
    parameters: [...parameters, gain, zero],
    learns,
    channels: 1,
    // Coils rub on each other and on their pin: a loop of a hundredth stays (assumption).
    closest: 0.01,
    predict: (at, rows) => {
      const spring = law(at)
      const [share, turned] = [1 + at(gain.id), at(zero.id)]
      return rows.map(([angle]) => springTorqueAt(spring, angle! + turned) * share)
    },
    measured: ([, loaded, bare]) => [loaded! - bare!],
  }
}

const balancing = line(
  'torque of a counterweight on its joint',
  { mass: 'mass', gravity: 'acceleration', beyond: 'length', angle: 'angle' },
  'torque',
  'mass · gravity · beyond · sin(angle)',
  (x) => x.mass * x.gravity * x.beyond * Math.sin(x.angle),
)

/** Torque of a counterweight on its joint over the angle of its link from hanging straight down. @internal */
export function weightModel(leg: LegModel, log: string, joint: Joint, accuracy: Accuracy): LogModel {
  const path = counterweightPath(joint)
  const own = counterweightOf(leg.x, joint)
  if (own === undefined) throw new NoValueError(`the link of the ${joint} has no counterweight`)
  const words = `of the counterweight at the ${joint}`
  const beyond = fieldParameter(`${path}.beyond`, `the distance ${words}`, own.beyond, 0.1, `log ${log}`)
  const mass = fieldParameter(`${path}.mass`, `the mass ${words}`, own.mass, MASS_SIGMA, 'weigh it with its screws on a kitchen scale')
  const [gain, zero] = [errorOf(log, 'weightTorque', 'torque gain', accuracy), errorOf(log, 'weightTorque', 'angle zero', accuracy)]
  return {
    log,
    parameters: [beyond, mass, gain, zero],
    learns: [beyond.id],
    channels: 1,
    closest: 0.01,
    predict: (at, rows) => {
      const [m, distance, share, turned] = [at(mass.id), at(beyond.id), 1 + at(gain.id), at(zero.id)]
      return rows.map(([angle]) => balancing.si({ mass: m, gravity: STANDARD_GRAVITY, beyond: distance, angle: angle! + turned }) * share)
    },
    measured: ([, loaded, bare]) => [loaded! - bare!],
  }
}
