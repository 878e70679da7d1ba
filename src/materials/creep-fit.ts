import { Property, readInputs, requireKeys, type Source } from '../formula/index.js'
import { fitLeastSquares, type LeastSquaresFit, studentTQuantile } from '../numeric/index.js'
import { type In, InputError, type Kind, type Note, refuse } from '../units/index.js'
import { findleySinhStrain, findleyStrain, nortonBaileyStrain } from './creep.js'
import { type CreepLaw, findleyLaw, findleySinhLaw, type LinearCreepLaw } from './creep-law.js'

/** One line of a creep log: total strain under a constant stress, or creep strain alone for the Norton-Bailey law. */
export interface CreepReading {
  /** Time after the load was put on. */
  readonly time: In<'time'>
  /** Stress of the test. */
  readonly stress: In<'stress'>
  /** Strain at that time. */
  readonly strain: In<'strain'>
}

/** How a creep log is fitted. */
export interface CreepFitOptions {
  /** Time the creep coefficient is stated for. Default 1 h. */
  readonly referenceTime?: In<'time'>
  /** Confidence of the parameters' ranges. Default 0.95. */
  readonly confidence?: number
}

/** A fitted creep law. */
export interface CreepFit<N extends string> {
  /** Parameters with their confidence ranges. */
  readonly parameters: { readonly [K in N]: Property }
  /** Root mean square of the relative difference between strain read and strain fitted. */
  readonly scatter: number
  /** Relative difference of each reading, read over fitted less one. */
  readonly residuals: readonly number[]
  /** What the log does not determine, and how far the fit may be carried. */
  readonly notes: readonly Note[]
}

/** One parameter of the search: its logarithm (or itself for exponents) is what the fit moves. */
interface Parameter<N extends string> {
  readonly name: N
  readonly kind: Kind
  readonly start: number
  readonly lower?: number
  readonly upper?: number
  /** Moved as it is, not as its logarithm. */
  readonly plain?: true
}

type Row = { readonly time: number; readonly stress: number; readonly strain: number }

function rowsOf(where: string, readings: readonly CreepReading[], needed: number, confidence: number): readonly Row[] {
  const fields = { time: { kind: 'time', min: 0 }, stress: { kind: 'stress', above: 0 }, strain: { kind: 'strain', above: 0 } } as const
  const { readings: rows } = readInputs(where, { readings: { list: { fields } } }, { readings: readings as never })
  if (rows.length < needed)
    throw new InputError(where, [
      { path: 'readings', given: `${rows.length} readings`, accepts: `at least ${needed} are needed to fit and to judge the fit` },
    ])
  if (!(confidence > 0 && confidence < 1)) refuse(where, 'confidence', confidence, 'must lie between 0 and 1')
  return rows
}

function fitted<N extends string>(
  where: string,
  rows: readonly Row[],
  parameters: readonly Parameter<N>[],
  strain: (values: Record<N, number>, row: Row) => number,
  confidence: number,
): CreepFit<N> & { readonly values: Record<N, number> } {
  const valuesOf = (p: ArrayLike<number>) =>
    Object.fromEntries(parameters.map(({ name, plain }, i) => [name, plain ? (p[i] as number) : Math.exp(p[i] as number)])) as Record<
      N,
      number
    >
  const inner = (x: number | undefined, plain: true | undefined, otherwise: number) =>
    x === undefined ? otherwise : plain ? x : Math.log(x)
  const fit = fitLeastSquares({
    count: rows.length,
    start: parameters.map(({ start, plain }) => (plain ? start : Math.log(start))),
    lower: parameters.map(({ lower, plain }) => inner(lower, plain, Number.NEGATIVE_INFINITY)),
    upper: parameters.map(({ upper, plain }) => inner(upper, plain, Number.POSITIVE_INFINITY)),
    residuals: (p, out) => {
      const values = valuesOf(p)
      rows.forEach((row, i) => {
        out[i] = Math.log(strain(values, row) / row.strain)
      })
    },
  })
  const values = valuesOf(fit.parameters)
  const half = (i: number) => studentTQuantile((1 + confidence) / 2, Math.max(1, fit.degreesOfFreedom)) * (fit.standardErrors[i] as number)
  const source: Source = { level: 'computed', where: `fitted to ${rows.length} own readings; range at ${100 * confidence} % confidence` }
  const undetermined = new Set(fit.undetermined.flatMap((u) => u.parameters))
  const entries = parameters.map(({ name, kind, plain }, i): [N, Property] => {
    const spread = half(i)
    const value = values[name]
    const open = undetermined.has(i) || !Number.isFinite(spread)
    const low = open ? value : plain ? value - spread : value * Math.exp(-spread)
    const high = open ? value : plain ? value + spread : value * Math.exp(spread)
    return [name, new Property(value, kind, low, high, source, open ? 'not determined by the readings' : 'relative strain fitted')]
  })
  return {
    values,
    parameters: Object.fromEntries(entries) as { [K in N]: Property },
    scatter: Math.sqrt(fit.sumOfSquares / rows.length),
    residuals: Array.from(fit.residuals, (r) => Math.exp(-r) - 1),
    notes: notesOf(where, rows, fit, parameters),
  }
}

