import { InputError, type Kind, oneOfNames, Quantity, show, significant } from '../../units/index.js'
import { type AssessOptions, assess } from '../assess/assess.js'
import type { Leg } from '../document/describe.js'
import { uprightCompliance } from '../foot-result.js'
import { JOINTS, type Joint, legNumbers, prepare } from '../numbers.js'
import { knownOptions } from '../options.js'
import { benchLeg } from '../plans/bench.js'
import { type Comparison, compareAssessments } from '../plans/compare.js'
import { displayed, endless, valueText } from '../plans/show.js'
import { fieldAt, withFields } from '../plans/with-fields.js'
import { heading, type Page, points, table, text } from '../report/blocks.js'
import { verdictText } from '../report/content.js'
import { markdownPage } from '../report/markdown-blocks.js'
import type { Band } from '../schema/field.js'
import { type Found, fitted, LEAST_READINGS, pooled, type SpikeOptions, scattered, slopeOf } from './estimate.js'
import { type LogRemark, type ReadLog, readLog } from './logs.js'
import { COLUMNS, estimatesOf, MEASUREMENTS, type MeasurementId } from './measurements.js'

/** Logs by measurement and joint: `{ 'pretension knee': csv, 'cordFriction hip': csv }`. */
export type StandLogs = Readonly<Record<string, string>>

/** Options of `learn`. */
export interface LearnOptions extends AssessOptions, SpikeOptions {}

/** A field that the logs corrected. */
export interface MovedField {
  readonly log: string
  readonly path: string
  readonly before: string
  readonly after: string
  /** Interval of 95 % confidence, in the unit of the field; absent where the data do not determine it. */
  readonly interval: readonly [string, string] | undefined
  readonly readings: number
  /** `corrected`; `confirmed` where the old value lies in the interval; `undetermined` where the log leaves the field as it is. */
  readonly state: 'corrected' | 'confirmed' | 'undetermined'
}

/** A measurement that corrects no field, beside what the corrected leg predicts. */
export interface ComparedLog {
  readonly log: string
  readonly what: string
  /** Infinite where the model's drives hold no load in the standing pose. */
  readonly predicted: Quantity<Kind>
  /** What the uncertain values of the leg let it be. */
  readonly band: readonly [Quantity<Kind>, Quantity<Kind>]
  /** Measured, with its interval of 95 % confidence; absent where the readings do not determine it. */
  readonly measured: Quantity<Kind> | undefined
  readonly interval: readonly [Quantity<Kind>, Quantity<Kind>] | undefined
  /** `agrees` where interval and band overlap. */
  readonly state: 'agrees' | 'above' | 'below' | 'undetermined'
  /** What to think of it. */
  readonly means: string
}

/** What was learnt. */
export interface Learnt {
  readonly leg: Leg
  readonly moved: readonly MovedField[]
  readonly compared: readonly ComparedLog[]
  readonly remarks: readonly LogRemark[]
  /** Old and new verdict side by side. */
  readonly comparison: Comparison
}

/**
 * Corrects a leg's fields from logs of the test stand and assesses it again. Each log is CSV with the header that the stand plan lists.
 * Logs are taken in the order of the plan, so that a corrected friction is used for the windup.
 *
 * Gaps, unreadable cells, foreign units and spikes are reported by line. Throws an `InputError` for a log of an unknown name, or a header
 * without the columns it needs.
 */
export function learn(leg: Leg, logs: StandLogs, options: LearnOptions = {}): Learnt {
  knownOptions('learn', options, ['cases', 'spikes'])
  const assessed = options.cases === undefined ? {} : { cases: options.cases }
  const entries = namedLogs(logs)
  let next = leg
  const moved: MovedField[] = []
  const remarks: LogRemark[] = []
  const toCompare: { log: string; rows: ReadLog['rows'] }[] = []
  const earlier = new Map<string, Found>()
  for (const { log, id, joint, text } of entries) {
    const read = readLog(log, text, COLUMNS[id])
    remarks.push(...read.remarks)
    if (read.rows.length < LEAST_READINGS) {
      remarks.push({
        log,
        line: undefined,
        what: 'few readings',
        message: `${read.rows.length} whole rows; at least ${LEAST_READINGS} are needed to estimate a field`,
      })
      continue
    }
    for (const estimate of estimatesOf(benchLeg(next), id, joint)) {
      if (estimate.kind === 'comparison') {
        toCompare.push({ log, rows: read.rows })
        continue
      }
      const found =
        estimate.kind === 'scatter' ? scattered(log, read, estimate, remarks, options) : fitted(log, read, estimate, remarks, options)
      for (const one of found) {
        const { field, corrected } = correct(next, log, withEarlier(earlier, one, log, remarks))
        moved.push(field)
        next = corrected
      }
    }
  }
  const comparison = compareAssessments(
    assess(leg, assessed),
    assess(next, assessed),
    moved.map(({ path, before, after }) => ({ path, before, after })),
  )
  const compared = toCompare.map(({ log, rows }) => compareFoot(next, log, rows))
  return displayed({ leg: next, moved, compared, remarks, comparison }, learntPage)
}

/** Estimates farther apart than this many combined standard errors do not belong to one value. */
const APART = 4

/** An estimate pooled with those of earlier logs of the same field. */
function withEarlier(earlier: Map<string, Found>, one: Found, log: string, remarks: LogRemark[]): Found {
  if (one.interval === undefined) return one
  const known = earlier.get(one.path)
  const together = known === undefined ? undefined : pooled(known, one)
  if (together !== undefined && together.apart > APART)
    remarks.push({
      log,
      line: undefined,
      what: 'disagreement',
      message: `${one.path} comes out ${significant(together.apart, 3)} combined standard errors from an earlier log; both are pooled, but one of the two logs measured something else`,
    })
  const taken = together?.one ?? one
  earlier.set(one.path, taken)
  return taken
}

