import { field, word } from '../../../leaves.js'
import type { LegNumbers } from '../../../leg-numbers.js'
import type { DrivenJoint, Joint } from '../../../numbers.js'

/** Kinds of drive whose output turns the joint itself, on bearings of its own. */
const KINDS = ['direct', 'gearbox'] as const
type Carried = Extract<LegNumbers['joints'][Joint]['drive'], { readonly kind: (typeof KINDS)[number] }>

/** Why the output of a joint's drive has no bearings that could carry it; absent where it has. */
export const noOutputBearing = (x: LegNumbers, joint: Joint): string | undefined =>
  (KINDS as readonly string[]).includes(x.joints[joint].drive.kind) ? undefined : 'no motor or gearbox turns the joint itself'

const drive = (x: LegNumbers, joint: Joint): Carried => {
  if (noOutputBearing(x, joint) === undefined) return x.joints[joint].drive as Carried
  throw new RangeError(`no motor or gearbox turns the ${joint} itself`)
}

export const overhang = field('outputBearing.overhang', ['joint'], 'length', (x, { joint }) => drive(x, joint).overhang)
export const radialLoad = field('outputBearing.radialLoad', ['joint'], 'force', (x, { joint }) => drive(x, joint).radialLoad ?? Number.NaN)
export const tiltingMoment = field(
  'outputBearing.tiltingMoment',
  ['joint'],
  'torque',
  (x, { joint }) => drive(x, joint).tiltingMoment ?? Number.NaN,
)
/** What carries the joint besides those bearings; absent where they carry it alone. */
export const carrier = word('outputBearing.carrier', ['joint'], (x, { joint }) => {
  const { pin, shaft, bearings } = { pin: undefined, shaft: undefined, bearings: undefined, ...x.joints[joint as DrivenJoint] }
  return pin !== undefined ? 'pin' : shaft !== undefined ? 'shaft' : bearings !== undefined ? 'pair of bearings' : undefined
})
