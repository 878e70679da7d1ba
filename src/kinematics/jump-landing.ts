import { formula, type Given, type Inputs, readInputs } from '../formula/index.js'
import { solveNonStiff } from '../numeric/index.js'
import { Quantity } from '../units/index.js'

const GRAVITY = { kind: 'acceleration', above: 0, default: '9.80665 m/s^2' } as const

/** Force, speed and time of a jump from standing: the legs push with constant force over their travel, then the robot flies. */
export const jumpPush = /* @__PURE__ */ formula('kinematics.jumpPush', {
  inputs: {
    /** Mass of the robot. */
    mass: { kind: 'mass', above: 0 },
    /** Rise of the centre of mass after the feet have left the ground. */
    jumpHeight: { kind: 'length', min: 0 },
    /** Travel of the centre of mass while the legs push. */
    pushTravel: { kind: 'length', above: 0 },
    /** Acceleration of free fall. */
    gravity: { kind: 'acceleration', above: 0, default: '9.80665 m/s^2' },
  },
  output: {
    /** Force of all legs together on the ground, mean over the travel. */
    totalForce: 'force',
    /** Speed on leaving the ground. */
    takeOffSpeed: 'velocity',
    /** Time the push takes. */
    pushTime: 'time',
    /** Time in the air, landing at the height of take-off. */
    flightTime: 'time',
  },
  equation: [
    'totalForce = mass * gravity * (1 + jumpHeight / pushTravel)',
    'takeOffSpeed = sqrt(2 * gravity * jumpHeight)',
    'pushTime = 2 * pushTravel / takeOffSpeed',
    'flightTime = 2 * takeOffSpeed / gravity',
  ],
  assumes: ['constant force over the travel', 'massless legs', 'straight up'],
  source: [{ level: 'computed', where: 'energy and uniform acceleration; any mechanics text' }],
  si: ({ mass, jumpHeight, pushTravel, gravity }) => {
    const speed = Math.sqrt(2 * gravity * jumpHeight)
    return {
      totalForce: mass * gravity * (1 + jumpHeight / pushTravel),
      takeOffSpeed: speed,
      pushTime: speed === 0 ? 0 : (2 * pushTravel) / speed,
      flightTime: (2 * speed) / gravity,
    }
  },
})

/** Peak force of a drop on springy legs: the energy of the fall goes into the spring. A mass laid down without any fall already gives twice its weight. */
export const dropOnSpring = /* @__PURE__ */ formula('kinematics.dropOnSpring', {
  inputs: {
    /** Mass that comes down. */
    mass: { kind: 'mass', above: 0 },
    /** Free fall before the feet touch. */
    dropHeight: { kind: 'length', min: 0 },
    /** Stiffness of all standing legs together, vertical. */
    stiffness: { kind: 'linearStiffness', above: 0 },
    /** Acceleration of free fall. */
    gravity: { kind: 'acceleration', above: 0, default: '9.80665 m/s^2' },
  },
  output: {
    /** Peak force on all legs together. */
    peakForce: 'force',
    /** Deepest compression. */
    compression: 'length',
  },
  equation: [
    'peakForce = mass * gravity * (1 + sqrt(1 + 2 * dropHeight * stiffness / (mass * gravity)))',
    'compression = peakForce / stiffness',
  ],
  assumes: ['linear spring, no damping', 'legs without mass'],
  source: [
    {
      level: 'unverified',
      where: 'W. C. Young, R. G. Budynas, Roark’s Formulas for Stress and Strain, "impact, energy method": F = W (1 + √(1 + 2h/δ))',
    },
  ],
  si: ({ mass, dropHeight, stiffness, gravity }) => {
    const weight = mass * gravity
    const peakForce = weight * (1 + Math.sqrt(1 + (2 * dropHeight * stiffness) / weight))
    return { peakForce, compression: peakForce / stiffness }
  },
})

/** Blow of the part of a leg that must stop at once on touch-down: the foot’s effective mass with its rotors, on a stiff contact. */
export const touchDownImpact = /* @__PURE__ */ formula('kinematics.touchDownImpact', {
  inputs: {
    /** Speed of the foot against the ground. */
    speed: { kind: 'velocity', min: 0 },
    /** Effective mass at the foot along the blow, reflected rotor inertia included. */
    effectiveMass: { kind: 'mass', above: 0 },
    /** Stiffness of foot and ground in contact. */
    contactStiffness: { kind: 'linearStiffness', above: 0 },
  },
  output: {
    /** Impulse that stops the foot, without rebound. */
    impulse: 'impulse',
    /** Peak of the blow, on top of the body’s load. */
    peakForce: 'force',
    /** Time to the peak. */
    timeToPeak: 'time',
  },
  equation: [
    'impulse = effectiveMass * speed',
    'peakForce = speed * sqrt(contactStiffness * effectiveMass)',
    'timeToPeak = pi / 2 * sqrt(effectiveMass / contactStiffness)',
  ],
  assumes: ['lumped mass on a linear contact, a quarter of an oscillation', 'the body’s load builds up more slowly'],
  source: [{ level: 'computed', where: 'undamped oscillator started with a speed: F = v √(k m); any vibration text' }],
  si: ({ speed, effectiveMass, contactStiffness }) => ({
    impulse: effectiveMass * speed,
    peakForce: speed * Math.sqrt(contactStiffness * effectiveMass),
    timeToPeak: (Math.PI / 2) * Math.sqrt(effectiveMass / contactStiffness),
  }),
})

const LANDING = {
  mass: { kind: 'mass', above: 0 },
  dropHeight: { kind: 'length', min: 0 },
  stiffness: { kind: 'linearStiffness', above: 0 },
  damping: { kind: 'linearDamping', min: 0 },
  gravity: GRAVITY,
} as const satisfies Inputs

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

/**
 * A drop on legs with spring and damper, integrated from touch-down to the deepest point. The damper pushes on the way down and never pulls the foot
 * to the ground.
 */
export function landOnSpringAndDamper(given: Given<typeof LANDING>): Landing {
  const { mass, dropHeight, stiffness, damping, gravity } = readInputs('kinematics.landOnSpringAndDamper', LANDING, given)
  const speed = Math.sqrt(2 * gravity * dropHeight)
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
  const touchDown = damping * speed
  let peak = touchDown
  let when = 0
  let deepest = 0
  for (const { t, y } of [...solution.events, { t: solution.tEnd, y: solution.yEnd }]) {
    deepest = Math.max(deepest, y[0]!)
    if (force(y) > peak) {
      peak = force(y)
      when = t
    }
  }
  return {
    peakForce: new Quantity(peak, 'force'),
    timeOfPeak: new Quantity(when, 'time'),
    touchDownForce: new Quantity(touchDown, 'force'),
    damperGoverns: when === 0 && touchDown > 0,
    compression: new Quantity(deepest, 'length'),
    touchDownSpeed: new Quantity(speed, 'velocity'),
  }
}
