import { formula, Property, type Source } from '../formula/index.js'
import { chiSquareQuantile, normalQuantile } from '../numeric/index.js'
import { type In, InputError, type Issue, type Kind, quantity, show } from '../units/index.js'
import { unknownProperty, withProperties } from './own-properties.js'
import { type KindOf, type Material, type MaterialHead, PROPERTY_KINDS, type PropertyName } from './record.js'
import type { TemperatureCurve } from './temperature-curve.js'

/**
 * How many standard deviations either side of the mean of a sample hold a share of all parts with a confidence (two-sided tolerance factor, normal
 * scatter). Small samples pay dearly: five coupons need twice the width of fifty.
 */
export const toleranceFactor = /* @__PURE__ */ formula('materials.toleranceFactor', {
  inputs: {
    /** Number of coupons. */
    sampleSize: { kind: 'count', min: 2 },
    /** Share of all parts that is to lie within. */
    coverage: { kind: 'ratio', above: 0, below: 1, default: 0.9 },
    /** Confidence in that. */
    confidence: { kind: 'ratio', above: 0, below: 1, default: 0.95 },
  },
  /** Factor on the sample's standard deviation. */
  output: 'ratio',
  assumes: ['normal scatter', 'coupons drawn at random from what will be built'],
  source: [{ level: 'unverified', where: 'Howe 1969, as the NIST/SEMATECH e-Handbook of Statistical Methods gives it, section 7.2.6.3' }],
  valid: { 'at least five coupons': ({ sampleSize }) => sampleSize >= 5 },
  si: ({ sampleSize, coverage, confidence }) =>
    normalQuantile((1 + coverage) / 2) *
    Math.sqrt(((sampleSize - 1) * (1 + 1 / sampleSize)) / chiSquareQuantile(1 - confidence, sampleSize - 1)),
})

/** Results of coupons for one property. */
export interface CouponSetOf<P extends PropertyName> {
  /** The property that the coupons measured. */
  readonly property: P
  /** One value for each coupon. */
  readonly values: readonly In<KindOf<P>>[]
  /** What they hold for: direction, temperature, moisture, machine, print settings. */
  readonly conditions?: string
  /** Where they were measured: date, machine, standard. */
  readonly measured?: string
}

/** Results of coupons for any one property. */
export type CouponSet = { [P in PropertyName]: CouponSetOf<P> }[PropertyName]

/** Strength coupons at one temperature, for the fall of strength with temperature. */
export interface WarmCoupons {
  readonly temperature: In<'temperature'>
  readonly values: readonly In<'stress'>[]
}

/** What a material of your own is made from. */
export interface CouponMaterial {
  readonly name: string
  readonly title?: string
  /** The material of the table that fills what you did not measure; its values keep their own sources. */
  readonly basedOn: Material
  readonly coupons: readonly CouponSet[]
  /** Strength across the layers of coupons printed upright; divided by the strength along the layers it becomes the direction share. */
  readonly acrossLayers?: readonly In<'stress'>[]
  /** Strength along the layers at temperatures above room; replaces the rule for temperature. */
  readonly warm?: readonly WarmCoupons[]
  /** Share of all parts that the range is to hold. Default 0.9. */
  readonly coverage?: number
  /** Confidence in that. Default 0.95. */
  readonly confidence?: number
}

/** Mean and tolerance range of a set of values. */
interface Sampled {
  readonly mean: number
  readonly low: number
  readonly high: number
  readonly count: number
}

const NEEDED = 3

/** One value in SI, or an issue. */
function readOne(path: string, kind: Kind, value: unknown, issues: Issue[]): number | undefined {
  try {
    return quantity(kind, value as never).si
  } catch (error) {
    if (!(error instanceof InputError)) throw error
    issues.push({ path, given: show(value), accepts: (error.issues[0] as Issue).accepts })
    return undefined
  }
}

function sampled(
  path: string,
  kind: Kind,
  values: readonly unknown[],
  coverage: number,
  confidence: number,
  issues: Issue[],
): Sampled | undefined {
  if (!Array.isArray(values) || values.length < NEEDED) {
    const count = Array.isArray(values) ? `${values.length} coupons` : show(values)
    issues.push({ path, given: count, accepts: `at least ${NEEDED} coupons are needed before a range can be stated` })
    return undefined
  }
  const x = values.flatMap((value, i) => readOne(`${path}[${i}]`, kind, value, issues) ?? [])
  if (x.length < values.length) return undefined
  const mean = x.reduce((sum, value) => sum + value, 0) / x.length
  const deviation = Math.sqrt(x.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (x.length - 1))
  const half = toleranceFactor.si({ sampleSize: x.length, coverage, confidence }) * deviation
  if (mean > 0 && half >= mean) {
    issues.push({
      path,
      given: `${x.length} coupons with a scatter of ${Math.round((100 * deviation) / mean)} %`,
      accepts: `too few or too scattered for ${coverage * 100} % of parts at ${confidence * 100} % confidence: the range would reach zero; test more`,
    })
    return undefined
  }
  return { mean, low: mean - half, high: mean + half, count: x.length }
}

const ownSource = ({ count }: Sampled, measured: string | undefined, coverage: number, confidence: number): Source => ({
  level: 'published',
  where: `own measurement of ${count} coupons${measured === undefined ? '' : `, ${measured}`}; range for ${coverage * 100} % of parts at ${confidence * 100} % confidence`,
})

