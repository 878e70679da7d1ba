// Runs drawn mutants of one folder against the tests of that folder, and answers what became of each.
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { Stryker } from '@stryker-mutator/core'
import type { Folder } from './folders.js'

const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[\\/]$/, '')
const OUT = 'out/mutants'

/** Which mutants are run: those listed, or those that come up to a key in the order of draw and a number of further ones. */
export interface Draw {
  readonly only?: readonly string[]
  readonly upTo?: string
  readonly more?: number
}

/** A mutant: where it is, and what it changes. */
export interface Mutant {
  readonly key: string
  readonly file: string
  readonly line: number
  readonly mutator: string
  readonly was: string
  readonly becomes: string
}

/** What became of it. `uncovered`: no test of the folder runs the line. `invalid`: the changed file could not be loaded. */
export type Fate = 'killed' | 'timedOut' | 'survived' | 'uncovered' | 'invalid'

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
}

const settings = (folder: Folder) => ({
  testRunner: 'vitest',
  vitest: { configFile: 'scripts/mutants/vitest.config.ts', related: false },
  plugins: ['@stryker-mutator/vitest-runner', join(root, 'scripts/mutants/drawn.mjs')],
  checkers: ['drawn'],
  coverageAnalysis: 'perTest' as const,
  mutate: [`${folder.source}/**/*.ts`, '!**/index.ts'],
  // What runs while a file is loaded is data: names, limits, sources and tables of records, which have checks of their own. Each such mutant would need
  // the whole run of the tests again.
  ignoreStatic: true,
  // Texts are for readers, and have tests of their own. The compiler rejects a record without its fields.
  mutator: { plugins: null, excludedMutations: ['StringLiteral', 'ObjectLiteral'] },
  ignorePatterns: ['/.*', '/out', '/dist', '/coverage', '/api', '/bench', '/mutants', '/docs/reference'],
  tempDirName: `${OUT}/sandbox`,
  concurrency: 1,
  reporters: ['progress-append-only'],
  timeoutMS: 60_000,
  dryRunTimeoutMinutes: 60,
  disableTypeChecks: false,
  logLevel: 'warn' as const,
  allowConsoleColors: false,
})

/** Runs the drawn mutants. `mutants` counts all of the folder, static ones excepted. */
export async function runMutants(folder: Folder, draw: Draw): Promise<{ mutants: number; outcomes: Outcome[] }> {
  const list = join(root, OUT, `${folder.name}-drawn.json`)
  mkdirSync(join(root, OUT), { recursive: true })
  rmSync(list, { force: true })
  process.env.LIMBWRIGHT_MUTANTS = JSON.stringify({ root, draw, list })
  process.env.LIMBWRIGHT_MUTANT_TESTS = JSON.stringify(folder.tests)
  if (folder.published !== undefined) process.env.LIMBWRIGHT_PUBLISHED = folder.published
  const results = await new Stryker(settings(folder) as never).runMutationTest()
  const { mutants, drawn } = JSON.parse(readFileSync(list, 'utf8')) as { mutants: number; drawn: (Mutant & { id: string })[] }
  const byId = new Map(results.map((result) => [result.id, result]))
  const outcomes = drawn.map(({ id, ...mutant }): Outcome => {
    const result = byId.get(id)
    const fate = FATES[result?.status ?? '']
    if (fate === undefined) throw new Error(`${mutant.file}:${mutant.line}: the state "${result?.status}" is not known`)
    const by = result?.killedBy?.[0]?.replace(/^.*?(tests\/)/, '$1')
    return { ...mutant, fate, ...(by === undefined ? {} : { by }) }
  })
  return { mutants, outcomes }
}
