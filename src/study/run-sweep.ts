import { type Formula, type Inputs, type Output, onlyKeys } from '../formula/index.js'
import { InputError, type Issue, issue } from '../units/index.js'
import { type Block, decoded, digest, encoded, fits, putInto } from './block-file.js'
import { planRecord, untyped } from './path.js'
import { type Runner, rejectRowCount, runnerOf, type SweepPlan } from './sweep.js'
import { openSweepFile } from './sweep-file.js'
import { Table } from './table.js'
import { type WorkerPlan, workers } from './workers.js'

/** How far a sweep is. */
export interface SweepProgress {
  /** Rows done, those found in the file included. */
  readonly done: number
  /** Rows of this part. */
  readonly of: number
  /** Rows that were already in the file. */
  readonly resumed: number
  /** Damaged lines in the file. Their blocks are run again. */
  readonly damaged: number
}

/** How a long sweep is run. */
export interface RunOptions {
  /** Rows of a block: what is written, handed to a worker and reported at a time. Default 1000. */
  readonly blockRows?: number
  /** Called after every block. */
  readonly onProgress?: (progress: SweepProgress) => void
  /** Stops the sweep after the block at hand; what is done stays in the file. */
  readonly signal?: AbortSignal
  /** File to which results are appended block by block (Node only). A file of the same plan is continued, of another plan rejected. */
  readonly file?: string
  /** Only part k of n, from 1: every n-th block. Any batch system can run the parts; `mergeSweep` puts them together. */
  readonly shard?: readonly [k: number, n: number]
  /** Worker threads (Node only), worth it from about half a second of work on. Same result to the last bit. */
  readonly workers?: WorkerPlan
}

/** A sweep that was stopped by its signal. What is done stays in the file. */
export class SweepStopped extends Error {
  override name = 'SweepStopped'
  constructor(
    readonly progress: SweepProgress,
    cause: unknown,
  ) {
    super(`sweep stopped after ${progress.done} of ${progress.of} rows`, { cause })
  }
}

/** A checked sweep, and what tells it from every other. */
export interface SweepJob {
  /** Identity of this sweep. */
  readonly id: string
  /** Number of rows. */
  readonly rows: number
  /** The sweep, ready to be run row by row. */
  readonly runner: Runner
  /** Runs one block of rows. */
  block(number: number, blockRows: number): Block
  /** What is run, as text: the formula's name, what varies, what is fixed, and the results of rows spread over the whole. */
  plan(): string
}

/**
 * Checks a sweep once and makes it ready to be run in blocks, here or on workers: a module exports the job under a name, and
 * `runSweep(job, { workers: { module, name } })` runs it on threads that import the module.
 *
 * Throws an `InputError` that lists every bad input.
 */
export function sweepJob<I extends Inputs, O extends Output>(formula: Formula<I, O>, plan: NoInfer<SweepPlan<I>>): SweepJob {
  const runner = runnerOf(untyped(formula), plan as SweepPlan<Inputs>)
  const { rows } = runner.plan
  return {
    id: runner.id,
    rows,
    runner,
    block: (number, blockRows) => {
      const from = number * blockRows
      const to = Math.min(from + blockRows, rows)
      const columns = runner.columns(to - from)
      runner.run(from, to, columns)
      return { block: number, rows: to - from, columns: columns.map((column) => ('words' in column ? column.words : column.values)) }
    },
    plan: () => planText(runner),
  }
}

const RUN = ['blockRows', 'onProgress', 'signal', 'file', 'shard', 'workers'] as const satisfies readonly (keyof RunOptions)[]

/**
 * Runs a sweep that may take long: with progress, a signal to stop, a file to go on from, in parts, and on several threads.
 *
 * With a file, every finished block is on disk before the next one is reported; a run that was killed goes on where it was, loses at most
 * the blocks at hand, and ends with the same file content whatever happened in between. A block is checked by its digest, the plan by
 * another over the formula's name, the inputs and some probed rows: a changed kernel shows in those, a differently
 * bundled one does not.
 *
 * Returns the table of this part. Rejects with `SweepStopped` when stopped, with an `InputError` for bad options or the file of another plan.
 */
