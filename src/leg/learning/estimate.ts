import { significant } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import type { DrivenJoint } from '../numbers.js'
import { channelSteps } from './channel-steps.js'
import { columnError } from './column-errors.js'
import { examineLog } from './examine-log.js'
import { type Fit, fitTogether, valueIn } from './fit.js'
import type { FootLog } from './foot.js'
import { confounded, estimatesIn, type FieldEstimate } from './found.js'
import { accuracyOf, INSTRUMENTS } from './instruments.js'
import { type LogRemark, ofLog, readLog } from './logs.js'
import { COLUMNS, type MeasurementId } from './measurements.js'
import { modelOf } from './models.js'
import { expectationOf, implausible, unexpected } from './priors.js'
import { explanationsOf } from './slips.js'
import type { SpikeOptions } from './spikes.js'
import { disagreements, fitLog, MIN_READINGS, type Used, withRivals } from './used-log.js'

/** A log by its name. */
export interface NamedLog {
  readonly log: string
  readonly id: MeasurementId
  readonly joint: DrivenJoint
  readonly text: string
}

/** Treatment of implausible logs. */
export interface EstimateOptions extends SpikeOptions {
  /** Logs to use although they are not believed, by name. */
  readonly insist?: readonly string[]
}

/** A log that was not used, with the fields that it would have determined. */
export interface RejectedLog {
  readonly log: string
  readonly paths: readonly string[]
  readonly why: string
  /** Slips that would explain it, the likeliest first. */
  readonly explanations: readonly string[]
}

/** Fields estimated from all logs together. */
export interface Estimated {
  readonly found: readonly FieldEstimate[]
  readonly refused: readonly RejectedLog[]
  readonly remarks: readonly LogRemark[]
  /** Readings of logs that correct no field. */
  readonly compared: readonly FootLog[]
  readonly fits: readonly Fit[]
}

/** Estimates fields from logs: each log is examined and fitted alone, then those that share a field or an unknown are fitted together. @internal */
export function estimate(leg: LegModel, logs: readonly NamedLog[], options: EstimateOptions): Estimated {
  const sorted: SortedLogs = { remarks: [], refused: [], compared: [], used: [], seen: new Map() }
  for (const log of logs) sortOne(leg, log, options, sorted)
  const { remarks, refused, compared, used } = sorted
  const found: FieldEstimate[] = []
  const fits: Fit[] = []
  for (const group of connected(used)) {
    const parts = group.map(({ part }) => part)
    const fit = group.length === 1 ? group[0]!.fit : fitTogether(parts)
    fits.push(fit)
    const own = estimatesIn(fit, parts)
    found.push(...own.map((log) => withRivals(log, group, remarks)))
    disagreements(own, group, remarks)
    const paths = own.map(({ path }) => path)
    const names = parts.map(({ model }) => model.log).join(', ')
    for (const { one, other, correlation } of confounded(fit, paths)) {
      const words = `${one} and ${other} can hardly be separated by these readings (correlation ${significant(correlation, 2)})`
      remarks.push(ofLog(names, 'confounded', `${words}: a change of one looks like a change of the other`))
    }
  }
  return { found, refused, remarks, compared, fits }
}

/** Logs by what is done with them, while they are examined one by one. */
interface SortedLogs {
  readonly remarks: LogRemark[]
  readonly refused: RejectedLog[]
  readonly compared: FootLog[]
  readonly used: Used[]
  /** Names of the logs by their readings. */
  readonly seen: Map<string, string>
}

