import { clearanceHole, metricThread, propertyClass, smallBallBearing, socketHead } from '../../../fasteners/index.js'
import { field, optional, record, reference, word } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { NoValueError } from '../../no-value.js'
import { constant } from '../../run/index.js'
import { type BearingNumbers, bearingOf } from '../../schema/tables.js'
import { rodOf } from '../transmission/through-hip/fields.js'
import { PIVOT_WORDS, type Pivot } from './pivots.js'

/** What an end of the rod, or its drum, is held by; absent where the document does not say. */
export const endOf = (x: LegNumbers, pivot: 'crank' | 'rocker' | 'drum') => rodOf(x)?.pivots?.[pivot]
type InDocument = NonNullable<LegNumbers['pins'][string]['bearing']>
/** A ball bearing in its seat. Of the sideways hip the document does not give what is round the seat. */
type Seated = Omit<InDocument, 'housingDiameter'> & { readonly housingDiameter: number | undefined }
/** The ball bearing of a place; absent where it has none. */
export function seatedOf(x: LegNumbers, pivot: Pivot): Seated | undefined {
  if (pivot === 'sidewaysHip') return pairOfSideways(x)
  return pivot === 'hip' || pivot === 'knee' ? x.pins[x.joints[pivot].pin ?? '']?.bearing : endOf(x, pivot)?.bearing
}
/** The pair of the sideways hip, in the terms of a bearing in a seat. What is round its seat is a share of the ring, and its cap has no screw in the axis. */
function pairOfSideways(x: LegNumbers): Seated | undefined {
  const pair = sidewaysPairOf(x)
  if (pair === undefined) return undefined
  const { size, own, spacing, seatInterference, retained } = pair
  return {
    size,
    own,
    pairSpacing: spacing,
    housingDiameter: undefined,
    seatInterference,
    retainedBy: retained ? 'cap' : 'press',
    cap: undefined,
  }
}
/** The pair of bearings that the sideways hip turns in; absent where the document names none. */
export const sidewaysPairOf = (x: LegNumbers) => x.bearings[x.joints.sidewaysHip?.bearings ?? '']
const seatedIn = (x: LegNumbers, pivot: Pivot) => {
  const found = seatedOf(x, pivot)
  if (found === undefined) throw new NoValueError(`the ${PIVOT_WORDS[pivot]} has no ball bearing`)
  return found
}
const bearingIn = (x: LegNumbers, pivot: Pivot) => {
  const { size, own } = seatedIn(x, pivot)
  return bearingOf(size, own) as BearingNumbers
}
const capIn = (x: LegNumbers, pivot: Pivot) => {
  const { cap } = seatedIn(x, pivot)
  if (cap === undefined) throw new NoValueError(`the bearing of the ${PIVOT_WORDS[pivot]} has no cap`)
  return cap
}

/** Material round the seat: of the link, of the arm or drum, or of the rod whose eye holds the bearing. */
function materialOf(x: LegNumbers, pivot: Pivot): string {
  if (pivot === 'hip') return x.links.upper.material
  if (pivot === 'knee') return x.links.lower.material
  const sideways = pivot === 'sidewaysHip' ? sidewaysPairOf(x) : undefined
  if (sideways !== undefined) return sideways.seatMaterial
  if (pivot === 'sidewaysHip') throw new NoValueError('the sideways hip has no bearings')
  const end = endOf(x, pivot)
  const rod = rodOf(x)
  if (end === undefined || rod === undefined) throw new NoValueError(`nothing is given of the ${PIVOT_WORDS[pivot]}`)
  return inEye(x, pivot) ? rod.material : end.material
}
/** Whether the bearing sits in the eye of the rod, in line with it. */
export const inEye = (x: LegNumbers, pivot: Pivot): boolean => {
  const end = pivot === 'crank' || pivot === 'rocker' ? rodOf(x)?.pivots?.[pivot] : undefined
  return end?.bearing !== undefined && end.bearingIn === 'rod'
}

