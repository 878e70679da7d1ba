import type { CouponId } from './coupon-logs.js'
import { type Instrument, instrument, SCALE_GAIN, SCALE_ZERO } from './instruments.js'

/** An instrument of a coupon, and the rows that its error makes of a row: one for each instrument of the kind. */
export interface CouponInstrument extends Instrument {
  readonly off: readonly ((row: readonly number[], error: number) => readonly number[])[]
}

type Row = readonly number[]
/** A column that is read too high by an error, or by a share of itself. */
const more = (column: number) => (row: Row, error: number) => row.map((x, i) => (i === column ? x + error : x))
const longer = (column: number) => (row: Row, error: number) => row.map((x, i) => (i === column ? x * (1 + error) : x))
/** Both columns on one scale. */
const both = (row: Row, error: number) => row.map((x) => x + error)

const of = (off: CouponInstrument['off'], what: Instrument): CouponInstrument => ({ ...what, off })
const GAUGE = instrument('length', 2e-5, 'zero of the gauge in the hole', 'measure the hole of a ring or of a new bearing with it')

/** Instruments of each coupon, with defaults as those of the stand. */
export const COUPON_INSTRUMENTS: { readonly [C in CouponId]: Readonly<Record<string, CouponInstrument>> } = {
  couponHoles: { 'gauge zero': of([more(1)], GAUGE) },
  // One scale for both: its gain cancels.
  couponBars: { 'force zero': of([both], SCALE_ZERO(0.5)) },
  couponSplit: { 'gauge zero': of([more(1)], GAUGE) },
  couponDrum: {
    'force gain': of([longer(1)], SCALE_GAIN(0.03)),
    'force zero': of([more(1)], SCALE_ZERO(0.1)),
    'wrap zero': of([more(2)], instrument('angle', (10 * Math.PI) / 180, 'angle of wrap', 'take readings at several wraps')),
  },
  couponSandwich: {
    'friction change': of(
      [longer(2)],
      instrument('ratio', 0.05, 'change of the friction under heads and in threads with time', 'loosen some more at once, and some later'),
    ),
  },
  couponPlate: {
    'power gain': of([longer(0)], instrument('ratio', 0.03, 'gain of the power', 'compare both meters with others')),
    'temperature zero': of(
      [more(1), more(2)],
      instrument('temperatureDifference', 2.5, 'zero of each thermometer', 'read both before the power is on: they must agree'),
    ),
  },
}
