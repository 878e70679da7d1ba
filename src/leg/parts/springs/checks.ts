import { currentsForTorque, magnetDerating } from '../../../thermal/index.js'
import { type Check, ofPart } from '../../cases/check.js'
import type { LegNumbers } from '../../leg-numbers.js'
import type { Joint } from '../../numbers.js'
import { line, value } from '../../run/index.js'
import { currentLimit } from '../controllers/fields.js'
import { stance } from '../load/stance.js'
import { strengthInAir } from '../materials/in-air.js'
import * as motor from '../motors/fields.js'
import { coldEmf, motorTorqueAlone } from '../motors/values.js'
import * as spring from './fields.js'
import { pinBending, pinPressure, quietFrequency, roomInCoil, seatPressure } from './strength.js'
import { wireChecks } from './wire-checks.js'

const strideRate = line(
  'strides a second',
  { speed: 'velocity', step: 'length', duty: 'ratio' },
  'frequency',
  'speed · duty / step',
  (x) => (x.speed * x.duty) / x.step,
)

/** Without its spring a motor gets as hot as it may: how warm it is with the spring must not count. */
const currentAlone = value('spring.currentAlone', ['joint', 'event'], (use) => {
  const { backEmfConstant } = use.run(magnetDerating, {
    backEmfConstant: use(coldEmf),
    magnetTemperature: use(motor.magnetLimit),
    coefficient: use(motor.magnetCoefficient),
  })
  return use.run(currentsForTorque, { torque: use(motorTorqueAlone), backEmfConstant }).peakPhase
})

/** Checks of any spring. */
const ofBoth: readonly Check[] = [
  {
    id: 'spring.lost',
    part: 'spring',
    mode: 'breaks and leaves the motor alone with the joint',
    consequence: 'fails to work',
    kind: 'peakPhaseCurrent',
    scope: 'joint',
    when: ['daily'],
    demand: currentAlone,
    capacity: value('spring.controllerLimit', ['joint'], (use) => use(currentLimit)),
    demandIs: 'the peak phase current of the largest torque without any spring, with magnets as hot as they may be',
    capacityIs: 'the current limit that is set',
    remedy: 'a softer spring that carries less of the load, or a stronger drive',
    requiredReserve: 1,
  },
]
const ofTorsion: readonly Check[] = [
  ...wireChecks('torsion'),
  {
    id: 'spring.mandrel',
    part: 'coil of the torsion spring',
    mode: 'closes on the pin in it',
    consequence: 'breaks',
    kind: 'length',
    scope: 'joint',
    when: ['asBuilt'],
    demand: value('spring.mandrelDiameter', ['joint'], (use) => use(spring.mandrel) as number),
    capacity: roomInCoil,
    unless: value('spring.noMandrel', ['joint'], (use) =>
      use(spring.mandrel) === undefined ? 'the pin or sleeve in the coil (mandrel of the spring) is not given' : undefined,
    ),
    demandIs: 'the diameter of the pin or sleeve in the coil',
    capacityIs: 'the inner diameter of the coil where it is wound most',
    remedy: 'a thinner pin, a wider coil, or more coils',
    requiredReserve: 1.05,
  },
  {
    id: 'spring.seat',
    part: 'seat of the legs of the spring',
    mode: 'is dented',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['keepsTension'],
    demand: seatPressure,
    capacity: value('spring.seatStrength', ['joint', 'event', 'air'], (use) =>
      use.at(strengthInAir.alongLayers, { material: use(spring.holderMaterial) }),
    ),
    demandIs: 'the force of a leg over its diameter and the length that lies against its seat',
    capacityIs: 'the stress that the material bears for the time under load',
    remedy: 'longer legs, a longer seat, or a metal plate under the legs',
  },
]
const ofExtension: readonly Check[] = [
  ...wireChecks('body'),
  ...wireChecks('hookBending'),
  ...wireChecks('hookShear'),
  {
    id: 'spring.anchor',
    part: 'seat of the pins of the spring',
    mode: 'is crushed at the mouth of the hole',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['keepsTension'],
    demand: pinPressure,
    capacity: value('spring.anchorStrength', ['joint', 'event', 'air'], (use) =>
      use.at(strengthInAir.alongLayers, { material: use(spring.holderMaterial) }),
    ),
    demandIs: 'the peak pressure of the pin at the mouth of its hole, under the largest pull',
    capacityIs: 'the stress that the material bears for the time under load',
    remedy: 'a thicker or deeper pin, a shorter arm, or a pin held at both ends',
  },
  {
    id: 'spring.pin',
    part: 'pin of the spring',
    mode: 'bends',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: ['asBuilt'],
    demand: pinBending,
    capacity: spring.pinStrength,
    demandIs: 'the bending stress of the pin under the largest pull',
    capacityIs: 'the yield strength of a pin of class 8.8',
    remedy: 'a thicker pin, or a shorter arm to the hook',
  },
  {
    id: 'spring.surge',
    part: 'coil of the extension spring',
    mode: 'swings by itself',
    consequence: 'breaks',
    kind: 'frequency',
    scope: 'joint',
    when: ['moves'],
    demand: value('spring.strideRate', ['event'], (use) => {
      const { speed, stepLength: step, dutyFactor: duty } = use(stance)
      return use.run(strideRate, { speed, step, duty })
    }),
    capacity: quietFrequency,
    demandIs: 'the strides a second',
    capacityIs: 'a fifteenth of the lowest frequency of its coils',
    remedy: 'fewer or narrower coils of thicker wire',
    requiredReserve: 1,
  },
]

const lacking =
  (kind?: 'torsion' | 'extension') =>
  (x: LegNumbers, joint: Joint): string | undefined => {
    const own = spring.springOf(x, joint)
    if (own === undefined) return 'no spring stands beside its drive'
    return kind === undefined || own.kind === kind ? undefined : `its spring is no ${kind} spring`
  }

/** Checks of the springs beside the drives. */
export const springChecks: readonly Check[] = [
  ...ofPart(ofBoth, lacking()),
  ...ofPart(ofTorsion, lacking('torsion')),
  ...ofPart(ofExtension, lacking('extension')),
]
