import { Property, readInputs, type Source } from '../formula/index.js'
import { fitLeastSquares, type LeastSquaresFit, studentTQuantile } from '../numeric/index.js'
import { type In, InputError, type Kind, type Note, refuse } from '../units/index.js'

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

export type Row = { readonly time: number; readonly stress: number; readonly strain: number }

export function rowsOf(where: string, readings: readonly CreepReading[], needed: number, confidence: number): readonly Row[] {
  const fields = { time: { kind: 'time', min: 0 }, stress: { kind: 'stress', above: 0 }, strain: { kind: 'strain', above: 0 } } as const
  const { readings: rows } = readInputs(where, { readings: { list: { fields } } }, { readings: readings as never })
  if (rows.length < needed)
    throw new InputError(where, [
      { path: 'readings', given: `${rows.length} readings`, accepts: `at least ${needed} are needed to fit and to judge the fit` },
    ])
  if (!(confidence > 0 && confidence < 1)) refuse(where, 'confidence', confidence, 'must lie between 0 and 1')
  return rows
}

export function fitted<N extends string>(
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
