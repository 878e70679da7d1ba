import { springOverTravel } from '../../../kinematics/index.js'
import { springWire } from '../../../materials/index.js'
import { extensionSpringForce, helicalSpringRate, torsionSpringRate, torsionSpringTorque } from '../../../structures/index.js'
import { line, type Use, value } from '../../run/index.js'
import { from, to } from '../joints/fields.js'
import { hipOf, kneeOf } from '../motion/instances.js'
import * as spring from './fields.js'
import type { ExtensionLaw, SpringLaw, TorsionLaw } from './law.js'

const bothLegs = line.sum('both legs together', { fixed: 'length', moving: 'length' }, 'length')
const ofTorsion = line.product('rate of this torsion spring', { rate: 'torsionalStiffness', scatter: 'ratio' }, 'torsionalStiffness')
const ofExtension = line.product('rate of this extension spring', { rate: 'linearStiffness', scatter: 'ratio' }, 'linearStiffness')
const ofTension = line.product('initial tension of this spring', { tension: 'force', scatter: 'ratio' }, 'force')
const larger = line.largest('larger angle', { one: 'angle', other: 'angle' }, 'angle')
const smaller = line.smallest('smaller angle', { one: 'angle', other: 'angle' }, 'angle')
const wound = line.product('torque of a wound spring', { rate: 'torsionalStiffness', windup: 'angle' }, 'torque')
const onAxis = line(
  'force of both legs on the axis',
  { torque: 'torque', fixed: 'length', moving: 'length' },
  'force',
  'torque / fixed + torque / moving',
  (x) => x.torque / x.fixed + x.torque / x.moving,
)

/** The wire of a spring: strength, moduli, density. */
export const wire = value('spring.wireNow', ['joint'], (use) =>
  use.run(springWire, { wire: use(spring.wire), wireDiameter: use(spring.wireDiameter) }),
)
/** Wire and coil as the formulas take them. */
export const coil = (use: Use<'joint'>) => ({ wireDiameter: use(spring.wireDiameter), coilDiameter: use(spring.coilDiameter) })

/** Rate of a torsion spring as the document or its wire has it. */
export const nominalTorsionRate = value(
  'spring.nominalTorsionRate',
  ['joint'],
  (use) =>
    use(spring.torsionRate) ??
    use.run(torsionSpringRate, {
      ...coil(use),
      bodyCoils: use(spring.coils),
      legs: use.run(bothLegs, { fixed: use(spring.fixedLeg), moving: use(spring.movingLeg) }),
      modulus: use(wire).modulus,
    }).rate,
)
/** Rate of an extension spring as the document or its wire has it. */
export const nominalExtensionRate = value(
  'spring.nominalExtensionRate',
  ['joint'],
  (use) =>
    use(spring.extensionRate) ??
    use.run(helicalSpringRate, { ...coil(use), activeCoils: use(spring.coils), shearModulus: use(wire).shearModulus }),
)

const torsionRate = value('spring.torsionRateAtHand', ['joint'], (use) =>
  use.run(ofTorsion, { rate: use(nominalTorsionRate), scatter: use(spring.rateScatter) }),
)
const extensionRate = value('spring.extensionRateAtHand', ['joint'], (use) =>
  use.run(ofExtension, { rate: use(nominalExtensionRate), scatter: use(spring.rateScatter) }),
)
const initialTension = value('spring.initialTensionAtHand', ['joint'], (use) =>
  use.run(ofTension, { tension: use(spring.initialTension), scatter: use(spring.rateScatter) }),
)

