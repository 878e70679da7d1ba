import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import type { DrivenJoint, Joint } from '../numbers.js'
import { retentionIn } from '../parts/transmission/cord/fields.js'
import { isBand } from '../ranges.js'
import { SECOND_STAGE } from '../second-stage.js'
import { springRateOf } from './model-parallel.js'
import { shown } from './shown.js'

/** Expected range of a field before it is measured, and its physical limits. SI. */
export interface Expectation {
  readonly low: number
  readonly typical: number
  readonly high: number
  readonly least: number
  readonly most: number
  /** Why nothing lies beyond least and most. */
  readonly because: string
  /** Whether distances count as differences: an angle of either sign. */
  readonly plain?: boolean
  /** A value as a reader would write it. */
  readonly text: (value: number) => string
}

/** A value is far out where it is this many times farther from the typical value than the end of the band, in ratio. */
const FAR_OUT = 3

/** Shares of a field that the specification gives as one number. */
const RELATIVE_BANDS: Readonly<Record<string, readonly [number, number]>> = {
  axialRigidity: [0.75, 1.25],
  pretension: [0.7, 1.3],
  windingToMount: [0.7, 1.3],
  specificHeat: [0.8, 1.4],
  speedConstant: [0.93, 1.07],
  noLoadCurrent: [0.4, 2],
  backlash: [0.4, 2.5],
  clearance: [0.4, 2.5],
  stiffness: [0.6, 1.5],
  efficiency: [0.85, 1.1],
  rate: [0.8, 1.25],
  beyond: [0.7, 1.4],
}

const BOUNDS: Readonly<Record<string, readonly [number, number, string]>> = {
  friction: [0.02, 0.8, 'cords on metal and print lie between 0.03 and 0.6'],
  pretensionLeft: [0.15, 0.999, 'every cord relaxes, and none loses nearly all'],
  endRetention: [0.1, 1.02, 'no end is stronger than its cord'],
  windingToMount: [0.03, 15, 'metal and lacquer conduct neither better nor worse'],
  efficiency: [0.25, 1, 'no drive gives back more than it takes, and one that loses three quarters does not run'],
  coolingFactor: [0.4, 2.5, 'films in still air scatter by 20 %, with a draught they double'],
  specificHeat: [350, 900, 'copper has 385, steel 460 and aluminium 900 J/(kg K): a motor lies between'],
}

/** Expected range of a field. */
export function expectationOf(leg: LegModel, path: string): Expectation {
  const { x } = leg
  const name = path.split('.').at(-1) as string
  const [joint] = /sidewaysHip|hip|knee/.exec(path) ?? []
  const text = (value: number) => shown(x, path, value)
  if (name === 'freeAngle') return freeAngle(valueAt(x, path) as number, text)
  const given =
    name === 'endRetention'
      ? retentionIn(x, (path.includes('.through.') ? SECOND_STAGE : joint) as DrivenJoint)
      : name === 'rate'
        ? springRateOf(leg, joint as Joint)
        : valueAt(x, path)
  const typical = isBand(given) ? given.typical : (given as number)
  const around = RELATIVE_BANDS[name] ?? [0.8, 1.2]
  // A band of one value still lets a measurement differ by a tenth.
  const { low, high } = isBand(given)
    ? { low: Math.min(given.low, 0.9 * typical), high: Math.max(given.high, 1.1 * typical) }
    : { low: around[0] * typical, high: around[1] * typical }
  if (name === 'axialRigidity') {
    const [section, part] = path.split('.') as ['cords' | 'belts', string]
    const { breakingStrength } = x[section][part] as { readonly breakingStrength: number }
    return {
      low,
      typical,
      high,
      least: breakingStrength / 0.5,
      most: breakingStrength / 0.004,
      because: section === 'cords' ? 'cords break at a stretch between 1 and 30 %' : 'belts break at a stretch between 0.4 and 50 %',
      text,
    }
  }
  const [least, most, because] = BOUNDS[name] ?? [0, Number.POSITIVE_INFINITY, '']
  return { low, typical, high, least, most, because, text }
}

/** A free angle is set by where the legs rest: known to some fifteen degrees. */
const REST_ANGLE = Math.PI / 12
const freeAngle = (typical: number, text: Expectation['text']): Expectation => ({
  low: typical - REST_ANGLE,
  typical,
  high: typical + REST_ANGLE,
  least: Number.NEGATIVE_INFINITY,
  most: Number.POSITIVE_INFINITY,
  because: '',
  plain: true,
  text,
})

const valueAt = (x: LegNumbers, path: string): unknown =>
  path.split('.').reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], x)

/** How many times farther from the typical value than the end of the band, in ratio. */
export function distanceOf({ low, typical, high, plain }: Expectation, value: number): number {
  if (plain === true) return Math.abs(value - typical) / (high - typical)
  if (!(value > 0)) return Number.POSITIVE_INFINITY
  // A field that is given as nothing lets one expect nothing.
  if (typical === 0) return 0
  const away = Math.log(value / typical)
  // A share ends at 1: its distance counts in what is lost.
  return away === 0 ? 0 : away / Math.log((away > 0 ? high : low) / typical)
}

/** Why a value is not believed; absent where it may be. */
export function implausible(expected: Expectation, value: number): string | undefined {
  const unit = expected.text
  const band = `${unit(expected.low)} to ${unit(expected.high)} was expected`
  if (value < expected.least || value > expected.most) return `${unit(value)} is not possible (${expected.because}); ${band}`
  const distance = distanceOf(expected, value)
  if (distance > FAR_OUT)
    return `${unit(value)} is ${distance > 100 ? 'more than 100' : distance.toFixed(1)} times as far from ${unit(expected.typical)} as the end of what was expected (${unit(expected.low)} to ${unit(expected.high)})`
  return undefined
}

/** Remark on a possible value whose whole interval is outside the expected band; absent where it touches the band. */
export function unexpected(
  { low, high, typical, plain, text }: Expectation,
  value: number,
  [from, to]: readonly [number, number],
): string | undefined {
  if ((typical === 0 && plain !== true) || (from <= high && to >= low)) return undefined
  return `${text(value)} lies beside what was expected (${text(low)} to ${text(high)})`
}
