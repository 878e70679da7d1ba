import { boltChecks } from './bolts.js'
import { bossChecks } from './bosses.js'
import type { Check } from './check.js'
import { cordChecks } from './cord.js'
import { drumChecks } from './drum.js'
import { footChecks } from './foot.js'
import { frameChecks } from './frame.js'
import { motorChecks } from './motor.js'
import { pinChecks } from './pins.js'
import { shaftChecks } from './shaft.js'
import { zoneChecks } from './zones.js'

/** Every check, by part. */
export const CHECKS: readonly Check[] = [
  ...cordChecks,
  ...drumChecks,
  ...pinChecks,
  ...bossChecks,
  ...boltChecks,
  ...shaftChecks,
  ...footChecks,
  ...motorChecks,
  ...frameChecks,
  ...zoneChecks,
]
