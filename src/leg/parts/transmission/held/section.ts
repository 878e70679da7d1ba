import type { Fields } from '../../../schema/index.js'

/** A joint that is held by something outside this document, up to a torque. */
export const heldDrive = {
  /** Torque that it can hold. */
  torque: { kind: 'torque', min: '1 mN m', max: '10000 N m', usual: ['0.05 N m', '1000 N m'] },
  /** Torsional stiffness. Default: 600 N m/rad. */
  stiffness: {
    kind: 'torsionalStiffness',
    min: '0.1 N m/rad',
    max: '10000 kN m/rad',
    usual: ['5 N m/rad', '50 kN m/rad'],
    default: '600 N m/rad',
    because: 'about as stiff as a cord drive',
  },
} as const satisfies Fields
