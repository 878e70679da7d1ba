// Licence texts of the packages that are bundled into a file, from what the bundler says went into it. Their licences ask for the text with every copy.
import { readdirSync, readFileSync } from 'node:fs'

interface Manifest {
  readonly name: string
  readonly version: string
  readonly license?: string
}

/** Names of the packages that these source files belong to, in alphabetical order. */
export function packagesOf(sources: Iterable<string>): string[] {
  const names = [...sources].flatMap((source) => source.match(/.*node_modules\/((?:@[^/]+\/)?[^/]+)\//)?.[1] ?? [])
  return [...new Set(names)].sort()
}

/** Name, version and licence text of each package. One without a licence file stops the build. */
export function licenceTexts(names: readonly string[]): string {
  const texts = names.map((name) => {
    const folder = `node_modules/${name}`
    const manifest = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8')) as Manifest
    const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each))
    if (file === undefined) throw new Error(`${name} is bundled but ships no licence text`)
    return `${name} ${manifest.version} (${manifest.license})\n\n${readFileSync(`${folder}/${file}`, 'utf8').trim()}\n`
  })
  return texts.join(`\n${'-'.repeat(80)}\n\n`)
}
