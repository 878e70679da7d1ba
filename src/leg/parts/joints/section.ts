import type { Field, Fields } from '../../schema/index.js'
import { spring } from '../springs/section.js'
import { beltDrive } from '../transmission/belt/section.js'
import { cordDrive } from '../transmission/cord/section.js'
import { directDrive } from '../transmission/direct/section.js'
import { gearDrive } from '../transmission/gear/section.js'
import { gearboxDrive } from '../transmission/gearbox/section.js'
import { heldDrive } from '../transmission/held/section.js'
import { throughHip } from '../transmission/through-hip/section.js'

const range = { interval: 'angle', min: '-360 deg', max: '360 deg' } as const

/** Drive and bearing parts of a joint. */
const mounted = {
  /** Kind of motor, from the section motors. Needed unless the joint is held. */
  motor: { refersTo: 'motors', optional: true },
  /** Kind of controller, from the section controllers. Needed with a motor. */
  controller: { refersTo: 'controllers', optional: true },
  /** What the controller is cooled by: the name of a plate, or the air. Default: air. */
  controllerOn: { refersTo: 'plates', also: ['air'], default: 'air', because: 'a bare board in the air' },
  /** The plate that the motor is bolted to. Needed with a motor. */
  plate: { refersTo: 'plates', optional: true },
  /** The bolts that hold the motor on its plate, from the section bolts. */
  motorBolts: { refersTo: 'bolts', optional: true },
} as const satisfies Fields

const drive = {
  variants: 'kind',
  of: { cord: cordDrive, belt: beltDrive, gear: gearDrive, gearbox: gearboxDrive, direct: directDrive, held: heldDrive },
} as const satisfies Field

const pivot = {
  /** The pin of the joint, from the section pins. */
  pin: { refersTo: 'pins', optional: true },
  /** The boss that the pin is pressed into, from the section bosses. */
  boss: { refersTo: 'bosses', optional: true },
  /** The shaft that the joint turns on, from the section shafts. */
  shaft: { refersTo: 'shafts', optional: true },
} as const satisfies Fields

/** The joints. Zero is the leg straight down. */
export const joints = {
  /** The sideways hip. It may be left out. */
  sidewaysHip: {
    section: {
      /** Lowest and highest angle. */
      range,
      ...mounted,
      /** The bearings that it turns in, from the section bearings. */
      bearings: { refersTo: 'bearings', optional: true },
      /** How it is driven. */
      drive: {
        variants: 'kind',
        of: { belt: beltDrive, gear: gearDrive, gearbox: gearboxDrive, direct: directDrive, held: heldDrive, cord: cordDrive },
      },
    },
    optional: true,
  },
  /** The hip, which swings the leg forward and back. */
  hip: {
    section: {
      /** Lowest and highest angle. */
      range,
      ...mounted,
      ...pivot,
      /** How it is driven. */
      drive,
      /** A spring in parallel with the drive. It relieves the motor in some poses and loads it in others. */
      spring: { variants: 'kind', of: spring, optional: true },
    },
  },
  /** The knee. */
  knee: {
    section: {
      /** Lowest and highest angle. */
      range,
      ...mounted,
      ...pivot,
      /** How it is driven: from the motor to its drum. */
      drive,
      /** How a drum on the hip axis drives the knee. Left out where the motor sits on the upper link. */
      through: { variants: 'kind', of: throughHip, optional: true },
      /** A spring in parallel with the drive. It relieves the motor in some poses and loads it in others. */
      spring: { variants: 'kind', of: spring, optional: true },
    },
  },
} as const satisfies Fields
