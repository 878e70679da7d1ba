// Builds the live page: one file with the editor, the library and an example leg in it. It opens from a disk, without a server.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { build } from 'esbuild'
import { upgradeLegText } from '../../src/leg/index.js'

/** Where the page is in the site. */
export const LIVE_PAGE = 'docs/reference/live.html'

async function bundled(entry: string): Promise<string> {
  const { outputFiles } = await build({
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
    logLevel: 'error',
  })
  // A script in a page ends at its closing tag, wherever that is written.
  return (outputFiles[0]?.text ?? '').replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--')
}

const parts = {
  EXAMPLE: upgradeLegText(readFileSync('examples/mudflat-leg-revised.yaml', 'utf8')),
  CALCULATION: await bundled('scripts/live/calculation.ts'),
  PAGE: await bundled('scripts/live/main.ts'),
}
const page = Object.entries(parts).reduce(
  (text, [name, part]) => text.replace(`<!--${name}-->`, () => part),
  readFileSync('scripts/live/page.html', 'utf8'),
)
mkdirSync(dirname(LIVE_PAGE), { recursive: true })
writeFileSync(LIVE_PAGE, page)
console.log(`${LIVE_PAGE}: ${Math.round(page.length / 1024)} kB`)
