import { studentTQuantile } from '../../numeric/index.js'
import { Quantity } from '../../units/index.js'
import type { LegNumbers } from '../leg-numbers.js'
import { copiesIn } from './copies.js'
import { COUPON_INSTRUMENTS } from './coupon-instruments.js'
import { COUPON_COLUMNS, type CouponOf } from './coupon-logs.js'
import { type CouponReading, readingOf } from './coupon-readings.js'
import { wrongFile } from './examine-log.js'
import type { ComparedLog } from './foot.js'
import { accuracyOf } from './instruments.js'
import { type LogRemark, ofLog, type ReadLog, readLog } from './logs.js'
import type { Rows } from './model.js'
import { type SpikeOptions, withoutSpikes } from './spikes.js'
import { MIN_READINGS } from './used-log.js'

/** Readings farther than this from what is expected are no such coupon: a ratio, and for a difference of lengths a millimetre. */
const MAX_RATIO = 10
const MAX_DIFFERENCE = 1e-3
/** Reads the log of a coupon and compares it with what the leg expects; absent, with a remark, where it cannot be used. */
export function couponLog(
  x: LegNumbers,
  coupon: CouponOf,
  text: string,
  remarks: LogRemark[],
  options: SpikeOptions,
): ComparedLog | undefined {
  const { log, id } = coupon
  const read = readLog(log, text, COUPON_COLUMNS[id])
  remarks.push(...read.remarks)
  const file = wrongFile(log, read)
  const why = file ?? (read.rows.length < MIN_READINGS ? `${read.rows.length} whole rows; at least ${MIN_READINGS} are needed` : undefined)
  if (why === undefined) return compareCoupon(x, coupon, read, remarks, options)
  remarks.push(ofLog(log, file === undefined ? 'few readings' : 'wrong file', why))
  return undefined
}

/** A coupon's log compared with what the leg expects; absent, with a remark, where its numbers cannot be those of such a coupon. */
function compareCoupon(
  x: LegNumbers,
  coupon: CouponOf,
  read: ReadLog,
  remarks: LogRemark[],
  options: SpikeOptions,
): ComparedLog | undefined {
  const reading = readingOf(x, coupon)
  const rows = believed(coupon.log, reading, read, remarks, options)
  const values = rows.map(reading.of)
  const mean = average(values)
  const [low, typical, high] = reading.expected
  const { far: most = MAX_RATIO, atMost = Number.POSITIVE_INFINITY } = reading
  const show = (y: number) => new Quantity(y, reading.kind)
  const far = typical === 0 ? Math.abs(mean) > MAX_DIFFERENCE : !(mean > typical / most && mean < Math.min(typical * most, atMost))
  if (far) {
    remarks.push(
      ofLog(
        coupon.log,
        'implausible',
        `${reading.what} comes out as ${show(mean)}, where ${show(typical)} is expected: another unit, swapped columns, or another coupon. The log is not compared`,
      ),
    )
    return undefined
  }
  const deviation = Math.sqrt(values.reduce((sum, y) => sum + (y - mean) ** 2, 0) / (values.length - 1))
  const reach = Math.hypot(byScatter(reading, rows, deviation), byInstruments(coupon, reading, rows, accuracyIn(coupon, read, remarks)))
  const interval = [mean - reach, mean + reach] as const
  const state = interval[0] > high ? 'above' : interval[1] < low ? 'below' : 'agrees'
  return {
    log: coupon.log,
    what: reading.what,
    predicted: show(typical),
    band: [show(low), show(high)],
    measured: show(mean),
    interval: [show(interval[0]), show(interval[1])],
    state,
    means: `${reading.means[state]}; single ones scatter by ${show(deviation)}`,
  }
}

const average = (values: readonly number[]) => values.reduce((sum, y) => sum + y, 0) / values.length
const accuracyIn = ({ log, id }: CouponOf, read: ReadLog, remarks: LogRemark[]) => accuracyOf(log, COUPON_INSTRUMENTS[id], read, remarks)

/** Rows without copies and without readings far outside the scatter of the rest. */
function believed(log: string, reading: CouponReading, read: ReadLog, remarks: LogRemark[], options: SpikeOptions): Rows {
  const copies = copiesIn(read.rows, true)
  for (const i of copies)
    remarks.push({
      log,
      line: read.lines[i],
      what: 'duplicate',
      message: 'the same as an earlier row, with its neighbours; it counts once',
    })
  const [rows, lines] = [read.rows.filter((_, i) => !copies.has(i)), read.lines.filter((_, i) => !copies.has(i))]
  const values = rows.map(reading.of)
  const deviations = values.map((y) => y - average(values))
  const all = rows.map(() => true)
  // A step of a display moves single readings by as much. The first column is mostly set.
  const stepped = (row: Rows[number], column: number) => row.map((x, i) => (i === column ? x + (read.steps[i] as number) : x))
  const moved = rows.flatMap((row) => row.slice(1).map((_, i) => Math.abs(reading.of(stepped(row, i + 1)) - reading.of(row))))
  const closest = Math.max(1e-12, ...moved)
  const kept = withoutSpikes(log, lines, all, [{ deviations, closest, freedom: rows.length - 1 }], remarks, options)
  return rows.filter((_, i) => kept[i])
}

/** Half of the interval of 95 % by the scatter of single ones. A reading that stands in every row scatters as they do, and is one. */
function byScatter({ shared }: CouponReading, rows: Rows, deviation: number): number {
  const one = shared !== undefined && new Set(rows.map((row) => row[shared])).size === 1
  return studentTQuantile(0.975, rows.length - 1) * deviation * Math.sqrt(1 / rows.length + (one ? 1 : 0))
}

/** Half of the interval of 95 % by the instruments: what the error of each moves the mean by. */
function byInstruments({ id }: CouponOf, reading: CouponReading, rows: Rows, accuracy: Readonly<Record<string, number>>): number {
  const mean = average(rows.map(reading.of))
  const moved = Object.entries(COUPON_INSTRUMENTS[id]).flatMap(([name, { off }]) =>
    off.map((change) => average(rows.map((row) => reading.of(change(row, accuracy[name] as number)))) - mean),
  )
  return 1.96 * Math.hypot(...moved)
}
