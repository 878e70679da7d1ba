import {
  type AnyFormula,
  type Formula,
  type Inputs,
  type Output,
  type OutputField,
  type OutputRecord,
  recordReader,
} from '../formula/index.js'
import { type In, InputError, type Issue, type Kind, Quantity } from '../units/index.js'
import { type Design, type Plan, planOf, type Range } from './design.js'
import { type KindAt, planRecord, requirementsOf, type ScalarPath, untyped, withValueAt } from './path.js'
import { runRows } from './row-loop.js'
import { type Column, numbers, Table } from './table.js'

/** Inputs that a sweep varies: a list of values or a range for each, by dotted path. */
export type Over<I> = { readonly [P in ScalarPath<I>]?: readonly In<KindAt<I, P>>[] | Range<KindAt<I, P>> }

/** The inputs that stay as they are; those that vary are left out. */
export type Fixed<I> = { readonly [N in keyof I]?: unknown }

/** The sweep to run. */
export interface SweepPlan<I> {
  readonly over: Over<I>
  readonly fixed?: Fixed<I>
  /** Default `grid`. */
  readonly design?: Design
}

/** A sweep ready to be run row by row: checked once, then plain numbers. */
export interface Runner {
  /** Id of the formula. */
  readonly id: string
  /** Inputs that vary, and their rows. */
  readonly plan: Plan
  /** The fixed inputs as text, to tell one sweep from another. */
  readonly described: string
  /** Fills rows `from` to `to` (exclusive) of the columns, whose first row stands for row `from`. */
  run(from: number, to: number, columns: readonly Column[]): void
  /** Whether a column holds words. */
  readonly words: boolean
  /** Empty columns for that many rows. Throws an `InputError` where they do not fit into memory. */
  columns(rows: number): Column[]
}

/**
 * Runs a formula over many inputs and gives the results as columns with units.
 *
 * The inputs are checked once: the fixed ones, and the first row; every row then runs the SI kernel. A row where the kernel has no finite answer, or where the formula
 * rules out the combination of inputs, holds NaN or infinity there and is counted in the table's `gaps`.
 * Throws an `InputError` that lists every bad input.
 */
export function sweep<I extends Inputs, O extends Output>(
  /** The formula, or a leg through `legFormula`. */
  formula: Formula<I, O>,
  /** Inputs with several values, and those that stay fixed. */
  plan: NoInfer<SweepPlan<I>>,
): Table {
  const runner = runnerOf(untyped(formula), plan as SweepPlan<Inputs>)
  rejectRowCount(runner, runner.plan.rows, 'sweep')
  const columns = runner.columns(runner.plan.rows)
  runner.run(0, runner.plan.rows, columns)
  return new Table(runner.id, columns, runner.plan.rows)
}

/** The most rows that one table holds: 800 MB a column; words take more. */
const MAX_ROWS = 1e8
const MAX_ROWS_WITH_WORDS = 1e7

/** Throws an `InputError` where a table would not fit into memory: a process that runs out of memory ends without an error to catch. */
export function rejectRowCount({ plan, words }: Runner, rows: number, where: string): void {
  const max = words ? MAX_ROWS_WITH_WORDS : MAX_ROWS
  if (rows <= max) return
  const sampled = plan.design !== 'grid' && plan.design !== 'list'
  throw new InputError(where, [
    {
      path: sampled ? 'design' : 'over',
      given: `${rows} rows`,
      accepts: `must make at most ${max} rows, as many as one table holds: take fewer values, or run parts of the sweep by runSweep with \`shard\``,
    },
  ])
}

/** Checks a sweep and makes its runner. */
export function runnerOf(formula: AnyFormula, sweepPlan: SweepPlan<Inputs>): Runner {
  const { over, fixed = {}, design = 'grid' } = planRecord('sweep', sweepPlan, ['over', 'fixed', 'design'])
  const plan = planOf(formula, over as Record<string, unknown>, design)
  const first = new Float64Array(plan.paths.length)
  plan.fill(0, first)
  let given: unknown = fixed
  plan.paths.forEach((path, i) => {
    given = withValueAt(given, path, new Quantity(first[i] as number, plan.kinds[i] as Kind))
  })
  const issues: Issue[] = []
  const x = recordReader(formula.def.inputs, true)(given, '', issues) as Record<string, unknown>
  if (issues.length > 0) throw new InputError(formula.id, issues)
  const kernel = formula.si as (x: unknown) => unknown
  const requires = requirementsOf(formula)
  const outputs = outputFields(formula.def.output)
  const keys = outputs.map(({ key }) => key)
  const run = (from: number, to: number, columns: readonly Column[]) => {
    const cells = columns.map((column) => ('values' in column ? column.values : (column.words as string[])))
    const inputs = cells.slice(0, plan.paths.length) as Float64Array[]
    plan.fillColumns(from, to, inputs)
    const { paths, alikeRows } = plan
    const alike = alikeRows === undefined ? undefined : { rows: alikeRows, first: alikeRows - (from % alikeRows) }
    runRows({ x, kernel, requires, paths, inputs, keys, outputs: cells.slice(inputs.length), alike }, to - from)
  }
  const columns = (rows: number): Column[] => {
    try {
      return [
        ...plan.paths.map((path, i) => numbers(path, plan.kinds[i] as Kind, rows)),
        ...outputs.map(({ name, kind }) => (kind === undefined ? { name, words: new Array<string>(rows) } : numbers(name, kind, rows))),
      ]
    } catch (error) {
      if (!(error instanceof RangeError)) throw error
      throw new InputError(formula.id, [
        { path: 'over', given: `${rows} rows`, accepts: 'do not fit into memory: run parts of the sweep by runSweep with `shard`' },
      ])
    }
  }
  const described = JSON.stringify(x, (_, value) =>
    typeof value === 'function' ? 'function' : typeof value === 'number' && !Number.isFinite(value) ? String(value) : value,
  )
  const words = outputs.some(({ kind }) => kind === undefined)
  return { id: formula.id, plan, described, words, run, columns }
}

/** Outputs a table can hold: numbers and words; lists are left out. */
interface NumberOrWord {
  readonly key: string
  readonly name: string
  /** Undefined for a word. */
  readonly kind: Kind | undefined
}

function outputFields(output: Output): NumberOrWord[] {
  if (typeof output === 'string') return [{ key: '', name: 'result', kind: output }]
  if (typeof (output as { infinite?: unknown }).infinite === 'boolean')
    return [{ key: '', name: 'result', kind: (output as { kind: Kind }).kind }]
  return Object.entries(output as OutputRecord).flatMap(([name, field]: [string, OutputField]): NumberOrWord[] => {
    if (typeof field === 'string') return [{ key: name, name, kind: field }]
    if ('kind' in field) return [{ key: name, name, kind: field.kind }]
    return 'oneOf' in field ? [{ key: name, name, kind: undefined }] : []
  })
}
