import { type MountSpecification, motor, motorMount, type PartLimit } from '../../src/thermal/index.js'

/** An invented outrunner of 110 rpm/V. */
export const demoMotor = () =>
  motor({
    speedConstant: '110 rpm/V',
    speedConstantBasis: 'catalogue',
    terminalResistance: '0.18 ohm',
    noLoad: [{ voltage: '22 V', current: '0.5 A', speed: '2350 rpm' }],
    polePairs: 7,
    inertia: '120 g cm^2',
  })

/** Its mount on a printed ASA plate of 7 mm in still air: invented too. */
export const demoSpecification = {
  body: {
    canDiameter: '52 mm',
    canLength: '22 mm',
    canEmissivity: 0.6,
    ringInnerDiameter: '12 mm',
    ringOuterDiameter: '35 mm',
    mass: '210 g',
    windingMass: '55 g',
    statorMass: '70 g',
    canMass: '65 g',
    windingToStator: '0.8 K/W',
    statorToCan: '6 K/W',
    statorToBase: '0.3 K/W',
  },
  plate: {
    width: '80 mm',
    height: '80 mm',
    thickness: '7 mm',
    conductivity: '0.2 W/(m K)',
    density: '1070 kg/m^3',
    specificHeat: '1300 J/(kg K)',
  },
  controller: {
    area: '3200 mm^2',
    height: '40 mm',
    mass: '15 g',
    quiescent: '0.6 W',
    switchResistance: '3 mohm',
    supplyVoltage: '22 V',
    switchingFrequency: '24 kHz',
    edgeTime: '20e-3 us',
    toMount: '0.02 W/K',
  },
  surroundings: { air: '38 degC' },
} as const satisfies MountSpecification

export const demoLimits: readonly PartLimit[] = [
  { part: 'plate', node: 'mount', limit: '85 degC' },
  { part: 'magnets', node: 'can', limit: '80 degC' },
  { part: 'winding', node: 'hottestPhase', limit: '130 degC' },
  { part: 'board', node: 'board', limit: '85 degC' },
]

export const demoMount = (specification: MountSpecification = demoSpecification) => motorMount(demoMotor(), specification)
