import { describe, expect, test } from 'vitest'
import { allExamples } from './extract.js'
import { runExample } from './run.js'

const examples = allExamples()

test('the docs have examples', () => expect(examples.length).toBeGreaterThan(0))

describe('every example of README, guide and doc comments holds', () => {
  for (const example of examples.filter(({ runs }) => runs))
    test(`${example.file}:${example.line}`, () => expect(runExample(example)).resolves.toBeUndefined())
  // Named here so that an example which proves nothing is seen in every run.
  for (const { file, line } of examples.filter(({ runs }) => !runs)) test.skip(`${file}:${line} (marked no-run)`)
})
