import type { SPRING_WIRES } from '../../../materials/index.js'
import { band, field, optional, reference, word } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { NoValueError } from '../../no-value.js'
import type { Joint } from '../../numbers.js'
import { constant } from '../../run/index.js'

/** The spring of a joint; absent where it has none. The sideways hip has none. */
export const springOf = (x: LegNumbers, joint: Joint) => x.joints[joint]?.spring
type Spring = NonNullable<ReturnType<typeof springOf>>
type SpringOf<K extends Spring['kind']> = Extract<Spring, { readonly kind: K }>

function own<K extends Spring['kind']>(x: LegNumbers, joint: Joint, kind: K): SpringOf<K> {
  const spring = springOf(x, joint)
  if (spring?.kind === kind) return spring as SpringOf<K>
  throw new NoValueError(`the ${joint} has no ${kind} spring`)
}
function any(x: LegNumbers, joint: Joint): Spring {
  const spring = springOf(x, joint)
  if (spring === undefined) throw new NoValueError(`the ${joint} has no spring`)
  return spring
}
const torsionField = (name: string, kind: Parameters<typeof field>[2], read: (spring: SpringOf<'torsion'>) => number) =>
  field(`spring.${name}`, ['joint'], kind, (x, { joint }) => read(own(x, joint, 'torsion')))
const extensionField = (name: string, kind: Parameters<typeof field>[2], read: (spring: SpringOf<'extension'>) => number) =>
  field(`spring.${name}`, ['joint'], kind, (x, { joint }) => read(own(x, joint, 'extension')))

/** Kind of the spring; absent without one. */
export const kind = word('spring.kind', ['joint'], (x, { joint }) => springOf(x, joint)?.kind)
export const wire = word('spring.wire', ['joint'], (x, { joint }): (typeof SPRING_WIRES)[number] => any(x, joint).wire)
export const wireDiameter = field('spring.wireDiameter', ['joint'], 'length', (x, { joint }) => any(x, joint).wireDiameter)
export const coilDiameter = field('spring.coilDiameter', ['joint'], 'length', (x, { joint }) => any(x, joint).coilDiameter)
export const coils = field('spring.coils', ['joint'], 'count', (x, { joint }) => any(x, joint).coils)

export const torsionRate = optional('spring.torsionRate', ['joint'], 'torsionalStiffness', (x, { joint }) => own(x, joint, 'torsion').rate)
export const fixedLeg = torsionField('fixedLeg', 'length', (spring) => spring.fixedLeg)
export const movingLeg = torsionField('movingLeg', 'length', (spring) => spring.movingLeg)
export const freeAngle = torsionField('freeAngle', 'angle', (spring) => spring.freeAngle)
export const winds = word('spring.winds', ['joint'], (x, { joint }) => own(x, joint, 'torsion').winds)
export const mandrel = optional('spring.mandrel', ['joint'], 'length', (x, { joint }) => own(x, joint, 'torsion').mandrel)
export const seatLength = torsionField('seat.length', 'length', (spring) => spring.seat.length)

export const extensionRate = optional(
  'spring.extensionRate',
  ['joint'],
  'linearStiffness',
  (x, { joint }) => own(x, joint, 'extension').rate,
)
export const freeLength = extensionField('freeLength', 'length', (spring) => spring.freeLength)
export const initialTension = extensionField('initialTension', 'force', (spring) => spring.initialTension)
export const hookRadius = optional('spring.hookRadius', ['joint'], 'length', (x, { joint }) => own(x, joint, 'extension').hookRadius)
export const bendRadius = optional('spring.bendRadius', ['joint'], 'length', (x, { joint }) => own(x, joint, 'extension').bendRadius)
export const fixedUp = extensionField('fixedEnd.up', 'length', (spring) => spring.fixedEnd.up)
export const fixedForward = extensionField('fixedEnd.forward', 'length', (spring) => spring.fixedEnd.forward)
export const movingDown = extensionField('movingEnd.down', 'length', (spring) => spring.movingEnd.down)
export const movingForward = extensionField('movingEnd.forward', 'length', (spring) => spring.movingEnd.forward)
export const pinDiameter = extensionField('anchor.pinDiameter', 'length', (spring) => spring.anchor.pinDiameter)
export const pinDepth = extensionField('anchor.depth', 'length', (spring) => spring.anchor.depth)
export const pinArm = extensionField('anchor.arm', 'length', (spring) => spring.anchor.arm)

