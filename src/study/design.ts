import { type AnyFormula, onlyKeys, type Scalar } from '../formula/index.js'
import { latinHypercube, SOBOL_DIMENSIONS, sobolSequence } from '../numeric/index.js'
import { InputError, type Issue, issue, type Kind } from '../units/index.js'
import { type Axis, axisOf, MAX_VALUES } from './design-axis.js'
import type { Design } from './design-choice.js'
import { checkSeed } from './options.js'
import { scalarAt } from './path.js'

export type { Design, Range } from './design-choice.js'

/** The inputs a design varies, and its rows. Any row can be had by its index, so a study can be divided freely. */
export interface Plan {
  /** How the varied inputs are combined. */
  readonly design: Design
  /** Paths of the varied inputs. */
  readonly paths: readonly string[]
  /** Kind of each of them. */
  readonly kinds: readonly Kind[]
  /** Number of rows. */
  readonly rows: number
  /** Writes the SI values of one row. */
  fill(row: number, into: Float64Array): void
  /** Writes the SI values of rows `from` to `to` (exclusive), a column for each input. */
  fillColumns(from: number, to: number, into: readonly Float64Array[]): void
  /** How many rows next to each other differ in the last input alone; nothing where each may differ in all. */
  readonly alikeRows?: number
}

/** Reads what varies. Throws one `InputError` that lists every issue. */
export function planOf(formula: AnyFormula, over: Readonly<Record<string, unknown>>, design: Design): Plan {
  const issues: Issue[] = []
  const paths = Object.keys(over ?? {})
  if (paths.length === 0) issues.push(issue('over', over, 'must name at least one input to vary'))
  const scalars = paths.map((path) => scalarAt(formula, path))
  const kinds = scalars.map(({ kind }) => kind)
  const axes = paths.map((path, i) => axisOf(path, scalars[i] as Scalar, over[path], design, issues))
  if (issues.length === 0 && design === 'list' && axes.some((axis) => axis.count !== axes[0]?.count)) {
    issues.push({
      path: 'over',
      given: axes.map((axis, i) => `${paths[i]}: ${axis.count}`).join(', '),
      accepts: 'lists must be of equal length',
    })
  }
  const sampled = typeof design === 'object' ? sampledCount(design, paths.length, issues) : 0
  if (issues.length > 0) throw new InputError('sweep', issues)

  const given = { design, paths, kinds }
  if (design === 'list') return { ...given, ...listRows(axes) }
  return { ...given, ...(design === 'grid' ? gridRows(axes) : sampledRows(axes, design, sampled)) }
}

type Rows = Pick<Plan, 'rows' | 'fill' | 'fillColumns' | 'alikeRows'>

/** Row by row through lists of equal length. */
const listRows = (axes: readonly Axis[]): Rows => ({
  rows: axes[0]?.count as number,
  ...byRow(axes.length, (row, into) => {
    for (let i = 0; i < axes.length; i++) into[i] = (axes[i] as Axis).value(row)
  }),
})

/** Every value with every other: the last input varies fastest. */
function gridRows(axes: readonly Axis[]): Rows {
  const rows = axes.reduce((product, axis) => product * axis.count, 1)
  // How many rows a value of each input stands for.
  const repeats = axes.map((_, i) => axes.slice(i + 1).reduce((product, axis) => product * axis.count, 1))
  if (rows > Number.MAX_SAFE_INTEGER)
    throw new InputError('sweep', [
      { path: 'over', given: `${rows} rows`, accepts: 'must make rows that can be counted one by one, at most 9e15 of them' },
    ])
  // Made when the first column is filled: a sweep that is too large has no columns.
  let made: Float64Array[] | undefined
  const values = () => {
    made ??= axes.map((axis) => Float64Array.from({ length: axis.count }, (_, k) => axis.value(k)))
    return made
  }
  return {
    rows,
    ...(axes.length > 1 && { alikeRows: axes.at(-1)?.count as number }),
    fill: (row, into) => {
      for (let i = 0; i < axes.length; i++) {
        const { count, value } = axes[i] as Axis
        into[i] = value(Math.floor(row / (repeats[i] as number)) % count)
      }
    },
    fillColumns: (from, to, into) => {
      for (let i = 0; i < axes.length; i++)
        fillRuns(into[i] as Float64Array, values()[i] as Float64Array, repeats[i] as number, from, to - from)
    },
  }
}

/** Points of a sampled design, each within the ranges. */
function sampledRows(axes: readonly Axis[], design: Exclude<Design, string>, rows: number): Rows {
  const pointAt = 'sobol' in design ? sobolPoints(axes.length, design.seed) : latinPoints(design.latinHypercube, axes.length, design.seed)
  const point = new Float64Array(axes.length)
  const fill = (row: number, into: Float64Array) => {
    pointAt(row, point)
    for (let i = 0; i < axes.length; i++) into[i] = (axes[i] as Axis).at(point[i] as number)
  }
  return { rows, ...byRow(axes.length, fill) }
}

/** Rows that are copied at a time: what fits into the processor's nearest memory with room to spare. */
const COPIED = 2048

/** Values each repeated so many times, over and over, from a row on. */
function fillRuns(column: Float64Array, own: Float64Array, repeat: number, from: number, rows: number): void {
  const period = own.length * repeat
  let k = Math.floor(from / repeat) % own.length
  let left = repeat - (from % repeat)
  for (let at = 0; at < Math.min(period, rows); k = (k + 1) % own.length, left = repeat) {
    column.fill(own[k] as number, at, at + left)
    at += left
  }
  for (let at = period; at < rows; ) {
    const start = at % period
    const run = Math.min(COPIED, at - start, rows - at)
    column.copyWithin(at, start, start + run)
    at += run
  }
}

/** A plan's rows had one by one, and as columns. */
function byRow(width: number, fill: Plan['fill']): Pick<Plan, 'fill' | 'fillColumns'> {
  const row = new Float64Array(width)
  return {
    fill,
    fillColumns: (from, to, into) => {
      for (let i = from; i < to; i++) {
        fill(i, row)
        for (let p = 0; p < width; p++) (into[p] as Float64Array)[i - from] = row[p] as number
      }
    },
  }
}

type Points = (row: number, into: Float64Array) => void

const sobolPoints = (dimensions: number, seed: number | undefined): Points => {
  const sequence = sobolSequence(dimensions, seed)
  return (row, into) => void sequence.point(row, into)
}

const latinPoints = (count: number, dimensions: number, seed: number): Points => {
  const all = latinHypercube(count, dimensions, seed)
  return (row, into) => into.set(all.subarray(row * dimensions, (row + 1) * dimensions))
}

/** A Sobol sequence has that many points. */
const MAX_SOBOL = 2 ** 32

function sampledCount(design: Exclude<Design, string>, dimensions: number, issues: Issue[]): number {
  const [name, count, most] =
    'sobol' in design ? ['sobol', design.sobol, MAX_SOBOL] : ['latinHypercube', design.latinHypercube, Math.floor(MAX_VALUES / dimensions)]
  onlyKeys('design', design, [name, 'seed'], issues)
  if (!(Number.isInteger(count) && count >= 1 && count <= most))
    issues.push(issue(`design.${name}`, count, `must be a whole number of rows from 1 to ${most}`))
  const needed = name === 'latinHypercube' || design.seed !== undefined
  if (needed) checkSeed(design.seed, issues, 'design.seed')
  if (dimensions > SOBOL_DIMENSIONS)
    issues.push({ path: 'over', given: `${dimensions} inputs`, accepts: `a sampled design has at most ${SOBOL_DIMENSIONS}` })
  return count
}
