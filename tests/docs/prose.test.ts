import { writeFileSync } from 'node:fs'
import { afterAll, describe, expect, test } from 'vitest'
import { committedCounts, countsFile, pageCounts, proseCounts, sentencesOf, textsOf } from './prose.js'

const today = proseCounts()
const committed = committedCounts()

describe('plain prose', () => {
  test.each(Object.entries(today))('%s has no more of the words and long sentences than before', (place, counts) => {
    for (const [what, count] of Object.entries(counts)) {
      expect(count, `${what} in ${place}; the words are listed in tests/docs/prose.ts`).toBeLessThanOrEqual(committed[place]?.[what] ?? 0)
    }
  })
})

test('sentences are told apart, and code, tables and links do not count', () => {
  const page = `# A heading

The first sentence, with \`code that asks\`. The second says so: see [what was asked](asked.md)!

\`\`\`ts
// asked
\`\`\`

| asked | told |

- an item
- ${'word '.repeat(31)}`
  expect(sentencesOf(page).slice(0, 5)).toEqual([
    '# A heading',
    'The first sentence, with code.',
    'The second says so:',
    'see [what was asked]!',
    '- an item',
  ])
  expect(pageCounts(page)).toEqual({ words: 2, longSentences: 1 })
})

test('strings and comments of the source are found', () => {
  // biome-ignore lint/suspicious/noTemplateCurlyInString: the text is source code
  const code = "/** Doc. */\nconst a = 'one two' // end\nconst b = `three ${a} four five`\nconst c = 'word'\n/* last */"
  const { strings, comments } = textsOf(code)
  expect(strings).toEqual(['one two', 'three ', ' four five'])
  expect(comments).toEqual(['/** Doc. */', '// end', '/* last */'])
})

afterAll(() => {
  if (process.env.LIMBWRIGHT_UPDATE === undefined) return
  const lower = Object.entries(today).map(([place, counts]) => [
    place,
    Object.fromEntries(Object.entries(counts).map(([what, count]) => [what, Math.min(count, committed[place]?.[what] ?? count)])),
  ])
  writeFileSync(countsFile, `${JSON.stringify(Object.fromEntries(lower), undefined, 2)}\n`)
})
