import type { Check } from '../cases/check.js'
import { bossChecks } from './pins-and-bosses/bosses.js'
import { pinChecks } from './pins-and-bosses/pins.js'
import { anchorChecks } from './transmission/cord/anchor.js'
import { cordChecks } from './transmission/cord/checks.js'
import { drumChecks } from './transmission/cord/drum.js'

/** Every check, by part: the one list that names all parts. */
export const CHECKS: readonly Check[] = [...cordChecks, ...drumChecks, ...anchorChecks, ...pinChecks, ...bossChecks]
