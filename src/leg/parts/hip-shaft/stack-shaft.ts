import { roundBendingStress, roundCombinedStress } from '../../../structures/index.js'
import type { Check } from '../../cases/check.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { shaftOf } from '../../numbers.js'
import { constant, line, value } from '../../run/index.js'
import { hipOf } from '../motion/instances.js'
import { driveLoad } from '../motion/values.js'
import { inPlane } from '../transmission/rod-ends/couple.js'
import { linkage, rodOf } from '../transmission/through-hip/fields.js'
import * as shaft from './fields.js'
import { momentByRod, shaftMoment } from './loads.js'
import { yieldStrength } from './shaft.js'
import { isTurnedByShaft } from './stack-fields.js'
import { nutTwist, stackPreload } from './stack-tightening.js'

const larger = line.largest('largest bending moment of the shaft', { shaft: 'torque', between: 'torque' }, 'torque')
const twistOf = line(
  'torque in the shaft, with what tightening its nut leaves',
  { share: 'ratio', nut: 'torque', drive: 'torque' },
  'torque',
  'share · nut + drive',
  (x) => x.share * x.nut + x.drive,
)
const vonMises = line('von Mises stress', { normal: 'stress', shear: 'stress' }, 'stress', 'hypot(normal, √3 · shear)', (x) =>
  Math.hypot(x.normal, Math.sqrt(3) * x.shear),
)
/** Share of the torque in its thread that twists a bolt after it is tightened. */
const twistLeft = constant('stack.twistLeft', {
  title: 'torque in the thread of the hip shaft after tightening, as a share',
  kind: 'ratio',
  typical: 0.5,
  low: 0,
  high: 1,
  source: { level: 'unverified', where: 'VDI 2230-1: half of the torsion is left in service; none and all of it are its bounds' },
  measuredBy: 'mark nut and shaft, loosen the nut, and note how far the end of the shaft turns back',
})

/** Largest bending moment in shaft and stack: at the nearer bearing, and between crank and link that of a rod beside the links. */
export const bending = value('stack.bending', ['leg', 'event', 'air', 'age'], (use) =>
  use(linkage) === undefined ? use(shaftMoment) : use.run(larger, { shaft: use(shaftMoment), between: use(momentByRod) }),
)
const rodStress = value('shaft.rodStress', ['leg', 'event', 'air', 'age'], (use) =>
  use.run(roundBendingStress, { moment: use(momentByRod), diameter: use(shaft.thread).rootDiameter, holeDiameter: 0 }),
)
/** Torque of the hip's drive, which passes through the stack by friction, or through the shaft. */
export const torque = value('stack.torque', ['leg', 'event'], (use, at) => use.at(driveLoad, { joint: hipOf(use, at.leg) }))
const twist = value('stack.twist', ['leg', 'event'], (use) =>
  use.run(twistOf, { share: use(twistLeft), nut: use(nutTwist), drive: use(isTurnedByShaft) ? use(torque) : 0 }),
)
// The whole bending counts on the shaft: stacks of print are too soft to take much of it.
const loadedStress = value('stack.loadedStress', ['leg', 'event', 'air', 'age'], (use) => {
  const { normalStress: normal, shearStress: shear } = use.run(roundCombinedStress, {
    moment: use(bending),
    sidewaysMoment: 0,
    torque: use(twist),
    axialForce: use(stackPreload),
    diameter: use(shaft.thread).rootDiameter,
    holeDiameter: 0,
  })
  return use.run(vonMises, { normal, shear })
})

export const noStack = (x: LegNumbers) => (shaftOf(x).stack === undefined ? 'nothing is given of the stack on the hip shaft' : {})

/** Checks of the hip shaft within its stack, and under a rod beside the links. */
export const stackShaftChecks: readonly Check[] = [
  {
    id: 'shaft.rodCouple',
    part: 'hip shaft',
    kind: 'stress',
    scope: 'leg',
    consequence: 'breaks',
    mode: 'bends between crank and link under a rod beside the links',
    of: (x) => (rodOf(x) === undefined ? 'no rod drives the knee' : {}),
    // Of a number, not of the structure: a sweep may begin with a rod in the plane.
    unless: inPlane,
    when: ['oneMoment'],
    demand: rodStress,
    capacity: yieldStrength,
    demandIs: 'the bending stress over the root of the thread between crank and link, where the forces of the rod on both are a couple',
    capacityIs: 'the yield strength of its property class',
    remedy: 'a thicker shaft, or the rod nearer to the plane of the links',
  },
  {
    id: 'shaftStack.shaft',
    part: 'hip shaft',
    mode: 'yields under preload, bending and torque together',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'leg',
    of: noStack,
    when: ['oneMoment'],
    demand: loadedStress,
    capacity: yieldStrength,
    demandIs:
      'the von Mises stress over the root of the thread, of preload, bending, what tightening leaves of its torque, and that of the drive through a key or flat',
    capacityIs: 'the yield strength of its property class',
    remedy: 'a thicker shaft, a higher property class, or less tightening torque with a wider ring',
    // The preload does not grow with the load, whose own bending has the general reserve.
    requiredReserve: 1,
  },
]
