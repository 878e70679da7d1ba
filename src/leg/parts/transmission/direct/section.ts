import type { Fields } from '../../../schema/index.js'

/** A direct drive: the motor turns the joint itself. */
export const directDrive = {} as const satisfies Fields
