// The sweep that bench/study.bench.ts measures. Run as a program it prints the nanoseconds of one warm run on so many threads.
import { pathToFileURL } from 'node:url'
import { centreLineRadius, logarithmicPretensionLeft, reductionRatio, tautTension } from '../src/capstan/index.js'
import { formula } from '../src/formula/index.js'
import { runSweep, sweepJob } from '../src/study/index.js'

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

const [, self, threads] = process.argv
if (self !== undefined && import.meta.url === pathToFileURL(self).href) {
  const count = Number(threads)
  const run = () => runSweep(job, { blockRows: 2000, ...(count > 1 ? { workers: { count, module: import.meta.url, name: 'job' } } : {}) })
  // The first run warms code and threads.
  await run()
  const start = performance.now()
  await run()
  console.log(1e6 * (performance.now() - start))
}
