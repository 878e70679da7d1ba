// Everything CI checks besides the tests, as many steps at a time as there are cores; with `--with-tests`, the tests first. What a step printed stands
// together under its name. Fails when a step fails, and reports how many passed. A step that ends with 77 lacks a program on this machine: it is listed as not
// run. Names on the command line pick steps: `npm run check -- lint docs`.
import { spawn, spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { availableParallelism } from 'node:os'

const REPORT = 'out/tests.json'

interface Step {
  readonly name: string
  readonly command: string
  /** The steps whose files this one reads: it starts when those that were chosen have ended. */
  readonly after?: readonly string[]
  /** Whether the step uses every core by itself, so that another one beside it would only slow both. */
  readonly alone?: boolean
}

// The order in which steps start: the long ones that others wait for come first.
const steps: readonly Step[] = [
  { name: 'lint', command: 'npm run -s lint' },
  { name: 'build', command: 'npm run -s build' },
  { name: 'typecheck, TypeScript 6', command: 'npm run -s typecheck:6' },
  { name: 'docs', command: 'npm run -s docs' },
  { name: 'package', command: 'npm run -s check:package', after: ['build'] },
  { name: 'consumers', command: 'npm run -s check:consumers', after: ['package'] },
  { name: 'bundles and runtimes', command: 'npm run -s check:bundles', after: ['package'] },
  { name: 'live page', command: 'npm run -s check:live', after: ['build', 'docs'] },
  { name: 'notebooks', command: 'npm run -s check:notebooks', after: ['package'] },
  { name: 'pages in a browser', command: 'npm run -s check:pages' },
  { name: 'demo', command: 'npm run -s demo' },
  { name: 'fuzz', command: 'npm run -s fuzz' },
  { name: 'size', command: 'npm run -s check:size', after: ['build'] },
  { name: 'typecheck, TypeScript 7', command: 'npm run -s typecheck:fast' },
  { name: 'typecheck of the docs examples', command: 'npm run -s typecheck:examples' },
  { name: 'mutants', command: 'npm run -s mutants -- --check' },
  { name: 'meanings of the document', command: 'npm run -s meanings -- --check' },
  { name: 'editor', command: 'npm run -s check:editor' },
  { name: 'api snapshot', command: 'npm run -s check:api' },
  { name: 'unused code', command: 'npm run -s knip' },
  { name: 'layers', command: 'npm run -s layers' },
  { name: 'verification table', command: 'npm run -s verify' },
  { name: 'glossary', command: 'npm run -s glossary -- --check' },
  { name: 'links of the docs', command: 'npm run -s check:links', after: ['docs'] },
  { name: 'many machines', command: 'npm run -s check:machines', after: ['package'], alone: true },
  { name: 'many machines, Slurm', command: 'npm run -s check:slurm', after: ['package'], alone: true },
  { name: 'tests in another place, order, locale and time zone', command: 'npm run -s check:elsewhere', alone: true },
]

const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'))
const chosen = asked.length === 0 ? steps : steps.filter(({ name }) => asked.some((word) => name.includes(word)))
if (chosen.length === 0) {
  console.error(`No such step. Steps: ${steps.map(({ name }) => name).join(', ')}`)
  process.exit(1)
}

mkdirSync('out', { recursive: true })
const lines: string[] = []
let passed = 0
let failed = 0
/** Steps that this machine cannot run; each prints what is missing. */
let notRun = 0
/** The exit code by which a step reports so. */
const NOT_RUN = 77

/** Notes how a step ended and how long it took. */
function record(name: string, status: number | null, start: number): void {
  const word = status === 0 ? 'ok     ' : status === NOT_RUN ? 'not run' : 'FAILED '
  const line = `${word} ${((performance.now() - start) / 1000).toFixed(1).padStart(6)} s  ${name}`
  console.log(line)
  lines.push(line)
}

/** Runs a step and prints what it printed when it has ended. */
async function run({ name, command }: Step): Promise<void> {
  const start = performance.now()
  const output: Buffer[] = []
  const status = await new Promise<number | null>((resolve) => {
    const child = spawn(command, { shell: true, stdio: ['ignore', 'pipe', 'pipe'] })
    child.stdout.on('data', (part: Buffer) => output.push(part))
    child.stderr.on('data', (part: Buffer) => output.push(part))
    child.on('close', resolve)
  })
  console.log(`\n── ${name}: ${command}`)
  process.stdout.write(Buffer.concat(output))
  record(name, status, start)
  if (status === 0) passed++
  else if (status === NOT_RUN) notRun++
  else failed++
}

/** Runs every chosen step: each when what it reads is made and a core is idle. */
async function runAll(): Promise<void> {
  const waiting = [...chosen]
  const running = new Map<Step, Promise<void>>()
  const unfinished = () => new Set([...waiting, ...running.keys()].map(({ name }) => name))
  const mayStart = ({ after = [], alone = false }: Step, open: Set<string>) =>
    !after.some((name) => open.has(name)) && (alone ? running.size === 0 : ![...running.keys()].some((step) => step.alone))
  while (waiting.length > 0 || running.size > 0) {
    const open = unfinished()
    const next = running.size < availableParallelism() ? waiting.find((step) => mayStart(step, open)) : undefined
    if (next === undefined) {
      await Promise.race(running.values())
      continue
    }
    waiting.splice(waiting.indexOf(next), 1)
    running.set(
      next,
      run(next).finally(() => running.delete(next)),
    )
  }
}

if (process.argv.includes('--with-tests')) {
  rmSync(REPORT, { force: true })
  const command = `npm test -- --reporter=default --reporter=json --outputFile=${REPORT}`
  console.log(`\n── tests: ${command}`)
  const start = performance.now()
  const { status } = spawnSync(command, { shell: true, stdio: ['ignore', 'inherit', 'inherit'] })
  record('tests', status, start)
  let tests = { passed: 0, failed: 0 }
  try {
    const report = JSON.parse(readFileSync(REPORT, 'utf8'))
    tests = { passed: report.numPassedTests, failed: report.numFailedTests }
  } catch {
    console.log('the tests wrote no report')
  }
  passed += tests.passed
  // A suite that cannot be loaded fails the run without failing a test.
  failed += status === 0 ? tests.failed : Math.max(1, tests.failed)
}

await runAll()

console.log(`\n${lines.join('\n')}\n`)
if (notRun > 0) console.log(`${notRun} not run on this machine`)
console.log(`${passed} passed, ${failed} failed`)
process.exit(failed === 0 ? 0 : 1)
