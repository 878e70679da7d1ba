import { Quantity } from '../../units/index.js'

/** Markdown of a table. */
export function table(head: readonly string[], rows: readonly (readonly unknown[])[]): string {
  const line = (cells: readonly unknown[]) => `| ${cells.map((one) => cell(String(one))).join(' | ')} |`
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')
}

const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll(/\s+/g, ' ')

/** Markdown of a list of points. */
export const points = (lines: readonly string[]): string => lines.map((line) => `- ${line}`).join('\n')

/** Parts of a page, the empty ones left out. */
export const page = (parts: readonly string[]): string => `${parts.filter((part) => part !== '').join('\n\n')}\n`

/** Plain data that notebooks show as its Markdown. */
export function displayed<T extends object>(data: T, markdown: (data: T) => string): T {
  return Object.defineProperty(data, Symbol.for('Jupyter.display'), {
    value: () => ({ 'text/markdown': markdown(data), 'text/plain': markdown(data) }),
    enumerable: false,
  })
}

/** A field's value as a reader would write it. */
export function valueText(value: unknown): string {
  if (value === undefined) return 'not given'
  if (value instanceof Quantity || typeof value !== 'object' || value === null) return String(value)
  const { low, typical, high } = value as { low?: unknown; typical?: unknown; high?: unknown }
  if (low !== undefined && typical !== undefined && high !== undefined) return `${typical} (${low} to ${high})`
  if (Array.isArray(value)) return `[${value.map(valueText).join(', ')}]`
  return `{ ${Object.entries(value)
    .map(([name, one]) => `${name}: ${valueText(one)}`)
    .join(', ')} }`
}
