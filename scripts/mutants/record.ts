// The record of a folder's mutants, `mutants/<folder>.json`: how many there are, how many were drawn and run, which survive, and why.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import type { Mutant, Outcome } from './stryker.js'

/** One draw, as the tests of its day left it. Later tests are written for its survivors, so that only this first result says something about the others. */
export interface DrawResult {
  readonly date: string
  /** Key after which the draw began; unknown for old draws. */
  readonly after?: string | undefined
  readonly mutants: number
  readonly killed: number
  readonly timedOut: number
  readonly survived: number
  readonly uncovered: number
}

/** A mutant that no test notices. `equivalent` needs a reason: the change makes no difference that a caller could see. */
export interface Survivor extends Mutant {
  /** Its key when it was drawn, where names in its line have changed since: draws go by that one. */
  readonly drawnAs?: string
  readonly fate: 'survived' | 'uncovered'
  readonly verdict: 'open' | 'equivalent'
  readonly why?: string
}

/** A survivor of a draw that a test has killed since. */
export interface KilledSince extends Mutant {
  readonly by: string
}

export interface Record {
  readonly folder: string
  /** All mutants of the folder. */
  readonly mutants: number
  /** Those that were not drawn yet. */
  readonly left: number
  /** Key of the last mutant drawn. Mutants are drawn in the order of their keys. */
  readonly drawnTo: string
  readonly draws: readonly DrawResult[]
  /** Date of the last run. */
  readonly date: string
  /** Of the drawn mutants, those that a test notices today. */
  readonly detected: number
  /** Score of the drawn mutants, equivalent ones not counted, in per cent. It may not fall unless more are drawn. */
  readonly floor: number
  readonly survivors: readonly Survivor[]
  readonly killedSince: readonly KilledSince[]
}

const fileOf = (folder: string) => `mutants/${folder}.json`

export function readRecord(folder: string): Record | undefined {
  return existsSync(fileOf(folder)) ? (JSON.parse(readFileSync(fileOf(folder), 'utf8')) as Record) : undefined
}

export function writeRecord(record: Record): void {
  writeFileSync(fileOf(record.folder), `${JSON.stringify(record, null, 2)}\n`)
}

/** Detected share of mutants that are not equivalent, in per cent, rounded down to one decimal. */
export function scoreOf({ detected, survivors }: Pick<Record, 'detected' | 'survivors'>): number {
  const open = survivors.filter(({ verdict }) => verdict === 'open').length
  return Math.floor((1000 * detected) / Math.max(1, detected + open)) / 10
}

/** Wilson's interval of 95 % for a share, in per cent. */
export function interval(detected: number, all: number): readonly [low: number, high: number] {
  const z = 1.959964
  const share = detected / all
  const middle = (share + (z * z) / (2 * all)) / (1 + (z * z) / all)
  const half = (z / (1 + (z * z) / all)) * Math.sqrt((share * (1 - share)) / all + (z * z) / (4 * all * all))
  return [100 * (middle - half), 100 * (middle + half)]
}

/**
 * Share of the last draw that the tests of its day noticed, with its interval, in per cent: the fair estimate of the folder. Of a draw whose beginning is
 * known the equivalent mutants are left out.
 */
export function estimateOf({
  draws,
  survivors,
}: Pick<Record, 'draws' | 'survivors'>): { share: number; low: number; high: number; of: number; equivalent: number } | undefined {
  const last = draws.at(-1)
  if (last === undefined) return undefined
  const after = draws.length === 1 ? '' : last.after
  const equivalent = survivors.filter(
    ({ key, drawnAs = key, verdict }) => after !== undefined && drawnAs > after && verdict === 'equivalent',
  ).length
  const seen = last.killed + last.timedOut
  const of = last.mutants - equivalent
  const [low, high] = interval(seen, of)
  return { share: (100 * seen) / of, low, high, of, equivalent }
}

/** Survives the tests that were run, or none of them runs its line. */
export const isSurvivor = ({ fate }: Outcome): boolean => fate === 'survived' || fate === 'uncovered'
const detects = ({ fate }: Outcome) => fate === 'killed' || fate === 'timedOut'

