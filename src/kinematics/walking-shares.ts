import { formula } from '../formula/index.js'
import { GAITS } from './gait-phases.js'
import { DUTY_FACTOR } from './robot-inputs.js'
import { StandingFeet } from './springy-feet.js'

/** Parts of the stance that `walkingShares` distinguishes. */
export const STANCE_PARTS = 12
/** How far before and after the end of a part of the stance the feet are looked at, as part of a stride. */
const PHASE_OFFSET = 1e-13

interface Walk {
  readonly legs: number
  readonly dutyFactor: number
  readonly spacing: number
  readonly width: number
  readonly stepLength: number
  readonly weightForward: number
  readonly weightLeft: number
}

/** A leg of the walk: its place in its row, from 0 at the front to 1, the side of its row, and its touch-down in the stride. */
interface Leg {
  readonly row: number
  readonly fromFront: number
  readonly side: number
  readonly phase: number
}

/** A foot that stands at one moment: how much of its stance has passed, and the part of the stance that its share counts in. */
interface Standing {
  readonly leg: Leg
  readonly passed: number
  readonly part: number
}

/** When the feet of a walk stand: the same for every size of robot and of step. */
interface Schedule {
  readonly rows: number
  readonly moments: readonly (readonly Standing[])[]
  /** Part of the stride in which at least one foot stands. */
  readonly carried: number
}

/** Legs in two rows, the left one first: a wave runs along each from the hind leg to the front one, half a stride apart. */
function legsOf(many: number, dutyFactor: number): Leg[] {
  const sides = [Math.ceil(many / 2), Math.floor(many / 2)]
  const lag = Math.min(0.5, 1 - dutyFactor)
  return sides.flatMap((count, side) =>
    Array.from({ length: count }, (_, row): Leg => {
      const named = GAITS.walk[2 * row + side]!
      const phase = many === 4 ? named : ((count - 1 - row) * lag + side / 2) % 1
      return { row, fromFront: count === 1 ? 0.5 : row / (count - 1), side, phase }
    }),
  )
}

/** Moments of a stride to look at: the middle of each part of every leg's stance, and those just beside its ends. */
function momentsOf(legs: readonly Leg[], dutyFactor: number): Iterable<number> {
  const part = dutyFactor / STANCE_PARTS
  const moments = new Map<number, number>()
  const note = (at: number) => {
    const moment = fraction(at + 1)
    moments.set(Math.round(moment / (0.1 * PHASE_OFFSET)), moment)
  }
  for (const { phase } of legs)
    for (let k = 0; k <= STANCE_PARTS; k++) {
      note(phase + k * part - PHASE_OFFSET)
      note(phase + k * part + PHASE_OFFSET)
      note(phase + (k + 0.5) * part)
    }
  return moments.values()
}

/** Fractional part of a number that is not negative. */
const fraction = (x: number): number => x - Math.floor(x)

function scheduleOf(many: number, dutyFactor: number): Schedule {
  const legs = legsOf(many, dutyFactor)
  const moments = Array.from(momentsOf(legs, dutyFactor), (moment) =>
    legs.flatMap((leg): Standing[] => {
      const since = fraction(moment - leg.phase + 2)
      if (since >= dutyFactor) return []
      const passed = since / dutyFactor
      return [{ leg, passed, part: leg.row * STANCE_PARTS + Math.min(STANCE_PARTS - 1, Math.floor(passed * STANCE_PARTS)) }]
    }),
  )
  return { rows: Math.max(...legs.map(({ row }) => row)) + 1, moments, carried: Math.min(1, standingFor(legs, dutyFactor)) }
}

/** The schedule that was used last: robots of a study walk alike, with steps and weights of their own. */
const last: { many: number; dutyFactor: number; schedule: Schedule | undefined } = {
  many: Number.NaN,
  dutyFactor: Number.NaN,
  schedule: undefined,
}

function scheduleFor(many: number, dutyFactor: number): Schedule {
  if (last.schedule === undefined || last.many !== many || last.dutyFactor !== dutyFactor) {
    last.schedule = scheduleOf(many, dutyFactor)
    last.many = many
    last.dutyFactor = dutyFactor
  }
  return last.schedule
}

const feet = /* @__PURE__ */ new StandingFeet()

const sharesOf = ({ legs, dutyFactor, spacing, width, stepLength, weightForward, weightLeft }: Walk) => {
  const { rows, moments, carried } = scheduleFor(Math.round(legs), dutyFactor)
  const largest = new Array<number>(rows * STANCE_PARTS).fill(0)
  for (const standing of moments) {
    feet.clear()
    for (const { leg, passed } of standing)
      feet.add(spacing * (0.5 - leg.fromFront) + stepLength * (0.5 - passed), (leg.side === 0 ? width : -width) / 2)
    feet.carry(weightForward, weightLeft)
    for (let k = 0; k < standing.length; k++) {
      const { part } = standing[k]!
      largest[part] = Math.max(largest[part]!, feet.shares[k]!)
    }
  }
  // In flight nobody carries: the feet that stand then carry more, so that the impulse of a stride stays that of the weight.
  return { shares: largest.map((share) => share / carried), largest: Math.max(...largest) / carried }
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
