// `npm run bench` measures every bench/*.bench.ts; words pick files: `npm run bench -- quantities import`.
import { readdirSync } from 'node:fs'
import { cpus } from 'node:os'
import { type Line, measureRow, type Row, table } from './harness.js'

const asked = process.argv.slice(2)
const files = readdirSync('bench')
  .filter((file) => file.endsWith('.bench.ts'))
  .map((file) => file.slice(0, -'.bench.ts'.length))
  .filter((name) => asked.length === 0 || asked.some((word) => name.includes(word)))
  .sort()

console.log(`Node ${process.version}, ${cpus()[0]?.model ?? 'unknown processor'}; medians of alternating runs`)
const lines: Line[] = []
for (const name of files) {
  const { rows } = (await import(`./${name}.bench.ts`)) as { rows: readonly Row[] | (() => Promise<readonly Row[]>) }
  for (const row of typeof rows === 'function' ? await rows() : rows) {
    process.stderr.write(`  ${name}: ${row.work}\n`)
    lines.push(...measureRow(row))
  }
}
console.log(`\n${table(lines)}\n`)
const missed = lines.filter(({ verdict }) => verdict === 'MISSED')
const missing = lines.filter(({ verdict }) => verdict === 'reference missing')
const held = lines.filter(({ verdict }) => verdict === 'met')
console.log(`${held.length} targets met, ${missed.length} missed, ${missing.length} not measured for want of a reference`)
for (const { work, ratio, ours, target } of missed) console.log(`missed: ${work}: ${ratio || ours}, asked ${target}`)
for (const { work, reference } of missing) console.log(`not measured: ${work}: ${reference}`)
