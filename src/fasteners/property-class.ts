import { formula } from '../formula/index.js'
import { sizeTable } from './size-table.js'
import { BOLT_CLASS } from './thread-inputs.js'

/**
 * Strengths of a steel or stainless bolt by property class, such as `'8.8'` or `'A2-70'`.
 *
 * For stainless classes, which have no proof stress of their own, the 0.2 % proof stress is in both columns.
 */
export const propertyClass = /* @__PURE__ */ sizeTable('fasteners.propertyClass', {
  what: 'a property class of bolts',
  columns: { proofStress: ['stress', 'MPa'], yieldStrength: ['stress', 'MPa'], tensileStrength: ['stress', 'MPa'] },
  source: [
    {
      level: 'standard',
      where:
        'ISO 898-1, tables of ultimate and proof loads, sizes up to M16 (read in reproductions); yield strengths of table 3 unverified',
    },
    { level: 'unverified', where: 'ISO 3506-1:2020 table 2 (stainless)' },
  ],
  rows: {
    '4.6': [225, 240, 400],
    '4.8': [310, 340, 420],
    '5.6': [280, 300, 500],
    '5.8': [380, 420, 520],
    '6.8': [440, 480, 600],
    '8.8': [580, 640, 800],
    '9.8': [650, 720, 900],
    '10.9': [830, 940, 1040],
    '12.9': [970, 1100, 1220],
    'A2-50': [210, 210, 500],
    'A2-70': [450, 450, 700],
    'A2-80': [600, 600, 800],
    'A4-50': [210, 210, 500],
    'A4-70': [450, 450, 700],
    'A4-80': [600, 600, 800],
  },
})

/** Least torque that must not break a stainless bolt of class 70, by thread. */
export const stainlessBreakingTorque = /* @__PURE__ */ sizeTable('fasteners.stainlessBreakingTorque', {
  what: 'a coarse metric thread',
  columns: { class50: ['torque', 'N m'], class70: ['torque', 'N m'], class80: ['torque', 'N m'] },
  source: [{ level: 'unverified', where: 'ISO 3506-1 table of minimum breaking torques' }],
  rows: {
    'M1.6': [0.15, 0.2, 0.24],
    M2: [0.3, 0.4, 0.48],
    'M2.5': [0.6, 0.9, 0.96],
    M3: [1.1, 1.6, 1.8],
    M4: [2.7, 3.8, 4.3],
    M5: [5.5, 7.8, 8.8],
    M6: [9.3, 13, 15],
    M8: [23, 32, 37],
    M10: [46, 65, 74],
    M12: [80, 110, 130],
  },
})

/** Strength of a bolt in tension and in shear: proof, yield and breaking load on the stress area, shear through the thread and through the shank. */
export const boltStrength = /* @__PURE__ */ formula('fasteners.boltStrength', {
  inputs: {
    ...BOLT_CLASS,
    /** Shear strength of the bolt as a share of its tensile strength. */
    shearRatio: { kind: 'ratio', above: 0, max: 1, default: 0.6 },
  },
  output: {
    /** Largest load without permanent stretch. */
    proofLoad: 'force',
    /** Load at yield. */
    yieldLoad: 'force',
    /** Least breaking load in tension. */
    breakingLoad: 'force',
    /** Breaking load in shear, one plane through the thread. */
    threadShearLoad: 'force',
    /** Breaking load in shear, one plane through the full shank. */
    shankShearLoad: 'force',
  },
  equation: [
    'proofLoad = thread.stressArea * bolt.proofStress',
    'yieldLoad = thread.stressArea * bolt.yieldStrength',
    'breakingLoad = thread.stressArea * bolt.tensileStrength',
    'threadShearLoad = thread.rootArea * shearRatio * bolt.tensileStrength',
    'shankShearLoad = pi / 4 * thread.diameter^2 * shearRatio * bolt.tensileStrength',
  ],
  assumes: ['static load, no bending'],
  source: [
    { level: 'standard', where: 'ISO 898-1:2013, 9.1 (loads on the stress area)' },
    { level: 'commonPractice', where: 'shear strength of bolts 0.6 of tensile strength' },
  ],
  si: ({ thread, bolt, shearRatio }) => ({
    proofLoad: thread.stressArea * bolt.proofStress,
    yieldLoad: thread.stressArea * bolt.yieldStrength,
    breakingLoad: thread.stressArea * bolt.tensileStrength,
    threadShearLoad: thread.rootArea * shearRatio * bolt.tensileStrength,
    shankShearLoad: (Math.PI / 4) * thread.diameter * thread.diameter * shearRatio * bolt.tensileStrength,
  }),
})
