import { type Formula, type Inputs, type Output, onlyKeys, reader, type Scalar } from '../formula/index.js'
import { randomStream } from '../numeric/index.js'
import { InputError, type Issue, issue, type Kind, Quantity } from '../units/index.js'
import type { Range } from './design.js'
import { kriging } from './kriging.js'
import { outputOf } from './model.js'
import { checkSeed, checkShare, checkWhole } from './options.js'
import { type KindAt, planRecord, type ScalarOutput, type ScalarPath, scalarAt, untyped } from './path.js'
import { Surrogate } from './surrogate-result.js'
import { type SweepPlan, sweep } from './sweep.js'
import type { Table } from './table.js'

/** What a surrogate learns, and from how many runs. */
export interface SurrogatePlan<I extends Inputs, O> {
  /** The box that it is trained in: a range for each input that varies. */
  readonly vary: { readonly [P in ScalarPath<I>]?: Omit<Range<KindAt<I, P>>, 'count'> }
  /** What stays as it is. */
  readonly fixed?: { readonly [N in keyof I]?: unknown }
  /** The result to learn, where there are several. */
  readonly output?: ScalarOutput<O>
  /** Runs of the formula in all; a quarter of them are held out. Default 160. */
  readonly runs?: number
  /** Share of the box in which an answer is off by no more than its stated error, on average over surrogates. Default 0.95. */
  readonly confidence?: number
  /** Default 1. The same seed gives the same surrogate. */
  readonly seed?: number
}

const KNOWN = ['vary', 'fixed', 'output', 'runs', 'confidence', 'seed'] as const
const HELD_OUT = 0.25

/**
 * A fast stand-in for a slow formula within a box of a few inputs, for sliders and first looks; never for the last word.
 *
 * It is trained on runs spread over the box and tried on others that it never saw, drawn at random. From those comes the error that each answer states: a point drawn at random from
 * the box is off by no more than that in the stated share of cases, whatever the formula looks like, if the runs held out are as many as the share needs. Outside its box it gives no answer.
 * The share is an average over surrogates: with 40 runs held out, that of a single one for 0.95 is 0.89 to 0.99 in nine cases of ten. A corner that only few points of the box are near may be off by more.
 *
 * Throws one `InputError` that lists every bad input, runs without an answer among them.
 *
 * Source: J. Lei, M. G'Sell, A. Rinaldo, R. J. Tibshirani, L. Wasserman, *J. Am. Stat. Assoc.* 113 (2018) 1094, 2.2 and 5.2 (split conformal
 * intervals, scaled by a local deviation).
 */
export function surrogate<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<SurrogatePlan<I, O>>): Surrogate {
  const any = untyped(formula)
  const { vary, fixed = {}, output, runs = 160, confidence = 0.95, seed = 1 } = planRecord(any.id, plan, KNOWN)
  const issues: Issue[] = []
  const { name, kind } = outputOf(any, output, issues)
  const heldOut = Math.ceil(HELD_OUT * runs)
  checkWhole('runs', runs, 20, 1000, issues)
  checkSeed(seed, issues)
  checkShare('confidence', confidence, issues)
  if (issues.length === 0 && placeOf(heldOut, confidence) > heldOut)
    issues.push(issue('runs', runs, `must be more, so that the ${heldOut} held out can show a share of ${confidence}`))
  const box = issues.length > 0 ? [] : boxOf(any, vary as Record<string, unknown>, issues)
  if (issues.length > 0) throw new InputError(any.id, issues)
  const { trained, tried } = runsOf(formula, { box, fixed, runs, heldOut, seed })
  const model = kriging(scaled(trained, box), numbersOf(trained, name))
  const truth = numbersOf(tried, name)
  const residuals = scaled(tried, box).map((u, i) => {
    const [value, deviation] = model.at(u)
    const off = Math.abs(value - (truth[i] as number))
    return { off, scaled: off === 0 ? 0 : off / deviation }
  })
  const off = residuals.map((residual) => residual.off)
  return new Surrogate({
    formula: any.id,
    output: name === '' ? 'result' : name,
    kind,
    box,
    model,
    ratio: residuals.map((residual) => residual.scaled).sort((a, b) => a - b)[placeOf(heldOut, confidence) - 1] as number,
    confidence,
    runs,
    heldOut,
    rootMeanSquare: Math.sqrt(off.reduce((sum, x) => sum + x * x, 0) / heldOut),
    largest: Math.max(...off),
    spread: Math.max(...truth) - Math.min(...truth),
  })
}

interface Runs {
  readonly box: readonly Axis[]
  readonly fixed: object
  readonly runs: number
  readonly heldOut: number
  readonly seed: number
}

/** Runs spread over the box to learn from, and runs at random points of it to try. */
function runsOf<I extends Inputs, O extends Output>(formula: Formula<I, O>, { box, fixed, runs, heldOut, seed }: Runs) {
  const run = (part: object) => sweep(formula, { fixed, ...part } as unknown as SweepPlan<I>)
  const over = Object.fromEntries(box.map(({ path, range }) => [path, range]))
  const trained = run({ over, design: { sobol: runs - heldOut, seed } })
  const random = randomStream(seed, 1)
  const drawn = box.map(({ path, kind, from, to }) => [
    path,
    Array.from({ length: heldOut }, () => new Quantity(from + random.uniform() * (to - from), kind)),
  ])
  const tried = run({ over: Object.fromEntries(drawn), design: 'list' })
  const gaps = trained.gaps + tried.gaps
  if (gaps === 0) return { trained, tried }
  throw new InputError(formula.id, [
    {
      path: 'vary',
      given: `${gaps} of ${runs} runs without an answer`,
      accepts: 'must be ranges in which the formula has an answer everywhere',
    },
  ])
}

/** Rows of a table as points of the unit box. */
const scaled = (table: Table, box: readonly Axis[]): Float64Array[] =>
  Array.from({ length: table.rows }, (_, row) =>
    Float64Array.from(box, ({ path, from, to }) => ((numbersOf(table, path)[row] as number) - from) / (to - from)),
  )

/** The place, counted from one, of the residual that bounds a share of new points. */
const placeOf = (heldOut: number, confidence: number) => Math.ceil((heldOut + 1) * confidence - 1e-9)

/** One side of the box, SI. */
interface Axis {
  readonly path: string
  readonly kind: Kind
  readonly from: number
  readonly to: number
  readonly range: unknown
}

function boxOf(any: ReturnType<typeof untyped>, vary: Record<string, unknown>, issues: Issue[]): Axis[] {
  const paths = Object.keys(vary ?? {})
  if (paths.length === 0 || paths.length > 12) issues.push(issue('vary', vary, 'must be ranges of one to twelve inputs'))
  return paths.map((path) => {
    const scalar = scalarAt(any, path)
    const { kind } = scalar
    const read = reader({ ...scalar, optional: undefined, default: undefined } as unknown as Scalar)
    const range = vary[path] as { from: unknown; to: unknown }
    if (!onlyKeys(`vary.${path}`, range, ['from', 'to'], issues)) return { path, kind, from: 0, to: 1, range }
    const from = read(range.from, `vary.${path}.from`, issues) as number
    const to = read(range.to, `vary.${path}.to`, issues) as number
    if (!(from < to)) issues.push(issue(`vary.${path}`, range, 'must run from a lower to a higher value'))
    return { path, kind, from, to, range }
  })
}

function numbersOf(table: Table, name: string): Float64Array {
  const column = table.column(name === '' ? 'result' : name)
  return 'values' in column ? column.values : new Float64Array(table.rows)
}
