// A bundle that uses one formula holds that formula, those its kernel calls, and no other; gzipped it stays within the limit.
import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'

const LIMIT = 6000

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
  // The shared part is units and formula(); a formula that calls others carries theirs.
  if (size > LIMIT && kept.length === 0) fail(`a bundle of ${id} alone is ${size} bytes gzipped, limit ${LIMIT}`)
}
const simplest = sizes.find(({ id }) => id === 'capstan.slackTension')
if (simplest === undefined || simplest.kept.length > 0)
  fail(`a bundle of capstan.slackTension keeps ${simplest?.kept.join(', ') ?? 'nothing: it does not exist'}`)

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
