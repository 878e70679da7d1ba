import { significant } from '../../units/index.js'
import { alikeness, type Fit, fitAlone, type Part } from './fit.js'
import { estimatesIn, type FieldEstimate } from './found.js'
import { type LogRemark, ofLog } from './logs.js'
import type { LogModel } from './model.js'
import { type SpikeOptions, withoutSpikes } from './spikes.js'

/** Fewest whole rows for an estimate. */
export const MIN_READINGS = 3

/** A log that is used, fitted alone. */
export interface Used {
  readonly part: Part
  readonly fit: Fit
  readonly rivals: readonly Rival[]
}

/** Another way to read the same log: another law of its decay, the later half alone, or a column that is off. */
export interface Rival {
  readonly by: 'law' | 'laterHalf' | 'column'
  readonly part: Part
  readonly fit: Fit
  /** How much worse it fits, in squares of the scatter. */
  readonly worse: number
}

/** A display that shows one number most of the time may hide a scatter of this share of its step. */
const HIDDEN_SHARE = 0.7

/** Fits a log alone, under both laws where it has two. */
export function fitLog(
  log: string,
  model: LogModel,
  rows: Part['rows'],
  lines: readonly number[],
  kept: readonly boolean[],
  remarks: LogRemark[],
  options: SpikeOptions,
): Used | undefined {
  const first = fitAlone(model, rows, kept)
  const channels = Array.from({ length: model.channels }, (_, c) => ({
    deviations: rows.map((_, i) => first.fit.differences[0]![i * model.channels + c] as number),
    closest: Math.max(first.closest[c]!, HIDDEN_SHARE * (model.steps?.[c] ?? 0), (model.usual?.[c] ?? 0) / 2),
    freedom: (first.part.freedom as number) / model.channels,
  }))
  const stay = withoutSpikes(log, lines, kept, channels, remarks, options)
  const count = stay.filter(Boolean).length
  if (count < Math.max(MIN_READINGS, model.learns.length + 1)) {
    remarks.push(ofLog(log, 'few readings', `${count} readings are left, too few to estimate a field`))
    return undefined
  }
  const own = stay === kept ? first : fitAlone(model, rows, stay)
  const other = model.rival === undefined ? undefined : fitAlone(model.rival, rows, stay)
  const swap = other !== undefined && squares(other) < squares(own)
  const [best, rival] = swap ? [other, own] : [own, other]
  misfit(log, best, remarks)
  if (rival === undefined) return { ...best, rivals: [] }
  // How much worse the other law fits, in units of the scatter.
  const worse = (squares(rival) - squares(best)) / best.part.scatter[0]! ** 2
  const late = lateOnly(stay)
  return {
    ...best,
    rivals: [
      { ...rival, worse, by: 'law' },
      ...(late === undefined ? [] : [{ ...fitAlone(best.part.model, rows, late), worse: 0, by: 'laterHalf' as const }]),
    ],
  }
}

/** Fewest later readings that show a decay of their own. */
const MIN_LATE_READINGS = 5
/** The later half of the readings: a cord that first beds in follows another decay then. */
function lateOnly(kept: readonly boolean[]): readonly boolean[] | undefined {
  const at = kept.flatMap((keep, i) => (keep ? [i] : []))
  const late = at.slice(at.length >> 1)
  return late.length < MIN_LATE_READINGS ? undefined : kept.map((keep, i) => keep && i >= (late[0] as number))
}

const squares = ({ fit, part }: { fit: Fit; part: Part }): number =>
  part.kept.reduce((sum, keep, i) => (keep ? sum + (fit.differences[0]![i] as number) ** 2 : sum), 0)

