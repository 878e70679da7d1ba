import { windupModel } from '../../src/leg/learning/model-cord.js'
import { heatingModel } from '../../src/leg/learning/model-heating.js'
import type { LegModel } from '../../src/leg/leg-model.js'
import { driveOf, type Joint } from '../../src/leg/numbers.js'
import { type RandomStream, randomStream } from '../../src/numeric/index.js'

/** One simulated log with an error or misfit that the estimator is not told of, and the fields that it was made with. */
export interface Stand {
  readonly log: string
  readonly text: string
  readonly truth: Readonly<Record<string, number>>
}

/** One kind of systematic error. */
export interface Fault {
  readonly what: string
  readonly make: (leg: LegModel, random: RandomStream) => Stand
  /** Whether any answer but a refusal is a failure. */
  readonly gross?: boolean
}

const HOURS_OF_YEAR = 8766
const DAYS = [0.042, 0.08, 0.17, 0.42, 0.7, 1, 2, 3, 5, 7, 10, 14, 20, 30]

interface Decay {
  readonly gain?: number
  readonly zero?: number
  readonly perDay?: number
  readonly share?: (hours: number, a: number) => number
}
const logarithmic = (hours: number, a: number) => 1 / (1 + a * Math.log10(Math.max(1, hours)))
const powerLaw = (hours: number, a: number) => Math.max(1, hours) ** (-a * 0.43)
/** Losses by the decade, and a part that is over after a day. */
const twoStage = (hours: number, a: number) => logarithmic(hours, a) * (1 - 0.03 * (1 - Math.exp(-hours / 12)))

const decay =
  ({ gain = 0, zero = 0, perDay = 0, share = logarithmic }: Decay) =>
  (_: LegModel, random: RandomStream): Stand => {
    const [start, a] = [random.uniformBetween(165, 205), random.uniformBetween(0.02, 0.06)]
    const rows = DAYS.map((days) => {
      const read = (start * share(24 * days, a) + perDay * days) * (1 + gain) + zero + random.normal(0, 0.5)
      return `${days},${read.toFixed(1)}`
    })
    return {
      log: 'pretension knee',
      text: `time [day],tension [N]\n${rows.join('\n')}\n`,
      truth: { 'joints.knee.drive.pretension': start, 'cords.braid.pretensionLeft': share(HOURS_OF_YEAR, a) },
    }
  }

const friction =
  ({ drag = 0, wrap = 0 }: { drag?: number; wrap?: number }) =>
  (_: LegModel, random: RandomStream): Stand => {
    const mu = random.uniformBetween(0.1, 0.2)
    const rows = [0.5, 0.5, 0.5, 1, 1, 1, 1.5, 1.5, 1.5].map((turns) => {
      const own = mu * (1 + random.normal(0, 0.03))
      return `5,${(5 * Math.exp(own * 2 * Math.PI * (turns + wrap)) * (1 + drag)).toFixed(2)},${turns}`
    })
    return {
      log: 'cordFriction knee',
      text: `slack tension [N],taut tension [N],wrap angle [turn]\n${rows.join('\n')}\n`,
      truth: { 'joints.knee.drive.friction': mu },
    }
  }

const windup =
  ({ frame = 0, torque = 0, mu, tension }: { frame?: number; torque?: number; mu?: number; tension?: number }) =>
  (leg: LegModel, random: RandomStream): Stand => {
    const model = windupModel(leg, 'windup knee', 'knee', { 'torque gain': 1, 'angle gain': 1, 'frame give': 1 })
    const rigidity = 24e3 * random.uniformBetween(0.85, 1.15)
    const value: Record<string, number> = {
      'cords.braid.axialRigidity': rigidity,
      'joints.knee.drive.friction': mu ?? leg.drives.knee.friction,
      'joints.knee.drive.pretension': tension ?? driveOf(leg.x, 'knee', 'cord').pretension,
      'windup knee: frame give': frame,
      'windup knee: torque gain': torque,
    }
    const torques = [0, 1, 2, 3, 4, 5, 6, 7, 8, 7, 6, 5, 4, 3, 2, 1, 0]
    const angles = model.predict(
      (id) => value[id] ?? 0,
      torques.map((x) => [x, 0]),
    )
    const rows = torques.map((x, i) => `${x},${((angles[i]! * 180) / Math.PI + random.normal(0.1, 0.008)).toFixed(3)}`)
    return {
      log: 'windup knee',
      text: `joint torque [N m],joint angle [deg]\n${rows.join('\n')}\n`,
      truth: { 'cords.braid.axialRigidity': rigidity },
    }
  }

