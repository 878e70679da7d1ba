import type { Source } from '../../src/formula/index.js'
import { fourFeetForces, threeFeetShares, twoFeetTipping } from '../../src/kinematics/index.js'
import oracle from '../oracles/kinematics-feet.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/kinematics-feet.py` })
const springs = by('a plate on four springs that only push, by Newton’s method on its energy')
const moments = by('linear system of force and moments, distances by projection')
const fall = by('fall over the two feet, integrated with scipy')

const rectangle = { weight: [6 * 9.80665, 'N'], length: '360 mm', width: '240 mm', legStiffness: '4000 N/m' } as const
const FOUR = [
  ['level', '10 mm', '6 mm', '0 mm', 'fourStand'],
  ['short', '10 mm', '6 mm', '2 mm', 'fourStand'],
  ['hollow', '-20 mm', '6 mm', '30 mm', 'threeStand'],
  ['bump', '30 mm', '10 mm', '-30 mm', 'threeStand'],
] as const
const triangle = [
  { x: '180 mm', y: '120 mm' },
  { x: '180 mm', y: '-120 mm' },
  { x: '-180 mm', y: '120 mm' },
] as const
const body = { centreX: '10 mm', centreY: '-6 mm', height: '250 mm', mass: '6 kg', inertia: '0.08 kg m^2', time: '160 ms' } as const

export const checks: Check[] = [
  ...published(
    fourFeetForces,
    ...FOUR.map(([name, centreForward, centreLeft, shortBy, state]) => {
      const [leftFront, rightFront, leftHind, rightHind] = oracle[name].map((force) => printed(force, 'N'))
      return {
        what: name,
        given: { ...rectangle, centreForward, centreLeft, shortBy },
        gives: { leftFront: leftFront!, rightFront: rightFront!, leftHind: leftHind!, rightHind: rightHind!, state },
        source: springs,
      }
    }),
  ),
  ...published(
    threeFeetShares,
    ...(
      [
        ['inside', '30 mm', '20 mm', 'stands'],
        ['outside', '-30 mm', '-20 mm', 'tips'],
      ] as const
    ).map(([name, centreX, centreY, state]) => ({
      what: `centre of mass ${name}`,
      given: { feet: triangle, centreX, centreY },
      gives: { shares: oracle[name].shares.map((share) => printed(share, '1')), margin: printed(oracle[name].margin, 'm'), state },
      source: moments,
    })),
  ),
  ...published(
    twoFeetTipping,
    {
      what: 'left front and right hind foot',
      given: { rearX: '-180 mm', rearY: '-120 mm', frontX: '180 mm', frontY: '120 mm', ...body },
      gives: {
        offset: printed(oracle.leftFrontRightHind.offset, 'm'),
        acceleration: printed(oracle.leftFrontRightHind.acceleration, 'rad/s^2'),
        state: 'tipsRight',
      },
      source: fall,
    },
    {
      what: 'right front and left hind foot',
      given: { rearX: '-180 mm', rearY: '120 mm', frontX: '180 mm', frontY: '-120 mm', ...body },
      gives: {
        offset: printed(oracle.rightFrontLeftHind.offset, 'm'),
        acceleration: printed(oracle.rightFrontLeftHind.acceleration, 'rad/s^2'),
        state: 'tipsLeft',
      },
      source: fall,
    },
  ),
]
