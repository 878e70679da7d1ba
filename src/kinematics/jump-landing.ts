import { formula } from '../formula/index.js'
import { GRAVITY, ROBOT_MASS } from './robot-inputs.js'

/** Force, speed and time of a jump from standing: the legs push with constant force over their travel, then the robot flies. */
export const jumpPush = /* @__PURE__ */ formula('kinematics.jumpPush', {
  title: 'force, speed and time of a jump',
  inputs: {
    ...ROBOT_MASS,
    /** Rise of the centre of mass after the feet have left the ground. */
    jumpHeight: { kind: 'length', min: 0 },
    /** Travel of the centre of mass while the legs push. */
    pushTravel: { kind: 'length', above: 0 },
    ...GRAVITY,
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
  title: 'force of a drop on springy legs',
  inputs: {
    /** Mass that comes down. */
    mass: { kind: 'mass', above: 0 },
    /** Free fall before the feet touch. */
    dropHeight: { kind: 'length', min: 0 },
    /** Stiffness of all standing legs together, vertical. */
    stiffness: { kind: 'linearStiffness', above: 0 },
    ...GRAVITY,
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
