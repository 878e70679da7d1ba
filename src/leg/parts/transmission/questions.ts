import { word } from '../../leaves.js'
import { driveKindOf } from '../../numbers.js'
import { type At, type Family, question, type Use, type Value } from '../../run/index.js'

/** How a joint is driven. */
export const driveKind = word('drive.kind', ['joint'], (x, { joint }) => driveKindOf(x, joint))
const transmission: Family<'joint'> = { id: 'transmission', kind: driveKind }

/** Turns of the motor for one of the joint, without sign. */
export const ratio = question<number, 'joint'>(transmission, 'ratio', ['joint'])
/** The same with sign: negative where motor and joint turn against each other. */
export const signedRatio = question<number, 'joint'>(transmission, 'signedRatio', ['joint'])
/** Efficiency from motor shaft to joint. */
export const efficiency = question<number, 'joint'>(transmission, 'efficiency', ['joint'])
/** Mass that sits beside the motor on its plate; absent where it counts as nothing. */
export const mass = question<number | undefined, 'joint'>(transmission, 'mass', ['joint'])
/** Mass of what sits on the axis of the joint, and of what runs between both axes: it counts where the axes are those of hip and knee. */
export const massByPlace = question<{ readonly atJoint: number; readonly between: number } | undefined, 'joint'>(
  transmission,
  'massByPlace',
  ['joint'],
)
/** Inertia of what turns with the rotor, and of what turns with the joint; absent where it counts as nothing. */
export const ownInertia = question<{ readonly atMotor: number; readonly atJoint: number } | undefined, 'joint'>(
  transmission,
  'ownInertia',
  ['joint'],
)
/** Force of the transmission across the axis of the joint. */
export const shaftForce = question<number, 'joint' | 'event' | 'air' | 'age'>(transmission, 'shaftForce', ['joint', 'event', 'air', 'age'])
/** The part of that force along the line of both axes, which presses their frame together: under load, and at rest. Absent where they press on each other. */
export const alongAxes = question<number | undefined, 'joint' | 'event' | 'air' | 'age'>(transmission, 'alongAxes', [
  'joint',
  'event',
  'air',
  'age',
])
export const alongAtRest = question<number | undefined, 'joint' | 'air' | 'age'>(transmission, 'alongAtRest', ['joint', 'air', 'age'])
/** Force across the bolts of the motor, besides that of its torque. */
export const motorForce = question<number, 'joint' | 'event' | 'air' | 'age'>(transmission, 'motorForce', ['joint', 'event', 'air', 'age'])
/** Stiffness at the joint, motor held: without load, and under the largest torque of an event; absent where nothing gives. */
export const stiffnessAtRest = question<number | undefined, 'joint' | 'air' | 'age'>(transmission, 'stiffnessAtRest', [
  'joint',
  'air',
  'age',
])
export const stiffness = question<number | undefined, 'joint' | 'event' | 'air' | 'age'>(transmission, 'stiffness', [
  'joint',
  'event',
  'air',
  'age',
])
/** Torque at the joint beyond which a blow loses the tension of a span, or breaks a gearbox; absent where none is calculated. */
export const blowTorque = question<number | undefined, 'joint' | 'air' | 'age'>(transmission, 'blowTorque', ['joint', 'air', 'age'])
/** Angle that the joint turns with its motor held under the largest torque of an event. */
export const windup = question<number, 'joint' | 'event' | 'air' | 'age'>(transmission, 'windup', ['joint', 'event', 'air', 'age'])
/** Angle through which the joint turns freely with its motor held. */
export const freePlay = question<number, 'joint'>(transmission, 'freePlay', ['joint'])

/** Tensions of what runs between two pulleys. */
export interface Tensions {
  readonly pretension: number
  readonly taut: number
  readonly slack: number
  readonly peak: number
}
/** Tensions of cord or belt; absent where neither is there. */
export const tensions = question<Tensions | undefined, 'joint' | 'event' | 'air' | 'age'>(transmission, 'tensions', [
  'joint',
  'event',
  'air',
  'age',
])

const QUESTIONS = {
  ratio,
  signedRatio,
  efficiency,
  mass,
  massByPlace,
  ownInertia,
  shaftForce,
  alongAxes,
  alongAtRest,
  motorForce,
  stiffnessAtRest,
  stiffness,
  blowTorque,
  windup,
  freePlay,
  tensions,
} as const

type Answer<Q> = Q extends Value<infer T, infer A> ? (use: Use<A>, at: At<A>) => T : never
/** What each kind of transmission answers. A kind without an answer does not compile. */
export type Transmission = { readonly [Q in keyof typeof QUESTIONS]: Answer<(typeof QUESTIONS)[Q]> }
