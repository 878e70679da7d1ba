import { reflectedInertia } from '../../capstan/index.js'
import { bare, type Step } from '../../formula/index.js'
import { FootPath, KNEE_BACKWARD, LegDynamicsKernel, LegKernel, REACHED, stanceForce } from '../../kinematics/index.js'
import { rmsTorque } from '../../thermal/index.js'
import { type Kind, Quantity } from '../../units/index.js'
import type { Prepared } from '../numbers.js'
import { oncePerLeg } from '../once.js'
import type { Sheet } from '../sheet.js'

/** What a load case asks of one driven joint, at the joint. */
export interface JointMotion {
  /** Torque of largest magnitude that goes through the cord, with its sign: ground, weight and inertia of the links. */
  torque: number
  /** The same with what the motor's own rotor takes to speed up: what the motor makes, as the joint would feel it. */
  shaftTorque: number
  /** Root mean square of what the motor makes over the stride, as the joint would feel it. */
  shaftRms: number
  /** Highest speed, stance and swing. */
  speed: number
  /** Highest speed while the foot bears load. */
  loadedSpeed: number
  /** Angles it runs through. */
  lowest: number
  highest: number
}

/** A joint that nothing is asked of. */
export const UNLOADED: JointMotion = { torque: 0, shaftTorque: 0, shaftRms: 0, speed: 0, loadedSpeed: 0, lowest: 0, highest: 0 }

/** What a load case asks of the leg before any drive comes in. */
export interface Motion {
  /** Largest force of the ground on the foot, upright and along the ground. */
  readonly vertical: number
  readonly forward: number
  readonly hip: JointMotion
  readonly knee: JointMotion
  /** Torque about the sideways hip, largest magnitude. */
  readonly sideways: number
  /** Farthest distance of the foot from the hip axis, in the leg plane, and how far the leg reaches. */
  readonly farthest: number
  readonly reach: number
  /** Whether every point of the path can be reached. */
  readonly reached: boolean
}

/** A stance: how the foot is loaded while the body passes over it. */
export interface Stance {
  readonly gravity: number
  /** Mass that the legs carry. */
  readonly mass: number
  /** Part of the weight this leg carries, averaged over the stride. */
  readonly legShare: number
  readonly dutyFactor: number
  readonly shape: 'rectangular' | 'halfSine'
  /** Force along the ground over force upright. */
  readonly traction: number
  readonly speed: number
  readonly stepLength: number
  readonly clearance: number
  /** Height of the hip axis over the ground. */
  readonly height: number
  /** Whether the leg is blocked somewhere in its stance: the poses of a step, but nothing moves. */
  readonly blocked?: boolean
}

const STANCE_SAMPLES = 8
/** Fine enough for the largest torque of a swing to two per cent. */
const SWING_SAMPLES = 12

const angles = new Float64Array(3)
const rates = new Float64Array(3)
const accelerations = new Float64Array(3)
const torques = new Float64Array(3)
const shaft = new Float64Array(3)
const state = new Float64Array(9)
const velocity = state.subarray(3, 6)
const acceleration = state.subarray(6, 9)

/** The knee's side, from its limits. */
export const branchOf = (leg: Prepared): number => (leg.x.joints.knee.from + leg.x.joints.knee.to < 0 ? KNEE_BACKWARD : 0)

const kernelOf = (leg: Prepared) => kernelOnce(bare, leg)
const kernelOnce = /* @__PURE__ */ oncePerLeg((_, { x }) => new LegKernel(x.links.hipOffset, x.links.upper.length, x.links.lower.length))

/** A link as an even rod from its joint down: mass, centre of mass, inertia about it, as inverse dynamics takes them. */
export const rodOf = ({ mass, length }: { mass: number; length: number }): readonly number[] => {
  const across = (mass * length * length) / 12
  return [mass, 0, 0, -length / 2, across, across, 0, 0, 0, 0]
}

/** Inverse dynamics of a leg, by gravity: level ground and slope. */
const dynamicsOnce = /* @__PURE__ */ oncePerLeg(() => new Map<number, ReturnType<typeof makeDynamics>>())

function dynamicsOf(leg: Prepared, gravity: number) {
  const known = dynamicsOnce(bare, leg)
  let found = known.get(gravity)
  if (found === undefined) {
    found = makeDynamics(leg, gravity)
    known.set(gravity, found)
  }
  return found
}

/** Inverse dynamics of the links, and of links and rotors together. */
function makeDynamics(leg: Prepared, gravity: number) {
  const { rotorInertia } = leg.x.motor
  const rotor = (joint: 'hip' | 'knee') => reflectedInertia.si({ rotorInertia, ratio: leg.drives[joint].ratio })
  return { links: rodLeg(leg, gravity), together: rodLeg(leg, gravity, [0, 0, 0, 0, rotor('hip'), 0, 0, 0, rotor('knee')]) }
}

