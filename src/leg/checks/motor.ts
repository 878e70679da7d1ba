import { bare, type Evaluator } from '../../formula/index.js'
import {
  bridgeConductionLoss,
  copperLoss,
  electricalPower,
  insulationClasses,
  magnetGrades,
  runawayLoss,
  speedAtCurrent,
  supplySag,
  touchThresholds,
} from '../../thermal/index.js'
import type { Heat } from '../cases/heat.js'
import type { CaseState, JointState, Scene } from '../state.js'
import { type Check, LOADED, WARM } from './check.js'
import { polymerRest } from './rests.js'

/** Margin below the glass transition for parts that bear load for long, K. */
const SOFTENING_GUARD = 15
/** The hottest spot of a winding above the mean of its phase, K. */
const HOT_SPOT = 10
/** Load cases that go on until temperatures settle. */
const LASTING = WARM.filter((id) => id !== 'stall')
const MOVING = ['walk', 'trot', 'slope', 'hotAfternoon', 'season'] as const

const heatRest = (what: string) => ({
  what: `thermal resistances of the motor (${what})`,
  source: { level: 'assumption', where: 'an outrunner of this size; films good to 20 % at best' } as const,
  test: 'hold a known current for half an hour and log mount and can temperature',
})

/** The temperature rise that a part has, and the one it bears. */
const rise = (heat: Heat, temperature: number, limit: number, air: number) => ({
  demand: temperature - air,
  capacity: limit - air,
  ...(heat.unsettled === undefined ? {} : { remark: 'the motor comes to no rest: taken where every film formula ends' }),
})

