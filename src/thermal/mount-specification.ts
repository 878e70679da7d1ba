import type { Given, Si } from '../formula/index.js'
import { SURROUNDINGS } from './surface.js'

const BODY = {
  /** Outer diameter of the rotating can, with its magnets. */
  canDiameter: { kind: 'length', above: 0 },
  /** Length of the can along the shaft. */
  canLength: { kind: 'length', above: 0 },
  /** Emissivity of the can's surface, 0 to 1. Default 0.6. */
  canEmissivity: { kind: 'ratio', min: 0, max: 1, default: 0.6 },
  /** Inner diameter of the ring by which the motor touches the plate. Default 0: a full disc. */
  ringInnerDiameter: { kind: 'length', min: 0, default: '0 mm' },
  /** Outer diameter of that ring. It must fit on the plate both ways. */
  ringOuterDiameter: { kind: 'length', above: 0 },
  /** Mass of the whole motor. What winding, stator and can leave is the mass of the base. */
  mass: { kind: 'mass', above: 0 },
  /** Mass of the copper winding. */
  windingMass: { kind: 'mass', above: 0 },
  /** Mass of the stator's iron. */
  statorMass: { kind: 'mass', above: 0 },
  /** Mass of the rotating can with its magnets. */
  canMass: { kind: 'mass', above: 0 },
  /** Thermal resistance from the winding to the stator, K/W. */
  windingToStator: { kind: 'thermalResistance', above: 0 },
  /** Thermal resistance from the stator to the can across the air gap, K/W. */
  statorToCan: { kind: 'thermalResistance', above: 0 },
  /** Thermal resistance from the stator to the motor's base, K/W. Default 0. */
  statorToBase: { kind: 'thermalResistance', min: 0, default: '0 K/W' },
} as const

const PLATE = {
  /** Width of the plate. The longer side may be at most five times the shorter one. */
  width: { kind: 'length', above: 0 },
  /** Height of the plate: the vertical side where the plate is vertical. */
  height: { kind: 'length', above: 0 },
  /** Thickness of the plate. */
  thickness: { kind: 'length', above: 0 },
  /** Thermal conductivity along the plate's faces. */
  conductivity: { kind: 'thermalConductivity', above: 0 },
  /** Thermal conductivity across the printed layers, through the thickness. Default: that along the faces. */
  conductivityAcross: { kind: 'thermalConductivity', above: 0, optional: true },
  /** Density of the plate as printed. */
  density: { kind: 'density', above: 0 },
  /** Specific heat of the plate's material. */
  specificHeat: { kind: 'specificHeat', above: 0 },
  /** Emissivity of both faces, 0 to 1. Default 0.9. */
  emissivity: { kind: 'ratio', min: 0, max: 1, default: 0.9 },
  /** Contact coefficient between the motor's ring and the plate. Default 1500 W/(m² K). */
  contact: { kind: 'heatTransferCoefficient', above: 0, default: '1500 W/(m^2 K)' },
  /** How the plate stands: vertical, or horizontal with the motor above (`motorUp`) or below (`motorDown`). Default vertical. */
  attitude: { oneOf: ['vertical', 'motorUp', 'motorDown'], default: 'vertical' },
} as const

const INSERT = {
  /** Diameter of the disc: at least the outer diameter of the motor's ring. */
  diameter: { kind: 'length', above: 0 },
  /** Thickness of the disc: less than that of the plate. */
  thickness: { kind: 'length', above: 0 },
  /** Thermal conductivity of the disc. Default 167 W/(m K), a common aluminium alloy. */
  conductivity: { kind: 'thermalConductivity', above: 0, default: '167 W/(m K)' },
  /** Density of the disc. Default 2700 kg/m³. */
  density: { kind: 'density', above: 0, default: '2700 kg/m^3' },
  /** Specific heat of the disc. Default 896 J/(kg K). */
  specificHeat: { kind: 'specificHeat', above: 0, default: '896 J/(kg K)' },
  /** Contact coefficient between the disc and the plate. Default 1500 W/(m² K). */
  contact: { kind: 'heatTransferCoefficient', above: 0, default: '1500 W/(m^2 K)' },
} as const

const LINK = {
  /** Length of the bar from the mount to its far end. */
  length: { kind: 'length', above: 0 },
  /** Perimeter of the bar's section, which the air touches. */
  perimeter: { kind: 'length', above: 0 },
  /** Area of the bar's section, which carries the heat. */
  section: { kind: 'area', above: 0 },
  /** Thermal conductivity along the bar. */
  conductivity: { kind: 'thermalConductivity', above: 0 },
  /** Emissivity of the bar, 0 to 1. Default 0.9. */
  emissivity: { kind: 'ratio', min: 0, max: 1, default: 0.9 },
} as const

