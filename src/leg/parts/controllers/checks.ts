import { bridgeConductionLoss } from '../../../thermal/index.js'
import type { Check } from '../../cases/check.js'
import { riseAbove } from '../../lines.js'
import { line, value } from '../../run/index.js'
import { airTemperature } from '../load/fields.js'
import { heat } from '../motors/heat.js'
import * as controller from './fields.js'

const boardRise = line(
  'rise of the board',
  { toAir: 'thermalResistance', conduction: 'power', switching: 'power' },
  'temperatureDifference',
  'toAir · (conduction + switching)',
  (x) => x.toAir * (x.conduction + x.switching),
)

const current = value('motor.current', ['joint', 'event', 'air'], (use) => use(heat).current)
/** The switches are about as warm as their limit where it matters, so their resistance there counts. */
const rise = value('controller.rise', ['joint', 'event', 'air'], (use) => {
  const conduction = use.run(bridgeConductionLoss, {
    peakPhaseCurrent: use(heat).heatingCurrent,
    switchResistance: use(controller.onResistance),
    junctionTemperature: use(controller.temperatureLimit),
    resistanceCoefficient: use(controller.resistanceCoefficient),
  })
  return use.run(boardRise, { toAir: use(controller.toAir), conduction, switching: use(controller.switchingLoss) })
})

/** Checks of the controller of each motor. */
export const controllerChecks: readonly Check[] = [
  {
    id: 'motor.current',
    part: 'controller',
    mode: 'cannot deliver the current',
    consequence: 'fails to work',
    kind: 'peakPhaseCurrent',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: current,
    capacity: value('controller.limit', ['joint'], (use) => use(controller.currentLimit)),
    demandIs: 'the peak phase current of the largest torque',
    capacityIs: 'the current limit that is set',
    remedy: 'a higher reduction, a motor with a lower speed constant, or a straighter leg',
  },
  {
    id: 'controller.heat',
    part: 'controller',
    mode: 'overheats',
    consequence: 'fails to work',
    kind: 'temperatureDifference',
    scope: 'joint',
    when: ['warms'],
    demand: rise,
    capacity: value('controller.allowableRise', ['joint', 'air'], (use) =>
      use.run(riseAbove, { temperature: use(controller.temperatureLimit), air: use(airTemperature) }),
    ),
    demandIs: 'the rise of the board above the air',
    capacityIs: 'the rise that reaches its temperature limit',
    remedy: 'a heat spreader or moving air on the controller, or less torque',
  },
]
