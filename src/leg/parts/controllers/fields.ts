import { field } from '../../leaves.js'
import { constant } from '../../run/index.js'

export const onResistance = field('controller.onResistance', ['controller'], 'electricalResistance', (x) => x.controller.onResistance)
export const switchingLoss = field('controller.switchingLoss', ['controller'], 'power', (x) => x.controller.switchingLoss)
export const currentLimit = field('controller.currentLimit', ['controller'], 'peakPhaseCurrent', (x) => x.controller.currentLimit)
export const temperatureLimit = field('controller.temperatureLimit', ['controller'], 'temperature', (x) => x.controller.temperatureLimit)
export const toAir = field('controller.toAir', ['controller'], 'thermalResistance', (x) => x.controller.toAir)
export const resistanceCoefficient = constant('controller.resistanceCoefficient', {
  kind: 'temperatureCoefficient',
  typical: 0.005,
  low: 0.004,
  high: 0.007,
  source: { level: 'commonPractice', where: 'on-resistance of silicon switches over their temperature' },
  measuredBy: 'run a known current for ten minutes and read the board temperature',
})
