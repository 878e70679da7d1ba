import * as z from 'zod'
import { band, flag, maybe, q, silent, text, whole, word } from './fields.js'
import { cordName, fibre, material, thread } from './tables.js'

/** A cord by name; drives refer to it. */
export const cord = z.strictObject({
  fibre: fibre('Fibre or wire the cord is made of.'),
  diameter: q('length', { above: 0 }, 'Diameter of the cord under working tension.'),
  breakingStrength: q('force', { above: 0 }, 'Breaking strength of the straight cord, new.'),
  axialRigidity: q('axialRigidity', { above: 0 }, 'Axial rigidity EA of the bedded-in cord.'),
  thermalExpansion: silent(
    q('thermalExpansion', {}, 'Thermal expansion of the cord along itself; most strong fibres shorten when heated.'),
    '-12 ppm/K',
    'UHMWPE fibre, table of Michigan Technological University',
    'published',
  ),
  designFactor: silent(
    q('ratio', { min: 1 }, 'Factor between breaking strength, after ends and bends, and the highest working tension.'),
    5,
    'design factors of 5 to 12 on breaking strength are customary for fibre ropes (Cordage Institute CI 1401)',
    'unverified',
  ),
  leastBendRatio: silent(
    q('ratio', { min: 1 }, 'Least ratio of pulley to cord diameter for a long life.'),
    8,
    'braided cord on small drums, eight diameters or more',
    'commonPractice',
  ),
  pretensionLeft: silent(
    band(1, 'Share of the pretension left after a year at fixed ends, at room temperature.'),
    { low: 0.6, typical: 0.75, high: 0.9 },
    'relaxation of a bedded braid with one re-tightening after a week; measure yours',
  ),
})

const radius = (what: string) => ({
  grooveDiameter: maybe(q('length', { above: 0 }, `Diameter of the ${what} at the bottom of its groove; give this or centreLineRadius.`)),
  centreLineRadius: maybe(q('length', { above: 0 }, `Radius of the ${what} to the centre line of the cord; give this or grooveDiameter.`)),
})

const pinion = z.strictObject({
  ...radius('pinion'),
  wraps: silent(
    q('count', { min: 0, max: 40 }, 'Full turns of cord on the pinion, in addition to the part turn between the spans.'),
    3,
    'three turns',
    'commonPractice',
  ),
  length: q('length', { above: 0 }, 'Grooved length of the pinion.'),
})

const drum = z.strictObject({
  ...radius('drum'),
  material: material('Polymer the drum is printed from.'),
  bore: q('length', { above: 0 }, 'Diameter of the bore of the drum.'),
  length: q('length', { above: 0 }, 'Grooved length of the drum.'),
  groovePitch: q('length', { above: 0 }, 'Distance between neighbouring grooves.'),
  runout: silent(
    q('length', { min: 0 }, 'Run-out of the groove over a turn: what a dial gauge shows from lowest to highest.'),
    '0.2 mm',
    'a printed drum on a printed bore',
  ),
  throughBolts: silent(whole(0, 12, 'Bolts that clamp the layers of the drum together.'), 0, 'none given'),
  throughBoltThread: silent(thread('Thread of the through bolts.'), 'M3', 'the usual size in small drums', 'commonPractice'),
  throughBoltClampLoad: silent(
    q('force', { above: 0 }, 'Clamp load that each through bolt keeps once the print has settled under it.'),
    '200 N',
    'hand-tight on washers, most of it lost to creep of the print',
  ),
})

const anchor = z.strictObject({
  postDiameter: q('length', { above: 0 }, 'Diameter of the post or screw that holds the cord end on the drum.'),
  postLength: q('length', { above: 0 }, 'Length of the post that bears in the printed drum.'),
  edgeDistance: q('length', { above: 0 }, 'Distance from the middle of the post to the nearest free edge in the direction of pull.'),
})

const tensioner = z.strictObject({
  thread: thread('Thread of the tensioning screw.'),
  travel: q('length', { above: 0 }, 'Travel of the tensioner.'),
  slackAtAssembly: silent(q('length', { min: 0 }, 'Loose cord that assembly leaves.'), '2 mm', 'hand assembly', 'commonPractice'),
})

/** The drive of one joint: cord from a pinion on the motor to a drum on the joint. */
export const drive = z.strictObject({
  arrangement: silent(
    word(['crossed', 'open'], 'Whether the two spans cross between the pulleys.'),
    'crossed',
    'more wrap on the pinion',
    'commonPractice',
  ),
  pinion,
  drum,
  centreDistance: q('length', { above: 0 }, 'Distance between the axes of pinion and drum.'),
  cord: cordName('Name of the cord, from the section cords.'),
  pretension: q('force', { above: 0 }, 'Tension of both spans at rest.'),
  friction: silent(
    band(1, 'Friction coefficient of the cord on the pinion.'),
    { low: 0.08, typical: 0.14, high: 0.2 },
    'braided polymer cord on a printed or smooth metal pulley',
    'unverified',
  ),
  hold: silent(
    word(
      ['clampedMidPinion', 'frictionOnly'],
      'Whether the cord is clamped to the pinion in the middle of its wraps, or held by friction alone.',
    ),
    'frictionOnly',
    'the harder case',
  ),
  ends: silent(word(['bondedFerrule', 'swagedSleeve', 'splice', 'knot'], 'How the cord ends are made.'), 'knot', 'the weakest usual end'),
  endRetention: maybe(band(1, 'Share of the cord strength that the end keeps. Default: by kind of end.')),
  anchor,
  tensioner,
  efficiency: silent(
    q('ratio', { above: 0, max: 1 }, 'Efficiency from motor shaft to joint.'),
    0.95,
    'one stage of cord drive',
    'commonPractice',
  ),
})

/** A bonded ferrule on a cord end. */
export const bondedEnd = z.strictObject({
  length: q('length', { above: 0 }, 'Bonded length.'),
  socketDiameter: q('length', { above: 0 }, 'Bore of the ferrule that the cord is bonded into.'),
  adhesive: text('Adhesive, by name or kind.'),
  adhesiveShearModulus: silent(q('modulus', { above: 0 }, 'Shear modulus of the adhesive.'), '0.05 GPa', 'a toughened, flexible adhesive'),
  adhesiveShearStrength: silent(
    q('stress', { above: 0 }, 'Shear strength of the adhesive on this cord.'),
    '8 MPa',
    'slippery fibres bond badly; pull-test yours',
  ),
  mechanicalLock: silent(flag('Whether a cone or a knot in the resin locks the cord as well as the bond.'), false, 'none given'),
})
