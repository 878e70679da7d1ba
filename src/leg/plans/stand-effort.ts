import type { MeasurementId } from '../learning/measurements.js'

/** Effort of a measurement in a home workshop. */
export interface Effort {
  /** How to build it from what is there. */
  readonly fixture: string
  /** Time of somebody who works on it, and time until it is over, s. */
  readonly handsOn: number
  readonly elapsed: number
  /** Its cost: tools that a workshop may not have, and parts that are used up. */
  readonly cost: string
}

const HOUR = 3600
const DAY = 24 * HOUR

/** Usual effort of each measurement; times are estimates of the trade. */
export const EFFORT: { readonly [M in MeasurementId]: Effort } = {
  cordFriction: {
    fixture:
      'Clamp the pinion in a vice. Hang a bottle of half a litre of water on one end, hook a luggage scale into the other. Mark half turns on the pinion.',
    handsOn: 0.75 * HOUR,
    elapsed: 0.75 * HOUR,
    cost: 'a luggage scale; a metre of cord',
  },
  windup: {
    fixture:
      'Clamp the leg to a table. Bolt a lath of 500 mm to the joint, hang a bag on it and fill it with water by the half litre. Tape a laser pointer or a mirror to the lath and mark its spot on a wall 3 m away: a millimetre is a third of a milliradian. Hold the motor by a pin, not by its current.',
    handsOn: 1.5 * HOUR,
    elapsed: 1.5 * HOUR,
    cost: 'a laser pointer',
  },
  pretension: {
    fixture:
      'Pluck a free span beside a telephone with a tuner or a camera with sound: the pitch goes as the root of the tension. Calibrate it once with a luggage scale that pulls the span sideways at its middle.',
    handsOn: 1 * HOUR,
    elapsed: 30 * DAY,
    cost: 'nothing; the leg stands for a month',
  },
  pullOut: {
    fixture:
      'Hang the end from a beam inside a closed box or a rolled carpet. Pull by a lever of known ratio and a bucket that fills with water, or by a crane scale and a ratchet strap, from two metres to the side.',
    handsOn: 3 * HOUR,
    elapsed: 2 * DAY,
    cost: 'a crane scale or a lever; five ends and three metres of cord',
  },
  freePlay: {
    fixture:
      'Clamp the leg to a table and the rotor by a pin. Bolt a lath of 500 mm to the joint, and read its end against a rule or a dial gauge while you push it from side to side with a finger.',
    handsOn: 0.4 * HOUR,
    elapsed: 0.4 * HOUR,
    cost: 'nothing, or a dial gauge',
  },
  efficiency: {
    fixture:
      'Clamp the leg so that its joint axis lies level. Bolt a lath of 300 mm to the joint, level at mid travel, and hang a bag of water on its end. The controller turns the joint by a few degrees a second and logs its q current.',
    handsOn: 0.75 * HOUR,
    elapsed: 0.75 * HOUR,
    cost: 'nothing',
  },
  beltPitch: {
    fixture:
      'Pluck the middle of a free span beside a telephone with a tuner, ten times at each reading, and take the middle value. Keep the joint unloaded, so that both spans sound alike.',
    handsOn: 1 * HOUR,
    elapsed: 30 * DAY,
    cost: 'nothing; the leg stands for a month',
  },
  slipTorque: {
    fixture:
      'Clamp the leg to a table and the rotor by a pin. Bolt a lath of 500 mm to the joint and pull its end slowly with a luggage scale on a string, from two metres to the side, until the joint gives at once. Read the highest force. A stop just behind the lath ends its way.',
    handsOn: 0.75 * HOUR,
    elapsed: 0.75 * HOUR,
    cost: 'a luggage scale; the drive that has slipped is looked at, and replaced where it is worn',
  },
  springTorque: {
    fixture:
      'Clamp the leg to a table with the joint axis upright, so that no weight turns it, and take the drive loose. Bolt a lath of 300 mm to the joint, and hold its end by a luggage scale square to it. Read the angle on a protractor that is drawn around the axis.',
    handsOn: 1 * HOUR,
    elapsed: 1 * HOUR,
    cost: 'a luggage scale',
  },
  weightTorque: {
    fixture:
      'Clamp the leg so that the joint axis lies level, and take the drive loose. Hold the link at the end of a lath of 300 mm by a luggage scale square to it. Read the angle of the link from hanging straight down by a telephone with a level.',
    handsOn: 0.5 * HOUR,
    elapsed: 0.5 * HOUR,
    cost: 'a luggage scale',
  },
  torqueConstant: {
    fixture:
      'Bolt a lath of 200 mm to the rotor, rest its end on a kitchen scale, block the can. Raise the current in eight steps, read the scale, let it cool between the steps.',
    handsOn: 0.75 * HOUR,
    elapsed: 0.75 * HOUR,
    cost: 'nothing',
  },
  noLoad: {
    fixture:
      'Run the bare motor from a bench supply with a pocket meter in its lead. Change the voltage in five steps, wait until the current settles.',
    handsOn: 0.3 * HOUR,
    elapsed: 0.3 * HOUR,
    cost: 'nothing',
  },
  heating: {
    fixture:
      'Bolt the motor to its plate, hang the plate freely in a room without draught. Tape a thermometer to the mounting face (an infrared one needs a patch of black tape), another one in the air 200 mm beside. Log ten minutes without current first: all must read alike. Take the winding by its resistance with a pocket meter.',
    handsOn: 1 * HOUR,
    elapsed: 2 * HOUR,
    cost: 'two thermocouples, or an infrared thermometer',
  },
  footDeflection: {
    fixture:
      'Stand the leg on a bathroom scale, press the body down by a lath in five steps, read the foot with a dial gauge or a camera on a tripod against a ruler.',
    handsOn: 0.75 * HOUR,
    elapsed: 0.75 * HOUR,
    cost: 'a dial gauge, or nothing',
  },
}
