import { formula } from '../formula/index.js'
import { crankFromRockerInto } from './four-bar-angles.js'
import { deadPoints, KNEE_LINKAGE, type Linkage, nearestTurn } from './four-bar-knee-pose.js'
import { KNEE_LIMITS } from './link-inputs.js'

/** Step of the scan over the knee angle. */
const STEP = Math.PI / 60
/** Halvings of a step round the smallest sample. */
const HALVINGS = 20

const pose = new Float64Array(3)

/** Acute angle between the rod and the nearer in line of crank and rocker; zero where the links do not reach. */
function rodAngle(linkage: Linkage, side: -1 | 1, kneeAngle: number): number {
  const rockerAngle = linkage.rockerAngleAtStraightKnee + kneeAngle
  if (!crankFromRockerInto(pose, 0, linkage, rockerAngle, side)) return 0
  const [crankAngle, couplerAngle] = pose as unknown as [number, number]
  return Math.asin(Math.min(Math.abs(Math.sin(crankAngle - couplerAngle)), Math.abs(Math.sin(rockerAngle - couplerAngle))))
}

interface Nearest {
  readonly turn: number
  readonly angle: number
  readonly kneeAngle: number
}
const sum = ({ turn, angle }: Nearest) => turn + angle

type Limits = readonly [lowest: number, highest: number]
const smaller = (one: Nearest, other: Nearest) => (sum(other) < sum(one) ? other : one)
const beyond = (kneeAngle: number, [lowest, highest]: Limits) => Math.max(0, lowest - kneeAngle, kneeAngle - highest)

/** The dead point of a linkage that is nearest to its limits; `best` where none is nearer than that. */
function nearestDeadPoint(best: Nearest, linkage: Linkage, side: -1 | 1, limits: Limits): Nearest {
  return deadPoints(linkage, side).reduce((nearest, { rockerAngle }) => {
    const kneeAngle = nearestTurn(rockerAngle - linkage.rockerAngleAtStraightKnee, ...limits)
    return smaller(nearest, { turn: beyond(kneeAngle, limits), angle: 0, kneeAngle })
  }, best)
}

/** The pose of a linkage that is nearest to a dead point; `best` where none is nearer than that. */
function nearestPose(best: Nearest, linkage: Linkage, side: -1 | 1, limits: Limits): Nearest {
  let nearest = best
  const tryAt = (kneeAngle: number) => {
    nearest = smaller(nearest, { turn: beyond(kneeAngle, limits), angle: rodAngle(linkage, side, kneeAngle), kneeAngle })
  }
  const [lowest, highest] = limits
  const steps = Math.max(1, Math.ceil((highest - lowest) / STEP))
  for (let i = 0; i <= steps; i++) tryAt(lowest + ((highest - lowest) * i) / steps)
  for (let turn = STEP; turn < sum(nearest); turn += STEP) {
    tryAt(lowest - turn)
    tryAt(highest + turn)
  }
  if (nearest === best) return best
  // The smallest sample has a smaller neighbour at most a step away.
  for (let i = 0, step = STEP / 2; i < HALVINGS; i++, step /= 2) {
    const { kneeAngle } = nearest
    tryAt(kneeAngle - step)
    tryAt(kneeAngle + step)
  }
  return nearest
}

/** The linkage with its lengths at the ends of their errors, in every combination. */
function* atTheirErrors(nominal: Linkage, error: number): Generator<Linkage> {
  const errors = error === 0 ? [0] : [-error, error]
  for (const g of errors)
    for (const a of errors)
      for (const b of errors)
        for (const c of errors)
          yield {
            ...nominal,
            ground: nominal.ground + g,
            crank: nominal.crank + a,
            coupler: nominal.coupler + b,
            rocker: nominal.rocker + c,
          }
}

/**
 * How far a four-bar knee keeps from its dead points, with each of its four lengths off by as much as they may be.
 *
 * A linkage of nearly equal pairs passes the line without a dead point, or has one many degrees before it, by tenths of a millimetre. Turn beyond the limits
 * and angle of the rod there are therefore added: the least sum is the distance to a dead point where there is one, and goes over steadily into the least
 * angle of the rod where there is none. Links that do not reach each other within the limits have a clearance of zero.
 */
export const fourBarClearance = /* @__PURE__ */ formula('kinematics.fourBarClearance', {
  title: 'clearance of a four-bar knee from dead points',
  inputs: {
    ...KNEE_LINKAGE,
    ...KNEE_LIMITS,
    /** Largest error of each of the four lengths, of either sign. */
    lengthError: { kind: 'length', min: 0, default: '0 mm' },
  },
  output: {
    /** Least sum of `turn` and `rodAngle`, over all poses and errors. */
    clearance: 'angle',
    /** Turn of the knee beyond its limits up to that pose; zero within them. */
    turn: 'angle',
    /** Acute angle in that pose between the rod and crank or rocker, whichever is nearer in line. */
    rodAngle: 'angle',
    /** Knee angle of that pose. */
    kneeAngle: 'angle',
  },
  assumes: [
    'rigid links, no clearance in the pins',
    'all four lengths are off by the whole error at once, each with its worst sign',
    'the linkage stays on the side of the crank that is given',
    'a pose that the links do not reach counts as a dead point',
  ],
  requires: {
    kneeHighest: { accepts: 'must be at least the lowest', holds: ({ kneeLowest, kneeHighest }) => kneeHighest >= kneeLowest },
    lengthError: {
      accepts: 'must be smaller than each of the four lengths',
      holds: ({ lengthError, ground, crank, coupler, rocker }) => lengthError < Math.min(ground, crank, coupler, rocker),
    },
  },
  source: [
    { level: 'computed', where: 'closure of the four-bar scanned over the knee angle, with the lengths at both ends of their errors' },
    { level: 'unverified', where: 'R. L. Norton, Design of Machinery, ch. 4: angle between rod and rocker as the measure of a linkage' },
  ],
  si: ({ kneeLowest, kneeHighest, lengthError, crankSide, ...nominal }) => {
    const side = crankSide === 'positive' ? 1 : -1
    const limits = [kneeLowest, kneeHighest] as const
    const linkages = [...atTheirErrors(nominal, lengthError)]
    const none = { turn: Number.POSITIVE_INFINITY, angle: 0, kneeAngle: kneeLowest }
    // Dead points first: they need no scan, and a scan ends where it cannot come nearer.
    const dead = linkages.reduce<Nearest>((best, linkage) => nearestDeadPoint(best, linkage, side, limits), none)
    const best = linkages.reduce<Nearest>((nearest, linkage) => nearestPose(nearest, linkage, side, limits), dead)
    return { clearance: sum(best), turn: best.turn, rodAngle: best.angle, kneeAngle: best.kneeAngle }
  },
})
