import { fitLeastSquares, type LeastSquaresFit } from '../../numeric/index.js'
import { fromCoordinate, type LogModel, type Parameter, type Rows, toCoordinate } from './model.js'

/** A log with its model, the readings that are kept, and how far a reading scatters in each channel. */
export interface Part {
  readonly model: LogModel
  readonly rows: Rows
  readonly kept: readonly boolean[]
  readonly scatter: readonly number[]
  /** Readings that the scatter rests on, less what the fit took of them; absent where the scatter was not estimated. */
  readonly freedom?: number
}

/** Parameters fitted to some logs together. */
export interface Fit {
  readonly parameters: readonly Parameter[]
  readonly solution: LeastSquaresFit
  /** Differences of predicted and read values of each part: channels of each row, row by row. */
  readonly differences: readonly Float64Array[]
}

/** Index of a parameter in a fit. */
export const indexOf = ({ parameters }: Fit, id: string): number => parameters.findIndex((parameter) => parameter.id === id)
/** Value of a parameter in a fit. */
export const valueIn = (fit: Fit, id: string): number => {
  const i = indexOf(fit, id)
  return fromCoordinate(fit.parameters[i] as Parameter, fit.solution.parameters[i] as number)
}

/** Parameters of some logs, each once. What one of the logs determines needs no other knowledge. */
function parametersOf(parts: readonly Part[]): Parameter[] {
  const learnt = new Set(parts.flatMap(({ model }) => model.learns))
  const all = new Map<string, Parameter>()
  for (const { model } of parts)
    for (const parameter of model.parameters)
      if (!all.has(parameter.id)) all.set(parameter.id, learnt.has(parameter.id) ? { ...parameter, deviation: undefined } : parameter)
  return [...all.values()]
}

/**
 * Fits all parameters of some logs together. Each reading weighs as the inverse square of its scatter; what is known of a parameter without the logs
 * (the accuracy of an instrument, the band of a friction that nobody measured) is one more reading. Errors of instruments are so estimated
 * as far as the logs tell them, and widen the intervals of the fields as far as they do not.
 */
export function fitTogether(parts: readonly Part[], from?: Fit, maxIterations = 200): Fit {
  const parameters = parametersOf(parts)
  const known = parameters.flatMap((parameter, i) => (parameter.deviation === undefined ? [] : [i]))
  const readings = parts.map(({ model, kept }) => model.channels * kept.filter(Boolean).length)
  const start = parameters.map((parameter) => {
    const i = from === undefined ? -1 : indexOf(from, parameter.id)
    return i < 0 ? toCoordinate(parameter, parameter.start) : (from!.solution.parameters[i] as number)
  })
  const centre = parameters.map((parameter) => toCoordinate(parameter, parameter.start))
  const differences = parts.map(({ model, rows }) => new Float64Array(model.channels * rows.length))
  const predict = (p: ArrayLike<number>) => {
    const at = new Map(parameters.map((parameter, i) => [parameter.id, fromCoordinate(parameter, p[i] as number)]))
    for (const [k, { model, rows }] of parts.entries()) {
      const predicted = model.predict((id) => at.get(id) as number, rows)
      const out = differences[k] as Float64Array
      rows.forEach((row, i) => {
        model.measured(row).forEach((read, c) => {
          out[i * model.channels + c] = (predicted[i * model.channels + c] as number) - read
        })
      })
    }
  }
  const solution = fitLeastSquares({
    count: readings.reduce((sum, n) => sum + n, 0) + known.length,
    start,
    lower: parameters.map((parameter) => toCoordinate(parameter, parameter.low)),
    upper: parameters.map((parameter) => toCoordinate(parameter, parameter.high)),
    sigma: 1,
    maxIterations,
    fTolerance: 1e-9,
    xTolerance: 1e-9,
    residuals: (p, out) => {
      predict(p)
      let n = 0
      for (const [k, { model, kept, scatter }] of parts.entries())
        kept.forEach((keep, i) => {
          // A path goes through all rows: what a reading did to the cord stays done, whether it is believed or not.
          if (keep) for (let c = 0; c < model.channels; c++) out[n++] = (differences[k]![i * model.channels + c] as number) / scatter[c]!
        })
      for (const i of known) out[n++] = ((p[i] as number) - centre[i]!) / (parameters[i]!.deviation as number)
    },
  })
  predict(solution.parameters)
  return { parameters, solution, differences: differences.map((difference) => difference.slice()) }
}

