import { Property, type Source } from '../formula/index.js'
import { type In, type Issue, type Kind, readAt, show } from '../units/index.js'
import { PROPERTY_KINDS, type PropertyName } from './record.js'
import { toleranceFactor } from './tolerance-factor.js'

/** Mean and tolerance range of a set of values. */
interface Sampled {
  readonly mean: number
  readonly low: number
  readonly high: number
  readonly count: number
}

const NEEDED = 3
/** The name that errors give. */
export const WHERE = 'materialFromCoupons'
/** How sure a range is to be. */
export const SHARES = {
  coverage: { kind: 'ratio', above: 0, below: 1, default: 0.9 },
  confidence: { kind: 'ratio', above: 0, below: 1, default: 0.95 },
} as const

/** What every set of coupons is read with: how wide a range to state, and where to list what is wrong. */
export interface Reading {
  readonly coverage: number
  readonly confidence: number
  readonly issues: Issue[]
}

export function sampled(
  path: string,
  kind: Kind,
  values: readonly unknown[],
  { coverage, confidence, issues }: Reading,
): Sampled | undefined {
  if (!Array.isArray(values) || values.length < NEEDED) {
    const count = Array.isArray(values) ? `${values.length} coupons` : show(values)
    issues.push({ path, given: count, accepts: `at least ${NEEDED} coupons are needed before a range can be stated` })
    return undefined
  }
  const before = issues.length
  const x = values.map((value, i) => readAt(`${path}[${i}]`, kind, value as In<Kind>, issues))
  if (issues.length > before) return undefined
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

const ownSource = ({ count }: Sampled, measured: string | undefined, { coverage, confidence }: Reading): Source => ({
  level: 'measured',
  where: `own measurement of ${count} coupons${measured === undefined ? '' : `, ${measured}`}; range for ${coverage * 100} % of parts at ${confidence * 100} % confidence`,
})

export const propertyOf = (s: Sampled, name: PropertyName, conditions: string, reading: Reading, measured?: string): Property =>
  new Property(s.mean, PROPERTY_KINDS[name] as Kind, s.low, s.high, ownSource(s, measured, reading), conditions)
