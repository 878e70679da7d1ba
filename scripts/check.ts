// Everything CI checks besides the tests, step by step; with `--with-tests`, the tests first. Fails when a step fails, and says how
// many passed. A step that ends with 77 lacks a program on this machine: it is listed as not run. Names on the command line pick steps: `npm run check -- lint docs`.
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'

const REPORT = 'out/tests.json'

const steps: readonly (readonly [name: string, command: string])[] = [
  ['lint', 'npm run -s lint'],
  ['typecheck, TypeScript 6', 'npm run -s typecheck:6'],
  ['typecheck, TypeScript 7', 'npm run -s typecheck:fast'],
  ['typecheck of the docs examples', 'npm run -s typecheck:examples'],
  ['glossary', 'npm run -s glossary -- --check'],
  ['meanings of the document', 'npm run -s meanings -- --check'],
  ['editor', 'npm run -s check:editor'],
  ['layers', 'npm run -s layers'],
  ['unused code', 'npm run -s knip'],
  ['build', 'npm run -s build'],
  ['package', 'npm run -s check:package'],
  ['size', 'npm run -s check:size'],
  ['api snapshot', 'npm run -s check:api'],
  ['consumers', 'npm run -s check:consumers'],
  ['bundles and runtimes', 'npm run -s check:bundles'],
  ['notebooks', 'npm run -s check:notebooks'],
  ['many machines', 'npm run -s check:machines'],
  ['many machines, Slurm', 'npm run -s check:slurm'],
  ['docs', 'npm run -s docs'],
  ['links of the docs', 'npm run -s check:links'],
  ['live page', 'npm run -s check:live'],
  ['verification table', 'npm run -s verify'],
  ['fuzz', 'npm run -s fuzz'],
  ['mutants', 'npm run -s mutants -- --check'],
  ['tests in another place, order, locale and time zone', 'npm run -s check:elsewhere'],
  ['pages in a browser', 'npm run -s check:pages'],
  ['demo', 'npm run -s demo'],
]

const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'))
const chosen = asked.length === 0 ? steps : steps.filter(([name]) => asked.some((word) => name.includes(word)))
if (chosen.length === 0) {
  console.error(`No such step. Steps: ${steps.map(([name]) => name).join(', ')}`)
  process.exit(1)
}

mkdirSync('out', { recursive: true })
const lines: string[] = []
let passed = 0
let failed = 0
/** Steps that this machine cannot run; each says what is missing. */
let notRun = 0
/** The exit code by which a step says so. */
const NOT_RUN = 77

function run(name: string, command: string): number | null {
  console.log(`\n── ${name}: ${command}`)
  const start = performance.now()
  const { status } = spawnSync(command, { shell: true, stdio: ['ignore', 'inherit', 'inherit'] })
  const word = status === 0 ? 'ok     ' : status === NOT_RUN ? 'not run' : 'FAILED '
  const line = `${word} ${((performance.now() - start) / 1000).toFixed(1).padStart(6)} s  ${name}`
  console.log(line)
  lines.push(line)
  return status
}

if (process.argv.includes('--with-tests')) {
  rmSync(REPORT, { force: true })
  const ok = 0 === run('tests', `npm test -- --reporter=default --reporter=json --outputFile=${REPORT}`)
  let tests = { passed: 0, failed: 0 }
  try {
    const report = JSON.parse(readFileSync(REPORT, 'utf8'))
    tests = { passed: report.numPassedTests, failed: report.numFailedTests }
  } catch {
    console.log('the tests wrote no report')
  }
  passed += tests.passed
  // A suite that cannot be loaded fails the run without failing a test.
  failed += ok ? tests.failed : Math.max(1, tests.failed)
}

for (const [name, command] of chosen) {
  const status = run(name, command)
  if (status === 0) passed++
  else if (status === NOT_RUN) notRun++
  else failed++
}

console.log(`\n${lines.join('\n')}\n`)
if (notRun > 0) console.log(`${notRun} not run on this machine`)
console.log(`${passed} passed, ${failed} failed`)
process.exit(failed === 0 ? 0 : 1)