const SINK = {
  /** The part that the sink is fixed to: the mount or the stator. Default the mount. */
  on: { oneOf: ['mount', 'stator'], default: 'mount' },
  /** Width of the sink across its fins. */
  width: { kind: 'length', above: 0 },
  /** Height of the sink along its upright fins. */
  height: { kind: 'length', above: 0 },
  /** Length of a fin from its root to its tip. */
  finLength: { kind: 'length', above: 0 },
  /** Thickness of a fin. */
  finThickness: { kind: 'length', above: 0 },
  /** Number of fins, at least 2. They must leave room between them. */
  fins: { kind: 'count', min: 2, whole: true },
  /** Thickness of the base that the fins stand on. */
  baseThickness: { kind: 'length', above: 0 },
  /** Thermal conductivity of the sink. Default 167 W/(m K), a common aluminium alloy. */
  conductivity: { kind: 'thermalConductivity', above: 0, default: '167 W/(m K)' },
  /** Density of the sink. Default 2700 kg/m³. */
  density: { kind: 'density', above: 0, default: '2700 kg/m^3' },
  /** Specific heat of the sink. Default 896 J/(kg K). */
  specificHeat: { kind: 'specificHeat', above: 0, default: '896 J/(kg K)' },
  /** Emissivity of the sink, 0 to 1. Default 0.8. */
  emissivity: { kind: 'ratio', min: 0, max: 1, default: 0.8 },
  /** Thermal resistance of the joint between the sink and its part, K/W. */
  joint: { kind: 'thermalResistance', above: 0 },
} as const

const CONTROLLER = {
  /** Area of the board that sheds heat, both faces together. */
  area: { kind: 'area', above: 0 },
  /** Height of the board, which is assumed to be vertical. */
  height: { kind: 'length', above: 0 },
  /** Emissivity of the board, 0 to 1. Default 0.9. */
  emissivity: { kind: 'ratio', min: 0, max: 1, default: 0.9 },
  /** Mass of the board. */
  mass: { kind: 'mass', above: 0 },
  /** Specific heat of the board. Default 900 J/(kg K). */
  specificHeat: { kind: 'specificHeat', above: 0, default: '900 J/(kg K)' },
  /** Power that the controller draws with no motor current. Default 0. */
  quiescent: { kind: 'power', min: 0, default: '0 W' },
  /** On-resistance of one switch of the bridge at 25 °C. */
  switchResistance: { kind: 'electricalResistance', min: 0 },
  /** Relative rise of the switch's resistance for each kelvin. Default 0.5 %/K. */
  resistanceCoefficient: { kind: 'temperatureCoefficient', min: 0, default: '0.5 %/K' },
  /** Thermal resistance from the junction of one switch to the board, K/W. Default 0. */
  junctionToBoard: { kind: 'thermalResistance', min: 0, default: '0 K/W' },
  /** DC voltage of the supply, for the switching loss. Default 0: no switching loss. */
  supplyVoltage: { kind: 'voltage', min: 0, default: '0 V' },
  /** Frequency at which the bridge switches. Default 0: no switching loss. */
  switchingFrequency: { kind: 'frequency', min: 0, default: '0 Hz' },
  /** Time of one rising or falling edge of the switches' voltage. Default 0. */
  edgeTime: { kind: 'time', min: 0, default: '0 s' },
  /** Thermal conductance from the board to the mount, W/K. */
  toMount: { kind: 'thermalConductance', above: 0 },
} as const

/** Everything the ready-made network is built from. */
export const MOUNT = {
  /** The motor's body: sizes, masses and inner heat paths. */
  body: { fields: BODY },
  /** The printed plate that the motor is bolted to. */
  plate: { fields: PLATE },
  /** A metal disc sunk into the plate under the motor. Default: none. */
  insert: { fields: INSERT, optional: true },
  /** Bars that carry heat from the mount into the leg. Default: none. */
  links: { list: { fields: LINK }, optional: true },
  /** A plate-fin sink with upright fins. Default: none. */
  sink: { fields: SINK, optional: true },
  /** A controller board near the mount. Default: none. */
  controller: { fields: CONTROLLER, optional: true },
  /** Air and what the surfaces see. */
  surroundings: { fields: SURROUNDINGS },
  /** Whether the turning can sheds more heat with its speed. Default no, which suits a leg that holds still. */
  rotationCools: { flag: true, default: false },
  /** Relative 95 % half-width of every contact coefficient. Default 0.6. */
  contactScatter: { kind: 'ratio', min: 0, default: 0.6 },
  /** Relative 95 % half-width of the plate's conductivity. Default 0.3. */
  conductivityScatter: { kind: 'ratio', min: 0, default: 0.3 },
  /** Relative 95 % half-width of the motor's inner resistances. Default 0.3. */
  internalScatter: { kind: 'ratio', min: 0, default: 0.3 },
  /** Relative 95 % half-width of every heat capacity. Default 0.15. */
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
