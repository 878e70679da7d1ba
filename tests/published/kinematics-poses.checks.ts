import type { Source } from '../../src/formula/index.js'
import { chainFromScrews, manipulability, motorTorqueThroughReduction, strideTiming, threeJointLeg } from '../../src/kinematics/index.js'
import oracle from '../oracles/kinematics-poses.json' with { type: 'json' }
import { type Check, printed, published, publishedValue } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/kinematics-poses.py` })
const ledger = by('power and kinetic energy of the rotor in time')

const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
const pose = { sidewaysHip: '12 deg', hip: '-35 deg', knee: '70 deg' } as const
const chain = chainFromScrews({
  screws: [
    { axis: { x: 1, y: 0, z: 0 }, point: { x: '0 mm', y: '0 mm', z: '0 mm' } },
    { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 mm', y: '58 mm', z: '0 mm' } },
    { axis: { x: 0, y: 1, z: 0 }, point: { x: '0 mm', y: '58 mm', z: '-165 mm' } },
  ],
  tool: { position: { x: '0 mm', y: '58 mm', z: '-345 mm' } },
})
const outOfReach = () =>
  chain.inverse({
    position: { x: '261.2 mm', y: '-343 mm', z: '34.5 mm' },
    seed: ['0 deg', '0 deg', '60 deg'],
    limits: [
      { lowest: '-35 deg', highest: '40 deg' },
      { lowest: '-75 deg', highest: '60 deg' },
      { lowest: '12 deg', highest: '140 deg' },
    ],
    restarts: 20,
  })

export const checks: Check[] = [
  ...(['x', 'y', 'z'] as const).map((axis, i) =>
    publishedValue(
      'kinematics.threeJointLeg',
      `foot at 12°, −35°, 70°: ${axis}`,
      () => leg.footPosition(pose)[axis],
      printed(oracle.foot[i], 'mm'),
      by('products of rotations (scipy)'),
    ),
  ),
  publishedValue(
    'kinematics.manipulability',
    'measure at 12°, −35°, 70°',
    () => manipulability(leg, pose).measure,
    printed(oracle.manipulability.measure, 'mm^3'),
    by('root of det(J Jᵀ), Jacobian by differences'),
  ),
  ...[0, 1, 2].map((k) =>
    publishedValue(
      'kinematics.manipulability',
      `half axis ${k + 1} of the velocity ellipsoid at 12°, −35°, 70°`,
      () => manipulability(leg, pose).velocityAxes[k]!.halfLength,
      printed(oracle.manipulability.axes[k], 'mm'),
      by('singular values (numpy), Jacobian by differences'),
    ),
  ),
  publishedValue(
    'kinematics.serialChain.inverse',
    'miss of a target out of reach, between limits',
    () => outOfReach().positionError,
    printed(oracle.inverse.miss, 'mm'),
    by('bounded least squares from 40 starts (scipy)'),
  ),
  ...[0, 1, 2].map((joint) =>
    publishedValue(
      'kinematics.serialChain.inverse',
      `nearest pose between limits, joint ${joint + 1}`,
      () => outOfReach().values[joint]!,
      printed(oracle.inverse.values[joint], 'deg'),
      by('bounded least squares from 40 starts (scipy)'),
    ),
  ),
  ...published(strideTiming, {
    given: { stridePeriod: '0.55 s', dutyFactor: 0.62, bodySpeed: '0.35 m/s' },
    gives: {
      stanceTime: printed(oracle.stride.stance, 's'),
      swingTime: printed(oracle.stride.swing, 's'),
      stanceSweep: printed(oracle.stride.sweep, 'mm'),
      strideLength: printed(oracle.stride.length, 'mm'),
    },
    source: by('a stride by its instants'),
  }),
  ...published(
    motorTorqueThroughReduction,
    {
      what: 'driving',
      given: {
        outputTorque: '5 N m',
        outputSpeed: '3 rad/s',
        outputAcceleration: '40 rad/s^2',
        ratio: 6.2,
        efficiency: 0.92,
        backEfficiency: 0.85,
        rotorInertia: '7e-5 kg m^2',
      },
      gives: printed(oracle.reduction.driving, 'N m'),
      source: ledger,
    },
    {
      what: 'driven',
      given: {
        outputTorque: '-5 N m',
        outputSpeed: '3 rad/s',
        outputAcceleration: '-40 rad/s^2',
        ratio: 6.2,
        efficiency: 0.92,
        backEfficiency: 0.85,
        rotorInertia: '7e-5 kg m^2',
      },
      gives: printed(oracle.reduction.driven, 'N m'),
      source: ledger,
    },
    {
      what: 'on a carrier that turns',
      given: {
        outputTorque: '5 N m',
        outputSpeed: '3 rad/s',
        outputAcceleration: '40 rad/s^2',
        ratio: 6.2,
        rotorInertia: '7e-5 kg m^2',
        carrierAcceleration: '25 rad/s^2',
      },
      gives: printed(oracle.reduction.carried, 'N m'),
      source: ledger,
    },
  ),
]
