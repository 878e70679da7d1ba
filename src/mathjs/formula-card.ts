import { type AnyFormula, inputsInWords, outputsInWords, titleInWords } from '../formula/index.js'
import { kindWords } from '../units/index.js'
import { equationMarkup } from './equation-markup.js'

/** A formula on one card, which notebooks show. */
export interface FormulaCard {
  /** Module and name of the formula. */
  readonly id: string
  /** The card as HTML without scripts. */
  readonly html: string
}

/**
 * What a formula computes, on one card: its equations, what its inputs accept, what it returns, assumptions and sources. A notebook shows the card where
 * it is the last line of a cell.
 */
export function formulaCard(formula: AnyFormula): FormulaCard {
  const { id, def } = formula
  const html = htmlOf(formula)
  return Object.defineProperty({ id, html }, Symbol.for('Jupyter.display'), {
    value: () => ({ 'text/html': html, 'text/plain': [id, ...(def.equation ?? [])].join('\n') }),
  })
}

function htmlOf(formula: AnyFormula): string {
  const { id, def } = formula
  const [module, name] = id.split('.') as [string, string]
  const list = (title: string, items: readonly string[]) =>
    items.length === 0
      ? ''
      : `<details><summary>${title}</summary><ul>${items.map((item) => `<li>${escaped(item)}</li>`).join('')}</ul></details>`
  return [
    `<p><strong>${escaped(titleInWords(formula))}</strong>: <code>${escaped(name)}</code> of <code>limbwright/${escaped(module)}</code></p>`,
    ...equationMarkup(formula),
    table('input', 'accepts', inputsInWords(def.inputs)),
    table('output', 'is', outputsInWords(def.output)),
    list('Assumes', def.assumes ?? []),
    list('Valid where', Object.keys(def.valid ?? {})),
    list(
      'Sources',
      def.source.map(({ level, where }) => `${where} (${kindWords(level)})`),
    ),
  ].join('\n')
}

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')

const table = (name: string, text: string, rows: Readonly<Record<string, string>>) =>
  `<table><thead><tr><th scope="col">${name}</th><th scope="col">${text}</th></tr></thead><tbody>${Object.entries(rows)
    .map(([path, words]) => `<tr><td><code>${escaped(path)}</code></td><td>${escaped(words)}</td></tr>`)
    .join('')}</tbody></table>`
