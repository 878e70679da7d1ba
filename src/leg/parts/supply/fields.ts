import { field } from '../../leaves.js'

export const voltage = field('supply.voltage', [], 'voltage', (x) => x.supply.voltage)
export const internalResistance = field('supply.internalResistance', [], 'electricalResistance', (x) => x.supply.internalResistance)
export const currentLimit = field('supply.currentLimit', [], 'current', (x) => x.supply.currentLimit)
export const electronics = field('supply.electronics', [], 'power', (x) => x.supply.electronics)
