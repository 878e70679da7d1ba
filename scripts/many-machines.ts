// Runs the recipe for many machines as its reader would: parts under GNU parallel, one of them killed half way, a merge that must name what is missing, the
// part again, and the table of a single run to the last bit. Ends with 77 where GNU parallel is not installed.
import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'

if (spawnSync('parallel', ['--version']).status !== 0) {
  console.log('Not run: GNU parallel is not installed (Debian: apt-get install parallel).')
  process.exit(77)
}
const pack = resolve('out/pack')
const tarball = join(pack, readdirSync(pack).find((name) => name.endsWith('.tgz')) ?? '')
const home = mkdtempSync(join(tmpdir(), 'limbwright-machines-'))
const env = { ...process.env, LEGS: '600', PARTS: '3', JOBS: '2' }
const run = (command: string, args: readonly string[], more: NodeJS.ProcessEnv = {}) => {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd: home, encoding: 'utf8', env: { ...env, ...more } })
  return { ok: status === 0, output: `${stdout}${stderr}` }
}
let failures = 0
const report = (what: string, ok: boolean, output = '') => {
  console.log(`${ok ? 'ok    ' : 'FAILED'} ${what}`)
  if (!ok) failures++
  if (!ok) console.log(output.slice(-3000))
}
const script = 'examples/many-machines/sweep.mjs'

try {
  writeFileSync(join(home, 'package.json'), '{ "private": true, "type": "module" }')
  const installed = run('npm', ['install', '--prefer-offline', '--no-audit', '--no-fund', tarball])
  report('npm install of the tarball', installed.ok, installed.output)
  cpSync('examples', join(home, 'examples'), { recursive: true })

  // A part is killed at its first progress, and the recipe does not run.
  const killed = spawn('node', [script, 'part', '2', '3', 'killed-2.txt'], { cwd: home, env, stdio: ['ignore', 'ignore', 'pipe'] })
  await once(killed.stderr, 'data')
  killed.kill('SIGKILL')
  await once(killed, 'exit')
  for (const k of ['1', '3']) report(`part ${k} alone`, run('node', [script, 'part', k, '3', `killed-${k}.txt`]).ok)
  const parts = ['killed-1.txt', 'killed-2.txt', 'killed-3.txt']
  const early = run('node', [script, 'merge', 'killed.csv', ...parts])
  report(
    'a merge without the killed part is rejected, and names it',
    !early.ok && /missing|incomplete|rows/i.test(early.output),
    early.output,
  )
  report('the killed part goes on', run('node', [script, 'part', '2', '3', 'killed-2.txt']).ok)
  const late = run('node', [script, 'merge', 'killed.csv', ...parts])
  report('the merge is whole', late.ok, late.output)

  const parallel = run('bash', ['examples/many-machines/gnu-parallel.sh'])
  report('the parts under GNU parallel', parallel.ok, parallel.output)
  const whole = run('node', [script, 'part', '1', '1', 'whole.txt'])
  report('a single run', whole.ok && run('node', [script, 'merge', 'whole.csv', 'whole.txt']).ok, whole.output)
  const table = (name: string) => readFileSync(join(home, name), 'utf8')
  const same = table('whole.csv') === table('parts/table.csv') && table('whole.csv') === table('killed.csv')
  report('all three tables are the same to the last digit', same && table('whole.csv').split('\n').length === 602)
} finally {
  rmSync(home, { recursive: true, force: true })
}
process.exit(failures === 0 ? 0 : 1)
