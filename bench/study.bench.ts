import { availableParallelism } from 'node:os'
import { buildSync } from 'esbuild'
import { formula } from '../src/formula/index.js'
import { optimise, sweep, uncertainty, uniform } from '../src/study/index.js'
import { buildC, program, type Row } from './harness.js'
import { chain, designs } from './study-job.js'

const JOB = 'bench/build/study-job.js'
buildSync({ entryPoints: ['bench/study-job.ts'], bundle: true, format: 'esm', platform: 'node', outfile: JOB, logLevel: 'error' })
const threads = (count: number) => program(`${count} threads`, { path: process.execPath }, JOB, String(count))
const one = threads(1)
const two = threads(2)

/** The same sweep as a builder would write it by hand: positional, with its own arrays. */
function byHand(): Float64Array[] {
  const n = 1_000_000
  const [friction, groove, age, taut, ratio] = Array.from({ length: 5 }, () => new Float64Array(n)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ]
  const kernel = (mu: number, g: number, t: number, row: number) => {
    const share = 1 / (1 + (35e3 / 140) * 2e-4 * Math.log10(t / 3600))
    taut[row] = share * 140 * Math.exp(mu * 6)
    ratio[row] = (91.4e-3 + 1.6e-3) / 2 / ((g + 1.6e-3) / 2)
  }
  let row = 0
  for (let i = 0; i < 100; i++)
    for (let j = 0; j < 100; j++)
      for (let k = 0; k < 100; k++) {
        const mu = 0.1 + (0.1 * i) / 99
        const g = 12e-3 + (8e-3 * j) / 99
        const t = 7200 + ((31557600 - 7200) * k) / 99
        friction[row] = mu
        groove[row] = g
        age[row] = t
        kernel(mu, g, t, row++)
      }
  return [friction, groove, age, taut, ratio]
}

const rosenbrock = formula('bench.rosenbrock', {
  inputs: { a: 'ratio', b: 'ratio' },
  output: 'ratio',
  source: [{ level: 'unverified', where: 'H. H. Rosenbrock 1960' }],
  si: ({ a, b }) => 100 * (b - a * a) ** 2 + (1 - a) ** 2,
})

export const rows: Row[] = [
  {
    work: 'sweep of 1e6 designs through five chained formulas',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let last: unknown
        for (let i = 0; i < times; i++) last = sweep(chain, designs)
        return last
      },
    },
    against: [
      {
        name: 'by hand in JavaScript',
        run: (times) => {
          let last: unknown
          for (let i = 0; i < times; i++) last = byHand()
          return last
        },
        ratioAtMost: 1.15,
      },
      { ...program('C', buildC('sweep.c')), ratioAtMost: 3 },
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
