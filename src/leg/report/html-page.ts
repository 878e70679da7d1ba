import type { Block, Page } from './blocks.js'
import { policyHash } from './hash.js'
import { escaped, htmlBlocks } from './html-parts.js'
import { SCRIPT } from './script.js'
import { printFooter, STYLE } from './style.js'

/**
 * A whole page that needs nothing beside it: no network, no other file. Its content policy names its styles and its script by their hashes, so that
 * nothing else can run or load.
 */
export function documentOf(title: string, main: string, before = '', script?: string): string {
  const style = `${STYLE}${printFooter(title)}`
  const styles = [style, ...[...main.matchAll(/<style>([\s\S]*?)<\/style>/g)].map(([, own]) => own as string)]
  const policy = [
    "default-src 'none'",
    `style-src ${[...new Set(styles)].map((style) => `'${policyHash(style)}'`).join(' ')}`,
    ...(script === undefined ? [] : [`script-src '${policyHash(script)}'`]),
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>${style}</style>
</head>
<body>
<a class="skip" href="#main" data-aid>Skip to the content</a>
<header>
<h1>${escaped(title)}</h1>
</header>
${before}<main id="main" tabindex="-1">
${main}
</main>
${script === undefined ? '' : `<script>${script}</script>\n`}</body>
</html>
`
}

/** A report as a page, with contents and a filter. */
export function reportDocument({ title, blocks }: Page): string {
  const main = htmlBlocks(blocks, 0, true)
  const at = main.indexOf('<section id="checks"')
  return documentOf(title, `${main.slice(0, at)}${FILTER}\n${main.slice(at)}`, contents(blocks), SCRIPT)
}

/** Links to the parts of a page. */
function contents(blocks: readonly Block[]): string {
  const links = blocks.flatMap((block) => (block.kind === 'section' ? [`<li><a href="#${block.id}">${escaped(block.title)}</a></li>`] : []))
  return `<nav aria-label="Contents" class="contents"><ul>${links.join('')}</ul></nav>\n`
}

const CHOICES = { joint: 'Joint', part: 'Part', case: 'Load case', state: 'State' } as const

/** Choices that hide what does not belong to them. The script fills them from the ranking; without it the form stays hidden, and everything is shown. */
const FILTER = `<form class="filter" data-aid aria-label="Filter of checks and steps" hidden>${Object.entries(CHOICES)
  .map(([name, label]) => `<label>${label} <select name="${name}"><option value="">all</option></select></label>`)
  .join(' ')} <button type="reset">Show all</button> <output role="status"></output></form>`
