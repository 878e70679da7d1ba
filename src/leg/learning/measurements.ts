import type { LogColumn } from './logs.js'

/** Measurements on the test stand, in the order in which they are made. */
export const MEASUREMENTS = [
  'cordFriction',
  'windup',
  'pretension',
  'pullOut',
  'freePlay',
  'efficiency',
  'beltPitch',
  'slipTorque',
  'springTorque',
  'weightTorque',
  'torqueConstant',
  'noLoad',
  'heating',
  'footDeflection',
] as const
/** One kind of measurement. */
export type MeasurementId = (typeof MEASUREMENTS)[number]

/** Measurements of the leg as a whole, or of a motor that both joints have. */
export const WHOLE = ['torqueConstant', 'noLoad', 'heating', 'footDeflection'] as const satisfies readonly MeasurementId[]

/** Columns of each kind of log. */
export const COLUMNS: { readonly [M in MeasurementId]: readonly LogColumn[] } = {
  cordFriction: [
    { name: 'slack tension', kind: 'force', unit: 'N' },
    { name: 'taut tension', kind: 'force', unit: 'N' },
    { name: 'wrap angle', kind: 'angle', unit: 'turn' },
  ],
  windup: [
    { name: 'joint torque', kind: 'torque', unit: 'N m' },
    { name: 'joint angle', kind: 'angle', unit: 'deg' },
  ],
  pretension: [
    { name: 'time', kind: 'time', unit: 'day' },
    { name: 'tension', kind: 'force', unit: 'N' },
  ],
  pullOut: [{ name: 'breaking force', kind: 'force', unit: 'N' }],
  freePlay: [{ name: 'free play', kind: 'angle', unit: 'deg' }],
  efficiency: [
    { name: 'joint torque', kind: 'torque', unit: 'N m' },
    { name: 'lifting current', kind: 'peakPhaseCurrent', unit: 'A' },
    { name: 'lowering current', kind: 'peakPhaseCurrent', unit: 'A' },
  ],
  beltPitch: [
    { name: 'time', kind: 'time', unit: 'day' },
    { name: 'pitch', kind: 'frequency', unit: 'Hz' },
  ],
  slipTorque: [{ name: 'joint torque', kind: 'torque', unit: 'N m' }],
  springTorque: [
    { name: 'joint angle', kind: 'angle', unit: 'deg' },
    { name: 'torque with spring', kind: 'torque', unit: 'N m' },
    { name: 'torque without spring', kind: 'torque', unit: 'N m' },
  ],
  weightTorque: [
    { name: 'link angle', kind: 'angle', unit: 'deg' },
    { name: 'torque with weight', kind: 'torque', unit: 'N m' },
    { name: 'torque without weight', kind: 'torque', unit: 'N m' },
  ],
  torqueConstant: [
    { name: 'peak phase current', kind: 'peakPhaseCurrent', unit: 'A' },
    { name: 'motor torque', kind: 'torque', unit: 'N m' },
  ],
  noLoad: [
    { name: 'voltage', kind: 'voltage', unit: 'V' },
    { name: 'current', kind: 'current', unit: 'A' },
  ],
  heating: [
    { name: 'time', kind: 'time', unit: 'min' },
    { name: 'peak phase current', kind: 'peakPhaseCurrent', unit: 'A' },
    { name: 'winding temperature', kind: 'temperature', unit: 'degC' },
    { name: 'mount temperature', kind: 'temperature', unit: 'degC' },
    { name: 'air temperature', kind: 'temperature', unit: 'degC' },
  ],
  footDeflection: [
    { name: 'upright force', kind: 'force', unit: 'N' },
    { name: 'upright deflection', kind: 'length', unit: 'mm' },
  ],
}
