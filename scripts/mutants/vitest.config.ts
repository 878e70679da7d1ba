// The project's own settings, with the tests of one folder only. Loops with a mutant run longer, and on a busy machine much longer.
import { mergeConfig } from 'vitest/config'
import config from '../../vitest.config.js'

const TEN_MINUTES = 600_000
const tests: string[] = JSON.parse(process.env.LIMBWRIGHT_MUTANT_TESTS ?? '[]')
const merged = mergeConfig(config, { test: { reporters: ['dot'], testTimeout: TEN_MINUTES, hookTimeout: TEN_MINUTES } })
merged.test.include = tests
merged.test.setupFiles = ['tests/setup.ts', 'scripts/mutants/fixtures.ts']

export default merged
