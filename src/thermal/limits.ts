import { formula, onlyKeys, Property, readInputs } from '../formula/index.js'
import { type In, InputError, type Issue, issue, Quantity, quantity, refuse } from '../units/index.js'
import { AMBIENT } from './motor-inputs.js'
import { unknownNode } from './network-losses.js'

/** What a loaded printed part may be heated to for long: well below glass transition, and never above its heat deflection temperature at the matching stress. */
export const polymerLimit = /* @__PURE__ */ formula('thermal.polymerLimit', {
  inputs: {
    /** Glass transition of the polymer. */
    glassTransition: 'glassTransitionTemperature',
    /** Heat deflection temperature at 1.8 MPa, for parts under bolts and pins. */
    heatDeflection180: { kind: 'heatDeflectionTemperature180', optional: true },
    /** Heat deflection temperature at 0.45 MPa, for lightly loaded parts. */
    heatDeflection045: { kind: 'heatDeflectionTemperature045', optional: true },
    /** Distance kept from the glass transition; a project's choice. */
    guard: { kind: 'temperatureDifference', min: 0, default: '15 K' },
  },
  output: {
    /** Limit. */
    temperature: 'temperature',
    /** Which of the given values it comes from. */
    governs: { oneOf: ['glassTransition', 'heatDeflection180', 'heatDeflection045'] },
  },
  assumes: ['amorphous polymer under lasting load', 'heat deflection is a short-time test: a bound, not a licence'],
  source: [
    { level: 'assumption', where: 'guard of 15 K below the glass transition: our choice, to be replaced by creep data' },
    { level: 'unverified', where: 'ISO 75-1, heat deflection at 0.45 and 1.8 MPa' },
  ],
  si: ({ glassTransition, heatDeflection180 = Number.POSITIVE_INFINITY, heatDeflection045 = Number.POSITIVE_INFINITY, guard }) => {
    const guarded = glassTransition - guard
    const temperature = Math.min(guarded, heatDeflection180, heatDeflection045)
    return {
      temperature,
      governs: temperature === guarded ? 'glassTransition' : temperature === heatDeflection180 ? 'heatDeflection180' : 'heatDeflection045',
    }
  },
})

/** Margin and utilisation of one part against its limit. */
export const temperatureMargin = /* @__PURE__ */ formula('thermal.temperatureMargin', {
  inputs: {
    /** Temperature of the part. */
    temperature: 'temperature',
    /** Limit of the temperature. */
    limit: 'temperature',
    ...AMBIENT,
    /** Margin below which the part is marginal. */
    guard: { kind: 'temperatureDifference', min: 0, default: '5 K' },
  },
  output: {
    /** Limit less temperature. */
    margin: 'temperatureDifference',
    /** Rise over the rise that the limit allows; above 1 fails. Infinite when ambient itself is at the limit. */
    utilisation: { kind: 'ratio', infinite: true },
    /** Verdict. */
    state: { oneOf: ['ok', 'marginal', 'fails'] },
  },
  equation: ['margin = limit - temperature', 'utilisation = (temperature - ambient) / (limit - ambient)'],
  source: [{ level: 'commonPractice', where: 'temperature rise over permitted rise, as machines are rated by class' }],
  si: ({ temperature, limit, ambient, guard }) => {
    const margin = limit - temperature
    return {
      margin,
      utilisation: limit > ambient ? (temperature - ambient) / (limit - ambient) : Number.POSITIVE_INFINITY,
      state: margin >= guard ? 'ok' : margin >= 0 ? 'marginal' : 'fails',
    }
  },
})

/** How much faster insulation ages at a temperature than at its class temperature, by the ten-kelvin rule: screening only. */
export const insulationAgeing = /* @__PURE__ */ formula('thermal.insulationAgeing', {
  inputs: {
    /** Winding temperature, hottest spot. */
    temperature: 'temperature',
    /** Temperature of the insulation class. */
    classTemperature: 'temperature',
    /** Temperature step that halves the life. */
    halvingStep: { kind: 'temperatureDifference', above: 0, default: '10 K' },
  },
  /** Rate of ageing against that at the class temperature. */
  output: 'ratio',
  equation: ['result = 2^((temperature - classTemperature) / halvingStep)'],
  assumes: ['one ageing mechanism'],
  source: [{ level: 'published', where: 'ten-kelvin rule as printed beside the classes of IEC 60085' }],
  si: ({ temperature, classTemperature, halvingStep }) => 2 ** ((temperature - classTemperature) / halvingStep),
})

