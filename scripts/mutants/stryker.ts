// Lists the mutants of a folder; runs drawn ones against the tests of the folder, and returns the fate of each.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Stryker } from '@stryker-mutator/core'
import type { Folder } from './folders.js'
import { isSurvivor } from './record.js'

const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[\\/]$/, '')
const OUT = join(root, 'out/mutants')

/** A mutant: where it is, and what it changes. */
export interface Mutant {
  /** Hash of what it changes. Its order is the order of draw. */
  readonly key: string
  readonly file: string
  readonly line: number
  readonly mutator: string
  readonly was: string
  readonly becomes: string
}

/** As found in the source of today. */
export interface Found extends Mutant {
  readonly id: string
  /** File with first and last line and column. */
  readonly range: string
  readonly place: string
}

/** What became of it. `uncovered`: no test of the folder runs the line. `invalid`: the changed file could not be loaded. `static`: not run, see below. */
export type Fate = 'killed' | 'timedOut' | 'survived' | 'uncovered' | 'invalid' | 'static'

export interface Outcome extends Mutant {
  readonly fate: Fate
  /** The first test that failed. */
  readonly by?: string
}

const FATES: Readonly<Record<string, Fate>> = {
  Killed: 'killed',
  Timeout: 'timedOut',
  Survived: 'survived',
  NoCoverage: 'uncovered',
  RuntimeError: 'invalid',
  Ignored: 'static',
}

const COMMON = {
  plugins: ['@stryker-mutator/vitest-runner', join(root, 'scripts/mutants/drawn.mjs')],
  checkers: ['drawn'],
  // Texts are for readers, and have tests of their own. The compiler rejects a record without its fields.
  mutator: { plugins: null, excludedMutations: ['StringLiteral', 'ObjectLiteral'] },
  ignorePatterns: ['/.*', '/out', '/dist', '/coverage', '/api', '/bench', '/mutants', '/docs/reference'],
  tempDirName: 'out/mutants/sandbox',
  concurrency: 1,
  disableTypeChecks: false,
  logLevel: 'warn',
  allowConsoleColors: false,
}

async function run(folder: Folder, settings: object, wanted: readonly string[]) {
  const [task, list] = ['task', 'list'].map((name) => join(OUT, `${folder.name}-${name}.json`)) as [string, string]
  mkdirSync(OUT, { recursive: true })
  rmSync(list, { force: true })
  writeFileSync(task, JSON.stringify({ root, wanted, list }))
  process.env.LIMBWRIGHT_MUTANTS = task
  const results = await new Stryker({ ...COMMON, ...settings } as never).runMutationTest()
  return { found: JSON.parse(readFileSync(list, 'utf8')) as Found[], results }
}

/** All mutants of a folder in the order of draw. Nothing is run: the only test is a command that does nothing. */
export async function listMutants(folder: Folder): Promise<Found[]> {
  const nothing = {
    testRunner: 'command',
    commandRunner: { command: 'node --version' },
    coverageAnalysis: 'off',
    reporters: ['progress-append-only'],
    logLevel: 'error',
  }
  const { found } = await run(folder, { ...nothing, mutate: [`${folder.source}/${folder.flat ? '' : '**/'}*.ts`] }, [])
  return found.sort((a, b) => (a.key < b.key ? -1 : 1))
}

/** Runs mutants; those that the tests of the folder do not notice then run against its further ones. */
export async function runMutants(folder: Folder, drawn: readonly Found[]): Promise<Outcome[]> {
  const outcomes = await runAgainst(folder, folder.tests, drawn)
  if (folder.further === undefined) return outcomes
  const left = new Set(outcomes.filter(isSurvivor).map(({ key }) => key))
  const later = await runAgainst(
    folder,
    folder.further,
    drawn.filter(({ key }) => left.has(key)),
  )
  const byKey = new Map(later.map((outcome) => [outcome.key, outcome]))
  return outcomes.map((outcome) => {
    const then = byKey.get(outcome.key)
    // One that only the first tests run has survived those.
    return then === undefined || then.fate === 'uncovered' ? outcome : then
  })
}

/** Runs mutants against tests. Only their places are instrumented, since every instrumented one slows the tests down. */
async function runAgainst(folder: Folder, tests: readonly string[], drawn: readonly Found[]): Promise<Outcome[]> {
  if (drawn.length === 0) return []
  process.env.LIMBWRIGHT_MUTANT_TESTS = JSON.stringify(tests)
  process.env.LIMBWRIGHT_MUTANT_INDEX = `${folder.source.startsWith('src/leg') ? 'src/leg' : folder.source}/index.ts`
  if (folder.published !== undefined) process.env.LIMBWRIGHT_PUBLISHED = folder.published
  const settings = {
    testRunner: 'vitest',
    vitest: { configFile: 'scripts/mutants/vitest.config.ts', related: false },
    coverageAnalysis: 'perTest',
    // What runs while a file is loaded is data: names, limits, sources and tables of records, which have checks of their own. Each such mutant would need
    // the whole run of the tests again.
    ignoreStatic: true,
    mutate: [...new Set(drawn.map(({ range }) => range))],
    reporters: ['progress-append-only'],
    // On a busy machine a slow run is no sign that a mutant never ends.
    timeoutMS: 180_000,
    dryRunTimeoutMinutes: 60,
  }
  const { found, results } = await run(
    folder,
    settings,
    drawn.map(({ place }) => place),
  )
  const ids = new Map(found.map(({ place, id }) => [place, id]))
  const byId = new Map(results.map((result) => [result.id, result]))
  return drawn.map(({ id: _, range: _range, place, ...mutant }): Outcome => {
    const result = byId.get(ids.get(place) ?? '')
    // The checker sees no static mutants.
    const fate = result === undefined ? 'static' : FATES[result.status]
    if (fate === undefined) throw new Error(`${mutant.file}:${mutant.line}: the state "${result?.status}" is not known`)
    const by = result?.killedBy?.[0]?.replace(/^.*?(tests\/)/, '$1')
    return { ...mutant, fate, ...(by === undefined ? {} : { by }) }
  })
}
