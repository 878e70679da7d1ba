// `npm run fuzz`: formulas, solver objects, study tools, leg documents and logs, from one seed. Fails on the first sort of fault of each.
// Options: --seed=7 --formulas=400 --objects=400 --documents=40 --logs=80 (calls each); --formulas=2800 and the like make a night's run.
import { parseArgs } from 'node:util'
import { catalogue } from '../../src/catalogue/index.js'
import { fuzzDocuments, fuzzLogs } from './documents.js'
import { fuzzFormula } from './formulas.js'
import { type Fault, tally } from './judge.js'
import { fuzzObjects } from './objects.js'

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    formulas: { type: 'string', default: '400' },
    objects: { type: 'string', default: '400' },
    documents: { type: 'string', default: '40' },
    logs: { type: 'string', default: '80' },
  },
})

function whole(name: keyof typeof values): number {
  const number = Number(values[name])
  if (Number.isSafeInteger(number) && number >= 0) return number
  console.error(`--${name} is '${values[name]}'; must be a whole number from 0`)
  process.exit(2)
}

const seed = whole('seed')
const parts: readonly (readonly [name: string, run: () => Fault[]])[] = [
  ['formulas', () => [...catalogue.values()].flatMap((formula) => fuzzFormula(formula, whole('formulas'), seed))],
  ['objects and studies', () => fuzzObjects(whole('objects'), seed)],
  ['leg documents', () => fuzzDocuments(whole('documents'), seed)],
  ['logs', () => fuzzLogs(whole('logs'), seed)],
]

const faults: Fault[] = []
for (const [name, run] of parts) {
  const before = { ...tally }
  const start = process.cpuUsage().user
  const found = run()
  faults.push(...found)
  const seconds = ((process.cpuUsage().user - start) / 1e6).toFixed(0)
  console.log(
    `${name}: ${tally.answers - before.answers} answers, ${tally.inputErrors - before.inputErrors} input errors, ` +
      `${tally.noResults - before.noResults} without a result, ${found.length} faults; ${seconds} s`,
  )
}
for (const { where, what, given } of faults) console.log(`\n${where}: ${what}\n  ${given}`)
console.log(`\nseed ${seed}: ${faults.length} faults`)
process.exit(faults.length === 0 ? 0 : 1)
