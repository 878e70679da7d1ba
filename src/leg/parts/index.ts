import type { Check } from '../cases/check.js'
import { cordChecks } from './transmission/cord/checks.js'

/** Every check, by part: the one list that names all parts. */
export const CHECKS: readonly Check[] = [...cordChecks]
