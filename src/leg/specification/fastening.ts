import * as z from 'zod'
import { flag, maybe, q, silent, whole, word } from './fields.js'
import { bearingName, material, pinSize, propertyClass, thread } from './tables.js'

/** The steel pin of one joint. */
export const pin = z.strictObject({
  size: pinSize('Pin by standard, diameter and tolerance.'),
  strength: silent(
    q('stress', { above: 0 }, 'Tensile strength of the pin.'),
    '1500 MPa',
    'hardened dowel steel, 550 HV or more',
    'unverified',
  ),
  cheekThickness: q('length', { above: 0 }, 'Thickness of each cheek of the clevis that bears on the pin.'),
  lugThickness: q('length', { above: 0 }, 'Thickness of the lug in the middle that bears on the pin.'),
  gap: silent(q('length', { min: 0 }, 'Side gap between the lug and each cheek.'), '0.3 mm', 'a printed running gap', 'commonPractice'),
})

/** The printed boss that the pin is pressed into. */
export const boss = z.strictObject({
  material: material('Polymer of the boss.'),
  outerDiameter: q('length', { above: 0 }, 'Outer diameter of the boss; twice the least distance from the axis to a free surface.'),
  hole: q('length', { above: 0 }, 'Mean diameter of the hole as printed or reamed.'),
  holeScatter: silent(
    q('length', { min: 0 }, 'Standard deviation of the hole diameter.'),
    '0.02 mm',
    'reamed printed holes; measure a batch of yours',
  ),
  engagement: q('length', { above: 0 }, 'Length of pin pressed into one boss.'),
  edgeDistance: q('length', { above: 0 }, 'Distance from the axis of the pin to the free edge in the direction of the load.'),
  axis: silent(
    word(['acrossLayers', 'alongLayers'], 'Whether the bore axis crosses the layers (printed standing on the bore) or lies in a layer.'),
    'acrossLayers',
    'hoop stress stays in the layers',
    'commonPractice',
  ),
})

const layer = z.strictObject({
  material: material('Material of this layer of the clamped stack.'),
  thickness: q('length', { above: 0 }, 'Thickness of this layer.'),
})

/** A group of equal bolts and what they clamp. */
const bolts = z.strictObject({
  thread: thread('Thread of the bolts.'),
  propertyClass: propertyClass('Property class of the bolts.'),
  count: whole(1, 32, 'Number of bolts in the group.'),
  tighteningTorque: q('torque', { above: 0 }, 'Tightening torque.'),
  friction: silent(
    q('ratio', { above: 0, max: 1 }, 'Friction coefficient in the thread and under the head.'),
    0.14,
    'dry or lightly oiled steel',
    'commonPractice',
  ),
  washers: silent(flag('Whether washers lie under head and nut.'), true, 'washers on printed parts', 'commonPractice'),
  sleeves: silent(flag('Whether metal sleeves carry the clamp load through the printed layers.'), false, 'none given'),
  nut: silent(
    word(
      ['pocket', 'openSlot', 'onWasher', 'tappedMetal'],
      'How the nut is held: in a six-sided printed pocket, between two flats, free on a washer, or the bolt is screwed into metal.',
    ),
    'onWasher',
    'a nut held by a spanner',
  ),
  stack: z.array(layer).min(1).max(12),
  bossDiameter: maybe(q('length', { above: 0 }, 'Diameter of the clamped printed boss around each bolt. Default: three head diameters.')),
  retightened: silent(flag('Whether the bolts are tightened again after a week.'), false, 'not promised'),
})

/** The bolts that hold plate and hip housing together and carry the leg as a bracket. */
export const stackBolts = bolts.extend({
  rows: z
    .array(q('length', { above: 0 }, 'Distance of a bolt from the edge the bracket would tip about.'))
    .min(1)
    .max(32),
  leverArm: q('length', { above: 0 }, 'Distance from the clamped face to the plane of the leg.'),
})

/** The bolts that hold the motor on its plate. */
export const motorBolts = bolts.extend({
  circleDiameter: q('length', { above: 0 }, 'Diameter of the bolt circle.'),
})

/** The hip shaft: a bolt drilled and tapped from its end for the screw of an end cap. */
export const shaft = z.strictObject({
  thread: thread('Thread of the shaft bolt.'),
  propertyClass: propertyClass('Property class of the shaft bolt.'),
  innerThread: thread('Thread tapped into its end.'),
  innerPropertyClass: propertyClass('Property class of the screw in its end.'),
  innerEngagement: q('length', { above: 0 }, 'Engaged length of the inner thread.'),
  innerTighteningTorque: q('torque', { above: 0 }, 'Tightening torque of the screw in its end.'),
  capThickness: q('length', { above: 0 }, 'Thickness of the end cap.'),
  capSpan: q('length', { above: 0 }, 'Diameter on which the end cap rests.'),
  capMaterial: material('Material of the end cap.'),
})

const ownBearing = z.strictObject({
  bore: q('length', { above: 0 }, 'Bore.'),
  outerDiameter: q('length', { above: 0 }, 'Outer diameter.'),
  width: q('length', { above: 0 }, 'Width.'),
  staticRating: q('force', { above: 0 }, 'Static load rating, from its sheet.'),
  dynamicRating: q('force', { above: 0 }, 'Dynamic load rating, from its sheet.'),
})

/** The pair of bearings on the hip shaft. */
export const bearings = z.strictObject({
  size: maybe(bearingName('Bearing of the table, by bore, outer diameter and width; give this or own.')),
  own: ownBearing.optional(),
  spacing: q('length', { above: 0 }, 'Distance between the two bearings.'),
  overhang: q('length', { min: 0 }, 'Distance from the nearer bearing to the plane of the leg.'),
  seatMaterial: material('Polymer of the seat of the outer ring.'),
  seatInterference: q('length', {}, 'Diametral interference of the outer ring in its seat at assembly (negative for clearance).'),
  retained: silent(flag('Whether shoulder and cap hold the outer rings axially.'), false, 'not promised'),
})
