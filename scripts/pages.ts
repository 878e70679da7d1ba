// Opens the pages of the demo in Chromium: no violation of axe at any level, no sideways scroll and no text under 11 px on a phone, nothing that the
// content policy blocks, everything open in print, and a filter that works. Light and dark. Names of other example legs can be given. Exits with 77
// where there is no browser: not checked.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { pathToFileURL } from 'node:url'
import type { AxeResults } from 'axe-core'
import type { Page } from 'playwright-core'
import { assess, describeLeg, htmlPlans, htmlReport, legDrawings, reportPictures } from '../src/leg/index.js'
import { openBrowser } from './browser.js'

const browser = await openBrowser()
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const SMALLEST = 11

mkdirSync('out/pages', { recursive: true })
const files: string[] = []
const given = process.argv.slice(2)
for (const name of given.length > 0 ? given : ['mudflat-leg-first', 'mudflat-leg-revised']) {
  const leg = describeLeg(readFileSync(`examples/${name}.yaml`, 'utf8'))
  const verdict = assess(leg)
  const drawings = legDrawings(verdict, { style: 'page' })
  const pages = {
    report: htmlReport(verdict, { pictures: await reportPictures(verdict, { drawings }), drawings }),
    ...(name.endsWith('first') ? {} : { workshop: htmlPlans(leg) }),
  }
  for (const [kind, html] of Object.entries(pages)) {
    files.push(`out/pages/${kind}-${name}.html`)
    writeFileSync(files.at(-1) as string, html)
  }
}

const problems: string[] = []
try {
  for (const file of files)
    for (const scheme of ['light', 'dark'] as const) {
      const page = await browser.newPage({ colorScheme: scheme, viewport: { width: 1280, height: 900 } })
      const where = `${file}, ${scheme}`
      page.on('console', (message) => {
        if (message.type() === 'error') problems.push(`${where}: ${message.text()}`)
      })
      page.on('pageerror', (error) => problems.push(`${where}: ${String(error)}`))
      await page.goto(pathToFileURL(file).href)
      problems.push(...(await violations(page)).map((one) => `${where}: ${one}`))
      await page.setViewportSize({ width: 390, height: 844 })
      problems.push(...(await onPhone(page)).map((one) => `${where}, 390 px: ${one}`))
      if (scheme === 'light') problems.push(...(await inPrint(page)).map((one) => `${where}, print: ${one}`))
      if (file.includes('report')) problems.push(...(await unlinked(page)).map((one) => `${where}: ${one}`))
      if (file.includes('report')) problems.push(...(await filtered(page)).map((one) => `${where}, filter: ${one}`))
      await page.close()
    }
} finally {
  await browser.close()
}
for (const problem of problems) console.log(problem)
console.log(`${files.length} pages in light and dark: ${problems.length === 0 ? 'no problem' : `${problems.length} problems`}`)
process.exit(problems.length === 0 ? 0 : 1)

/** Violations of every rule of axe. */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE)
  const found = (await page.evaluate('axe.run(document, { resultTypes: ["violations"] })')) as AxeResults
  return found.violations.map(({ id, impact, nodes }) => `${id} (${impact}), ${nodes.length} times: ${nodes[0]?.html.slice(0, 160)}`)
}

/** What does not fit a phone. */
async function onPhone(page: Page): Promise<string[]> {
  return (await page.evaluate(`(() => {
    const found = [];
    const { scrollWidth } = document.documentElement;
    if (scrollWidth > innerWidth) found.push('the page is ' + scrollWidth + ' px wide');
    const small = new Map();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const element = node.parentElement;
      if (element === null || node.textContent.trim() === '' || element.closest('script, style, title, desc') !== null) continue;
      const svg = element.closest('svg');
      const width = svg === null ? 0 : svg.viewBox.baseVal.width;
      const scale = svg === null || width === 0 ? 1 : svg.getBoundingClientRect().width / width;
      const size = Number.parseFloat(getComputedStyle(element).fontSize) * scale;
      if (size < ${SMALLEST - 0.05} && element.getClientRects().length > 0) {
        const key = element.tagName + ' at ' + size.toFixed(1) + ' px';
        small.set(key, (small.get(key) ?? 0) + 1);
      }
    }
    for (const [what, times] of small) found.push('text too small: ' + what + ', ' + times + ' times');
    return found;
  })()`)) as string[]
}

/** What print would lose. */
async function inPrint(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: 'print' })
  const lost = (await page.evaluate(
    `[...document.querySelectorAll('details')].filter((one) => [...one.children].slice(1).some((inner) => inner.getBoundingClientRect().height === 0)).length`,
  )) as number
  await page.emulateMedia({ media: 'screen' })
  return lost === 0 ? [] : [`${lost} folds are closed`]
}

/** Whether the filter shows what it says. */
async function filtered(page: Page): Promise<string[]> {
  const knee = (await page.evaluate(
    `[...document.querySelectorAll('select[name="joint"] option')].find((one) => one.textContent === 'knee').value`,
  )) as string
  await page.selectOption('select[name="joint"]', knee)
  const [shown, wrong, words] = (await page.evaluate(`(() => {
    const rows = [...document.querySelectorAll('#checks tbody tr')].filter((row) => !row.hidden);
    return [rows.length, rows.filter((row) => row.cells[2].textContent.endsWith(', hip')).length, document.querySelector('.filter output').textContent];
  })()`)) as [number, number, string]
  return shown > 0 && wrong === 0 && words.startsWith(`${shown} of `)
    ? []
    : [`${shown} rows shown, ${wrong} of the other joint: "${words}"`]
}

/** References of the calculation that lead nowhere. */
async function unlinked(page: Page): Promise<string[]> {
  const [links, broken, bare] = (await page.evaluate(`(() => {
    const links = [...document.querySelectorAll('#steps a, #chains a, #values a')];
    const parts = [...document.querySelectorAll('#steps, #chains, #values')];
    const texts = parts.map((part) => [...part.querySelectorAll('a')].reduce((text, link) => text.replace(link.textContent, ''), part.textContent));
    return [links.length, links.filter((link) => document.querySelector('[id="' + link.hash.slice(1) + '"]') === null).length, (texts.join(' ').match(/\\[[FTCQ]?\\d+(\\.\\d+)?\\]/g) ?? []).length];
  })()`)) as [number, number, number]
  return [
    ...(links < 1000 ? [`${links} references only`] : []),
    ...(broken > 0 ? [`${broken} references lead nowhere`] : []),
    ...(bare > 0 ? [`${bare} references are no links`] : []),
  ]
}
