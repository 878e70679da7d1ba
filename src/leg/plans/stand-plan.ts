import type { Leg } from '../document/describe.js'
import type { CouponSheet } from './coupon-kit.js'
import type { StandMeasurement } from './stand-measurement.js'

/** Measurements on the test stand, most informative for an hour of work first. */
export interface StandPlan {
  /** The leg that the plan is for. */
  readonly leg: Leg
  /** Measurements, the most informative for an hour of work first. */
  readonly measurements: readonly StandMeasurement[]
  /** Coupons to print and load before the leg is built. */
  readonly coupons: readonly CouponSheet[]
  /** Hazards at the stand. */
  readonly cautions: readonly string[]
}
