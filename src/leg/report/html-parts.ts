import type { Block, Page } from './blocks.js'
import { STYLE } from './style.js'

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
/** Text as it may stand between tags and in attributes. */
export const escaped = (text: string): string => text.replaceAll(/[&<>"']/g, (c) => ENTITIES[c] as string)

/** A table with a caption; cells are HTML. */
export function htmlTable(caption: string, head: readonly string[], rows: readonly (readonly string[])[]): string {
  const body = rows.map((cells) => `<tr>${cells.map((text) => `<td>${text}</td>`).join('')}</tr>`).join('\n')
  return `<div class="wide" tabindex="0" role="region" aria-label="${escaped(caption)}"><table>
<caption>${escaped(caption)}</caption>
<thead><tr>${head.map((text) => `<th scope="col">${escaped(text)}</th>`).join('')}</tr></thead>
<tbody>${body}</tbody></table></div>`
}

/** A whole page that needs nothing beside it: no network, no script. */
export function htmlDocument(title: string, remark: string | undefined, main: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>${STYLE}</style>
</head>
<body>
<header>
<h1>${escaped(title)}</h1>
${remark === undefined ? '' : `<p class="remark">${escaped(remark)}</p>`}
</header>
<main>
${main}
</main>
</body>
</html>
`
}

/** Blocks as HTML, with headings one level lower as an option. */
export const htmlBlocks = (blocks: readonly Block[], lower: 0 | 1 = 0): string => blocks.map((block) => html(block, lower)).join('\n')

/** A page as a part of another: its title is a heading there. */
export const htmlSection = (id: string, { title, blocks }: Page): string =>
  `<section aria-labelledby="${id}">\n<h2 id="${id}">${escaped(title)}</h2>\n${htmlBlocks(blocks, 1)}\n</section>`

function html(block: Block, lower: 0 | 1): string {
  switch (block.kind) {
    case 'heading': {
      const level = block.level + lower
      return `<h${level}>${escaped(block.text)}</h${level}>`
    }
    case 'text':
      return `<p>${block.lead === undefined ? '' : `<strong>${escaped(block.lead)}</strong> `}${escaped(block.text)}</p>`
    case 'points':
      return `<ul>${block.lines.map((line) => `<li>${escaped(line)}</li>`).join('')}</ul>`
    case 'steps':
      return `<ol>${block.lines.map((line) => `<li>${escaped(line)}</li>`).join('')}</ol>`
    case 'table':
      return htmlTable(
        block.caption,
        block.head,
        block.rows.map((cells) => cells.map(escaped)),
      )
    case 'code':
      return `<pre><code>${escaped(block.text)}</code></pre>`
  }
}
