import { currentsForTorque, speedAtCurrent, touchThresholds } from '../../../thermal/index.js'
import type { Check } from '../../cases/check.js'
import { ranged } from '../../leaves.js'
import { riseAbove } from '../../lines.js'
import { constant, line, type Use, type Value, value } from '../../run/index.js'
import { airTemperature } from '../load/fields.js'
import { sag } from '../supply/values.js'
import * as motor from './fields.js'
import { emfInAir, heat, mostSteadyTorque } from './heat.js'
import { heatingTorque } from './values.js'

const hottest = line.sum('hottest spot of the winding', { winding: 'temperature', spot: 'temperatureDifference' }, 'temperature')
const shareOfCurrent = line.product('current of the swing', { share: 'ratio', current: 'peakPhaseCurrent' }, 'peakPhaseCurrent')

/** The hottest spot of a winding above the mean of its phase. */
const hotSpot = constant('motor.hotSpot', {
  title: 'hottest spot of a winding above the mean of its phase',
  kind: 'temperatureDifference',
  typical: 10,
  low: 5,
  high: 15,
  source: { level: 'published', where: 'pages on IEC 60085: hottest spot 5 to 15 K above the mean winding temperature' },
  measuredBy: 'compare the resistance of a hot winding with a probe in its middle',
})
const swingShare = constant('motor.swingShare', {
  title: 'current of the swing over the largest current of the stance',
  kind: 'ratio',
  typical: 0.2,
  low: 0.1,
  high: 0.3,
  source: { level: 'assumption', where: 'the current of the swing as a share of the largest of the stance' },
  measuredBy: 'log the current of a leg that walks',
})
const touchLimit = ranged(
  'motor.touchLimit',
  'temperature that burns a hand in a short touch',
  [],
  'temperature',
  'look it up in ISO 13732-1; do not try it',
  () => touchThresholds.metal,
)

type At = Use<'joint' | 'event' | 'air'>
const rise = (id: string, temperature: (use: At) => number) =>
  value(id, ['joint', 'event', 'air'], (use) => use.run(riseAbove, { temperature: temperature(use), air: use(airTemperature) }))
const allowable = (id: string, limit: Value<number, 'motor'>) =>
  value(id, ['joint', 'air'], (use) => use.run(riseAbove, { temperature: use(limit), air: use(airTemperature) }))

/** What to know of a motor whose temperatures do not converge. */
export const unsettledRemark = value('motor.unsettledRemark', ['joint', 'event', 'air'], (use) =>
  use(heat).unsettled === undefined
    ? undefined
    : 'the temperatures of the motor do not converge, and are assumed to be where every film formula ends',
)
const speedWith = (use: At, backEmfConstant: number, peakPhaseCurrent: number): number =>
  use.run(speedAtCurrent, {
    voltage: use(sag).voltage,
    backEmfConstant,
    terminalResistance: use(heat).resistance,
    peakPhaseCurrent,
    phaseInductance: use(motor.phaseInductance),
    polePairs: use(motor.polePairs) ?? 1,
  }).speed
const slower = line.smallest('slower of warm and cold magnets', { warm: 'angularVelocity', cold: 'angularVelocity' }, 'angularVelocity')
/**
 * Speed at a share of the largest current. Strong magnets, as cold as the air, use up more of the voltage; weak ones need more current. The
 * slower of the two counts, so that a motor that warms up never looks faster.
 */
const speedAt = (use: At, currentOf: (current: number) => number): number => {
  const { backEmfConstant, current, motorTorque: torque } = use(heat)
  const strong = use(emfInAir)
  const { peakPhase } = use.run(currentsForTorque, { torque, backEmfConstant: strong })
  return use.run(slower, {
    warm: speedWith(use, backEmfConstant, currentOf(current)),
    cold: speedWith(use, strong, currentOf(peakPhase)),
  })
}
const canRise = rise('motor.canRise', (use) => use(heat).can)

const WARM = { kind: 'temperatureDifference', scope: 'joint', remark: unsettledRemark } as const

