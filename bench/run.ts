// `npm run bench` measures every bench/*.bench.ts, each in a process of its own, so that no file's work changes how another's is compiled; words
// pick files: `npm run bench -- quantities import`.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { type AllocationRow, measureAllocation } from './allocation.js'
import { type Line, measureRow, type Row, table } from './harness.js'

const asked = process.argv.slice(2)
if (asked[0] === '--file') {
  await measureFile(asked[1]!, asked[2]!)
  process.exit(0)
}

/** Measures one file and leaves its lines for the process that asked. */
async function measureFile(name: string, out: string): Promise<void> {
  const { rows } = (await import(`./${name}.bench.ts`)) as {
    rows: readonly (Row | AllocationRow)[] | (() => Promise<readonly (Row | AllocationRow)[]>)
  }
  const lines: Line[] = []
  for (const row of typeof rows === 'function' ? await rows() : rows) {
    process.stderr.write(`  ${name}: ${row.work}\n`)
    lines.push(...('call' in row ? measureAllocation(row) : measureRow(row)))
  }
  writeFileSync(out, JSON.stringify(lines))
}

const files = readdirSync('bench')
  .filter((file) => file.endsWith('.bench.ts'))
  .map((file) => file.slice(0, -'.bench.ts'.length))
  .filter((name) => asked.length === 0 || asked.some((word) => name.includes(word)))
  .sort()

console.log(`Node ${process.version}, ${cpus()[0]?.model ?? 'unknown processor'}; processor time, least of alternating runs`)
const folder = mkdtempSync(join(tmpdir(), 'bench-'))
const lines = files.flatMap((name): Line[] => {
  const out = join(folder, `${name}.json`)
  const { status } = spawnSync(process.execPath, ['--import', 'tsx', 'bench/run.ts', '--file', name, out], { stdio: 'inherit' })
  if (status !== 0) throw new Error(`bench/${name}.bench.ts ended with ${status}`)
  return JSON.parse(readFileSync(out, 'utf8')) as Line[]
})
rmSync(folder, { recursive: true })
console.log(`\n${table(lines)}\n`)
const missed = lines.filter(({ verdict }) => verdict === 'MISSED')
const missing = lines.filter(({ verdict }) => verdict === 'reference missing')
const held = lines.filter(({ verdict }) => verdict === 'met')
console.log(`${held.length} targets met, ${missed.length} missed, ${missing.length} not measured for want of a reference`)
for (const { work, ratio, ours, target } of missed) console.log(`missed: ${work}: ${ratio || ours}, asked ${target}`)
for (const { work, reference } of missing) console.log(`not measured: ${work}: ${reference}`)
