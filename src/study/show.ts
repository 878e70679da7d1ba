import type { Kind } from '../units/index.js'

/** A Markdown table. */
export function markdownTable(header: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`
  return [line(header), line(header.map(() => '---')), ...rows.map(line)].join('\n')
}

/** The kind of a difference of two values of a kind. */
export const spreadKind = (kind: Kind): Kind => (kind === 'temperature' ? 'temperatureDifference' : kind)

/** A share as text: three digits of a percentage. */
export const percentText = (share: number) => `${Number((100 * share).toPrecision(3))} %`

/** What prints itself: as Markdown, as text and in notebooks. */
export abstract class Printable {
  /** The result as Markdown. */
  abstract toMarkdown(): string

  /** The result as text. */
  toString(): string {
    return this.toMarkdown()
  }

  /** The text that notebooks show. */
  [Symbol.for('Jupyter.display')](): Record<string, string> {
    return { 'text/markdown': this.toMarkdown(), 'text/plain': this.toMarkdown() }
  }
}
