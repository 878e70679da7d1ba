import { field, word } from '../../../leaves.js'
import type { LegNumbers } from '../../../leg-numbers.js'
import { NoValueError } from '../../../no-value.js'
import type { DrivenJoint, Joint } from '../../../numbers.js'

/** Kinds of drive whose output turns the joint itself, on bearings of its own. */
const KINDS = ['direct', 'gearbox'] as const
type Carried = Extract<LegNumbers['joints'][Joint]['drive'], { readonly kind: (typeof KINDS)[number] }>

/** Why the output of a joint's drive has no bearings that could carry it; absent where it has. */
export const noOutputBearing = (x: LegNumbers, joint: Joint): string | undefined =>
  (KINDS as readonly string[]).includes(x.joints[joint].drive.kind) ? undefined : 'no motor or gearbox turns the joint itself'

const drive = (x: LegNumbers, joint: Joint): Carried => {
  if (noOutputBearing(x, joint) === undefined) return x.joints[joint].drive as Carried
  throw new NoValueError(`no motor or gearbox turns the ${joint} itself`)
}

export const overhang = field('outputBearing.overhang', ['joint'], 'length', (x, { joint }) => drive(x, joint).overhang)
export const radialLoad = field('outputBearing.radialLoad', ['joint'], 'force', (x, { joint }) => drive(x, joint).radialLoad ?? Number.NaN)
export const tiltingMoment = field(
  'outputBearing.tiltingMoment',
  ['joint'],
  'torque',
  (x, { joint }) => drive(x, joint).tiltingMoment ?? Number.NaN,
)
/**
 * What carries the joint besides those bearings, or the drum on the hip axis of a knee that is driven from there, as a clause; absent where they carry it
 * alone.
 */
export const carrier = word('outputBearing.carrier', ['joint'], (x, { joint }) => carrierOf(x, joint))

/** The same of a leg. */
export function carrierOf(x: LegNumbers, joint: string): string | undefined {
  const { through } = x.joints.knee
  if (joint === 'knee' && through !== undefined)
    return through.kind === 'rod' && through.pivots?.drum !== undefined ? 'ball bearing carries its drum' : undefined
  const { pin, shaft, bearings } = { pin: undefined, shaft: undefined, bearings: undefined, ...x.joints[joint as DrivenJoint] }
  if (pin !== undefined) return 'pin carries the joint'
  if (shaft !== undefined) return 'shaft carries the joint'
  return bearings !== undefined ? 'pair of bearings carries the joint' : undefined
}

/** Whether the drum on the hip axis of a knee that is driven from there turns on the shaft or pin of the hip, and not on the output of its own motor or gearbox. */
export const drumOnHip = word(
  'through.drumOnHip',
  [],
  (x) => x.joints.knee.through !== undefined && noOutputBearing(x, 'knee') !== undefined,
)
