// What a test file works out while it is loaded counts to each of its tests: the mutant is there by then, and what it runs is covered by them. By
// itself the runner of mutants starts a mutant only before the first test, so that no test of such a plan or verdict could notice it.
import { existsSync } from 'node:fs'
import { resolve } from 'node:path'
import { afterAll, beforeEach, inject } from 'vitest'

const LOADING = 'while the file is loaded'

type Hits = Record<string, number>
interface Shared {
  activeMutant?: string | undefined
  currentTestId?: string | undefined
  hitCount?: number
  mutantCoverage?: { perTest: Record<string, Hits> }
}

const given = inject as unknown as (name: string) => string | undefined
const shared = sharedBy(given('globalNamespace'))
shared.activeMutant = undefined
// The source itself is loaded first: its data is no fixture of a test.
const index = process.env.LIMBWRIGHT_MUTANT_INDEX
if (index !== undefined && existsSync(index)) await import(resolve(index))

if (given('mode') === 'mutant') {
  shared.hitCount = 0
  shared.activeMutant = given('activeMutant')
} else countFixtures()

function sharedBy(name = 'noRunner'): Shared {
  const all = globalThis as unknown as Record<string, Shared | undefined>
  all[name] ??= {}
  return all[name]
}

function countFixtures(): void {
  const tests = new Set<string>()
  shared.currentTestId = LOADING
  beforeEach(() => {
    if (shared.currentTestId !== undefined) tests.add(shared.currentTestId)
  })
  afterAll(() => {
    const perTest = shared.mutantCoverage?.perTest ?? {}
    const fixtures = perTest[LOADING]
    delete perTest[LOADING]
    if (fixtures === undefined) return
    for (const test of tests) {
      perTest[test] ??= {}
      for (const [mutant, hits] of Object.entries(fixtures)) perTest[test][mutant] = (perTest[test][mutant] ?? 0) + hits
    }
  })
}