/** Motor, its mount, its controller and the supply. */
export const motorChecks: readonly Check[] = [
  {
    id: 'motor.runaway',
    part: 'motor winding',
    mode: 'runs away: resistance and heat drive each other up',
    stake: 'breaks',
    kind: 'power',
    scope: 'joint',
    cases: LASTING,
    after: ['motion', 'heat'],
    run: (of, _, { heat }) => ({ demand: heat.lossAt20, capacity: of(runawayLoss, { thermalResistance: heat.resistanceToAir }) }),
    demandIs: 'the copper loss of the heating torque with the winding at 20 degC',
    capacityIs: 'the loss at which no steady temperature exists any more',
    remedy: 'less torque, a larger motor, a higher reduction, or better cooling',
    rests: () => [heatRest('winding')],
  },
  {
    id: 'motor.winding',
    part: 'motor winding',
    mode: 'cooks its insulation',
    stake: 'breaks',
    kind: 'temperatureDifference',
    scope: 'joint',
    cases: WARM,
    after: ['motion', 'heat'],
    run: (_, { leg, state }, { heat }) => rise(heat, heat.winding + HOT_SPOT, insulationClasses[leg.x.motor.windingClass].si, state.air),
    demandIs: 'the rise of the hottest spot above the air, 10 K above the mean of the hottest phase',
    capacityIs: 'the rise that reaches the temperature of its insulation class',
    remedy: 'less torque, better cooling, or a motor with a higher insulation class',
    rests: () => [heatRest('winding')],
    rule: { level: 'published', where: 'pages on IEC 60085: hottest spot 5 to 15 K above the mean winding temperature' },
  },
  {
    id: 'motor.magnet',
    part: 'rotor magnets',
    mode: 'lose their strength for good',
    stake: 'breaks',
    kind: 'temperatureDifference',
    scope: 'joint',
    cases: WARM,
    after: ['motion', 'heat'],
    run: (_, { leg, state }, { heat }) => {
      const suffix = leg.x.motor.magnetSuffix
      const grade = magnetGrades[suffix === 'none' ? 'standard' : suffix]
      const limit = leg.end === 'typical' ? grade.si : leg.end === 'pessimistic' ? grade.low : grade.high
      return rise(heat, heat.can, limit, state.air)
    },
    demandIs: 'the rise of the rotor above the air, taken as that of the can',
    capacityIs: 'the rise that reaches the highest temperature of its magnet grade',
    remedy: 'a motor with a higher magnet grade, or a cooler motor',
    rests: ({ leg }) => [
      heatRest('can'),
      {
        what: 'temperature that the magnets bear',
        source: magnetGrades[leg.x.motor.magnetSuffix === 'none' ? 'standard' : leg.x.motor.magnetSuffix].source,
        test: 'ask the maker for grade and load line; measure the speed constant before and after a hot run',
      },
    ],
  },
  {
    id: 'motor.touch',
    part: 'can of the motor',
    mode: 'burns a hand that touches it',
    stake: 'safety',
    kind: 'temperatureDifference',
    scope: 'joint',
    cases: ['stand', 'walk', 'hotAfternoon', 'stall'],
    after: ['motion', 'heat'],
    run: (_, { state }, { heat }) => rise(heat, heat.can, touchThresholds.metal.si, state.air),
    demandIs: 'the rise of the can above the air',
    capacityIs: 'the rise that burns at a touch of about a second (metal)',
    remedy: 'a guard, a warning label, or a cooler motor',
    enough: 1,
    rests: () => [
      heatRest('can'),
      { what: 'burn threshold of a short touch', source: touchThresholds.metal.source, test: 'look it up in ISO 13732-1; do not try it' },
    ],
  },
  {
    id: 'motor.plate',
    part: 'motor plate at the motor',
    mode: 'softens',
    stake: 'breaks',
    kind: 'temperatureDifference',
    scope: 'joint',
    cases: WARM,
    after: ['motion', 'heat'],
    run: (_, { leg, state }, { heat }) => {
      const guard = leg.plate.softeningKind === 'glassTransition' ? SOFTENING_GUARD : 0
      return rise(heat, heat.mount, leg.plate.softening - guard, state.air)
    },
    demandIs: 'the rise of the mounting face above the air',
    capacityIs: 'the rise that leaves 15 K below the glass transition (or reaches the service limit)',
    remedy: 'a metal sink under the motor, a polymer that softens later, less torque, or a motor with less resistance',
    rests: ({ leg }) => [heatRest('mount'), ...polymerRest(leg.plate, 'motor plate')],
  },
  {
    id: 'motor.current',
    part: 'controller',
    mode: 'cannot give the current',
    stake: 'fails to work',
    kind: 'peakPhaseCurrent',
    scope: 'joint',
    cases: LOADED,
    after: ['motion', 'heat'],
    run: (_, { leg }, { heat }) => ({ demand: heat.current, capacity: leg.x.controller.currentLimit }),
    demandIs: 'the peak phase current of the largest torque',
    capacityIs: 'the current limit that is set',
    remedy: 'a higher reduction, a motor with a lower speed constant, or a straighter leg',
  },
  {
    id: 'motor.speed',
    part: 'motor',
    mode: 'is too slow at its torque for the voltage',
    stake: 'fails to work',
    kind: 'angularVelocity',
    scope: 'joint',
    cases: MOVING,
    after: ['motion', 'heat'],
    run: (of, scene, at) => {
      const { heat } = at
      const sag = sagOf(scene, of)
      const { speed } = of(speedAtCurrent, {
        voltage: sag.voltage,
        backEmfConstant: heat.backEmfConstant,
        terminalResistance: heat.resistance,
        peakPhaseCurrent: heat.current,
        phaseInductance: scene.leg.x.motor.phaseInductance,
        polePairs: scene.leg.x.motor.polePairs ?? 1,
      })
      return { demand: at.heat.loadedMotorSpeed, capacity: speed }
    },
    demandIs: 'the motor speed while the foot bears load',
    capacityIs: 'the speed that the sagging supply still allows at the largest current, winding warm',
    remedy: 'a higher voltage, a motor with a higher speed constant, a lower reduction, or a slower gait',
  },
  {
    id: 'motor.swing',
    part: 'motor',
    mode: 'is too slow to swing the leg',
    stake: 'fails to work',
    kind: 'angularVelocity',
    scope: 'joint',
    cases: MOVING,
    after: ['motion', 'heat'],
    run: (of, scene, { heat }) => {
      const sag = sagOf(scene, of)
      const { speed } = of(speedAtCurrent, {
        voltage: sag.voltage,
        backEmfConstant: heat.backEmfConstant,
        terminalResistance: heat.resistance,
        peakPhaseCurrent: 0.2 * heat.current,
        phaseInductance: scene.leg.x.motor.phaseInductance,
        polePairs: scene.leg.x.motor.polePairs ?? 1,
      })
      return { demand: heat.motorSpeed, capacity: speed }
    },
    demandIs: 'the highest motor speed of the swing',
    capacityIs: 'the speed that the sagging supply allows at a fifth of the stance current',
    remedy: 'a higher voltage, a motor with a higher speed constant, or a slower gait',
  },
  {
    id: 'controller.heat',
    part: 'controller',
    mode: 'overheats',
    stake: 'fails to work',
    kind: 'temperatureDifference',
    scope: 'joint',
    cases: WARM,
    after: ['motion', 'heat'],
    run: (of, { leg, state }, { heat }) => {
      const { controller } = leg.x
      // The switches are about as warm as their limit when it matters: take their resistance there.
      const conduction = of(bridgeConductionLoss, {
        peakPhaseCurrent: heat.heatingCurrent,
        switchResistance: controller.onResistance,
        junctionTemperature: controller.temperatureLimit,
        resistanceCoefficient: 0.005,
      })
      return { demand: controller.toAir * (conduction + controller.switchingLoss), capacity: controller.temperatureLimit - state.air }
    },
    demandIs: 'the rise of the board above the air',
    capacityIs: 'the rise that reaches its temperature limit',
    remedy: 'a heat spreader or moving air on the controller, or less torque',
    rests: () => [
      {
        what: 'losses and cooling of the controller',
        source: { level: 'assumption', where: 'a small three-phase bridge on a bare board' },
        test: 'run a known current for ten minutes and read the board temperature',
      },
    ],
  },
  {
    id: 'supply.current',
    part: 'supply',
    mode: 'is overloaded',
    stake: 'fails to work',
    kind: 'current',
    scope: 'leg',
    cases: ['walk', 'trot', 'slope', 'hotAfternoon'],
    after: ['motion', 'heat'],
    run: (of, scene) => {
      const sag = sagOf(scene, of)
      const capacity = Math.min(
        scene.leg.x.supply.currentLimit,
        sag.mostPower === Number.POSITIVE_INFINITY ? Number.POSITIVE_INFINITY : sag.mostPower / (scene.leg.x.supply.voltage / 2),
      )
      return sag.state === 'brownOut'
        ? { demand: sag.current, capacity: 0.999 * sag.current, remark: 'the supply browns out: it cannot give the power at all' }
        : { demand: Math.max(sag.current, 0), capacity }
    },
    demandIs: 'the current that all legs draw when the drives of the standing legs are at their peak together',
    capacityIs: 'the current limit of the supply',
    remedy: 'a pack with less resistance, a thicker fuse and leads, or a slower gait',
  },
]

