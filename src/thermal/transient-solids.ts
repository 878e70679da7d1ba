import { formula } from '../formula/index.js'
import { bracketRoot, erfc } from '../numeric/index.js'
import { CONDUCTIVITY } from './solid-inputs.js'

const INITIAL = {
  /** Temperature at the start. */
  initial: 'temperature',
} as const

const DIFFUSIVITY = {
  /** Diffusivity. */
  diffusivity: { kind: 'thermalDiffusivity', above: 0 },
} as const

/** Thermal diffusivity: how fast temperature spreads through a material. */
export const thermalDiffusivity = /* @__PURE__ */ formula('thermal.thermalDiffusivity', {
  inputs: {
    ...CONDUCTIVITY,
    /** Density. */
    density: { kind: 'density', above: 0 },
    /** Specific heat. */
    specificHeat: { kind: 'specificHeat', above: 0 },
  },
  /** Diffusivity. */
  output: 'thermalDiffusivity',
  equation: ['result = conductivity / (density * specificHeat)'],
  source: [{ level: 'published', where: 'definition; any heat transfer text' }],
  si: ({ conductivity, density, specificHeat }) => conductivity / (density * specificHeat),
})

/** Temperature inside a thick body whose surface is suddenly held at another temperature: how deep the heat of a stall reaches. */
export const thickBodyStep = /* @__PURE__ */ formula('thermal.thickBodyStep', {
  inputs: {
    ...INITIAL,
    /** Temperature of the surface from then on. */
    surface: 'temperature',
    /** Depth. */
    depth: { kind: 'length', min: 0 },
    /** Time since the step. */
    time: { kind: 'time', above: 0 },
    ...DIFFUSIVITY,
  },
  /** Temperature there and then. */
  output: 'temperature',
  equation: ['result = initial + (surface - initial) * (1 - erf(depth / (2 * sqrt(diffusivity * time))))'],
  assumes: ['far side not yet reached: thickness beyond about four times √(diffusivity · time)'],
  source: [{ level: 'published', where: 'Incropera, Fundamentals of Heat and Mass Transfer, section 5.7, constant surface temperature' }],
  si: ({ initial, surface, depth, time, diffusivity }) => initial + (surface - initial) * erfc(depth / (2 * Math.sqrt(diffusivity * time))),
})

/** Rise of the surface of a thick body under a constant heat flux: the first minutes of a printed plate under a motor. */
export const thickBodyFlux = /* @__PURE__ */ formula('thermal.thickBodyFlux', {
  inputs: {
    /** Heat flux. */
    flux: { kind: 'heatFlux', min: 0 },
    /** Time since it began. */
    time: { kind: 'time', min: 0 },
    ...CONDUCTIVITY,
    ...DIFFUSIVITY,
  },
  /** Rise of the surface. */
  output: 'temperatureDifference',
  equation: ['result = 2 * flux / conductivity * sqrt(diffusivity * time / pi)'],
  assumes: ['far side not yet reached'],
  source: [{ level: 'published', where: 'Incropera, Fundamentals of Heat and Mass Transfer, section 5.7, constant surface flux' }],
  si: ({ flux, time, conductivity, diffusivity }) => ((2 * flux) / conductivity) * Math.sqrt((diffusivity * time) / Math.PI),
})

/** Course of a body of one temperature after its surroundings change or a loss is switched on. */
export const lumpedResponse = /* @__PURE__ */ formula('thermal.lumpedResponse', {
  inputs: {
    ...INITIAL,
    /** Temperature it tends to: the surroundings, plus loss times resistance. */
    final: 'temperature',
    /** Heat capacity. */
    heatCapacity: { kind: 'heatCapacity', above: 0 },
    /** Resistance to the surroundings. */
    thermalResistance: { kind: 'thermalResistance', above: 0 },
    /** Time since the change. */
    time: { kind: 'time', min: 0 },
  },
  output: {
    /** Temperature then. */
    temperature: 'temperature',
    /** Time constant. */
    timeConstant: 'time',
    /** Part of the change that is done. */
    done: 'ratio',
  },
  equation: [
    'timeConstant = heatCapacity * thermalResistance',
    'done = 1 - exp(-time / timeConstant)',
    'temperature = initial + (final - initial) * done',
  ],
  assumes: ['one temperature in the body (Biot number below 0.1)', 'constant resistance'],
  source: [{ level: 'published', where: 'Incropera, Fundamentals of Heat and Mass Transfer, section 5.1; Çengel, section 4-1' }],
  si: ({ initial, final, heatCapacity, thermalResistance, time }) => {
    const timeConstant = heatCapacity * thermalResistance
    const done = -Math.expm1(-time / timeConstant)
    return { temperature: initial + (final - initial) * done, timeConstant, done }
  },
})