export const bearing = {
  bore: field('pivot.bore', ['pivot'], 'length', (x, { pivot }) => bearingIn(x, pivot).bore, {
    title: 'bore of the bearing at the –',
    table: smallBallBearing,
  }),
  outerDiameter: field('pivot.outerDiameter', ['pivot'], 'length', (x, { pivot }) => bearingIn(x, pivot).outerDiameter, {
    title: 'outer diameter of the bearing at the –',
    table: smallBallBearing,
  }),
  width: field('pivot.width', ['pivot'], 'length', (x, { pivot }) => bearingIn(x, pivot).width, {
    title: 'width of the bearing at the –',
    table: smallBallBearing,
  }),
  staticRating: field('pivot.staticRating', ['pivot'], 'force', (x, { pivot }) => bearingIn(x, pivot).staticRating, {
    title: 'static load rating of the bearing at the –',
    table: smallBallBearing,
  }),
  dynamicRating: field('pivot.dynamicRating', ['pivot'], 'force', (x, { pivot }) => bearingIn(x, pivot).dynamicRating, {
    title: 'dynamic load rating of the bearing at the –',
    table: smallBallBearing,
  }),
}
export const pairSpacing = optional('pivot.pairSpacing', ['pivot'], 'length', (x, { pivot }) => seatedIn(x, pivot).pairSpacing)
/** Of the sideways hip: distance from the nearer bearing to the axis of the hip. */
export const overhang = field('pivot.overhang', ['pivot'], 'length', (x) => {
  const pair = sidewaysPairOf(x)
  if (pair === undefined) throw new NoValueError('the sideways hip has no bearings')
  return pair.overhang
})
export const housingDiameter = field('pivot.housingDiameter', ['pivot'], 'length', (x, { pivot }) => {
  const { housingDiameter: given } = seatedIn(x, pivot)
  if (given === undefined) throw new NoValueError(`what is round the seat of the ${PIVOT_WORDS[pivot]} is not given`)
  return given
})
export const seatInterference = field('pivot.seatInterference', ['pivot'], 'length', (x, { pivot }) => seatedIn(x, pivot).seatInterference)
export const retainedBy = word('pivot.retainedBy', ['pivot'], (x, { pivot }) => seatedIn(x, pivot).retainedBy)
export const seatMaterial = reference('pivot.seatMaterial', ['pivot'], 'material', (x, { pivot }) => materialOf(x, pivot))
export const isSideways = word('pivot.isSideways', ['pivot'], (_, { pivot }) => pivot === 'sidewaysHip')
export const isInEye = word('pivot.isInEye', ['pivot'], (x, { pivot }) => inEye(x, pivot))
/** Distance of the rod's plane from the middle of what holds it. */
export const offset = field('pivot.offset', ['pivot'], 'length', (x, { pivot }) => {
  const end = pivot === 'crank' || pivot === 'rocker' || pivot === 'drum' ? endOf(x, pivot) : undefined
  if (end === undefined) throw new NoValueError(`nothing is given of the ${PIVOT_WORDS[pivot]}`)
  return end.offset
})
export const cap = {
  thread: record('pivot.capThread', ['pivot'], (x, { pivot }) => metricThread.si(capIn(x, pivot).thread), {
    title: 'thread of the cap screw at the –',
    table: metricThread,
  }),
  steelOf: record('pivot.capClass', ['pivot'], (x, { pivot }) => propertyClass.si(capIn(x, pivot).propertyClass), {
    title: 'steel of the cap screw at the –',
    table: propertyClass,
  }),
  head: record('pivot.capHead', ['pivot'], (x, { pivot }) => socketHead.si(capIn(x, pivot).thread), {
    title: 'head of the cap screw at the –',
    table: socketHead,
  }),
  holeDiameter: field('pivot.capHole', ['pivot'], 'length', (x, { pivot }) => clearanceHole.si(capIn(x, pivot).thread).medium, {
    title: 'clearance hole of the cap screw at the –',
    table: clearanceHole,
  }),
  tighteningTorque: field('pivot.capTorque', ['pivot'], 'torque', (x, { pivot }) => capIn(x, pivot).tighteningTorque),
  shoulderDiameter: field('pivot.shoulderDiameter', ['pivot'], 'length', (x, { pivot }) => capIn(x, pivot).shoulderDiameter),
  rimDiameter: field('pivot.rimDiameter', ['pivot'], 'length', (x, { pivot }) => capIn(x, pivot).rimDiameter),
  edgeDiameter: field('pivot.edgeDiameter', ['pivot'], 'length', (x, { pivot }) => capIn(x, pivot).edgeDiameter),
}

/** Angle at which a ball of a deep-groove bearing meets its races once its clearance is used up along the axis. */
export const contactAngle = constant('pivot.contactAngle', {
  title: 'contact angle of a deep-groove bearing',
  kind: 'angle',
  typical: (12.5 * Math.PI) / 180,
  low: (10 * Math.PI) / 180,
  high: (15 * Math.PI) / 180,
  source: { level: 'unverified', where: 'small deep-groove bearings of normal clearance: 10 to 15 degrees' },
  measuredBy: 'measure radial and axial play of an open bearing: their ratio is the tangent of half the angle',
})
/** Radial internal clearance of a new bearing. */
export const clearance = constant('pivot.clearance', {
  title: 'radial internal clearance of a bearing',
  kind: 'length',
  typical: 8e-6,
  low: 2e-6,
  high: 13e-6,
  source: { level: 'unverified', where: 'ISO 5753-1: 2 to 13 µm, normal clearance, bores up to 10 mm' },
  measuredBy: 'push the outer ring to and fro under a dial gauge with the inner ring clamped',
})
/** Share of the preload of a cap's screw that is left. */
export const clampLeft = constant('pivot.clampLeft', {
  title: 'share of the preload left in the screw of a bearing cap',
  kind: 'ratio',
  typical: 0.7,
  low: 0.5,
  high: 0.9,
  source: { level: 'assumption', where: 'a metal cap on a metal pin: rough faces flatten, nothing creeps' },
  measuredBy: 'tighten the screw again after a week and note by how much it turns',
})
/** Sideways movement of the foot by the play of a joint's bearings that still counts as none. */
export const sidePlayAccepted = constant('pivot.sidePlayAccepted', {
  title: 'accepted sideways movement of the foot by bearing play',
  kind: 'length',
  typical: 2e-3,
  source: { level: 'assumption', where: 'two millimetres either way' },
})
