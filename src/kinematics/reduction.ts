import { formula } from '../formula/index.js'

/** Torque a motor must give behind a reduction, from the torque and speed at the drum and its own rotor's acceleration. */
export const motorTorqueThroughReduction = /* @__PURE__ */ formula('kinematics.motorTorqueThroughReduction', {
  inputs: {
    /** Torque at the output drum, positive along its angle, without the rotor's inertia. */
    outputTorque: 'torque',
    /** Speed of the output drum; at rest the reduction counts as driving, which needs more motor torque. */
    outputSpeed: 'angularVelocity',
    /** Acceleration of the output drum. */
    outputAcceleration: { kind: 'angularAcceleration', default: '0 rad/s^2' },
    /** Motor turns per turn of the drum. */
    ratio: { kind: 'ratio', above: 0 },
    /** Part of the motor's power that reaches the drum when the motor drives. */
    efficiency: { kind: 'ratio', above: 0, max: 1, default: 1 },
    /** Part of the load's power that reaches the motor when the load drives it back. */
    backEfficiency: { kind: 'ratio', min: 0, max: 1, default: 1 },
    /** Moment of inertia of the rotor and all that turns with it. */
    rotorInertia: { kind: 'momentOfInertia', min: 0, default: '0 kg m^2' },
    /** Acceleration of the part that carries the motor, about the drum's axis and in the rotor's sense of turning; 0 for a motor on the body. */
    carrierAcceleration: { kind: 'angularAcceleration', default: '0 rad/s^2' },
  },
  /** Torque at the motor's shaft, rotor included. */
  output: 'torque',
  equation: [
    'result = (outputTorque * outputSpeed < 0 W ? outputTorque * backEfficiency : outputTorque / efficiency) / ratio + rotorInertia * (ratio * outputAcceleration + carrierAcceleration)',
  ],
  assumes: [
    'friction of the reduction as a constant part of the power through it',
    'the rotor turns as the drum does, without slack or stretch',
  ],
  source: [
    {
      level: 'unverified',
      where: 'any text on machine dynamics, "reflected inertia" and "efficiency of a gear train, driving and driven"',
    },
  ],
  si: ({ outputTorque, outputSpeed, outputAcceleration, ratio, efficiency, backEfficiency, rotorInertia, carrierAcceleration }) =>
    (outputTorque * outputSpeed < 0 ? outputTorque * backEfficiency : outputTorque / efficiency) / ratio +
    rotorInertia * (ratio * outputAcceleration + carrierAcceleration),
})

/** Current, voltage and powers of a motor at a torque and speed, from its constants at the winding's present temperature. */
export const motorOperatingPoint = /* @__PURE__ */ formula('kinematics.motorOperatingPoint', {
  inputs: {
    /** Torque at the motor's shaft, positive along its speed's sense. */
    torque: 'torque',
    /** Speed of the motor. */
    speed: 'angularVelocity',
    /** Torque per ampere of the equivalent direct-current motor. */
    torqueConstant: { kind: 'torqueConstantDc', above: 0 },
    /** Terminal resistance of the equivalent direct-current motor at the winding's temperature. */
    resistance: { kind: 'electricalResistance', min: 0 },
    /** Current the motor draws without load, for friction and iron; acts against the motion. */
    noLoadCurrent: { kind: 'current', min: 0, default: '0 A' },
  },
  output: {
    /** Current of the equivalent direct-current motor. */
    current: 'current',
    /** Terminal voltage: resistance times current, and back EMF. */
    voltage: 'voltage',
    /** Power at the shaft; negative when the load drives the motor. */
    mechanicalPower: 'power',
    /** Heat in the winding. */
    copperLoss: 'power',
    /** Power from the supply; negative when it flows back. */
    electricalPower: 'power',
  },
  equation: [
    'current = torque / torqueConstant + sign(speed) * noLoadCurrent',
    'voltage = current * resistance + torqueConstant * speed',
    'mechanicalPower = torque * speed',
    'copperLoss = current^2 * resistance',
    'electricalPower = voltage * current',
  ],
  assumes: [
    'steady at each instant: winding inductance neglected',
    'torque proportional to current',
    'back EMF constant equals torque constant in SI',
  ],
  source: [{ level: 'unverified', where: 'A. Hughes, B. Drury, Electric Motors and Drives, ch. 3: V = I R + k ω, T = k I' }],
  si: ({ torque, speed, torqueConstant, resistance, noLoadCurrent }) => {
    const current = torque / torqueConstant + (speed > 0 ? noLoadCurrent : speed < 0 ? -noLoadCurrent : 0)
    const voltage = current * resistance + torqueConstant * speed
    return {
      current,
      voltage,
      mechanicalPower: torque * speed,
      copperLoss: current * current * resistance,
      electricalPower: voltage * current,
    }
  },
})