/** No model follows readings closer than this share of their range. */
const MIN_SCATTER_SHARE = 0.002
/** How often the scatter is estimated again. */
const SCATTER_ROUNDS = 4
/** Scatter that changes by less than this share changes no interval. */
const SCATTER_TOLERANCE = 0.02

/** Fits one log alone, and finds how far its readings scatter. */
export function fitAlone(model: LogModel, rows: Rows, kept: readonly boolean[]): { part: Part; fit: Fit; closest: readonly number[] } {
  const read = rows.map(model.measured)
  const floor = Array.from({ length: model.channels }, (_, c) => {
    const values = read.map((row) => row[c]!)
    const range = Math.max(...values) - Math.min(...values)
    const displayed = (model.steps?.[c] ?? 0) / Math.sqrt(12)
    return Math.max((model.closest ?? MIN_SCATTER_SHARE) * range, displayed, 1e-6 * Math.max(...values.map(Math.abs)), 1e-12)
  })
  let part: Part = { model, rows, kept, scatter: floor.map((x) => 5 * x) }
  let fit = fitTogether([part])
  for (let round = 1; round < SCATTER_ROUNDS; round++) {
    const { scatter: found, freedom } = scatterOf(part, fit)
    const scatter = found.map((x, c) => Math.max(x, floor[c]!, roundedAlike(part, x, c)))
    const same = scatter.every((x, c) => Math.abs(x - part.scatter[c]!) < SCATTER_TOLERANCE * x)
    part = { ...part, scatter, freedom }
    if (same) break
    fit = fitTogether([part], fit)
  }
  return { part, fit, closest: floor }
}

/** Readings of the same thing that scatter by less than this share of a step are rounded the same way. */
const ALIKE_BELOW = 0.4
/** Scatter that leaves the mean of readings of the same thing the rounding that all of them share. */
function roundedAlike({ model, rows, kept }: Part, scatter: number, c: number): number {
  const step = model.steps?.[c] ?? 0
  const same = rows[0]?.length === 1
  return same && scatter < ALIKE_BELOW * step ? step * Math.sqrt(kept.filter(Boolean).length / 12) : 0
}

/** Readings, beyond what the fit takes of them, that tell a scatter. Where fewer are left, the usual scatter counts for those that lack. */
export const ENOUGH_FREEDOM = 3

/**
 * Scatter of the readings about the fit, widened where neighbours deviate alike: such readings tell less than their number. An error of an instrument
 * that follows the readings takes of them what it is narrowed by, so that three readings may leave nothing to tell a scatter from.
 */
function scatterOf({ model, kept }: Part, fit: Fit): { scatter: number[]; freedom: number } {
  const taken = takenBy(fit) / model.channels
  let freedom = 0
  const scatter = Array.from({ length: model.channels }, (_, c) => {
    const left = kept.flatMap((keep, i) => (keep ? [fit.differences[0]![i * model.channels + c] as number] : []))
    const square = left.reduce((sum, x) => sum + x * x, 0)
    const alike = Math.min(MAX_CORRELATION, Math.max(0, alikeness(left)))
    const free = Math.max(0, left.length - taken)
    const lacking = model.usual === undefined ? Math.max(0, 1 - free) : Math.max(0, ENOUGH_FREEDOM - free)
    freedom += free + lacking
    const usual = lacking * (model.usual?.[c] ?? 0) ** 2
    return Math.sqrt(((square + usual) / (free + lacking)) * ((1 + alike) / (1 - alike)))
  })
  return { scatter, freedom }
}

/** How many readings the parameters take: one for each that only the log determines, and the part of one by which it narrows what was known before. */
function takenBy({ parameters, solution: { covariance } }: Fit): number {
  const n = parameters.length
  return parameters.reduce((sum, { deviation }, i) => {
    const narrowed = deviation === undefined ? 1 : 1 - (covariance[i * n + i] as number) / deviation ** 2
    return sum + Math.min(1, Math.max(0, narrowed))
  }, 0)
}

const MAX_CORRELATION = 0.9
/** Correlation of deviations with their neighbours: 0 for independent ones. Few readings tell it badly, so that chance is taken off. */
export function alikeness(deviations: readonly number[]): number {
  const square = deviations.reduce((sum, x) => sum + x * x, 0)
  if (deviations.length < 8 || square === 0) return 0
  const pairs = deviations.slice(1).reduce((sum, x, i) => sum + x * (deviations[i] as number), 0)
  return pairs / square - 1 / Math.sqrt(deviations.length)
}
