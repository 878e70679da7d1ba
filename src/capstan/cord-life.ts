import { formula } from '../formula/index.js'

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
    /** Activation energy of the process. */
    activationEnergy: { kind: 'energy', above: 0, default: '1.5 eV' },
    /** Activation volume of the process. */
    activationVolume: { kind: 'volume', above: 0, default: '0.045 nm^3' },
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
  valid: { 'from -20 to 70 degC': ({ temperature }) => temperature >= 253.15 && temperature <= 343.15 },
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
    /** Axial rigidity of the bedded-in cord. */
    axialRigidity: { kind: 'axialRigidity', above: 0 },
    /** Creep strain per tenfold time at constant tension equal to the pretension. */
    perDecade: { kind: 'strain', min: 0 },
    /** Time from which decades count, when the pretension was set. */
    from: { kind: 'time', above: 0 },
    /** Time asked for. */
    to: { kind: 'time', above: 0 },
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

/**
 * Bending cycles a wire rope survives over pulleys, by the regression form of rope research. Its coefficients belong to one construction
 * and one test programme: none is built in.
 */
export const bendingCycles = /* @__PURE__ */ formula('capstan.bendingCycles', {
  inputs: {
    /** Pulley over rope diameter. */
    bendRatio: { kind: 'ratio', min: 4 },
    /** Tension of the rope. */
    tension: { kind: 'force', above: 0 },
    /** Diameter of the rope. */
    ropeDiameter: { kind: 'length', above: 0 },
    /** Nominal strength of the wires. */
    grade: { kind: 'stress', above: 0 },
    /** Constant term. */
    b0: 'ratio',
    /** Factor of the load term. */
    b1: 'ratio',
    /** Factor of the bend ratio. */
    b2: 'ratio',
    /** Factor of load and bend ratio together. */
    b3: 'ratio',
    /** Product of the factors for diameter, length, core and so on. */
    corrections: { kind: 'ratio', above: 0, default: 1 },
  },
  /** Cycles, mean of the tests the coefficients came from. */
  output: 'count',
  source: [
    {
      level: 'memory',
      where: 'Feyrer, Wire Ropes: endurance regression for bending over sheaves (unit tension 1 N/mm², wires 1770 N/mm²)',
    },
  ],
  si: ({ bendRatio, tension, ropeDiameter, grade, b0, b1, b2, b3, corrections }) => {
    const lgBend = Math.log10(bendRatio)
    const load = Math.log10(tension / (ropeDiameter * ropeDiameter) / 1e6) - 0.4 * Math.log10(grade / 1.77e9)
    return 10 ** (b0 + (b1 + b3 * lgBend) * load + b2 * lgBend) * corrections
  },
})

/** Axial rigidity of a wire rope from the stretch constant makers print (elongation in per cent = constant × load in lbf / diameter² in in²). */
export const wireRopeRigidity = /* @__PURE__ */ formula('capstan.wireRopeRigidity', {
  inputs: {
    /** Nominal diameter of the rope. */
    diameter: { kind: 'length', above: 0 },
    /** Stretch constant of the construction, such as 1.62e-5 for 7x19 stainless. */
    stretchConstant: { kind: 'ratio', above: 0 },
  },
  output: {
    /** Axial rigidity. */
    axialRigidity: 'axialRigidity',
    /** Modulus on the full circle of the diameter: a quarter of the wire's, never use that. */
    circleModulus: 'modulus',
  },
  assumes: ['constructional stretch pulled out'],
  source: [{ level: 'published', where: "a wire-rope seller's page of formulas: elongation % = W G / D², G = 1.62e-5 for 7x19 stainless" }],
  si: ({ diameter, stretchConstant }) => {
    // 100 % over the constant, in pounds-force per square inch, on a square of side D.
    const perSquare = (100 / stretchConstant) * 6894.757293168361
    return { axialRigidity: perSquare * diameter * diameter, circleModulus: (4 * perSquare) / Math.PI }
  },
})
