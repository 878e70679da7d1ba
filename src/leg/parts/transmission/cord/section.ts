import type { Field, Fields } from '../../../schema/index.js'

const radius = {
  /** Diameter at the bottom of the groove. Give this or centreLineRadius. */
  grooveDiameter: { kind: 'length', above: 0, max: '1 m', optional: true },
  /** Radius to the centre line of the cord. Give this or grooveDiameter. */
  centreLineRadius: { kind: 'length', above: 0, max: '1 m', optional: true },
} as const

const ONE_RADIUS = [['grooveDiameter', 'centreLineRadius']] as const

/** A cord by name. Drives refer to it. */
export const cord = {
  /** Fibre or wire that the cord is made of. */
  fibre: { designation: 'fibre' },
  /** Diameter of the cord under working tension. */
  diameter: { kind: 'length', above: 0, max: '20 mm' },
  /** Breaking strength of the straight cord, new. */
  breakingStrength: { kind: 'force', above: 0 },
  /** Axial rigidity EA of the bedded-in cord. */
  axialRigidity: { kind: 'axialRigidity', above: 0 },
  /** Thermal expansion of the cord along itself; most strong fibres shorten when heated. Default: -12 ppm/K. */
  thermalExpansion: {
    kind: 'thermalExpansion',
    default: '-12 ppm/K',
    because: 'UHMWPE fibre, table of Michigan Technological University',
    level: 'published',
  },
  /** Factor between breaking strength, after ends and bends, and the highest working tension. Default: 5. */
  designFactor: {
    kind: 'ratio',
    min: 1,
    default: 5,
    because: 'design factors of 5 to 12 on breaking strength are customary for fibre ropes (Cordage Institute CI 1401)',
    level: 'unverified',
  },
  /** Least ratio of pulley to cord diameter for a long life. Default: 8. */
  leastBendRatio: {
    kind: 'ratio',
    min: 1,
    default: 8,
    because: 'braided cord on small drums, eight diameters or more',
    level: 'commonPractice',
  },
  /** Share of the pretension left after a year at fixed ends, at room temperature. Default: 0.6 to 0.9. */
  pretensionLeft: {
    band: 'ratio',
    max: 1,
    default: [0.6, 0.75, 0.9],
    because: 'relaxation of a bedded braid with one re-tightening after a week; measure yours',
  },
} as const satisfies Fields

/** A bonded cord end. */
export const cordEnd = {
  /** Bonded length. */
  length: { kind: 'length', above: 0, max: '200 mm' },
  /** Bore of the ferrule that the cord is bonded into. */
  socketDiameter: { kind: 'length', above: 0, max: '30 mm' },
  /** Adhesive, by name or kind. */
  adhesive: { text: true },
  /** Shear modulus of the adhesive. Default: 0.05 GPa. */
  adhesiveShearModulus: { kind: 'modulus', above: 0, default: '0.05 GPa', because: 'a toughened, flexible adhesive' },
  /** Shear strength of the adhesive on this cord. Default: 8 MPa. */
  adhesiveShearStrength: { kind: 'stress', above: 0, default: '8 MPa', because: 'slippery fibres bond badly; pull-test yours' },
  /** Whether a cone or a knot in the resin locks the cord as well as the bond. Default: false. */
  mechanicalLock: { flag: true, default: false, because: 'none given' },
} as const satisfies Fields

/** A pulley that a cord is wound around in turns. */
export const woundPulley = {
  section: {
    ...radius,
    /** Full turns of cord on the pinion in addition to the part turn between the spans. Default: 3. */
    turns: { kind: 'count', min: 0, max: 40, default: 3, because: 'three turns', level: 'commonPractice' },
    /** Grooved length of the pinion. */
    length: { kind: 'length', above: 0, max: '500 mm' },
  },
  exactlyOne: ONE_RADIUS,
} as const satisfies Field