/**
 * A material of your own from coupons: what you measured with its range, the rest from a material of the table with its sources kept.
 *
 * The range of a set holds a share of all parts with a confidence, so few coupons give a wide one. Throws one `InputError` that lists every set that is too small
 * or too scattered for the claim, every unreadable value and every unknown property.
 */
export function materialFromCoupons(given: CouponMaterial): Material {
  const where = 'materialFromCoupons'
  if (typeof given !== 'object' || given === null)
    throw new InputError(where, [{ path: 'the argument', given: show(given), accepts: 'must be an object with name, basedOn and coupons' }])
  const { name: ownName, basedOn, coupons, coverage = 0.9, confidence = 0.95 } = given
  const issues: Issue[] = []
  if (typeof ownName !== 'string' || ownName === '') issues.push({ path: 'name', given: show(ownName), accepts: 'must be text' })
  if (typeof basedOn !== 'object' || basedOn === null)
    issues.push({ path: 'basedOn', given: show(basedOn), accepts: 'must be a material of the table, such as pla' })
  for (const path of ['coupons', 'warm'] as const)
    if (!(Array.isArray(given[path]) || (path === 'warm' && given.warm === undefined)))
      issues.push({ path, given: show(given[path]), accepts: 'must be a list' })
  for (const [path, share] of [
    ['coverage', coverage],
    ['confidence', confidence],
  ] as const)
    if (!(share > 0 && share < 1)) issues.push({ path, given: show(share), accepts: 'must lie between 0 and 1' })
  if (issues.length > 0) throw new InputError(where, issues)
  const made: Partial<Record<PropertyName, Property>> = {}
  const record = (s: Sampled, name: PropertyName, conditions: string, measured?: string) => {
    const kind = PROPERTY_KINDS[name] as Kind
    return new Property(s.mean, kind, s.low, s.high, ownSource(s, measured, coverage, confidence), conditions)
  }
  for (const [i, { property: name, values, conditions, measured }] of coupons.entries()) {
    const path = `coupons[${i}]`
    if (!Object.hasOwn(PROPERTY_KINDS, name)) {
      issues.push(unknownProperty(`${path}.property`, name))
      continue
    }
    const s = sampled(`${path}.values`, PROPERTY_KINDS[name] as Kind, values, coverage, confidence, issues)
    if (s !== undefined) made[name] = record(s, name, conditions ?? 'own coupons', measured)
  }
  const along = made.tensileStrength
  if (given.acrossLayers !== undefined) {
    const across = sampled('acrossLayers', 'stress', given.acrossLayers, coverage, confidence, issues)
    if (along === undefined) {
      issues.push({
        path: 'acrossLayers',
        given: 'strength',
        accepts: 'needs coupons of tensileStrength along the layers to be compared with',
      })
    } else if (across !== undefined) {
      // Strength that seems higher across the layers than along them is scatter: it is not counted.
      const share = (stress: number) => Math.min(1, stress / along.si)
      const ratio = { ...across, mean: share(across.mean), low: share(across.low), high: share(across.high) }
      const capped = across.high > along.si ? '; what seems stronger across than along is not counted' : ''
      made.acrossLayersRatio = record(ratio, 'acrossLayersRatio', `own upright coupons over own flat ones${capped}`)
    }
  }
  const strengthCurve = given.warm === undefined ? basedOn.strengthCurve : curveOf(given.warm, along, coverage, confidence, issues)
  if (issues.length > 0) throw new InputError(where, issues)
  const head: Partial<MaterialHead> = {
    name: ownName,
    title: given.title ?? `${basedOn.title}, own coupons`,
    aliases: [],
    ...(strengthCurve === undefined ? {} : { strengthCurve }),
  }
  return withProperties(basedOn, made as never, head)
}

function curveOf(
  warm: readonly WarmCoupons[],
  along: Property | undefined,
  coverage: number,
  confidence: number,
  issues: Issue[],
): TemperatureCurve | undefined {
  if (along === undefined) {
    issues.push({
      path: 'warm',
      given: `${warm.length} temperatures`,
      accepts: 'needs coupons of tensileStrength at 23 °C to be compared with',
    })
    return undefined
  }
  const points: [number, number, number, number][] = [[23, 1, 1, 1]]
  let count = 0
  warm.forEach(({ temperature, values }, i) => {
    const s = sampled(`warm[${i}].values`, 'stress', values, coverage, confidence, issues)
    const kelvin = readOne(`warm[${i}].temperature`, 'temperature', temperature, issues)
    if (s === undefined || kelvin === undefined) return
    const celsius = kelvin - 273.15
    const before = points.at(-1) as [number, number, number, number]
    if (celsius <= before[0]) {
      issues.push({ path: `warm[${i}].temperature`, given: show(temperature), accepts: `must rise, and lie above ${before[0]} °C` })
      return
    }
    // Strength that seems to rise with temperature is scatter: it is not counted.
    const at = (share: number, column: 1 | 2 | 3) => Math.min(before[column], Math.max(0, share / along.si))
    points.push([celsius, at(s.low, 1), at(s.mean, 2), at(s.high, 3)])
    count += s.count
  })
  return {
    points,
    source: { level: 'published', where: `own measurement of ${count} warm coupons` },
    conditions: 'own coupons, short-term',
  }
}
