import { DRAWING_STYLE } from '../../drawing/index.js'
import { Quantity, significant } from '../../units/index.js'
import type { Page } from '../report/blocks.js'
import { htmlBlocks } from '../report/html-parts.js'
import { markdownPage } from '../report/markdown-blocks.js'
import { shown } from './sheet-units.js'

/** Plain data that notebooks show as its page. */
export function displayed<T extends object>(data: T, pageOf: (data: T) => Page): T {
  return Object.defineProperty(data, Symbol.for('Jupyter.display'), {
    value: () => {
      const markdown = markdownPage(pageOf(data))
      const { blocks } = pageOf(data)
      const drawn = blocks.some(({ kind }) => kind === 'pictures' || kind === 'picture')
      return {
        'text/html': `${drawn ? `<style>${DRAWING_STYLE}</style>\n` : ''}${htmlBlocks(blocks)}`,
        'text/markdown': markdown,
        'text/plain': markdown,
      }
    },
    enumerable: false,
  })
}

/** A field's value as a reader would write it. */
export function valueText(value: unknown): string {
  if (value === undefined) return 'not given'
  if (typeof value === 'number') return significant(value, 4)
  if (value instanceof Quantity || typeof value !== 'object' || value === null) return String(value)
  const { low, typical, high } = value as { low?: unknown; typical?: unknown; high?: unknown }
  if (low !== undefined && typical !== undefined && high !== undefined)
    return `${valueText(typical)} (${valueText(low)} to ${valueText(high)})`
  if (Array.isArray(value)) return `[${value.map(valueText).join(', ')}]`
  return `{ ${Object.entries(value)
    .map(([name, entry]) => `${name}: ${valueText(entry)}`)
    .join(', ')} }`
}

/** A quantity in words; an infinite one is a drive that holds no load. */
export const endless = (x: Quantity): string => (Number.isFinite(x.si) ? shown(x) : 'infinite: the drives hold no load')