/** A drum that holds both ends of a cord. */
export const drum = {
  section: {
    ...radius,
    /** Material of the drum. */
    material: { refersTo: 'materials' },
    /** Diameter of the bore of the drum. */
    bore: { kind: 'length', above: 0, max: '500 mm' },
    /** Grooved length of the drum. */
    length: { kind: 'length', above: 0, max: '500 mm' },
    /** Distance between neighbouring grooves. */
    groovePitch: { kind: 'length', above: 0, max: '50 mm' },
    /** Run-out of the groove over a turn: what a dial gauge shows from lowest to highest. Default: 0.2 mm. */
    runout: { kind: 'length', min: 0, max: '10 mm', default: '0.2 mm', because: 'a printed drum on a printed bore' },
    /** Bolts that clamp the layers of the drum together. Default: 0. */
    throughBolts: { integer: true, min: 0, max: 12, default: 0, because: 'none given' },
    /** Thread of the through bolts. Needed where there are any. */
    throughBoltThread: { designation: 'thread', optional: true },
    /** Clamp load that each through bolt keeps once the print has settled under it. Default: 200 N. */
    throughBoltClampLoad: {
      kind: 'force',
      above: 0,
      default: '200 N',
      because: 'hand-tight on washers, most of it lost to creep of the print',
    },
    /** How it is printed: a name of the section prints. Default: default. */
    print: { refersTo: 'prints', default: 'default', because: 'one way of printing for all parts' },
  },
  exactlyOne: ONE_RADIUS,
} as const satisfies Field

/** A cord between two pulleys, and what holds it. */
export const cordLoop = {
  /** Name of the cord, from the section cords. */
  cord: { refersTo: 'cords' },
  /** Tension of both spans at rest. */
  pretension: { kind: 'force', above: 0 },
  /** How far the pretension may be off after setting, as a share. Default: 0.07. */
  pretensionScatter: {
    kind: 'ratio',
    min: 0,
    below: 1,
    default: 0.07,
    because: 'a tension that is set by the pitch of a span or by a scale is known to 5 to 10 %',
  },
  /** Friction coefficient of the cord on the pinion. Default: 0.08 to 0.2. */
  friction: {
    band: 'ratio',
    max: 1,
    default: [0.08, 0.14, 0.2],
    because: 'braided polymer cord on a printed or smooth metal pulley',
    level: 'unverified',
    measuredBy: 'a weight on one end of the cord around the pinion and a luggage scale on the other',
  },
  /** Whether the cord is clamped to the pinion in the middle of its turns, or held by friction alone. Default: frictionOnly. */
  hold: { oneOf: ['clampedMidPinion', 'frictionOnly'], default: 'frictionOnly', because: 'the harder case' },
  /** How the cord ends are made. Default: knot. */
  ends: { oneOf: ['bondedFerrule', 'swagedSleeve', 'splice', 'knot'], default: 'knot', because: 'the weakest usual end' },
  /** The bonded end, from the section ends. Needed where the ends are bonded ferrules. */
  end: { refersTo: 'ends', optional: true },
  /** Share of the cord strength that the end keeps. Default: by kind of end. */
  endRetention: { band: 'ratio', max: 1, optional: true },
  /** Fastening of the cord end on the drum. */
  anchor: {
    section: {
      /** Diameter of the post or screw. */
      postDiameter: { kind: 'length', above: 0, max: '50 mm' },
      /** Length of the post that bears in the printed drum. */
      postLength: { kind: 'length', above: 0, max: '200 mm' },
      /** Distance from the middle of the post to the nearest free edge in the direction of pull. */
      edgeDistance: { kind: 'length', above: 0, max: '200 mm' },
    },
  },
  /** The tensioner. */
  tensioner: {
    section: {
      /** Thread of the tensioning screw. */
      thread: { designation: 'thread' },
      /** Travel of the tensioner. */
      travel: { kind: 'length', above: 0, max: '500 mm' },
      /** Loose cord that assembly leaves. Default: 2 mm. */
      slackAtAssembly: { kind: 'length', min: 0, max: '100 mm', default: '2 mm', because: 'hand assembly', level: 'commonPractice' },
    },
  },
} as const satisfies Fields

/** A cord drive: cord from a pinion on the motor to a drum on the joint. */
export const cordDrive = {
  /** Whether the two spans cross between the pulleys. Default: crossed. */
  arrangement: { oneOf: ['crossed', 'open'], default: 'crossed', because: 'more wrap on the pinion', level: 'commonPractice' },
  /** The pinion on the motor shaft. */
  pinion: woundPulley,
  /** The drum on the joint. */
  drum,
  /** Distance between the axes of pinion and drum. */
  centreDistance: { kind: 'length', above: 0, max: '2 m' },
  ...cordLoop,
  /** Efficiency from motor shaft to joint. Default: 0.95. */
  efficiency: { kind: 'ratio', above: 0, max: 1, default: 0.95, because: 'one stage of cord drive', level: 'commonPractice' },
} as const satisfies Fields
