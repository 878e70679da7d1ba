import { type Property, readInputs } from '../formula/index.js'
import { type In, InputError, type Issue, issue, type Kind, readAt, refuse } from '../units/index.js'
import { propertyOf, type Reading, SHARES, sampled, WHERE } from './coupon-samples.js'
import { unknownProperty, withProperties } from './own-properties.js'
import { type KindOf, type Material, type MaterialHead, PROPERTY_KINDS, type PropertyName } from './record.js'
import type { TemperatureCurve } from './temperature-curve.js'

/** Results of coupons for one property. */
export interface CouponSetOf<P extends PropertyName> {
  /** The property that the coupons measured. */
  readonly property: P
  /** One value for each coupon. */
  readonly values: readonly In<KindOf<P>>[]
  /** Conditions of the coupons: direction, temperature, moisture, machine, print settings. */
  readonly conditions?: string
  /** Where they were measured: date, machine, standard. */
  readonly measured?: string
}

/** Results of coupons for any one property. */
export type CouponSet = { [P in PropertyName]: CouponSetOf<P> }[PropertyName]

/** Strength coupons at one temperature, for the fall of strength with temperature. */
export interface WarmCoupons {
  /** Temperature of the test. */
  readonly temperature: In<'temperature'>
  /** Strength of each coupon. */
  readonly values: readonly In<'stress'>[]
}

/** Data from which a material of your own is made. */
export interface CouponMaterial {
  /** Name of the material. */
  readonly name: string
  /** Grade and process, in a few words. Default: those of `basedOn`, with a word on the coupons. */
  readonly title?: string
  /** The material of the table that fills what you did not measure; its values keep their own sources. */
  readonly basedOn: Material
  /** Coupons, a set for each property. */
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

/** Lists what is not of the form that a set of coupons needs. */
function shapeIssues({ name, basedOn, coupons, warm }: CouponMaterial): Issue[] {
  const problem = (path: string, given: unknown, accepts: string): Issue => issue(path, given, accepts)
  return [
    ...(typeof name === 'string' && name !== '' ? [] : [problem('name', name, 'must be text')]),
    ...(typeof basedOn === 'object' && basedOn !== null
      ? []
      : [problem('basedOn', basedOn, 'must be a material of the table, such as pla')]),
    ...(Array.isArray(coupons) ? [] : [problem('coupons', coupons, 'must be a list')]),
    ...(warm === undefined || Array.isArray(warm) ? [] : [problem('warm', warm, 'must be a list')]),
  ]
}

/**
 * A material of your own from coupons: what you measured with its range, the rest from a material of the table with its sources kept.
 *
 * The range of a set holds a share of all parts with a confidence, so few coupons give a wide one. A value far outside the range of the base material is
 * listed in `doubts`. Throws one `InputError` that lists every set that is too small or too scattered for the claim, every unreadable value, every value that
 * no such material has and every unknown property.
 */
export function materialFromCoupons(given: CouponMaterial): Material {
  if (typeof given !== 'object' || given === null) refuse(WHERE, 'the argument', given, 'must be an object with name, basedOn and coupons')
  const issues = shapeIssues(given)
  if (issues.length > 0) throw new InputError(WHERE, issues)
  const { name, basedOn } = given
  const reading: Reading = { ...readInputs(WHERE, SHARES, { coverage: given.coverage, confidence: given.confidence }), issues }
  const made = measuredProperties(given.coupons, reading)
  const along = made.tensileStrength
  if (given.acrossLayers !== undefined) {
    const share = acrossShare(given.acrossLayers, along, reading)
    if (share !== undefined) made.acrossLayersRatio = share
  }
  const strengthCurve = given.warm === undefined ? basedOn.strengthCurve : curveOf(given.warm, along, reading)
  if (issues.length > 0) throw new InputError(WHERE, issues)
  const head: Partial<MaterialHead> = {
    name,
    title: given.title ?? `${basedOn.title}, own coupons`,
    aliases: [],
    ...(strengthCurve === undefined ? {} : { strengthCurve }),
  }
  return withProperties(basedOn, made as never, head)
}

/** The properties of the coupon sets, each with its range. */
function measuredProperties(coupons: readonly CouponSet[], reading: Reading): Partial<Record<PropertyName, Property>> {
  const made: Partial<Record<PropertyName, Property>> = {}
  for (const [i, { property: name, values, conditions, measured }] of coupons.entries()) {
    const path = `coupons[${i}]`
    if (!Object.hasOwn(PROPERTY_KINDS, name)) {
      reading.issues.push(unknownProperty(`${path}.property`, name))
      continue
    }
    const s = sampled(`${path}.values`, PROPERTY_KINDS[name] as Kind, values, reading)
    if (s !== undefined) made[name] = propertyOf(s, name, conditions ?? 'own coupons', reading, measured)
  }
  return made
}

/** Strength of upright coupons over that of flat ones; strength that seems higher across the layers than along them is scatter and is not counted. */
function acrossShare(values: readonly In<'stress'>[], along: Property | undefined, reading: Reading): Property | undefined {
  const across = sampled('acrossLayers', 'stress', values, reading)
  if (along === undefined) {
    const accepts = 'needs coupons of tensileStrength along the layers to be compared with'
    reading.issues.push({ path: 'acrossLayers', given: 'strength', accepts })
    return undefined
  }
  if (across === undefined) return undefined
  const share = (stress: number) => Math.min(1, stress / along.si)
  const ratio = { ...across, mean: share(across.mean), low: share(across.low), high: share(across.high) }
  const capped = across.high > along.si ? '; what seems stronger across than along is not counted' : ''
  return propertyOf(ratio, 'acrossLayersRatio', `own upright coupons over own flat ones${capped}`, reading)
}

function curveOf(warm: readonly WarmCoupons[], along: Property | undefined, reading: Reading): TemperatureCurve | undefined {
  const { issues } = reading
  if (along === undefined) {
    const accepts = 'needs coupons of tensileStrength at 23 °C to be compared with'
    issues.push({ path: 'warm', given: `${warm.length} temperatures`, accepts })
    return undefined
  }
  const points: [number, number, number, number][] = [[23, 1, 1, 1]]
  let count = 0
  warm.forEach(({ temperature, values }, i) => {
    const listed = issues.length
    const s = sampled(`warm[${i}].values`, 'stress', values, reading)
    const kelvin = readAt(`warm[${i}].temperature`, 'temperature', temperature, issues)
    if (s === undefined || issues.length > listed) return
    const celsius = kelvin - 273.15
    const before = points.at(-1) as [number, number, number, number]
    if (celsius <= before[0]) {
      issues.push(issue(`warm[${i}].temperature`, temperature, `must rise, and lie above ${before[0]} °C`))
      return
    }
    // Strength that seems to rise with temperature is scatter: it is not counted.
    const at = (share: number, column: 1 | 2 | 3) => Math.min(before[column], Math.max(0, share / along.si))
    points.push([celsius, at(s.low, 1), at(s.mean, 2), at(s.high, 3)])
    count += s.count
  })
  return {
    points,
    source: { level: 'measured', where: `own measurement of ${count} warm coupons` },
    conditions: 'own coupons, short-term',
  }
}
