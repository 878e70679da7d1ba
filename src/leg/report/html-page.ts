import type { Block, Marks, Page } from './blocks.js'
import { policyHash } from './hash.js'
import { CHOICES, type Codes, escaped, htmlBlocks, valuesOf } from './html-parts.js'
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
    `style-src ${[...new Set(styles)].map((one) => `'${policyHash(one)}'`).join(' ')}`,
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
  const codes = codesOf(blocks)
  const main = htmlBlocks(blocks, 0, codes)
  const at = main.indexOf('<section id="checks"')
  return documentOf(title, `${main.slice(0, at)}${filter(codes)}\n${main.slice(at)}`, contents(blocks), SCRIPT)
}

/** Links to the parts of a page. */
function contents(blocks: readonly Block[]): string {
  const links = blocks.flatMap((block) =>
    block.kind === 'section' ? [`<li><a href="#${block.marks?.id}">${escaped(block.title)}</a></li>`] : [],
  )
  return `<nav aria-label="Contents" class="contents"><ul>${links.join('')}</ul></nav>\n`
}

/** Every mark of some blocks. */
const marksIn = (blocks: readonly Block[]): Marks[] =>
  blocks.flatMap((block) => {
    if (block.kind === 'table') return block.marks ?? []
    if (block.kind === 'section') return [block.marks ?? {}, ...marksIn(block.blocks)]
    return block.kind === 'fold' ? marksIn(block.blocks) : []
  })

const LABELS = { joint: 'Joint', part: 'Part', cases: 'Load case', state: 'State' } as const

/** A code for every value of every choice, in the order of the page. */
function codesOf(blocks: readonly Block[]): Codes {
  const marks = marksIn(blocks)
  return new Map(
    CHOICES.flatMap((choice) =>
      [...new Set(marks.flatMap((mark) => valuesOf(mark, choice)))].map((value, i) => [`${choice} ${value}`, `${choice[0]}${i}`] as const),
    ),
  )
}

/** Choices that hide what does not belong to them. Without the script the form stays hidden, and everything is shown. */
function filter(codes: Codes): string {
  const choices = CHOICES.map((choice) => {
    const options = [...codes]
      .filter(([key]) => key.startsWith(`${choice} `))
      .map(([key, code]) => `<option value="${code}">${escaped(key.slice(choice.length + 1))}</option>`)
      .join('')
    return `<label>${LABELS[choice]} <select name="${choice}"><option value="">all</option>${options}</select></label>`
  })
  return `<form class="filter" data-aid aria-label="Filter of checks and steps" hidden>${choices.join(' ')} <button type="reset">Show all</button> <output role="status"></output></form>`
}
