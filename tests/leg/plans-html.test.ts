import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { assemblyPlan, assemblyText, controlSheet, controlText, describeLeg, htmlPlans, standPlan, standText } from '../../src/leg/index.js'

const text = readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8')
const leg = describeLeg(text)
const page = htmlPlans(leg)
const plain = (html: string) =>
  html
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .replaceAll(/\s+/g, ' ')

test('every line and cell of the three Markdown sheets stands on the page', () => {
  const shown = plain(page)
  const sheets = [assemblyText(assemblyPlan(leg)), controlText(controlSheet(leg)), standText(standPlan(leg))]
  for (const line of sheets.flatMap((sheet) => sheet.split('\n'))) {
    for (const cell of line.startsWith('|') ? line.split(/(?<!\\)\|/) : [line]) {
      const words = cell
        .replace(/^\s*(#+|-+|\d+\.|```)\s*/, '')
        .replaceAll('**', '')
        .replaceAll('\\|', '|')
        .trim()
      expect(shown).toContain(words.replaceAll(/\s+/g, ' '))
    }
  }
})

test('the page needs nothing beside it, and every heading and table can be found without seeing it', () => {
  expect(page).not.toMatch(/<script|<link|src=|https?:\/\//)
  // The table of a picture is folded: its summary stands for a caption.
  expect(page.match(/<table>/g)?.length).toBe(page.match(/<caption>[^<]+<\/caption>|<summary>[^<]+<\/summary>/g)?.length)
  expect(page.match(/<section/g)).toHaveLength(3)
  for (const [, id] of page.matchAll(/href="#([^"]+)"/g)) expect(page).toContain(`id="${id}"`)
})

test('a name cannot put tags on the page', () => {
  const odd = describeLeg(text.replace('Mudflat walker, left front leg, revised design', '<b>x</b> & "y"'))
  const html = htmlPlans(odd)
  expect(html).not.toContain('<b>x</b>')
  expect(html).toContain('&lt;b&gt;x&lt;/b&gt; &amp; &quot;y&quot;')
})

test('the same leg gives the same page byte for byte', () => {
  expect(htmlPlans(describeLeg(text))).toBe(page)
})