/** A torsion spring as it is at hand. */
export const torsionLaw = value(
  'spring.torsionLaw',
  ['joint'],
  (use): TorsionLaw => ({
    freeAngle: use(spring.freeAngle),
    winds: use(spring.winds),
    rate: use(torsionRate),
  }),
)
/** An extension spring as it is at hand. */
export const extensionLaw = value(
  'spring.extensionLaw',
  ['joint'],
  (use): ExtensionLaw => ({
    fixedUp: use(spring.fixedUp),
    fixedForward: use(spring.fixedForward),
    movingDown: use(spring.movingDown),
    movingForward: use(spring.movingForward),
    freeLength: use(spring.freeLength),
    initialTension: use(initialTension),
    rate: use(extensionRate),
  }),
)
/** The spring of a joint; absent where it has none. */
export const springLaw = value('spring.law', ['joint'], (use): SpringLaw | undefined => {
  const kind = use(spring.kind)
  if (kind === undefined) return undefined
  return kind === 'torsion' ? { torsion: use(torsionLaw) } : { extension: use(extensionLaw) }
})

/** Whether springs stand beside the drives of a leg. */
export const isSprung = value(
  'spring.isSprung',
  ['leg'],
  (use, at) =>
    use.at(springLaw, { joint: hipOf(use, at.leg) }) !== undefined || use.at(springLaw, { joint: kneeOf(use, at.leg) }) !== undefined,
)

/** How far a torsion spring is wound between two joint angles: most and least, its torque there, and the energy that it stores at most. */
export function windupBetween(use: Use<'joint'>, lowest: number, highest: number) {
  const law = use(torsionLaw)
  const at = (jointAngle: number) => use.run(torsionSpringTorque, { jointAngle, ...law })
  const ends = [at(lowest), at(highest)] as const
  const [one, other] = [ends[0].windup, ends[1].windup]
  const most = use.run(larger, { one, other })
  const least = use.run(smaller, { one, other })
  const torque = (windup: number) => use.run(wound, { rate: law.rate, windup })
  return { most, least, mostTorque: torque(most), leastTorque: torque(least), energy: ends[one > other ? 0 : 1].energy }
}
/** How far an extension spring is stretched between two joint angles, and its pull there. */
export function stretchBetween(use: Use<'joint'>, lowest: number, highest: number) {
  const law = use(extensionLaw)
  const { fixedUp, fixedForward, movingDown, movingForward, freeLength, initialTension, rate } = law
  const { shortest, longest } = use.run(springOverTravel, { fixedUp, fixedForward, movingDown, movingForward, from: lowest, to: highest })
  const pull = (length: number) => use.run(extensionSpringForce, { length, freeLength, initialTension, rate })
  const most = pull(longest)
  return { shortest, longest, mostForce: most.force, leastForce: pull(shortest).force, energy: most.energy }
}
/** The same over the whole travel of the joint. */
export const windupOfTravel = value('spring.windup', ['joint'], (use) => windupBetween(use, use(from), use(to)))
export const stretchOfTravel = value('spring.stretch', ['joint'], (use) => stretchBetween(use, use(from), use(to)))

const farther = line(
  'largest torque of an extension spring',
  { force: 'force', up: 'length', forward: 'length', down: 'length', ahead: 'length' },
  'torque',
  'force · min(hypot(up, forward), hypot(down, ahead))',
  (x) => x.force * Math.min(Math.hypot(x.up, x.forward), Math.hypot(x.down, x.ahead)),
)
/** No less than the torque that the spring of a joint puts on either side of it, over the travel; absent without a spring. */
export const mostTorque = value('spring.mostTorque', ['joint'], (use) => {
  const kind = use(spring.kind)
  if (kind === undefined) return undefined
  if (kind === 'torsion') return use(windupOfTravel).mostTorque
  const { fixedUp: up, fixedForward: forward, movingDown: down, movingForward: ahead } = use(extensionLaw)
  // The line of the pull passes through both pins: its arm is no longer than the way from the axis to either.
  return use.run(farther, { force: use(stretchOfTravel).mostForce, up, forward, down, ahead })
})

/** Largest force that the spring of a joint puts on its axis, and along its links, over the travel; absent without a spring. */
export const springForce = value('spring.force', ['joint'], (use) => {
  const kind = use(spring.kind)
  if (kind === undefined) return undefined
  if (kind === 'extension') return use(stretchOfTravel).mostForce
  return use.run(onAxis, { torque: use(windupOfTravel).mostTorque, fixed: use(spring.fixedLeg), moving: use(spring.movingLeg) })
})
