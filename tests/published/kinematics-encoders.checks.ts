import type { Source } from '../../src/formula/index.js'
import {
  commutationError,
  dipoleMagnetField,
  dipoleOffsetError,
  driveCoupling,
  encoderSpeedRipple,
  footError,
  kneeEncoderError,
  shaftMagnetError,
  shaftMagnetErrorBound,
  shaftMagnetField,
  strayFieldError,
  threeJointLeg,
} from '../../src/kinematics/index.js'
import oracle from '../oracles/kinematics-magnet.json' with { type: 'json' }
import { type Check, printed, published, publishedValue } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/kinematics-magnet.py` })
const charges = by('magnetic charges on the curved face of the magnet, by quadrature')
const reading = by('reading over a turn from the charges of the leaned magnet, Fourier transform')
const vectors = by('angle of the sum of turning and fixed vectors, Fourier transform')
const brute = by('differences, and every corner of the errors')

/** Radius 3 mm, length 2.5 mm, gap 1.5 mm, by the charges. */
const magnet = { curvature: '21558.93 1/m^2', slope: '-235.9982 1/m' } as const
const PLACES = [
  ['offsets', { sensorX: '0.1 mm', magnetX: '0.1 mm' }],
  ['cancelling', { sensorX: '0.1 mm', sensorLeanX: '30 mrad', magnetX: '0.1 mm', magnetLeanY: '20 mrad' }],
  ['adding', { sensorX: '0.1 mm', sensorLeanX: '-30 mrad', magnetX: '0.1 mm', magnetLeanY: '-20 mrad' }],
  [
    'askew',
    {
      sensorX: '0.06 mm',
      sensorY: '-0.08 mm',
      sensorLeanX: '10 mrad',
      sensorLeanY: '20 mrad',
      magnetX: '-0.05 mm',
      magnetY: '0.07 mm',
      magnetLeanX: '15 mrad',
      magnetLeanY: '-10 mrad',
    },
  ],
] as const

const leg = threeJointLeg({ hipOffset: '0 mm', upperLink: '150 mm', lowerLink: '160 mm' })
/** Largest movement of the foot along an axis by errors of 10 mrad at the motors of hip and knee, reduction 6. */
const footBy = (motorOn: 'body' | 'thigh', axis: 'x' | 'z') => () =>
  footError(leg, {
    angles: { sidewaysHip: '0 rad', hip: '-0.4 rad', knee: '0.8 rad' },
    coupling: driveCoupling(motorOn === 'body' ? { knee: 'parallelogram' } : { knee: 'motorAtKnee' }),
    sources: [{ name: 'encoders', at: 'actuator', sidewaysHip: '0 rad', hip: [0.01 / 6, 'rad'], knee: [0.01 / 6, 'rad'] }],
  }).together.worstPerAxis[axis]

export const checks: Check[] = [
  ...published(
    shaftMagnetField,
    {
      what: 'disc of 6 by 2.5 mm at 1.5 mm',
      given: { remanence: '1.2 T', radius: '3 mm', length: '2.5 mm', gap: '1.5 mm' },
      gives: {
        field: printed(oracle.axis.field, 'mT'),
        curvature: printed(oracle.axis.curvature, '1/m^2'),
        slope: printed(oracle.axis.slope, '1/m'),
      },
      source: charges,
    },
    {
      what: 'rod of 4 by 4 mm at 1 mm',
      given: { remanence: '0.8 T', radius: '2 mm', length: '4 mm', gap: '1 mm' },
      gives: {
        field: printed(oracle.axisLong.field, 'mT'),
        curvature: printed(oracle.axisLong.curvature, '1/m^2'),
        slope: printed(oracle.axisLong.slope, '1/m'),
      },
      source: charges,
    },
  ),
  ...published(dipoleMagnetField, {
    given: { distance: '12 mm', radius: '3 mm', length: '2.5 mm' },
    gives: { curvature: printed(oracle.far.curvature, '1/m^2'), slope: printed(oracle.far.slope, '1/m') },
    source: by('cubic fall of the field, by differences'),
  }),
  ...published(dipoleOffsetError, {
    given: { offset: '0.2 mm', distance: '3 mm' },
    gives: {
      secondHarmonic: printed(oracle.dipole.second, 'rad'),
      fourthHarmonic: printed(oracle.dipole.fourth, 'rad'),
      worstError: printed(oracle.dipole.worst, 'rad'),
    },
    source: by('reading over a turn of a dipole, Fourier transform'),
  }),
  ...published(
    shaftMagnetError,
    ...PLACES.map(([name, place]) => ({
      what: name,
      given: { ...magnet, ...place },
      gives: { firstHarmonic: printed(oracle[name].limit[0], 'mrad'), secondHarmonic: printed(oracle[name].limit[1], 'mrad') },
      source: reading,
    })),
    {
      what: 'sensor that leans alone',
      given: { curvature: '166667 1/m^2', slope: '-500 1/m', sensorLeanX: '10 mrad' },
      gives: { secondHarmonic: printed(oracle.leaned.second, 'rad') },
      source: by('reading over a turn of a dipole, Fourier transform'),
    },
  ),
  ...published(shaftMagnetErrorBound, {
    what: 'offsets and leans that add',
    given: { ...magnet, sensorOffset: '0.1 mm', sensorLean: '30 mrad', magnetOffset: '0.1 mm', magnetLean: '20 mrad' },
    gives: { secondHarmonic: printed(oracle.adding.limit[1], 'mrad') },
    source: reading,
  }),
  ...published(strayFieldError, {
    what: '1 mT beside 50 mT',
    given: { strayField: '1 mT', field: '50 mT' },
    gives: { firstHarmonic: printed(oracle.stray.first, 'rad'), worstError: printed(oracle.stray.worst, 'rad') },
    source: vectors,
  }),
  ...published(commutationError, {
    what: 'fourteen pole pairs',
    given: { angleError: [Math.asin(0.02), 'rad'], polePairs: 14 },
    gives: {
      electricalError: printed(oracle.commutation.electrical, 'rad'),
      torqueLeft: printed(oracle.commutation.left, '1'),
      state: 'pulls',
    },
    source: by('mean power of three phases'),
  }),
  ...published(encoderSpeedRipple, {
    given: { speed: '5 rad/s', firstHarmonic: '10 mrad', secondHarmonic: '4 mrad' },
    gives: printed(oracle.ripple, 'rad/s'),
    source: brute,
  }),
  ...published(
    kneeEncoderError,
    ...(['body', 'thigh'] as const).map((motorOn) => ({
      what: `motor on the ${motorOn}`,
      given: { motorOn, hipError: '10 mrad' as const, kneeError: '10 mrad' as const, hipMotorRatio: 6, kneeMotorRatio: -6 },
      gives: printed(oracle.knee[motorOn], 'rad'),
      source: brute,
    })),
  ),
  publishedValue(
    'kinematics.footError',
    'encoders, motor on the body: forward',
    footBy('body', 'x'),
    printed(oracle.foot.body[0], 'mm'),
    brute,
  ),
  publishedValue(
    'kinematics.footError',
    'encoders, motor on the body: height',
    footBy('body', 'z'),
    printed(oracle.foot.body[1], 'mm'),
    brute,
  ),
  publishedValue(
    'kinematics.footError',
    'encoders, motor on the thigh: forward',
    footBy('thigh', 'x'),
    printed(oracle.foot.thigh[0], 'mm'),
    brute,
  ),
  publishedValue(
    'kinematics.footError',
    'encoders, motor on the thigh: height',
    footBy('thigh', 'z'),
    printed(oracle.foot.thigh[1], 'mm'),
    brute,
  ),
]
