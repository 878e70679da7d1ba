import { parallelKey, ringJoint, shaftFlat } from '../../../fasteners/index.js'
import type { Check } from '../../cases/check.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { shaftOf } from '../../numbers.js'
import { value } from '../../run/index.js'
import { layered } from '../materials/fields.js'
import { strengthInAir } from '../materials/in-air.js'
import { frictionOnSteel } from '../materials/values.js'
import * as shaft from './fields.js'
import { yieldStrength } from './shaft.js'
import { stackClamp } from './stack-clamp.js'
import { flat, innerDiameter, key, keyShear, material, outerDiameter } from './stack-fields.js'
import { stackPressureChecks } from './stack-pressure.js'
import { bending, noStack, stackShaftChecks, torque } from './stack-shaft.js'
import { stackTighteningChecks } from './stack-tightening.js'

const joint = value('stack.joint', ['air', 'age'], (use) => {
  const { gapMoment, tippingMoment, slipTorque } = use.run(ringJoint, {
    clampLoad: use(stackClamp),
    outerDiameter: use(outerDiameter),
    innerDiameter: use(innerDiameter),
    friction: use.at(frictionOnSteel, { material: use(material) }),
    moment: 0,
  })
  return { gapMoment, tippingMoment, slipTorque }
})
const keyTorque = value('stack.keyTorque', ['leg', 'event', 'air'], (use) => {
  const { width, height, shaftDepth, hubDepth } = use(key.size)
  const hub = { material: use(key.hubMaterial) }
  return use.run(parallelKey, {
    torque: use(torque),
    direction: 'reversing',
    shaftDiameter: use(shaft.thread).diameter,
    width,
    height,
    shaftDepth,
    hubDepth,
    length: use(key.length),
    keys: 1,
    hub: {
      material: use.at(layered, hub) ? 'printed' : 'metal',
      outerDiameter: use(key.hubDiameter),
      bearingStrength: use.at(strengthInAir.alongLayers, hub),
      tensileStrength: use.at(strengthInAir.acrossLayers, hub),
    },
    shaftBearingStrength: use(yieldStrength),
    keyShearStrength: use(keyShear),
  }).torqueCapacity
})

const flatTorque = value(
  'stack.flatTorque',
  ['leg', 'event', 'air'],
  (use) =>
    use.run(shaftFlat, {
      torque: use(torque),
      shaftDiameter: use(shaft.thread).diameter,
      depth: use(flat.depth),
      length: use(flat.length),
      hubBearingStrength: use.at(strengthInAir.alongLayers, { material: use(flat.hubMaterial) }),
      shaftBearingStrength: use(yieldStrength),
    }).torqueCapacity,
)

/** Why friction need not turn the stack with its shaft. */
const turnedBy = (x: LegNumbers) => {
  const { key: own, flat: side } = shaftOf(x).stack ?? {}
  if (own === undefined && side === undefined) return noStack(x)
  return `a ${own === undefined ? 'flat' : 'key'} carries the torque of the stack`
}
const STACK = { part: 'stack on the hip shaft', kind: 'torque', scope: 'leg', of: noStack } as const
const CLAMP = 'more tightening torque, tightening again after a week, a wider spacer, or a metal one'

/** Checks of the stack that is clamped on the hip shaft, and of the shaft under a rod beside the links. */
export const stackChecks: readonly Check[] = [
  ...stackShaftChecks,
  {
    id: 'shaftStack.gape',
    ...STACK,
    mode: 'opens at one edge when it is bent',
    consequence: 'fails to work',
    when: ['bearsLoad'],
    demand: bending,
    capacity: value('stack.gapMoment', ['air', 'age'], (use) => use(joint).gapMoment),
    demandIs: 'the largest bending moment of shaft load, foot and rod',
    capacityIs: 'the moment at which the clamp load that age and cold leave no longer closes its joints',
    remedy: CLAMP,
  },
  {
    id: 'shaftStack.tip',
    ...STACK,
    mode: 'tips on its edge',
    consequence: 'breaks',
    when: ['oneMoment'],
    demand: bending,
    capacity: value('stack.tippingMoment', ['air', 'age'], (use) => use(joint).tippingMoment),
    demandIs: 'the largest bending moment of shaft load, foot and rod',
    capacityIs: 'the moment at which stiff parts tip about the edge of their ring, under the clamp load that age and cold leave',
    remedy: CLAMP,
  },
  {
    id: 'shaftStack.slip',
    ...STACK,
    mode: 'turns on itself',
    consequence: 'fails to work',
    when: ['bearsLoad'],
    demand: torque,
    capacity: value('stack.slipTorque', ['air', 'age'], (use) => use(joint).slipTorque),
    of: turnedBy,
    demandIs: 'the torque of the hip’s drive',
    capacityIs: 'the friction torque of its joints under the clamp load that age and cold leave',
    remedy: `a key or a flat, ${CLAMP}`,
  },
  {
    id: 'shaftStack.key',
    ...STACK,
    mode: 'crushes its key or keyway',
    consequence: 'breaks',
    when: ['bearsLoad'],
    demand: torque,
    capacity: keyTorque,
    of: (x) => (shaftOf(x).stack?.key === undefined ? 'the stack on the hip shaft has no key' : {}),
    demandIs: 'the torque of the hip’s drive',
    capacityIs: 'the torque at which key, keyway or hub yields, without help of friction',
    remedy: 'a longer key, a thicker hub, or a metal one',
  },
  {
    id: 'shaftStack.flat',
    ...STACK,
    mode: 'turns on the flat of its shaft, whose edge crushes the hub',
    consequence: 'breaks',
    when: ['bearsLoad'],
    demand: torque,
    capacity: flatTorque,
    of: (x) => (shaftOf(x).stack?.flat === undefined ? 'the shaft of the hip has no flat' : {}),
    demandIs: 'the torque of the hip’s drive',
    capacityIs: 'the torque at which the edge of the flat presses as hard as hub or shaft bears, without help of friction',
    remedy: 'a deeper or longer flat, a metal hub, or a key',
  },
  ...[...stackTighteningChecks, ...stackPressureChecks].map((check) => ({ ...check, of: noStack })),
]
