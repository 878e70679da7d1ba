import { motorConstant } from '../../thermal/index.js'
import { entriesOf, type PartlyLeg } from '../document/partly.js'
import { type Relation, type Relations, ratio, si } from './relation.js'

type Motor = NonNullable<NonNullable<PartlyLeg['motors']>[string]>

// The ranges are common practice: brushless motors from 20 g to 3 kg, outrunners, inrunners and flat ones, lie well inside.

/** A motor is a body of iron and copper, and its constants follow from its size. */
export const motorRelations: Relations = ({ motors, controllers, joints, supply }, add) => {
  for (const [name, motor] of entriesOf(motors)) {
    for (const one of bodyOf(`motors.${name}`, motor)) add(one)
    for (const one of constantsOf(`motors.${name}`, motor)) add(one)
    for (const one of heatOf(`motors.${name}`, motor)) add(one)
  }
  for (const joint of ['sidewaysHip', 'hip', 'knee'] as const) {
    const { motor = '', controller = '' } = joints?.[joint] ?? {}
    const [limit, resistance] = [controllers?.[controller]?.currentLimit, motors?.[motor]?.terminalResistance]
    add({
      path: `controllers.${controller}.currentLimit`,
      value: limit,
      others: [`motors.${motor}.terminalResistance`, 'supply.voltage'],
      what: `the current limit of the ${joint === 'sidewaysHip' ? 'sideways hip' : joint} over the current of its motor held still at the full voltage`,
      is: (si(limit) * si(resistance)) / si(supply?.voltage),
      kind: 'ratio',
      usual: [0.004, 1.05],
    })
  }
}

const volumeOf = ({ canDiameter, canLength }: Motor) => (Math.PI / 4) * si(canDiameter) ** 2 * si(canLength)

const bodyOf = (path: string, motor: Motor): Relation[] => [
  {
    path: `${path}.mass`,
    value: motor.mass,
    others: [`${path}.canDiameter`, `${path}.canLength`],
    what: 'the mass of the motor over the volume of its can',
    is: si(motor.mass) / volumeOf(motor),
    kind: 'density',
    usual: [900, 8500],
    possible: [100, 15_000],
  },
  {
    path: `${path}.rotorInertia`,
    value: motor.rotorInertia,
    others: [`${path}.mass`, `${path}.canDiameter`],
    what: 'the inertia of the rotor over that of the whole motor put at the radius of its can',
    is: si(motor.rotorInertia) / (si(motor.mass) * (si(motor.canDiameter) / 2) ** 2),
    kind: 'ratio',
    usual: [0.012, 0.7],
    possible: [1e-4, 1],
  },
  ratio(
    [`${path}.canLength`, motor.canLength],
    [`${path}.canDiameter`, motor.canDiameter],
    'the length of the can over its diameter',
    [0.1, 4.5],
  ),
  ratio(
    [`${path}.mountOuterDiameter`, motor.mountOuterDiameter],
    [`${path}.canDiameter`, motor.canDiameter],
    'the mounting ring over the can',
    [0.15, 1.6],
  ),
  ...((motor.mountInnerDiameter?.si ?? 0) > 0
    ? [
        ratio(
          [`${path}.mountInnerDiameter`, motor.mountInnerDiameter],
          [`${path}.mountOuterDiameter`, motor.mountOuterDiameter],
          'the inner over the outer diameter of the mounting ring',
          [0.05, 0.97],
        ),
      ]
    : []),
]

/** Copper in a can of this size, in the field of its magnets, bounds torque over the root of the loss: its square over volume and squared diameter. */
const OF_SIZE = [1e4, 1.2e6] as const
const OF_ANY_SIZE = [30, 1.3e7] as const

function constantsOf(path: string, motor: Motor): Relation[] {
  const { speedConstant, terminalResistance, canDiameter, phaseInductance, noLoadCurrent, noLoadVoltage } = motor
  const km = motorConstant.si({ backEmfConstant: 1 / si(speedConstant), terminalResistance: si(terminalResistance) })
  const size = volumeOf(motor) * si(canDiameter) ** 2
  const [kv, ohms] = [`${path}.speedConstant`, `${path}.terminalResistance`]
  return [
    {
      path: kv,
      value: speedConstant,
      others: [ohms, `${path}.canDiameter`, `${path}.canLength`],
      what: 'the motor constant that follows for a can of this size',
      is: km,
      kind: 'motorConstant',
      usual: [Math.sqrt(OF_SIZE[0] * size), Math.sqrt(OF_SIZE[1] * size)],
      possible: [Math.sqrt(OF_ANY_SIZE[0] * size), Math.sqrt(OF_ANY_SIZE[1] * size)],
    },
    {
      path: ohms,
      value: terminalResistance,
      others: [kv, `${path}.rotorInertia`],
      what: 'the mechanical time constant of the motor',
      is: si(motor.rotorInertia) / km ** 2,
      kind: 'time',
      usual: [1.5e-4, 0.03],
    },
    ...((phaseInductance?.si ?? 0) > 0
      ? [
          {
            path: `${path}.phaseInductance`,
            value: phaseInductance,
            others: [ohms],
            what: 'the electrical time constant of the motor',
            is: (2 * si(phaseInductance)) / si(terminalResistance),
            kind: 'time',
            usual: [1.5e-4, 0.007],
          } as const,
        ]
      : []),
    ...((noLoadCurrent?.si ?? 0) > 0
      ? [
          {
            path: `${path}.noLoadCurrent`,
            value: noLoadCurrent,
            others: [`${path}.noLoadVoltage`, ohms],
            what: 'the no-load current over the current of the motor held still at the same voltage',
            is: (si(noLoadCurrent) * si(terminalResistance)) / si(noLoadVoltage),
            kind: 'ratio',
            usual: [6e-4, 0.09],
          } as const,
        ]
      : []),
  ]
}

/** A heavier motor conducts its heat better, about as its mass. */
const heatOf = (path: string, motor: Motor): Relation[] =>
  (
    [
      ['windingToMount', 'from winding to mount', [0.04, 2]],
      ['mountToCan', 'from mount to can', [0.1, 7]],
    ] as const
  ).map(([field, way, [low, high]]) => ({
    path: `${path}.${field}`,
    value: motor[field],
    others: [`${path}.mass`],
    what: `the thermal resistance ${way} of a motor of this mass`,
    is: si(motor[field]),
    kind: 'thermalResistance',
    usual: [low / si(motor.mass), high / si(motor.mass)],
  }))
