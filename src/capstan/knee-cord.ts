import { formula } from '../formula/index.js'
import { ARRANGEMENT } from './inputs.js'
import { shaftForce } from './loads.js'

/**
 * Angle through which the drum of a knee drive turns over the limits of hip and knee.
 *
 * With the motor on the body the drum turns with the hip as well: cord length, drum wrap, travel of the motor and slip limit follow this angle, not the
 * knee's. For a four-bar take `actuatorLimits` of the coupling.
 */
export const kneeDrumTravel = /* @__PURE__ */ formula('capstan.kneeDrumTravel', {
  title: 'travel of the drum of the knee',
  inputs: {
    /** Part that the knee's motor is bolted to. */
    motorOn: { oneOf: ['body', 'thigh'] },
    /** Turns of the drum per turn of the knee, negative for a crossed cord. */
    kneeRatio: { kind: 'ratio', default: 1 },
    /** Lowest hip angle. */
    hipLowest: 'angle',
    /** Highest hip angle. */
    hipHighest: 'angle',
    /** Lowest knee angle. */
    kneeLowest: 'angle',
    /** Highest knee angle. */
    kneeHighest: 'angle',
  },
  output: {
    /** Lowest angle of the drum. */
    lowest: 'angle',
    /** Highest angle of the drum. */
    highest: 'angle',
    /** Travel from end to end. */
    travel: 'angle',
    /** Part of that travel by the knee alone. */
    kneeTravel: 'angle',
  },
  equation: [
    'carried = equalText(motorOn, "body") ? 1 : 0',
    'lowest = carried * hipLowest + min(kneeRatio * kneeLowest, kneeRatio * kneeHighest)',
    'highest = carried * hipHighest + max(kneeRatio * kneeLowest, kneeRatio * kneeHighest)',
    'travel = highest - lowest',
    'kneeTravel = abs(kneeRatio) * (kneeHighest - kneeLowest)',
  ],
  assumes: ['hip and knee reach all corners of their limits together'],
  requires: {
    hipHighest: { accepts: 'must be at least the lowest', holds: (x) => x.hipHighest >= x.hipLowest },
    kneeHighest: { accepts: 'must be at least the lowest', holds: (x) => x.kneeHighest >= x.kneeLowest },
  },
  source: [{ level: 'computed', where: 'corners of the limits in the angle of the drum' }],
  si: ({ motorOn, kneeRatio, hipLowest, hipHighest, kneeLowest, kneeHighest }) => {
    const carried = motorOn === 'body' ? 1 : 0
    const [a, b] = [kneeRatio * kneeLowest, kneeRatio * kneeHighest]
    const lowest = carried * hipLowest + Math.min(a, b)
    const highest = carried * hipHighest + Math.max(a, b)
    return { lowest, highest, travel: highest - lowest, kneeTravel: Math.abs(b - a) }
  },
})

/**
 * Cord or belt along a link that drives the knee from a pulley on the hip axis: tensions, force on the knee's pulley, compression of the link.
 *
 * The rest tension compresses the link all the time, also on the shelf. In the state `slack` the slack branch hangs: the numbers are those of a taut branch
 * that carries the torque alone, and the cord jumps or snaps back at the next change of load.
 */
export const linkCord = /* @__PURE__ */ formula('capstan.linkCord', {
  title: 'cord or belt along a link',
  inputs: {
    ...ARRANGEMENT,
    /** Radius of the pulley on the hip axis. */
    hipRadius: { kind: 'length', above: 0 },
    /** Radius of the pulley on the shank. */
    kneeRadius: { kind: 'length', above: 0 },
    /** Distance of the two axes: the length of the link. */
    linkLength: { kind: 'length', above: 0 },
    /** Tension of both branches at rest. */
    restTension: { kind: 'force', min: 0 },
    /** Torque of the knee. */
    kneeTorque: 'torque',
  },
  output: {
    /** Tension of the taut branch. */
    tautTension: 'force',
    /** Tension of the slack branch. */
    slackTension: 'force',
    /** Force on the pulley of the knee, and on that of the hip. */
    pulleyForce: 'force',
    /** Compression of the link by the cord. */
    compression: 'force',
    /** Least tension at rest that keeps both branches taut. */
    leastRestTension: 'force',
    /** Whether both branches stay taut. */
    state: { oneOf: ['tight', 'slack'] },
  },
  assumes: ['both branches in one plane', 'equal stiffness of both branches', 'no friction of the bearings'],
  requires: {
    linkLength: {
      accepts: 'must exceed the sum of the radii, or the pulleys overlap',
      holds: ({ linkLength, hipRadius, kneeRadius }) => linkLength > hipRadius + kneeRadius,
    },
  },
  source: [{ level: 'computed', where: 'moments about the knee; sum of the tensions along their tangents' }],
  si: ({ arrangement, hipRadius, kneeRadius, linkLength, restTension, kneeTorque }) => {
    const half = Math.abs(kneeTorque) / (2 * kneeRadius)
    const isTight = restTension > half || half === 0
    const [tautTension, slackTension] = isTight ? [restTension + half, restTension - half] : [2 * half, 0]
    const pulleys = { arrangement, pinionRadius: hipRadius, drumRadius: kneeRadius, centreDistance: linkLength }
    const { force, alongCentres } = shaftForce.si({ ...pulleys, tautTension, slackTension })
    return {
      tautTension,
      slackTension,
      pulleyForce: force,
      compression: alongCentres,
      leastRestTension: half,
      state: isTight ? ('tight' as const) : ('slack' as const),
    }
  },
})
