import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { describeLeg } from '../../src/leg/index.js'
import { estimate } from '../../src/leg/learning/estimate.js'
import type { MeasurementId } from '../../src/leg/learning/measurements.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { type RandomStream, randomStream } from '../../src/numeric/index.js'
import { jointOf } from './simulated-stands.js'

const read = (name: string) => benchLeg(describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')))
const legs = { cord: read('mudflat-leg-revised'), belt: read('shingle-leg-revised') }

/** A log from plain laws and known values: readings, and errors of the instruments within what the plan says of them. */
interface Simulated {
  readonly drive: keyof typeof legs
  readonly log: string
  readonly make: (random: RandomStream, readings: number) => { readonly text: string; readonly truth: Readonly<Record<string, number>> }
}
const WITHIN = 1 / 1.96
const DAYS: Readonly<Record<number, readonly number[]>> = { 3: [0.042, 2, 30], 4: [0.042, 1, 7, 30] }
/** Equal losses per decade of time, from an hour to a year. */
const left = (days: number, year: number) => 1 - ((1 - year) * Math.log10(24 * days)) / Math.log10(8766)

const LOGS: readonly Simulated[] = [
  {
    drive: 'cord',
    log: 'pretension knee',
    make: (random, readings) => {
      const [start, year] = [280 * (1 + random.normal(0, 0.04)), random.uniformBetween(0.82, 0.95)]
      const [gain, zero] = [random.normal(0, 0.03 * WITHIN), random.normal(0, 2 * WITHIN)]
      const rows = (DAYS[readings] as number[]).map(
        (days) => `${days},${start * left(Math.max(days, 1 / 24), year) * (1 + gain) + zero + random.normal(0, 2.8)}`,
      )
      const truth = { 'joints.knee.drive.pretension': start, 'cords.braid.pretensionLeft': year }
      return { text: `time [day],tension [N]\n${rows.join('\n')}\n`, truth }
    },
  },
  {
    drive: 'belt',
    log: 'beltPitch hip',
    make: (random, readings) => {
      const [start, year] = [420 * (1 + random.normal(0, 0.04)), random.uniformBetween(0.82, 0.95)]
      const [span, mass] = [0.103 * (1 + random.normal(0, 0.01 * WITHIN)), 0.11 * (1 + random.normal(0, 0.05 * WITHIN))]
      const rows = (DAYS[readings] as number[]).map(
        (days) => `${days},${(Math.sqrt((start * left(Math.max(days, 1 / 24), year)) / mass) / (2 * span)) * (1 + random.normal(0, 0.01))}`,
      )
      return {
        text: `time [day],pitch [Hz]\n${rows.join('\n')}\n`,
        truth: { 'joints.hip.drive.pretension': start, 'belts.wide.pretensionLeft': year },
      }
    },
  },
  {
    drive: 'cord',
    log: 'cordFriction knee',
    make: (random, readings) => {
      const mu = random.uniformBetween(0.1, 0.18)
      const [gain, zero, drag] = [0.03, 0.1, 0.04].map((within) => random.normal(0, within * WITHIN)) as [number, number, number]
      const more = random.normal(0, (10 * WITHIN) / 360)
      const rows = [0.5, 1, 1.5, 1].slice(0, readings).map((turns) => {
        const own = mu * (1 + random.normal(0, 0.05))
        return `5,${5 * Math.exp(own * 2 * Math.PI * (turns + more)) * (1 + drag) * (1 + gain) + zero},${turns}`
      })
      return {
        text: `slack tension [N],taut tension [N],wrap angle [turn]\n${rows.join('\n')}\n`,
        truth: { 'joints.knee.drive.friction': mu },
      }
    },
  },
]

describe('three or four readings claim no more than they tell', () => {
  test.each(LOGS.flatMap((one) => [3, 4].map((readings) => ({ ...one, readings }))))(
    '$log, $readings readings',
    ({ drive, log, make, readings }) => {
      const STANDS = 40
      const covered = new Map<string, number>()
      for (let i = 0; i < STANDS; i++) {
        const { text, truth } = make(randomStream(71, i), readings)
        const { found } = estimate(legs[drive], [{ log, id: log.split(' ')[0] as MeasurementId, joint: jointOf(log), text }], {})
        for (const [path, value] of Object.entries(truth)) {
          const interval = found.find((one) => one.path === path)?.interval
          const holds = interval === undefined || (value >= interval[0] && value <= interval[1])
          covered.set(path, (covered.get(path) ?? 0) + (holds ? 1 : 0))
        }
      }
      for (const [path, count] of covered) expect(count / STANDS, path).toBeGreaterThanOrEqual(0.9)
    },
  )
})