/** Inverse dynamics of the links as even rods; the hip link stands still where hip and knee move. Rotor inertias as `LegDynamicsKernel` takes them. */
export function rodLeg({ x }: Prepared, gravity: number, rotors?: readonly number[]): LegDynamicsKernel {
  const { hipOffset, upper, lower } = x.links
  return new LegDynamicsKernel(hipOffset, upper.length, lower.length, [NO_LINK, rodOf(upper), rodOf(lower)], [0, 0, -gravity], rotors)
}

const NO_LINK = new Float64Array(10)

/** Joint torques, speeds and angles over a stride; a stance without step is a pose held. */
export function motionOver(leg: Prepared, sheet: Sheet, stance: Stance): Motion {
  const kernel = kernelOf(leg)
  const dynamics = dynamicsOf(leg, stance.gravity)
  const branch = branchOf(leg)
  const moving = stance.stepLength > 0
  const stanceTime = moving ? stance.stepLength / stance.speed : 1
  const period = moving ? stanceTime / stance.dutyFactor : 1
  const path = moving ? pathOf(leg, stance, period) : undefined
  const hip = blank()
  const knee = blank()
  const made: { hip: number[]; knee: number[]; durations: number[] } = { hip: [], knee: [], durations: [] }
  let sideways = 0
  let vertical = 0
  let worst = { torque: -1, phase: 0.5, step: NOTHING }
  let farthest = 0
  let reached = true
  const turns = moving && stance.blocked !== true
  const stanceSamples = moving ? STANCE_SAMPLES : 1
  const samples = stanceSamples + (turns ? SWING_SAMPLES : 0)
  for (let i = 0; i < samples; i++) {
    const stands = i < stanceSamples
    const phase = !moving ? 0.5 : stands ? (i + 0.5) / STANCE_SAMPLES : (i - STANCE_SAMPLES + 0.5) / SWING_SAMPLES
    place(state, path, leg, stance, stands ? phase * stanceTime : stanceTime + phase * (period - stanceTime))
    farthest = Math.max(farthest, planeDistance(leg, state[0]!, state[1]!, state[2]!))
    if (kernel.jointAnglesInto(angles, 0, state[0]!, state[1]!, state[2]!, branch) !== REACHED) {
      reached = false
      continue
    }
    const force = stands
      ? stanceForce.si({
          mass: stance.mass,
          legShare: stance.legShare,
          dutyFactor: stance.dutyFactor,
          stancePhase: phase,
          shape: stance.shape,
          thirdHarmonic: 0,
          gravity: stance.gravity,
        })
      : 0
    // A stretched leg has no speeds to tell; its links are then taken as standing still.
    if (turns && kernel.singularityAt(angles) === 0) {
      kernel.jointRatesInto(rates, 0, angles, velocity)
      kernel.jointAccelerationsInto(accelerations, 0, angles, rates, acceleration)
    } else {
      rates.fill(0)
      accelerations.fill(0)
    }
    dynamics.links.torqueInto(torques, 0, angles, rates, accelerations, stance.traction * force, 0, force)
    dynamics.together.torqueInto(shaft, 0, angles, rates, accelerations, stance.traction * force, 0, force)
    take(hip, clean(torques[1]!), clean(shaft[1]!), angles[1]!, rates[1]!, stands)
    take(knee, clean(torques[2]!), clean(shaft[2]!), angles[2]!, rates[2]!, stands)
    made.hip.push(clean(shaft[1]!))
    made.knee.push(clean(shaft[2]!))
    made.durations.push(stands ? stanceTime / stanceSamples : (period - stanceTime) / SWING_SAMPLES)
    sideways = Math.max(sideways, Math.abs(clean(torques[0]!)))
    vertical = Math.max(vertical, force)
    const largest = Math.max(Math.abs(torques[1]!), Math.abs(torques[2]!))
    if (stands && largest > worst.torque) {
      const [q, w, a] = sheet.recording ? [[...angles], [...rates], [...accelerations]] : [NOTHING.q, NOTHING.w, NOTHING.a]
      worst = { torque: largest, phase, step: { q, w, a, force } }
    }
  }
  const { of } = sheet
  of(stanceForce, {
    mass: stance.mass,
    legShare: stance.legShare,
    dutyFactor: stance.dutyFactor,
    stancePhase: worst.phase,
    shape: stance.shape,
    thirdHarmonic: 0,
    gravity: stance.gravity,
  })
  sheet.keep(() => torqueStep(leg, worst.step, stance, dynamics.links))
  if (made.durations.length > 0) {
    const { durations } = made
    hip.shaftRms = of(rmsTorque, { torques: made.hip, durations, windingTimeConstant: undefined }).torque
    knee.shaftRms = of(rmsTorque, { torques: made.knee, durations, windingTimeConstant: undefined }).torque
  }
  return {
    vertical,
    forward: stance.traction * vertical,
    hip,
    knee,
    sideways,
    farthest,
    reach: leg.x.links.upper.length + leg.x.links.lower.length,
    reached,
  }
}

