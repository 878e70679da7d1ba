import { execFileSync } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { join, parse } from 'node:path'

/** Work done in this process: `run(times)` does it that often and returns anything that depends on every result. */
interface InProcess {
  readonly name: string
  readonly run: (times: number) => unknown
}

/** Work that times itself, such as a compiled program: `measure()` returns seconds for doing it once. */
interface Measured {
  readonly name: string
  readonly measure: () => number
}

/** A reference that is not on this machine, and why. */
export interface Missing {
  readonly name: string
  readonly missing: string
}

/** One way to do a row's work. */
export type Alternative = InProcess | Measured

/** What our time against a reference's must come to. */
export type Target =
  | { readonly ratioAtMost: number }
  | { readonly timesFaster: number }
  /** Shown without a verdict. */
  | { readonly noTarget: true }

/** What a row's own time must come to. */
export type Bound = { readonly atMostSeconds: number } | { readonly perSecondAtLeast: number }

/** One line of the table: our way, what it is held against, and what is asked of it. */
export interface Row {
  readonly work: string
  readonly ours: Alternative
  readonly against?: readonly ((Alternative | Missing) & Target)[]
  readonly bound?: Bound
  /** Alternating rounds; fewer for work of many seconds. */
  readonly rounds?: number
}

/** A measured row, one line per comparison. */
export interface Line {
  readonly work: string
  readonly ours: string
  readonly reference: string
  readonly ratio: string
  readonly target: string
  readonly verdict: 'met' | 'MISSED' | 'reference missing' | ''
}

const ROUNDS = 15
/** Long enough that the clock's grain and a call's overhead do not show. */
const BATCH_SECONDS = 0.02
const WARM_UP_SECONDS = 1.5

/** Holds the last result of a run, so that no compiler may drop the work. */
const sink: { last?: unknown } = {}

/**
 * Measures a row: rounds in which every alternative takes its turn. Work in this process counts by processor time, and the least of the rounds stands for each
 * alternative: other work on the machine only adds.
 */
export function measureRow(row: Row): Line[] {
  const present = (row.against ?? []).filter((each): each is Alternative & Target => !('missing' in each))
  const meters = [row.ours, ...present].map(meter)
  const times: number[][] = meters.map(() => [])
  for (let round = 0; round < (row.rounds ?? ROUNDS); round++) {
    // Who goes first alternates too: the second of two runs meets a warmer machine.
    const order = meters.map((_, i) => i)
    if (round % 2 === 1) order.reverse()
    for (const i of order) times[i]![round] = meters[i]!()
  }
  const ours = times[0]!
  const least = Math.min(...ours)
  const shown = duration(least)
  const lines: Line[] = []
  if (row.bound !== undefined) lines.push({ work: row.work, ours: shown, reference: '', ratio: '', ...boundVerdict(least, row.bound) })
  for (const reference of row.against ?? []) {
    const which = present.indexOf(reference as Alternative & Target)
    if ('missing' in reference) {
      const line = { work: row.work, ours: shown, reference: `${reference.name}: ${reference.missing}`, ratio: '' }
      lines.push({ ...line, target: targetText(reference), verdict: 'reference missing' })
      continue
    }
    const theirs = times[which + 1]!
    const ratio = least / Math.min(...theirs)
    lines.push({
      work: row.work,
      ours: shown,
      reference: `${reference.name}: ${duration(Math.min(...theirs))}`,
      ratio: 'timesFaster' in reference ? `${number(1 / ratio)}× faster` : number(ratio),
      target: targetText(reference),
      verdict: targetVerdict(ratio, reference),
    })
  }
  if (lines.length === 0) lines.push({ work: row.work, ours: shown, reference: '', ratio: '', target: '', verdict: '' })
  return lines
}

/** A function that takes one measurement, in seconds for doing the work once. */
function meter(alternative: Alternative): () => number {
  if ('measure' in alternative) return alternative.measure
  const { run } = alternative
  const seconds = (times: number) => {
    const before = processorTime()
    sink.last = run(times)
    return processorTime() - before
  }
  let times = 1
  let taken = seconds(1)
  while (taken < BATCH_SECONDS) {
    times = Math.ceil(times * Math.min(10, Math.max(1.5, (1.2 * BATCH_SECONDS) / Math.max(taken, 1e-6))))
    taken = seconds(times)
  }
  // Work is measured as it runs once the engine has compiled it; what takes seconds has had its time.
  const end = processorTime() + WARM_UP_SECONDS
  while (processorTime() < end) taken = seconds(times)
  times = Math.max(1, Math.ceil((times * BATCH_SECONDS) / Math.max(taken, 1e-6)))
  return () => seconds(times) / times
}

