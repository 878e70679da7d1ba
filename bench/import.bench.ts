import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import type { Row } from './harness.js'

const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, { import?: { default: string } }> }

/** Seconds that an import may take above bare Node. */
const TARGETS: Readonly<Record<string, number>> = { '.': 0.08, './leg': 0.07 }
const TARGET = 0.03

/** Processor time of a cold process, s: other work on the machine hardly changes it. */
function seconds(script: string): number {
  const code = `${script}; const { user, system } = process.cpuUsage(); console.log(user + system)`
  const { status, stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', code], { encoding: 'utf8' })
  if (status !== 0) throw new Error(`${script}: ${stderr}`)
  return Number(stdout) / 1e6
}

/** Cold processes, each import against bare Node in the same round. */
export const rows: Row[] = Object.entries(exports).flatMap(([subpath, entry]) => {
  const file = entry.import?.default
  if (file === undefined) return []
  if (!existsSync(file)) throw new Error(`${file} is not built: npm run build`)
  const name = `limbwright${subpath.slice(1)}`
  const measure = () => seconds(`import '${name}'`) - seconds('')
  // What loads mathjs pays for mathjs.
  const bound = subpath === './mathjs' ? {} : { bound: { atMostSeconds: TARGETS[subpath] ?? TARGET } }
  return [{ work: `import ${name}, cold, processor time above bare Node`, ours: { name, measure }, ...bound }]
})
