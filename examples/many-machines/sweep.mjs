// A sweep of a leg in parts, for many processes or machines. Every part computes its own rows, in an order that the plan alone decides, so that the parts give
// the table of a single run to the last bit.
//
//   node sweep.mjs part 3 8 parts/3.txt     computes part 3 of 8; run again after a kill, it goes on where it stopped
//   node sweep.mjs merge table.csv parts/*.txt
//
// Every value of the leg is invented.
import { readFileSync, writeFileSync } from 'node:fs'
import { describeLeg, legFormula } from 'limbwright/leg'
import { mergeSweep, runSweep, sweepJob } from 'limbwright/study'

const leg = describeLeg(readFileSync(process.env.LEG ?? new URL('../mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
const job = sweepJob(legFormula(leg, { cases: ['stand', 'walk', 'drop'] }), {
  design: { sobol: Number(process.env.LEGS ?? 4000), seed: 1 },
  over: {
    'robot.mass': { from: '8 kg', to: '13 kg' },
    'joints.knee.drive.pretension': { from: '150 N', to: '300 N' },
    'links.lower.length': { from: '165 mm', to: '195 mm' },
  },
})

const [verb, ...rest] = process.argv.slice(2)
if (verb === 'part') {
  const [k, n, file] = rest
  const table = await runSweep(job, {
    shard: [Number(k), Number(n)],
    file,
    blockRows: 50,
    onProgress: ({ done, of }) => process.stderr.write(`part ${k} of ${n}: ${done} of ${of} legs\n`),
  })
  console.log(`part ${k} of ${n}: ${table.rows} legs in ${file}`)
} else if (verb === 'merge') {
  const [file, ...parts] = rest
  // Throws where a row is missing or damaged, and names it: a merged table is complete.
  const table = await mergeSweep(job, parts)
  writeFileSync(file, table.toCSV())
  console.log(`${table.rows} legs in ${file}`)
} else {
  console.error('usage: node sweep.mjs part <k> <n> <file>, or node sweep.mjs merge <table.csv> <file> …')
  process.exitCode = 2
}
