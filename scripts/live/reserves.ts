// Calculates the example legs and a sweep in Chromium, under a content policy that allows no text to be run as code, and compares them with Node to 1e-12. The
// language leaves the last digits of exp, sin and pow to the engine; how many numbers differ there is printed. Ends with 77 where Chromium is not installed.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import { policyHash } from '../../src/leg/report/hash.js'
import { openBrowser } from '../browser.js'

const FOLDER = 'out/chromium'
const TOLERANCE = 1e-12

interface Calculated {
  readonly engine: string
  /** Whether text may be run as code. */
  readonly evaluates: boolean
  readonly numbers: Readonly<Record<string, readonly number[]>>
}

const legs = readdirSync('examples').filter((name) => name.endsWith('.yaml'))
const texts = Object.fromEntries(legs.map((name) => [name, readFileSync(`examples/${name}`, 'utf8')]))
const code = `import { assess, describeLeg } from './dist/leg.js'
import { sweep } from './dist/study.js'
import { slackTension } from './dist/capstan.js'
const texts = ${JSON.stringify(texts)}
const evaluates = (() => { try { return new Function('return true')() } catch { return false } })()
const numbers = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, assess(describeLeg(text)).checks.map(({ reserve }) => reserve)]))
const table = sweep(slackTension, { over: { friction: { from: 0.05, to: 0.4, count: 200 } }, fixed: { load: '500 N', wrapAngle: '3 turn' } })
numbers.sweep = [...table.in('result', 'N')]
globalThis.calculated = { engine: typeof process === 'object' ? 'Node ' + process.version : navigator.userAgent, evaluates, numbers }
`

async function bundled(platform: 'browser' | 'node', format: 'iife' | 'esm'): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: process.cwd() },
    bundle: true,
    format,
    platform,
    external: ['vega', 'vega-lite'],
    write: false,
    logLevel: 'error',
  })
  return (outputFiles[0]?.text ?? '').replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--')
}

mkdirSync(FOLDER, { recursive: true })
const script = await bundled('browser', 'iife')
const policy = `default-src 'none'; script-src '${policyHash(script)}'`
writeFileSync(
  `${FOLDER}/page.html`,
  `<!doctype html><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}"><title>reserves</title><script>${script}</script>`,
)
writeFileSync(`${FOLDER}/node.mjs`, await bundled('node', 'esm'))

const browser = await openBrowser()
let there: Calculated
try {
  const page = await browser.newPage()
  await page.goto(pathToFileURL(`${FOLDER}/page.html`).href)
  there = (await page
    .waitForFunction(() => (globalThis as { calculated?: Calculated }).calculated, null, { timeout: 300_000 })
    .then((found) => found.jsonValue())) as Calculated
} finally {
  await browser.close()
}
await import(pathToFileURL(`${FOLDER}/node.mjs`).href)
const here = (globalThis as unknown as { calculated: Calculated }).calculated

let [compared, last, failures] = [0, 0, 0]
for (const [name, numbers] of Object.entries(here.numbers)) {
  const others = there.numbers[name] ?? []
  if (others.length !== numbers.length) {
    failures++
    console.log(`FAILED ${name}: ${others.length} numbers instead of ${numbers.length}`)
  }
  for (const [i, x] of numbers.entries()) {
    const y = others[i] ?? Number.NaN
    compared++
    if (Object.is(x, y)) continue
    last++
    if (Math.abs(x - y) <= TOLERANCE * Math.abs(x)) continue
    failures++
    console.log(`FAILED ${name}: number ${i + 1} is ${y} instead of ${x}`)
  }
}
if (there.evaluates) {
  failures++
  console.log('FAILED the policy of the page lets text run as code')
}
console.log(`${there.engine} and ${here.engine}: ${compared} numbers alike to 1e-12, ${last} of them not in the last digits`)
/** Two legs in all load cases have more numbers than this. */
const LEAST = 900
if (compared < LEAST) {
  failures++
  console.log(`FAILED ${compared} numbers compared, at least ${LEAST} are expected`)
}
process.exit(failures === 0 ? 0 : 1)
