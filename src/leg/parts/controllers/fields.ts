import { field } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { partOf } from '../../numbers.js'
import { constant } from '../../run/index.js'

const boardIn = (x: LegNumbers, { controller }: { readonly controller: string }) => partOf(x.controllers, controller, 'controller')

export const onResistance = field('controller.onResistance', ['controller'], 'electricalResistance', (x, at) => boardIn(x, at).onResistance)
export const switchingLoss = field('controller.switchingLoss', ['controller'], 'power', (x, at) => boardIn(x, at).switchingLoss)
export const currentLimit = field('controller.currentLimit', ['controller'], 'peakPhaseCurrent', (x, at) => boardIn(x, at).currentLimit)
export const temperatureLimit = field(
  'controller.temperatureLimit',
  ['controller'],
  'temperature',
  (x, at) => boardIn(x, at).temperatureLimit,
)
export const toAir = field('controller.toAir', ['controller'], 'thermalResistance', (x, at) => boardIn(x, at).toAir)
export const mass = field('controller.mass', ['controller'], 'mass', (x, at) => boardIn(x, at).mass)
/** Rate of the loop that damps the joint, and what its commands wait on the way. */
export const loopRate = field('controller.loopRate', ['controller'], 'frequency', (x, at) => boardIn(x, at).loopRate)
export const busDelay = field('controller.busDelay', ['controller'], 'time', (x, at) => boardIn(x, at).busDelay)
export const resistanceCoefficient = constant('controller.resistanceCoefficient', {
  title: 'rise of the on-resistance of switches with temperature',
  kind: 'temperatureCoefficient',
  typical: 0.005,
  low: 0.004,
  high: 0.007,
  source: { level: 'commonPractice', where: 'on-resistance of silicon switches over their temperature' },
  measuredBy: 'run a known current for ten minutes and read the board temperature',
})
