import { formula } from '../formula/index.js'
import { besselI0Scaled, besselI1Scaled, besselK0Scaled, besselK1Scaled } from '../numeric/index.js'
import { CONDUCTIVITY } from './solid-inputs.js'

const THICKNESS = {
  /** Thickness. */
  thickness: { kind: 'length', above: 0 },
} as const

const COEFFICIENT = {
  /** Coefficient on its faces. */
  coefficient: { kind: 'heatTransferCoefficient', above: 0 },
} as const

/** Straight fin of constant thickness, cooled on both faces, tip counted by half a thickness of extra length. */
export const straightFin = /* @__PURE__ */ formula('thermal.straightFin', {
  inputs: {
    /** Height from root to tip. */
    length: { kind: 'length', above: 0 },
    /** Width along the root. */
    width: { kind: 'length', above: 0 },
    ...THICKNESS,
    ...CONDUCTIVITY,
    ...COEFFICIENT,
  },
  output: {
    /** Fin efficiency: heat shed over that of a fin all at root temperature. */
    efficiency: 'ratio',
    /** Area counted, faces and tip. */
    area: 'area',
    /** Root to fluid. */
    conductance: 'thermalConductance',
  },
  equation: [
    'correctedLength = length + thickness / 2',
    'x = correctedLength * sqrt(2 * coefficient / (conductivity * thickness))',
    'efficiency = tanh(x) / x',
    'area = 2 * width * correctedLength',
    'conductance = efficiency * area * coefficient',
  ],
  assumes: ['one-dimensional along the fin', 'ends of the width not counted'],
  valid: { 'Biot number across half the thickness below 0.1': (x) => (x.coefficient * x.thickness) / 2 / x.conductivity < 0.1 },
  source: [
    {
      level: 'published',
      where: 'Incropera, Fundamentals of Heat and Mass Transfer, section 3.6; Çengel, finned circuit board example of ch. 3',
    },
  ],
  si: ({ length, width, thickness, conductivity, coefficient }) => {
    const corrected = length + thickness / 2
    const x = corrected * Math.sqrt((2 * coefficient) / (conductivity * thickness))
    const efficiency = Math.tanh(x) / x
    const area = 2 * width * corrected
    return { efficiency, area, conductance: efficiency * area * coefficient }
  },
})

/** Pin or bar fin of constant section: a cooling pin, or a leg link that carries heat away from the mount and sheds it along its length. */
export const barFin = /* @__PURE__ */ formula('thermal.barFin', {
  inputs: {
    /** Length. */
    length: { kind: 'length', above: 0 },
    /** Perimeter that is cooled. */
    perimeter: { kind: 'length', above: 0 },
    /** Section that conducts. */
    section: { kind: 'area', above: 0 },
    /** Conductivity along the bar. */
    conductivity: { kind: 'thermalConductivity', above: 0 },
    /** Coefficient on its surface. */
    coefficient: { kind: 'heatTransferCoefficient', above: 0 },
  },
  output: {
    /** Fin efficiency. */
    efficiency: 'ratio',
    /** Root to fluid. */
    conductance: 'thermalConductance',
  },
  equation: [
    'correctedLength = length + section / perimeter',
    'x = correctedLength * sqrt(coefficient * perimeter / (conductivity * section))',
    'efficiency = tanh(x) / x',
    'conductance = efficiency * coefficient * perimeter * correctedLength',
  ],
  assumes: ['one-dimensional along the bar', 'tip counted by extra length, section over perimeter'],
  source: [{ level: 'published', where: 'Incropera, Fundamentals of Heat and Mass Transfer, section 3.6, fins of uniform section' }],
  si: ({ length, perimeter, section, conductivity, coefficient }) => {
    const corrected = length + section / perimeter
    const x = corrected * Math.sqrt((coefficient * perimeter) / (conductivity * section))
    const efficiency = Math.tanh(x) / x
    return { efficiency, conductance: efficiency * coefficient * perimeter * corrected }
  },
})

/**
 * Annular fin of constant thickness, cooled on both faces, adiabatic at its rim: a metal flange round a motor.
 *
 * For a printed plate under a motor this and a disc inside the ring give a third too little resistance: use `mountPlate`.
 */
export const annularFin = /* @__PURE__ */ formula('thermal.annularFin', {
  inputs: {
    /** Radius of the root. */
    innerRadius: { kind: 'length', above: 0 },
    /** Radius of the rim; add half the thickness to count the rim's own area. */
    outerRadius: { kind: 'length', above: 0 },
    ...THICKNESS,
    ...CONDUCTIVITY,
    ...COEFFICIENT,
  },
  output: {
    /** Fin efficiency. */
    efficiency: 'ratio',
    /** Area of both faces. */
    area: 'area',
    /** Root to fluid. */
    conductance: 'thermalConductance',
  },
  assumes: ['one-dimensional along the radius', 'rim adiabatic'],
  requires: {
    innerRadius: { accepts: 'must be below the outer radius', holds: ({ innerRadius, outerRadius }) => innerRadius < outerRadius },
  },
  valid: {
    'Biot number across half the thickness below 0.1': (x) => (x.coefficient * x.thickness) / 2 / x.conductivity < 0.1,
  },
  source: [{ level: 'published', where: 'Incropera, Fundamentals of Heat and Mass Transfer, eq. 3.91, annular fin' }],
  si: ({ innerRadius, outerRadius, thickness, conductivity, coefficient }) => {
    const m = Math.sqrt((2 * coefficient) / (conductivity * thickness))
    const x = m * innerRadius
    const y = m * outerRadius
    // Scaled functions: I grows and K falls as exp(x), and their products carry exp(±(y − x)); divided through by exp(y − x).
    const fall = Math.exp(2 * (x - y))
    const across = besselK1Scaled(x) * besselI1Scaled(y) - fall * besselI1Scaled(x) * besselK1Scaled(y)
    const down = besselK0Scaled(x) * besselI1Scaled(y) + fall * besselI0Scaled(x) * besselK1Scaled(y)
    const conductance = (2 * Math.PI * conductivity * innerRadius * thickness * m * across) / down
    const area = 2 * Math.PI * (outerRadius * outerRadius - innerRadius * innerRadius)
    return { efficiency: conductance / (coefficient * area), area, conductance }
  },
})
