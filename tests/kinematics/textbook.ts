import { chainFromDenavitHartenberg, chainFromScrews } from '../../src/kinematics/index.js'

/** Chains of published examples, as their sources give them. */

const turn = [
  [0, 0, 1],
  [0, 1, 0],
  [-1, 0, 0],
] as const

/** Inertia of a link whose principal axes stand turned as `turn` at zero: z of the link along x of the base, x of the link along −z. */
const turned = (x: number, y: number, z: number) => ({
  xx: [z, 'kg m^2'] as const,
  yy: [y, 'kg m^2'] as const,
  zz: [x, 'kg m^2'] as const,
})
const at = (x: number, y: number, z: number) => ({ x: [x, 'm'] as const, y: [y, 'm'] as const, z: [z, 'm'] as const })
const at2 = (x: number, y: number, z: number) => ({ x: [x, 'm/s^2'] as const, y: [y, 'm/s^2'] as const, z: [z, 'm/s^2'] as const })
const axis = (x: number, y: number, z: number) => ({ x, y, z })

/**
 * K. M. Lynch, F. C. Park, *Modern Robotics* (2017), code library: three-link dynamics example. Link frames are at the centres of mass.
 * Its first screw axis, (1, 0, 1), is not a unit vector: the example's first joint value is ours over √2, its first torque ours times √2.
 */
export const lynchThreeLink = chainFromScrews({
  screws: [
    { axis: axis(1, 0, 1), point: at(-0.5, 0, 0.5) },
    { axis: axis(0, 1, 0), point: at(0, 0, 0.089) },
    { axis: axis(0, 1, 0), point: at(0.425, 0, 0.089) },
  ],
  tool: { position: at(0.28 + 0.395 + 0.14225, 0.13585 - 0.1197, 0.089159), rotation: turn },
  links: [
    {
      mass: '3.7 kg',
      centreOfMass: at(0, 0, 0.089159),
      inertia: { xx: '0.010267 kg m^2', yy: '0.010267 kg m^2', zz: '0.00666 kg m^2' },
    },
    { mass: '8.393 kg', centreOfMass: at(0.28, 0.13585, 0.089159), inertia: turned(0.22689, 0.22689, 0.0151074) },
    { mass: '2.275 kg', centreOfMass: at(0.675, 0.01615, 0.089159), inertia: turned(0.0494433, 0.0494433, 0.004095) },
  ],
  gravity: { x: '0 m/s^2', y: '0 m/s^2', z: '-9.8 m/s^2' },
})

/** Joint values of the example as ours, and back. */
export const lynchScale = [Math.SQRT2, 1, 1] as const

/** A screw from its unit angular part and its linear part: the point of the axis nearest to the origin, and the pitch. */
const screw = (x: number, y: number, z: number, vx: number, vy: number, vz: number) => ({
  axis: axis(x, y, z),
  point: at(y * vz - z * vy, z * vx - x * vz, x * vy - y * vx),
  pitch: [x * vx + y * vy + z * vz, 'm'] as const,
})

/** The same code library's four-screw example for Jacobians; its screws have pitch. */
export const lynchFourScrews = chainFromScrews({
  screws: [screw(0, 0, 1, 0, 0.2, 0.2), screw(1, 0, 0, 2, 0, 3), screw(0, 1, 0, 0, 2, 1), screw(1, 0, 0, 0.2, 0.3, 0.4)],
  tool: { position: at(0, 0, 0) },
})

/** The same library's forward kinematics example: turning, sliding, turning. */
export const lynchTurnSlideTurn = chainFromScrews({
  screws: [screw(0, 0, 1, 4, 0, 0), { type: 'sliding', axis: axis(0, 1, 0) }, screw(0, 0, -1, -6, 0, -0.1)],
  tool: {
    position: at(0, 6, 2),
    rotation: [
      [-1, 0, 0],
      [0, 1, 0],
      [0, 0, -1],
    ],
  },
})

const kgm2 = (x: number) => [x, 'kg m^2'] as const
const armLink = (mass: number, c: readonly [number, number, number], i: readonly [number, number, number]) => ({
  mass: [mass, 'kg'] as const,
  centreOfMass: at(...c),
  inertia: { xx: kgm2(i[0]), yy: kgm2(i[1]), zz: kgm2(i[2]) },
})

/** Six-axis textbook arm in standard DH: parameters collected by P. I. Corke and B. Armstrong-Hélouvry, ICRA 1994; rotor inertia times ratio squared. */
export const sixAxisArm = (withRotors: boolean) =>
  chainFromDenavitHartenberg({
    convention: 'standard',
    base: { position: at(0, 0, 0.672) },
    rows: [
      { alpha: '90 deg' },
      { a: '0.4318 m' },
      { d: '0.15005 m', a: '0.0203 m', alpha: '-90 deg' },
      { d: '0.4318 m', alpha: '90 deg' },
      { alpha: '-90 deg' },
      {},
    ],
    links: [
      armLink(0, [0, 0, 0], [0, 0.35, 0]),
      armLink(17.4, [-0.3638, 0.006, 0.2275], [0.13, 0.524, 0.539]),
      armLink(4.8, [-0.0203, -0.0141, 0.07], [0.066, 0.086, 0.0125]),
      armLink(0.82, [0, 0.019, 0], [1.8e-3, 1.3e-3, 1.8e-3]),
      armLink(0.34, [0, 0, 0], [0.3e-3, 0.4e-3, 0.3e-3]),
      armLink(0.09, [0, 0, 0.032], [0.15e-3, 0.15e-3, 0.04e-3]),
    ],
    gravity: at2(0, 0, -9.81),
    ...(withRotors
      ? {
          rotorInertia: (
            [
              [200e-6, 62.6111],
              [200e-6, 107.815],
              [200e-6, 53.7063],
              [33e-6, 76.0364],
              [33e-6, 71.923],
              [33e-6, 76.686],
            ] as const
          ).map(([inertia, ratio]) => [inertia * ratio * ratio, 'kg m^2'] as const),
        }
      : {}),
  })
