import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import type { Row } from './harness.js'

const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, { import?: { default: string } }> }

const TARGET = 0.06

function seconds(script: string): number {
  const start = performance.now()
  const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script], { encoding: 'utf8' })
  if (status !== 0) throw new Error(`${script}: ${stderr}`)
  return (performance.now() - start) / 1000
}

/** Cold processes, each import against bare Node in the same round. */
export const rows: Row[] = Object.entries(exports).flatMap(([subpath, entry]) => {
  const file = entry.import?.default
  if (file === undefined) return []
  if (!existsSync(file)) throw new Error(`${file} is not built: npm run build`)
  const name = `limbwright${subpath.slice(1)}`
  const measure = () => seconds(`import '${name}'`) - seconds('')
  // What loads mathjs pays for mathjs.
  const bound = subpath === './mathjs' ? {} : { bound: { atMostSeconds: TARGET } }
  return [{ work: `import ${name}, cold, above bare Node`, ours: { name, measure }, ...bound }]
})
