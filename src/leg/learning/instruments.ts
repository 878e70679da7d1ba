import { type In, InputError, type Kind, nearName, quantity, show } from '../../units/index.js'
import type { LogRemark, ReadLog } from './logs.js'
import type { MeasurementId } from './measurements.js'

/** How far an instrument may be off in the same way over a whole log: the half-width that holds 95 % of instruments. */
export interface Instrument {
  readonly kind: Kind
  /** Default, SI. */
  readonly within: number
  /** What it is. */
  readonly what: string
  /** How to make it smaller. */
  readonly cure: string
}

export const instrument = (kind: Kind, within: number, what: string, cure: string): Instrument => ({ kind, within, what, cure })
export const SCALE_GAIN = (within: number) =>
  instrument(
    'ratio',
    within,
    'gain of the scale',
    'hang a known weight (a litre of water, 9.8 N) on the scale and write what it shows into the log',
  )
export const SCALE_ZERO = (within: number) =>
  instrument('force', within, 'zero of the scale', 'read the unloaded scale before and after, and subtract')

const ARM_GAIN = instrument('ratio', 0.02, 'gain of the torque', 'measure the arm to a millimetre, and weigh the weights')
const ANGLE_ZERO = instrument(
  'angle',
  Math.PI / 180,
  'zero of the angle',
  'set the zero against a square or a stop before the first reading',
)

/**
 * What a log may say of its instruments in a comment, such as `# force gain: 1 %`, with the default where it says nothing. Defaults are those of a
 * home workshop: a luggage scale, a lever arm and weights, thermocouples of class 2 (IEC 60584-1: 2.5 K, not checked), a phase current read by the
 * controller.
 */
export const INSTRUMENTS: { readonly [M in MeasurementId]: Readonly<Record<string, Instrument>> } = {
  cordFriction: {
    'force gain': SCALE_GAIN(0.03),
    'force zero': SCALE_ZERO(0.1),
    'pulley drag': instrument(
      'ratio',
      0.04,
      'drag of a pulley in the pull',
      'pull the scale directly, without a pulley, or turn the set-up end for end',
    ),
    'wrap zero': instrument(
      'angle',
      (10 * Math.PI) / 180,
      'angle of wrap',
      'take readings at several wraps: half a turn, one turn, one and a half',
    ),
  },
  windup: {
    'torque gain': ARM_GAIN,
    'angle gain': instrument('ratio', 0.02, 'gain of the angle', 'use a longer pointer, and measure its length to a millimetre'),
    'frame give': instrument(
      'ratio',
      0.12,
      'deflection of frame and bearings as a share of that of the drive',
      'put a dial gauge on motor plate and joint pin, and subtract',
    ),
  },
  pretension: {
    'force gain': SCALE_GAIN(0.03),
    'force zero': SCALE_ZERO(2),
    'temperature drift': instrument(
      'temperatureDifference',
      4,
      'change of the room temperature over the log',
      'read at the same temperature each time, and write it down',
    ),
  },
  pullOut: { 'force gain': SCALE_GAIN(0.03) },
  freePlay: {
    'angle gain': instrument('ratio', 0.03, 'gain of the angle', 'read the play at a longer arm, and measure the arm to a millimetre'),
  },
  efficiency: {
    'torque gain': ARM_GAIN,
    'current gain': instrument('ratio', 0.02, 'gain of the current', 'compare the controller with a clamp meter at one held current'),
  },
  beltPitch: {
    'span gain': instrument('ratio', 0.01, 'length of the free span', 'measure it between the tangent points of both pulleys'),
    'mass gain': instrument('ratio', 0.05, 'mass of the belt over its length', 'weigh the whole belt on a letter scale'),
    'temperature drift': instrument(
      'temperatureDifference',
      4,
      'change of the room temperature over the log',
      'read at the same temperature each time, and write it down',
    ),
  },
  slipTorque: { 'torque gain': ARM_GAIN },
  springTorque: { 'torque gain': ARM_GAIN, 'angle zero': ANGLE_ZERO },
  weightTorque: { 'torque gain': ARM_GAIN, 'angle zero': ANGLE_ZERO },
  heating: {
    'current gain': instrument('ratio', 0.02, 'gain of the current', 'compare the controller with a clamp meter at one held current'),
    'resistance gain': instrument('ratio', 0.03, 'resistance of the winding', 'measure it with four wires at a known temperature'),
    'temperature zero': instrument(
      'temperatureDifference',
      2.5,
      'zero of each thermometer',
      'log ten minutes without current first: all thermometers must agree',
    ),
  },
  torqueConstant: {
    'current gain': instrument('ratio', 0.02, 'gain of the current', 'compare the controller with a clamp meter at one held current'),
    'torque gain': ARM_GAIN,
  },
  noLoad: {
    'current gain': instrument('ratio', 0.02, 'gain of the current', 'compare with a second meter'),
    'voltage gain': instrument('ratio', 0.01, 'gain of the voltage', 'compare with a second meter'),
  },
  footDeflection: {
    'force gain': SCALE_GAIN(0.03),
    'gauge gain': instrument('ratio', 0.01, 'gain of the dial gauge', 'compare it with a feeler gauge'),
  },
}

/** Standard deviations of the instruments of a log, SI: what its comments say, or the defaults. */
export function accuracyOf(
  log: string,
  known: Readonly<Record<string, Instrument>>,
  { notes }: Pick<ReadLog, 'notes'>,
  remarks: LogRemark[],
): Readonly<Record<string, number>> {
  const within: Record<string, number> = Object.fromEntries(Object.entries(known).map(([key, { within: x }]) => [key, x]))
  for (const { key, value, line } of notes) {
    const meant = known[key]
    if (meant === undefined) {
      const near = nearName(key, Object.keys(known))
      if (near !== undefined)
        remarks.push({
          log,
          line,
          what: 'instrument',
          message: `${key} is not an instrument of this log; is ${near} meant? The default is used`,
        })
      continue
    }
    try {
      const { si } = quantity(meant.kind, value as unknown as In<Kind>)
      if (si < 0) throw new InputError('learn', [{ path: key, given: show(value), accepts: 'must not be below zero' }])
      within[key] = si
    } catch (error) {
      if (!(error instanceof InputError)) throw error
      remarks.push({
        log,
        line,
        what: 'instrument',
        message: `${key}: ${value} is not ${meant.kind === 'ratio' ? 'a share such as 1 %' : 'a quantity of its kind'}; the default is used`,
      })
    }
  }
  // A half-width of 95 % is 1.96 standard deviations.
  return Object.fromEntries(Object.entries(within).map(([key, x]) => [key, x / 1.96]))
}
