import { formula } from '../formula/index.js'
import { GRAVITY, HEIGHT, ROBOT_MASS } from './robot-inputs.js'
import { insideEdge } from './support-margin.js'

/** Centre of mass over the ground. */
const CENTRE_OF_MASS_ON_GROUND = {
  /** Centre of mass, forward. */
  centreX: 'length',
  /** Centre of mass, to the left. */
  centreY: 'length',
} as const

/**
 * Forces of four equal feet that stand on a rectangle, with legs of one stiffness, and with one foot that does not reach.
 *
 * Four feet are statically undetermined: without the stiffness only a range can be stated. A foot that would pull is off the ground; the other three
 * then carry the weight, or the robot tips over them.
 */
export const fourFeetForces = /* @__PURE__ */ formula('kinematics.fourFeetForces', {
  inputs: {
    /** Weight of the robot. */
    weight: { kind: 'force', above: 0 },
    /** Distance of front and hind feet. */
    length: { kind: 'length', above: 0 },
    /** Distance of left and right feet. */
    width: { kind: 'length', above: 0 },
    /** Centre of mass forward of the middle of the feet. */
    centreForward: 'length',
    /** Centre of mass left of the middle of the feet. */
    centreLeft: 'length',
    /** Stiffness of each leg, upright, at its foot. */
    legStiffness: { kind: 'linearStiffness', above: 0 },
    /** Length that the left front foot misses: a short leg or a hollow. Negative for a long leg or a bump. */
    shortBy: { kind: 'length', default: '0 mm' },
  },
  output: {
    /** Force under the left front foot, the one that may be short. */
    leftFront: 'force',
    /** Force under the right front foot. */
    rightFront: 'force',
    /** Force under the left hind foot. */
    leftHind: 'force',
    /** Force under the right hind foot. */
    rightHind: 'force',
    /** Whether four feet stand, one is off the ground, or the robot tips: the forces are then zero. */
    state: { oneOf: ['fourStand', 'threeStand', 'tips'] },
  },
  assumes: ['rigid body, level ground', 'equal legs, linear in their deflection', 'forces of the feet upright'],
  source: [{ level: 'computed', where: 'a rigid plate on four equal springs; moments about two feet where three stand' }],
  si: ({ weight, length, width, centreForward, centreLeft, legStiffness, shortBy }) => {
    const [forward, left] = [centreForward / (2 * length), centreLeft / (2 * width)]
    const lost = (legStiffness * shortBy) / 4
    const four = [
      weight * (0.25 + forward + left) - lost,
      weight * (0.25 + forward - left) + lost,
      weight * (0.25 - forward + left) + lost,
      weight * (0.25 - forward - left) - lost,
    ]
    const min = Math.min(...four)
    const [a, b, c, d] = min >= 0 ? four : onThree(four.indexOf(min), weight, 2 * forward, 2 * left)
    const state = min >= 0 ? 'fourStand' : a! + b! + c! + d! > 0 ? 'threeStand' : 'tips'
    return { leftFront: a!, rightFront: b!, leftHind: c!, rightHind: d!, state }
  },
})

/** Forces with one foot of a rectangle off the ground; all zero where the others do not hold the centre of mass, given in lengths and widths. */
function onThree(off: number, weight: number, forward: number, left: number): number[] {
  // The two feet beside the one that is off carry what the moments demand of their sides; the one opposite carries the rest.
  const front = weight * (0.5 + forward)
  const onLeft = weight * (0.5 + left)
  const [besideAlong, besideAcross] = [off < 2 ? front : weight - front, off % 2 === 0 ? onLeft : weight - onLeft]
  const forces = [0, 0, 0, 0]
  forces[off ^ 1] = besideAlong
  forces[off ^ 2] = besideAcross
  forces[off ^ 3] = weight - besideAlong - besideAcross
  return forces.some((force) => force < 0) ? [0, 0, 0, 0] : forces
}

