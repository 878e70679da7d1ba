import { formula } from '../formula/index.js'

const FIXED_FORWARD = {
  /** Distance of the fixed end in front of the axis. */
  fixedForward: 'length',
} as const

const MOVING_FORWARD = {
  /** Distance of the moving end in front of the axis, with the joint straight. */
  movingForward: 'length',
} as const

/**
 * Length of a spring or cord between two points on either side of a joint, and the arm of its pull.
 *
 * The arm is how fast its length grows with the angle of the joint: a pull F puts the torque −F · arm on the joint. It is also, without its sign, the
 * distance of the line of the spring from the axis. Where the arm is 0 the spring points through the axis and the joint is at a dead point: beyond it the pull
 * turns the joint the other way.
 */
export const springAcrossJoint = /* @__PURE__ */ formula('kinematics.springAcrossJoint', {
  inputs: {
    /** Distance of the fixed end above the axis, along the link (or body) that carries the joint. */
    fixedUp: 'length',
    ...FIXED_FORWARD,
    /** Distance of the moving end below the axis, along the link that turns, from the axis to its far end. */
    movingDown: 'length',
    ...MOVING_FORWARD,
    /** Angle of the joint, 0 where the link points straight down. It turns the far end backward as it grows. */
    jointAngle: 'angle',
  },
  output: {
    /** Distance of both ends. */
    length: 'length',
    /** Growth of the length with the angle. */
    arm: 'length',
  },
  equation: [
    'length == sqrt((movingForward * cos(jointAngle) - movingDown * sin(jointAngle) - fixedForward)^2 + (movingDown * cos(jointAngle) + movingForward * sin(jointAngle) + fixedUp)^2)',
    'arm == ((movingDown * cos(jointAngle) + movingForward * sin(jointAngle) + fixedUp) * (movingForward * cos(jointAngle) - movingDown * sin(jointAngle)) - (movingForward * cos(jointAngle) - movingDown * sin(jointAngle) - fixedForward) * (movingDown * cos(jointAngle) + movingForward * sin(jointAngle))) / length',
  ],
  assumes: ['both ends in one plane across the axis', 'ends that turn freely on their pins'],
  source: [{ level: 'computed', where: 'distance of two points and its derivative, taken by differences' }],
  requires: {
    movingDown: {
      accepts: 'must put the ends apart from each other and from the axis',
      holds: ({ fixedUp, fixedForward, movingDown, movingForward, jointAngle }) =>
        distanceOf(fixedUp, fixedForward, movingDown, movingForward, jointAngle) >
        1e-9 * (Math.hypot(fixedUp, fixedForward) + Math.hypot(movingDown, movingForward)),
    },
  },
  si: ({ fixedUp, fixedForward, movingDown, movingForward, jointAngle }) => {
    const [s, c] = [Math.sin(jointAngle), Math.cos(jointAngle)]
    const forward = movingForward * c - movingDown * s
    const down = movingDown * c + movingForward * s
    const length = Math.hypot(forward - fixedForward, down + fixedUp)
    // As the angle grows the moving end runs along (−down, forward) in the directions forward and down.
    return { length, arm: ((forward - fixedForward) * -down + (down + fixedUp) * forward) / length }
  },
})

function distanceOf(fixedUp: number, fixedForward: number, movingDown: number, movingForward: number, jointAngle: number): number {
  const [s, c] = [Math.sin(jointAngle), Math.cos(jointAngle)]
  return Math.hypot(movingForward * c - movingDown * s - fixedForward, movingDown * c + movingForward * s + fixedUp)
}

/** Shortest and longest distance of the two ends over the travel of the joint. */
export const springOverTravel = /* @__PURE__ */ formula('kinematics.springOverTravel', {
  inputs: {
    /** Distance of the fixed end above the axis. */
    fixedUp: 'length',
    ...FIXED_FORWARD,
    /** Distance of the moving end below the axis, with the joint straight. */
    movingDown: 'length',
    ...MOVING_FORWARD,
    /** Lowest angle of the joint. */
    from: 'angle',
    /** Highest angle of the joint. */
    to: 'angle',
  },
  output: {
    /** Shortest distance. */
    shortest: 'length',
    /** Longest distance. */
    longest: 'length',
  },
  assumes: ['both ends in one plane across the axis'],
  source: [
    {
      level: 'computed',
      where: 'both ends of the travel, and the angles at which the spring points at the axis; found by search',
    },
  ],
  requires: { to: { accepts: 'must not be below from', holds: ({ from, to }) => to >= from } },
  si: ({ from, to, ...ends }) => {
    const { fixedUp, fixedForward, movingDown, movingForward } = ends
    // Both ends on one line through the axis: nearest or farthest, every half turn.
    const line = Math.atan2(movingForward, movingDown) - Math.atan2(fixedForward, -fixedUp)
    const first = line + Math.PI * Math.ceil((from - line) / Math.PI)
    let [shortest, longest] = [Number.POSITIVE_INFINITY, 0]
    const take = (angle: number) => {
      const length = distanceOf(fixedUp, fixedForward, movingDown, movingForward, angle)
      shortest = Math.min(shortest, length)
      longest = Math.max(longest, length)
    }
    take(from)
    take(to)
    if (first <= to) take(first)
    if (first + Math.PI <= to) take(first + Math.PI)
    return { shortest, longest }
  },
})
