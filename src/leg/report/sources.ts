import type { Source } from '../../formula/index.js'
import { remarkWords } from './amounts.js'
import { type Block, type Piece, section, table, text } from './blocks.js'
import { EVIDENCE, UNVERIFIED_MEANS } from './content.js'

/** Sources, each once: steps and values refer to them by number. */
export class Sources {
  readonly #numbers = new Map<string, { readonly number: number; readonly source: Source }>()

  /** References to some sources. */
  of(sources: readonly Source[]): readonly Piece[] {
    return sources.flatMap((source, i): Piece[] => {
      const key = `${source.level} ${source.where}`
      let known = this.#numbers.get(key)
      if (known === undefined) {
        known = { number: this.#numbers.size + 1, source }
        this.#numbers.set(key, known)
      }
      return [i === 0 ? '' : ', ', { text: `[Q${known.number}]`, to: `Q${known.number}` }]
    })
  }

  /** The list that the references lead to. */
  section(): Block {
    const all = [...this.#numbers.values()]
    return section('sources', 'Sources', [
      ...(all.some(({ source }) => source.level === 'unverified') ? [text(UNVERIFIED_MEANS)] : []),
      table(
        'Sources of formulas and values',
        ['no.', 'source', 'evidence'],
        all.map(({ number, source: { level, where } }) => [`Q${number}`, remarkWords(where), EVIDENCE[level] ?? level]),
        all.map(({ number }) => `Q${number}`),
      ),
    ])
  }
}
