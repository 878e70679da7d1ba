import type { Fields } from '../../../schema/index.js'
import { outputBearing } from '../output-bearing/section.js'

/** A direct drive: the rotor is fixed to the joint and turns it without any reduction. */
export const directDrive = outputBearing satisfies Fields
