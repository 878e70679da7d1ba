import { formula } from '../formula/index.js'
import { besselJ0, besselJ1 } from '../numeric/index.js'
import { PLATE_RADIUS, PLATE_THICKNESS } from './plate-inputs.js'
import { plateModes, PLATE_MODES as TERMS } from './plate-modes.js'

/** A plate by its ratios. */
const SPREADING_PLATE = {
  /** Plate thickness over plate radius. */
  thicknessRatio: { kind: 'ratio', above: 0 },
  /** Biot number: coefficient times plate radius over conductivity. */
  biot: { kind: 'ratio', above: 0 },
} as const

/** How the far face answers one mode: 1 for a thick plate, more when heat must turn back. */
const modeFactor = (x: number, thickness: number, biot: number) => {
  const t = Math.tanh(x * thickness)
  return (t + x / biot) / (1 + (x / biot) * t)
}

/**
 * Thermal resistance from a ring (or disc) on one face of a round plate to the fluid on the other face, by the exact series.
 *
 * The exact answer where only the far face is cooled: a plate clamped to a sink, a board. A printed plate cooled on both faces is
 * `mountPlate`. A square plate counts as the round one of equal area (1 % off in shape).
 */
export const ringSpreading = /* @__PURE__ */ formula('thermal.ringSpreading', {
  inputs: {
    /** Inner radius of the heated ring; 0 for a disc. */
    innerRadius: { kind: 'length', min: 0, default: '0 mm' },
    /** Outer radius of the heated ring. */
    outerRadius: { kind: 'length', above: 0 },
    ...PLATE_RADIUS,
    ...PLATE_THICKNESS,
    /** Conductivity of the plate. */
    conductivity: { kind: 'thermalConductivity', above: 0 },
    /** Coefficient on the far face. */
    coefficient: { kind: 'heatTransferCoefficient', above: 0 },
  },
  output: {
    /** Spreading alone, mean over the ring. */
    spreading: 'thermalResistance',
    /** Plate and film, as if heat entered over the whole face. */
    oneDimensional: 'thermalResistance',
    /** Sum: mean of the ring to the fluid. */
    total: 'thermalResistance',
  },
  assumes: ['uniform flux over the ring', 'rest of the near face and the rim adiabatic', 'uniform coefficient on the far face'],
  requires: {
    innerRadius: { accepts: 'must be below the outer radius', holds: ({ innerRadius, outerRadius }) => innerRadius < outerRadius },
    outerRadius: {
      accepts: 'must be at most the radius of the plate',
      holds: ({ outerRadius, plateRadius }) => outerRadius <= plateRadius,
    },
  },
  source: [{ level: 'computed', where: 'Fourier–Bessel series of the isoflux ring; for a disc the series of Lee, Song, Au & Moran 1995' }],
  si: ({ innerRadius: a1, outerRadius: a2, plateRadius: b, thickness, conductivity: k, coefficient }) => {
    const { zeros, squares } = plateModes()
    const biot = (coefficient * b) / k
    const tau = thickness / b
    let sum = 0
    for (let i = 0; i < TERMS; i++) {
      const x = zeros[i] as number
      const s = a2 * besselJ1((x * a2) / b) - a1 * besselJ1((x * a1) / b)
      sum += (s * s * modeFactor(x, tau, biot)) / (x * x * x * (squares[i] as number))
    }
    // Mean of the oscillating rest: J1² averages 1/(πx), J0² at the zeros is 2/(πx).
    const last = (TERMS + 0.75) * Math.PI
    sum += ((a1 + a2) * b) / (4 * Math.PI * last * last)
    const spread = a2 * a2 - a1 * a1
    const spreading = (4 * b * sum) / (Math.PI * k * spread * spread)
    const oneDimensional = (thickness / k + 1 / coefficient) / (Math.PI * b * b)
    return { spreading, oneDimensional, total: spreading + oneDimensional }
  },
})

/** What the modes above `last` add at the centre: half the integral of J1(u)/u from there on, spread over steps of π e. */
function centreOfRest(e: number, last: number): number {
  const y = last * e
  const half = (Math.PI / 2) * e
  const integral = besselJ0(y) / y + besselJ1(y) / (y * y) - (3 * besselJ0(y)) / y ** 3
  return (0.5 * integral * half) / Math.sin(half)
}

