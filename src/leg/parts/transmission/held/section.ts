import type { Fields } from '../../../schema/index.js'

/** A joint that is held by something outside this document, up to a torque. */
export const heldDrive = {
  /** Torque that it can hold. */
  torque: { kind: 'torque', above: 0 },
  /** Torsional stiffness. Default: 600 N m/rad. */
  stiffness: { kind: 'torsionalStiffness', above: 0, default: '600 N m/rad', because: 'about as stiff as a cord drive' },
} as const satisfies Fields
