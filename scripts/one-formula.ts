// A bundle that uses one formula holds that formula, those its kernel calls, and no other; gzipped it stays within the limit.
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'

/**
 * Gzipped bytes of the simplest formula alone. The names of kinds and units are a fifth of it; most of the rest is what reads a value and
 * says what is wrong with it.
 */
const LIMIT_SIMPLEST = 9500
/** Gzipped bytes of any formula that calls no other; some bring a part of `numeric`. */
const LIMIT_ANY = 17_500

const { catalogue } = (await import('limbwright/catalogue')) as typeof import('../src/catalogue/index.js')
const ids = [...catalogue.keys()]

async function bundleOf(id: string): Promise<string> {
  const [module, name] = id.split('.')
  const { outputFiles } = await build({
    stdin: { contents: `import { ${name} } from './dist/${module}.js'\nconsole.log(${name})`, resolveDir: process.cwd() },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
    external: ['zod', 'yaml'],
    logLevel: 'error',
  })
  return outputFiles[0]!.text
}

const others = (text: string, id: string) =>
  ids.filter((other) => other !== id && new RegExp(`["'\`]${other.replace('.', '\\.')}["'\`]`).test(text))

let failures = 0
const fail = (message: string) => {
  failures++
  console.log(`FAILED ${message}`)
}

const sizes: { id: string; size: number; kept: string[] }[] = []
for (const id of ids) {
  const text = await bundleOf(id)
  if (!text.includes(id)) fail(`${id} is not in its own bundle`)
  sizes.push({ id, size: gzipSync(text).length, kept: others(text, id) })
}

for (const { id, size, kept } of sizes) {
  if (size > LIMIT_ANY && kept.length === 0) fail(`a bundle of ${id} alone is ${size} bytes gzipped, limit ${LIMIT_ANY}`)
}
const simplest = sizes.find(({ id }) => id === 'capstan.slackTension')
if (simplest === undefined) fail('capstan.slackTension does not exist')
else if (simplest.kept.length > 0) fail(`a bundle of ${simplest.id} keeps ${simplest.kept.join(', ')}`)
else if (simplest.size > LIMIT_SIMPLEST) fail(`a bundle of ${simplest.id} is ${simplest.size} bytes gzipped, limit ${LIMIT_SIMPLEST}`)

const alone = sizes.filter(({ kept }) => kept.length === 0)
const median = (values: number[]) => values.toSorted((a, b) => a - b)[values.length >> 1]
console.log(
  `${ids.length} formulas bundled one by one: ${alone.length} keep no other, median ${median(sizes.map(({ size }) => size))} bytes gzipped`,
)
console.log(
  `most kept: ${sizes
    .toSorted((a, b) => b.kept.length - a.kept.length)
    .slice(0, 5)
    .map(({ id, kept, size }) => `${id} ${kept.length} (${size})`)
    .join(', ')}`,
)
console.log(
  `largest: ${sizes
    .toSorted((a, b) => b.size - a.size)
    .slice(0, 5)
    .map(({ id, size }) => `${id} ${size}`)
    .join(', ')}`,
)
process.exit(failures === 0 ? 0 : 1)
