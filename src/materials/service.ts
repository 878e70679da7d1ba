import { Property, readInputs, type Source } from '../formula/index.js'
import { type In, Quantity } from '../units/index.js'
import type { Material } from './record.js'

/** Whether a part may work at a temperature. */
export interface ServiceVerdict {
  /** `ok` below the range of the lowest limit, `marginal` within it, `fail` above it, `unknown` where no limit is in the table. */
  readonly verdict: 'ok' | 'marginal' | 'fail' | 'unknown'
  /** The reason in a sentence. */
  readonly reason: string
  /** The limit that governs, with its range; absent when unknown. */
  readonly limit?: Property<'temperature'>
  /** Kind of limit. */
  readonly limitedBy?: ServiceLimit['name']
  /** Every limit that was looked at. */
  readonly limits: readonly ServiceLimit[]
}

/** One temperature limit of a material. */
export interface ServiceLimit {
  readonly name: 'creep near the glass transition' | 'glass transition' | 'service temperature' | 'melting' | 'last known strength'
  readonly at: Property<'temperature'>
}

/** How far below its glass transition an amorphous polymer stops carrying load, K. */
const LOADED_MARGIN = 15

const as = ({ si, low, high, source, conditions }: Property): Property<'temperature'> =>
  new Property(si, 'temperature', low, high, source, conditions)

/** The margin is an assumption, however well the glass transition is known. */
function belowTransition({ si, low, high, source }: Property): Property<'temperature'> {
  const [l, t, h] = [low - LOADED_MARGIN, si - LOADED_MARGIN, high - LOADED_MARGIN]
  const rule: Source = { level: 'assumption', where: `${LOADED_MARGIN} K below the glass transition (${source.where})` }
  return new Property(t, 'temperature', l, h, rule, 'loaded for long')
}

function limitsOf(material: Material, loaded: boolean): ServiceLimit[] {
  const limits: ServiceLimit[] = []
  const { glassTransitionTemperature: glass, serviceTemperature: service, meltingTemperature: melting, strengthCurve: curve } = material
  if (material.family === 'amorphous' && glass !== undefined)
    limits.push(
      loaded ? { name: 'creep near the glass transition', at: belowTransition(glass) } : { name: 'glass transition', at: as(glass) },
    )
  if (service !== undefined && (loaded || material.family !== 'amorphous')) limits.push({ name: 'service temperature', at: as(service) })
  if (melting !== undefined) limits.push({ name: 'melting', at: as(melting) })
  const last = curve?.points.at(-1)
  if (loaded && curve !== undefined && last !== undefined) {
    const at = last[0] + 273.15
    limits.push({ name: 'last known strength', at: new Property(at, 'temperature', at, at, curve.source as Source, curve.conditions) })
  }
  return limits
}

const CELSIUS = 273.15
const degrees = (kelvin: number) => `${Math.round(kelvin - CELSIUS)} °C`

/**
 * Whether a part of a material may work at a temperature, and why.
 * Each limit has a range: below all of it is `ok`, above any of it is `fail`. A heat deflection temperature is never a limit: it is a test of a
 * bar under a load for minutes. Throws an `InputError` for a temperature that cannot be.
 */
export function serviceVerdict(material: Material, temperature: In<'temperature'>, load: 'loaded' | 'unloaded' = 'loaded'): ServiceVerdict {
  const x = readInputs(
    'serviceVerdict',
    { temperature: { kind: 'temperature', min: 0 }, load: { oneOf: ['loaded', 'unloaded'] } },
    { temperature, load },
  )
  const limits = limitsOf(material, x.load === 'loaded')
  const [first, ...rest] = limits
  if (first === undefined) {
    return { verdict: 'unknown', reason: `the table has no temperature limit of ${material.name}; measure one or ask its maker`, limits }
  }
  const rank = ({ at }: ServiceLimit) => (x.temperature > at.high ? 2 : x.temperature >= at.low ? 1 : 0)
  const worst = rest.reduce((a, b) => (rank(b) > rank(a) || (rank(b) === rank(a) && b.at.si < a.at.si) ? b : a), first)
  const verdict = (['ok', 'marginal', 'fail'] as const)[rank(worst)] as 'ok' | 'marginal' | 'fail'
  const range = `${worst.name} at ${degrees(worst.at.low)} to ${degrees(worst.at.high)}`
  const where = { ok: 'below', marginal: 'within', fail: 'above' }[verdict]
  return {
    verdict,
    reason: [
      `${degrees(x.temperature)} is ${where} the ${x.load} limit of ${material.name}: ${range} (${worst.at.source.level})`,
      ...(material.doubts ?? []),
    ].join('; '),
    limit: worst.at,
    limitedBy: worst.name,
    limits,
  }
}

/** How far a temperature lies below the governing limit's low end; negative above it. Throws like `serviceVerdict`, and where no limit is known. */
export function serviceMargin(
  material: Material,
  temperature: In<'temperature'>,
  load: 'loaded' | 'unloaded' = 'loaded',
): Quantity<'temperatureDifference'> {
  const { limits } = serviceVerdict(material, temperature, load)
  const t = readInputs('serviceMargin', { temperature: { kind: 'temperature', min: 0 } }, { temperature }).temperature
  return new Quantity(Math.min(...limits.map(({ at }) => at.low)) - t, 'temperatureDifference')
}
