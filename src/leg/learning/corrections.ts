import { InputError, type Kind, oneOfNames, Quantity, show, significant } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type DrivenJoint, drivenJoints } from '../numbers.js'
import { benchLeg } from '../plans/bench.js'
import { valueText } from '../plans/show.js'
import { fieldAt, withFields } from '../plans/with-fields.js'
import { isBand } from '../ranges.js'
import { type CouponOf, couponsOf } from './coupon-logs.js'
import { couponLog } from './coupons.js'
import { type EstimateOptions, estimate, type NamedLog } from './estimate.js'
import { type ComparedLog, compareFoot } from './foot.js'
import type { FieldEstimate } from './found.js'
import type { LogRemark } from './logs.js'
import { isWhole, measuredJoints } from './measured-joints.js'
import { MEASUREMENTS, type MeasurementId } from './measurements.js'
import { roundedBand, roundedQuantity, roundedScatter } from './rounded.js'
import { kindOf, shown } from './shown.js'

/** Logs by measurement and joint: `{ 'pretension knee': csv, 'cordFriction hip': csv }`. */
export type StandLogs = Readonly<Record<string, string>>

/** A field that the logs corrected. */
export interface MovedField {
  /** Name of the log, as in `StandLogs`. */
  readonly log: string
  /** Path of the field in the document. */
  readonly path: string
  /** The value in the document, as text. */
  readonly before: string
  /** The corrected value, as text. */
  readonly after: string
  /** Interval of 95 % confidence, in the unit of the field; absent where the data do not determine it. */
  readonly interval: readonly [string, string] | undefined
  /** Number of readings that count. */
  readonly readings: number
  /**
   * `corrected`; `confirmed` where the old value lies in the interval; `undetermined` where the logs leave the field as it is; `notApplied` where they
   * are not believed.
   */
  readonly state: 'corrected' | 'confirmed' | 'undetermined' | 'notApplied'
  /** Why it is undetermined or not applied, or why its band is wider than its interval. */
  readonly why: string | undefined
  /** Slips that would explain a log that is not believed, the likeliest first. */
  readonly explanations: readonly string[]
  /** What the interval is wide by: what is not known exactly, with its share of the square of the interval. */
  readonly restsOn: readonly {
    /** What is not known exactly. */
    readonly what: string
    /** Its share of the square of the interval, 0 to 1. */
    readonly share: number
  }[]
}

/** Estimates from the logs of a leg, before it is assessed. */
export interface Corrections {
  readonly leg: Leg
  readonly moved: readonly MovedField[]
  readonly compared: readonly ComparedLog[]
  readonly remarks: readonly LogRemark[]
  readonly found: readonly FieldEstimate[]
  /** Names of the logs that were given. */
  readonly logs: readonly string[]
}

/** Corrects a leg's fields from logs. @internal */
export function corrections(leg: Leg, logs: StandLogs, options: EstimateOptions = {}): Corrections {
  const bench = benchLeg(leg)
  const { entries, coupons } = namedLogs(bench, logs)
  knownLogs(
    options.insist ?? [],
    entries.map(({ log }) => log),
  )
  const ofCoupons: LogRemark[] = []
  const broken = coupons.flatMap(({ text, ...coupon }) => couponLog(bench.x, coupon, text, ofCoupons, options) ?? [])
  const { found, refused, remarks, compared } = estimate(bench, entries, options)
  let next = leg
  const moved: MovedField[] = []
  for (const correction of found) {
    const { field, corrected } = correct(next, correction, bench.x)
    moved.push(field)
    next = corrected
  }
  for (const { log, paths, why, explanations } of refused)
    for (const path of paths) {
      const before = valueText(fieldAt(leg, path))
      moved.push({
        log,
        path,
        before,
        after: before,
        interval: undefined,
        readings: 0,
        state: 'notApplied',
        why,
        explanations,
        restsOn: [],
      })
    }
  return {
    leg: next,
    moved,
    compared: [...compared.flatMap((read) => compareFoot(next, read, ofCoupons, options) ?? []), ...broken],
    remarks: [...remarks, ...ofCoupons],
    found,
    logs: [...entries, ...coupons].map(({ log }) => log),
  }
}

