import { type Block, type Piece, plainWords, points, type Words } from './blocks.js'
import type { NumberedStep } from './numbering.js'
import { placesText } from './places.js'

/** A column with its cells, step by step. */
export interface Shown {
  readonly name: string
  readonly cells: readonly Words[]
}

export const pieces = (words: Words): readonly Piece[] => (typeof words === 'string' ? [words] : words)

/** Results longer than this, in letters, stand once where two steps have the same. */
const LONG = 60

/** Steps as lines. */
export const linesOf = (steps: readonly NumberedStep[], inputs: readonly Shown[], results: readonly Shown[]): Block => {
  const made = steps.map((_, i) => results.map(({ cells }) => plainWords(cells[i] as Words)).join())
  return points(
    steps.map((step, i) => {
      const first = made.indexOf(made[i] as string)
      return lineOf(step, i, inputs, first < i && (made[i] as string).length > LONG ? (steps[first] as NumberedStep) : results)
    }),
  )
}

/** A step as a line: its results, or the step that has the same, and what they come from. */
function lineOf(step: NumberedStep, i: number, inputs: readonly Shown[], results: readonly Shown[] | NumberedStep): Words {
  const place = placesText(step.places)
  const named = (columns: readonly Shown[], single: boolean): Piece[] =>
    columns
      .filter(({ cells }) => (cells[i] as Words).length > 0)
      .flatMap(({ name, cells }, k): Piece[] => [`${k === 0 ? '' : ', '}${single ? '' : `${name} `}`, ...pieces(cells[i] as Words)])
  const from = named(inputs, false)
  return [
    { text: step.number, id: `s${step.number}` },
    place === '' ? ': ' : ` (${place}): `,
    ...('number' in results
      ? ['as ', { text: results.number, to: `s${results.number}` }]
      : named(results, results.length === 1 && results[0]?.name === 'result')),
    ...(from.length === 0 ? [] : [' ← ', ...from]),
  ]
}
