import type { Field } from '../../schema/index.js'

/** A material of one's own: `basedOn` names one of the table, the rest are measured values. */
export const material = { own: 'material' } as const satisfies Field
