import { formula } from '../formula/index.js'
import { GAITS } from './gait-phases.js'
import { DUTY_FACTOR } from './robot-inputs.js'
import { MOST_FEET, StandingFeet } from './springy-feet.js'

/** Parts of the stance that `walkingShares` tells apart. */
export const STANCE_PARTS = 12
/** How far before and after the end of a part of the stance the feet are looked at, as part of a stride. */
const BESIDE = 1e-13

interface Walk {
  readonly legs: number
  readonly dutyFactor: number
  readonly spacing: number
  readonly width: number
  readonly stepLength: number
  readonly weightForward: number
  readonly weightLeft: number
}

/** A leg of the walk: its place under the body at mid stance, its place in its row counted from the front, and its touch-down in the stride. */
interface Leg {
  readonly x: number
  readonly y: number
  readonly row: number
  readonly phase: number
}

/** Legs in two rows, the left one first: a wave runs along each from the hind leg to the front one, half a stride apart. */
function legsOf({ legs, spacing, width, dutyFactor }: Walk): Leg[] {
  const many = Math.round(legs)
  const sides = [Math.ceil(many / 2), Math.floor(many / 2)]
  const lag = Math.min(0.5, 1 - dutyFactor)
  return sides.flatMap((count, side) =>
    Array.from({ length: count }, (_, row): Leg => {
      const fromFront = count === 1 ? 0.5 : row / (count - 1)
      const named = GAITS.walk[2 * row + side]!
      return {
        row,
        phase: many === 4 ? named : ((count - 1 - row) * lag + side / 2) % 1,
        x: spacing * (0.5 - fromFront),
        y: (side === 0 ? width : -width) / 2,
      }
    }),
  )
}

/** Moments of a stride to look at: the middle of each part of every leg's stance, and those just beside its ends. */
function momentsOf(legs: readonly Leg[], dutyFactor: number): Iterable<number> {
  const part = dutyFactor / STANCE_PARTS
  const moments = new Map<number, number>()
  const note = (at: number) => {
    const moment = fraction(at + 1)
    moments.set(Math.round(moment / (0.1 * BESIDE)), moment)
  }
  for (const { phase } of legs)
    for (let k = 0; k <= STANCE_PARTS; k++) {
      note(phase + k * part - BESIDE)
      note(phase + k * part + BESIDE)
      note(phase + (k + 0.5) * part)
    }
  return moments.values()
}

/** What is left of a number that is not negative without its whole part. */
const fraction = (x: number): number => x - Math.floor(x)

const feet = /* @__PURE__ */ new StandingFeet()
/** For each foot that stands, the part of the stance that its share counts in. */
const parts = /* @__PURE__ */ new Int32Array(MOST_FEET)

const sharesOf = (walk: Walk) => {
  const { dutyFactor, stepLength, weightForward, weightLeft } = walk
  const legs = legsOf(walk)
  const rows = Math.max(...legs.map(({ row }) => row)) + 1
  const largest = new Array<number>(rows * STANCE_PARTS).fill(0)
  for (const moment of momentsOf(legs, dutyFactor)) {
    feet.clear()
    for (const { row, phase, x, y } of legs) {
      const since = fraction(moment - phase + 2)
      if (since >= dutyFactor) continue
      const passed = since / dutyFactor
      parts[feet.count] = row * STANCE_PARTS + Math.min(STANCE_PARTS - 1, Math.floor(passed * STANCE_PARTS))
      feet.add(x + stepLength * (0.5 - passed), y)
    }
    feet.carry(weightForward, weightLeft)
    for (let k = 0; k < feet.count; k++) {
      const part = parts[k]!
      largest[part] = Math.max(largest[part]!, feet.shares[k]!)
    }
  }
  // In flight nobody carries: the feet that stand then carry more, so that the impulse of a stride stays that of the weight.
  const carriedFor = Math.min(1, standingFor(legs, dutyFactor))
  return { shares: largest.map((share) => share / carriedFor), largest: Math.max(...largest) / carriedFor }
}

/** Part of the stride in which at least one foot stands. */
function standingFor(legs: readonly Leg[], dutyFactor: number): number {
  const touches = legs.map(({ phase }) => phase).sort((a, b) => a - b)
  return touches.reduce((sum, from, k) => {
    const next = touches[k + 1] ?? touches[0]! + 1
    return sum + Math.min(dutyFactor, next - from)
  }, 0)
}

/**
 * Parts of the weight on the feet of a slow walk, by statics of the feet that stand: the largest in each twelfth of the stance, for the legs of each row.
 *
 * While one leg of a side swings, the other alone carries that side: half of the weight on four legs, where the mean over the stance is a third. The
 * legs stand in two rows, and a wave of steps runs along each from hind to front. Four legs step in the lateral sequence. Left and right legs of a place in
 * the row count together, at the more loaded one.
 *
 * With three feet or more around the weight it is that of a rigid body on equal springs. Where no polygon of feet holds it, the two feet beside it carry
 * all of it, and the body tips meanwhile. On a slope the weight passes through the ground beside the centre of mass: take its place there.
 */
export const walkingShares = /* @__PURE__ */ formula('kinematics.walkingShares', {
  title: 'shares of the weight in a slow walk',
  inputs: {
    /** Legs of the robot. */
    legs: { kind: 'count', min: 2, max: 64, whole: true },
    ...DUTY_FACTOR,
    /** Distance of the front and the hind feet, at mid stance. */
    spacing: { kind: 'length', above: 0 },
    /** Distance of the left and the right feet. */
    width: { kind: 'length', above: 0 },
    /** Way of the body over one foot on the ground. */
    stepLength: { kind: 'length', min: 0 },
    /** Where the weight passes through the ground, forward of the middle of the feet. */
    weightForward: { kind: 'length', default: '0 mm' },
    /** The same to the left. */
    weightLeft: { kind: 'length', default: '0 mm' },
  },
  output: {
    /** Largest part of the weight in each twelfth of the stance, from touch-down to lift-off: first of the front legs, then row by row to the hind ones. */
    shares: { list: 'ratio' },
    /** The largest of all. */
    largest: 'ratio',
  },
  assumes: [
    'the body keeps its height, its speed and its attitude, and does not sway to the side',
    'feet in two rows, steps in a wave from hind to front, sides half a stride apart',
    'where four feet or more stand, legs of equal stiffness on flat ground',
  ],
  source: [
    {
      level: 'computed',
      where: 'force and moments of a rigid body at rest on the feet that stand, equal springs where they are more than three',
    },
    {
      level: 'unverified',
      where: 'R. B. McGhee, A. A. Frank, "On the stability properties of quadruped creeping gaits", Math. Biosci. 3 (1968): wave of steps',
    },
  ],
  si: sharesOf,
})
