import { formula } from '../formula/index.js'
import { BEDDED_RIGIDITY, END_TIME } from './cord-inputs.js'
import { ACTIVATION } from './inputs.js'

const BOLTZMANN = 1.380649e-23

/**
 * Pretension left in a UHMWPE cord between fixed ends as thermally activated creep turns stretch into flow. Exact for one activated
 * process: creep slows as the tension falls. The reference rate must be measured on your cord.
 */
export const activatedPretensionLeft = /* @__PURE__ */ formula('capstan.activatedPretensionLeft', {
  inputs: {
    /** Tension at the start. */
    pretension: { kind: 'force', above: 0 },
    /** Load-bearing area of the fibre (mass per length over filament density). */
    fibreArea: { kind: 'area', above: 0 },
    /** Axial rigidity of the bedded-in cord; with a compliant frame, of cord and frame in series. */
    axialRigidity: { kind: 'axialRigidity', above: 0 },
    /** Steady creep rate measured at the reference stress and temperature. */
    referenceRate: { kind: 'strainRate', min: 0 },
    /** Fibre stress of that measurement. */
    referenceStress: { kind: 'stress', above: 0 },
    /** Temperature of that measurement. */
    referenceTemperature: { kind: 'temperature', above: 0 },
    /** Temperature held. */
    temperature: { kind: 'temperature', above: 0 },
    /** Time. */
    time: { kind: 'time', min: 0 },
    ...ACTIVATION,
  },
  output: {
    /** Tension left. */
    tension: 'force',
    /** Share of the pretension left. */
    share: 'ratio',
  },
  assumes: ['steady creep only: bedding-in and primary creep are over', 'temperature constant', 'ends fixed, frame rigid'],
  source: [
    { level: 'published', where: 'Eyring rate with U about 1.5 eV, V about 45 Å³: J. Chem. Phys. 153 (2020) 144904, abstract' },
    { level: 'computed', where: 'relaxation dσ/dt = −E ε̇(σ) integrated: tanh(σV/2kT) decays exponentially' },
  ],
  valid: { 'from -20 to 70 degC': ({ temperature }) => temperature >= 253.15 * (1 - 1e-9) && temperature <= 343.15 },
  si: ({
    pretension,
    fibreArea,
    axialRigidity,
    referenceRate,
    referenceStress,
    referenceTemperature,
    temperature,
    time,
    activationEnergy,
    activationVolume,
  }) => {
    const b = activationVolume / (BOLTZMANN * temperature)
    const bRef = activationVolume / (BOLTZMANN * referenceTemperature)
    const shift = Math.exp((-activationEnergy / BOLTZMANN) * (1 / temperature - 1 / referenceTemperature))
    const prefactor = (referenceRate * shift) / Math.sinh(bRef * referenceStress)
    const stress = pretension / fibreArea
    const fall = (axialRigidity / fibreArea) * prefactor * b * time
    const decay = Math.exp(-fall)
    // 2 atanh(t e^-fall), t = tanh(b stress/2), without the cancellation of 1 - t: t is one but for rounding at high stress.
    const t = Math.tanh((b * stress) / 2)
    const tension = (fibreArea * Math.log((1 + t * decay) / ((2 * decay) / (Math.exp(b * stress) + 1) - Math.expm1(-fall)))) / b
    return { tension, share: tension / pretension }
  },
})

/** Pretension left in an aramid, LCP or PBO cord between fixed ends, whose creep grows by a constant amount per decade of time. */
export const logarithmicPretensionLeft = /* @__PURE__ */ formula('capstan.logarithmicPretensionLeft', {
  inputs: {
    /** Tension at the reference time. */
    pretension: { kind: 'force', above: 0 },
    ...BEDDED_RIGIDITY,
    /** Creep strain per tenfold time at constant tension equal to the pretension. */
    perDecade: { kind: 'strain', min: 0 },
    /** Time from which decades count, when the pretension was set. */
    from: { kind: 'time', above: 0 },
    ...END_TIME,
  },
  requires: { to: { accepts: 'must not be before the starting time', holds: ({ from, to }) => to >= from } },
  output: {
    /** Tension left. */
    tension: 'force',
    /** Share of the pretension left. */
    share: 'ratio',
  },
  assumes: ['creep strain proportional to tension', 'quasi-elastic inversion of creep to relaxation', 'ends fixed, frame rigid'],
  valid: { 'at least half the pretension left (beyond, the inversion is rough)': (_, { share }) => share >= 0.5 },
  source: [{ level: 'computed', where: 'logarithmic creep of aramid and LCP fibres, inverted as σ = ε/J(t)' }],
  si: ({ pretension, axialRigidity, perDecade, from, to }) => {
    const share = 1 / (1 + (axialRigidity / pretension) * perDecade * Math.log10(to / from))
    return { tension: share * pretension, share }
  },
})
