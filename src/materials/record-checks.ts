import type { Property } from '../formula/index.js'
import type { Issue, Kind } from '../units/index.js'
import type { PropertyName } from './property-kinds.js'

/** Kinds whose values cannot be negative; expansion can (a magnet across its axis), and temperatures are absolute. */
const SIGNED: readonly Kind[] = ['thermalExpansion']

/** Shares of a whole, which cannot exceed it. */
const SHARES: readonly PropertyName[] = [
  'strengthKept1000Hours',
  'strengthKept1Year',
  'acrossLayersRatio',
  'fatigueRatio',
  'emissivity',
  'strengthConditionedRatio',
  'modulusConditionedRatio',
  'strengthSaturatedRatio',
  'modulusSaturatedRatio',
]

export function absurdity(name: PropertyName, { low, high, kind }: Property): string | undefined {
  if (low < 0 && !SIGNED.includes(kind)) return 'must not be negative'
  if (name === 'poissonRatio' && high > 0.5) return 'must be at most 0.5'
  if (SHARES.includes(name) && high > 1) return 'must be at most 1, being a share'
  return undefined
}

/**
 * Pairs of which the first cannot pass the second: more time and more water only weaken, and a bar sags sooner under the larger load.
 * Out of order, a result would get better with time or water.
 */
const ORDER: readonly (readonly [PropertyName, PropertyName])[] = [
  ['strengthKept1Year', 'strengthKept1000Hours'],
  ['strengthSaturatedRatio', 'strengthConditionedRatio'],
  ['modulusSaturatedRatio', 'modulusConditionedRatio'],
  ['moistureConditioned', 'moistureSaturated'],
  ['glassTransitionConditioned', 'glassTransitionTemperature'],
  ['glassTransitionTemperature', 'meltingTemperature'],
  ['heatDeflectionTemperature180', 'heatDeflectionTemperature045'],
]

/** Adds an issue for every pair of properties that contradict each other. */
export function checkOrder(properties: { readonly [P in PropertyName]?: Property }, issues: Issue[], prefix = ''): void {
  for (const [less, more] of ORDER) {
    const [a, b] = [properties[less], properties[more]]
    if (a === undefined || b === undefined || (a.low <= b.low && a.si <= b.si && a.high <= b.high)) continue
    const range = (p: Property) => `${p} (${p.lowest} to ${p.highest})`
    issues.push({ path: `${prefix}${less}`, given: range(a), accepts: `must be at most ${more}, ${range(b)}, at both ends and between` })
  }
}
