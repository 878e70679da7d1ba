import type { CaseId } from '../cases/events.js'
import type { LegModel } from '../leg-model.js'
import type { DrivenJoint } from '../numbers.js'
import { informationOf, withNumber } from '../plans/information.js'
import { type Fit, fitTogether, type Part } from './fit.js'
import { estimatesIn, type FieldEstimate } from './found.js'
import { INSTRUMENTS } from './instruments.js'
import { isWhole, measuredJoints } from './measured-joints.js'
import { MEASUREMENTS, type MeasurementId } from './measurements.js'
import { modelOf } from './models.js'
import { plannedRows } from './planned.js'
import { expectationOf } from './priors.js'
import { shown } from './shown.js'

/** A measurement that would add something. */
export interface NextMeasurement {
  /** What to do: a log of the stand plan, or something that makes an instrument better known. */
  readonly todo: string
  /** The field that gains most. */
  readonly path: string
  /** Its 95 % interval now: from the logs, or the band of the specification. */
  readonly now: string
  /** Width of its interval after it, over its width now. */
  readonly narrowed: number
  /** What its interval now leaves open of the verdict: the sum of the changes of the reserves near their limit (natural logarithms). */
  readonly information: number
}

/** Narrower by less than this is not worth a measurement. */
const WORTH_MEASURING = 0.9
const MAX_SUGGESTIONS = 6

/** What to measure next: what is not known about the instruments of the logs there are, and the logs that are not there. @internal */
export function nextMeasurements(
  leg: LegModel,
  found: readonly FieldEstimate[],
  done: readonly string[],
  cases?: readonly CaseId[],
): NextMeasurement[] {
  const weights = new Map<string, number>()
  const weighed = ({ ends: [low, high], ...candidate }: Candidate): NextMeasurement => {
    const information =
      weights.get(candidate.path) ??
      informationOf(withNumber(leg.x, candidate.path, low), withNumber(leg.x, candidate.path, high), cases).information
    weights.set(candidate.path, information)
    return { ...candidate, information }
  }
  return [...betterInstruments(leg, found), ...missingLogs(leg, found, done)]
    .filter(({ narrowed }) => narrowed < WORTH_MEASURING)
    .map(weighed)
    .sort((a, b) => b.information * (1 - b.narrowed) - a.information * (1 - a.narrowed))
    .slice(0, MAX_SUGGESTIONS)
}

/** A measurement whose worth is not weighed yet. */
interface Candidate extends Omit<NextMeasurement, 'information'> {
  readonly ends: readonly [number, number]
}

function betterInstruments(leg: LegModel, found: readonly FieldEstimate[]): Candidate[] {
  return found.flatMap(({ path, interval, shares: [first] }): Candidate[] => {
    if (first === undefined || first.of.cure === undefined || first.of.field) return []
    const { low, high } = expectationOf(leg, path)
    const now = interval === undefined ? 'undetermined' : `${shown(leg.x, path, interval[0])} to ${shown(leg.x, path, interval[1])}`
    return [{ todo: `${first.of.what}: ${first.of.cure}`, path, now, narrowed: first.narrowed, ends: interval ?? [low, high] }]
  })
}

function missingLogs(leg: LegModel, found: readonly FieldEstimate[], done: readonly string[]): Candidate[] {
  const names = MEASUREMENTS.filter((id) => id !== 'footDeflection').flatMap(
    (id): { log: string; id: MeasurementId; joint: DrivenJoint }[] =>
      isWhole(id) ? [{ log: id, id, joint: 'hip' }] : measuredJoints(leg.x, id).map((joint) => ({ log: `${id} ${joint}`, id, joint })),
  )
  return names
    .filter(({ log, id }) => !done.includes(log) && !(isWhole(id) && done.some((name) => name.startsWith(`${id} `))))
    .flatMap(({ log, id, joint }): Candidate[] => {
      const accuracy = Object.fromEntries(Object.entries(INSTRUMENTS[id]).map(([name, { within }]) => [name, within / 1.96]))
      const model = modelOf(leg, log, id, joint, accuracy)
      if (model === undefined) return []
      const { rows, scatter } = plannedRows(leg, id, joint, model)
      const part: Part = { model, rows, kept: rows.map(() => true), scatter }
      let fit: Fit
      try {
        // The readings are those that the model predicts: one step is enough for what they would tell.
        fit = fitTogether([part], undefined, 1)
      } catch {
        return []
      }
      const gains = estimatesIn(fit, [part]).map(({ path, interval }) => {
        const before = found.find((estimate) => estimate.path === path && estimate.interval !== undefined)?.interval
        const { low, high } = expectationOf(leg, path)
        const [from, to] = before ?? [low, high]
        // Two independent estimates of one value add their weights.
        const own = interval === undefined ? Number.POSITIVE_INFINITY : interval[1] - interval[0]
        const now = to - from
        return {
          path,
          now: `${shown(leg.x, path, from)} to ${shown(leg.x, path, to)}`,
          narrowed: 1 / Math.hypot(1, now / own),
          ends: [from, to] as const,
        }
      })
      const best = gains.sort((a, b) => a.narrowed - b.narrowed)[0]
      return best === undefined ? [] : [{ todo: `log ${log}`, ...best }]
    })
}
