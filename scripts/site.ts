// Keeps the built reference as one version of the site: `docs/site/<version>/`, with a page that lists the versions, newest first. Nothing of an older version
// is touched; the same version is replaced.
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

const VERSION = /^(\d+)\.(\d+)\.(\d+)(?:-[\w.-]+)?$/

/** Puts a built reference into a site, and lists it there. Returns the versions of the site. */
export function keepVersion(reference: string, site: string, version: string): string[] {
  if (!VERSION.test(version)) throw new Error(`${version} is no version such as 1.2.3`)
  if (!existsSync(join(reference, 'index.html'))) throw new Error(`${reference} holds no built reference: npm run docs`)
  const folder = join(site, version)
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(site, { recursive: true })
  cpSync(reference, folder, { recursive: true })
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((each) => each.endsWith('.html'))) {
    const file = join(folder, name)
    const page = readFileSync(file, 'utf8')
    // Every page of the reference says where its root is.
    const base = /<html[^>]* data-base="([^"]*)"/.exec(page)?.[1]
    if (base !== undefined)
      writeFileSync(file, page.replace('</body>', `<p><a href="${base}../index.html">limbwright ${version}: all versions</a></p></body>`))
  }
  const versions = readdirSync(site)
    .filter((name) => VERSION.test(name))
    .sort(newestFirst)
  writeFileSync(join(site, 'index.html'), listOf(versions))
  return versions
}

/** By the numbers of Semantic Versioning; a version before its release comes after it. */
function newestFirst(a: string, b: string): number {
  const [x, y] = [a, b].map((version) => (VERSION.exec(version) ?? []).slice(1, 4).map(Number)) as [number[], number[]]
  for (const i of [0, 1, 2]) if (x[i] !== y[i]) return (y[i] as number) - (x[i] as number)
  return Number(a.includes('-')) - Number(b.includes('-')) || b.localeCompare(a)
}

const listOf = (versions: readonly string[]) => `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>limbwright: versions of the reference</title>
<h1>limbwright: versions of the reference</h1>
<ul>
${versions.map((version, i) => `<li><a href="${version}/index.html">${version}</a>${i === 0 ? ' (newest)' : ''}</li>`).join('\n')}
</ul>
</html>
`

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string }
  console.log(`docs/site: ${keepVersion('docs/reference', 'docs/site', version).join(', ')}`)
}
