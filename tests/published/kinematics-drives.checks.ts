import type { Source } from '../../src/formula/index.js'
import {
  carriedMotorLoad,
  drumTorques,
  fourBarClearance,
  fourBarDeadPoint,
  fourBarDriveRatio,
  fourBarKneePose,
  kneeDriveAccelerationTorque,
  kneeDriveInertia,
  kneeDrumMotion,
  kneePinForce,
  parallelogramLegInertia,
  rodForce,
  rotorGyroscopicTorque,
  sidewaysHipTorque,
} from '../../src/kinematics/index.js'
import oracle from '../oracles/kinematics-drives.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const computed = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/kinematics-drives.py` })
const closure = computed('closure of the pins by Newton’s method, differentiated to 40 digits with mpmath')
const points = computed('accelerations of point masses, differentiated to 40 digits with mpmath')
const equilibrium = computed('twelve equations of equilibrium of upper link, shank, rod and crank, solved with numpy')
const scan = computed('scan of the knee angle with circles intersected, refined by bisection')

const si = <U extends string>(value: string | number, unit: U) => [Number(value), unit] as const

const linkage = { ground: '150 mm', crank: '30 mm', coupler: '148 mm', rocker: '26 mm' } as const
const { fourBar, deadPoints, clearances, driveInertia, carriedMotor, parallelogram, rod, sideways, stance, gyroscopic } = oracle

const DRIVES = [
  ['thighOpen', 'thigh', 6, 1, '0 kg m^2'],
  ['thighCrossed', 'thigh', -6, 1, '0 kg m^2'],
  ['bodyOpen', 'body', 6, 1, '0 kg m^2'],
  ['thighBelt', 'thigh', -5, 1.25, '3e-4 kg m^2'],
  ['bodyBelt', 'body', -5, 1.25, '3e-4 kg m^2'],
] as const
const drives = DRIVES.map(([name, motorOn, motorRatio, kneeRatio, drumInertia]) => ({
  name,
  expected: driveInertia[name],
  drive: { motorOn, motorRatio, kneeRatio, drumInertia, rotorInertia: '4e-5 kg m^2' } as const,
}))

const RODS = [
  ['fourBar', 'crank of 30 mm and rocker of 26 mm', '26 mm'],
  ['parallelogram', 'parallelogram, rod pulled', '30 mm'],
  ['otherSide', 'parallelogram, rod pushed', '30 mm'],
] as const
const rods = RODS.map(([name, what, rocker]) => {
  const r = rod[name]
  const t40 = name === 'otherSide' ? 1.5 : -1.5
  const place = { crankAngle: si(r.crankAngle, 'rad'), couplerAngle: si(r.couplerAngle, 'rad'), rockerAngle: si(t40 + 0.9, 'rad') }
  return { what, r, rodInputs: { kneeTorque: si(r.jointKnee, 'N m'), crank: '30 mm' as const, rocker, ...place } }
})

const limits = { kneeLowest: '-180 deg', kneeHighest: '180 deg' } as const
const bar = { ...linkage, rockerAngleAtStraightKnee: '1.9 rad' } as const
const dead = (at: { kneeAngle: string; kind: string }) => ({
  kneeAngle: printed(at.kneeAngle, 'rad'),
  state: at.kind as 'rockerDeadPoint',
})

const equal = {
  ground: '165 mm',
  crank: '34 mm',
  coupler: '165.1 mm',
  rocker: '34 mm',
  rockerAngleAtStraightKnee: '-2.9 rad',
  crankSide: 'negative',
  kneeLowest: '1.5 rad',
  kneeHighest: '2.2 rad',
} as const
const clear = ({ clearance, turn, rodAngle, kneeAngle }: (typeof clearances)['unequal']) => ({
  clearance: printed(clearance, 'rad'),
  turn: printed(turn, 'rad'),
  rodAngle: printed(rodAngle, 'rad'),
  kneeAngle: printed(kneeAngle, 'rad'),
})

