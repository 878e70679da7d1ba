import { formula } from '../../../formula/index.js'
import { FootPath, KNEE_BACKWARD, LegDynamicsKernel, LegKernel, REACHED, stanceForce } from '../../../kinematics/index.js'
import { rmsTorque } from '../../../thermal/index.js'
import { type Linkage, RodDrive } from './rod-drive.js'

/** Enough for the root mean square over a stance. */
const STANCE_SAMPLES = 8
/** Ends of the stance, where the leg is farthest from upright, and its middle, where half a sine is highest: the largest values are found there. */
const EXTREMES = [0, 0.5, 1]
/** Fine enough for the largest torque of a swing to two per cent. */
const SWING_SAMPLES = 12

/** What a stride is made of, SI. */
export interface StrideInput {
  readonly hipOffset: number
  readonly upperLink: number
  readonly lowerLink: number
  readonly upperMass: number
  readonly lowerMass: number
  /** Distance of the centre of mass of each link from its upper joint, and inertia about it, across the leg. */
  readonly upperCentre: number
  readonly lowerCentre: number
  readonly upperInertia: number
  readonly lowerInertia: number
  readonly hipRotorInertia: number
  readonly kneeRotorInertia: number
  /** Inertia that the knee's rotor adds at the hip, and couples hip and knee with, where it rides on the upper link. */
  readonly kneeRotorAtHip: number
  readonly rotorCoupling: number
  readonly knee: 'forward' | 'backward'
  readonly height: number
  readonly mass: number
  readonly gravity: number
  readonly legShare: number
  readonly dutyFactor: number
  readonly shape: 'rectangular' | 'halfSine'
  readonly tractionLowest: number
  readonly tractionHighest: number
  /** Force across the plane of the leg, along the ground, over force upright; of either sign. */
  readonly lateral: number
  readonly speed: number
  readonly stepLength: number
  readonly clearance: number
  readonly blocked: boolean
  /** The rod that drives the knee from a drum on the hip axis; absent where the knee's motor sits on the upper link. */
  readonly linkage?: Omit<Linkage, 'ground'> | undefined
}

interface JointLoad {
  torque: number
  shaftTorque: number
  speed: number
  loadedSpeed: number
  lowest: number
  highest: number
  /** Motor torques with the lowest and with the highest traction. */
  readonly shaft: readonly [number[], number[]]
}

const blank = (): JointLoad => ({
  torque: 0,
  shaftTorque: 0,
  speed: 0,
  loadedSpeed: 0,
  lowest: Number.POSITIVE_INFINITY,
  highest: Number.NEGATIVE_INFINITY,
  shaft: [[], []],
})

/** Torques below this are rounding errors and count as zero. */
const clean = (torque: number) => (Math.abs(torque) < 1e-12 ? 0 : torque)

function take(joint: JointLoad, end: 0 | 1, torque: number, shaftTorque: number, angle: number, rate: number, loaded: boolean): void {
  const speed = Math.abs(rate)
  if (Math.abs(torque) > Math.abs(joint.torque)) joint.torque = torque
  if (Math.abs(shaftTorque) > Math.abs(joint.shaftTorque)) joint.shaftTorque = shaftTorque
  if (speed > joint.speed) joint.speed = speed
  if (loaded && speed > joint.loadedSpeed) joint.loadedSpeed = speed
  if (angle < joint.lowest) joint.lowest = angle
  if (angle > joint.highest) joint.highest = angle
  joint.shaft[end].push(shaftTorque)
}

/** Lowest and highest traction. */
const ENDS = [0, 1] as const

const NO_LINK = new Float64Array(10)

/** A slender link from its joint down: mass, centre of mass, inertia about it, as inverse dynamics takes them. */
const slender = (mass: number, centre: number, across: number): readonly number[] => [mass, 0, 0, -centre, across, across, 0, 0, 0, 0]

/** Inverse dynamics of the links as slender bodies; the hip link does not move where hip and knee move. */
export function linkDynamics(
  x: Pick<
    StrideInput,
    'hipOffset' | 'upperLink' | 'lowerLink' | 'upperMass' | 'lowerMass' | 'upperCentre' | 'lowerCentre' | 'upperInertia' | 'lowerInertia'
  >,
  gravity: number,
  rotors?: readonly number[],
) {
  const links = [NO_LINK, slender(x.upperMass, x.upperCentre, x.upperInertia), slender(x.lowerMass, x.lowerCentre, x.lowerInertia)] as const
  return new LegDynamicsKernel(x.hipOffset, x.upperLink, x.lowerLink, links, [0, 0, -gravity], rotors)
}

