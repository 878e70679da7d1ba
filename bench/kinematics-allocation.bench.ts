import {
  chainFromDenavitHartenberg,
  driveCoupling,
  footPath,
  LegDynamicsKernel,
  legDynamics,
  threeJointLeg,
} from '../src/kinematics/index.js'
import type { AllocationRow } from './allocation.js'

const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
const limited = threeJointLeg({
  hipOffset: '58 mm',
  upperLink: '165 mm',
  lowerLink: '180 mm',
  limits: {
    sidewaysHip: { lowest: '-35 deg', highest: '40 deg' },
    hip: { lowest: '-75 deg', highest: '60 deg' },
    knee: { lowest: '12 deg', highest: '140 deg' },
  },
})
const link = { mass: '0.3 kg', centreOfMass: { x: '1 mm', y: '2 mm', z: '-60 mm' } } as const
const dynamics = legDynamics(leg, { hipLink: link, upperLink: link, lowerLink: link })
const rotors = new LegDynamicsKernel(
  0.058,
  0.165,
  0.18,
  [0, 1, 2].map(() => [0.3, 0, 0, -0.06, 1e-3, 1e-3, 1e-4, 0, 0, 0]) as never,
  [0, 0, -9.81],
)
const cord = driveCoupling({ knee: 'cordFromHip', ratio: 0.8 })
const linkage = driveCoupling({
  knee: 'fourBar',
  fourBar: {
    ground: '165 mm',
    crank: '35 mm',
    coupler: '160 mm',
    rocker: '30 mm',
    rockerAngleAtStraightKnee: '-120 deg',
    crankAngleAtStraightKnee: '-110 deg',
  },
})
const arm = chainFromDenavitHartenberg({
  convention: 'standard',
  rows: [{ alpha: '90 deg' }, { a: '165 mm' }, { a: '180 mm' }, { d: '20 mm', alpha: '-90 deg' }],
  links: [link, link, link, link],
}).si
const path = footPath({
  midStance: { x: '0 mm', y: '58 mm', z: '-285 mm' },
  stanceSweep: '110 mm',
  stridePeriod: '0.55 s',
  dutyFactor: 0.5,
  lift: '40 mm',
})
const curve = footPath({
  midStance: { x: '0 mm', y: '58 mm', z: '-285 mm' },
  stanceSweep: '110 mm',
  stridePeriod: '0.55 s',
  dutyFactor: 0.5,
  swingPoints: [
    { forward: '-80 mm', up: '20 mm' },
    { forward: '0 mm', up: '90 mm' },
    { forward: '80 mm', up: '20 mm' },
  ],
})
const out = new Float64Array(64)
const [q, w, a] = [Float64Array.of(0.1, -0.5, 1.1), Float64Array.of(1, 2, -3), Float64Array.of(9, -8, 7)]
const [q4, w4, a4, push] = [
  Float64Array.of(0.1, -0.5, 1.1, 0.3),
  Float64Array.of(1, 2, -3, 1),
  Float64Array.of(9, -8, 7, 1),
  new Float64Array(6),
]

const poses = (name: string, coupling: typeof cord): [string, number, (i: number) => void][] => [
  [`${name}: matrix`, BOXED, () => coupling.si.matrixInto(out, 3, q)],
  [`${name}: actuator angles`, BOXED, () => coupling.si.actuatorAnglesInto(out, 3, q)],
  [`${name}: joint angles`, BOXED, () => coupling.si.jointAnglesInto(out, 3, q)],
  [`${name}: actuator rates`, BOXED, () => coupling.si.actuatorRatesInto(out, 3, q, w)],
  [`${name}: joint rates`, BOXED, () => coupling.si.jointRatesInto(out, 3, q, w)],
  [`${name}: actuator accelerations`, BOXED, () => coupling.si.actuatorAccelerationsInto(out, 3, q, w, a)],
  [`${name}: actuator torques`, BOXED, () => coupling.si.actuatorTorquesInto(out, 3, q, w)],
  [`${name}: joint torques`, BOXED, () => coupling.si.jointTorquesInto(out, 3, q, w)],
  [`${name}: joint matrix`, BOXED, () => coupling.si.jointMatrixInto(out, 3, q, w)],
]
/**
 * Bytes of the numbers that the engine puts on the heap as they pass between functions: 16 each, how many depends on what it happens to inline (up to
 * six were seen). An object with a few fields and an array takes more.
 */
