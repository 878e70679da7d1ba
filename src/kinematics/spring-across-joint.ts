import { formula } from '../formula/index.js'

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
    /** Distance of the fixed end in front of the axis. */
    fixedForward: 'length',
    /** Distance of the moving end below the axis, along the link that turns, from the axis to its far end. */
    movingDown: 'length',
    /** Distance of the moving end in front of the axis, with the joint straight. */
    movingForward: 'length',
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
  ],
  assumes: ['both ends in one plane across the axis', 'ends that turn freely on their pins'],
  source: [
    { level: 'computed', where: 'distance of two points; its derivative (tests/oracles/structures-springs.py takes it by differences)' },
  ],
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
