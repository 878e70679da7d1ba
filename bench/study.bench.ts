import { availableParallelism } from 'node:os'
import { buildSync } from 'esbuild'
import { formula } from '../src/formula/index.js'
import { optimise, uncertainty, uniform } from '../src/study/index.js'
import { buildC, program, type Row } from './harness.js'
import { chain } from './study-job.js'

const JOB = 'bench/build/study-job.js'
buildSync({ entryPoints: ['bench/study-job.ts'], bundle: true, format: 'esm', platform: 'node', outfile: JOB, logLevel: 'error' })
const job = (name: string, work: string) => program(name, { path: process.execPath }, JOB, work)
const threads = (count: number) => job(`${count} threads`, String(count))
const one = threads(1)
const two = threads(2)

const rosenbrock = formula('bench.rosenbrock', {
  inputs: { a: 'ratio', b: 'ratio' },
  output: 'ratio',
  source: [{ level: 'unverified', where: 'H. H. Rosenbrock 1960' }],
  si: ({ a, b }) => 100 * (b - a * a) ** 2 + (1 - a) ** 2,
})

export const rows: Row[] = [
  {
    work: 'sweep of 1e6 designs through five chained formulas',
    // In processes of their own, as bundles: neither clears away the columns of the other, and the loader of the bench, which names every function, is not there.
    ours: job('limbwright', 'sweep') as Row['ours'],
    against: [
      { ...job('by hand in JavaScript', 'hand'), ratioAtMost: 1.15 },
      { ...program('C', buildC('sweep.c')), ratioAtMost: 2 },
    ],
    rounds: 7,
  },
  {
    work: 'sweep of 160 000 heavy designs on two warm threads',
    ours: two as Row['ours'],
    against:
      availableParallelism() > 1 ? [{ ...one, timesFaster: 1.6 }] : [{ name: 'one thread', missing: 'one core only', timesFaster: 1.6 }],
    rounds: 3,
  },
  {
    work: 'uncertainty of the chain, 10 000 draws of two inputs',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++)
          sum += uncertainty(
            chain,
            { friction: uniform(0.1, 0.2), groove: '13 mm', age: uniform('1 day', '1 year') },
            { output: 'taut', seed: i },
          ).linear.value.si
        return sum
      },
    },
    bound: { atMostSeconds: 0.05 },
  },
  {
    work: 'optimum of a curved valley to 1e-9',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++)
          sum += optimise(rosenbrock, {
            vary: { a: { from: -2, to: 2 }, b: { from: -2, to: 2 } },
            goals: { minimise: 'result' },
            seed: i,
          }).evaluations
        return sum
      },
    },
    bound: { atMostSeconds: 0.1 },
  },
]