/** Course of a plane wall cooled on both faces (or insulated on one), by the first term of its series. */
export const wallResponse = /* @__PURE__ */ formula('thermal.wallResponse', {
  inputs: {
    /** Biot number on half the thickness (on the whole thickness of a wall insulated on one side). */
    biot: { kind: 'ratio', min: 1e-6 },
    /** Fourier number on the same length: diffusivity times time over length squared. */
    fourier: { kind: 'ratio', min: 0 },
  },
  output: {
    /** Temperature difference left in the middle (or at the insulated face) over that at the start. */
    middle: 'ratio',
    /** The same at the surface. */
    surface: 'ratio',
    /** First eigenvalue. */
    eigenvalue: 'ratio',
    /** Coefficient of the first term. */
    coefficient: 'ratio',
  },
  equation: [
    'eigenvalue * sin(eigenvalue) == biot * cos(eigenvalue)',
    'coefficient == 4 * sin(eigenvalue) / (2 * eigenvalue + sin(2 * eigenvalue))',
    'middle == coefficient * exp(-eigenvalue^2 * fourier)',
    'surface == middle * cos(eigenvalue)',
  ],
  assumes: ['uniform start', 'constant coefficient'],
  valid: { 'Fourier number from 0.2, where one term is within 2 % in the middle and 4 % at the surface': ({ fourier }) => fourier >= 0.2 },
  source: [{ level: 'published', where: 'Çengel, Heat and Mass Transfer, table 4-2; Heisler 1947' }],
  si: ({ biot, fourier }) => {
    const z = bracketRoot((x) => x * Math.sin(x) - biot * Math.cos(x), 0, Math.PI / 2)
    const coefficient = (4 * Math.sin(z)) / (2 * z + Math.sin(2 * z))
    const middle = coefficient * Math.exp(-z * z * fourier)
    return { middle, surface: middle * Math.cos(z), eigenvalue: z, coefficient }
  },
})

/** How much more loss and torque a short run from cold may have than continuous duty, one time constant. */
export const shortTimeOverload = /* @__PURE__ */ formula('thermal.shortTimeOverload', {
  inputs: {
    /** How long the load lasts. */
    loadTime: { kind: 'time', above: 0 },
    /** Time constant. */
    timeConstant: { kind: 'time', above: 0 },
  },
  output: {
    /** Loss over the continuous loss. */
    loss: 'ratio',
    /** Torque over the continuous torque. */
    torque: 'ratio',
  },
  equation: ['loss = 1 / (1 - exp(-loadTime / timeConstant))', 'torque = sqrt(loss)'],
  assumes: ['one time constant; a winding on a mount has two, and the short one governs short loads', 'loss with the square of torque'],
  source: [{ level: 'published', where: 'duty type S2 of IEC 60034-1, single-body heating' }],
  si: ({ loadTime, timeConstant }) => {
    const loss = -1 / Math.expm1(-loadTime / timeConstant)
    return { loss, torque: Math.sqrt(loss) }
  },
})

/** How much more loss and torque a periodic duty may have than continuous duty, one time constant, at the peak of the settled cycle. */
export const intermittentOverload = /* @__PURE__ */ formula('thermal.intermittentOverload', {
  inputs: {
    /** Time under load in a cycle. */
    loadTime: { kind: 'time', above: 0 },
    /** Length of the cycle. */
    period: { kind: 'time', above: 0 },
    /** Time constant, the same under load and at rest. */
    timeConstant: { kind: 'time', above: 0 },
  },
  output: {
    /** Loss over the continuous loss. */
    loss: 'ratio',
    /** Torque over the continuous torque. */
    torque: 'ratio',
  },
  equation: ['loss = (1 - exp(-period / timeConstant)) / (1 - exp(-loadTime / timeConstant))', 'torque = sqrt(loss)'],
  assumes: ['one time constant', 'loss with the square of torque'],
  requires: { loadTime: { accepts: 'must be at most the period', holds: ({ loadTime, period }) => loadTime <= period } },
  source: [{ level: 'published', where: 'duty type S3 of IEC 60034-1, single-body heating' }],
  si: ({ loadTime, period, timeConstant }) => {
    const loss = Math.expm1(-period / timeConstant) / Math.expm1(-loadTime / timeConstant)
    return { loss, torque: Math.sqrt(loss) }
  },
})
