import { type AssessOptions, assess } from '../assess/assess.js'
import type { Leg } from '../document/describe.js'
import { knownOptions } from '../options.js'
import { benchLeg } from '../plans/bench.js'
import { compareAssessments } from '../plans/compare.js'
import { displayed } from '../plans/show.js'
import { corrections, type StandLogs } from './corrections.js'
import type { EstimateOptions } from './estimate.js'
import { learntPage } from './learn-page.js'
import type { Learnt } from './learnt.js'
import { nextMeasurements } from './next.js'

/** Options of `learn`. `insist` names logs to use although they are not believed. */
export interface LearnOptions extends AssessOptions, EstimateOptions {}

/**
 * Corrects a leg's fields from logs of the test stand and assesses it again. Each log is CSV with the header that the stand plan lists. All logs
 * of a leg are taken together: a friction that was measured counts in the windup, and errors of the instruments widen the intervals.
 *
 * A log is not used where its columns contradict each other, its comments name another log, or a field comes out far outside what was expected: the
 * answer says how far, and which slips would explain it. `insist` uses it all the same. Gaps, unreadable cells, foreign units, copies and spikes are
 * reported by line.
 *
 * Throws an `InputError` for a log of an unknown name, or a header without the columns it needs.
 */
export function learn(leg: Leg, logs: StandLogs, options: LearnOptions = {}): Learnt {
  knownOptions('learn', options, ['cases', 'spikes', 'insist'])
  const assessed = options.cases === undefined ? {} : { cases: options.cases }
  const { leg: next, moved, compared, remarks, found, logs: given } = corrections(leg, logs, options)
  const comparison = compareAssessments(
    assess(leg, assessed),
    assess(next, assessed),
    moved.filter(({ before, after }) => before !== after).map(({ path, before, after }) => ({ path, before, after })),
  )
  const plan = nextMeasurements(benchLeg(leg), found, given, options.cases)
  return displayed({ leg: next, moved, compared, remarks, next: plan, comparison }, learntPage)
}