/** Material that the legs press on, or that holds the pins. */
export const holderMaterial = reference('spring.holderMaterial', ['joint'], 'material', (x, { joint }) => {
  const spring = any(x, joint)
  return spring.kind === 'torsion' ? spring.seat.material : spring.anchor.material
})

/** Rate of the spring at hand over the one of the document: tolerance of wire and coils, and friction between coils, which works both ways. */
export const rateScatter = band(
  'spring.rateScatter',
  'rate of the spring over that of the specification',
  ['joint'],
  'log the torque of the joint over its angle with the spring and without it, the drive loose (springTorque)',
  (x, { joint }) => {
    const { rateScatter: scatter } = any(x, joint)
    return { low: 1 - scatter, typical: 1, high: 1 + scatter }
  },
  { level: 'commonPractice', where: 'scatter of the rate that the specification gives' },
)
const share = (id: string, title: string, typical: number, where: string) =>
  constant(id, { title, kind: 'ratio', typical, source: { level: 'unverified', where } })
const TABLE = 'Standard Handbook of Machine Design, allowable stresses of extension springs, read on a page of a calculator'
/** Shares of the tensile strength that a spring bears at rest, by where it is stressed: of carbon steel, and of stainless wire. */
export const shares = {
  body: {
    carbon: share('spring.share.body', 'shear of the coils of a spring at rest over tensile strength', 0.45, TABLE),
    stainless: share(
      'spring.share.body.stainless',
      'shear of the coils of a spring at rest over tensile strength, stainless wire',
      0.35,
      TABLE,
    ),
  },
  hookBending: {
    carbon: share('spring.share.hookBending', 'bending of a hook at rest over tensile strength', 0.75, TABLE),
    stainless: share('spring.share.hookBending.stainless', 'bending of a hook at rest over tensile strength, stainless wire', 0.55, TABLE),
  },
  hookShear: {
    carbon: share('spring.share.hookShear', 'shear of the bend of a hook at rest over tensile strength', 0.4, TABLE),
    stainless: share(
      'spring.share.hookShear.stainless',
      'shear of the bend of a hook at rest over tensile strength, stainless wire',
      0.3,
      TABLE,
    ),
  },
  torsion: {
    carbon: share(
      'spring.share.torsion',
      'bending of the wire of a torsion spring at rest over tensile strength',
      0.7,
      'EN 13906-3, permissible bending stress of torsion springs',
    ),
    stainless: share(
      'spring.share.torsion.stainless',
      'bending of the wire of a torsion spring at rest over tensile strength, stainless wire',
      0.6,
      'Standard Handbook of Machine Design, torsion springs of stainless wire',
    ),
  },
} as const
/** Shares of the tensile strength up to which a stress may rise from zero ten million times, not shot-peened. */
export const enduringShares = {
  body: share(
    'spring.enduring.body',
    'enduring shear of the coils of a spring over tensile strength',
    0.3,
    'Standard Handbook of Machine Design, extension springs, shear of the body',
  ),
  hookBending: share('spring.enduring.hookBending', 'enduring bending of a hook over tensile strength', 0.45, TABLE),
  hookShear: share(
    'spring.enduring.hookShear',
    'enduring shear of the bend of a hook over tensile strength',
    0.28,
    'Standard Handbook of Machine Design, extension springs, shear of the end',
  ),
  torsion: share(
    'spring.enduring.torsion',
    'enduring bending of the wire of a torsion spring over tensile strength',
    0.45,
    `${TABLE}; wire in bending`,
  ),
} as const
/** Ultimate shear strength over tensile strength. */
export const shearOverTensile = share(
  'spring.shearOverTensile',
  'shear strength of spring wire over its tensile strength',
  0.67,
  "Shigley's Mechanical Engineering Design, spring wire, S_su = 0.67 S_ut",
)
/** Strength of the pins that springs are hooked to. */
export const pinStrength = constant('spring.pinStrength', {
  title: 'yield strength of the pins that hold a spring',
  kind: 'stress',
  typical: 640e6,
  source: { level: 'assumption', where: 'pins or screws of class 8.8: yield at 640 MPa' },
})
/** Cycles of the load in one of the surge of the coils, below which the load is no longer at rest. */
export const surgeShare = constant('spring.surgeShare', {
  title: 'least ratio of the surge frequency of a spring to that of its load',
  kind: 'ratio',
  typical: 15,
  source: { level: 'commonPractice', where: 'the surge of a spring lies fifteen to twenty times above the rate of its load' },
})