export const checks: Check[] = [
  ...published(kneeDrumMotion, {
    what: 'four-bar, motor on the body',
    given: {
      motorOn: 'body',
      kneeRatio: Number(fourBar.full.ratio),
      ratioSlope: Number(fourBar.full.ratioSlope),
      hipRate: '2 rad/s',
      kneeRate: '-5 rad/s',
      hipAcceleration: '20 rad/s^2',
      kneeAcceleration: '-50 rad/s^2',
    },
    gives: { rate: printed(fourBar.drumRate, 'rad/s'), acceleration: printed(fourBar.drumAcceleration, 'rad/s^2') },
    source: closure,
  }),
  ...published(
    drumTorques,
    ...rods.map(({ what, r }, i) => ({
      what,
      given: {
        motorOn: 'body' as const,
        kneeRatio: i === 0 ? fourBarRatioOf(r.crankAngle, r.couplerAngle) : 1,
        hipTorque: si(r.jointHip, 'N m'),
        kneeTorque: si(r.jointKnee, 'N m'),
      },
      gives: { hip: printed(r.hipDrum, 'N m'), knee: printed(r.kneeDrum, 'N m') },
      source: equilibrium,
    })),
  ),
  ...published(carriedMotorLoad, {
    given: { mass: '0.4 kg', distance: '40 mm', hipAngle: '0.5 rad' },
    gives: { inertia: printed(carriedMotor.inertia, 'kg m^2'), holdingTorque: printed(carriedMotor.holding, 'N m') },
    source: points,
  }),
  ...published(
    kneeDriveInertia,
    ...drives.map(({ name, drive, expected }) => ({
      what: name,
      given: drive,
      gives: {
        hip: printed(expected.hip, 'kg m^2'),
        coupling: printed(expected.coupling, 'kg m^2'),
        knee: printed(expected.knee, 'kg m^2'),
      },
      source: points,
    })),
  ),
  ...published(
    kneeDriveAccelerationTorque,
    ...drives.map(({ name, drive, expected: { torque } }) => ({
      what: name,
      given: { ...drive, hipAcceleration: '100 rad/s^2' as const, kneeAcceleration: '-200 rad/s^2' as const },
      gives: { hip: printed(torque[0], 'N m'), knee: printed(torque[1], 'N m') },
      source: points,
    })),
    {
      what: 'four-bar, motor on the body',
      given: {
        motorOn: 'body',
        kneeRatio: Number(fourBar.full.ratio),
        ratioSlope: Number(fourBar.full.ratioSlope),
        motorRatio: 6,
        rotorInertia: '4e-5 kg m^2',
        drumInertia: '3e-4 kg m^2',
        kneeRate: '-5 rad/s',
        hipAcceleration: '20 rad/s^2',
        kneeAcceleration: '-50 rad/s^2',
      },
      gives: { hip: printed(driveInertia.fourBar.torque[0], 'N m'), knee: printed(driveInertia.fourBar.torque[1], 'N m') },
      source: points,
    },
  ),
  ...published(parallelogramLegInertia, {
    given: {
      upperLength: '150 mm',
      upperLink: { mass: '0.2 kg', centre: '50 mm', inertia: '5e-4 kg m^2' },
      shank: { mass: '0.12 kg', centre: '70 mm', inertia: '3e-4 kg m^2' },
      rod: { mass: '30 g', centre: '75 mm', inertia: '6e-5 kg m^2' },
      crank: '30 mm',
      crankAngleAtStraightKnee: '1.5 rad',
      kneeAngle: '-1 rad',
      hipDrive: '1.44e-3 kg m^2',
      kneeDrive: '1.48e-3 kg m^2',
    },
    gives: {
      hip: printed(parallelogram.hip, 'kg m^2'),
      coupling: printed(parallelogram.coupling, 'kg m^2'),
      knee: printed(parallelogram.knee, 'kg m^2'),
    },
    source: points,
  }),
  ...published(fourBarDriveRatio, {
    given: {
      crank: '30 mm',
      coupler: '148 mm',
      rocker: '26 mm',
      crankAngle: si(fourBar.full.crankAngle, 'rad'),
      couplerAngle: si(fourBar.full.couplerAngle, 'rad'),
      rockerAngle: '1.1 rad',
    },
    gives: {
      ratio: printed(fourBar.ratio, '1'),
      couplerRatio: printed(fourBar.couplerRatio, '1'),
      ratioSlope: printed(fourBar.ratioSlope, '1'),
      transmissionAngle: printed(fourBar.transmissionAngle, 'rad'),
      state: 'drives',
    },
    source: closure,
  }),
  ...published(fourBarKneePose, {
    given: { ...bar, crankSide: 'positive', kneeAngle: '-0.8 rad' },
    gives: {
      crankAngle: printed(fourBar.crankAngle, 'rad'),
      couplerAngle: printed(fourBar.couplerAngle, 'rad'),
      ratio: printed(fourBar.ratio, '1'),
      ratioSlope: printed(fourBar.ratioSlope, '1'),
      transmissionAngle: printed(fourBar.transmissionAngle, 'rad'),
      state: 'drives',
    },
    source: closure,
  }),
  ...published(
    fourBarDeadPoint,
    {
      what: 'crank on the positive side',
      given: { ...bar, ...limits, crankSide: 'positive' },
      gives: dead(deadPoints.plus[0]!),
      source: scan,
    },
    {
      what: 'crank on the positive side, above the first',
      given: { ...bar, crankSide: 'positive', kneeLowest: '-1.5 rad', kneeHighest: '2 rad' },
      gives: dead(deadPoints.plus[1]!),
      source: scan,
    },
    {
      what: 'crank on the negative side',
      given: { ...bar, ...limits, crankSide: 'negative' },
      gives: dead(deadPoints.minus[0]!),
      source: scan,
    },
    {
      what: 'long rocker, ends of the closure',
      given: {
        ground: '150 mm',
        crank: '30 mm',
        coupler: '120 mm',
        rocker: '50 mm',
        rockerAngleAtStraightKnee: '-1.2 rad',
        crankSide: 'negative',
        kneeLowest: '-1.7 rad',
        kneeHighest: '0 rad',
      },
      gives: dead(deadPoints.longRocker[1]!),
      source: scan,
    },
    {
      what: 'short rod, ends of the closure',
      given: {
        ground: '50 mm',
        crank: '30 mm',
        coupler: '45 mm',
        rocker: '60 mm',
        rockerAngleAtStraightKnee: '-2 rad',
        crankSide: 'positive',
        kneeLowest: '-2 rad',
        kneeHighest: '-1 rad',
      },
      gives: dead(deadPoints.shortRod[1]!),
      source: scan,
    },
  ),
  ...published(
    fourBarClearance,
    {
      what: 'nearly equal pairs that pass the line',
      given: { ...equal, lengthError: '0 mm' },
      gives: clear(clearances.pastTheLine),
      source: scan,
    },
    {
      what: 'the same with errors of the lengths, which bring a dead point',
      given: { ...equal, lengthError: '0.2 mm' },
      gives: clear(clearances.withErrors),
      source: scan,
    },
    {
      what: 'unequal arms with errors of the lengths',
      given: { ...bar, crankSide: 'positive', kneeLowest: '-1.2 rad', kneeHighest: '0.4 rad', lengthError: '0.5 mm' },
      gives: clear(clearances.unequal),
      source: scan,
    },
  ),
  ...published(
    rodForce,
    ...rods.map(({ what, r, rodInputs }) => ({
      what,
      given: rodInputs,
      gives: {
        force: printed(r.rod, 'N'),
        crankTorque: printed(r.kneeDrum, 'N m'),
        crankBearingForce: printed(r.rodOnCrank, 'N'),
        state: Number(r.rod) > 0 ? ('pulled' as const) : ('pushed' as const),
      },
      source: equilibrium,
    })),
  ),
  ...published(
    kneePinForce,
    ...rods.map(({ what, r }) => ({
      what,
      given: {
        groundForward: '-5 N' as const,
        groundUpward: '40 N' as const,
        rodForce: si(r.rodFull, 'N'),
        hipAngle: '-0.5 rad' as const,
        couplerAngle: si(r.couplerAngle, 'rad'),
      },
      gives: {
        force: printed(r.knee, 'N'),
        forward: printed(r.forward, 'N'),
        upward: printed(r.upward, 'N'),
        compression: printed(r.compression, 'N'),
        shear: printed(r.shear, 'N'),
      },
      source: equilibrium,
    })),
  ),
  ...published(
    sidewaysHipTorque,
    {
      what: 'standing on one foot',
      given: {
        angle: '0.2 rad',
        bodies: [
          { mass: '0.6 kg', offset: '15 mm', height: '10 mm' },
          { mass: '0.2 kg', offset: '45 mm', height: '-70 mm' },
          { mass: '0.12 kg', offset: '45 mm', height: '-180 mm' },
        ],
        foot: { offset: '45 mm', height: '-250 mm', groundLeft: '-5 N', groundUpward: '40 N' },
      },
      gives: {
        weight: printed(stance.weight, 'N m'),
        ground: printed(stance.ground, 'N m'),
        torque: printed(stance.torque, 'N m'),
      },
      source: points,
    },
    {
      what: 'swinging leg',
      given: {
        angle: '0.2 rad',
        rate: '2 rad/s',
        acceleration: '20 rad/s^2',
        bodies: [
          { mass: '0.6 kg', offset: '15 mm', height: '10 mm', inertia: '5e-4 kg m^2' },
          swinging(0, '0.2 kg', 0.2 * 0.15 ** 2, 0.5, -4),
          swinging(1, '0.12 kg', 0.12 * 0.16 ** 2, -0.5, 2),
        ],
      },
      gives: {
        inertia: printed(sideways.inertia, 'kg m^2'),
        weight: printed(sideways.weight, 'N m'),
        torque: printed(sideways.torque, 'N m'),
      },
      source: points,
    },
  ),
  ...published(
    rotorGyroscopicTorque,
    {
      what: 'body that pitches and yaws',
      given: { rotorInertia: '4e-5 kg m^2', spin: '48 rad/s', sidewaysAngle: '0.2 rad', pitchRate: '1 rad/s', yawRate: '2 rad/s' },
      gives: { sidewaysDrive: printed(gyroscopic.drive, 'N m') },
      source: points,
    },
    {
      what: 'hip that swings sideways',
      given: { rotorInertia: '4e-5 kg m^2', spin: '48 rad/s', sidewaysAngle: '0.2 rad', sidewaysRate: '3 rad/s' },
      gives: { bearings: printed(gyroscopic.bearings, 'N m') },
      source: points,
    },
  ),
]

function fourBarRatioOf(crankAngle: string, couplerAngle: string): number {
  return (0.026 * Math.sin(-0.6 - Number(couplerAngle))) / (0.03 * Math.sin(Number(crankAngle) - Number(couplerAngle)))
}

/** A rod of the swinging leg, by the motion of its centre from the oracle. */
function swinging(link: 0 | 1, mass: '0.2 kg' | '0.12 kg', massTimesSquare: number, lean: number, leanRate: number) {
  const [height, heightRate, heightAcceleration] = sideways.bodies[link]!
  return {
    mass,
    offset: '45 mm',
    height: si(height!, 'm'),
    heightRate: si(heightRate!, 'm/s'),
    heightAcceleration: si(heightAcceleration!, 'm/s^2'),
    inertia: [massTimesSquare / 12, 'kg m^2'],
    lean: [lean, 'rad'],
    leanRate: [leanRate, 'rad/s'],
  } as const
}
