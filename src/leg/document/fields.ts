import { boltGroup } from '../parts/bolts/section.js'
import { controller } from '../parts/controllers/section.js'
import { foot } from '../parts/foot/section.js'
import { bearingPair, shaft } from '../parts/hip-shaft/section.js'
import { joints } from '../parts/joints/section.js'
import { links } from '../parts/links/section.js'
import { AGES, AIRS, age, air, combination, EVENTS, environment, event, GAITS, gait, usage } from '../parts/load/section.js'
import { material } from '../parts/materials/section.js'
import { motor } from '../parts/motors/section.js'
import { boss, pin } from '../parts/pins-and-bosses/section.js'
import { plate } from '../parts/plates/section.js'
import { print } from '../parts/prints/section.js'
import { robot } from '../parts/robot/section.js'
import { supply } from '../parts/supply/section.js'
import { belt } from '../parts/transmission/belt/section.js'
import { cord, cordEnd } from '../parts/transmission/cord/cord-section.js'
import type { DataFields, Fields, GivenFields } from '../schema/index.js'

/** The version of the document's layout that this library writes; older ones are brought up to it. */
export const DOCUMENT_VERSION = 4

const USUAL_VALUE = 'usual for a small walking robot'

/** Every field of the document of one leg. */
export const documentFields = {
  /** Address of the JSON Schema, for editors. */
  $schema: { text: true, optional: true },
  /** Version of the layout of this document. */
  schemaVersion: { integer: true, min: 4, max: 4, default: 4, because: 'the current layout' },
  /** A name for the leg, as it heads the report. */
  name: { text: true },
  /** Anything a reader should know first. */
  remark: { text: true, optional: true },
  /** The whole machine that the leg belongs to. */
  robot: { section: robot },
  /** The joints and their drives. */
  joints: { section: joints },
  /** The two links and the sideways offset. */
  links: { section: links },
  /** Kinds of motor, by name. */
  motors: { dictionary: { section: motor }, default: {} },
  /** Kinds of motor controller, by name. */
  controllers: { dictionary: { section: controller }, default: {} },
  /** Plates that motors are bolted to, by name. */
  plates: { dictionary: { section: plate }, default: {} },
  /** Cords, by name. */
  cords: { dictionary: { section: cord }, default: {} },
  /** Bonded cord ends, by name. */
  ends: { dictionary: { section: cordEnd }, default: {} },
  /** Tooth belts, by name. */
  belts: { dictionary: { section: belt }, default: {} },
  /** Pins with what bears on them, by name. */
  pins: { dictionary: { section: pin }, default: {} },
  /** Bosses that pins are pressed into, by name. */
  bosses: { dictionary: { section: boss }, default: {} },
  /** Bolt groups, by name. */
  bolts: { dictionary: { section: boltGroup }, default: {} },
  /** Shafts, by name. */
  shafts: { dictionary: { section: shaft }, default: {} },
  /** Pairs of ball bearings, by name. */
  bearings: { dictionary: bearingPair, default: {} },
  /** The foot. */
  foot,
  /** Battery or mains supply. */
  supply: { section: supply },
  /** Ways of printing, by name. Parts refer to one; default is that of all others. */
  prints: { dictionary: { section: print }, default: {}, library: { default: {} }, because: 'usual settings for strong parts' },
  /** Materials of one's own, by name. */
  materials: { dictionary: material, default: {} },
  /** Air, weather and surroundings. */
  environment: { section: environment, default: {} },
  /** Gaits, by name. */
  gaits: { dictionary: { section: gait }, default: {}, library: GAITS, because: USUAL_VALUE },
  /** How much and how long the robot works. */
  usage: { section: usage, default: {} },
  /** Load cases of the leg: events, in which air, at which age. */
  loadCases: {
    section: {
      /** Airs, by name. */
      airs: { dictionary: { section: air }, default: {}, library: AIRS, because: 'a temperate climate' },
      /** Ages of prints and pretension, by name. */
      ages: { dictionary: { section: age }, default: {}, library: AGES, because: 'a season of field work and a year on the shelf' },
      /** Events, by name. */
      events: { dictionary: event, default: {}, library: EVENTS, because: USUAL_VALUE },
      /** Which events are met in which airs at which ages. Default: each event where it is worst for heat, for cord, and as built. */
      combine: { list: { section: combination }, most: 40, optional: true },
    },
    default: {},
  },
} as const satisfies Fields

/** A leg as it may be written: quantities as text, pairs or `Quantity`. */
export type LegSpecification = GivenFields<typeof documentFields>
/** A leg as it was read. */
export type LegData = DataFields<typeof documentFields>
