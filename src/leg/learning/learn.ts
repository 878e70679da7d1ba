import { fitLeastSquares, studentTQuantile } from '../../numeric/index.js'
import { InputError, type Kind, nearName, Quantity, show, significant } from '../../units/index.js'
import { type AssessOptions, assess } from '../assess.js'
import { JOINTS, type Joint } from '../numbers.js'
import { benchLeg } from '../plans/bench.js'
import { type Comparison, compareAssessments } from '../plans/compare.js'
import { displayed, valueText } from '../plans/show.js'
import { fieldAt, withFields } from '../plans/with-fields.js'
import { heading, markdownPage, type Page, points, table, text } from '../report/blocks.js'
import { verdictText } from '../report/content.js'
import type { Leg } from '../specification/describe.js'
import { type LogRemark, type ReadLog, readLog } from './logs.js'
import { COLUMNS, type Estimate, estimateOf, MEASUREMENTS, type MeasurementId } from './measurements.js'

/** Logs by measurement and joint: `{ 'pretension knee': csv, 'cordFriction hip': csv }`. */
export type StandLogs = Readonly<Record<string, string>>

/** What `learn` may be told. */
export interface LearnOptions extends AssessOptions {
  /** Readings far outside the scatter of the rest: left out of the fit (default) or kept in it. They are reported either way. */
  readonly spikes?: 'leaveOut' | 'keep'
}

/** A field that the logs corrected. */
export interface MovedField {
  readonly log: string
  readonly path: string
  readonly before: string
  readonly after: string
  /** Interval of 95 % confidence, in the unit of the field; absent where the data do not determine it. */
  readonly interval: readonly [string, string] | undefined
  readonly readings: number
  /** `corrected`; `confirmed` where the old value lies in the interval; `undetermined` where the log cannot tell it and the field stays. */
  readonly state: 'corrected' | 'confirmed' | 'undetermined'
}

/** What was learnt. */
export interface Learnt {
  readonly leg: Leg
  readonly moved: readonly MovedField[]
  readonly remarks: readonly LogRemark[]
  /** Old and new verdict side by side. */
  readonly comparison: Comparison
}

/** Readings farther than this many robust deviations from the rest are spikes. */
const SPIKE = 6
/** The median of absolute deviations of a normal scatter, over its standard deviation. */
const MAD = 0.6744897501960817
const LEAST_READINGS = 3

/**
 * Corrects a leg's fields from logs of the test stand and assesses it again. Each log is CSV with the header that the stand plan lists.
 * Logs are taken in the order of the plan, so that a corrected friction is used for the windup.
 *
 * Gaps, unreadable cells, foreign units and spikes are reported by line. Throws an `InputError` for a log of an unknown name, or a header
 * without the columns it needs.
 */
export function learn(leg: Leg, logs: StandLogs, options: LearnOptions = {}): Learnt {
  const entries = namedLogs(logs)
  let next = leg
  const moved: MovedField[] = []
  const remarks: LogRemark[] = []
  for (const { log, id, joint, text } of entries) {
    const read = readLog(log, text, COLUMNS[id])
    remarks.push(...read.remarks)
    if (read.rows.length < LEAST_READINGS) {
      remarks.push({
        log,
        line: undefined,
        what: 'few readings',
        message: `${read.rows.length} whole rows; at least ${LEAST_READINGS} are needed, nothing is learnt from it`,
      })
      continue
    }
    const estimate = estimateOf(benchLeg(next), id, joint)
    if (estimate.kind === 'comparison') continue
    const found =
      estimate.kind === 'scatter' ? scattered(log, read, estimate, remarks, options) : fitted(log, read, estimate, remarks, options)
    for (const one of found) {
      const before = fieldAt(next, one.path)
      const old = before instanceof Quantity ? before.si : (before as { typical?: number } | undefined)?.typical
      const isBand = !(before instanceof Quantity)
      const kind: Kind = before instanceof Quantity ? (before.kind as Kind) : 'ratio'
      const written = (x: number) => (isBand ? significant(x, 4) : String(new Quantity(x, kind)))
      const interval = one.interval?.map(written) as [string, string] | undefined
      if (one.interval === undefined) {
        moved.push({
          log,
          path: one.path,
          before: valueText(before),
          after: valueText(before),
          interval,
          readings: one.readings,
          state: 'undetermined',
        })
        continue
      }
      const changed = withFields(next, { [one.path]: isBand ? bandOf(one) : new Quantity(one.value, kind) })
      moved.push({
        log,
        path: one.path,
        before: valueText(before),
        after: valueText(fieldAt(changed, one.path)),
        interval,
        readings: one.readings,
        state: old !== undefined && old >= one.interval[0] && old <= one.interval[1] ? 'confirmed' : 'corrected',
      })
      next = changed
    }
  }
  const comparison = compareAssessments(
    assess(leg, options),
    assess(next, options),
    moved.map(({ path, before, after }) => ({ path, before, after })),
  )
  return displayed({ leg: next, moved, remarks, comparison }, learntPage)
}

interface Found {
  readonly path: string
  readonly value: number
  /** Where the value lies with 95 % confidence; absent where the data do not tell it. */
  readonly interval: readonly [number, number] | undefined
  /** Where single readings lie: what a band of the specification means. */
  readonly spread: readonly [number, number]
  readonly readings: number
}

const bandOf = ({ value, spread }: Found): [number, number, number] => [Math.min(spread[0], value), value, Math.max(spread[1], value)]

