// What must and must not compile of the leg's values; the type check of the tests is the test.
import { leaf, type Of, type Use, value } from '../../src/leg/run/index.js'

const number = { kind: 'ratio', read: () => 1 } as const
const resistance = leaf('motor.resistance', ['motor'], number)
const modulus = leaf('material.modulus', ['material'], number)
const byAge = leaf('pretension', ['joint', 'air', 'age'], number)
const plateMaterial = leaf('plate.material', ['plate'], { kind: 'word', read: () => 0 as Of<'material'>, refersTo: 'material' })
const duty = value('duty', ['joint', 'event'], (use) => use(resistance) * 2)
const heat = value('heat', ['joint', 'event', 'air'], (use) => use(duty) + use(resistance))
const plateModulus = value('plate.modulus', ['plate'], (use) => use.at(modulus, { material: use(plateMaterial) }))
export const sum = value('plate.loss', ['plate', 'event', 'air'], (use, at) =>
  use.all('joint', { plate: at.plate }).reduce((total, joint) => total + use.at(heat, { joint }), 0),
)
export const throughJoint = value('v', ['joint'], (use) => use(plateModulus))
export const ofStance = value('g', ['event'], (use) => use(leaf('stance.duty', ['stance'], number)))
const helper = (use: Use<'motor'>) => use(resistance)
export const helped = value('h', ['joint', 'event'], (use) => helper(use))
export const inferred: number = null as unknown as typeof heat.holds
export const everywhere = value('c', ['joint'], (use) => use(leaf('constant', [], number)))

// @ts-expect-error a plate is no material
export const bad0 = value('x', ['plate'], (use, at) => use.at(modulus, { material: at.plate }))
// @ts-expect-error a motor does not say which joint
export const bad1 = value('x', ['motor'], (use) => use(duty))
// @ts-expect-error the event is missing
export const bad2 = value('x', ['joint'], (use) => use(duty))
// @ts-expect-error a plate does not say which joint
export const bad3 = value('x', ['plate', 'event', 'air'], (use) => use(heat))
const wants = (use: Use<'joint'>) => use(plateModulus)
// @ts-expect-error the helper needs a joint
export const bad4 = value('x', ['event'], (use) => wants(use))
// @ts-expect-error the helper needs a joint, a motor does not say which
export const bad5 = value('x', ['motor'], (use) => wants(use))
// @ts-expect-error the age is missing
export const bad6 = value('x', ['joint'], (use) => use.at(byAge, { air: 0 as Of<'air'> }))