function survivorOf(outcome: Outcome, before: Survivor | undefined): Survivor {
  const { key, file, line, mutator, was, becomes, fate } = outcome
  const judged =
    before === undefined || before.why === undefined ? { verdict: 'open' as const } : { verdict: before.verdict, why: before.why }
  const drawn = before?.drawnAs === undefined ? {} : { drawnAs: before.drawnAs }
  return { key, ...drawn, file, line, mutator, was, becomes, fate: fate as Survivor['fate'], ...judged }
}

const killedOf = ({ key, file, line, mutator, was, becomes, by }: Outcome): KilledSince => ({
  key,
  file,
  line,
  mutator,
  was,
  becomes,
  by: by ?? 'it no longer ends',
})

const byPlace = (a: Mutant, b: Mutant) => (a.file === b.file ? a.line - b.line : a.file < b.file ? -1 : 1)

function result(outcomes: readonly Outcome[], date: string, after: string): DrawResult {
  const count = (fate: string) => outcomes.filter((outcome) => outcome.fate === fate).length
  const [killed, timedOut, survived, uncovered] = ['killed', 'timedOut', 'survived', 'uncovered'].map(count) as [
    number,
    number,
    number,
    number,
  ]
  return { date, after, mutants: killed + timedOut + survived + uncovered, killed, timedOut, survived, uncovered }
}

/** How many mutants there are today, and how many come after a key in the order of draw. */
export const countsOf = (all: readonly Mutant[], drawnTo: string) => ({
  mutants: all.length,
  left: all.filter(({ key }) => key > drawnTo).length,
})

/** Two parts of one draw. */
const joined = (a: DrawResult, b: DrawResult): DrawResult => ({
  ...a,
  mutants: a.mutants + b.mutants,
  killed: a.killed + b.killed,
  timedOut: a.timedOut + b.timedOut,
  survived: a.survived + b.survived,
  uncovered: a.uncovered + b.uncovered,
})

/** The record after a further draw, or after a further part of the last one. */
export function withDraw(
  folder: string,
  before: Record | undefined,
  all: readonly Mutant[],
  outcomes: readonly Outcome[],
  date: string,
  partOfLast: boolean,
): Record {
  const survivors = [...(before?.survivors ?? []), ...outcomes.filter(isSurvivor).map((outcome) => survivorOf(outcome, undefined))].sort(
    byPlace,
  )
  const detected = (before?.detected ?? 0) + outcomes.filter(detects).length
  const drawnTo = [before?.drawnTo ?? '', ...outcomes.map(({ key }) => key)].sort().at(-1) as string
  const earlier = before?.draws ?? []
  const last = earlier.at(-1)
  const own = result(outcomes, date, before?.drawnTo ?? '')
  const draws = partOfLast && last !== undefined ? [...earlier.slice(0, -1), joined(last, own)] : [...earlier, own]
  const killedSince = before?.killedSince ?? []
  return {
    folder,
    ...countsOf(all, drawnTo),
    drawnTo,
    draws,
    date,
    detected,
    floor: scoreOf({ detected, survivors }),
    survivors,
    killedSince,
  }
}

/** The record after a run of the same mutants, or of its survivors alone. A mutant whose line is gone leaves the record. */
export function withRun(
  before: Record,
  all: readonly Mutant[],
  outcomes: readonly Outcome[],
  date: string,
  survivorsOnly: boolean,
): Record {
  const known = new Map(before.survivors.map((survivor) => [survivor.key, survivor]))
  const survivors = outcomes.filter(isSurvivor).map((outcome) => survivorOf(outcome, known.get(outcome.key)))
  const killed = outcomes.filter((outcome) => detects(outcome) && known.has(outcome.key)).map(killedOf)
  const detected = (survivorsOnly ? before.detected : 0) + outcomes.filter(detects).length
  const killedSince = [
    ...before.killedSince.filter(({ key }) => !outcomes.some((outcome) => outcome.key === key && isSurvivor(outcome))),
    ...killed,
  ]
  const record = {
    ...before,
    ...countsOf(all, before.drawnTo),
    date,
    detected,
    survivors: survivors.sort(byPlace),
    killedSince: killedSince.sort(byPlace),
  }
  return { ...record, floor: Math.max(before.floor, scoreOf(record)) }
}