/** Dimensionless spreading resistance of a disc source, mean and at its centre, by the exact series: √π · conductivity · source radius · resistance. */
export const discSpreading = /* @__PURE__ */ formula('thermal.discSpreading', {
  inputs: {
    /** Source radius over plate radius. */
    sourceRatio: { kind: 'ratio', min: 0.01, max: 1 },
    ...SPREADING_PLATE,
  },
  output: {
    /** Mean over the source. */
    mean: 'ratio',
    /** At its centre. */
    centre: 'ratio',
  },
  assumes: ['uniform flux over the disc', 'near face elsewhere and rim adiabatic'],
  source: [{ level: 'unverified', where: 'Yovanovich; Lee, Song, Au & Moran 1995, series solution (derived again for this library)' }],
  si: ({ sourceRatio: e, thicknessRatio, biot }) => {
    const { zeros, squares } = plateModes()
    let mean = 0
    let centre = 0
    for (let i = 0; i < TERMS; i++) {
      const x = zeros[i] as number
      const j = besselJ1(x * e)
      const weight = modeFactor(x, thicknessRatio, biot) / (x * x * (squares[i] as number))
      mean += (j * j * weight) / x
      centre += j * weight
    }
    const last = (TERMS + 0.75) * Math.PI
    mean += 1 / (4 * Math.PI * e * last * last)
    centre += centreOfRest(e, last)
    return { mean: (4 / (Math.sqrt(Math.PI) * e)) * mean, centre: (2 / Math.sqrt(Math.PI)) * centre }
  },
})

/**
 * The closed form of disc spreading that hand calculations use. Against the series its mean is up to 15 % off and its peak up to 60 %: an estimate by name.
 */
export const discSpreadingEstimate = /* @__PURE__ */ formula('thermal.discSpreadingEstimate', {
  inputs: {
    /** Source radius over plate radius. */
    sourceRatio: { kind: 'ratio', above: 0, max: 1 },
    ...SPREADING_PLATE,
  },
  output: {
    /** Mean over the source, without the one-dimensional part that some printings add. */
    mean: 'ratio',
    /** Peak. */
    peak: 'ratio',
  },
  assumes: ['as the series'],
  valid: {
    'mean within a tenth, peak within a third: source ratio to 0.5, thickness ratio from 0.1': (x) =>
      x.sourceRatio <= 0.5 && x.thicknessRatio >= 0.1,
  },
  source: [{ level: 'published', where: 'Lee, Song, Au & Moran 1995, constriction/spreading resistance model, closed form' }],
  si: ({ sourceRatio: e, thicknessRatio, biot }) => {
    const factor = modeFactor(Math.PI + 1 / (Math.sqrt(Math.PI) * e), thicknessRatio, biot)
    return { mean: 0.5 * (1 - e) ** 1.5 * factor, peak: ((1 - e) * factor) / Math.sqrt(Math.PI) }
  },
})

/** Resistance from a disc on a body that is large in every direction. */
export const halfSpaceSpreading = /* @__PURE__ */ formula('thermal.halfSpaceSpreading', {
  inputs: {
    /** Radius of the source. */
    radius: { kind: 'length', above: 0 },
    /** Conductivity of the body. */
    conductivity: { kind: 'thermalConductivity', above: 0 },
  },
  output: {
    /** Source at one temperature. */
    isothermal: 'thermalResistance',
    /** Uniform flux, mean temperature of the source. */
    isofluxMean: 'thermalResistance',
    /** Uniform flux, temperature of its centre. */
    isofluxCentre: 'thermalResistance',
  },
  equation: [
    'isothermal = 1 / (4 * conductivity * radius)',
    'isofluxMean = 8 / (3 * pi^2 * conductivity * radius)',
    'isofluxCentre = 1 / (pi * conductivity * radius)',
  ],
  source: [{ level: 'published', where: 'Rohsenow, Hartnett & Cho, Handbook of Heat Transfer, 3rd ed., spreading resistances' }],
  si: ({ radius, conductivity }) => {
    const unit = 1 / (conductivity * radius)
    return { isothermal: 0.25 * unit, isofluxMean: (8 / (3 * Math.PI ** 2)) * unit, isofluxCentre: unit / Math.PI }
  },
})
