import { readFileSync } from 'node:fs'
import type { Source } from '../../src/formula/index.js'
import {
  cantileverToe,
  chainFromScrews,
  dropOnSpring,
  eccentricityError,
  encoderStep,
  fourBar,
  fourBarSpeedRatio,
  frictionConeUse,
  jerkLimitedMove,
  jumpPush,
  landOnSpringAndDamper,
  limitedWorkspaceVolume,
  manipulability,
  matchedSwingPeaks,
  motorOperatingPoint,
  motorTorqueThroughReduction,
  notchHinge,
  peakForceOfPair,
  restToRestPeaks,
  sagittalArea,
  stanceForce,
  strideTiming,
  threeJointLeg,
  tipOverPush,
  tipOverSlope,
  touchDownImpact,
  transmissionAngleExtremes,
  twoLinkArmTorque,
  workspaceVolume,
} from '../../src/kinematics/index.js'
import { lynchFourScrews, lynchScale, lynchThreeLink, lynchTurnSlideTurn, sixAxisArm } from '../kinematics/textbook.js'
import { type Check, published, publishedValue } from './harness.js'

const computed = (where: string): Source => ({ level: 'computed', where })
const arithmetic = (where: string): Source => ({ level: 'arithmetic', where })
const unverified = (where: string): Source => ({ level: 'unverified', where })
const lynch: Source = {
  level: 'published',
  where: 'K. M. Lynch, F. C. Park, Modern Robotics (2017), code library, examples in the function texts',
}
const programme: Source = {
  level: 'computed',
  where: 'shortest time by linear programmes of 120 and 240 steps of constant jerk, extrapolated: tests/oracles/kinematics-move.py',
}
const sixAxisLagrange: Source = {
  level: 'computed',
  where:
    'Lagrange’s equations of an invented six-axis arm, in symbols with sympy and to 40 digits with mpmath: tests/oracles/kinematics-six-axis.py',
}
const craig = unverified(
  'J. J. Craig, Introduction to Robotics, 3rd ed., ch. 5 and 6; numbers recomputed from the book’s closed form with a computer algebra system',
)
const norton = unverified('R. L. Norton, Design of Machinery, examples 4-1 and 6: 40, 120, 80, 100 mm at 40°')

const rows = (
  id: string,
  what: string,
  of: () => readonly (readonly number[])[],
  expected: readonly (readonly string[])[],
  source: Source,
): Check[] =>
  expected.flatMap((row, i) => row.map((value, j) => publishedValue(id, `${what} [${i + 1},${j + 1}]`, () => of()[i]![j]!, value, source)))
const list = (id: string, what: string, of: () => readonly number[], expected: readonly string[], source: Source): Check[] =>
  expected.map((value, i) => publishedValue(id, `${what} [${i + 1}]`, () => of()[i]!, value, source))

const si = (values: readonly { si: number }[]) => values.map((value) => value.si)
const radians = (values: readonly number[]) => values.map((value) => [value, 'rad'] as const)

const lynchValues = radians([0.1 * lynchScale[0], 0.1, 0.1])
const lynchRates = [0.1 * lynchScale[0], 0.2, 0.3]
const unscaled = (values: readonly { si: number }[]) => values.map((value, i) => value.si * lynchScale[i]!)
/** By tests/oracles/kinematics-six-axis.py. */
const sixAxis = JSON.parse(readFileSync(new URL('../oracles/kinematics-six-axis.json', import.meta.url), 'utf8')) as {
  poses: { q: number[]; w: number[]; tool: number[]; gravity: number[]; mass: number[][]; coriolis: number[] }[]
}
const twelve = (values: readonly number[]) => values.map((x) => String(Number(x.toPrecision(12))))

const twoLink = chainFromScrews({
  screws: [
    { axis: { x: 0, y: 0, z: 1 }, point: { x: '0 m', y: '0 m', z: '0 m' } },
    { axis: { x: 0, y: 0, z: 1 }, point: { x: '1 m', y: '0 m', z: '0 m' } },
  ],
  tool: { position: { x: '2 m', y: '0 m', z: '0 m' } },
})
const fourBarAt40 = (assembly: 'open' | 'crossed') => {
  const pose = fourBar({ ground: '100 mm', crank: '40 mm', coupler: '120 mm', rocker: '80 mm' }).at({ crankAngle: '40 deg', assembly })
  if (!pose.assembles) throw new Error('does not assemble')
  return pose
}
const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })

