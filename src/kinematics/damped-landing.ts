import { type Given, type Inputs, readInputs } from '../formula/index.js'
import { solveNonStiff } from '../numeric/index.js'
import { Quantity } from '../units/index.js'

const LANDING = {
  /** Mass that lands. */
  mass: { kind: 'mass', above: 0 },
  /** Height that it falls from. */
  dropHeight: { kind: 'length', min: 0 },
  /** Stiffness of the legs along the fall, all together. */
  stiffness: { kind: 'linearStiffness', above: 0 },
  /** Damping of the legs along the fall, all together. */
  damping: { kind: 'linearDamping', min: 0 },
  /** Acceleration of free fall. Default 9.80665 m/s². */
  gravity: { kind: 'acceleration', above: 0, default: '9.80665 m/s^2' },
} as const satisfies Inputs

/** Damping, over critical damping, from which the closed form replaces the integration. */
const STIFF_DAMPING = 10

/** A landing on spring and damper. */
export interface Landing {
  /** Highest total force on the legs, and when after touch-down. */
  readonly peakForce: Quantity<'force'>
  readonly timeOfPeak: Quantity<'time'>
  /** Force at touch-down: the damper alone, c v. More damping raises it. */
  readonly touchDownForce: Quantity<'force'>
  /** The peak is the damper's at touch-down: less damping would land more softly. */
  readonly damperGoverns: boolean
  /** Deepest compression of the legs. */
  readonly compression: Quantity<'length'>
  readonly touchDownSpeed: Quantity<'velocity'>
}

/** Course after touch-down: the highest force, its time, and the deepest compression. */
interface Course {
  readonly peak: number
  readonly when: number
  readonly deepest: number
}

interface Touched {
  readonly mass: number
  readonly speed: number
  readonly stiffness: number
  readonly damping: number
  readonly gravity: number
}

/** The course by integration, from touch-down to the deepest point. */
function integrated({ mass, speed, stiffness, damping, gravity }: Touched): Course {
  const force = (y: Float64Array) => Math.max(0, stiffness * y[0]! + damping * y[1]!)
  const natural = Math.sqrt(stiffness / mass)
  const solution = solveNonStiff({
    derivative: (_, y, out) => {
      out[0] = y[1]!
      out[1] = gravity - force(y) / mass
    },
    start: 0,
    // Even critically or more heavily damped, the deepest point is passed or the settled depth approached within this time.
    end: 10 / natural + (20 * damping) / stiffness,
    initial: [0, speed],
    relativeTolerance: 1e-10,
    absoluteTolerance: 1e-13,
    maxStep: 0.05 / natural,
    events: [
      { value: (_, y) => (y[0]! > 0 ? y[1]! : 1), direction: 'falling', terminal: true },
      // The force stops rising.
      { value: (_, y) => stiffness * y[1]! + damping * (gravity - force(y) / mass), direction: 'falling' },
    ],
  })
  let [peak, when, deepest] = [damping * speed, 0, 0]
  for (const { t, y } of [...solution.events, { t: solution.tEnd, y: solution.yEnd }]) {
    deepest = Math.max(deepest, y[0]!)
    if (force(y) > peak) {
      peak = force(y)
      when = t
    }
  }
  return { peak, when, deepest }
}

/**
 * The course far beyond critical damping, in closed form: the place about the static sag is A e^(−slow t) + B e^(−fast t). The two rates may lie decades
 * apart, which no integration follows.
 */
function overdamped({ mass, speed, stiffness, damping, gravity }: Touched): Course {
  const sag = (mass * gravity) / stiffness
  const half = damping / (2 * mass)
  const fast = half + Math.sqrt(half * half - stiffness / mass)
  const slow = stiffness / mass / fast
  const b = (slow * sag - speed) / (fast - slow)
  const a = -sag - b
  // The moment at which the k-th derivative of the place vanishes; infinite where it never does after touch-down.
  const moment = (k: number) => {
    const ratio = (-b / a) * (fast / slow) ** k
    return ratio > 1 ? Math.log(ratio) / (fast - slow) : Number.POSITIVE_INFINITY
  }
  const term = (rate: number, t: number) => (t === Number.POSITIVE_INFINITY ? 0 : Math.exp(-rate * t))
  const stop = moment(1)
  const deepest = Math.max(sag, sag + a * term(slow, stop) + b * term(fast, stop))
  const crest = moment(3)
  const atCrest = mass * (gravity - a * slow * slow * term(slow, crest) - b * fast * fast * term(fast, crest))
  const touchDown = damping * speed
  // A force that rises to the weight without a crest reaches it to within 1e-9 after some twenty slow time constants.
  if (!(atCrest > touchDown)) return { peak: touchDown, when: 0, deepest }
  return { peak: atCrest, when: Math.min(crest, 20 / slow), deepest }
}

/**
 * A drop on legs with spring and damper, followed from touch-down to the deepest point. The damper pushes on the way down and never pulls the foot
 * to the ground.
 */
export function landOnSpringAndDamper(given: Given<typeof LANDING>): Landing {
  const { mass, dropHeight, stiffness, damping, gravity } = readInputs('kinematics.landOnSpringAndDamper', LANDING, given)
  const speed = Math.sqrt(2 * gravity * dropHeight)
  const course = damping > STIFF_DAMPING * 2 * Math.sqrt(stiffness * mass) ? overdamped : integrated
  const { peak, when, deepest } = course({ mass, speed, stiffness, damping, gravity })
  const touchDown = damping * speed
  return {
    peakForce: new Quantity(peak, 'force'),
    timeOfPeak: new Quantity(when, 'time'),
    touchDownForce: new Quantity(touchDown, 'force'),
    damperGoverns: when === 0 && touchDown > 0,
    compression: new Quantity(deepest, 'length'),
    touchDownSpeed: new Quantity(speed, 'velocity'),
  }
}