function notesOf(where: string, rows: readonly Row[], fit: LeastSquaresFit, parameters: readonly Parameter<string>[]): Note[] {
  const notes: Note[] = []
  const say = (text: string) => notes.push({ formula: `materials.${where}`, text })
  const list = (indices: readonly number[]) => indices.map((i) => parameters[i]?.name).join(' and ')
  for (const { parameters: which } of fit.undetermined) say(`the readings do not determine ${list(which)}`)
  if (fit.atLimit.length > 0) say(`${list(fit.atLimit)} ended at a limit: another law may fit better`)
  if (fit.ended === 'limit') say('the search ended before it settled')
  const times = rows.map(({ time }) => time).filter((t) => t > 0)
  const span = Math.log10(Math.max(...times) / Math.min(...times))
  if (!(span >= 2)) say('the readings span less than two decades of time: the exponent is a guess')
  say(`holds to about ten times the longest reading, ${Number((Math.max(...times) / 3600).toPrecision(3))} h; a fresh print goes on ageing`)
  return notes
}

const REFERENCE = 3600

function referenceOf(where: string, options: CreepFitOptions): number {
  requireKeys(where, 'options', options, ['referenceTime', 'confidence'])
  return options.referenceTime === undefined
    ? REFERENCE
    : readInputs(where, { referenceTime: { kind: 'time', above: 0 } }, { referenceTime: options.referenceTime }).referenceTime
}

/**
 * The linear Findley law of a creep log: modulus at once, creep coefficient and exponent, with confidence ranges, and the law ready for use.
 * Relative strain is fitted, so early small readings count as much as late large ones. Throws an `InputError` for fewer than five readings or readings that
 * cannot be.
 */
export function fitFindley(
  readings: readonly CreepReading[],
  options: CreepFitOptions = {},
): CreepFit<'modulus' | 'creepCoefficient' | 'creepExponent'> & { readonly law: LinearCreepLaw } {
  const where = 'fitFindley'
  const { confidence = 0.95 } = options
  const rows = rowsOf(where, readings, 5, confidence)
  const referenceTime = referenceOf(where, options)
  const stiffest = Math.max(...rows.map(({ stress, strain }) => stress / strain))
  const fit = fitted(
    where,
    rows,
    [
      { name: 'modulus', kind: 'modulus', start: 1.1 * stiffest },
      { name: 'creepCoefficient', kind: 'ratio', start: 0.1 },
      { name: 'creepExponent', kind: 'ratio', start: 0.2, lower: 0.005, upper: 0.95, plain: true },
    ],
    (v, row) => findleyStrain.si({ ...v, ...row, referenceTime, strength: undefined }),
    confidence,
  )
  const { values, ...rest } = fit
  const law = findleyLaw({
    modulus: [values.modulus, 'Pa'],
    creepCoefficient: values.creepCoefficient,
    creepExponent: values.creepExponent,
    referenceTime: [referenceTime, 's'],
    longestTest: [Math.max(...rows.map(({ time }) => time)), 's'],
  })
  return { ...rest, law }
}