/** Where a torque is worked out for the calculation sheet. */
interface Moment {
  readonly q: readonly number[]
  readonly w: readonly number[]
  readonly a: readonly number[]
  /** Upright force of the ground. */
  readonly force: number
}
const NOTHING: Moment = { q: [0, 0, 0], w: [0, 0, 0], a: [0, 0, 0], force: 0 }

/** Torque that is only rounding is none. */
const clean = (torque: number) => (Math.abs(torque) < 1e-12 ? 0 : torque)

const blank = (): JointMotion => ({
  torque: 0,
  shaftTorque: 0,
  shaftRms: 0,
  speed: 0,
  loadedSpeed: 0,
  lowest: Number.POSITIVE_INFINITY,
  highest: Number.NEGATIVE_INFINITY,
})

function take(joint: JointMotion, torque: number, shaftTorque: number, angle: number, rate: number, loaded: boolean): void {
  if (Math.abs(torque) > Math.abs(joint.torque)) joint.torque = torque
  if (Math.abs(shaftTorque) > Math.abs(joint.shaftTorque)) joint.shaftTorque = shaftTorque
  const speed = Math.abs(rate)
  if (speed > joint.speed) joint.speed = speed
  if (loaded && speed > joint.loadedSpeed) joint.loadedSpeed = speed
  if (angle < joint.lowest) joint.lowest = angle
  if (angle > joint.highest) joint.highest = angle
}

/** Distance of a foot point from the hip axis within the leg plane. */
function planeDistance({ x }: Prepared, px: number, py: number, pz: number): number {
  const offset = x.links.hipOffset
  return Math.sqrt(Math.max(0, px * px + py * py + pz * pz - offset * offset))
}

/** The path of the foot over a stride. */
export function pathOf({ x }: Prepared, stance: Stance, stridePeriod: number): FootPath {
  return new FootPath({
    midStance: { x: 0, y: x.links.hipOffset, z: -stance.height },
    stanceSweep: stance.stepLength,
    stridePeriod,
    dutyFactor: stance.dutyFactor,
    heading: 0,
    lift: stance.clearance,
    swing: 'matched',
    liftShape: 'smooth',
    swingPoints: undefined,
  })
}

function place(out: Float64Array, path: FootPath | undefined, { x }: Prepared, stance: Stance, time: number): void {
  if (path !== undefined) {
    path.si.stateInto(out, 0, time)
    return
  }
  out.fill(0)
  out[1] = x.links.hipOffset
  out[2] = -stance.height
}

function torqueStep({ x }: Prepared, { q, w, a, force }: Moment, stance: Stance, links: LegDynamicsKernel): Step {
  const out = new Float64Array(3)
  links.torqueInto(out, 0, Float64Array.from(q), Float64Array.from(w), Float64Array.from(a), stance.traction * force, 0, force)
  const text = (kind: Kind) => (y: number | undefined) => String(new Quantity(y ?? 0, kind))
  const [angle, rate, turning, torque, push, mass] = (
    ['angle', 'angularVelocity', 'angularAcceleration', 'torque', 'force', 'mass'] as const
  ).map(text) as [Text, Text, Text, Text, Text, Text]
  return {
    formula: 'kinematics.legDynamics',
    title: 'joint torque that ground, weight and inertia of the links ask for',
    inputs: {
      sidewaysHip: angle(q[0]),
      hip: angle(q[1]),
      knee: angle(q[2]),
      hipRate: rate(w[1]),
      kneeRate: rate(w[2]),
      hipAcceleration: turning(a[1]),
      kneeAcceleration: turning(a[2]),
      groundReactionUp: push(force),
      groundReactionForward: push(stance.traction * force),
      upperLink: mass(x.links.upper.mass),
      lowerLink: mass(x.links.lower.mass),
    },
    results: { sidewaysHip: torque(out[0]), hip: torque(out[1]), knee: torque(out[2]) },
    assumes: ['links are rigid even rods', 'point foot', 'the body moves evenly', 'moment of largest torque among those sampled in stance'],
    notes: [],
    source: [
      {
        level: 'published',
        where: 'outward velocities and accelerations, inward forces and moments (Newton-Euler; Craig, Introduction to Robotics, ch. 6)',
      },
    ],
  }
}

type Text = (y: number | undefined) => string

/** Joint angles of the standing leg. */
export function poseOf(leg: Prepared): readonly [number, number, number] {
  const out = new Float64Array(3)
  kernelOf(leg).jointAnglesInto(out, 0, 0, leg.x.links.hipOffset, -leg.x.robot.standHeight, branchOf(leg))
  return [out[0]!, out[1]!, out[2]!]
}
