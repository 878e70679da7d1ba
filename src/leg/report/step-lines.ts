import { type Block, type Piece, plainWords, points, type Words } from './blocks.js'
import type { NumberedStep } from './numbering.js'

/** A column with its cells, step by step. */
export interface Shown {
  readonly name: string
  readonly cells: readonly Words[]
}

export const pieces = (words: Words): readonly Piece[] => (typeof words === 'string' ? [words] : words)

/** Results longer than this, in letters, stand once where two steps have the same. */
const LONG = 60

/** A column whose long cells stand once; later steps name the first with the same. */
export const onceLong = ({ name, cells }: Shown, steps: readonly NumberedStep[]): Shown => {
  const texts = cells.map(plainWords)
  return {
    name,
    cells: cells.map((cell, i) => {
      const first = texts.indexOf(texts[i] as string)
      if (first === i || (texts[i] as string).length <= LONG) return cell
      const { number } = steps[first] as NumberedStep
      return ['as ', { text: number, to: `s${number}` }]
    }),
  }
}

/** Steps as lines. */
export const linesOf = (
  steps: readonly NumberedStep[],
  places: readonly string[],
  inputs: readonly Shown[],
  results: readonly Shown[],
): Block => {
  const made = steps.map((_, i) => results.map(({ cells }) => plainWords(cells[i] as Words)).join())
  return points(
    steps.map((step, i) => {
      const first = made.indexOf(made[i] as string)
      return lineOf(
        step,
        places[i] as string,
        i,
        inputs,
        first < i && (made[i] as string).length > LONG ? (steps[first] as NumberedStep) : results,
      )
    }),
  )
}

/** A step as a line: its results, or the step that has the same, and what they come from. */
function lineOf(step: NumberedStep, place: string, i: number, inputs: readonly Shown[], results: readonly Shown[] | NumberedStep): Words {
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
