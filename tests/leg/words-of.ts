const ENTITIES: Readonly<Record<string, string>> = { '&quot;': '"', '&#39;': "'", '&lt;': '<', '&gt;': '>', '&amp;': '&' }

/** Words of an HTML page in their order: what a reader reads, without navigation, drawings and captions of tables. */
export const wordsOfHtml = (html: string): string[] =>
  split(
    html
      .replace(/^[\s\S]*<body>/, '')
      .replaceAll(/<(style|script|svg|nav|caption)\b[\s\S]*?<\/\1>/g, ' ')
      .replaceAll(/<([a-z]+)[^>]* data-aid[^>]*>[\s\S]*?<\/\1>/g, ' ')
      .replaceAll('<summary>Numbers of this picture</summary>', ' ')
      .replaceAll(/<\/?(a|span|strong|code|b|i|var|sub|sup)\b[^>]*>/g, '')
      .replaceAll(/<[^>]+>/g, ' ')
      .replaceAll(/&(quot|#39|lt|gt|amp);/g, (entity) => ENTITIES[entity] as string),
  )

/** Words of a Markdown page in their order, without its signs. */
export const wordsOfMarkdown = (markdown: string): string[] =>
  split(
    markdown
      .replaceAll(/^#+ |^- |^\d+\. |^```$/gm, '')
      .replaceAll(/^\|(---\|)+$/gm, '')
      .replaceAll(/^\|.*$/gm, (row) => row.replaceAll(/(?<!\\)\|/g, ' '))
      .replaceAll(/\*\*|`/g, '')
      .replaceAll('\\|', '|')
      .replaceAll(']\\(', '](')
      .replaceAll('&lt;', '<'),
  )

/** Words of a page of plain text in their order, without lines of signs. */
export const wordsOfText = (text: string): string[] => split(text.replaceAll(/^(=+|-+|-+( +-+)+)$/gm, '').replaceAll(/^- |^\d+\. /gm, ''))

const split = (text: string): string[] => text.split(/\s+/).filter((word) => word !== '')
