// The sweeps that bench/study.bench.ts measures. Run as a program it prints the nanoseconds of one run: `sweep`, `hand`, or a number of threads.
import { pathToFileURL } from 'node:url'
import { centreLineRadius, logarithmicPretensionLeft, reductionRatio, tautTension } from '../src/capstan/index.js'
import { formula } from '../src/formula/index.js'
import { runSweep, sweep, sweepJob } from '../src/study/index.js'

/** Five formulas in a chain, with an exponential and a logarithm in them. */
export const chain = formula('bench.steps', {
  inputs: { friction: { kind: 'ratio', min: 0 }, groove: { kind: 'length', above: 0 }, age: { kind: 'time', above: 0 } },
  output: { taut: 'force', ratio: 'ratio' },
  source: [{ level: 'computed', where: 'five formulas of capstan' }],
  si: ({ friction, groove, age }) => {
    const left = logarithmicPretensionLeft.si({ pretension: 140, axialRigidity: 35e3, perDecade: 2e-4, from: 3600, to: age })
    const taut = tautTension.si({ slackTension: left.tension, friction, wrapAngle: 6 })
    const pinionRadius = centreLineRadius.si({ grooveDiameter: groove, cordDiameter: 1.6e-3 })
    const drumRadius = centreLineRadius.si({ grooveDiameter: 91.4e-3, cordDiameter: 1.6e-3 })
    return { taut, ratio: reductionRatio.si({ drumRadius, pinionRadius }) }
  },
})

export const designs = {
  over: {
    friction: { from: 0.1, to: 0.2, count: 100 },
    groove: { from: '12 mm', to: '20 mm', count: 100 },
    age: { from: '2 h', to: '1 year', count: 100 },
  },
} as const

/** The same kernel made to cost what a leg's assessment does. */
const heavy = formula('bench.heavy', {
  inputs: { friction: { kind: 'ratio', min: 0 }, age: { kind: 'time', above: 0 } },
  output: 'force',
  source: [{ level: 'computed', where: 'five formulas of capstan, repeated' }],
  si: ({ friction, age }) => {
    let sum = 0
    for (let i = 0; i < 2000; i++) sum += chain.si({ friction, groove: 12e-3 + 1e-6 * i, age }).taut
    return sum / 2000
  },
})
export const job = sweepJob(heavy, {
  over: { friction: { from: 0.1, to: 0.2, count: 400 }, age: { from: '2 h', to: '1 year', count: 400 } },
})

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

/** Nanoseconds of processor time of one run, what it leaves to the garbage collector included. */
function timed(run: () => unknown): number {
  let last: unknown
  const batch = () => {
    const before = process.cpuUsage()
    for (let i = 0; i < 20; i++) last = run()
    const { user, system } = process.cpuUsage(before)
    return (1e3 * (user + system)) / 20
  }
  // The first batch warms the code.
  batch()
  const least = Math.min(batch(), batch(), batch())
  if (last === undefined) throw new Error('no result')
  return least
}

const [, self, work] = process.argv
if (self !== undefined && import.meta.url === pathToFileURL(self).href) {
  if (work === 'sweep') console.log(timed(() => sweep(chain, designs)))
  else if (work === 'hand') console.log(timed(byHand))
  else {
    const count = Number(work)
    const run = () => runSweep(job, { blockRows: 2000, ...(count > 1 ? { workers: { count, module: import.meta.url, name: 'job' } } : {}) })
    // The first run warms code and threads.
    await run()
    const start = performance.now()
    await run()
    console.log(1e6 * (performance.now() - start))
  }
}
