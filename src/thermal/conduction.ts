import { formula } from '../formula/index.js'
import { CONDUCTIVITY } from './solid-inputs.js'

const OUTER_RADIUS = {
  /** Outer radius. */
  outerRadius: { kind: 'length', above: 0 },
} as const

/** Thermal resistance of a flat layer. */
export const layerResistance = /* @__PURE__ */ formula('thermal.layerResistance', {
  inputs: {
    /** Thickness along the heat flow. */
    thickness: { kind: 'length', min: 0 },
    ...CONDUCTIVITY,
    /** Area across the heat flow. */
    area: { kind: 'area', above: 0 },
  },
  /** Resistance. */
  output: 'thermalResistance',
  equation: ['result = thickness / (conductivity * area)'],
  assumes: ['one-dimensional flow'],
  source: [{ level: 'published', where: "Fourier's law; any heat transfer text, plane wall" }],
  si: ({ thickness, conductivity, area }) => thickness / (conductivity * area),
})

/** Thermal resistance of a cylindrical shell, or of a disc of that height for flow along the radius. */
export const shellResistance = /* @__PURE__ */ formula('thermal.shellResistance', {
  inputs: {
    /** Inner radius. */
    innerRadius: { kind: 'length', above: 0 },
    ...OUTER_RADIUS,
    /** Length of the shell, or thickness of the disc. */
    length: { kind: 'length', above: 0 },
    ...CONDUCTIVITY,
  },
  /** Resistance. */
  output: 'thermalResistance',
  equation: ['result = log(outerRadius / innerRadius) / (2 * pi * conductivity * length)'],
  assumes: ['radial flow only'],
  requires: {
    innerRadius: { accepts: 'must be below the outer radius', holds: ({ innerRadius, outerRadius }) => innerRadius < outerRadius },
  },
  source: [{ level: 'published', where: 'any heat transfer text, cylindrical wall (Çengel, problem 3-94)' }],
  si: ({ innerRadius, outerRadius, length, conductivity }) => Math.log(outerRadius / innerRadius) / (2 * Math.PI * conductivity * length),
})

/** Thermal resistance of a surface to a fluid or of a joint: one over coefficient times area. */
export const surfaceResistance = /* @__PURE__ */ formula('thermal.surfaceResistance', {
  inputs: {
    /** Heat transfer or contact coefficient. */
    coefficient: { kind: 'heatTransferCoefficient', above: 0 },
    /** Area. */
    area: { kind: 'area', above: 0 },
  },
  /** Resistance. */
  output: 'thermalResistance',
  equation: ['result = 1 / (coefficient * area)'],
  source: [{ level: 'published', where: "Newton's law of cooling; any heat transfer text" }],
  si: ({ coefficient, area }) => 1 / (coefficient * area),
})

/** Area of a ring, such as the face on which a motor sits. */
export const ringArea = /* @__PURE__ */ formula('thermal.ringArea', {
  title: 'area of a ring',
  inputs: {
    /** Inner radius; 0 for a disc. */
    innerRadius: { kind: 'length', min: 0 },
    ...OUTER_RADIUS,
  },
  /** Area. */
  output: 'area',
  equation: ['result = pi * (outerRadius^2 - innerRadius^2)'],
  requires: {
    innerRadius: { accepts: 'must be below the outer radius', holds: ({ innerRadius, outerRadius }) => innerRadius < outerRadius },
  },
  source: [{ level: 'computed', where: 'geometry' }],
  si: ({ innerRadius, outerRadius }) => Math.PI * (outerRadius * outerRadius - innerRadius * innerRadius),
})

/**
 * Contact conductance of two rough metal faces under pressure, the softer deforming plastically, with the gas in the gap.
 *
 * Good to a factor of two or three in practice. For a polymer mount it rarely matters: the plate behind it resists twenty times more.
 */
export const contactConductance = /* @__PURE__ */ formula('thermal.contactConductance', {
  inputs: {
    /** Conductivity of the first body. */
    conductivity1: { kind: 'thermalConductivity', above: 0 },
    /** Conductivity of the second body. */
    conductivity2: { kind: 'thermalConductivity', above: 0 },
    /** Combined rms roughness, root of the sum of squares of both. */
    roughness: { kind: 'length', above: 0 },
    /** Combined mean absolute slope of the asperities. */
    slope: { kind: 'ratio', above: 0 },
    /** Contact pressure. */
    pressure: { kind: 'stress', min: 0 },
    /** Micro-hardness of the softer body. */
    hardness: { kind: 'stress', above: 0 },
    /** Conductivity of what fills the gap; 0 in vacuum. */
    gapConductivity: { kind: 'thermalConductivity', min: 0, default: '0 W/(m K)' },
    /** Effective thickness of the gap; about 1.5 to 3 times the roughness. */
    gapThickness: { kind: 'length', above: 0, optional: true },
  },
  output: {
    /** Through the solid spots. */
    solid: 'heatTransferCoefficient',
    /** Through the gap. */
    gap: 'heatTransferCoefficient',
    /** Both. */
    total: 'heatTransferCoefficient',
  },
  equation: [
    'meanConductivity = 2 * conductivity1 * conductivity2 / (conductivity1 + conductivity2)',
    'solid = 1.25 * meanConductivity * slope / roughness * (pressure / hardness)^0.95',
    'total == solid + gap',
  ],
  assumes: ['conforming rough surfaces, first loading, plastic asperities', 'gap assumed to be twice the roughness when not given'],
  valid: { 'pressure below a fiftieth of the hardness': ({ pressure, hardness }) => pressure <= 0.02 * hardness },
  source: [{ level: 'unverified', where: 'Cooper, Mikic & Yovanovich 1969, Yovanovich 1982: 1.25 k m/σ (P/H)^0.95' }],
  si: ({ conductivity1, conductivity2, roughness, slope, pressure, hardness, gapConductivity, gapThickness = 2 * roughness }) => {
    const k = (2 * conductivity1 * conductivity2) / (conductivity1 + conductivity2)
    const solid = ((1.25 * k * slope) / roughness) * (pressure / hardness) ** 0.95
    const gap = gapConductivity / gapThickness
    return { solid, gap, total: solid + gap }
  },
})

/** Biot number: whether one temperature describes a body (below about 0.1). A printed plate usually may not. */
export const biotNumber = /* @__PURE__ */ formula('thermal.biotNumber', {
  inputs: {
    /** Heat transfer coefficient. */
    coefficient: { kind: 'heatTransferCoefficient', min: 0 },
    /** Volume over cooled area: half the thickness of a plate cooled on both faces. */
    length: { kind: 'length', above: 0 },
    ...CONDUCTIVITY,
  },
  output: {
    /** Biot number. */
    biot: 'ratio',
    /** Whether one temperature will do. */
    state: { oneOf: ['lumped', 'distributed'] },
  },
  equation: ['biot = coefficient * length / conductivity'],
  source: [{ level: 'published', where: 'Çengel, Heat and Mass Transfer, section 4-1: lumped below 0.1' }],
  si: ({ coefficient, length, conductivity }) => {
    const biot = (coefficient * length) / conductivity
    return { biot, state: biot < 0.1 ? 'lumped' : 'distributed' }
  },
})
