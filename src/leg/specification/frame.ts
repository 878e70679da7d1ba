import * as z from 'zod'
import { band, maybe, q, silent, whole } from './fields.js'
import { material } from './tables.js'

/** The whole machine the leg belongs to. */
export const robot = z.strictObject({
  mass: q('mass', { above: 0 }, 'Mass of the whole robot with its load.'),
  legs: silent(whole(2, 12, 'Number of legs.'), 4, 'four legs, the usual case', 'commonPractice'),
  standHeight: q('length', { above: 0 }, 'Height of the hip axis above the ground when standing.'),
  hipSpacing: silent(q('length', { above: 0 }, 'Distance from front to rear hip.'), '400 mm', 'a body of ordinary proportions'),
  hipTrack: silent(q('length', { above: 0 }, 'Distance from left to right sideways-hip axis.'), '200 mm', 'a body of ordinary proportions'),
  centreOfMassHeight: maybe(q('length', { above: 0 }, 'Height of the centre of mass when standing. Default: the hip height.')),
})

const link = (name: string) =>
  z.strictObject({
    length: q('length', { above: 0 }, `Length of the ${name} between its joint axes (to the foot point for the lower link).`),
    mass: silent(q('mass', { above: 0 }, `Mass of the ${name} with what it carries.`), '0.25 kg', 'a printed link with its pins'),
    material: material(`Polymer the ${name} is printed from.`),
    width: q('length', { above: 0 }, `Outer width of the ${name}'s section, across the joint axis direction.`),
    depth: q('length', { above: 0 }, `Outer depth of the ${name}'s section, in the plane of bending.`),
    wall: q('length', { above: 0 }, `Solid wall thickness of the ${name}'s section.`),
  })

/** The two links and the sideways offset. */
export const links = z.strictObject({
  hipOffset: q('length', { min: 0 }, 'Sideways distance from the sideways-hip axis to the plane of the leg.'),
  upper: link('upper link'),
  lower: link('lower link'),
})

const range = (name: string) =>
  z.strictObject({
    from: q('angle', { min: '-360 deg', max: '360 deg' }, `Lowest angle of the ${name}.`),
    to: q('angle', { min: '-360 deg', max: '360 deg' }, `Highest angle of the ${name}.`),
  })

/** Joint limits; zero is the leg straight down. */
export const joints = z.strictObject({
  sidewaysHip: range('sideways hip').extend({
    holdingTorque: q('torque', { above: 0 }, 'Torque that whatever drives the sideways hip can hold.'),
    stiffness: silent(
      q('torsionalStiffness', { above: 0 }, 'Torsional stiffness of whatever drives the sideways hip.'),
      '600 N m/rad',
      'about as stiff as the cord drives',
    ),
  }),
  hip: range('hip'),
  knee: range('knee'),
})

/** The printed foot: toes as flexures. */
export const foot = z.strictObject({
  toes: silent(whole(1, 6, 'Number of toes that share the load.'), 2, 'two toes', 'assumption'),
  toeLength: q('length', { above: 0 }, 'Free length of a toe from its root to the middle of its contact.'),
  toeThickness: q('length', { above: 0 }, 'Thickness of a toe in the direction it bends.'),
  toeWidth: q('length', { above: 0 }, 'Width of a toe.'),
  material: material('Polymer of the toes.'),
  lift: silent(
    q('angle', { min: '0 deg', below: '80 deg' }, 'Angle between an unloaded toe and the ground.'),
    '25 deg',
    'toes that spread under load',
  ),
  groundFriction: silent(
    band(2, 'Friction coefficient between foot and ground.'),
    { low: 0.4, typical: 0.6, high: 0.8 },
    'soft polymer on wet or silted ground; measure on yours',
  ),
})