/** Examines one log and fits it alone. */
function sortOne(leg: LegModel, { log, id, joint, text }: NamedLog, options: EstimateOptions, sorted: SortedLogs): void {
  const { remarks, refused, compared, used, seen } = sorted
  const read = readLog(log, text, COLUMNS[id])
  remarks.push(...read.remarks)
  if (read.rows.length < MIN_READINGS) {
    remarks.push(few(log, read.rows.length))
    return
  }
  const accuracy = accuracyOf(log, INSTRUMENTS[id], read, remarks)
  const modelFor = (at: DrivenJoint) => modelOf(leg, log, id, at, accuracy)
  const model = modelFor(joint)
  const insisted = options.insist?.includes(log) === true
  const { rows, lines, kept, refusal } = examineLog(leg, log, id, joint, read, remarks)
  const same = seen.get(JSON.stringify(rows))
  const doubt = same === undefined ? refusal : ({ what: 'wrong file', message: `its readings are those of the log ${same}` } as const)
  seen.set(JSON.stringify(rows), log)
  const suspect = { leg, id, joint, rows, kept, units: read.units, modelFor }
  const refuse = (why: string, what: LogRemark['what'], explanations: readonly string[]) => {
    refused.push({ log, paths: model?.learns ?? [], why, explanations })
    const slip = explanations.length === 0 ? '' : ` Explained if ${explanations.join(', or if ')}.`
    remarks.push(ofLog(log, what, `${why}.${slip} The log is not used; to use it all the same, name it in the option insist`))
  }
  if (doubt !== undefined && !insisted) {
    refuse(doubt.message, doubt.what, doubt.what === 'implausible' && model !== undefined ? explanationsOf(suspect) : [])
    return
  }
  const count = kept.filter(Boolean).length
  if (count < MIN_READINGS) {
    remarks.push(few(log, count))
    return
  }
  if (model === undefined) {
    const [whole, at] = [rows.filter((_, i) => kept[i]), lines.filter((_, i) => kept[i])]
    compared.push({ log, rows: whole, lines: at, gain: Math.hypot(...Object.values(accuracy)) })
    return
  }
  const steps = channelSteps(id, model, rows, read.steps)
  const displayed = { ...model, steps, ...(model.rival !== undefined && { rival: { ...model.rival, steps } }) }
  const one = fitLog(log, displayed, rows, lines, kept, remarks, options)
  if (one === undefined) return
  const off = columnError(one.part, one.fit, COLUMNS[id], read.units)
  const absurd = model.learns.flatMap((path) => {
    const why = implausible(expectationOf(leg, path), valueIn(one.fit, path))
    return why === undefined || undecided(one, path) ? [] : [`${path}: ${why}`]
  })
  if (absurd.length > 0 && !insisted) refuse(absurd.join('; '), 'implausible', explanationsOf(suspect))
  else {
    used.push(off === undefined ? one : { ...one, rivals: [...one.rivals, { by: 'column', part: off.part, fit: off.fit, worse: 0 }] })
    if (off !== undefined) remarks.push(ofLog(log, 'misfit', off.words))
    remarks.push(...unexpectedIn(leg, log, one, () => explanationsOf(suspect)))
  }
}

const few = (log: string, count: number): LogRemark =>
  ofLog(log, 'few readings', `${count} whole rows; at least ${MIN_READINGS} are needed to estimate a field`)

/** Fields whose results are outside the expected band, but near enough to be used: each is named, with the slips that would explain it. */
function unexpectedIn(leg: LegModel, log: string, { fit, part }: Used, explanations: () => readonly string[]): LogRemark[] {
  const beside = estimatesIn(fit, [part]).flatMap(({ path, value, interval }) => {
    const why = interval === undefined ? undefined : unexpected(expectationOf(leg, path), value, interval)
    return why === undefined ? [] : [`${path}: ${why}`]
  })
  if (beside.length === 0) return []
  const slips = explanations()
  const explained = slips.length === 0 ? '' : ` Explained, too, if ${slips.join(', or if ')}.`
  return [ofLog(log, 'unexpected', `${beside.join('; ')}. It is used.${explained}`)]
}

/** Whether a log leaves a field undetermined, so that its value says nothing. */
const undecided = ({ fit, part }: Used, path: string): boolean => {
  const estimate = estimatesIn(fit, [part]).find((found) => found.path === path)
  return estimate?.interval === undefined && !fit.solution.atLimit.includes(fit.parameters.findIndex(({ id }) => id === path))
}

/** Logs in groups that share a parameter. */
function connected(used: readonly Used[]): Used[][] {
  const groups: { ids: Set<string>; members: Used[] }[] = []
  for (const one of used) {
    const ids = new Set(one.fit.parameters.map(({ id }) => id))
    const touching = groups.filter((group) => [...ids].some((id) => group.ids.has(id)))
    const rest = groups.filter((group) => !touching.includes(group))
    const merged = {
      ids: new Set([...ids, ...touching.flatMap((group) => [...group.ids])]),
      members: [...touching.flatMap(({ members }) => members), one],
    }
    groups.splice(0, groups.length, ...rest, merged)
  }
  return groups.map(({ members }) => members)
}