/** The path of the foot over a stride; `heading` is the direction in which the foot steps forward in swing. */
export const footPathOf = (
  x: Pick<StrideInput, 'hipOffset' | 'height' | 'stepLength' | 'dutyFactor' | 'clearance'>,
  stridePeriod: number,
  heading = 0,
) =>
  new FootPath({
    midStance: { x: 0, y: x.hipOffset, z: -x.height },
    stanceSweep: x.stepLength,
    stridePeriod,
    dutyFactor: x.dutyFactor,
    heading,
    lift: x.clearance,
    swing: 'matched',
    liftShape: 'smooth',
    swingPoints: undefined,
  })

/** Moments of a stride: phase within stance or swing, time, and how long each stands for; 0 for moments that only the largest values count. */
function momentsOf({ stepLength, speed, dutyFactor, blocked }: StrideInput) {
  const moving = stepLength > 0
  const stanceTime = moving ? stepLength / speed : 1
  const period = moving ? stanceTime / dutyFactor : 1
  const stanceSamples = moving ? STANCE_SAMPLES : 1
  const turns = moving && !blocked
  const moments: { stands: boolean; phase: number; time: number; lasts: number }[] = []
  for (let i = 0; i < stanceSamples; i++) {
    const phase = moving ? (i + 0.5) / STANCE_SAMPLES : 0.5
    moments.push({ stands: true, phase, time: phase * stanceTime, lasts: stanceTime / stanceSamples })
  }
  for (const phase of moving ? EXTREMES : []) moments.push({ stands: true, phase, time: phase * stanceTime, lasts: 0 })
  for (let i = 0; turns && i < SWING_SAMPLES; i++) {
    const phase = (i + 0.5) / SWING_SAMPLES
    moments.push({ stands: false, phase, time: stanceTime + phase * (period - stanceTime), lasts: (period - stanceTime) / SWING_SAMPLES })
  }
  return { moving, turns, period, moments }
}

const angles = new Float64Array(3)
const rates = new Float64Array(3)
const accelerations = new Float64Array(3)
const torques = new Float64Array(3)
const shaft = new Float64Array(3)
const state = new Float64Array(9)
const velocity = state.subarray(3, 6)
const acceleration = state.subarray(6, 9)

/** Upright force of the ground in a moment. */
const uprightForce = (x: StrideInput, stancePhase: number) =>
  stanceForce.si({
    mass: x.mass,
    legShare: x.legShare,
    dutyFactor: x.dutyFactor,
    stancePhase,
    shape: x.shape,
    thirdHarmonic: 0,
    gravity: x.gravity,
  })

