import type { Step } from '../../formula/index.js'
import { FootPath, jointRatesInto, KNEE_BACKWARD, LegKernel, REACHED, singularityOf, stanceForce } from '../../kinematics/index.js'
import { rmsTorque } from '../../thermal/index.js'
import { Quantity } from '../../units/index.js'
import type { Prepared } from '../numbers.js'
import type { Sheet } from '../sheet.js'

/** What a load case asks of one driven joint, at the joint. */
export interface JointMotion {
  /** Torque of largest magnitude, with its sign. */
  torque: number
  /** Root mean square of the torque over the stride. */
  rms: number
  /** Highest speed, stance and swing. */
  speed: number
  /** Highest speed while the foot bears load. */
  loadedSpeed: number
  /** Angles it runs through. */
  lowest: number
  highest: number
}

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
}

const STANCE_SAMPLES = 8
const SWING_SAMPLES = 8

const angles = new Float64Array(3)
const rates = new Float64Array(3)
const torques = new Float64Array(3)
const velocity = new Float64Array(3)
const state = new Float64Array(9)

/** The knee's side, from its limits. */
export const branchOf = (leg: Prepared): number => (leg.x.joints.knee.from + leg.x.joints.knee.to < 0 ? KNEE_BACKWARD : 0)

const kernelOf = ({ x }: Prepared) => new LegKernel(x.links.hipOffset, x.links.upper.length, x.links.lower.length)

