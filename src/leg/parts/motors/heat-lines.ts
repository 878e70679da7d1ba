import { line } from '../../run/index.js'

export const heatCapacity = line.product('heat capacity of the motor', { mass: 'mass', specificHeat: 'specificHeat' }, 'heatCapacity')
export const hottestPhase = line(
  'hottest phase of the winding',
  { mount: 'temperature', share: 'ratio', loss: 'power', resistance: 'thermalResistance' },
  'temperature',
  'mount + share · loss · resistance',
  (x) => x.mount + x.share * x.loss * x.resistance,
)
export const windingRoom = line(
  'margin of the winding below its limit',
  { ceiling: 'temperature', mount: 'temperature', share: 'ratio', loss: 'power', resistance: 'thermalResistance' },
  'temperatureDifference',
  'ceiling − mount − share · loss · resistance',
  (x) => x.ceiling - x.mount - x.share * x.loss * x.resistance,
)

export const warmer = line.largest('warmer of two', { one: 'temperature', other: 'temperature' }, 'temperature')
