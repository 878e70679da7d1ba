import type { Check } from '../../../cases/check.js'
import { holdingChecks } from './holding-checks.js'
import { strengthChecks } from './strength-checks.js'
import { windingChecks } from './winding-checks.js'

/** Checks of the cord of each drive. */
export const cordChecks: readonly Check[] = [...holdingChecks, ...strengthChecks, ...windingChecks]