/** Checks of the motor of each joint. */
export const motorChecks: readonly Check[] = [
  {
    id: 'motor.runaway',
    part: 'motor winding',
    mode: 'runs away: resistance and heat drive each other up',
    consequence: 'breaks',
    kind: 'torque',
    scope: 'joint',
    when: ['lasting'],
    demand: heatingTorque,
    capacity: mostSteadyTorque,
    demandIs: 'the torque that heats the motor',
    capacityIs: 'the largest torque with a steady temperature of mount, copper and magnets, each as warm as the torque makes it',
    remedy: 'less torque, a larger motor, a higher reduction, or better cooling',
  },
  {
    id: 'motor.winding',
    part: 'motor winding',
    mode: 'overheats its insulation',
    consequence: 'breaks',
    ...WARM,
    when: ['warms'],
    demand: rise('motor.windingRise', (use) => use.run(hottest, { winding: use(heat).winding, spot: use(hotSpot) })),
    capacity: allowable('motor.allowableWindingRise', motor.windingLimit),
    demandIs: 'the rise of the hottest spot above the air, 10 K above the mean of the hottest phase',
    capacityIs: 'the rise that reaches the temperature of its insulation class',
    remedy: 'less torque, better cooling, or a motor with a higher insulation class',
    rule: { level: 'published', where: 'pages on IEC 60085: hottest spot 5 to 15 K above the mean winding temperature' },
  },
  {
    id: 'motor.magnet',
    part: 'rotor magnet',
    mode: 'loses its strength for good',
    consequence: 'breaks',
    ...WARM,
    when: ['warms'],
    demand: canRise,
    capacity: allowable('motor.allowableMagnetRise', motor.magnetLimit),
    demandIs: 'the rise of the rotor above the air, assumed to be that of the can',
    capacityIs: 'the rise that reaches the highest temperature of its magnet grade',
    remedy: 'a motor with a higher magnet grade, or a cooler motor',
  },
  {
    id: 'motor.touch',
    part: 'can of the motor',
    mode: 'burns a hand that touches it',
    consequence: 'safety',
    ...WARM,
    when: ['inReach'],
    demand: canRise,
    capacity: value('motor.allowableTouchRise', ['air'], (use) =>
      use.run(riseAbove, { temperature: use(touchLimit), air: use(airTemperature) }),
    ),
    demandIs: 'the rise of the can above the air',
    capacityIs: 'the rise that burns at a touch of about a second (metal)',
    remedy: 'a guard, a warning label, or a cooler motor',
    requiredReserve: 1,
  },
  {
    id: 'motor.speed',
    part: 'motor',
    mode: 'is too slow at its torque for the voltage',
    consequence: 'fails to work',
    kind: 'angularVelocity',
    scope: 'joint',
    when: ['moves'],
    demand: value('motor.loadedSpeed', ['joint', 'event', 'air'], (use) => use(heat).loadedMotorSpeed),
    capacity: value('motor.speedAtTorque', ['joint', 'event', 'air'], (use) => speedAt(use, (current) => current)),
    demandIs: 'the motor speed while the foot bears load',
    capacityIs:
      'the speed that the sagging supply still allows at the largest current, with a warm winding and magnets warm or as cold as the air, whichever is slower',
    remedy: 'a higher voltage, a motor with a higher speed constant, a lower reduction, or a slower gait',
    twoWay: true,
  },
  {
    id: 'motor.swing',
    part: 'motor',
    mode: 'is too slow to swing the leg',
    consequence: 'fails to work',
    kind: 'angularVelocity',
    scope: 'joint',
    when: ['moves'],
    demand: value('motor.swingSpeed', ['joint', 'event', 'air'], (use) => use(heat).motorSpeed),
    capacity: value('motor.speedOfSwing', ['joint', 'event', 'air'], (use) =>
      speedAt(use, (current) => use.run(shareOfCurrent, { share: use(swingShare), current })),
    ),
    demandIs: 'the highest motor speed of the swing',
    capacityIs:
      'the speed that the sagging supply allows at a fifth of the stance current, with magnets warm or as cold as the air, whichever is slower',
    remedy: 'a higher voltage, a motor with a higher speed constant, or a slower gait',
    twoWay: true,
  },
]
