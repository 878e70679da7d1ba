import { describe, expect, test } from 'vitest'
import { allExamples, type Example } from './extract.js'
import { runExample, withClaims } from './run.js'

/** Whether an example goes on where another ends. */
const goesOn = (one: Example, other: Example) =>
  one.file === other.file && one.line === other.line && one.code.length > other.code.length && one.code.startsWith(other.code)

/** The examples of the leg's pages take as long as all others together: each half has its own test file, so that two cores share them. */
export function testExamples(half: 'of the leg' | 'of the others'): void {
  const examples = allExamples().filter(({ file }) => /^docs\/guide\/(examples\/)?leg\.md$/.test(file) === (half === 'of the leg'))
  const running = examples.filter(({ runs }) => runs)
  /** The last of those that go on from each other: it holds the others, line by line. */
  const longest = running.filter((one) => !running.some((other) => goesOn(other, one)))

  test(`the docs have examples ${half}`, () => expect(examples.length).toBeGreaterThan(0))

  describe('every example of README, guide and doc comments holds', () => {
    for (const example of longest)
      test(`${example.file}:${example.line}`, async () => {
        for (const part of running.filter((one) => goesOn(example, one))) expect(() => withClaims(part)).not.toThrow()
        await expect(runExample(example)).resolves.toBeUndefined()
      })
    // Named here so that an example which proves nothing is seen in every run.
    for (const { file, line } of examples.filter(({ runs }) => !runs)) test.skip(`${file}:${line} (marked no-run)`)
  })
}