/** Puts what was found into the leg. */
function correct(leg: Leg, log: string, found: Found): { field: MovedField; corrected: Leg } {
  const { path, interval, readings, value } = found
  const before = fieldAt(leg, path)
  const isBand = !(before instanceof Quantity)
  const old = isBand ? (before as Partial<Band> | undefined)?.typical : before.si
  const kind: Kind = isBand ? 'ratio' : (before.kind as Kind)
  const written = (x: number) => (isBand ? significant(x, 4) : String(new Quantity(x, kind)))
  const head = { log, path, before: valueText(before), readings }
  if (interval === undefined) return { field: { ...head, after: head.before, interval, state: 'undetermined' }, corrected: leg }
  const corrected = withFields(leg, { [path]: isBand ? bandOf(found) : new Quantity(value, kind) })
  return {
    field: {
      ...head,
      after: valueText(fieldAt(corrected, path)),
      interval: [written(interval[0]), written(interval[1])],
      state: old !== undefined && old >= interval[0] && old <= interval[1] ? 'confirmed' : 'corrected',
    },
    corrected,
  }
}

/** The foot's compliance, measured against that of the corrected leg. */
function compareFoot(leg: Leg, log: string, rows: ReadLog['rows']): ComparedLog {
  const x = legNumbers(leg)
  const [typical, ...ends] = ([undefined, 'pessimistic', 'optimistic'] as const).map((end) => uprightCompliance(prepare(x, end)))
  const [stiff, soft] = [Math.min(typical!, ...ends), Math.max(typical!, ...ends)]
  const slope = slopeOf(rows.map(([push, give]) => [Math.abs(push!), Math.abs(give!)]))
  const compliance = (y: number) => new Quantity(y, 'linearCompliance')
  const state = slope === undefined ? 'undetermined' : slope.interval[0] > soft ? 'above' : slope.interval[1] < stiff ? 'below' : 'agrees'
  return {
    log,
    what: 'vertical compliance of the foot',
    predicted: compliance(typical!),
    band: [compliance(stiff), compliance(soft)],
    measured: slope && compliance(slope.value),
    interval: slope && [compliance(slope.interval[0]), compliance(slope.interval[1])],
    state,
    means: FOOT_MEANS[state],
  }
}

const FOOT_MEANS = {
  agrees: 'drives and links explain the deflection of the foot',
  above:
    'the foot deflects more than drives and links explain: look for play in pins and bearings, soft bosses, abduction of the hip, the frame',
  below: 'stiffer than the model: was the foot free to move across the push?',
  undetermined: 'the readings do not determine a slope: take more steps of load',
} as const

const bandOf = ({ value, spread }: Found): [number, number, number] => [Math.min(spread[0], value), value, Math.max(spread[1], value)]

function namedLogs(logs: StandLogs) {
  const names = MEASUREMENTS.flatMap((id) => (id === 'heating' || id === 'footDeflection' ? [id] : JOINTS.map((joint) => `${id} ${joint}`)))
  const given = Object.entries(typeof logs === 'object' && logs !== null ? logs : {})
  const issues = given.flatMap(([name, text]) => {
    if (!names.includes(name))
      return [
        {
          path: name,
          given: show(name),
          accepts: oneOfNames(names, name),
        },
      ]
    return typeof text === 'string' ? [] : [{ path: name, given: show(text), accepts: 'must be the text of a CSV file' }]
  })
  if (given.length === 0) issues.push({ path: 'logs', given: show(logs), accepts: `must hold at least one log, named ${names.join(', ')}` })
  if (issues.length > 0) throw new InputError('learn', issues)
  return given
    .sort(([a], [b]) => names.indexOf(a) - names.indexOf(b))
    .map(([log, text]) => {
      const [id, joint = 'hip'] = log.split(' ') as [MeasurementId, Joint?]
      return { log, id, joint, text }
    })
}

/** What was learnt as Markdown: fields with their confidence, what was wrong with the logs, both verdicts. */
export const learntText = (learnt: Learnt): string => markdownPage(learntPage(learnt))

/** What was learnt as a page. @internal */
export function learntPage({ leg, moved, compared, remarks, comparison }: Learnt): Page {
  return {
    title: `${leg.name}: results of the test stand`,
    blocks: [
      moved.length === 0
        ? text('No field could be corrected.')
        : table(
            'Fields estimated from the logs',
            ['log', 'field', 'before', 'after', '95 % confidence', 'readings', ''],
            moved.map((one) => [
              one.log,
              one.path,
              one.before,
              one.after,
              one.interval?.join(' to ') ?? 'undetermined',
              one.readings,
              one.state,
            ]),
          ),
      points([`Before: ${verdictText(comparison.before)}`, `After: ${verdictText(comparison.after)}`]),
      ...(compared.length === 0
        ? []
        : [
            table(
              'Measurements that correct no field',
              ['log', 'what', 'predicted', 'band', 'measured', '95 % confidence', '', 'meaning'],
              compared.map((one) => [
                one.log,
                one.what,
                endless(one.predicted),
                one.band.map(endless).join(' to '),
                one.measured ?? 'undetermined',
                one.interval?.join(' to ') ?? '',
                one.state,
                one.means,
              ]),
            ),
          ]),
      ...(remarks.length === 0
        ? []
        : [
            heading('Remarks on the logs'),
            points(
              remarks.map(({ log, line, what, message }) => `${log}${line === undefined ? '' : `, line ${line}`} (${what}): ${message}`),
            ),
          ]),
    ],
  }
}
