import { kindWords, Quantity } from '../../units/index.js'
import type { Leg } from './leg.js'

/** A leg that notebooks show in brief; plain data otherwise. */
export function displayedLeg(leg: Leg): Leg {
  return Object.defineProperty(leg, Symbol.for('Jupyter.display'), {
    value: () => ({ 'text/html': legHtml(leg), 'text/plain': `${leg.name}: ${openText(leg)}` }),
  })
}

/** Name, remark, one line for each part, and what the document left open. */
function legHtml(leg: Leg): string {
  const open = leg.defaults.map(({ path, value }) => `<li><code>${escaped(path)}</code>: ${escaped(value)}</li>`).join('')
  return [
    `<p><strong>${escaped(leg.name)}</strong>. ${escaped(leg.remark ?? '')}</p>`,
    table(SHOWN_SECTIONS.flatMap((section) => rowsOf(kindWords(section), (leg as Readonly<Record<string, unknown>>)[section]))),
    `<details><summary>${openText(leg)}</summary><ul>${open}</ul></details>`,
  ].join('\n')
}

/** Sections by which legs differ. Plates, bolts and the rest are in the document. */
const SHOWN_SECTIONS = ['robot', 'joints', 'links', 'motors', 'cords', 'foot', 'supply'] as const

const openText = ({ defaults }: Leg) => `${defaults.length} values left open and filled in`

/** A section's own values as one row, then one for each section within it. */
function rowsOf(title: string, section: unknown): [title: string, values: string][] {
  if (!isSection(section)) return []
  const entries = Object.entries(section)
  const own = entries.flatMap(([name, value]) => {
    const text = isSection(value) ? rangeText(value) : valueText(value)
    return text === undefined ? [] : [`${kindWords(name)} ${text}`]
  })
  const within = entries.flatMap(([name, value]) => (rangeText(value) === undefined ? rowsOf(`${title}, ${kindWords(name)}`, value) : []))
  return own.length === 0 ? within : [[title, own.join(', ')], ...within]
}

const isSection = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !(value instanceof Quantity) && !Array.isArray(value)

const valueText = (value: unknown): string | undefined =>
  value === undefined || typeof value === 'object' ? (value instanceof Quantity ? String(value) : undefined) : String(value)

/** Two ends as one value. */
function rangeText(value: unknown): string | undefined {
  if (!isSection(value)) return undefined
  const [from, to] = 'low' in value ? [value.low, value.high] : [value.lowest, value.highest]
  return from === undefined || to === undefined ? undefined : `${valueText(from)} to ${valueText(to)}`
}

const table = (rows: readonly (readonly string[])[]) =>
  `<table><thead><tr><th scope="col">part</th><th scope="col">values</th></tr></thead><tbody>${rows
    .map(
      ([title = '', values = '']) =>
        `<tr><th scope="row" style="white-space:nowrap">${escaped(title)}</th><td>${escaped(values)}</td></tr>`,
    )
    .join('')}</tbody></table>`

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
