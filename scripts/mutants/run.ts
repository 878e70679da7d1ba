// Mutants of one folder:
//   npm run mutants -- capstan --more=60     draws 60 further mutants, runs them, and writes them into the record
//   npm run mutants -- capstan --more=20 --same   the same as a further part of the last draw: only while no test was written since
//   npm run mutants -- capstan --whole       draws all that are left
//   npm run mutants -- capstan --survivors   runs the survivors again, after a test was written
//   npm run mutants -- capstan --survivors --tests=tests/capstan/limits.test.ts   the same, against some tests only
//   npm run mutants -- capstan               runs all drawn ones again
//   npm run mutants -- --table               writes docs/mutation-scores.md
//   npm run mutants -- --check               checks records and page, and runs some mutants of the smallest folder
import { parseArgs } from 'node:util'
import { type Folder, folderOf, folders } from './folders.js'
import { isSurvivor, type Record, readRecord, scoreOf, withDraw, withRun, writeRecord } from './record.js'
import { type Found, listMutants, type Outcome, runMutants } from './stryker.js'
import { mistakes, mistakesOf, writeTable } from './table.js'

/** The folder of which the check runs mutants, and how many: about half a minute. */
const SMALL = { folder: 'structures', mutants: 40 }

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    more: { type: 'string' },
    same: { type: 'boolean' },
    whole: { type: 'boolean' },
    survivors: { type: 'boolean' },
    tests: { type: 'string' },
    table: { type: 'boolean' },
    check: { type: 'boolean' },
  },
})

const today = () => new Date().toISOString().slice(0, 10)
const written = ({ file, line, fate, was, becomes }: Outcome) => `${fate} ${file}:${line}\n    ${was}\n  → ${becomes}`

async function draw(folder: Folder, more: number): Promise<Record> {
  const before = readRecord(folder.name)
  const all = await listMutants(folder)
  const next = all.filter(({ key }) => key > (before?.drawnTo ?? '')).slice(0, more)
  const outcomes = await runMutants(folder, next)
  // One that timed out may be a loop without end, or a busy machine.
  const toRead = outcomes.filter((outcome) => isSurvivor(outcome) || outcome.fate === 'timedOut')
  console.log(toRead.map(written).join('\n'))
  return withDraw(folder.name, before, all, outcomes, today(), values.same === true)
}

async function again(folder: Folder, survivorsOnly: boolean): Promise<Record> {
  const before = readRecord(folder.name)
  if (before === undefined) throw new Error(`Nothing is drawn yet: npm run mutants -- ${folder.name} --more=60`)
  const known = new Set(before.survivors.map(({ key }) => key))
  const which = ({ key }: Found) => (survivorsOnly ? known.has(key) : key <= before.drawnTo)
  const all = await listMutants(folder)
  const outcomes = await runMutants(survivorsOnly ? withSomeTests(folder) : folder, all.filter(which))
  const newOnes = outcomes.filter((outcome) => isSurvivor(outcome) && !known.has(outcome.key))
  if (newOnes.length > 0) console.log(`New survivors:\n${newOnes.map(written).join('\n')}`)
  return withRun(before, all, outcomes, today(), survivorsOnly)
}

/** A folder with the tests that were asked for only: enough for survivors, since one test that notices a mutant is enough. */
function withSomeTests(folder: Folder): Folder {
  const { name, source } = folder
  return values.tests === undefined ? folder : { name, source, tests: values.tests.split(',') }
}

async function runFolder(name: string | undefined): Promise<boolean> {
  const folder = folderOf(name)
  const more = values.whole ? Number.MAX_SAFE_INTEGER : Number(values.more ?? 0)
  if (Number.isNaN(more)) throw new Error(`--more=${values.more}: must be a number of mutants`)
  const record = more > 0 ? await draw(folder, more) : await again(folder, values.survivors === true)
  writeRecord(record)
  writeTable()
  const score = scoreOf(record)
  console.log(`${folder.name}: ${score} % of the mutants run so far are noticed, ${record.survivors.length} survive`)
  const wrong = mistakesOf(folder.name, record)
  for (const mistake of wrong) console.log(mistake)
  return wrong.length === 0
}

/** Runs the first mutants of the smallest folder. One that survives and is not in the record is a failure. */
async function runSmall(): Promise<string[]> {
  const folder = folderOf(SMALL.folder)
  const outcomes = await runMutants(folder, (await listMutants(folder)).slice(0, SMALL.mutants))
  const known = new Set(readRecord(folder.name)?.survivors.map(({ key }) => key))
  return outcomes
    .filter((outcome) => isSurvivor(outcome) && !known.has(outcome.key))
    .map((outcome) => `not in the record: ${written(outcome)}`)
}

async function main(): Promise<boolean> {
  if (values.table) {
    writeTable()
    return true
  }
  if (!values.check) return runFolder(positionals[0])
  const found = [...mistakes(), ...(await runSmall())]
  for (const mistake of found) console.error(mistake)
  if (found.length === 0) console.log(`${folders.length} folders reach their scores, and the page agrees with their records`)
  return found.length === 0
}

process.exit((await main()) ? 0 : 1)
