import { type AnyFormula, brokenStatements } from '../../formula/index.js'
import { remarkWords } from './amounts.js'
import { type Block, points } from './blocks.js'
import type { NumberedStep } from './numbering.js'

/** Limits of validity that steps break. */
export function notesOf(formula: AnyFormula, steps: readonly NumberedStep[]): Block[] {
  const broken = new Map<string, string[]>()
  for (const { number, step } of steps)
    for (const statement of brokenStatements(formula, step.x, step.y)) broken.set(statement, [...(broken.get(statement) ?? []), number])
  return broken.size === 0
    ? []
    : [
        points(
          [...broken].map(([statement, numbers]) => [
            { text: 'Outside its validity', strong: true },
            ` in ${numbers.join(', ')}: valid for ${remarkWords(statement)}.`,
          ]),
        ),
      ]
}
