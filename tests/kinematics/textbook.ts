import { chainFromDenavitHartenberg, chainFromScrews } from '../../src/kinematics/index.js'

/** Chains of published examples, as their sources give them, and one of our own. */

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

const sixAxisLink = (mass: number, c: readonly [number, number, number], i: readonly number[]) => ({
  mass: [mass, 'kg'] as const,
  centreOfMass: { x: [c[0], 'mm'] as const, y: [c[1], 'mm'] as const, z: [c[2], 'mm'] as const },
  inertia: Object.fromEntries(['xx', 'yy', 'zz', 'xy', 'xz', 'yz'].map((name, k) => [name, [i[k]!, 'kg mm^2'] as const])),
})

/** An invented six-axis arm, as tests/oracles/kinematics-six-axis.py has it. */
export const sixAxisArm = chainFromDenavitHartenberg({
  convention: 'standard',
  rows: [
    { d: '95 mm', a: '12 mm', alpha: '90 deg' },
    { d: '18 mm', a: '210 mm' },
    { d: '-14 mm', a: '9 mm', alpha: '90 deg' },
    { d: '190 mm', alpha: '-90 deg' },
    { d: '6 mm', alpha: '90 deg' },
    { d: '70 mm' },
  ],
  links: [
    sixAxisLink(0.9, [-4, -30, 6], [1400, 900, 1350, 40, -25, 60]),
    sixAxisLink(1.3, [-95, 8, 22], [1100, 6900, 6600, -130, 70, 35]),
    sixAxisLink(0.7, [-5, 12, 31], [820, 760, 410, 15, 22, -18]),
    sixAxisLink(0.45, [2, -48, 5], [520, 130, 540, -9, 4, 16]),
    sixAxisLink(0.28, [1, 7, 14], [110, 100, 62, 3, -2, 5]),
    sixAxisLink(0.15, [4, -3, -21], [48, 51, 20, 1, 2, -1]),
  ],
  rotorInertia: (
    [
      [60, 50],
      [60, 60],
      [42, 50],
      [18, 40],
      [18, 40],
      [9, 30],
    ] as const
  ).map(([inertia, ratio]) => [inertia * ratio * ratio, 'kg mm^2'] as const),
})
