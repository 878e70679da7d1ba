import { expect, test } from 'vitest'
import folders from '../../folders.json' with { type: 'json' }
import { declarationsIn, declarationsOf, repeats } from './inputs.js'

const declared = folders.modules.flatMap(declarationsIn)
/** Text, without what only marks the end of a word. */
const words = (sentence: string) => sentence.replaceAll('’', "'").toLowerCase()

/** Generic sentences of parts that are not the same, such as the width of a strap and of a hook; the number may only fall. */
const SAME_SENTENCE = 10
/** Inputs of one name and the same limits; those with sentences of their own are other inputs. The number rises with a new formula only. */
const SAME_LIMITS = 384

test('an input with one meaning is declared once in a module, and the others spread that constant', () => {
  expect(declared.length).toBeGreaterThan(1500)
  expect(repeats(declared, ({ name, limits, sentence }) => `${name} ${limits} ${words(sentence)}`)).toBeLessThanOrEqual(SAME_SENTENCE)
  expect(repeats(declared, ({ name, limits }) => `${name} ${limits}`)).toBeLessThanOrEqual(SAME_LIMITS)
})

test('declarations are found in formulas, in spread constants of other files and in nested fields, and each only once', () => {
  const found = declarationsOf(
    'a',
    new Map([
      [
        'a/inputs.ts',
        "const LENGTH = { kind: 'length', above: 0 } as const\nexport const SPAN = {\n  /** Free length. */\n  span: LENGTH,\n} as const\n",
      ],
      [
        'a/one.ts',
        `import { SPAN } from './inputs.js'
export const one = formula('a.one', {
  inputs: {
    ...SPAN,
    /** Thread. */
    thread: {
      fields: {
        /** Pitch. */
        pitch: 'length',
      },
    },
  },
  output: {
    /** Out. */
    span: 'length',
  },
})
export const two = formula('a.two', {
  inputs: {
    ...SPAN,
    /** Pitch. */
    pitch: 'length',
    span: SPAN,
  },
  output: 'ratio',
})`,
      ],
    ]),
  )
  expect(found.map(({ at, name, limits, sentence }) => [at, name, limits, sentence])).toEqual([
    ['a/inputs.ts:4', 'span', "kind: 'length', above: 0", 'Free length.'],
    ['a/one.ts:6', 'thread', "fields: { /** Pitch. */ pitch: 'length', }", 'Thread.'],
    ['a/one.ts:9', 'pitch', "'length'", 'Pitch.'],
    ['a/one.ts:22', 'pitch', "'length'", 'Pitch.'],
  ])
  expect(repeats(found, ({ name }) => name)).toBe(1)
})