/** The Findley law with its stress dependence, of logs at several stresses; see `fitFindley`. Throws an `InputError` for fewer than three different stresses. */
export function fitFindleySinh(
  readings: readonly CreepReading[],
  options: CreepFitOptions = {},
): CreepFit<'elasticStrain' | 'elasticStress' | 'creepStrain' | 'creepStress' | 'creepExponent'> & { readonly law: CreepLaw } {
  const where = 'fitFindleySinh'
  const { confidence = 0.95 } = options
  const rows = rowsOf(where, readings, 9, confidence)
  const referenceTime = referenceOf(where, options)
  const stresses = new Set(rows.map(({ stress }) => stress))
  if (stresses.size < 3)
    throw new InputError(where, [
      {
        path: 'readings',
        given: `${stresses.size} stresses`,
        accepts: 'at least three different stresses tell how creep depends on stress',
      },
    ])
  const top = Math.max(...stresses)
  const first = rows.reduce((a, b) => (b.time < a.time ? b : a))
  const scale = first.strain / first.stress
  const fit = fitted(
    where,
    rows,
    [
      { name: 'elasticStrain', kind: 'strain', start: scale * top },
      { name: 'elasticStress', kind: 'stress', start: top, lower: 0.05 * top, upper: 50 * top },
      { name: 'creepStrain', kind: 'strain', start: 0.1 * scale * top },
      { name: 'creepStress', kind: 'stress', start: top, lower: 0.05 * top, upper: 50 * top },
      { name: 'creepExponent', kind: 'ratio', start: 0.2, lower: 0.005, upper: 0.95, plain: true },
    ],
    (v, row) => findleySinhStrain.si({ ...v, ...row, referenceTime }),
    confidence,
  )
  const { values: v, ...rest } = fit
  const law = findleySinhLaw({
    elasticStrain: v.elasticStrain,
    elasticStress: [v.elasticStress, 'Pa'],
    creepStrain: v.creepStrain,
    creepStress: [v.creepStress, 'Pa'],
    creepExponent: v.creepExponent,
    referenceTime: [referenceTime, 's'],
    longestTest: [Math.max(...rows.map(({ time }) => time)), 's'],
  })
  return { ...rest, law }
}

/**
 * The Norton-Bailey law of logs at two or more stresses; strains are creep alone, without the elastic part. The reference stress is the highest of the log.
 * Throws an `InputError` like `fitFindley`.
 */
export function fitNortonBailey(
  readings: readonly CreepReading[],
  options: CreepFitOptions = {},
): CreepFit<'referenceStrain' | 'stressExponent' | 'timeExponent'> & { readonly referenceStress: number; readonly referenceTime: number } {
  const where = 'fitNortonBailey'
  const { confidence = 0.95 } = options
  const rows = rowsOf(where, readings, 5, confidence)
  const referenceTime = referenceOf(where, options)
  const stresses = new Set(rows.map(({ stress }) => stress))
  if (stresses.size < 2)
    throw new InputError(where, [{ path: 'readings', given: 'one stress', accepts: 'at least two stresses tell the stress exponent' }])
  if (rows.some(({ time }) => time === 0))
    throw new InputError(where, [
      { path: 'readings', given: 'a reading at time zero', accepts: 'creep strain starts at zero: leave it out' },
    ])
  const referenceStress = Math.max(...stresses)
  const { values: _, ...rest } = fitted(
    where,
    rows,
    [
      { name: 'referenceStrain', kind: 'strain', start: (rows[0] as Row).strain },
      { name: 'stressExponent', kind: 'ratio', start: 1.5, lower: 0.1, upper: 20, plain: true },
      { name: 'timeExponent', kind: 'ratio', start: 0.3, lower: 0.005, upper: 1, plain: true },
    ],
    (v, row) => nortonBaileyStrain.si({ ...v, ...row, referenceStress, referenceTime }),
    confidence,
  )
  return { ...rest, referenceStress, referenceTime }
}