/** Joint torques, speeds and angles over a stride; a stance without step is a pose held. */
export function motionOver(leg: Prepared, sheet: Sheet, stance: Stance): Motion {
  const kernel = kernelOf(leg)
  const branch = branchOf(leg)
  const moving = stance.stepLength > 0
  const stanceTime = moving ? stance.stepLength / stance.speed : 1
  const period = moving ? stanceTime / stance.dutyFactor : 1
  const path = moving ? pathOf(leg, stance, period) : undefined
  const hip = blank()
  const knee = blank()
  const heldHip: number[] = []
  const heldKnee: number[] = []
  let sideways = 0
  let vertical = 0
  let worst = { torque: -1, phase: 0.5, force: 0, q: [0, 0, 0] as number[], x: 0 }
  let farthest = 0
  let reached = true
  const samples = moving ? STANCE_SAMPLES : 1
  for (let i = 0; i < samples; i++) {
    const phase = moving ? (i + 0.5) / samples : 0.5
    place(state, path, leg, stance, phase * stanceTime)
    const px = state[0]!
    const py = state[1]!
    const pz = state[2]!
    farthest = Math.max(farthest, planeDistance(leg, px, py, pz))
    const force = stanceForce.si({
      mass: stance.mass,
      legShare: stance.legShare,
      dutyFactor: stance.dutyFactor,
      stancePhase: phase,
      shape: stance.shape,
      thirdHarmonic: 0,
      gravity: stance.gravity,
    })
    if (kernel.jointAnglesInto(angles, 0, px, py, pz, branch) !== REACHED) {
      reached = false
      continue
    }
    const q1 = angles[0]!
    const q2 = angles[1]!
    const q3 = angles[2]!
    kernel.torqueFromFootPushInto(torques, 0, q1, q2, q3, -stance.traction * force, 0, -force)
    const t2 = clean(torques[1]!)
    const t3 = clean(torques[2]!)
    take(hip, t2, q2)
    take(knee, t3, q3)
    heldHip.push(t2)
    heldKnee.push(t3)
    sideways = Math.max(sideways, Math.abs(clean(torques[0]!)))
    vertical = Math.max(vertical, force)
    if (Math.max(Math.abs(t2), Math.abs(t3)) > worst.torque)
      worst = { torque: Math.max(Math.abs(t2), Math.abs(t3)), phase, force, q: [q1, q2, q3], x: px }
    if (moving && singularityOf(kernel, q2, q3) === 0) {
      velocity[0] = state[3]!
      velocity[1] = state[4]!
      velocity[2] = state[5]!
      jointRatesInto(kernel, rates, 0, angles, velocity)
      hip.loadedSpeed = Math.max(hip.loadedSpeed, Math.abs(rates[1]!))
      knee.loadedSpeed = Math.max(knee.loadedSpeed, Math.abs(rates[2]!))
    }
  }
  hip.speed = hip.loadedSpeed
  knee.speed = knee.loadedSpeed
  if (path !== undefined) {
    for (let i = 0; i < SWING_SAMPLES; i++) {
      path.stateInto(state, 0, stanceTime + ((i + 0.5) / SWING_SAMPLES) * (period - stanceTime))
      farthest = Math.max(farthest, planeDistance(leg, state[0]!, state[1]!, state[2]!))
      if (kernel.jointAnglesInto(angles, 0, state[0]!, state[1]!, state[2]!, branch) !== REACHED) {
        reached = false
        continue
      }
      range(hip, angles[1]!)
      range(knee, angles[2]!)
      if (singularityOf(kernel, angles[1]!, angles[2]!) !== 0) continue
      velocity[0] = state[3]!
      velocity[1] = state[4]!
      velocity[2] = state[5]!
      jointRatesInto(kernel, rates, 0, angles, velocity)
      hip.speed = Math.max(hip.speed, Math.abs(rates[1]!))
      knee.speed = Math.max(knee.speed, Math.abs(rates[2]!))
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
  sheet.keep(() => staticsStep(worst.q, worst.force, stance.traction, kernel))
  if (heldHip.length > 0) {
    const durations = heldHip.map(() => stanceTime / samples)
    const rest = moving ? [period - stanceTime] : []
    const zero = moving ? [0] : []
    hip.rms = of(rmsTorque, { torques: [...heldHip, ...zero], durations: [...durations, ...rest], windingTimeConstant: undefined }).torque
    knee.rms = of(rmsTorque, { torques: [...heldKnee, ...zero], durations: [...durations, ...rest], windingTimeConstant: undefined }).torque
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

/** Torque that is only rounding is none. */
const clean = (torque: number) => (Math.abs(torque) < 1e-12 ? 0 : torque)

const blank = (): JointMotion => ({
  torque: 0,
  rms: 0,
  speed: 0,
  loadedSpeed: 0,
  lowest: Number.POSITIVE_INFINITY,
  highest: Number.NEGATIVE_INFINITY,
})

function take(joint: JointMotion, torque: number, angle: number): void {
  if (Math.abs(torque) > Math.abs(joint.torque)) joint.torque = torque
  range(joint, angle)
}

function range(joint: JointMotion, angle: number): void {
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
    path.stateInto(out, 0, time)
    return
  }
  out.fill(0)
  out[1] = x.links.hipOffset
  out[2] = -stance.height
}

function staticsStep(q: readonly number[], force: number, traction: number, kernel: LegKernel): Step {
  const [q1, q2, q3] = q as [number, number, number]
  const out = new Float64Array(3)
  kernel.torqueFromFootPushInto(out, 0, q1, q2, q3, -traction * force, 0, -force)
  const angle = (x: number) => String(new Quantity(x, 'angle'))
  const torque = (x: number) => String(new Quantity(x, 'torque'))
  return {
    formula: 'kinematics.threeJointLeg',
    title: 'joint torque that the foot push asks for',
    inputs: {
      sidewaysHip: angle(q1),
      hip: angle(q2),
      knee: angle(q3),
      footPushDown: String(new Quantity(force, 'force')),
      footPushBackward: String(new Quantity(traction * force, 'force')),
    },
    results: { sidewaysHip: torque(out[0]!), hip: torque(out[1]!), knee: torque(out[2]!) },
    assumes: ['rigid links without mass', 'point foot', 'pose of largest torque among those sampled'],
    notes: [],
    source: [
      {
        level: 'published',
        where: 'virtual work: joint torque is the transposed Jacobian times the force (Craig, Introduction to Robotics, ch. 5)',
      },
    ],
  }
}

/** Joint angles of the standing leg. */
export function poseOf(leg: Prepared): readonly [number, number, number] {
  const out = new Float64Array(3)
  kernelOf(leg).jointAnglesInto(out, 0, 0, leg.x.links.hipOffset, -leg.x.robot.standHeight, branchOf(leg))
  return [out[0]!, out[1]!, out[2]!]
}