/** A part with a limit. A part without one is unknown, which is not the same as safe. */
export interface PartLimit {
  /** Name of the part, such as `plate` or `magnets`. */
  readonly part: string
  /** The node that has its temperature. */
  readonly node: string
  /** Limit of the temperature; left out where none is known. */
  readonly limit?: In<'temperature'> | undefined
  /** Margin below which it is marginal. Default 5 K. */
  readonly guard?: In<'temperatureDifference'> | undefined
}

/** The verdict on one part. */
export interface PartVerdict {
  readonly part: string
  readonly node: string
  /** Undefined where there is none: in a runaway. */
  readonly temperature: Quantity<'temperature'> | undefined
  readonly limit: Quantity<'temperature'> | undefined
  /** Limit less temperature, with the temperature's band where it has one. */
  readonly margin: Quantity<'temperatureDifference'> | undefined
  /** Rise over permitted rise. */
  readonly utilisation: Quantity<'ratio'> | undefined
  /** `ok`, `marginal` (within its guard), `fails`, or `unknown` where no limit is given. */
  readonly state: 'ok' | 'marginal' | 'fails' | 'unknown'
}

/** Verdicts on parts, worst first; parts without a limit stand last. */
export interface LimitVerdict {
  /** The part with the smallest margin; undefined when none has a limit. */
  readonly governing: PartVerdict | undefined
  readonly parts: readonly PartVerdict[]
}

const PART_LIMIT = ['part', 'node', 'limit', 'guard'] as const satisfies readonly (keyof PartLimit)[]

/** Throws where limits are no list of parts at nodes that exist. Without names any node may be named. @internal */
export function checkPartLimits(where: string, limits: unknown, names: readonly string[] | undefined): void {
  if (!Array.isArray(limits)) refuse(where, 'limits', limits, 'must be a list of parts with their nodes and limits')
  const issues: Issue[] = []
  limits.forEach((each: unknown, i) => {
    const path = `limits[${i}]`
    if (!onlyKeys(path, each, PART_LIMIT, issues)) return
    const { part, node } = each as PartLimit
    if (typeof part !== 'string') issues.push(issue(`${path}.part`, part, 'must be the name of the part'))
    if (typeof node !== 'string') issues.push(issue(`${path}.node`, node, 'must be the name of a node'))
    else if (names !== undefined && !names.includes(node)) issues.push(unknownNode(`${path}.node`, node, names))
  })
  if (issues.length > 0) throw new InputError(where, issues)
}

/**
 * Compares temperatures with limits. Without temperatures (a runaway) every part with a limit fails. Throws an `InputError` for a limit on a node that has no temperature.
 */
export function checkLimits(
  temperatures: Readonly<Record<string, Quantity<'temperature'>>> | undefined,
  limits: readonly PartLimit[],
  ambient: In<'temperature'> = '40 degC',
): LimitVerdict {
  const air = quantity('temperature', ambient).si
  checkPartLimits('thermal.checkLimits', limits, temperatures === undefined ? undefined : Object.keys(temperatures))
  const parts = limits.map(({ part, node, limit, guard = '5 K' }): PartVerdict => {
    const temperature = temperatures?.[node]
    const shared = { part, node, temperature }
    if (limit === undefined) return { ...shared, limit: undefined, margin: undefined, utilisation: undefined, state: 'unknown' }
    const x = readInputs(
      'thermal.checkLimits',
      { limit: 'temperature', guard: { kind: 'temperatureDifference', min: 0 } },
      { limit, guard },
    )
    const allowed = new Quantity(x.limit, 'temperature')
    if (temperature === undefined) return { ...shared, limit: allowed, margin: undefined, utilisation: undefined, state: 'fails' }
    const { margin, utilisation, state } = temperatureMargin.si({ temperature: temperature.si, ambient: air, ...x })
    return {
      ...shared,
      limit: allowed,
      margin: marginOf(x.limit, margin, temperature),
      utilisation: new Quantity(utilisation, 'ratio'),
      state,
    }
  })
  const sorted = parts.toSorted((a, b) => (a.margin?.si ?? Number.POSITIVE_INFINITY) - (b.margin?.si ?? Number.POSITIVE_INFINITY))
  return { governing: sorted[0]?.margin === undefined ? undefined : sorted[0], parts: sorted }
}

/** A margin with the band and the notes of its temperature. */
function marginOf(limit: number, margin: number, temperature: Quantity<'temperature'>): Quantity<'temperatureDifference'> {
  if (!(temperature instanceof Property)) return new Quantity(margin, 'temperatureDifference', undefined, temperature.notes)
  const { low, high, source, conditions, notes } = temperature
  return new Property(margin, 'temperatureDifference', limit - high, limit - low, source, conditions, notes)
}
