import type { Check } from '../cases/check.js'
import { boltChecks } from './bolts/checks.js'
import { controllerChecks } from './controllers/checks.js'
import { footChecks } from './foot/checks.js'
import { bearingChecks } from './hip-shaft/bearings.js'
import { shaftChecks } from './hip-shaft/shaft.js'
import { jointChecks } from './joints/checks.js'
import { linkChecks } from './links/checks.js'
import { motorChecks } from './motors/checks.js'
import { bossChecks } from './pins-and-bosses/bosses.js'
import { pinChecks } from './pins-and-bosses/pins.js'
import { plateChecks } from './plates/checks.js'
import { supplyChecks } from './supply/checks.js'
import { anchorChecks } from './transmission/cord/anchor.js'
import { cordChecks } from './transmission/cord/checks.js'
import { drumChecks } from './transmission/cord/drum.js'

/** Every check, by part: the one list that names all parts. */
export const CHECKS: readonly Check[] = [
  ...cordChecks,
  ...drumChecks,
  ...anchorChecks,
  ...pinChecks,
  ...bossChecks,
  ...boltChecks,
  ...shaftChecks,
  ...bearingChecks,
  ...footChecks,
  ...motorChecks,
  ...plateChecks,
  ...controllerChecks,
  ...supplyChecks,
  ...jointChecks,
  ...linkChecks,
]
