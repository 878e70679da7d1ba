import type { Source } from '../../src/formula/index.js'
import {
  cantileverToe,
  dropOnSpring,
  eccentricityError,
  encoderStep,
  fourBar,
  fourBarSpeedRatio,
  frictionConeUse,
  jumpPush,
  matchedSwingPeaks,
  notchHinge,
  restToRestPeaks,
  rotorBlow,
  sagittalArea,
  stanceForce,
  tipOverPush,
  tipOverSlope,
  touchDownImpact,
  transmissionAngleExtremes,
  twoLinkArmTorque,
  workspaceVolume,
} from '../../src/kinematics/index.js'
import blow from '../oracles/kinematics-blow.json' with { type: 'json' }
import oracle from '../oracles/motion-and-heat-independent.json' with { type: 'json' }
import { type Check, printed, published, publishedValue } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/motion-and-heat-independent.py` })
const integrated = by('equations of motion integrated (scipy)')
const sampled = by('samples of the course, differenced')
const pins = by('intersection of the circles of both pins, differenced')
const vectors = by('forces as vectors, angle by root finding')

const linkage = { ground: '100 mm', crank: '40 mm', coupler: '120 mm', rocker: '80 mm' } as const

const linkages: Check[] = [
  ...(['open', 'crossed'] as const).flatMap((assembly) => {
    const at = () => {
      const pose = fourBar(linkage).at({ crankAngle: '40 deg', assembly })
      if (!pose.assembles) throw new Error('does not assemble')
      return pose
    }
    const [coupler, rocker, speed, couplerSpeed] = oracle.fourBar[assembly]
    return [
      publishedValue('kinematics.fourBar', `coupler, ${assembly}`, () => at().couplerAngle, printed(coupler, 'deg'), pins),
      publishedValue('kinematics.fourBar', `rocker, ${assembly}`, () => at().rockerAngle, printed(rocker, 'deg'), pins),
      publishedValue('kinematics.fourBar', `speed of the rocker, ${assembly}`, () => at().rockerSpeedRatio!, printed(speed, '1'), pins),
      publishedValue(
        'kinematics.fourBar',
        `speed of the coupler, ${assembly}`,
        () => at().couplerSpeedRatio!,
        printed(couplerSpeed, '1'),
        pins,
      ),
    ]
  }),
  ...published(fourBarSpeedRatio, {
    given: { crank: '40 mm', rocker: '80 mm', crankAngle: '40 deg', couplerAngle: '20.297882788 deg', rockerAngle: '57.324880070 deg' },
    gives: printed(oracle.fourBar.open[2], '1'),
    source: pins,
  }),
  ...published(transmissionAngleExtremes, {
    given: linkage,
    gives: { crankInward: printed(oracle.transmission[0], 'deg'), crankOutward: printed(oracle.transmission[1], 'deg') },
    source: by('angle of coupler and rocker over a full turn'),
  }),
  ...published(twoLinkArmTorque, {
    given: {
      first: { length: '0.3 m', centreOfMass: '0.14 m', mass: '1.2 kg', inertia: '0.01 kg m^2' },
      second: { centreOfMass: '0.11 m', mass: '0.8 kg', inertia: '0.006 kg m^2' },
      angle1: '0.4 rad',
      angle2: '-0.9 rad',
      rate1: '1.5 rad/s',
      rate2: '-2 rad/s',
      acceleration1: '3 rad/s^2',
      acceleration2: '-4 rad/s^2',
      gravity: '9.81 m/s^2',
    },
    gives: { torque1: printed(oracle.arm[0], 'N m'), torque2: printed(oracle.arm[1], 'N m') },
    source: by('accelerations of point masses, moments about each joint'),
  }),
  ...published(workspaceVolume, {
    given: { upperLink: '1 m', lowerLink: '0.5 m' },
    gives: printed(oracle.reach[0], 'm^3'),
    source: by('spheres of the foot over the knee, by quadrature'),
  }),
  ...published(sagittalArea, {
    given: { upperLink: '1 m', lowerLink: '0.5 m', hipRange: '1 turn', kneeFrom: '0 deg', kneeTo: '180 deg' },
    gives: printed(oracle.reach[1], 'm^2'),
    source: by('Jacobian over hip and knee, by quadrature'),
  }),
]

const motion: Check[] = [
  ...published(
    dropOnSpring,
    ...(['0 m', '0.4 m'] as const).map((dropHeight, i) => ({
      what: `fall of ${dropHeight}`,
      given: { mass: '10 kg' as const, dropHeight, stiffness: '1 N/mm' as const, gravity: '10 m/s^2' as const },
      gives: { peakForce: printed(oracle.drop[2 * i], 'N'), compression: printed(oracle.drop[2 * i + 1], 'm') },
      source: integrated,
    })),
  ),
  ...published(touchDownImpact, {
    given: { speed: '2 m/s', effectiveMass: '0.25 kg', contactStiffness: '40000 N/m' },
    gives: { peakForce: printed(oracle.blow[0], 'N'), timeToPeak: printed(oracle.blow[1], 'ms') },
    source: integrated,
  }),
  ...published(jumpPush, {
    given: { mass: '10 kg', jumpHeight: '0.2 m', pushTravel: '0.1 m', gravity: '10 m/s^2' },
    gives: {
      totalForce: printed(oracle.jump[0], 'N'),
      takeOffSpeed: printed(oracle.jump[1], 'm/s'),
      pushTime: printed(oracle.jump[2], 's'),
      flightTime: printed(oracle.jump[3], 's'),
    },
    source: integrated,
  }),
  ...published(
    stanceForce,
    {
      what: 'half sine',
      given: { mass: '1 kg', legShare: 1, dutyFactor: 0.4, stancePhase: 0.5, gravity: '1 m/s^2' },
      gives: printed(oracle.stance[0], 'N'),
      source: by('impulse by quadrature'),
    },
    {
      what: 'two-peaked',
      given: {
        mass: '10 kg',
        legShare: 0.25,
        dutyFactor: 0.7,
        stancePhase: 0.25,
        shape: 'twoPeaked',
        thirdHarmonic: 1,
        gravity: '10 m/s^2',
      },
      gives: printed(oracle.stance[1], 'N'),
      source: by('impulse by quadrature'),
    },
  ),
  ...published(
    restToRestPeaks,
    ...(['cycloid', 'cubic', 'quintic'] as const).map((shape) => ({
      what: shape,
      given: { distance: '1 m' as const, time: '1 s' as const, shape },
      gives: { peakSpeed: printed(oracle.rest[shape][0], 'm/s'), peakAcceleration: printed(oracle.rest[shape][1], 'm/s^2') },
      source: sampled,
    })),
  ),
  ...published(matchedSwingPeaks, {
    given: { stride: '80 mm', swingTime: '0.2 s', bodySpeed: '0.4 m/s' },
    gives: { peakSpeed: printed(oracle.swing[0], 'm/s'), peakAcceleration: printed(oracle.swing[1], 'm/s^2') },
    source: sampled,
  }),
  ...published(tipOverSlope, {
    given: { marginToEdge: '100 mm', height: '200 mm' },
    gives: printed(oracle.tip[0], 'deg'),
    source: vectors,
  }),
  ...published(tipOverPush, {
    given: { mass: '10 kg', marginToEdge: '0.1 m', pushHeight: '0.25 m', gravity: '10 m/s^2' },
    gives: printed(oracle.tip[1], 'N'),
    source: by('moments about the edge, by root finding'),
  }),
  ...published(frictionConeUse, {
    given: { normal: '100 N', tangential: '30 N', friction: 0.6 },
    gives: { coneAngle: printed(oracle.cone[0], 'deg'), forceAngle: printed(oracle.cone[1], 'deg') },
    source: vectors,
  }),
]

const parts: Check[] = [
  ...published(encoderStep, {
    given: { countsPerTurn: 16384, turnsPerJointTurn: 6 },
    gives: { worstError: printed(oracle.encoder[0], 'deg'), rmsError: printed(oracle.encoder[1], 'deg') },
    source: by('a ramp rounded to counts'),
  }),
  ...published(eccentricityError, {
    given: { eccentricity: '50 um', trackRadius: '10 mm' },
    gives: {
      worstError: printed(oracle.eccentric[0], 'arcmin'),
      firstHarmonic: printed(oracle.eccentric[1], 'arcmin'),
      secondHarmonic: printed(oracle.eccentric[2], 'arcsec'),
    },
    source: by('readings over a turn, Fourier transform'),
  }),
  ...published(cantileverToe, {
    given: { modulus: '2000 MPa', length: '40 mm', width: '10 mm', thickness: '2 mm', tipForce: '1 N', allowableStrain: '1 %' },
    gives: { deflection: printed(oracle.toe[0], 'mm'), tipAngle: printed(oracle.toe[1], 'rad'), rootStrain: printed(oracle.toe[2], '%') },
    source: by('beam as a boundary-value problem (scipy)'),
  }),
  ...published(notchHinge, {
    given: { modulus: '2000 MPa', width: '10 mm', thickness: '0.5 mm', notchRadius: '5 mm', angle: '5 deg', allowableStrain: '2 %' },
    gives: { stiffness: printed(oracle.notch, 'N m/rad') },
    source: by('compliance of a very thin notch by quadrature, scaled by its powers'),
  }),
]

const rotor = { drumSpeed: '21.05952 rad/s', driveStiffness: '1000 N m/rad', inertia: '1.44e-3 kg m^2', footSpeed: '1.4 m/s' } as const
const spring: Source = {
  level: 'computed',
  where: 'equations of motion of rotor, drive and foot in time (scipy): tests/oracles/kinematics-blow.py',
}
const blows: Check[] = published(
  rotorBlow,
  { given: rotor, gives: { torque: printed(blow.stiff, 'N m'), state: 'stiff' }, source: spring },
  { given: { ...rotor, footStiffness: '6 N/mm' }, gives: { torque: printed(blow.soft, 'N m'), state: 'gives' }, source: spring },
  {
    given: {
      drumSpeed: '28.5 rad/s',
      driveStiffness: '1210 N m/rad',
      inertia: '3.87e-3 kg m^2',
      footSpeed: '1.085 m/s',
      footStiffness: '7694 N/m',
      footTravel: '14.4 mm',
    },
    gives: { torque: printed(blow.flat, 'N m'), state: 'flat' },
    source: spring,
  },
)

export const checks: Check[] = [...linkages, ...motion, ...parts, ...blows]
