import { slackTension } from '../../../src/capstan/index.js'
import * as study from '../../../src/study/index.js'
import { one, type RecordCall, several } from './call.js'

const scatter = { load: study.uniform('400 N', '600 N'), friction: study.normal(0.2, 0.02), wrapAngle: '2 turn' } as const
const narrow = { ...scatter, friction: study.uniform(0.1, 0.18) } as const
const correlations = [{ between: ['load', 'friction'], coefficient: 0.3 }]
const sweepOf = { over: { friction: [0.1, 0.2], wrapAngle: { from: '1 turn', to: '3 turn', count: 3 } }, fixed: { load: '500 N' } }
const optimiseOf = {
  vary: { friction: { from: 0.1, to: 0.3 } },
  fixed: { load: '500 N' },
  choices: { wrap: { one: { wrapAngle: '1 turn' }, two: { wrapAngle: '2 turn' } } },
  goals: { minimise: 'result' },
  constraints: { result: { min: '30 N' } },
  evaluations: 160,
}
export const calls: readonly RecordCall[] = [
  several('solveFor', { given: { load: '500 N', friction: 0.2 }, options: { samples: 100 } }, (x) =>
    study.solveFor(slackTension, 'wrapAngle', x.given, '2 N', x.options),
  ),
  one('sweep', sweepOf, (x) => study.sweep(slackTension, x)),
  one(
    'sweep of a sample',
    { over: { friction: { from: 0.1, to: 0.2 } }, fixed: { load: '500 N', wrapAngle: '1 turn' }, design: { sobol: 4 } },
    (x) => study.sweep(slackTension, x),
  ),
  one('sweepJob', sweepOf, (x) => study.sweepJob(slackTension, x)),
  one('runSweep', { blockRows: 3 }, (x) => study.runSweep(study.sweepJob(slackTension, sweepOf as never), x)),
  several('uncertainty', { given: scatter, options: { samples: 200, correlations } }, (x) =>
    study.uncertainty(slackTension, x.given, x.options),
  ),
  several('sensitivity', { given: scatter, options: { swing: 0.1 } }, (x) => study.sensitivity(slackTension, x.given, x.options)),
  several('bounds', { given: narrow, options: { points: 8 } }, (x) => study.bounds(slackTension, x.given, x.options)),
  several('varianceShares', { given: scatter, options: { samples: 32, replicates: 4, correlations } }, (x) =>
    study.varianceShares(slackTension, x.given, x.options),
  ),
  one(
    'surrogate',
    { vary: { friction: { from: 0.1, to: 0.2 } }, fixed: { load: '500 N', wrapAngle: '1 turn' }, runs: 20, confidence: 0.8 },
    (x) => study.surrogate(slackTension, x),
  ),
  several('failureProbability', { given: scatter, options: { above: '80 N', samples: 100, runs: 3, correlations } }, (x) =>
    study.failureProbability(slackTension, x.given, x.options),
  ),
  several('failureChances', { given: scatter, plan: { limits: { result: { above: 60 } }, evaluations: 200, correlations } }, (x) =>
    study.failureChances(slackTension, x.given, x.plan),
  ),
  several('scenarios', { given: scatter, options: { seed: 1, correlations } }, (x) => study.scenarios(slackTension, x.given, x.options)),
  one(
    'fit',
    {
      parameters: { friction: { start: 0.2, low: 0.05, high: 0.5 } },
      fixed: { wrapAngle: '1 turn' },
      data: { load: { unit: 'N', values: [100, 200, 300, 400] } },
      measured: { unit: 'N', values: [30, 55, 88, 115] },
    },
    (x) => study.fit(slackTension, x),
  ),
  one('optimise', optimiseOf, (x) => study.optimise(slackTension, x)),
  one('optimise of several goals', { ...optimiseOf, population: 40, goals: [{ minimise: 'result' }, { maximise: 'result' }] }, (x) =>
    study.optimise(slackTension, x),
  ),
  one(
    'robustOptimum',
    {
      vary: { wrapAngle: { from: '1 turn', to: '2 turn' } },
      fixed: { load: '500 N' },
      goals: { maximise: 'result' },
      constraints: { result: { max: '100 N' } },
      scatter: { friction: study.normal(0.2, 0.02) },
      evaluations: 160,
      chance: 0.5,
      draws: 60,
    },
    (x) => study.robustOptimum(slackTension, x),
  ),
  one('Table.chart', { title: 'wraps' }, (x) => study.sweep(slackTension, sweepOf as never).chart('wrapAngle', 'result', x)),
]
