/** A part of a page that is written once and printed as Markdown or as HTML. */
export type Block =
  | { readonly kind: 'heading'; readonly level: 2 | 3; readonly text: string }
  /** A paragraph; its lead, where there is one, stands out before it. */
  | { readonly kind: 'text'; readonly text: string; readonly lead?: string }
  | { readonly kind: 'points' | 'steps'; readonly lines: readonly string[] }
  | { readonly kind: 'table'; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[]; readonly caption: string }
  | { readonly kind: 'code'; readonly text: string }

/** A page: its title and what stands on it. */
export interface Page {
  readonly title: string
  readonly blocks: readonly Block[]
}

/** A heading of the second level. */
export const heading = (text: string): Block => ({ kind: 'heading', level: 2, text })
/** A heading of the third level. */
export const subheading = (text: string): Block => ({ kind: 'heading', level: 3, text })
/** A paragraph. */
export const text = (words: string): Block => ({ kind: 'text', text: words })
/** A paragraph whose first words stand out. */
export const led = (lead: string, words: string): Block => ({ kind: 'text', text: words, lead })
/** A list of points. */
export const points = (lines: readonly string[]): Block => ({ kind: 'points', lines })
/** A numbered list. */
export const steps = (lines: readonly string[]): Block => ({ kind: 'steps', lines })
/** Lines as they are to be typed. */
export const code = (words: string): Block => ({ kind: 'code', text: words })
/** A table; cells are printed as they read. The caption says what it holds to those who cannot see its place. */
export const table = (caption: string, head: readonly string[], rows: readonly (readonly unknown[])[]): Block => ({
  kind: 'table',
  caption,
  head,
  rows: rows.map((cells) => cells.map(String)),
})

/** A page as Markdown. */
export const markdownPage = ({ title, blocks }: Page): string => `${[`# ${literal(title)}`, ...blocks.map(markdown)].join('\n\n')}\n`

function markdown(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `${'#'.repeat(block.level)} ${literal(block.text)}`
    case 'text':
      return literal(block.lead === undefined ? block.text : `**${block.lead}** ${block.text}`.trimEnd())
    case 'points':
      return block.lines.map((line) => `- ${literal(line)}`).join('\n')
    case 'steps':
      return block.lines.map((line, i) => `${i + 1}. ${literal(line)}`).join('\n')
    case 'table':
      return markdownTable(block.head, block.rows)
    case 'code':
      return `\`\`\`\n${block.text.trimEnd()}\n\`\`\``
  }
}

/** A table as Markdown. */
export function markdownTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map(cell).join(' | ')} |`
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')
}

const cell = (text: string) => literal(text).replaceAll('|', '\\|').replaceAll(/\s+/g, ' ')

/** Text for Markdown in which no name or remark of a document can become a tag, a link or a picture. */
export const literal = (text: string): string => text.replaceAll('<', '&lt;').replaceAll('](', ']\\(')
