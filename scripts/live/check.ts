// Opens the live page from the disk in Chromium, without network, and uses it: the verdict of the example, a changed value by keyboard, a mistake, completion, a
// slider, the report; then the rules of axe for screen readers and contrast, in light and dark. Ends with 77 where Chromium is not installed.
import { mkdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { pathToFileURL } from 'node:url'
import type { Page } from 'playwright-core'
import { openBrowser } from '../browser.js'

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
let failures = 0
const report = (what: string, ok: boolean, output: unknown = '') => {
  console.log(`${ok ? 'ok    ' : 'FAILED'} ${what}`)
  if (ok) return
  failures++
  console.log(output)
}
const LONG = { timeout: 120_000 }
const verdictOf = (page: Page, pattern: RegExp) =>
  page
    .waitForFunction(
      ([source]) => new RegExp(source as string).test(document.getElementById('verdict')?.textContent ?? ''),
      [pattern.source],
      LONG,
    )
    .then(() => true)
    .catch(() => false)
const editor = (page: Page) => page.locator('.cm-content')

/** Replaces a line of the document by keyboard alone. */
async function retype(page: Page, line: string, next: string) {
  await page.evaluate((text) => {
    const found = [...document.querySelectorAll('.cm-line')].find((each) => each.textContent?.startsWith(text))
    const range = document.createRange()
    range.selectNodeContents(found as Node)
    getSelection()?.removeAllRanges()
    getSelection()?.addRange(range)
  }, line)
  await page.keyboard.type(next)
}

const chrome = await openBrowser()
try {
  for (const colorScheme of ['light', 'dark'] as const) {
    const context = await chrome.newContext({ colorScheme, offline: true, viewport: { width: 1400, height: 1000 } })
    const page = await context.newPage()
    const faults: string[] = []
    page.on('pageerror', (error) => faults.push(String(error)))
    // What the content policy of the page stops is an error here.
    context.on('console', (message) => {
      if (message.type() === 'error') faults.push(message.text())
    })
    await page.goto(pathToFileURL('docs/reference/live.html').href)
    report(
      `${colorScheme}: the example has a verdict, without network`,
      await verdictOf(page, /^This leg passes/),
      await page.textContent('main'),
    )
    if (colorScheme === 'light') {
      await editor(page).focus()
      await retype(page, 'name: ', 'name: [')
      report('a mistake is listed with its line', await verdictOf(page, /to change in the document/))
      report('and leads there', (await page.locator('#mistakes button').count()) > 0)
      await retype(page, 'name: [', 'name: Edited leg')
      report('the corrected document has its verdict again', await verdictOf(page, /^This leg/))
      const slider = page.locator('#sliders input').first()
      report('fields have sliders', (await page.locator('#sliders input').count()) >= 3)
      const range = await page
        .waitForFunction(
          () => /^Every check has its required reserve from /.test(document.querySelector('.range')?.textContent ?? ''),
          null,
          LONG,
        )
        .then(() => page.evaluate(() => document.querySelectorAll('#sliders div:first-child .in').length))
        .catch(() => 0)
      report('a slider shows where the leg passes', range > 0 && range < 17, `${range} of 17 values pass`)
      await slider.focus()
      await page.keyboard.press('Home')
      report(
        'a slider moved by keyboard changes the verdict',
        await verdictOf(page, /^This leg (fails|passes, but)/),
        await page.textContent('#verdict'),
      )
      await page.keyboard.press('End')
      await editor(page).focus()
      await page.keyboard.press('Control+End')
      await page.keyboard.press('Enter')
      await page.keyboard.press('Home')
      await page.keyboard.press('Shift+End')
      await page.keyboard.press('Delete')
      await page.keyboard.type('sup')
      await page.keyboard.press('Control+Space')
      const completes = await page.waitForSelector('.cm-tooltip-autocomplete', LONG).then(
        (each) => each.textContent(),
        () => '',
      )
      report('a name is completed from the schema', /supply/.test(completes ?? ''), completes)
      await page.keyboard.press('Escape')
      for (let i = 0; i < 3; i++) await page.keyboard.press('Backspace')
      await page.keyboard.press('Tab')
      report('Tab leaves the editor', await page.evaluate(() => document.activeElement?.closest('.cm-editor') === null))
      await verdictOf(page, /^This leg/)
      const [tab] = await Promise.all([context.waitForEvent('page', LONG), page.locator('#report').click()])
      await tab.waitForSelector('h1', LONG)
      report('the report opens', /Edited leg/.test((await tab.textContent('h1')) ?? ''), await tab.textContent('h1'))
      report('and its filter works under the policy of the page', await tab.locator('form.filter').isVisible())
      await tab.close()
    }
    // The policy of the page lets no script in, but the inspector may.
    await page.evaluate(AXE)
    const violations = await page.evaluate(async () => {
      const { axe: rules } = window as unknown as {
        axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> }
      }
      return (await rules.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(' | ')}`)
    })
    report(`${colorScheme}: axe finds no violation`, violations.length === 0, violations.join('\n'))
    report(`${colorScheme}: no error in the page`, faults.length === 0, faults.join('\n'))
    mkdirSync('out', { recursive: true })
    await page.screenshot({ path: `out/live-${colorScheme}.png` })
    await page.setViewportSize({ width: 390, height: 844 })
    const width = await page.evaluate(() => document.documentElement.scrollWidth)
    report(`${colorScheme}: the page fits a phone`, width <= 390, `it is ${width} px wide`)
    await page.screenshot({ path: `out/live-${colorScheme}-phone.png`, fullPage: true })
    await context.close()
  }
} finally {
  await chrome.close()
}
process.exit(failures === 0 ? 0 : 1)