function namedLogs(logs: StandLogs) {
  const names = MEASUREMENTS.flatMap((id) => (id === 'heating' || id === 'footDeflection' ? [id] : JOINTS.map((joint) => `${id} ${joint}`)))
  const given = Object.entries(typeof logs === 'object' && logs !== null ? logs : {})
  const issues = given.flatMap(([name, text]) => {
    const near = nearName(name, names)
    if (!names.includes(name))
      return [
        {
          path: name,
          given: show(name),
          accepts: `must be one of ${names.join(', ')}${near === undefined ? '' : `; did you mean ${near}?`}`,
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

/** Rows whose residual is far outside the scatter of the rest, by index. */
function spikesOf(residuals: readonly number[]): number[] {
  const median = (list: readonly number[]) => {
    const sorted = [...list].sort((a, b) => a - b)
    const half = sorted.length >> 1
    return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2
  }
  const middle = median(residuals)
  const deviation = median(residuals.map((r) => Math.abs(r - middle))) / MAD
  // Readings that agree to rounding have no scatter to judge by.
  const floor = 1e-9 * Math.max(...residuals.map(Math.abs))
  return residuals.flatMap((r, i) => (Math.abs(r - middle) > SPIKE * Math.max(deviation, floor) ? [i] : []))
}

/** The rows without spikes, every spike reported. */
function withoutSpikes(log: string, read: ReadLog, residuals: readonly number[], remarks: LogRemark[], options: LearnOptions) {
  const spikes = read.rows.length < 5 ? [] : spikesOf(residuals)
  const keep = options.spikes === 'keep'
  for (const i of spikes)
    remarks.push({
      log,
      line: read.lines[i],
      what: 'spike',
      message: `far outside the scatter of the other readings; ${keep ? 'kept' : 'left out'}`,
    })
  return keep ? read.rows : read.rows.filter((_, i) => !spikes.includes(i))
}

function scattered(
  log: string,
  read: ReadLog,
  { path, value, high }: Extract<Estimate, { kind: 'scatter' }>,
  remarks: LogRemark[],
  options: LearnOptions,
): Found[] {
  const rows = withoutSpikes(log, read, read.rows.map(value), remarks, options)
  const values = rows.map(value)
  const usable = values.filter((x) => x > 0 && x <= high)
  if (usable.length < values.length)
    remarks.push({
      log,
      line: undefined,
      what: 'unreadable',
      message: `${values.length - usable.length} readings give a value outside 0 to ${high} for ${path} and are left out`,
    })
  const n = usable.length
  if (n < LEAST_READINGS) return []
  const mean = usable.reduce((sum, x) => sum + x, 0) / n
  const deviation = Math.sqrt(usable.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (n - 1))
  const t = studentTQuantile(0.975, n - 1)
  const reach = (t * deviation) / Math.sqrt(n)
  // A single later reading lies within this of the mean, 95 times of 100.
  const single = t * deviation * Math.sqrt(1 + 1 / n)
  return [
    {
      path,
      value: mean,
      interval: [mean - reach, mean + reach],
      spread: [Math.max(mean - single, mean / 10), Math.min(mean + single, high)],
      readings: n,
    },
  ]
}

function fitted(
  log: string,
  read: ReadLog,
  { parameters, predict, measured }: Extract<Estimate, { kind: 'curve' }>,
  remarks: LogRemark[],
  options: LearnOptions,
): Found[] {
  const solve = (keep: readonly boolean[]) => {
    const count = keep.filter(Boolean).length
    return fitLeastSquares({
      count,
      start: parameters.map(({ start }) => start),
      lower: parameters.map(({ low }) => low),
      upper: parameters.map(({ high }) => high),
      residuals: (p, out) => {
        let k = 0
        // A path through all rows: what a reading did to the cord stays done, whether it is believed or not.
        predict(p, read.rows).forEach((y, i) => {
          if (keep[i]) out[k++] = y - measured(read.rows[i]!)
        })
      },
    })
  }
  const all = read.rows.map(() => true)
  const first = solve(all)
  const kept = withoutSpikes(log, read, Array.from(first.residuals), remarks, options)
  const keep = read.rows.map((row) => kept.includes(row))
  if (kept.length < Math.max(LEAST_READINGS, parameters.length + 1)) {
    remarks.push({ log, line: undefined, what: 'few readings', message: `${kept.length} readings are left; nothing is learnt from it` })
    return []
  }
  const found = kept.length === read.rows.length ? first : solve(keep)
  const t = studentTQuantile(0.975, Math.max(1, found.degreesOfFreedom))
  return parameters.flatMap(({ path }, i): Found[] => {
    if (path === undefined) return []
    const value = found.parameters[i]!
    const error = found.standardErrors[i]!
    const told = Number.isFinite(error) && !found.atLimit.includes(i)
    const interval = [value - t * error, value + t * error] as const
    return [
      {
        path,
        value,
        interval: told ? interval : undefined,
        spread: told ? [Math.max(interval[0], value / 10), Math.min(interval[1], 1)] : [value, value],
        readings: kept.length,
      },
    ]
  })
}

/** What was learnt as Markdown: fields with their confidence, what was wrong with the logs, both verdicts. */
export const learntText = (learnt: Learnt): string => markdownPage(learntPage(learnt))

/** What was learnt as a page. @internal */
export function learntPage({ leg, moved, remarks, comparison }: Learnt): Page {
  return {
    title: `${leg.name}: what the test stand taught`,
    blocks: [
      moved.length === 0
        ? text('No field could be corrected.')
        : table(
            'Fields that the logs tell about',
            ['log', 'field', 'before', 'after', '95 % confidence', 'readings', ''],
            moved.map((one) => [
              one.log,
              one.path,
              one.before,
              one.after,
              one.interval?.join(' to ') ?? 'cannot be told',
              one.readings,
              one.state,
            ]),
          ),
      points([`Before: ${verdictText(comparison.before)}`, `After: ${verdictText(comparison.after)}`]),
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
