import type { Check } from '../../../cases/check.js'
import { value } from '../../../run/index.js'
import { driveLoad } from '../../motion/values.js'
import { motorSpeed } from '../../motors/values.js'
import * as box from './fields.js'

const BOX = { part: 'gearbox', scope: 'joint' } as const

/** Checks of a gearbox by the numbers of its sheet. */
export const gearboxChecks: readonly Check[] = [
  {
    id: 'gearbox.rated',
    ...BOX,
    mode: 'wears out under its daily torque',
    consequence: 'breaks',
    kind: 'torque',
    when: ['daily'],
    demand: driveLoad,
    capacity: box.ratedTorque,
    demandIs: 'the largest torque of the joint',
    capacityIs: 'the torque that the gearbox bears at all times, from its sheet',
    remedy: 'a larger gearbox, a straighter leg, or less mass',
  },
  {
    id: 'gearbox.peak',
    ...BOX,
    mode: 'breaks in a rare hard load',
    consequence: 'breaks',
    kind: 'torque',
    when: ['rare'],
    demand: driveLoad,
    capacity: box.peakTorque,
    demandIs: 'the largest torque of the joint',
    capacityIs: 'the torque that the gearbox bears for a moment, from its sheet',
    remedy: 'a larger gearbox, more travel in a landing, or less mass',
  },
  {
    id: 'gearbox.speed',
    ...BOX,
    mode: 'is turned too fast',
    consequence: 'breaks',
    kind: 'angularVelocity',
    when: ['moves'],
    demand: value('gearbox.inputSpeed', ['joint', 'event'], (use) => use(motorSpeed)),
    capacity: box.highestSpeed,
    demandIs: 'the highest speed of the motor in the swing',
    capacityIs: 'the highest speed of the input, from its sheet',
    remedy: 'a lower reduction, a slower gait, or a gearbox for higher speeds',
  },
]
