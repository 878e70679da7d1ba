import { clearanceHole, metricThread, propertyClass, smallBallBearing, socketHead } from '../../../fasteners/index.js'
import { EVENTS, type Tag } from '../../cases/events.js'
import { field, record, reference, word } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { bearingsOf, shaftOf } from '../../numbers.js'
import { constant } from '../../run/index.js'
import { type BearingNumbers, bearingOf } from '../../schema/tables.js'

export const thread = record('shaft.thread', [], (x) => metricThread.si(shaftOf(x).thread), {
  title: 'thread of the hip shaft',
  table: metricThread,
})
export const steelOf = record('shaft.propertyClass', [], (x) => propertyClass.si(shaftOf(x).propertyClass), {
  title: 'steel of the hip shaft',
  table: propertyClass,
})
export const inner = {
  thread: record('shaft.inner.thread', [], (x) => metricThread.si(shaftOf(x).innerThread), {
    title: 'thread of the cap screw in the hip shaft',
    table: metricThread,
  }),
  steelOf: record('shaft.inner.propertyClass', [], (x) => propertyClass.si(shaftOf(x).innerPropertyClass), {
    title: 'steel of the cap screw in the hip shaft',
    table: propertyClass,
  }),
  bearingDiameter: field('shaft.inner.bearingDiameter', [], 'length', (x) => socketHead.si(shaftOf(x).innerThread).bearingDiameter, {
    title: 'bearing diameter under the head of the cap screw in the hip shaft',
    table: socketHead,
  }),
  holeDiameter: field('shaft.inner.holeDiameter', [], 'length', (x) => clearanceHole.si(shaftOf(x).innerThread).medium, {
    title: 'clearance hole of the cap screw in the hip shaft',
    table: clearanceHole,
  }),
  engagement: field('shaft.inner.engagement', [], 'length', (x) => shaftOf(x).innerEngagement),
  tighteningTorque: field('shaft.inner.tighteningTorque', [], 'torque', (x) => shaftOf(x).innerTighteningTorque),
}
export const cap = {
  thickness: field('shaft.capThickness', [], 'length', (x) => shaftOf(x).capThickness),
  span: field('shaft.capDiameter', [], 'length', (x) => shaftOf(x).capSpan),
  material: reference('shaft.capMaterial', [], 'material', (x) => shaftOf(x).capMaterial),
}
const bearingIn = (x: LegNumbers) => {
  const { size, own } = bearingsOf(x)
  return bearingOf(size, own) as BearingNumbers
}
export const bearing = {
  bore: field('bearing.bore', [], 'length', (x) => bearingIn(x).bore, { title: 'bore of the hip bearing', table: smallBallBearing }),
  outerDiameter: field('bearing.outerDiameter', [], 'length', (x) => bearingIn(x).outerDiameter, {
    title: 'outer diameter of the hip bearing',
    table: smallBallBearing,
  }),
  width: field('bearing.width', [], 'length', (x) => bearingIn(x).width, { title: 'width of the hip bearing', table: smallBallBearing }),
  staticRating: field('bearing.staticRating', [], 'force', (x) => bearingIn(x).staticRating, {
    title: 'static load rating of the hip bearing',
    table: smallBallBearing,
  }),
  dynamicRating: field('bearing.dynamicRating', [], 'force', (x) => bearingIn(x).dynamicRating, {
    title: 'dynamic load rating of the hip bearing',
    table: smallBallBearing,
  }),
}
export const spacing = field('bearings.spacing', [], 'length', (x) => bearingsOf(x).spacing)
export const overhang = field('bearings.overhang', [], 'length', (x) => bearingsOf(x).overhang)
export const seatMaterial = reference('bearings.seatMaterial', [], 'material', (x) => bearingsOf(x).seatMaterial)
export const seatInterference = field('bearings.seatInterference', [], 'length', (x) => bearingsOf(x).seatInterference)
export const retained = word('bearings.retained', [], (x) => bearingsOf(x).retained)
/** Whether an event is a shock. */
export const isShock = word('event.isShock', ['event'], (_, { event }) => (EVENTS[event].tags as readonly Tag[]).includes('shock'))

/** Shear strength of steel threads over their tensile strength. */
export const threadShear = constant('shaft.threadShear', {
  title: 'shear strength of steel threads over tensile strength',
  kind: 'ratio',
  typical: 0.6,
  low: 0.55,
  high: 0.65,
  source: { level: 'commonPractice', where: 'shear strength of steel 0.6 of its tensile strength' },
  measuredBy: 'tighten a screw of yours in a drilled and tapped bolt until something strips',
})
export const innerFriction = constant('shaft.innerFriction', {
  title: 'friction of a cap screw in its thread and under its head',
  kind: 'ratio',
  typical: 0.14,
  low: 0.1,
  high: 0.2,
  source: { level: 'commonPractice', where: 'dry or lightly oiled steel' },
  measuredBy: 'tighten over a load washer and read the torque',
})
export const shearRatio = constant('shaft.shearRatio', {
  title: 'shear strength of a cap screw over its tensile strength',
  kind: 'ratio',
  typical: 0.6,
  source: { level: 'commonPractice', where: 'shear strength of bolts 0.6 of their tensile strength' },
})
/** Play of the bearing between shaft and cap. */
export const axialPlay = constant('shaft.axialPlay', {
  title: 'axial play of the hip bearing under its cap',
  kind: 'length',
  typical: 0.1e-3,
  low: 0.02e-3,
  high: 0.3e-3,
  source: { level: 'assumption', where: 'a washer ground to fit' },
  measuredBy: 'push and pull the leg along its shaft under a dial gauge',
})
/** Balls of a small deep-groove bearing. */
export const balls = constant('bearing.balls', {
  title: 'number of balls of the hip bearing',
  kind: 'count',
  typical: 8,
  low: 7,
  high: 9,
  source: { level: 'commonPractice', where: 'seven to nine balls in small deep-groove bearings' },
  measuredBy: 'count the balls of an open bearing',
})
/** Factor f0 of the axial load of small deep-groove bearings. */
export const axialFactor = constant('bearing.axialFactor', {
  title: 'factor f0 of the axial load of a deep-groove bearing',
  kind: 'ratio',
  typical: 14,
  low: 12,
  high: 16,
  source: { level: 'unverified', where: 'ISO 76 and ISO 281: f0 of 12 to 16 for small deep-groove bearings' },
  measuredBy: "read f0 from the bearing's own sheet",
})
/** Loss of interference below which a seat has lost nothing. */
export const leastLoss = constant('bearing.leastLoss', {
  title: 'least loss of interference that counts',
  kind: 'length',
  typical: 1e-9,
  source: { level: 'assumption', where: 'a nanometre is negligible' },
})
