import { formula } from '../formula/index.js'
import { AIR_PRESSURE, EMISSIVITY } from './film-inputs.js'
import { convectionAt, radiationAt } from './surface.js'

/** Heat transfer coefficient of a surface in air: still air or a stream, whichever is stronger, and radiation. */
export const surfaceCoefficient = /* @__PURE__ */ formula('thermal.surfaceCoefficient', {
  inputs: {
    /** Shape of the surface. */
    shape: { oneOf: ['verticalPlate', 'horizontalCylinder', 'plateUp', 'plateDown'] },
    /** Height, diameter, or area over perimeter. */
    length: { kind: 'length', above: 0 },
    /** Temperature of the surface. */
    temperature: { kind: 'temperature', min: '-60 degC', max: '600 degC' },
    /** Temperature of the air. */
    air: { kind: 'temperature', min: '-60 degC', max: '200 degC' },
    /** Temperature of what the surface sees. */
    radiant: { kind: 'temperature', min: 0 },
    /** Speed of the air over the surface. */
    airSpeed: { kind: 'velocity', min: 0, default: '0 m/s' },
    ...AIR_PRESSURE,
    ...EMISSIVITY,
    /** Factor on both parts, such as that of a calibration. */
    factor: { kind: 'ratio', above: 0, default: 1 },
  },
  output: {
    /** Convection, on the difference of surface and air. */
    convection: 'heatTransferCoefficient',
    /** Radiation, on the difference of surface and what it sees. */
    radiation: 'heatTransferCoefficient',
    /** Both. */
    total: 'heatTransferCoefficient',
  },
  equation: ['total == convection + radiation'],
  assumes: ['still air and stream do not add: the stronger counts, which errs on the hot side'],
  source: [{ level: 'computed', where: 'naturalConvection, nusseltFlatPlate or nusseltCylinderCrossflow, radiationCoefficient' }],
  si: ({ shape, length, temperature, air, radiant, airSpeed, pressure, emissivity, factor }) => {
    const convection = factor * convectionAt(shape, length, temperature, { air, radiant, airSpeed, pressure })
    const radiation = factor * radiationAt(emissivity, temperature, radiant)
    return { convection, radiation, total: convection + radiation }
  },
})
