import { studentTQuantile } from '../../numeric/index.js'
import { significant } from '../../units/index.js'
import { inUnitNumber } from './examine-log.js'
import { type Fit, fitTogether, type Part } from './fit.js'
import { freeZero } from './instrument-errors.js'
import type { LogColumn } from './log-remarks.js'
import { type LogModel, type Rows, toCoordinate } from './model.js'

/** Fewest readings that show an error of a column beside what a log determines. */
const MIN_READINGS = 7
/** Chance that a log without any such error gets a remark, over all errors that are tried. */
const FALSE_ALARMS = 0.002
/** Errors that explain nearly as much as the best one are named with it. */
const NEARLY = 0.9
/** Columns that are set or counted, not read. */
const SET = new Set(['time', 'wrap angle'])

/** One column of a log that is off: by the same amount in every row, or by more from row to row. */
interface ColumnError {
  readonly column: number
  readonly shape: 'zero' | 'drift'
  /** Its amount, SI, at the last row. */
  readonly amount: number
  /** By how much it lowers the sum of squares, in squares of the scatter. */
  readonly gain: number
}

/** What a log says of an error of one of its columns, and the fit with that error as a further unknown. */
export interface OffColumn {
  readonly words: string
  readonly part: Part
  readonly fit: Fit
}

/** The same model of readings whose column is off by a share of an amount, row by row. */
function withError(model: LogModel, column: number, shares: readonly number[], within: number): LogModel {
  const error = freeZero(model.log, 'error of a column', within)
  const without = (rows: Rows, amount: number) =>
    rows.map((row, i) => row.map((x, c) => (c === column ? x - amount * (shares[i] as number) : x)))
  return {
    ...model,
    parameters: [...model.parameters, error],
    // A column may stand on both sides: in what a model predicts from, and in what it predicts.
    predict: (at, rows) => {
      const corrected = without(rows, at(error.id))
      const predicted = model.predict(at, corrected)
      return rows.flatMap((row, i) => {
        const [read, meant] = [model.measured(row), model.measured(corrected[i] as readonly number[])]
        return read.map((x, c) => (predicted[i * model.channels + c] as number) + x - meant[c]!)
      })
    },
  }
}

/** Share of its amount that an error has at each row: by time where the log has times, else by the order of the rows. */
const sharesOf = (shape: ColumnError['shape'], columns: readonly LogColumn[], rows: Rows): number[] => {
  const [first, last] = [rows[0]![0]!, rows.at(-1)![0]!]
  return rows.map(([x], i) => (shape === 'zero' ? 1 : columns[0]!.name === 'time' ? (x! - first) / (last - first) : i / (rows.length - 1)))
}

/** Residuals of a part over their scatter, and what is known of its parameters, at some coordinates. */
function residualsAt({ model, rows, kept, scatter }: Part, { parameters }: Fit, at: readonly number[]): number[] {
  const values = new Map(parameters.map(({ id, scale }, i) => [id, scale === 'log' ? Math.exp(at[i]!) : at[i]!]))
  const predicted = model.predict((id) => values.get(id) ?? 0, rows)
  const out = rows.flatMap((row, i) =>
    kept[i] === true ? model.measured(row).map((read, c) => ((predicted[i * model.channels + c] as number) - read) / scatter[c]!) : [],
  )
  parameters.forEach((parameter, i) => {
    if (parameter.deviation !== undefined) out.push((at[i]! - toCoordinate(parameter, parameter.start)) / parameter.deviation)
  })
  return out
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0)
const less = (a: readonly number[], b: readonly number[], times: number) => a.map((x, i) => x - times * b[i]!)
/** What of a direction is at right angles to others, which are so to each other and of unit length. */
const apart = (direction: readonly number[], others: readonly (readonly number[])[]) =>
  others.reduce((left, other) => less(left, other, dot(left, other)), direction)

/** Directions in which the free parameters move the residuals, at right angles to each other. */
function directionsOf(part: Part, fit: Fit): number[][] {
  const at = [...fit.solution.parameters]
  const out: number[][] = []
  fit.parameters.forEach((_, i) => {
    const error = fit.solution.standardErrors[i] as number
    if (!(error > 0) || !Number.isFinite(error)) return
    const moved = (away: number) =>
      residualsAt(
        part,
        fit,
        at.map((x, k) => (k === i ? x + away : x)),
      )
    const slope = less(moved(STEP * error), moved(-STEP * error), 1)
    const rest = apart(apart(slope, out), out)
    const length = Math.sqrt(dot(rest, rest))
    if (length > 1e-6 * Math.sqrt(dot(slope, slope))) out.push(rest.map((x) => x / length))
  })
  return out
}
/** Step of a difference, in standard errors. */
const STEP = 0.05

