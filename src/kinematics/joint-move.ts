import { formula, type Given, type Inputs, readInputs } from '../formula/index.js'
import { Quantity } from '../units/index.js'
import { perJoint } from './vectors.js'

/** Shortest move of a joint from rest to rest with limited rate, limited acceleration and a limited time in which the acceleration builds up. */
export const jerkLimitedMove = /* @__PURE__ */ formula('kinematics.jerkLimitedMove', {
  inputs: {
    /** Angle covered, in size. */
    distance: { kind: 'angle', min: 0 },
    /** Highest rate. */
    maxRate: { kind: 'angularVelocity', above: 0 },
    /** Highest acceleration. */
    maxAcceleration: { kind: 'angularAcceleration', above: 0 },
    /** Time in which the acceleration builds up from zero to its highest: the jerk is limited to the one over the other. */
    rampTime: { kind: 'time', above: 0 },
  },
  output: {
    /** Time of the whole move. */
    moveTime: 'time',
    /** Rate reached. */
    peakRate: 'angularVelocity',
    /** Acceleration reached. */
    peakAcceleration: 'angularAcceleration',
    /** Time of each ramp of the acceleration. */
    ramp: 'time',
    /** Time of speeding up, and of slowing down: two ramps, and what is between them. */
    accelerationTime: 'time',
    /** Time at constant rate. */
    cruiseTime: 'time',
  },
  assumes: ['from rest to rest', 'the same limits both ways'],
  source: [{ level: 'computed', where: 'seven phases of constant jerk, integrated; any text on trajectory planning, "double-S profile"' }],
  si: ({ distance, maxRate, maxAcceleration, rampTime }) => {
    const jerk = maxAcceleration / rampTime
    // With the whole rate in reach: full ramps only if the acceleration reaches its limit before the rate does.
    const fullRamp = Math.min(rampTime, Math.sqrt(maxRate / jerk))
    const fullAcceleration = fullRamp + maxRate / (jerk * fullRamp)
    const cruise = distance / maxRate - fullAcceleration
    const short = distance < 2 * maxAcceleration * rampTime * rampTime
    const ramp = cruise >= 0 ? fullRamp : short ? Math.cbrt(distance / (2 * jerk)) : rampTime
    const speedingUp =
      cruise >= 0
        ? fullAcceleration
        : short
          ? 2 * ramp
          : 0.5 * rampTime + Math.sqrt(0.25 * rampTime * rampTime + distance / maxAcceleration)
    return {
      moveTime: 2 * speedingUp + Math.max(0, cruise),
      peakRate: jerk * ramp * (speedingUp - ramp),
      peakAcceleration: jerk * ramp,
      ramp,
      accelerationTime: speedingUp,
      cruiseTime: Math.max(0, cruise),
    }
  },
})

const ANGLES = /* @__PURE__ */ perJoint('angle')
const LIMITS = {
  /** Highest rate of the joint. */
  maxRate: { kind: 'angularVelocity', above: 0 },
  /** Highest acceleration of the joint. */
  maxAcceleration: { kind: 'angularAcceleration', above: 0 },
  /** Time over which the acceleration builds up. */
  rampTime: { kind: 'time', above: 0 },
} as const satisfies Inputs
const SPECIFICATION = {
  /** Angles at the start, where the joints are at rest. */
  from: { fields: ANGLES },
  /** Angles at the end, where they are at rest again. */
  to: { fields: ANGLES },
  /** Limits of each joint. */
  limits: {
    fields: {
      /** Limits of the sideways hip. */
      sidewaysHip: { fields: LIMITS },
      /** Limits of the hip. */
      hip: { fields: LIMITS },
      /** Limits of the knee. */
      knee: { fields: LIMITS },
    },
  },
} as const satisfies Inputs

/** Start and end of a move of a leg's joints (or drums), and the limits of each. */
export interface JointMoveSpecification extends Given<typeof SPECIFICATION> {}