/** Neighbours that deviate alike mean that the model leaves something out. */
const MAX_AUTOCORRELATION = 0.35
/** Readings that scatter by more than this many times the usual follow something else. */
const MAX_ROUGHNESS = 4
function misfit(log: string, { fit, part }: { fit: Fit; part: Part }, remarks: LogRemark[]): void {
  const { channels } = part.model
  const worst = Math.max(
    ...Array.from({ length: channels }, (_, c) =>
      alikeness(part.kept.flatMap((keep, i) => (keep ? [fit.differences[0]![i * channels + c] as number] : []))),
    ),
  )
  const { steps, usual } = part.model
  const rough = Math.max(0, ...(usual ?? []).map((one, c) => part.scatter[c]! / Math.max(one, steps?.[c] ?? 0)))
  if (rough > MAX_ROUGHNESS)
    remarks.push(
      ofLog(
        log,
        'misfit',
        `readings lie ${significant(rough, 2)} times as far from the model as usual: did something slip, was a unit or an instrument changed on the way? The intervals are widened for that`,
      ),
    )
  else if (worst > MAX_AUTOCORRELATION)
    remarks.push(
      ofLog(
        log,
        'misfit',
        'neighbouring readings deviate from the model in the same direction: it leaves something out, and the intervals are widened for that',
      ),
    )
}

/** A law that fits this much worse, in squares of the scatter, is out. */
const RULED_OUT_BEYOND = 25
/** Laws that differ by less than this are not separated. */
const MIN_SEPARATION = 4

/** Half of an interval. */
const narrowed = (value: number, [low, high]: readonly [number, number]) => [(value + low) / 2, (value + high) / 2] as const

/** The interval over both laws of a decay and over its later half, and the lower value where laws are not separated. */
export function withRivals(found: FieldEstimate, group: readonly Used[], remarks: LogRemark[]): FieldEstimate {
  let result = found
  for (const { rivals, part } of group) {
    if (!part.model.learns.includes(found.path) || part.model.beyond?.(found.path, found.value, part.rows) === 0) continue
    for (const { worse, by, fit, part: own } of rivals) {
      const other = worse > RULED_OUT_BEYOND ? undefined : estimatesIn(fit, [own]).find(({ path }) => path === found.path)
      if (other?.interval === undefined || result.interval === undefined) continue
      const late = by === 'laterHalf'
      const lower = by === 'law' && worse < MIN_SEPARATION
      const words = late ? inStages(found, other.value, result.interval) : by === 'law' ? twoLaws(found, other.value, lower) : undefined
      if (words !== undefined) remarks.push(ofLog(part.model.log, 'misfit', words))
      // The later half alone has few readings: one standard error of it counts, not its whole interval.
      const reach = late ? narrowed(other.value, other.interval) : other.interval
      const hull = (a: readonly [number, number]) => [Math.min(a[0], reach[0]), Math.max(a[1], reach[1])] as const
      const value = lower ? Math.min(result.value, other.value) : result.value
      result = { ...result, value, interval: hull(result.interval), spread: hull(result.spread) }
    }
  }
  return result
}

const inStages = ({ path, value }: FieldEstimate, late: number, [low, high]: readonly [number, number]): string | undefined =>
  late < low || late > high
    ? `the later half of the readings gives ${path} as ${significant(late, 3)}, all of them ${significant(value, 3)}: the cord relaxes in stages, and the interval holds both`
    : undefined

const twoLaws = ({ path, value }: FieldEstimate, other: number, lower: boolean): string =>
  `equal losses per decade of time give ${path} as ${significant(Math.max(value, other), 3)}, a power law of time ${significant(Math.min(value, other), 3)}${lower ? '; the readings do not show which holds, and the lower one is taken' : ''}. The interval holds both; a longer log would decide`

/** Estimates of single logs farther apart than this many combined standard errors do not belong to one value. */
const MAX_STANDARD_ERRORS = 3

export function disagreements(found: readonly FieldEstimate[], group: readonly Used[], remarks: LogRemark[]): void {
  for (const { path, logs } of found) {
    if (logs.length < 2) continue
    const own = group
      .filter(({ part }) => part.model.learns.includes(path))
      .map(({ fit }) => {
        const i = fit.parameters.findIndex(({ id }) => id === path)
        return { at: fit.solution.parameters[i] as number, error: fit.solution.standardErrors[i] as number }
      })
    const [a, b] = own as [(typeof own)[0], (typeof own)[0]]
    const apart = Math.abs(a.at - b.at) / Math.hypot(a.error, b.error)
    if (apart > MAX_STANDARD_ERRORS)
      remarks.push(
        ofLog(
          logs.join(', '),
          'disagreement',
          `${path} comes out ${significant(apart, 3)} combined standard errors apart; both are taken together, but one of the two logs measured something else`,
        ),
      )
  }
}
