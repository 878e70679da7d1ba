// What the published checks are worth: all of them, the best evidence for each id, and the committed lists of ids without evidence from outside.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { EVIDENCE_LEVELS, type EvidenceLevel } from '../../src/formula/index.js'
import type { Check } from './harness.js'

const folder = fileURLToPath(new URL('.', import.meta.url))
const lists = join(folder, 'unconfirmed')

/** Beginnings of the names of the only files to read; default: all. The runs of one folder's mutants load no other module. */
const only = (process.env.LIMBWRIGHT_PUBLISHED ?? '').split(',')

/** The files of checks, in order of their names. */
export const checkFiles: readonly string[] = readdirSync(folder)
  .filter((file) => file.endsWith('.checks.ts') && only.some((beginning) => file.startsWith(beginning)))
  .sort()

/** Every check by file. */
export const checksByFile: ReadonlyMap<string, readonly Check[]> = new Map(
  await Promise.all(
    checkFiles.map(async (file) => [file, ((await import(`../published/${file.slice(0, -3)}.ts`)) as { checks: Check[] }).checks] as const),
  ),
)

/** Every check by the id that it belongs to. */
export const checksById: ReadonlyMap<string, readonly Check[]> = (() => {
  const byId = new Map<string, Check[]>()
  for (const check of [...checksByFile.values()].flat()) byId.set(check.id, [...(byId.get(check.id) ?? []), check])
  return byId
})()

/** Evidence from outside this library. The other levels find slips or record habits. */
const FROM_OUTSIDE: readonly EvidenceLevel[] = ['published', 'standard', 'referenceLibrary', 'computed']

/** The strongest evidence among the checks of an id. */
export const bestLevel = (checks: readonly Check[]): EvidenceLevel | undefined =>
  EVIDENCE_LEVELS.find((level) => checks.some((check) => check.source.level === level))

/** Ids of a module that no evidence from outside confirms, in alphabetical order. */
export function unconfirmedOf(module: string, ids: Iterable<string>): string[] {
  return [...new Set(ids)]
    .filter((id) => id.startsWith(`${module}.`))
    .filter((id) => !FROM_OUTSIDE.includes(bestLevel(checksById.get(id) ?? []) as EvidenceLevel))
    .sort()
}

const listFile = (module: string) => join(lists, `${module}.txt`)

/** The committed list of a module: one id a line. */
export function committedUnconfirmed(module: string): string[] {
  return existsSync(listFile(module)) ? readFileSync(listFile(module), 'utf8').split('\n').filter(Boolean) : []
}

/** Takes from the committed list what is confirmed by now. It never adds an id: a new formula needs evidence from outside. */
export function shrinkUnconfirmed(module: string, ids: Iterable<string>): void {
  const today = new Set(unconfirmedOf(module, ids))
  const kept = committedUnconfirmed(module).filter((id) => today.has(id))
  mkdirSync(lists, { recursive: true })
  if (kept.length === 0) rmSync(listFile(module), { force: true })
  else writeFileSync(listFile(module), `${kept.join('\n')}\n`)
}