interface Profile {
  /** Angle at the start, rad. */
  readonly start: number
  /** 1 for a move to higher angles, −1 for one to lower angles, 0 for none. */
  readonly sense: number
  /** Jerk, rad/s³. */
  readonly jerk: number
  /** Time of one ramp of the acceleration, s. */
  readonly ramp: number
  /** Time of speeding up, s. */
  readonly speedingUp: number
  /** Time at constant rate, s. */
  readonly cruise: number
}

/**
 * A move of three joints that start and end together, at rest: the slowest sets the time, and the others take its time with less than their limits.
 * Immutable; `stateInto` is its form on plain numbers.
 */
export class JointMove {
  /** Time of the move, s. */
  readonly timeSi: number
  private readonly profiles: readonly Profile[]

  /** @internal Use `jointMove`. */
  constructor(profiles: readonly Profile[], times: readonly number[]) {
    this.timeSi = Math.max(...times)
    this.profiles = profiles.map((p, j) => {
      // Stretched in time by s, the jerk falls with s³: no limit is passed.
      const stretch = times[j]! === 0 ? 1 : this.timeSi / times[j]!
      return { ...p, jerk: p.jerk / stretch ** 3, ramp: p.ramp * stretch, speedingUp: p.speedingUp * stretch, cruise: p.cruise * stretch }
    })
  }

  /** Time of the move. */
  get time(): Quantity<'time'> {
    return new Quantity(this.timeSi, 'time')
  }

  /** Angles, rates and accelerations at a time after the start, SI (9 numbers); at rest before the start and after the end. Allocates nothing. */
  stateInto(out: Float64Array, offset: number, time: number): void {
    for (let j = 0; j < 3; j++) {
      const { start, sense, jerk, ramp, speedingUp, cruise } = this.profiles[j]!
      const total = 2 * speedingUp + cruise
      const peak = jerk * ramp * (speedingUp - ramp)
      const distance = peak * (speedingUp + cruise)
      // The second half is the first seen from the end.
      const t = Math.min(total, Math.max(0, time))
      const back = t > 0.5 * total
      const u = back ? total - t : t
      const first = Math.min(u, ramp)
      const flat = Math.min(Math.max(0, u - ramp), speedingUp - 2 * ramp)
      const last = Math.min(Math.max(0, u - speedingUp + ramp), ramp)
      const even = Math.max(0, u - speedingUp)
      const full = jerk * ramp
      const rate = 0.5 * jerk * first * first + full * flat + full * last - 0.5 * jerk * last * last
      const rampRate = 0.5 * jerk * first * first
      const flatRate = rampRate + full * flat
      const travel =
        (jerk * first ** 3) / 6 +
        rampRate * flat +
        0.5 * full * flat * flat +
        flatRate * last +
        0.5 * full * last * last -
        (jerk * last ** 3) / 6 +
        peak * even
      out[offset + j] = start + sense * (back ? distance - travel : travel)
      out[offset + 3 + j] = sense * rate
      out[offset + 6 + j] = (back ? -sense : sense) * (jerk * first - jerk * last)
    }
  }
}

/** Plans the quickest move of a leg's joints from rest to rest within limits of rate, acceleration and jerk, all joints ending together. */
export function jointMove(given: JointMoveSpecification): JointMove {
  const { from, to, limits } = readInputs('kinematics.jointMove', SPECIFICATION, given)
  const times: number[] = []
  const profiles = (['sidewaysHip', 'hip', 'knee'] as const).map((joint): Profile => {
    const distance = to[joint] - from[joint]
    const { moveTime, ramp, accelerationTime, cruiseTime } = jerkLimitedMove.si({ distance: Math.abs(distance), ...limits[joint] })
    times.push(moveTime)
    const jerk = limits[joint].maxAcceleration / limits[joint].rampTime
    return { start: from[joint], sense: Math.sign(distance), jerk, ramp, speedingUp: accelerationTime, cruise: cruiseTime }
  })
  return new JointMove(profiles, times)
}
