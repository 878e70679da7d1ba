// The project's own settings, with the tests of one folder only. Loops with a mutant run longer, and on a busy machine much longer.
import { mergeConfig } from 'vitest/config'
import type { Reporter, TestModule } from 'vitest/node'
import config from '../../vitest.config.js'

const TEN_MINUTES = 600_000
const tests: string[] = JSON.parse(process.env.LIMBWRIGHT_MUTANT_TESTS ?? '[]')

/** The runner of mutants counts failed tests only. A file that a mutant stops from loading, and so has none, gets one that failed. */
const loading: Reporter = {
  onTestRunEnd(modules) {
    for (const { task: file } of modules as readonly (TestModule & { readonly task: { tasks: unknown[]; result?: { state?: string } } })[])
      if (file.result?.state === 'fail' && file.tasks.length === 0)
        file.tasks.push({ type: 'test', name: 'is loaded', mode: 'run', file, suite: file, result: file.result, meta: {} })
  },
}

const merged = mergeConfig(config, { test: { reporters: ['dot', loading], testTimeout: TEN_MINUTES, hookTimeout: TEN_MINUTES } })
merged.test.include = tests
merged.test.setupFiles = ['tests/setup.ts', 'scripts/mutants/fixtures.ts']

export default merged