/** Shares of the weight on three feet, and whether they hold the centre of mass. */
export const threeFeetShares = /* @__PURE__ */ formula('kinematics.threeFeetShares', {
  inputs: {
    /** The three feet, seen from above. */
    feet: {
      list: {
        fields: {
          /** Place of the foot, forward. */
          x: 'length',
          /** Place of the foot, to the left. */
          y: 'length',
        },
      },
      least: 3,
    },
    ...CENTRE_OF_MASS_ON_GROUND,
  },
  output: {
    /** Share of the weight under each foot, in the order of the feet. A negative one is no force: the robot tips over the edge opposite that foot. */
    shares: { list: 'ratio' },
    /** Distance of the centre of mass inside the nearest edge; negative outside. */
    margin: 'length',
    /** Whether the robot stands. */
    state: { oneOf: ['stands', 'tips'] },
  },
  assumes: ['level ground, no motion', 'forces of the feet upright'],
  source: [{ level: 'computed', where: 'moments about the edges of the triangle: areas opposite each foot over the whole area' }],
  requires: {
    feet: { accepts: 'must be three, not in one line', holds: ({ feet }) => feet.length === 3 && Math.abs(twiceArea(feet)) > 0 },
  },
  si: ({ feet, centreX, centreY }) => {
    const whole = twiceArea(feet)
    const centre = { x: centreX, y: centreY }
    const shares = feet.map((_, i) => twiceArea(feet.map((foot, j) => (i === j ? centre : foot))) / whole)
    const sense = Math.sign(whole)
    const margin = Math.min(...feet.map((foot, i) => sense * insideEdge(foot, feet[(i + 1) % 3]!, centre)))
    return { shares, margin, state: margin >= 0 ? ('stands' as const) : ('tips' as const) }
  },
})

interface Point {
  readonly x: number
  readonly y: number
}

/** Twice the area of a triangle; positive where its corners run counter-clockwise. */
const twiceArea = ([a, b, c]: readonly Point[]) => (b!.x - a!.x) * (c!.y - a!.y) - (c!.x - a!.x) * (b!.y - a!.y)

/**
 * How a robot on two feet starts to tip to a side of their line: the least that it turns within a time.
 *
 * It tips faster than this as it goes on, because the centre of mass moves outward.
 */
export const twoFeetTipping = /* @__PURE__ */ formula('kinematics.twoFeetTipping', {
  title: 'tipping over the line of two feet',
  inputs: {
    /** One foot: forward. */
    rearX: 'length',
    /** One foot: to the left. */
    rearY: 'length',
    /** The other foot, which counts as the front one: forward. */
    frontX: 'length',
    /** The other foot: to the left. */
    frontY: 'length',
    ...CENTRE_OF_MASS_ON_GROUND,
    ...HEIGHT,
    ...ROBOT_MASS,
    /** Moment of inertia about the line through the centre of mass parallel to that of the feet. */
    inertia: { kind: 'momentOfInertia', min: 0 },
    /** Time on two feet. */
    time: { kind: 'time', min: 0 },
    ...GRAVITY,
  },
  output: {
    /** Distance of the centre of mass to the left of the line, seen towards the front foot. */
    offset: 'length',
    /** Moment of the weight about the line. */
    moment: 'torque',
    /** Angular acceleration at the start, positive to the left. */
    acceleration: 'angularAcceleration',
    /** Least angle turned within the time. */
    angle: 'angle',
    /** Side that the robot tips to. */
    state: { oneOf: ['balanced', 'tipsLeft', 'tipsRight'] },
  },
  equation: [
    'offset = ((frontX - rearX) * (centreY - rearY) - (frontY - rearY) * (centreX - rearX)) / sqrt((frontX - rearX)^2 + (frontY - rearY)^2)',
    'moment = mass * gravity * offset',
    'acceleration = moment / (inertia + mass * (offset^2 + height^2))',
    'angle = acceleration * time^2 / 2',
  ],
  assumes: ['point feet that do not slip', 'no control meanwhile'],
  source: [{ level: 'computed', where: 'moment of the weight over the moment of inertia about the line of the feet' }],
  requires: {
    frontX: { accepts: 'must be another place than the rear foot', holds: (x) => x.frontX !== x.rearX || x.frontY !== x.rearY },
  },
  si: ({ rearX, rearY, frontX, frontY, centreX, centreY, height, mass, inertia, time, gravity }) => {
    const offset = insideEdge({ x: rearX, y: rearY }, { x: frontX, y: frontY }, { x: centreX, y: centreY })
    const moment = mass * gravity * offset
    const acceleration = moment / (inertia + mass * (offset * offset + height * height))
    return {
      offset,
      moment,
      acceleration,
      angle: (acceleration * time * time) / 2,
      state: offset > 0 ? ('tipsLeft' as const) : offset < 0 ? ('tipsRight' as const) : ('balanced' as const),
    }
  },
})
