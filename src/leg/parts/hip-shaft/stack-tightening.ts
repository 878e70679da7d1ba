import { drilledBolt, preloadFromTorque, tighteningTorque } from '../../../fasteners/index.js'
import type { Check } from '../../cases/check.js'
import { type Use, value } from '../../run/index.js'
import * as shaft from './fields.js'
import { yieldStrength } from './shaft.js'
import { nut, tighteningTorque as nutTorque } from './stack-fields.js'

const onShaft = (use: Use<never>) => {
  const friction = use(shaft.innerFriction)
  return {
    thread: use(shaft.thread),
    threadFriction: friction,
    headFriction: friction,
    bearingDiameter: use(nut.bearingDiameter),
    holeDiameter: use(nut.holeDiameter),
    prevailingTorque: 0,
  }
}
/** Clamp load of the stack from the tightening torque of its nut. */
export const stackPreload = value(
  'stack.preload',
  [],
  (use) => use.run(preloadFromTorque, { ...onShaft(use), torque: use(nutTorque) }).preload,
)
/** Torque in its thread meanwhile, which twists the shaft. */
export const nutTwist = value(
  'stack.nutTwist',
  [],
  (use) => use.run(tighteningTorque, { ...onShaft(use), preload: use(stackPreload) }).threadTorque,
)
/** Stress of the shaft under that preload and the torque in its thread, where the hole for the screw of the cap weakens it. */
const stress = value('stack.shaftStress', [], (use) => {
  return use.run(drilledBolt, {
    outer: use(shaft.thread),
    inner: use(shaft.inner.thread),
    outerYieldStrength: use(yieldStrength),
    innerYieldStrength: use(shaft.inner.steelOf).yieldStrength,
    tension: use(stackPreload),
    torque: use(nutTwist),
  }).vonMises
})
const STACK = { kind: 'stress', scope: 'leg' } as const

/** What a nut that is tightened too hard does to the shaft. */
export const stackTighteningChecks: readonly Check[] = [
  {
    id: 'shaftStack.tightening',
    ...STACK,
    part: 'hip shaft',
    mode: 'yields when the nut of its stack is tightened',
    consequence: 'breaks',
    when: ['asBuilt'],
    demand: stress,
    capacity: yieldStrength,
    demandIs: 'the von Mises stress of preload and torque, in the ring that drilling leaves of the shaft',
    capacityIs: 'the yield strength of its property class',
    remedy: 'less tightening torque, a thicker shaft, or a higher property class',
  },
]
