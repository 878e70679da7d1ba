import type { Field, Fields } from '../../../schema/index.js'

const radius = {
  /** Diameter at the bottom of the groove. Give this or centreLineRadius. */
  grooveDiameter: { kind: 'length', min: '1 mm', max: '1 m', usual: ['3 mm', '300 mm'], optional: true },
  /** Radius to the centre line of the cord. Give this or grooveDiameter. */
  centreLineRadius: { kind: 'length', min: '0.5 mm', max: '1 m', usual: ['1.5 mm', '150 mm'], optional: true },
} as const

const ONE_RADIUS = [['grooveDiameter', 'centreLineRadius']] as const

/** A pulley that a cord is wound around in turns. */
export const woundPulley = {
  section: {
    ...radius,
    /** Full turns of cord on the pinion in addition to the part turn between the spans. Default: 3. */
    turns: { kind: 'count', min: 0, max: 40, usual: [0.75, 15], default: 3, because: 'three turns', level: 'commonPractice' },
    /** Grooved length of the pinion. */
    length: { kind: 'length', above: 0, max: '500 mm', usual: ['2 mm', '150 mm'] },
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
    bore: { kind: 'length', above: 0, max: '500 mm', usual: ['1 mm', '120 mm'] },
    /** Grooved length of the drum. */
    length: { kind: 'length', above: 0, max: '500 mm', usual: ['2 mm', '150 mm'] },
    /** Distance between neighbouring grooves. */
    groovePitch: { kind: 'length', above: 0, max: '50 mm', usual: ['0.3 mm', '8 mm'] },
    /** Run-out of the groove over a turn: what a dial gauge shows from lowest to highest. Default: 0.2 mm. */
    runout: {
      kind: 'length',
      min: 0,
      max: '5 mm',
      usual: ['0.01 mm', '1 mm'],
      default: '0.2 mm',
      because: 'a printed drum on a printed bore',
    },
    /** Bolts that clamp the layers of the drum together. Default: 0. */
    throughBolts: { integer: true, min: 0, max: 12, default: 0, because: 'none given' },
    /** Thread of the through bolts. Needed where there are any. */
    throughBoltThread: { designation: 'thread', optional: true },
    /** Clamp load that each through bolt keeps once the print has settled under it. Default: 200 N. */
    throughBoltClampLoad: {
      kind: 'force',
      min: '1 N',
      max: '100 kN',
      usual: ['20 N', '10 kN'],
      default: '200 N',
      because: 'hand-tight on washers, most of it lost to creep of the print',
    },
    /** How it is printed: a name of the section prints. Default: default. */
    print: { refersTo: 'prints', default: 'default', because: 'one way of printing for all parts' },
  },
  exactlyOne: ONE_RADIUS,
} as const satisfies Field

/** Efficiency of one stage of cord. */
export const cordStageEfficiency = {
  kind: 'ratio',
  above: 0,
  max: 1,
  usual: [0.5, 1],
  default: 0.95,
  because: 'one stage of cord drive',
  level: 'commonPractice',
} as const satisfies Field

/** A cord between two pulleys, and what holds it. */
export const cordLoop = {
  /** Name of the cord, from the section cords. */
  cord: { refersTo: 'cords' },
  /** Tension of both spans at rest. */
  pretension: { kind: 'force', min: '0.5 N', max: '50 kN', usual: ['3 N', '5 kN'] },
  /** How far the pretension may be off after setting, as a share. Default: 0.07. */
  pretensionScatter: {
    kind: 'ratio',
    min: 0,
    below: 1,
    usual: [0.01, 0.6],
    default: 0.07,
    because: 'a tension that is set by the pitch of a span or by a scale is known to 5 to 10 %',
  },
  /** Friction coefficient of the cord on the pinion. Default: 0.08 to 0.2. */
  friction: {
    band: 'ratio',
    max: 1,
    usual: [0.03, 0.7],
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
      postDiameter: { kind: 'length', above: 0, max: '50 mm', usual: ['0.8 mm', '20 mm'] },
      /** Length of the post that bears in the printed drum. */
      postLength: { kind: 'length', above: 0, max: '200 mm', usual: ['1.5 mm', '60 mm'] },
      /** Distance from the middle of the post to the nearest free edge in the direction of pull. */
      edgeDistance: { kind: 'length', above: 0, max: '200 mm', usual: ['1.5 mm', '80 mm'] },
    },
  },
  /** The tensioner. */
  tensioner: {
    section: {
      /** Thread of the tensioning screw. */
      thread: { designation: 'thread' },
      /** Travel of the tensioner. */
      travel: { kind: 'length', above: 0, max: '500 mm', usual: ['3 mm', '80 mm'] },
      /** Loose cord that assembly leaves. Default: 2 mm. */
      slackAtAssembly: {
        kind: 'length',
        min: 0,
        max: '100 mm',
        usual: ['0.05 mm', '15 mm'],
        default: '2 mm',
        because: 'hand assembly',
        level: 'commonPractice',
      },
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
  centreDistance: { kind: 'length', above: 0, max: '2 m', usual: ['12 mm', '600 mm'] },
  ...cordLoop,
  /** Efficiency from motor shaft to joint. Default: 0.95. */
  efficiency: cordStageEfficiency,
} as const satisfies Fields