const stride = (x: StrideInput) => {
  const kernel = new LegKernel(x.hipOffset, x.upperLink, x.lowerLink)
  const links = linkDynamics(x, x.gravity)
  const { rotorCoupling: coupling } = x
  const together = linkDynamics(x, x.gravity, [0, 0, 0, 0, x.hipRotorInertia + x.kneeRotorAtHip, coupling, 0, coupling, x.kneeRotorInertia])
  const branch = x.knee === 'backward' ? KNEE_BACKWARD : 0
  const { moving, turns, period, moments } = momentsOf(x)
  const path = moving ? footPathOf(x, period) : undefined
  const [hip, knee, hipDrum, kneeDrum] = [blank(), blank(), blank(), blank()]
  const rod = x.linkage === undefined ? undefined : new RodDrive({ ...x.linkage, ground: x.upperLink }, x)
  const durations: number[] = []
  let [sideways, vertical, farthest, reached] = [0, 0, 0, true]
  let worst = { torque: -1, phase: 0.5, hip: 0, knee: 0 }
  for (const { stands, phase, time, lasts } of moments) {
    if (path !== undefined) path.si.stateInto(state, 0, time)
    else {
      state.fill(0)
      state[1] = x.hipOffset
      state[2] = -x.height
    }
    const [px, py, pz] = [state[0]!, state[1]!, state[2]!]
    farthest = Math.max(farthest, Math.sqrt(Math.max(0, px * px + py * py + pz * pz - x.hipOffset * x.hipOffset)))
    if (kernel.jointAnglesInto(angles, 0, px, py, pz, branch) !== REACHED) {
      reached = false
      continue
    }
    const force = stands ? uprightForce(x, phase) : 0
    // A stretched leg has no definite speeds; its links are then assumed to stand still.
    if (turns && kernel.singularityAt(angles) === 0) {
      kernel.jointRatesInto(rates, 0, angles, velocity)
      kernel.jointAccelerationsInto(accelerations, 0, angles, rates, acceleration)
    } else {
      rates.fill(0)
      accelerations.fill(0)
    }
    // A torque is linear in the force along the ground, so its worst is at one end of the traction.
    for (const end of ENDS) {
      const along = (end === 0 ? x.tractionLowest : x.tractionHighest) * force
      links.torqueInto(torques, 0, angles, rates, accelerations, along, 0, force)
      together.torqueInto(shaft, 0, angles, rates, accelerations, along, 0, force)
      take(hip, end, clean(torques[1]!), clean(shaft[1]!), angles[1]!, rates[1]!, stands)
      take(knee, end, clean(torques[2]!), clean(shaft[2]!), angles[2]!, rates[2]!, stands)
      if (rod !== undefined) {
        rod.load(angles, rates, accelerations, torques, along, force)
        take(hipDrum, end, clean(rod.hip.torque), clean(rod.hip.shaftTorque), angles[1]!, rates[1]!, stands)
        take(kneeDrum, end, clean(rod.knee.torque), clean(rod.knee.shaftTorque), rod.angle, rod.rate, stands)
      }
      sideways = Math.max(sideways, Math.abs(clean(torques[0]!)))
      if (x.lateral > 0)
        for (const sign of [-1, 1]) {
          links.torqueInto(torques, 0, angles, rates, accelerations, along, sign * x.lateral * force, force)
          sideways = Math.max(sideways, Math.abs(clean(torques[0]!)))
        }
      const largest = Math.max(Math.abs(torques[1]!), Math.abs(torques[2]!))
      if (stands && largest > worst.torque) worst = { torque: largest, phase, hip: angles[1]!, knee: angles[2]! }
    }
    durations.push(lasts)
    vertical = Math.max(vertical, force)
  }
  const rmsOf = (made: readonly number[]) =>
    made.length === 0 ? 0 : rmsTorque.si({ torques: made, durations, windingTimeConstant: undefined }).torque
  const rms = ({ shaft: [lowest, highest] }: JointLoad) => Math.max(rmsOf(lowest), rmsOf(highest))
  const [first, second] = rod === undefined ? [hip, knee] : [hipDrum, kneeDrum]
  return {
    vertical,
    forward: Math.hypot(Math.max(Math.abs(x.tractionLowest), Math.abs(x.tractionHighest)), x.lateral) * vertical,
    sidewaysTorque: sideways,
    farthest,
    reached: reached ? ('yes' as const) : ('no' as const),
    hipTorque: hip.torque,
    hipShaftTorque: hip.shaftTorque,
    hipShaftRms: rms(hip),
    hipSpeed: hip.speed,
    hipLoadedSpeed: hip.loadedSpeed,
    hipLowest: hip.lowest,
    hipHighest: hip.highest,
    kneeTorque: knee.torque,
    kneeShaftTorque: knee.shaftTorque,
    kneeShaftRms: rms(knee),
    kneeSpeed: knee.speed,
    kneeLoadedSpeed: knee.loadedSpeed,
    kneeLowest: knee.lowest,
    kneeHighest: knee.highest,
    hipDrumTorque: first.torque,
    hipDrumShaftTorque: first.shaftTorque,
    hipDrumShaftRms: rms(first),
    kneeDrumTorque: second.torque,
    kneeDrumShaftTorque: second.shaftTorque,
    kneeDrumShaftRms: rms(second),
    kneeDrumSpeed: second.speed,
    kneeDrumLoadedSpeed: second.loadedSpeed,
    kneeDrumLowest: second.lowest,
    kneeDrumHighest: second.highest,
    rodPull: rod?.pull ?? 0,
    rodPush: rod?.push ?? 0,
    kneePin: rod?.pin ?? 0,
    rodDrives: rod === undefined || rod.drives ? ('yes' as const) : ('no' as const),
    hardestPhase: worst.phase,
    hardestHip: worst.hip,
    hardestKnee: worst.knee,
  }
}