/** Puts what was found into the leg. */
function correct(leg: Leg, found: FieldEstimate, x: LegNumbers): { field: MovedField; corrected: Leg } {
  const { path, logs, interval, readings, value, why, shares } = found
  const before = fieldAt(leg, path)
  const kind = before instanceof Quantity ? (before.kind as Kind) : path.endsWith('.spring.rate') ? kindOf(x, path) : undefined
  const old = isBand(before) ? before.typical : before instanceof Quantity ? before.si : undefined
  const restsOn = shares.filter(({ share }) => share > MIN_SHARE_TOLD).map(({ of, share }) => ({ what: of.what, share }))
  const head = { log: logs.join(', '), path, before: valueText(before), readings, why, explanations: [], restsOn }
  if (interval === undefined) return { field: { ...head, after: head.before, interval, state: 'undetermined' }, corrected: leg }
  const change = kind === undefined ? roundedBand(found) : roundedQuantity(value, interval, kind)
  // Torque and back-EMF are one constant: a measured torque is as good as a spun motor.
  const basis = path.endsWith('.speedConstant') ? { [`${path}Basis`]: 'spunPeakLineToLine' } : {}
  // A spring that was measured scatters no more than its measurement.
  const scatter = path.endsWith('.spring.rate')
    ? roundedScatter(Math.max((interval[1] - interval[0]) / (2 * value), MIN_SCATTER))
    : undefined
  const corrected = withFields(leg, { [path]: change, ...basis, ...(scatter !== undefined && { [`${path}Scatter`]: scatter }) })
  return {
    field: {
      ...head,
      why: scatter === undefined ? why : `its scatter (${path}Scatter) becomes ${significant(scatter, 2)}, half of the interval`,
      after: valueText(fieldAt(corrected, path)),
      interval: [shown(x, path, interval[0]), shown(x, path, interval[1])],
      state: old !== undefined && old >= interval[0] && old <= interval[1] ? 'confirmed' : 'corrected',
    },
    corrected,
  }
}

/** A spring warms, sets and rusts by this share, however well it was measured (assumption). */
const MIN_SCATTER = 0.01
/** Shares of an interval that are worth telling. */
const MIN_SHARE_TOLD = 0.1

/** Throws for a name to insist on that is none of the logs: it would silently have no effect. */
function knownLogs(insist: readonly string[], logs: readonly string[]): void {
  const unknown = insist.filter((name) => !logs.includes(name))
  if (unknown.length > 0)
    throw new InputError(
      'learn',
      unknown.map((name) => ({ path: 'insist', given: show(name), accepts: oneOfNames(logs, name) })),
    )
}

/** Logs of the stand and of coupons, by name. */
function namedLogs(
  { x }: LegModel,
  logs: StandLogs,
): { readonly entries: NamedLog[]; readonly coupons: readonly (CouponOf & { readonly text: string })[] } {
  const kit = couponsOf(x)
  const measured = MEASUREMENTS.flatMap((id) => {
    if (id === 'footDeflection') return [id]
    // Motors may differ, and mostly do not: a log without a joint is of the motor of the hip.
    if (isWhole(id)) return [id, ...drivenJoints(x).map((joint) => `${id} ${joint}`)]
    return measuredJoints(x, id).map((joint) => `${id} ${joint}`)
  })
  const names = [...measured, ...kit.map(({ log }) => log)]
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
  const entries = given
    .filter(([log]) => measured.includes(log))
    .sort(([a], [b]) => names.indexOf(a) - names.indexOf(b))
    .map(([log, text]) => {
      const [id, joint = 'hip'] = log.split(' ') as [MeasurementId, DrivenJoint?]
      return { log, id, joint, text }
    })
  const coupons = given.flatMap(([name, text]) => kit.filter(({ log }) => log === name).map((coupon) => ({ ...coupon, text })))
  return { entries, coupons }
}