export async function runSweep(job: SweepJob, options: RunOptions = {}): Promise<Table> {
  const { blockRows = 1000, onProgress, signal, file } = planRecord(`sweep of ${job.id}`, options, RUN)
  const [k, n] = checked(job, options)
  const total = partRows(job.rows, blockRows, k, n)
  rejectRowCount(job.runner, total, `sweep of ${job.id}`)
  const blocks = blocksOf(job.rows, blockRows, k, n)
  const rowsOf = (block: number) => Math.min(blockRows, job.rows - block * blockRows)
  const columns = job.runner.columns(total)
  const place = new Map<number, number>()
  let at = 0
  for (const block of blocks) {
    place.set(block, at)
    at += rowsOf(block)
  }
  const plan = job.plan()
  const header = async () =>
    ({
      format: 'limbwright-sweep',
      version: 1,
      plan: await digest(plan),
      formula: job.id,
      rows: job.rows,
      blockRows,
      shard: [k, n],
    }) as const
  const store = file === undefined ? undefined : await openSweepFile(file, await header())
  let resumed = 0
  const missing: number[] = []
  for (const block of blocks) {
    const found = store?.blocks.get(block)
    if (found !== undefined && fits(found, columns, rowsOf(block))) {
      putInto(decoded(found), columns, place.get(block) as number)
      resumed += rowsOf(block)
    } else missing.push(block)
  }
  let done = resumed
  const progress = (): SweepProgress => ({ done, of: total, resumed, damaged: store?.damaged ?? 0 })
  const keep = async (result: Block) => {
    putInto(result, columns, place.get(result.block) as number)
    await store?.append(encoded(result))
    done += result.rows
    onProgress?.(progress())
  }
  const stop = () => {
    if (signal?.aborted) throw new SweepStopped(progress(), signal.reason)
  }
  try {
    if (options.workers !== undefined && missing.length > 1) await workers(options.workers, plan, missing, blockRows, keep, stop)
    else
      for (const block of missing) {
        stop()
        await keep(job.block(block, blockRows))
        // Gives timers and signals their turn.
        await new Promise<void>((resolve) => setTimeout(resolve))
      }
  } finally {
    await store?.close()
  }
  return new Table(job.id, columns, total)
}

function checked(job: SweepJob, { blockRows = 1000, shard = [1, 1], workers: pool }: RunOptions): readonly [number, number] {
  const issues: Issue[] = []
  const whole = (x: unknown, min: number) => Number.isInteger(x) && (x as number) >= min
  if (!whole(blockRows, 1)) issues.push(issue('blockRows', blockRows, 'must be a whole number of at least 1'))
  if (!(Array.isArray(shard) && whole(shard[0], 1) && whole(shard[1], 1) && shard[0] <= shard[1]))
    issues.push(issue('shard', shard, 'must be [k, n]: part k from 1 to n'))
  if (pool !== undefined) onlyKeys('workers', pool, ['count', 'module', 'name'], issues)
  if (pool !== undefined && !(whole(pool.count, 1) && pool.count <= 256))
    issues.push(issue('workers.count', pool.count, 'must be a whole number from 1 to 256'))
  if (issues.length > 0) throw new InputError(`sweep of ${job.id}`, issues)
  return shard as readonly [number, number]
}

/** Number of blocks of part k of n. */
const blockCount = (rows: number, blockRows: number, k: number, n: number) =>
  Math.max(0, Math.ceil((Math.ceil(rows / blockRows) - (k - 1)) / n))

/** The blocks of part k of n: every n-th, so that parts take about equally long where the work varies along the rows. */
export const blocksOf = (rows: number, blockRows: number, k: number, n: number): number[] =>
  Array.from({ length: blockCount(rows, blockRows, k, n) }, (_, i) => i * n + k - 1)

/** Rows of part k of n, without a list of its blocks: there may be more of them than fit into memory. The last block of all may be a short one. */
function partRows(rows: number, blockRows: number, k: number, n: number): number {
  const count = blockCount(rows, blockRows, k, n)
  const last = Math.ceil(rows / blockRows) - 1
  return count * blockRows - (last % n === k - 1 ? (last + 1) * blockRows - rows : 0)
}

const PROBES = 9

function planText(runner: Runner): string {
  const { rows, paths, kinds } = runner.plan
  const probes = Array.from({ length: PROBES }, (_, i) => {
    const row = Math.floor((i * (rows - 1)) / (PROBES - 1))
    const columns = runner.columns(1)
    runner.run(row, row + 1, columns)
    return columns.map((column) => ('words' in column ? column.words[0] : String(column.values[0])))
  })
  return JSON.stringify([runner.id, rows, paths, kinds, runner.described, probes])
}
