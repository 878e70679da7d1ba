import type { Given, Si } from '../formula/index.js'
import { SURROUNDINGS } from './surface.js'

const BODY = {
  canDiameter: { kind: 'length', above: 0 },
  canLength: { kind: 'length', above: 0 },
  canEmissivity: { kind: 'ratio', min: 0, max: 1, default: 0.6 },
  ringInnerDiameter: { kind: 'length', min: 0, default: '0 mm' },
  ringOuterDiameter: { kind: 'length', above: 0 },
  mass: { kind: 'mass', above: 0 },
  windingMass: { kind: 'mass', above: 0 },
  statorMass: { kind: 'mass', above: 0 },
  canMass: { kind: 'mass', above: 0 },
  windingToStator: { kind: 'thermalResistance', above: 0 },
  statorToCan: { kind: 'thermalResistance', above: 0 },
  statorToBase: { kind: 'thermalResistance', min: 0, default: '0 K/W' },
} as const

const PLATE = {
  width: { kind: 'length', above: 0 },
  height: { kind: 'length', above: 0 },
  thickness: { kind: 'length', above: 0 },
  conductivity: { kind: 'thermalConductivity', above: 0 },
  conductivityAcross: { kind: 'thermalConductivity', above: 0, optional: true },
  density: { kind: 'density', above: 0 },
  specificHeat: { kind: 'specificHeat', above: 0 },
  emissivity: { kind: 'ratio', min: 0, max: 1, default: 0.9 },
  contact: { kind: 'heatTransferCoefficient', above: 0, default: '1500 W/(m^2 K)' },
  attitude: { oneOf: ['vertical', 'motorUp', 'motorDown'], default: 'vertical' },
} as const

const INSERT = {
  diameter: { kind: 'length', above: 0 },
  thickness: { kind: 'length', above: 0 },
  conductivity: { kind: 'thermalConductivity', above: 0, default: '167 W/(m K)' },
  density: { kind: 'density', above: 0, default: '2700 kg/m^3' },
  specificHeat: { kind: 'specificHeat', above: 0, default: '896 J/(kg K)' },
  contact: { kind: 'heatTransferCoefficient', above: 0, default: '1500 W/(m^2 K)' },
} as const

const LINK = {
  length: { kind: 'length', above: 0 },
  perimeter: { kind: 'length', above: 0 },
  section: { kind: 'area', above: 0 },
  conductivity: { kind: 'thermalConductivity', above: 0 },
  emissivity: { kind: 'ratio', min: 0, max: 1, default: 0.9 },
} as const

const SINK = {
  on: { oneOf: ['mount', 'stator'], default: 'mount' },
  width: { kind: 'length', above: 0 },
  height: { kind: 'length', above: 0 },
  finLength: { kind: 'length', above: 0 },
  finThickness: { kind: 'length', above: 0 },
  fins: { kind: 'count', min: 2, whole: true },
  baseThickness: { kind: 'length', above: 0 },
  conductivity: { kind: 'thermalConductivity', above: 0, default: '167 W/(m K)' },
  density: { kind: 'density', above: 0, default: '2700 kg/m^3' },
  specificHeat: { kind: 'specificHeat', above: 0, default: '896 J/(kg K)' },
  emissivity: { kind: 'ratio', min: 0, max: 1, default: 0.8 },
  joint: { kind: 'thermalResistance', above: 0 },
} as const

const CONTROLLER = {
  area: { kind: 'area', above: 0 },
  height: { kind: 'length', above: 0 },
  emissivity: { kind: 'ratio', min: 0, max: 1, default: 0.9 },
  mass: { kind: 'mass', above: 0 },
  specificHeat: { kind: 'specificHeat', above: 0, default: '900 J/(kg K)' },
  quiescent: { kind: 'power', min: 0, default: '0 W' },
  switchResistance: { kind: 'electricalResistance', min: 0 },
  resistanceCoefficient: { kind: 'temperatureCoefficient', min: 0, default: '0.5 %/K' },
  junctionToBoard: { kind: 'thermalResistance', min: 0, default: '0 K/W' },
  supplyVoltage: { kind: 'voltage', min: 0, default: '0 V' },
  switchingFrequency: { kind: 'frequency', min: 0, default: '0 Hz' },
  edgeTime: { kind: 'time', min: 0, default: '0 s' },
  toMount: { kind: 'thermalConductance', above: 0 },
} as const

/** Everything the ready-made network is built from. */
export const MOUNT = {
  body: { fields: BODY },
  plate: { fields: PLATE },
  insert: { fields: INSERT, optional: true },
  links: { list: { fields: LINK }, optional: true },
  sink: { fields: SINK, optional: true },
  controller: { fields: CONTROLLER, optional: true },
  surroundings: { fields: SURROUNDINGS },
  rotationCools: { flag: true, default: false },
  contactScatter: { kind: 'ratio', min: 0, default: 0.6 },
  conductivityScatter: { kind: 'ratio', min: 0, default: 0.3 },
  internalScatter: { kind: 'ratio', min: 0, default: 0.3 },
  capacityScatter: { kind: 'ratio', min: 0, default: 0.15 },
} as const

/**
 * A motor on its printed plate, by geometry and materials.
 *
 * `body`: the motor; can, ring on which it sits, masses of winding (copper), stator and can, and the resistances between them. `plate`: width
 * and height of the plate (a side ratio up to 5), its conductivity along its faces and across its layers, its other material values, the contact coefficient under the
 * ring and its attitude (which face is up). `insert`: a metal disc sunk
 * into the motor's face. `links`: bars that carry heat from the mount into the leg. `sink`: an upright plate-fin sink on the mount or the stator
 * through a `joint`. `controller`: a board near the mount. `surroundings`: air, radiant temperature, altitude, air speed. `rotationCools`: count
 * the turning can (off by default: a leg that holds still has none). The scatters are relative 95 % half-widths of what is
 * least known: contacts, the plate's conductivity, the motor's inner resistances, heat capacities.
 */
export type MountSpecification = Given<typeof MOUNT>

/** The same in SI. */
export type MountNumbers = Si<typeof MOUNT>
