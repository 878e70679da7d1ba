import { studentTQuantile } from '../../numeric/index.js'
import { Quantity } from '../../units/index.js'
import type { LegNumbers } from '../leg-numbers.js'
import { COUPON_COLUMNS, type CouponOf } from './coupon-logs.js'
import { readingOf } from './coupon-readings.js'
import { wrongFile } from './examine-log.js'
import type { ComparedLog } from './foot.js'
import { type LogRemark, ofLog, readLog } from './logs.js'
import type { Rows } from './model.js'
import { MIN_READINGS } from './used-log.js'

/** Readings farther than this from what is expected are no such coupon: a ratio, and for a difference of lengths a millimetre. */
const MAX_RATIO = 10
const MAX_DIFFERENCE = 1e-3
/** Reads the log of a coupon and compares it with what the leg expects; absent, with a remark, where it cannot be used. */
export function couponLog(x: LegNumbers, coupon: CouponOf, text: string, remarks: LogRemark[]): ComparedLog | undefined {
  const { log, id } = coupon
  const read = readLog(log, text, COUPON_COLUMNS[id])
  remarks.push(...read.remarks)
  const file = wrongFile(log, read)
  const why = file ?? (read.rows.length < MIN_READINGS ? `${read.rows.length} whole rows; at least ${MIN_READINGS} are needed` : undefined)
  if (why === undefined) return compareCoupon(x, coupon, read.rows, remarks)
  remarks.push(ofLog(log, file === undefined ? 'few readings' : 'wrong file', why))
  return undefined
}

/** A coupon's log compared with what the leg expects; absent, with a remark, where its numbers cannot be those of such a coupon. */
function compareCoupon(x: LegNumbers, coupon: CouponOf, rows: Rows, remarks: LogRemark[]): ComparedLog | undefined {
  const reading = readingOf(x, coupon)
  const values = rows.map(reading.of)
  const mean = values.reduce((sum, y) => sum + y, 0) / values.length
  const [low, typical, high] = reading.expected
  const { far: most = MAX_RATIO } = reading
  const show = (y: number) => new Quantity(y, reading.kind)
  const far = typical === 0 ? Math.abs(mean) > MAX_DIFFERENCE : !(mean > typical / most && mean < typical * most)
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
  const reach = Math.hypot((studentTQuantile(0.975, values.length - 1) * deviation) / Math.sqrt(values.length), reading.gain * mean)
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