let last: { readonly state: CaseState; readonly sag: SupplySag } | undefined
type SupplySag = ReturnType<typeof supplySag.si>

/** The sagging supply of a load case; where nothing is recorded it is worked out once for all checks of the case. */
function sagOf(scene: Scene, of: Evaluator): SupplySag {
  if (of !== bare) return of(supplySag, supplyOf(scene, of))
  if (last?.state !== scene.state) last = { state: scene.state, sag: of(supplySag, supplyOf(scene, of)) }
  return last.sag
}

/** The supply with the power of all standing legs, each drive at its peak torque and loaded speed. */
function supplyOf({ leg, state }: Scene, of: Evaluator) {
  const { robot, supply, usage, controller } = leg.x
  const power = (j: JointState) =>
    of(electricalPower, {
      torque: j.heat.motorTorque,
      speed: j.heat.loadedMotorSpeed,
      copperLoss: of(copperLoss, { peakPhaseCurrent: j.heat.current, terminalResistance: j.heat.resistance }),
      otherLoss: j.heat.ironLoss + controller.switchingLoss,
    }).electrical
  const duty = state.case.id === 'trot' ? usage.trot.dutyFactor : usage.walk.dutyFactor
  const standing = Math.max(1, Math.round(robot.legs * duty))
  return {
    openCircuitVoltage: supply.voltage,
    resistance: supply.internalResistance,
    power: standing * (power(state.joints.hip) + power(state.joints.knee)),
  }
}