const BOXED = 136
const NOTHING = 1
/** A search through some hundred candidate poses passes numbers between functions that are too large to be inlined; it makes no object. */
const SEARCH = 8192

const calls: [work: string, atMostBytes: number, call: (i: number) => void][] = [
  ['leg: inverse', NOTHING, (i) => leg.si.jointAnglesInto(out, 3, 0.02, 0.06, -0.29, i & 3)],
  ['leg: foot', NOTHING, () => leg.si.footInto(out, 3, 0.1, -0.5, 1.1)],
  ['leg: joints', NOTHING, () => leg.si.jointsInto(out, 3, 0.1, -0.5, 1.1)],
  ['leg: Jacobian', NOTHING, () => leg.si.jacobianInto(out, 3, 0.1, -0.5, 1.1)],
  ['leg: torque', NOTHING, () => leg.si.torqueFromFootPushInto(out, 3, 0.1, -0.5, 1.1, 1, 2, 3)],
  ['leg: state', NOTHING, () => leg.si.stateInto(out, 3, 0.1, -0.5, 1.1, 1, 2, 3)],
  ['leg: foot velocity', NOTHING, () => leg.si.footVelocityInto(out, 3, q, w)],
  ['leg: joint rates', NOTHING, () => leg.si.jointRatesInto(out, 3, q, w)],
  ['leg: rate acceleration', NOTHING, () => leg.si.rateAccelerationInto(out, 3, q, w)],
  ['leg: joint accelerations', NOTHING, () => leg.si.jointAccelerationsInto(out, 3, q, w, a)],
  ['leg: push from torque', NOTHING, () => leg.si.footPushFromTorqueInto(out, 3, q, w)],
  ['leg: singularity', BOXED, () => leg.si.singularityAt(q)],
  ['leg: load stiffness', NOTHING, () => leg.si.loadStiffnessInto(out, 0, q, w)],
  ['leg: inverse dynamics', NOTHING, () => rotors.torqueInto(out, 3, q, w, a, 1, 2, 3)],
  ['leg: gravity', NOTHING, () => dynamics.si.gravityInto(out, 3, q)],
  ['leg: Coriolis', NOTHING, () => dynamics.si.coriolisInto(out, 3, q, w)],
  ['leg: forward dynamics', BOXED, () => dynamics.si.accelerationsInto(out, 3, q, w, a, 1, 2, 3)],
  ['leg: nearest pose', SEARCH, () => leg.si.nearestInto(out, 3, leg.limitsSi, 0.3, 0.1, -0.3)],
  ['leg: nearest pose within limits', SEARCH, () => limited.si.nearestInto(out, 3, limited.limitsSi, 0.3, 0.1, -0.3)],
  ['leg: mass matrix', NOTHING, () => dynamics.si.massMatrixInto(out, 3, q)],
  ['leg: centre of mass', BOXED, () => dynamics.si.centreOfMassInto(out, 3, q)],
  ['leg: potential energy', BOXED, () => dynamics.si.potentialEnergy(q)],
  ...poses('cord', cord),
  ...poses('linkage', linkage),
  ['foot path', BOXED, (i) => path.si.stateInto(out, 3, 1e-6 * i)],
  ['foot path by points', BOXED, (i) => curve.si.stateInto(out, 3, 1e-6 * i)],
  ['chain: pose', NOTHING, () => arm.poseInto(out, 3, q4)],
  ['chain: Jacobian', NOTHING, () => arm.jacobianInto(out, 3, q4)],
  ['chain: space Jacobian', NOTHING, () => arm.spaceJacobianInto(out, 3, q4)],
  ['chain: body Jacobian', NOTHING, () => arm.bodyJacobianInto(out, 3, q4)],
  ['chain: centre of mass', BOXED, () => arm.centreOfMassInto(out, 3, q4)],
  ['chain: inverse dynamics', NOTHING, () => arm.torqueInto(out, 3, q4, w4, a4, push)],
  ['chain: gravity', NOTHING, () => arm.gravityInto(out, 3, q4)],
  ['chain: Coriolis', NOTHING, () => arm.coriolisInto(out, 3, q4, w4)],
  ['chain: mass matrix', NOTHING, () => arm.massMatrixInto(out, 3, q4)],
]

export const rows: AllocationRow[] = calls.map(([work, atMostBytes, call]) => ({ work: `allocation, ${work}`, atMostBytes, call }))