const heating =
  ({ mount = 0, current = 0, column = 1 }: { mount?: number; current?: number; column?: number }) =>
  (leg: LegModel, random: RandomStream): Stand => {
    const accuracy = { 'current gain': 1, 'resistance gain': 1, 'temperature zero': 1 }
    const model = heatingModel(leg, 'heating', 'knee', accuracy)
    const value: Record<string, number> = {
      'motors.main.windingToMount': 0.7 * random.uniformBetween(0.85, 1.15),
      'environment.coolingFactor': random.uniformBetween(0.85, 1.15),
      'motors.main.specificHeat': 450 * random.uniformBetween(0.95, 1.15),
    }
    const at = (id: string) => value[id] ?? 0
    // The loss depends on the winding, and the winding on the loss: twice round is enough.
    let rows: number[][] = Array.from({ length: 16 }, (_, i) => [240 * i, 12, 293 + 20 * (1 - Math.exp(-i / 5)), 293, 293])
    for (let round = 0; round < 3; round++) {
      const predicted = model.predict(at, rows)
      rows = rows.map(([time, ampere, , first, air], i) => {
        const own = i === 0 ? first! : predicted[2 * i + 1]!
        return [time!, ampere!, own + predicted[2 * i]!, own, air!]
      })
    }
    const text = rows.map(([time, ampere, winding, cooler, air]) =>
      [
        time! / 60,
        (ampere! * (1 + current) * column).toFixed(2),
        (winding! - 273.15 + random.normal(0, 0.2)).toFixed(1),
        (cooler! - 273.15 + mount + random.normal(0, 0.15)).toFixed(1),
        (air! - 273.15 + random.normal(0, 0.1)).toFixed(1),
      ].join(','),
    )
    const head = 'time [min],peak phase current [A],winding temperature [degC],mount temperature [degC],air temperature [degC]'
    return { log: 'heating', text: `${head}\n${text.join('\n')}\n`, truth: value }
  }

/** Systematic errors and misfits, none of which the estimator is told of. */
export const FAULTS: readonly Fault[] = [
  { what: 'nothing wrong: decay of the pretension', make: decay({}) },
  { what: 'load cell 2 % high', make: decay({ gain: 0.02 }) },
  { what: 'load cell reads 1.5 N too much at zero', make: decay({ zero: 1.5 }) },
  { what: 'room warms by 3 K over the month', make: decay({ perDay: (3 * 2.4) / 30 }) },
  { what: 'cord relaxes by a power law of time', make: decay({ share: powerLaw }) },
  { what: 'cord relaxes in two stages', make: decay({ share: twoStage }) },
  { what: 'nothing wrong: friction', make: friction({}) },
  { what: 'pulley takes 3 % of the pull', make: friction({ drag: 0.03 }) },
  { what: 'wrap 8 deg more than written', make: friction({ wrap: 8 / 360 }) },
  { what: 'nothing wrong: windup', make: windup({}) },
  { what: 'frame gives a tenth of what the drive gives', make: windup({ frame: 0.1 }) },
  { what: 'friction 0.20 and pretension 175 N, not measured', make: windup({ mu: 0.2, tension: 175 }) },
  { what: 'arm 1.5 % longer than written', make: windup({ torque: -0.015 }) },
  { what: 'nothing wrong: heating curve', make: heating({}) },
  { what: 'mount thermometer 1.5 K low', make: heating({ mount: -1.5 }) },
  { what: 'current read 1.5 % high', make: heating({ current: 0.015 }) },
  { what: 'rms current in the column of peak current', make: heating({ column: Math.SQRT1_2 }), gross: true },
]

/** Simulated stands of one fault; the same numbers at every run. */
export const standsOf = (leg: LegModel, { make }: Fault, count: number, seed: number): Stand[] =>
  Array.from({ length: count }, (_, i) => make(leg, randomStream(seed, i)))

/** Joint of a log. */
export const jointOf = (log: string): Joint => (log.endsWith('hip') ? 'hip' : 'knee')