/** Range of a column; of one that is set to the same value throughout, that value. */
const rangeOf = (values: readonly number[]) => Math.max(...values) - Math.min(...values) || Math.abs(values[0]!)

/** Errors of single columns by how much of the misfit they explain, to first order about the fit. */
function columnErrors(part: Part, fit: Fit, columns: readonly LogColumn[]): { readonly errors: ColumnError[]; readonly left: number } {
  const at = [...fit.solution.parameters]
  const directions = directionsOf(part, fit)
  const own = residualsAt(part, fit, at)
  const rest = apart(own, directions)
  const errors = columns.flatMap(({ name }, column) => {
    if (SET.has(name)) return []
    const values = part.rows.map((row) => row[column] as number)
    const range = rangeOf(values)
    return (['zero', 'drift'] as const).flatMap((shape): ColumnError[] => {
      const model = withError(part.model, column, sharesOf(shape, columns, part.rows), range)
      const error = model.parameters.at(-1)!
      const moved = (amount: number) => residualsAt({ ...part, model }, { ...fit, parameters: [...fit.parameters, error] }, [...at, amount])
      const step = 1e-3 * range
      const slope = less(moved(step), moved(-step), 1).map((x) => x / (2 * step))
      const free = apart(slope, directions)
      const square = dot(free, free)
      // A column whose zero the log determines anyway, or that moves nothing.
      if (!(square > 1e-6 * dot(slope, slope))) return []
      const along = dot(free, rest)
      const amount = -along / square
      // An error larger than the range of its column is none of an instrument.
      return Math.abs(amount) > range ? [] : [{ column, shape, amount, gain: along ** 2 / square }]
    })
  })
  return { errors: errors.toSorted((a, b) => b.gain - a.gain), left: dot(own, own) }
}

/** Whether an error of one column explains most of what the model of a log leaves unexplained, and which. */
export function columnError(part: Part, fit: Fit, columns: readonly LogColumn[], units: readonly string[]): OffColumn | undefined {
  const readings = part.model.channels * part.kept.filter(Boolean).length
  const freedom = readings - part.model.learns.length - 2
  if (part.kept.filter(Boolean).length < MIN_READINGS || freedom < 2) return undefined
  const { errors, left } = columnErrors(part, fit, columns)
  const [best] = errors
  if (best === undefined) return undefined
  const limit = studentTQuantile(1 - FALSE_ALARMS / (2 * errors.length), freedom) ** 2
  if (!(best.gain > (limit * Math.max(0, left - best.gain)) / freedom)) return undefined
  const named = errors.filter(({ gain }) => gain > NEARLY * best.gain)
  const within = 10 * rangeOf(part.rows.map((row) => row[best.column] as number))
  const model = withError(part.model, best.column, sharesOf(best.shape, columns, part.rows), within)
  const other = { ...part, model }
  return { words: wordsOf(named, columns, units), part: other, fit: fitTogether([other], fit) }
}

function wordsOf(errors: readonly ColumnError[], columns: readonly LogColumn[], units: readonly string[]): string {
  const causes = errors.map(({ column, shape, amount }) => {
    const { name, kind } = columns[column] as LogColumn
    // Differences of temperatures are in kelvin, whatever the zero of the column's unit.
    const unit = kind === 'temperature' && units[column] === 'degC' ? 'K' : (units[column] as string)
    const size = Math.abs(inUnitNumber(kind, unit, amount) - inUnitNumber(kind, unit, 0))
    const much = `${significant(size, 2)} ${unit} too ${amount > 0 ? 'high' : 'low'}`
    return shape === 'zero' ? `${name} reads ${much} in every row` : `${name} drifts, to ${much} in the last row`
  })
  return `the readings would follow the model much more closely if ${causes.join(', or if ')}. They are used as they are, and the interval holds both: read each instrument without load before and after the log, and subtract`
}
