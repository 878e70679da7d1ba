import { formula } from '../formula/index.js'

const SHIFT_RATE = {
  /** Double-logarithmic shift rate. */
  shiftRate: { kind: 'ratio', min: 0, max: 1.2, default: 0.85 },
} as const

/** Shift factor of time with physical ageing: an older glass creeps more slowly. */
export const ageingShift = /* @__PURE__ */ formula('materials.ageingShift', {
  inputs: {
    /** Age since the print cooled through its glass transition. */
    age: { kind: 'time', above: 0 },
    /** Age at which the creep curve was measured. */
    referenceAge: { kind: 'time', above: 0 },
    ...SHIFT_RATE,
  },
  /** Shift factor: above one when older. */
  output: 'ratio',
  equation: ['result = (age / referenceAge)^shiftRate'],
  assumes: ['temperature below the glass transition and constant', 'creep short against the age'],
  source: [
    { level: 'unverified', where: 'Struik, Physical Aging in Amorphous Polymers, 1978 (shift rate 0.7 to 1)' },
    { level: 'published', where: 'Fischbach & Weinberg 2023, arXiv:2302.11240, abstract (printed PLA shifts so)' },
  ],
  si: ({ age, referenceAge, shiftRate }) => (age / referenceAge) ** shiftRate,
})

/** Effective time of a long creep test during which the glass goes on ageing: shorter than the clock time. */
export const effectiveTimeUnderAgeing = /* @__PURE__ */ formula('materials.effectiveTimeUnderAgeing', {
  inputs: {
    /** Clock time under load. */
    time: { kind: 'time', min: 0 },
    /** Age when the load came on. */
    age: { kind: 'time', above: 0 },
    ...SHIFT_RATE,
  },
  /** Time to read on the creep curve measured at that age. */
  output: 'time',
  equation: ['result = shiftRate == 1 ? age * log(1 + time / age) : age * ((1 + time / age)^(1 - shiftRate) - 1) / (1 - shiftRate)'],
  assumes: ['temperature below the glass transition and constant', 'load does not rejuvenate'],
  source: [{ level: 'unverified', where: 'Struik, Physical Aging in Amorphous Polymers, 1978' }],
  si: ({ time, age, shiftRate }) => {
    const x = Math.log1p(time / age)
    const rest = 1 - shiftRate
    return Math.abs(rest * x) < 1e-12 ? age * x : (age * Math.expm1(rest * x)) / rest
  },
})