/** Forces and joint torques of a leg over a stride, or in a pose that is held: the largest of moments sampled in stance and swing. */
export const strideLoads = /* @__PURE__ */ formula('leg.strideLoads', {
  inputs: {
    /** Sideways distance from the sideways-hip axis to the plane of the leg. */
    hipOffset: { kind: 'length', min: 0 },
    /** Length of the upper link. */
    upperLink: { kind: 'length', above: 0 },
    /** Length of the lower link, to the foot point. */
    lowerLink: { kind: 'length', above: 0 },
    /** Mass of the upper link. */
    upperMass: { kind: 'mass', min: 0 },
    /** Mass of the lower link. */
    lowerMass: { kind: 'mass', min: 0 },
    /** Distance of the centre of mass of the upper link from the hip. */
    upperCentre: 'length',
    /** Distance of the centre of mass of the lower link from the knee. */
    lowerCentre: 'length',
    /** Inertia of the upper link about its centre of mass, across the leg. */
    upperInertia: { kind: 'momentOfInertia', min: 0 },
    /** Inertia of the lower link about its centre of mass, across the leg. */
    lowerInertia: { kind: 'momentOfInertia', min: 0 },
    /** Inertia of the hip's rotor, felt at the joint. */
    hipRotorInertia: { kind: 'momentOfInertia', min: 0 },
    /** Inertia of the knee's rotor, felt at the joint. */
    kneeRotorInertia: { kind: 'momentOfInertia', min: 0 },
    /** Inertia that the knee's rotor adds at the hip, where it rides on the upper link. */
    kneeRotorAtHip: { kind: 'momentOfInertia', min: 0 },
    /** Inertia by which that rotor couples hip and knee, negative where it turns against the knee. */
    rotorCoupling: 'inertiaCoupling',
    /** Side to which the knee bends. */
    knee: { oneOf: ['forward', 'backward'] },
    /** Height of the hip axis above the ground in mid stance. */
    height: { kind: 'length', above: 0 },
    /** Mass that the legs carry. */
    mass: { kind: 'mass', above: 0 },
    /** Acceleration of free fall across the ground. */
    gravity: { kind: 'acceleration', min: 0 },
    /** Share of the weight this leg carries, averaged over the stride. */
    legShare: { kind: 'ratio', min: 0 },
    /** Share of the stride that the foot is on the ground. */
    dutyFactor: { kind: 'ratio', above: 0, max: 1 },
    /** Course of the force over the stance. */
    shape: { oneOf: ['rectangular', 'halfSine'] },
    /** Force along the ground over force across it: the most braking (negative) and the most pushing. */
    tractionLowest: 'ratio',
    tractionHighest: 'ratio',
    /** Force along the ground across the walk, over force across the ground: of either sign, as on a slope that is walked across. */
    lateral: { kind: 'ratio', min: 0 },
    /** Speed of the body. */
    speed: { kind: 'velocity', min: 0 },
    /** Way of the body over one foot on the ground; 0 for a pose that is held. */
    stepLength: { kind: 'length', min: 0 },
    /** Height the foot is lifted. */
    clearance: { kind: 'length', min: 0 },
    /** Whether the leg is blocked in its stance: the poses of a step, but nothing moves. */
    blocked: { flag: true },
    /** The rod that drives the knee from a drum on the hip axis. Left out where the knee's motor sits on the upper link. */
    linkage: {
      fields: {
        /** Length of the crank on the hip axis. */
        crank: { kind: 'length', above: 0 },
        /** Distance of the pins of the rod. */
        coupler: { kind: 'length', above: 0 },
        /** Length of the rocker on the lower link. */
        rocker: { kind: 'length', above: 0 },
        /** Direction of the rocker from the direction hip to knee, with the knee straight. */
        rockerAngleAtStraightKnee: 'angle',
        /** Side of the line from hip axis to rocker pin on which the crank lies. */
        crankSide: { oneOf: ['positive', 'negative'] },
      },
      optional: true,
    },
  },
  output: {
    /** Largest force of the ground on the foot, across the ground. */
    vertical: 'force',
    /** The largest force along the ground with it. */
    forward: 'force',
    /** Largest torque about the sideways-hip axis. */
    sidewaysTorque: 'torque',
    /** Farthest distance of the foot from the hip axis, in the plane of the leg. */
    farthest: 'length',
    /** Whether the leg reaches every point of the path. */
    reached: { oneOf: ['yes', 'no'] },
    /** Hip torque of largest magnitude, with its sign: ground, weight and inertia of the links. */
    hipTorque: 'torque',
    /** The same with the inertia of the rotor: motor torque as the joint feels it. */
    hipShaftTorque: 'torque',
    /** Root mean square of it over the stride. */
    hipShaftRms: 'torque',
    /** Highest speed of the hip. */
    hipSpeed: 'angularVelocity',
    /** Highest speed while the foot bears load. */
    hipLoadedSpeed: 'angularVelocity',
    /** Lowest angle of the hip; infinite where the leg reaches no point. */
    hipLowest: { kind: 'angle', infinite: true },
    /** Highest angle of the hip. */
    hipHighest: { kind: 'angle', infinite: true },
    /** Knee torque of largest magnitude. */
    kneeTorque: 'torque',
    /** The same with the inertia of the rotor. */
    kneeShaftTorque: 'torque',
    /** Root mean square of it over the stride. */
    kneeShaftRms: 'torque',
    /** Highest speed of the knee. */
    kneeSpeed: 'angularVelocity',
    /** Highest speed while the foot bears load. */
    kneeLoadedSpeed: 'angularVelocity',
    /** Lowest angle of the knee; infinite where the leg reaches no point. */
    kneeLowest: { kind: 'angle', infinite: true },
    /** Highest angle of the knee. */
    kneeHighest: { kind: 'angle', infinite: true },
    /** Torque that the hip's drive holds at its drum: that of the joint, and of a knee that is driven through the hip its part. */
    hipDrumTorque: 'torque',
    /** The same with the inertia of the rotor. */
    hipDrumShaftTorque: 'torque',
    /** Root mean square of it over the stride. */
    hipDrumShaftRms: 'torque',
    /** Torque that the knee's drive holds at its drum. */
    kneeDrumTorque: 'torque',
    /** The same with the inertia of the rotor. */
    kneeDrumShaftTorque: 'torque',
    /** Root mean square of it over the stride. */
    kneeDrumShaftRms: 'torque',
    /** Highest speed of the knee's drum. */
    kneeDrumSpeed: 'angularVelocity',
    /** Highest speed while the foot bears load. */
    kneeDrumLoadedSpeed: 'angularVelocity',
    /** Lowest angle of the knee's drum; infinite where the leg reaches no point. */
    kneeDrumLowest: { kind: 'angle', infinite: true },
    /** Highest angle of the knee's drum. */
    kneeDrumHighest: { kind: 'angle', infinite: true },
    /** Largest pull in the rod; 0 without a rod. */
    rodPull: 'force',
    /** Largest push in the rod, without its sign. */
    rodPush: 'force',
    /** Largest force of the upper link on the lower link at the knee pin, from ground and rod; 0 without a rod. */
    kneePin: 'force',
    /** Whether the crank moves the knee at every point, away from dead points. */
    rodDrives: { oneOf: ['yes', 'no'] },
    /** Phase of the stance with the largest joint torque. */
    hardestPhase: 'ratio',
    /** Hip angle in that phase. */
    hardestHip: 'angle',
    /** Knee angle in that phase. */
    hardestKnee: 'angle',
  },
  assumes: [
    'links are rigid and slender, motors and plates on them points; point foot',
    'the body moves at constant speed',
    'force along the ground in proportion to the force across it, at its worst end in every moment',
    'eight moments of stance, its ends and its middle, and twelve of swing: the largest torque of a swing to two per cent',
  ],
  source: [
    {
      level: 'published',
      where: 'outward velocities and accelerations, inward forces and moments (Newton-Euler; Craig, Introduction to Robotics, ch. 6)',
    },
  ],
  si: stride,
})