export const checks: Check[] = [
  ...published(
    jerkLimitedMove,
    {
      what: 'rate and acceleration reached',
      given: { distance: '1.2 rad', maxRate: '6 rad/s', maxAcceleration: '80 rad/s^2', rampTime: '20 ms' },
      gives: { moveTime: '0.2950 s' },
      within: '0.01 %',
      source: programme,
    },
    {
      what: 'acceleration reached, rate not',
      given: { distance: '0.5 rad', maxRate: '6 rad/s', maxAcceleration: '80 rad/s^2', rampTime: '30 ms' },
      gives: { moveTime: '0.19094 s' },
      within: '0.01 %',
      source: programme,
    },
    {
      what: 'jerk alone',
      given: { distance: '0.05 rad', maxRate: '6 rad/s', maxAcceleration: '80 rad/s^2', rampTime: '40 ms' },
      gives: { moveTime: '0.0928318 s' },
      within: 'digits',
      source: programme,
    },
  ),
  ...published(
    twoLinkArmTorque,
    {
      what: 'masses at the links’ ends',
      given: {
        first: { length: '0.5 m', centreOfMass: '0.5 m', mass: '4.6 kg', inertia: '0 kg m^2' },
        second: { centreOfMass: '0.5 m', mass: '2.3 kg', inertia: '0 kg m^2' },
        angle1: '0.3 rad',
        angle2: '0.7 rad',
        rate1: '1 rad/s',
        rate2: '-0.5 rad/s',
        acceleration1: '2 rad/s^2',
        acceleration2: '-1 rad/s^2',
        gravity: '9.81 m/s^2',
      },
      gives: { torque1: '44.0504779205500 N m', torque2: '7.92041414919025 N m' },
      within: '1e-11 %',
      source: craig,
    },
    {
      what: 'unit masses and lengths',
      given: {
        first: { length: '1 m', centreOfMass: '1 m', mass: '1 kg', inertia: '0 kg m^2' },
        second: { centreOfMass: '1 m', mass: '1 kg', inertia: '0 kg m^2' },
        angle1: '30 deg',
        angle2: '60 deg',
        rate1: '1 rad/s',
        rate2: '2 rad/s',
        acceleration1: '3 rad/s^2',
        acceleration2: '4 rad/s^2',
        gravity: '9.81 m/s^2',
      },
      gives: { torque1: '28.0632151919752 N m', torque2: '9.36602540378444 N m' },
      within: '1e-11 %',
      source: craig,
    },
    {
      what: 'general centres of mass',
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
      gives: { torque1: '4.7364690268 N m', torque2: '0.7446213651 N m' },
      source: unverified(
        'M. W. Spong, S. Hutchinson, M. Vidyasagar, Robot Modeling and Control, planar elbow manipulator; numbers by a reference kinematics library',
      ),
    },
  ),
  ...rows(
    'kinematics.chainFromScrews',
    'two-link Jacobian at 30°, 60°',
    () => twoLink.jacobian(radians([Math.PI / 6, Math.PI / 3])).slice(3, 5),
    [
      ['-1.5', '-1'],
      ['0.866025403784', '0'],
    ],
    craig,
  ).filter((check) => check.expected !== '0'),

  ...list(
    'kinematics.chainFromScrews',
    'two-link torques of a push of 10 N along x at 30°, 60°',
    () =>
      twoLink
        .inverseDynamics({
          values: radians([Math.PI / 6, Math.PI / 3]),
          rates: [0, 0],
          accelerations: [0, 0],
          // The tool stands turned by 90°: x of the base is −y of the tool.
          toolPush: { moment: { x: '0 N m', y: '0 N m', z: '0 N m' }, force: { x: '0 N', y: '-10 N', z: '0 N' } },
        })
        .map((value) => value.si),
    ['-15', '-10'],
    craig,
  ).map((check) => ({ ...check, run: atEightDigits(check.run) })),
  ...[0, 1].map((joint) =>
    publishedValue(
      'kinematics.serialChain.inverse',
      `two-link inverse from 0°, 30° towards (0.366025, 1.366025), joint ${joint + 1}`,
      () => twoLink.inverse({ position: { x: '0.366025 m', y: '1.366025 m', z: '0 m' }, seed: ['0 deg', '30 deg'] }).values[joint]!,
      ['30.0000 deg', '90.0000 deg'][joint]!,
      unverified('K. M. Lynch, F. C. Park, Modern Robotics (2017), example 6.1: Newton–Raphson ends at 30°, 90°'),
    ),
  ),
  ...list(
    'kinematics.chainFromScrews',
    'inverse dynamics of three links',
    () =>
      unscaled(
        lynchThreeLink.inverseDynamics({
          values: lynchValues,
          rates: lynchRates,
          accelerations: [2 * lynchScale[0], 1.5, 1],
          toolPush: { moment: { x: '1 N m', y: '1 N m', z: '1 N m' }, force: { x: '1 N', y: '1 N', z: '1 N' } },
        }),
      ),
    ['74.69616155', '-33.06766016', '-3.23057314'],
    lynch,
  ),
  ...rows(
    'kinematics.chainFromScrews',
    'mass matrix of three links',
    () => lynchThreeLink.massMatrix(lynchValues).map((row, i) => row.map((m, j) => m * lynchScale[i]! * lynchScale[j]!)),
    [
      ['22.543338', '-0.307146754', '-0.00718426391'],
      ['-0.307146754', '1.96850717', '0.432157368'],
      ['-0.00718426391', '0.432157368', '0.191630858'],
    ],
    lynch,
  ),
  ...list(
    'kinematics.chainFromScrews',
    'gravity on three links',
    () => unscaled(lynchThreeLink.gravity(lynchValues)),
    ['28.40331262', '-37.64094817', '-5.4415892'],
    lynch,
  ),
  ...list(
    'kinematics.chainFromScrews',
    'Coriolis torques of three links',
    () => unscaled(lynchThreeLink.coriolis(lynchValues, lynchRates)),
    ['0.26453118', '-0.05505157', '-0.00689132'],
    lynch,
  ),
  ...list(
    'kinematics.chainFromScrews',
    'torques of a tool wrench',
    () => {
      const at = { values: lynchValues, rates: [0, 0, 0], accelerations: [0, 0, 0] }
      const push = { moment: { x: '1 N m', y: '1 N m', z: '1 N m' }, force: { x: '1 N', y: '1 N', z: '1 N' } } as const
      const [pushed, still] = [lynchThreeLink.inverseDynamics({ ...at, toolPush: push }), lynchThreeLink.inverseDynamics(at)]
      return unscaled(pushed).map((torque, i) => torque - unscaled(still)[i]!)
    },
    ['1.40954608', '1.85771497', '1.392409'],
    lynch,
  ),
  ...list(
    'kinematics.chainFromScrews',
    'place of the tool, turning, sliding, turning',
    () => Object.values(lynchTurnSlideTurn.pose(['90 deg', '3 m', '180 deg']).position).map((value) => value.si),
    ['-5', '4', '1.68584073'],
    lynch,
  ),
  ...rows(
    'kinematics.chainFromScrews',
    'space Jacobian of four screws',
    () => lynchFourScrews.spaceJacobian(radians([0.2, 1.1, 0.1, 1.2])),
    [
      ['0', '0.98006658', '-0.09011564', '0.95749426'],
      ['0', '0.19866933', '0.4445544', '0.28487557'],
      ['1', '0', '0.89120736', '-0.04528405'],
      ['0', '1.95218638', '-2.21635216', '-0.51161537'],
      ['0.2', '0.43654132', '-2.43712573', '2.77535713'],
      ['0.2', '2.96026613', '3.23573065', '2.22512443'],
    ],
    lynch,
  ).map((check) => ({ ...check, run: atEightDigits(check.run) })),

  ...rows(
    'kinematics.chainFromScrews',
    'body Jacobian of the same four screws, given in the tool',
    () => lynchFourScrews.bodyJacobian(radians([0.2, 1.1, 0.1, 1.2])),
    [
      ['-0.04528405', '0.99500417', '0', '1'],
      ['0.74359313', '0.09304865', '0.36235775', '0'],
      ['-0.66709716', '0.03617541', '-0.93203909', '0'],
      ['2.32586047', '1.66809', '0.56410831', '0.2'],
      ['-1.44321167', '2.94561275', '1.43306521', '0.3'],
      ['-2.06639565', '1.82881722', '-1.58868628', '0.4'],
    ],
    lynch,
  ).map((check) => ({ ...check, run: atEightDigits(check.run) })),
  ...rows(
    'kinematics.chainFromScrews',
    'rotation of the tool, turning, sliding, turning',
    () => lynchTurnSlideTurn.pose(['90 deg', '3 m', '180 deg']).rotation.map((row) => row.map((value) => value.si)),
    [
      ['0', '1', '0'],
      ['1', '0', '0'],
      ['0', '0', '-1'],
    ],
    lynch,
  ).map((check) => ({ ...check, run: atEightDigits(check.run) })),

  ...sixAxis.poses.flatMap(({ q, w, tool, gravity, mass, coriolis }, i) =>
    (
      [
        ['tool', () => Object.values(sixAxisArm.pose(radians(q)).position).map((value) => value.si), tool],
        ['gravity', () => si(sixAxisArm.gravity(radians(q))), gravity],
        ['centrifugal and Coriolis torque', () => si(sixAxisArm.coriolis(radians(q), w)), coriolis],
        ['mass matrix with rotors', () => sixAxisArm.massMatrix(radians(q)).flat(), mass.flat()],
      ] as const
    ).flatMap(([what, run, expected]) =>
      list('kinematics.chainFromDenavitHartenberg', `${what} of the six-axis arm, pose ${i + 1}`, run, twelve(expected), sixAxisLagrange),
    ),
  ),

  ...[
    ['open', 'couplerAngle', '20.297882788 deg'],
    ['open', 'rockerAngle', '57.324880070 deg'],
    ['crossed', 'couplerAngle', '-60.977966796 deg'],
    ['crossed', 'rockerAngle', '-98.004964078 deg'],
    ['open', 'transmissionAngle', '37.026997282 deg'],
    ['open', 'mechanicalAdvantage', '3.572456805'],
  ].map(([assembly, field, expected]) =>
    publishedValue(
      'kinematics.fourBar',
      `${field}, ${assembly}`,
      () => fourBarAt40(assembly as 'open')[field as 'rockerAngle'],
      expected!,
      norton,
    ),
  ),
  publishedValue(
    'kinematics.fourBar',
    'rocker speed at 25 rad/s, open',
    () => 25 * fourBarAt40('open').rockerSpeedRatio!.si,
    '6.997985242',
    norton,
  ),
  publishedValue(
    'kinematics.fourBar',
    'coupler speed at 25 rad/s, open',
    () => 25 * fourBarAt40('open').couplerSpeedRatio!.si,
    '-4.120914415',
    norton,
  ),
  publishedValue(
    'kinematics.fourBar',
    'rocker speed at 25 rad/s, crossed',
    () => 25 * fourBarAt40('crossed').rockerSpeedRatio!.si,
    '-20.377671957',
    norton,
  ),
  publishedValue('kinematics.fourBar', 'coupler angle as printed in the book', () => fourBarAt40('open').couplerAngle, '20.30 deg', norton),
  publishedValue(
    'kinematics.fourBar',
    'crossed rocker angle as printed in the book',
    () => fourBarAt40('crossed').rockerAngle,
    '-98.01 deg',
    norton,
    '0.01 deg',
  ),
  ...published(fourBarSpeedRatio, {
    given: { crank: '40 mm', rocker: '80 mm', crankAngle: '40 deg', couplerAngle: '20.297882788 deg', rockerAngle: '57.324880070 deg' },
    gives: 0.27991940968,
    within: '1e-7 %',
    source: norton,
  }),
  ...published(transmissionAngleExtremes, {
    given: { ground: '100 mm', crank: '40 mm', coupler: '120 mm', rocker: '80 mm' },
    gives: { crankInward: '26.384329749 deg', crankOutward: '86.416678302 deg' },
    source: norton,
  }),

  ...(
    [
      ['cycloid', '2.00000 m/s', '6.28319 m/s^2'],
      ['cubic', '1.50000 m/s', '6.00000 m/s^2'],
      ['quintic', '1.87500 m/s', '5.77350 m/s^2'],
    ] as const
  ).flatMap(([shape, peakSpeed, peakAcceleration]) =>
    published(restToRestPeaks, {
      what: `${shape} over unit distance and time`,
      given: { distance: '1 m', time: '1 s', shape },
      gives: { peakSpeed, peakAcceleration },
      source: unverified(
        'R. L. Norton, Cam Design and Manufacturing Handbook, peak factors: cycloidal 2 and 2π, 3-4-5 polynomial 1.875 and 5.77',
      ),
    }),
  ),
  ...published(matchedSwingPeaks, {
    what: '80 mm in 0.2 s at 0.4 m/s, peaks of the quintic found by sampling its closed form with high-precision arithmetic',
    given: { stride: '80 mm', swingTime: '0.2 s', bodySpeed: '0.4 m/s' },
    gives: { peakSpeed: '1.1000 m/s', peakAcceleration: '23.0940 m/s^2' },
    source: arithmetic('x = −0.04 − 0.4 t + 0.16 (10 s³ − 15 s⁴ + 6 s⁵), derivatives'),
  }),
  ...published(strideTiming, {
    given: { stridePeriod: '0.5 s', dutyFactor: 0.4, bodySpeed: '0.8 m/s' },
    gives: { stanceTime: '0.2 s', swingTime: '0.3 s', stanceSweep: '0.16 m', strideLength: '0.4 m' },
    source: unverified('R. McN. Alexander, Principles of Animal Locomotion (2003): stance sweep = speed × duty factor × period'),
  }),
  ...published(
    stanceForce,
    {
      what: 'hop on all legs at duty factor 0.4: π/2β weights',
      given: { mass: '1 kg', legShare: 1, dutyFactor: 0.4, stancePhase: 0.5, gravity: '1 m/s^2' },
      gives: '3.926991 N',
      source: arithmetic('impulse balance of a half sine, π/(2 · 0.4)'),
    },
    {
      what: 'two-peaked force at a quarter of the stance',
      given: {
        mass: '10 kg',
        legShare: 0.25,
        dutyFactor: 0.7,
        stancePhase: 0.25,
        shape: 'twoPeaked',
        thirdHarmonic: 1,
        gravity: '10 m/s^2',
      },
      gives: '59.5029 N',
      source: arithmetic('25 N/0.7 · 3π/(2·4) · (sin 45° + sin 135°)'),
    },
  ),
  ...published(peakForceOfPair, {
    what: 'trot on four equal legs: π/8β weights',
    given: { mass: '1 kg', pairShare: 0.5, dutyFactor: 0.5, gravity: '1 m/s^2' },
    gives: '0.785398 N',
    source: {
      level: 'published',
      where: 'R. McN. Alexander and others, 1979, as quoted on the list of the International Society of Biomechanics',
    },
  }),
  ...published(motorTorqueThroughReduction, {
    what: 'driving, 10 N m through 5:1 at 80 %, rotor 100 kg mm² at 200 rad/s²',
    given: {
      outputTorque: '10 N m',
      outputSpeed: '2 rad/s',
      outputAcceleration: '200 rad/s^2',
      ratio: 5,
      efficiency: 0.8,
      rotorInertia: '100 kg mm^2',
    },
    gives: '2.6000 N m',
    source: arithmetic('10/(5 · 0.8) + 1e-4 · 5 · 200'),
  }),
  ...published(motorOperatingPoint, {
    what: '10 A at 0.1 N m/A, 0.5 Ω, 100 rad/s',
    given: { torque: '1 N m', speed: '100 rad/s', torqueConstant: '0.1 N m/A', resistance: '0.5 ohm' },
    gives: { current: '10.00 A', voltage: '15.00 V', mechanicalPower: '100.0 W', copperLoss: '50.00 W', electricalPower: '150.0 W' },
    source: arithmetic('V = I R + k ω and the balance of power, by hand'),
  }),

  ...published(jumpPush, {
    what: 'jump of twice the push',
    given: { mass: '10 kg', jumpHeight: '0.2 m', pushTravel: '0.1 m', gravity: '10 m/s^2' },
    gives: { totalForce: '300 N', takeOffSpeed: '2 m/s', pushTime: '0.1 s', flightTime: '0.4 s' },
    source: arithmetic('energy: F s = m g (h + s); v² = 2 g h, by hand'),
  }),
  ...published(
    dropOnSpring,
    {
      what: 'laid down without a fall: twice the weight',
      given: { mass: '10 kg', dropHeight: '0 m', stiffness: '1 N/mm', gravity: '10 m/s^2' },
      gives: { peakForce: '200 N', compression: '0.2 m' },
      source: unverified('Roark’s Formulas for Stress and Strain, sudden loading gives twice the static load'),
    },
    {
      what: 'fall of four static deflections: four times the weight',
      given: { mass: '10 kg', dropHeight: '0.4 m', stiffness: '1 N/mm', gravity: '10 m/s^2' },
      gives: { peakForce: '400 N', compression: '0.4 m' },
      source: unverified('Roark’s Formulas for Stress and Strain, impact: 1 + √(1 + 2 · 4) = 4'),
    },
  ),
  ...(
    [
      ['peakForce', '454.148792 N'],
      ['timeOfPeak', '0.037032607 s'],
      ['touchDownForce', '230.121511 N'],
    ] as const
  ).map(([field, expected]) =>
    publishedValue(
      'kinematics.landOnSpringAndDamper',
      `drop of 120 mm on 9 N/mm and 150 N s/m: ${field}`,
      () => landOnSpringAndDamper({ mass: '10.5 kg', dropHeight: '120 mm', stiffness: '9 N/mm', damping: '150 N s/m' })[field],
      expected,
      computed('closed form of the damped oscillator started with a speed, its force differentiated, to 30 digits with mpmath'),
    ),
  ),
  ...published(touchDownImpact, {
    given: { speed: '2 m/s', effectiveMass: '0.25 kg', contactStiffness: '40000 N/m' },
    gives: { impulse: '0.5 N s', peakForce: '200 N', timeToPeak: '3.927 ms' },
    source: arithmetic('2 · 0.25; 2 √(4e4 · 0.25); π/2 √(0.25/4e4), by hand'),
  }),

  ...published(encoderStep, {
    what: '14-bit encoder on a motor behind 6:1',
    given: { countsPerTurn: 16384, turnsPerJointTurn: 6 },
    gives: { step: '0.0036621 deg', worstError: '0.0018311 deg' },
    source: arithmetic('360°/98304'),
  }),
  ...published(eccentricityError, {
    what: '0.05 mm at 10 mm: 17 minutes of arc',
    given: { eccentricity: '50 um', trackRadius: '10 mm' },
    gives: { worstError: '17.189 arcmin', firstHarmonic: '17.189 arcmin', secondHarmonic: '2.578 arcsec' },
    source: {
      level: 'commonPractice',
      where: 'encoder makers’ rule: error in seconds = 206265 × eccentricity / radius (206 × µm / mm), i.e. 1031″',
    },
  }),
  ...published(workspaceVolume, {
    given: { upperLink: '1 m', lowerLink: '0.5 m' },
    gives: '13.6136 m^3',
    source: arithmetic('4π/3 (1.5³ − 0.5³)'),
  }),
  ...published(sagittalArea, {
    what: 'all the way round: the annulus',
    given: { upperLink: '1 m', lowerLink: '0.5 m', hipRange: '1 turn', kneeFrom: '0 deg', kneeTo: '180 deg' },
    gives: '6.28319 m^2',
    source: arithmetic('π (1.5² − 0.5²)'),
  }),
  ...published(limitedWorkspaceVolume, {
    what: 'against numerical integration (scipy dblquad)',
    given: {
      upperLink: '165 mm',
      lowerLink: '180 mm',
      sidewaysHipRange: '60 deg',
      hipFrom: '-45 deg',
      hipTo: '20 deg',
      kneeFrom: '10 deg',
      kneeTo: '100 deg',
    },
    gives: '0.0102419109476 m^3',
    source: {
      level: 'referenceLibrary',
      where: 'scipy.integrate.dblquad of l1 l2 sin q3 (l1 cos q2 + l2 cos(q2 + q3)), error below 1e-13',
    },
  }),
  publishedValue(
    'kinematics.manipulability',
    'two-link arm at its isotropic pose has equal singular values (leg with links √2 and 1, knee at 135°)',
    () => {
      const isotropic = threeJointLeg({ hipOffset: '0 m', upperLink: [Math.SQRT2, 'm'], lowerLink: '1 m' })
      const axes = manipulability(isotropic, { sidewaysHip: '0 deg', hip: '-20 deg', knee: '135 deg' }).velocityAxes
      return axes.filter((axis) => Math.abs(axis.halfLength.si - 1) < 1e-9).length
    },
    '2',
    unverified('J. J. Craig, Introduction to Robotics, ch. 8: isotropic points; T. Yoshikawa 1985'),
  ),
  publishedValue(
    'kinematics.threeJointLeg',
    'foot of the leg hanging straight',
    () => leg.footPosition({ sidewaysHip: '0 deg', hip: '0 deg', knee: '0 deg' }).z,
    '-345 mm',
    arithmetic('sum of the links'),
  ),
  ...published(tipOverSlope, {
    given: { marginToEdge: '100 mm', height: '200 mm' },
    gives: '26.565 deg',
    source: { level: 'commonPractice', where: 'block twice as high as its half width tips at atan 1/2' },
  }),
  ...published(tipOverPush, {
    given: { mass: '10 kg', marginToEdge: '0.1 m', pushHeight: '0.25 m', gravity: '10 m/s^2' },
    gives: '40 N',
    source: { level: 'commonPractice', where: 'moments about the edge: 100 N · 0.1 m = 40 N · 0.25 m' },
  }),
  ...published(frictionConeUse, {
    given: { normal: '100 N', tangential: '30 N', friction: 0.6 },
    gives: { use: 0.5, coneAngle: '30.964 deg', forceAngle: '16.699 deg', state: 'holds' },
    source: { level: 'commonPractice', where: 'angle of friction atan 0.6; atan 0.3' },
  }),
  ...published(cantileverToe, {
    what: '2 GPa, 40 × 10 × 2 mm, 1 N, 1 % strain',
    given: { modulus: '2000 MPa', length: '40 mm', width: '10 mm', thickness: '2 mm', tipForce: '1 N', allowableStrain: '1 %' },
    gives: {
      stiffness: '0.6250 N/mm',
      deflection: '1.600 mm',
      tipAngle: '0.06000 rad',
      rootStrain: '0.3000 %',
      forceLimit: '3.333 N',
      deflectionLimit: '5.333 mm',
      use: 0.3,
    },
    source: unverified('Roark’s Formulas for Stress and Strain: F L³/3EI, F L²/2EI, 6 F L/b t²; by hand with I = 6.667 mm⁴'),
  }),
  ...published(notchHinge, {
    what: '2 GPa, 10 mm wide, 0.5 mm thin, radius 5 mm, 5°',
    given: { modulus: '2000 MPa', width: '10 mm', thickness: '0.5 mm', notchRadius: '5 mm', angle: '5 deg', allowableStrain: '2 %' },
    gives: { stiffness: '0.11184 N m/rad', moment: '9.7601 N mm', strain: '1.1712 %', angleLimit: '8.5381 deg', use: 0.5856 },
    source: unverified('Paros and Weisbord 1965: 2 E b t^2.5 / (9 π √r); strain 4/(3π) √(t/r) per radian, by hand'),
  }),
]

/** Entries printed without decimals stand for eight digits. */
function atEightDigits(run: Check['run']): Check['run'] {
  return () => {
    const result = run()
    return { ...result, tolerance: Math.min(result.tolerance, 5.0001e-9) }
  }
}
