import type { Leg } from '../document/describe.js'
import type { Comparison } from '../plans/compare.js'
import type { MovedField } from './corrections.js'
import type { ComparedLog } from './foot.js'
import type { LogRemark } from './logs.js'
import type { NextMeasurement } from './next.js'

/** Results of learning. */
export interface Learnt {
  /** The leg with the corrected fields. */
  readonly leg: Leg
  /** Fields that the logs moved, or left as they are. */
  readonly moved: readonly MovedField[]
  /** Measurements that correct no field, next to what the corrected leg predicts. */
  readonly compared: readonly ComparedLog[]
  /** Findings in the logs. */
  readonly remarks: readonly LogRemark[]
  /** What to measure next, the most informative first. */
  readonly next: readonly NextMeasurement[]
  /** Old and new verdict side by side. */
  readonly comparison: Comparison
}
