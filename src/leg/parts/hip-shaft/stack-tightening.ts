import { drilledBolt, headBearing, preloadFromTorque, tighteningTorque } from '../../../fasteners/index.js'
import type { Check } from '../../cases/check.js'
import { type Use, value } from '../../run/index.js'
import { airTemperature, day } from '../load/fields.js'
import { allowableStress } from '../materials/values.js'
import * as shaft from './fields.js'
import { yieldStrength } from './shaft.js'
import { innerDiameter, material, nut, tighteningTorque as nutTorque, outerDiameter } from './stack-fields.js'

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
/** Pressure that the ring bears for a day: the clamp load fades as it creeps, so that its first day decides. */
const allowed = value('stack.pressureAllowed', ['event', 'air'], (use) =>
  allowableStress(use, use(material), { direction: 'alongLayers', temperature: use(airTemperature), duration: use(day) }),
)
const pressure = value(
  'stack.pressure',
  ['event', 'air'],
  (use) =>
    use.run(headBearing, {
      force: use(stackPreload),
      bearingDiameter: use(outerDiameter),
      holeDiameter: use(innerDiameter),
      allowablePressure: use(allowed),
    }).pressure,
)

const STACK = { kind: 'stress', scope: 'leg' } as const

/** What a nut that is tightened too hard does to shaft and stack. */
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
  {
    id: 'shaftStack.crush',
    ...STACK,
    part: 'stack on the hip shaft',
    mode: 'is crushed under its clamp load',
    consequence: 'fails to work',
    when: ['walks', 'repeats'],
    demand: pressure,
    capacity: allowed,
    demandIs: 'the pressure of the full preload on the smallest ring in which two parts touch',
    capacityIs: 'the strength of the softest part for a day at the temperature of the air',
    remedy: 'less tightening torque, a wider ring, or a harder part',
  },
]
