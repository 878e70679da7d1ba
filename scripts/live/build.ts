// Builds the live page: one file with the editor, the library and an example leg in it. It opens from a disk, without a server. With a file on the command
// line it builds the page without a leg there, which the command line fills.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { build } from 'esbuild'
import { upgradeLegText } from '../../src/leg/index.js'
import { policyHash } from '../../src/leg/report/hash.js'
import { SCRIPT } from '../../src/leg/report/script.js'
import { licenceTexts, packagesOf } from '../licences.js'

/** Where the page is in the site. */
const LIVE_PAGE = 'docs/reference/live.html'

/** What goes into the page, by file. */
const sources = new Set<string>()

async function bundled(entry: string): Promise<string> {
  const { outputFiles, metafile } = await build({
    entryPoints: [entry],
    bundle: true,
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    alias: { yaml: './node_modules/yaml/browser/index.js' },
    // Charts in the report are left as tables.
    external: ['vega', 'vega-lite'],
    write: false,
    metafile: true,
    logLevel: 'error',
  })
  for (const { inputs } of Object.values(metafile.outputs)) for (const input of Object.keys(inputs)) sources.add(input)
  return inPage(outputFiles[0]?.text ?? '')
}

/** A script in a page ends at its closing tag, wherever that is written. */
const inPage = (text: string) => text.replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--')

const template = process.argv[2]
const to = template ?? LIVE_PAGE
const script = await bundled('scripts/live/main.ts')
// Nothing is loaded, and no script runs but the page's own and that of the report, which opens under the same policy. The editor writes its styles itself.
const policy = [
  "default-src 'none'",
  `script-src '${policyHash(script)}' '${policyHash(SCRIPT)}'`,
  'worker-src blob:',
  "style-src 'unsafe-inline'",
  'img-src data:',
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')
const parts = {
  POLICY: `<meta http-equiv="Content-Security-Policy" content="${policy}">`,
  ...(template === undefined && { EXAMPLE: upgradeLegText(readFileSync('examples/mudflat-leg-revised.yaml', 'utf8')) }),
  CALCULATION: await bundled('scripts/live/calculation.ts'),
  PAGE: script,
}
const licences = inPage(licenceTexts(packagesOf(sources)))
const page = Object.entries({ ...parts, LICENCES: licences }).reduce(
  (text, [name, part]) => text.replace(`<!--${name}-->`, () => part),
  readFileSync('scripts/live/page.html', 'utf8'),
)
mkdirSync(dirname(to), { recursive: true })
writeFileSync(to, page)
console.log(`${to}: ${Math.round(page.length / 1024)} kB`)
