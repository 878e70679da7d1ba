import { embeddedPin } from '../../../fasteners/index.js'
import { extensionSpringHook, helicalSpringShear, springSurge, torsionSpringStress, woundTorsionSpring } from '../../../structures/index.js'
import { line, type Use, type Value, value } from '../../run/index.js'
import { jointMotion } from '../motion/values.js'
import * as spring from './fields.js'
import { coil, springForce, stretchBetween, stretchOfTravel, windupBetween, windupOfTravel, wire } from './values.js'

const shareOf = line.product('share of the strength of the wire', { share: 'ratio', strength: 'stress' }, 'stress')
const halfLoop = line('radius of a full loop', { coilDiameter: 'length' }, 'length', 'coilDiameter / 2', (x) => x.coilDiameter / 2)
const halfOf = line('half of a stress', { stress: 'stress' }, 'stress', 'stress / 2', ({ stress }) => stress / 2)
const ultimateShear = line.product('ultimate shear strength of the wire', { share: 'ratio', tensile: 'stress' }, 'stress')
const reversed = line(
  'equivalent fully reversed stress amplitude',
  { low: 'stress', high: 'stress', limit: 'stress', ultimate: 'stress' },
  'stress',
  '(high − low) / 2 + (high + low) / 2 · limit / ultimate',
  (x) => (x.high - x.low) / 2 + (((x.high + x.low) / 2) * x.limit) / x.ultimate,
)
const endless = line(
  'endurance amplitude of the wire, fully reversed',
  { half: 'stress', ultimate: 'stress' },
  'stress',
  'half / (1 − half / ultimate)',
  (x) => x.half / (1 - x.half / x.ultimate),
)
const onSeat = line(
  'pressure under a leg',
  { torque: 'torque', fixed: 'length', moving: 'length', wire: 'length', length: 'length' },
  'stress',
  'torque / min(fixed, moving) / (wire · length)',
  (x) => x.torque / Math.min(x.fixed, x.moving) / (x.wire * x.length),
)
const slower = line.quotient('frequency of a load that counts as at rest', { surge: 'frequency', share: 'ratio' }, 'frequency')

/** Where the wire of a spring is stressed. */
export type Spot = 'torsion' | 'body' | 'hookBending' | 'hookShear'
const SHEAR: readonly Spot[] = ['body', 'hookShear']

function hook(use: Use<'joint'>, force: number) {
  const sizes = coil(use)
  return use.run(extensionSpringHook, {
    force,
    ...sizes,
    hookRadius: use(spring.hookRadius) ?? use.run(halfLoop, { coilDiameter: sizes.coilDiameter }),
    bendRadius: use(spring.bendRadius) ?? sizes.wireDiameter,
  })
}
/** Stress of the wire at a spot under a torque (of a torsion spring) or a pull. */
function stressAt(use: Use<'joint'>, spot: Spot, load: number): number {
  if (spot === 'torsion') return use.run(torsionSpringStress, { torque: load, ...coil(use) }).stress
  if (spot === 'body') return use.run(helicalSpringShear, { force: load, ...coil(use) }).shearStress
  return spot === 'hookBending' ? hook(use, load).bendingStress : hook(use, load).shearStress
}

/** Largest stress over the travel of the joint. */
export const stressOf = (spot: Spot): Value<number, 'joint'> =>
  value(`spring.${spot}Stress`, ['joint'], (use) =>
    stressAt(use, spot, spot === 'torsion' ? use(windupOfTravel).mostTorque : use(stretchOfTravel).mostForce),
  )
/** Stress that the wire bears at rest. */
export const allowedOf = (spot: Spot): Value<number, 'joint'> =>
  value(`spring.${spot}Allowed`, ['joint'], (use) => {
    const { carbon, stainless } = spring.shares[spot]
    return use.run(shareOf, { share: use(use(spring.wire) === 'stainless' ? stainless : carbon), strength: use(wire).tensileStrength })
  })

const ultimateOf = (use: Use<'joint'>, spot: Spot): number => {
  const tensile = use(wire).tensileStrength
  return SHEAR.includes(spot) ? use.run(ultimateShear, { share: use(spring.shearOverTensile), tensile }) : tensile
}
/** Amplitude that the wire bears in every step, about no mean stress. */
const limitOf = (use: Use<'joint'>, spot: Spot): number => {
  const stress = use.run(shareOf, { share: use(spring.enduringShares[spot]), strength: use(wire).tensileStrength })
  return use.run(endless, { half: use.run(halfOf, { stress }), ultimate: ultimateOf(use, spot) })
}
export const enduredOf = (spot: Spot): Value<number, 'joint'> => value(`spring.${spot}Endured`, ['joint'], (use) => limitOf(use, spot))
/** What a stride does to the wire, as an amplitude about no mean stress. */
export const cycledOf = (spot: Spot): Value<number, 'joint' | 'event'> =>
  value(`spring.${spot}Cycled`, ['joint', 'event'], (use) => {
    const { lowest, highest } = use(jointMotion)
    const loads = (): readonly [number, number] => {
      if (spot === 'torsion') {
        const { mostTorque, leastTorque } = windupBetween(use, lowest, highest)
        return [leastTorque, mostTorque]
      }
      const { mostForce, leastForce } = stretchBetween(use, lowest, highest)
      return [leastForce, mostForce]
    }
    const [low, high] = loads().map((load) => stressAt(use, spot, load)) as [number, number]
    return use.run(reversed, { low, high, limit: limitOf(use, spot), ultimate: ultimateOf(use, spot) })
  })

/** Room in the coil of a torsion spring where it is wound most. */
export const roomInCoil = value(
  'spring.roomInCoil',
  ['joint'],
  (use) => use.run(woundTorsionSpring, { ...coil(use), bodyCoils: use(spring.coils), windup: use(windupOfTravel).most }).innerDiameter,
)
/** Frequency of a stride below which the coils of an extension spring do not swing of themselves. */
export const quietFrequency = value('spring.quietFrequency', ['joint'], (use) => {
  const { shearModulus, density } = use(wire)
  const surge = use.run(springSurge, { ...coil(use), activeCoils: use(spring.coils), shearModulus, density })
  return use.run(slower, { surge, share: use(spring.surgeShare) })
})

const onPin = (use: Use<'joint'>) =>
  use.run(embeddedPin, {
    force: use(springForce) ?? 0,
    arm: use(spring.pinArm),
    depth: use(spring.pinDepth),
    diameter: use(spring.pinDiameter),
  })
/** Pressure on what holds the pins of an extension spring, at the mouth of the hole. */
export const pinPressure = value('spring.pinPressure', ['joint'], (use) => onPin(use).mouthPeakPressure)
/** Bending stress of those pins. */
export const pinBending = value('spring.pinBending', ['joint'], (use) => onPin(use).bendingStress)
/** Pressure under the legs of a torsion spring. */
export const seatPressure = value('spring.seatPressure', ['joint'], (use) =>
  use.run(onSeat, {
    torque: use(windupOfTravel).mostTorque,
    fixed: use(spring.fixedLeg),
    moving: use(spring.movingLeg),
    wire: use(spring.wireDiameter),
    length: use(spring.seatLength),
  }),
)