/** Processor time of this process so far, in seconds. */
function processorTime(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}

function boundVerdict(seconds: number, bound: Bound): Pick<Line, 'target' | 'verdict'> {
  if ('atMostSeconds' in bound) {
    return { target: `≤ ${duration(bound.atMostSeconds)}`, verdict: seconds <= bound.atMostSeconds ? 'met' : 'MISSED' }
  }
  const target = `≥ ${bound.perSecondAtLeast} a second`
  return { target: `${target} (${number(1 / seconds)})`, verdict: 1 / seconds >= bound.perSecondAtLeast ? 'met' : 'MISSED' }
}

const targetText = (target: Target): string =>
  'ratioAtMost' in target ? `≤ ${target.ratioAtMost}` : 'timesFaster' in target ? `≥ ${target.timesFaster}× faster` : ''

function targetVerdict(ratio: number, target: Target): Line['verdict'] {
  if ('noTarget' in target) return ''
  return ('ratioAtMost' in target ? ratio <= target.ratioAtMost : 1 / ratio >= target.timesFaster) ? 'met' : 'MISSED'
}

const number = (x: number): string => (x >= 1000 ? x.toFixed(0) : x.toPrecision(3))

function duration(seconds: number): string {
  const [unit, factor] = seconds < 1e-6 ? ['ns', 1e9] : seconds < 1e-3 ? ['µs', 1e6] : seconds < 1 ? ['ms', 1e3] : ['s', 1]
  return `${number(seconds * (factor as number))} ${unit}`
}

/** The lines as one aligned table. */
export function table(lines: readonly Line[]): string {
  const columns = ['work', 'ours', 'reference', 'ratio', 'target', 'verdict'] as const
  const rows = [Object.fromEntries(columns.map((name) => [name, name])) as Record<(typeof columns)[number], string>, ...lines]
  const widths = columns.map((name) => Math.max(...rows.map((row) => row[name].length)))
  return rows
    .map((row) =>
      columns
        .map((name, i) => row[name].padEnd(widths[i]!))
        .join('  ')
        .trimEnd(),
    )
    .join('\n')
}

/** A program of bench/c built by the system's compiler, or why there is none. */
export type Program = { readonly path: string } | { readonly missing: string }

/**
 * Builds a C or C++ source of bench/c into bench/build. Flags follow the source, so that `-l` flags link.
 * `needs` names headers (of a Debian package, say) without which the reference is reported as missing, and what to call them.
 */
export function buildC(
  source: string,
  flags: readonly string[] = ['-O3'],
  needs: { headers?: readonly string[]; called?: string; from?: string } = {},
): Program {
  const { name, ext } = parse(source)
  const compiler = ext === '.c' ? (process.env.CC ?? 'cc') : (process.env.CXX ?? 'c++')
  try {
    execFileSync(compiler, ['--version'], { stdio: 'ignore' })
  } catch {
    return { missing: `no compiler (${compiler}) on this machine` }
  }
  for (const header of needs.headers ?? []) {
    try {
      const language = ext === '.c' ? 'c' : 'c++'
      execFileSync(compiler, [...flags, '-x', language, '-fsyntax-only', '-'], {
        input: `#include <${header}>\n`,
        stdio: ['pipe', 'ignore', 'ignore'],
      })
    } catch {
      return { missing: `${needs.called ?? header} is not installed${needs.from === undefined ? '' : ` (Debian package ${needs.from})`}` }
    }
  }
  const folder = join('bench', 'build')
  mkdirSync(folder, { recursive: true })
  const path = join(folder, name)
  execFileSync(compiler, [join('bench', 'c', source), '-o', path, ...flags, '-lm'], { stdio: ['ignore', 'inherit', 'inherit'] })
  return { path }
}

/**
 * A built program as an alternative. Called with `args`, it does the work many times and prints the nanoseconds of one time
 * (see bench/c/bench.h).
 */
export function program(name: string, built: Program, ...args: readonly string[]): Alternative | Missing {
  if ('missing' in built) return { name, missing: built.missing }
  return {
    name,
    measure: () => {
      const printed = execFileSync(built.path, args, { encoding: 'utf8' })
      const nanoseconds = Number(printed)
      if (!(nanoseconds > 0)) throw new Error(`${built.path} ${args.join(' ')} printed '${printed}', not the nanoseconds of one time`)
      return nanoseconds / 1e9
    },
  }
}
