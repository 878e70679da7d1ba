import type { Source } from '../../src/formula/index.js'
import {
  boxBendingStress,
  boxSection,
  boxTorsionalRigidity,
  columnBuckling,
  rectangleTorsion,
  roundBendingStress,
  roundSection,
  roundTorsion,
  slopeLoadShare,
  thinWalledTorsion,
  wallBuckling,
} from '../../src/structures/index.js'
import torsion from '../oracles/structures-torsion.json' with { type: 'json' }
import { type Check, published } from './harness.js'

const book = (where: string): Source => ({ level: 'published', where })
const gere = (where: string) => book(`Gere, Mechanics of Materials, 7th ed., ${where}, instructor's solutions`)
const worked = (where: string): Source => ({ level: 'computed', where })
const arithmetic = (where: string): Source => ({ level: 'arithmetic', where })
const finiteDifferences: Source = {
  level: 'referenceLibrary',
  where: 'stress function by finite differences, scipy sparse solver (tests/oracles/structures-torsion.py)',
}

/** Torsion constant of a rectangle over larger side times smaller side cubed, by ratio of sides. */
const RECTANGLES: readonly (readonly [ratio: number, constant: string])[] = [
  [1, '0.140'],
  [1.25, '0.171'],
  [1.5, '0.196'],
  [2, '0.229'],
  [3, '0.263'],
  [4, '0.281'],
  [6, '0.299'],
  [10, '0.313'],
]

const pipe = { length: '1.2 m', force: '10 kN', ...roundSection({ diameter: '40 mm', holeDiameter: '36 mm' }) }
const { area, secondMoment } = pipe

export const checks: Check[] = [
  ...published(
    boxSection,
    {
      what: 'tube of 100 by 200 mm, wall 5 mm',
      given: { width: '100 mm', depth: '200 mm', wall: '5 mm' },
      gives: { secondMoment: '15.224e6 mm^4' },
      source: book('Philpot, MecMovies 15.3, principal stresses in a rectangular tube'),
    },
    {
      what: 'tube of 20 by 24 mm, wall 2 mm',
      given: { width: '20 mm', depth: '24 mm', wall: '2 mm' },
      gives: {
        area: '160.00 mm^2',
        sidewaysSecondMoment: '9173.3 mm^4',
        sectionModulus: '1031.1 mm^3',
        sidewaysSectionModulus: '917.33 mm^3',
      },
      source: arithmetic('(24 × 20³ − 20 × 16³)/12, (20 × 24³ − 16 × 20³)/(12 × 12)'),
    },
  ),
  ...published(
    roundSection,
    {
      what: 'pipe of 40 and 36 mm',
      given: { diameter: '40 mm', holeDiameter: '36 mm' },
      gives: { secondMoment: '43.22e3 mm^4' },
      source: gere('problem 11.4-2'),
    },
    {
      what: 'tube of 1.75 and 1.25 in',
      given: { diameter: '1.75 in', holeDiameter: '1.25 in' },
      gives: { polarSecondMoment: '0.681 in^4' },
      source: gere('section 3.3'),
    },
    {
      what: 'solid, 10 mm',
      given: { diameter: '10 mm' },
      gives: { area: '78.540 mm^2', sectionModulus: '98.175 mm^3', torsionalSectionModulus: '196.35 mm^3' },
      source: arithmetic('π d²/4, π d³/32, π d³/16'),
    },
  ),
  ...published(boxBendingStress, {
    what: 'tube of 100 by 200 mm, wall 5 mm, under 7 kN m',
    given: { moment: '7 kN m', width: '100 mm', depth: '200 mm', wall: '5 mm' },
    // 18.39 MPa at 40 mm from the middle, linear over the depth of 100 mm.
    gives: { stress: '45.98 MPa', secondMoment: '15.224e6 mm^4' },
    source: worked('from the 18.39 MPa at 40 mm that Philpot, MecMovies 15.3, prints; linear over the depth'),
  }),
  ...published(boxBendingStress, {
    what: 'the same with a pull of 29 kN on its 2900 mm²: 10 MPa more',
    given: { moment: '7 kN m', width: '100 mm', depth: '200 mm', wall: '5 mm', axialForce: '29 kN' },
    gives: { stress: '55.98 MPa', area: '2900.0 mm^2' },
    source: arithmetic('45.98 MPa + 29 000/2900'),
  }),
  ...published(
    roundBendingStress,
    {
      what: 'pipe of 40 and 36 mm under 1 kN m',
      given: { moment: '1 kN m', diameter: '40 mm', holeDiameter: '36 mm' },
      gives: '462.7 MPa',
      within: '0.1 MPa',
      source: worked("M c/I with the 43.22e3 mm⁴ that Gere's solution 11.4-2 prints"),
    },
    {
      what: 'solid, 10 mm under 10 N m',
      given: { moment: '10 N m', diameter: '10 mm' },
      gives: '101.859 MPa',
      source: arithmetic('32 M/(π d³)'),
    },
  ),
  ...published(roundTorsion, {
    what: 'tube of 1.75 and 1.25 in, 24 in long, under 6200 lbf in',
    given: { torque: '6200 lbf in', diameter: '1.75 in', holeDiameter: '1.25 in', length: '24 in', shearModulus: '3.13 Mpsi' },
    gives: { shearStress: '7965 psi' },
    source: gere('section 3.3 (7965 psi from a rounded 0.681 in⁴)'),
  }),
  ...published(roundTorsion, {
    what: 'solid, 10 mm, 100 mm long, 80 GPa, under 10 N m',
    given: { torque: '10 N m', diameter: '10 mm', length: '100 mm', shearModulus: '80 GPa' },
    gives: { stiffness: '785.40 N m/rad', twist: '0.72951 deg' },
    source: arithmetic('G π d⁴/(32 L)'),
  }),
  ...RECTANGLES.flatMap(([ratio, constant]) =>
    published(rectangleTorsion, {
      what: `sides as ${ratio} to 1`,
      given: { torque: '0 N m', width: [10 * ratio, 'mm'], depth: '10 mm', length: '1 m', shearModulus: '1 GPa' },
      // The table's constant times the sides in cm.
      gives: { torsionConstant: `${Number(constant) * ratio} cm^4` as '1 cm^4' },
      within: `${0.0011 * ratio}`,
      source: book('Jiménez Montoya, Hormigón armado, 14th ed., p. 405, as a public structural library reproduces its table'),
    }),
  ),
  ...torsion.rectangles.flatMap(({ ratio, constant, peak }) =>
    published(rectangleTorsion, {
      what: `sides as ${ratio} to 1`,
      given: { torque: '1 N m', width: [10 * ratio, 'mm'], depth: '10 mm', length: '1 m', shearModulus: '1 GPa' },
      gives: { torsionConstant: `${constant * ratio} cm^4` as '1 cm^4', shearStress: `${peak / ratio} MPa` as '1 MPa' },
      within: '0.0002 %',
      source: finiteDifferences,
    }),
  ),
  ...published(rectangleTorsion, {
    what: 'stiffness and twist of a square bar of 10 mm',
    given: { torque: '1 N m', width: '10 mm', depth: '10 mm', length: '100 mm', shearModulus: '1 GPa' },
    gives: { stiffness: '14.058 N m/rad', twist: '4.0758 deg' },
    source: worked('G J/L with J = 0.140577 cm⁴ of the finite differences'),
  }),
  ...published(thinWalledTorsion, {
    what: 'oval tube, 10 kN m on 17 850 mm² within 514.2 mm, wall 8 mm',
    given: { torque: '10 kN m', enclosedArea: '17850 mm^2', perimeter: '514.2 mm', wall: '8 mm', shearModulus: '76 GPa' },
    gives: { meanShearStress: '35.0 MPa', torsionConstant: '19.83e6 mm^4' },
    source: gere('problem 3.10-6'),
  }),
  ...torsion.boxes
    .filter(({ wall }) => wall <= 0.1)
    .flatMap(({ width, wall, constant, peak }) => [
      ...published(thinWalledTorsion, {
        what: `box of ${width} by 1, wall ${wall}: shear in the middle of the wide side`,
        given: {
          torque: '1 N m',
          enclosedArea: [100 * (width - wall) * (1 - wall), 'mm^2'],
          perimeter: [20 * (width - wall + 1 - wall), 'mm'],
          wall: [10 * wall, 'mm'],
          shearModulus: '1 GPa',
        },
        gives: { shearStress: `${peak / width} MPa` as '1 MPa' },
        within: '2.5 %',
        source: finiteDifferences,
      }),
      ...published(boxTorsionalRigidity, {
        what: `box of ${width} by 1, wall ${wall}`,
        given: { width: [10 * width, 'mm'], depth: '10 mm', wall: [10 * wall, 'mm'], modulus: '2.6 GPa', poissonRatio: 0.3 },
        // 1 GPa on 1 cm⁴ is 10 N m².
        gives: `${10 * constant * width} N m^2` as '1 N m^2',
        within: wall === 0.05 ? '2.6 %' : '5.6 %',
        source: finiteDifferences,
      }),
    ]),
  ...published(boxTorsionalRigidity, {
    what: 'square tube of mean side 20 mm, wall 1 mm: G t b³',
    given: { width: '21 mm', depth: '21 mm', wall: '1 mm', modulus: '2.6 GPa', poissonRatio: 0.3 },
    gives: '8.0000 N m^2',
    source: arithmetic('1 GPa × 1 mm × (20 mm)³'),
  }),
  ...(
    [
      ['bothPinned', '62.2'],
      ['fixedAndFree', '15.6'],
      ['fixedAndPinned', '127'],
      ['bothFixed', '249'],
    ] as const
  ).flatMap(([ends, force]) =>
    published(columnBuckling, {
      what: `steel pipe of 40 and 36 mm, ${ends}`,
      given: { force: '10 kN', length: '1.2 m', ends, area, secondMoment, modulus: '210 GPa', yieldStrength: '3 GPa' },
      gives: { criticalForce: `${force} kN` as '1 kN', governedBy: 'euler' },
      source: gere('problem 11.4-2'),
    }),
  ),
  ...published(columnBuckling, {
    what: 'tube of 150 and 140 mm, 7.2 m, both ends pinned',
    given: {
      force: '0 N',
      length: '7.2 m',
      ends: 'bothPinned',
      ...(({ area, secondMoment }) => ({ area, secondMoment }))(roundSection({ diameter: '150 mm', holeDiameter: '140 mm' })),
      modulus: '200 GPa',
      yieldStrength: '250 MPa',
    },
    gives: { criticalForce: '228.2 kN', effectiveLength: '7.2000 m', governedBy: 'euler' },
    source: book('Hibbeler, Mechanics of Materials, example 13.1'),
  }),
  ...published(columnBuckling, {
    what: 'round bar of 1.25 in, 54 in, cold-drawn steel',
    given: {
      force: '1 lbf',
      length: '54 in',
      ends: 'bothPinned',
      ...(({ area, secondMoment }) => ({ area, secondMoment }))(roundSection({ diameter: '1.25 in' })),
      modulus: '30 Mpsi',
      yieldStrength: '51 ksi',
    },
    gives: { slenderness: '173 1', transitionSlenderness: '108 1', governedBy: 'euler' },
    source: book('Mott, Machine Elements in Mechanical Design, example of chapter 6'),
  }),
  ...published(columnBuckling, {
    what: 'the same bar of half the transition slenderness: 7/8 of its yield load',
    given: {
      force: '1 kN',
      length: '427.65 mm',
      ends: 'bothPinned',
      area: '791.73 mm^2',
      secondMoment: '49882 mm^4',
      modulus: '206.84 GPa',
      yieldStrength: '351.63 MPa',
    },
    gives: { criticalForce: '243.6 kN', reserve: 243.6, governedBy: 'johnson' },
    source: arithmetic('791.73 × 351.63 × (1 − 0.25/2)'),
  }),
  ...published(
    wallBuckling,
    {
      what: 'simply supported: 4 π² E/(12 (1 − ν²)) (t/b)²',
      given: { width: '20 mm', thickness: '1 mm', modulus: '2 GPa', poissonRatio: 0.3 },
      gives: '18.08 MPa',
      source: worked('Johnson, Aerospace Structures, 11.1, with k = 4: 3.6152 E (t/b)²'),
    },
    {
      what: 'clamped edges',
      given: { width: '20 mm', thickness: '1 mm', modulus: '2 GPa', poissonRatio: 0.3, edges: 'clamped' },
      gives: '31.50 MPa',
      source: { level: 'unverified', where: 'Timoshenko & Gere, Theory of Elastic Stability, k = 6.97' },
    },
    {
      what: 'bending in its plane',
      given: { width: '20 mm', thickness: '1 mm', modulus: '2 GPa', poissonRatio: 0.3, load: 'bending' },
      gives: '108.0 MPa',
      source: { level: 'unverified', where: 'Timoshenko & Gere, Theory of Elastic Stability, k = 23.9' },
    },
  ),
  ...published(
    slopeLoadShare,
    {
      what: 'truck on the grade that tips it, centre of mass 1.5 m from the lower wheels and 3.5 m high',
      given: { slope: '23.199 deg', tipOverSlope: '23.2 deg', levelShare: 0.6 },
      gives: '1.000 1',
      source: book('Hibbeler, Engineering Mechanics: Statics, 14th ed., problem 11-43: 23.2°'),
    },
    {
      what: 'vehicle of wheel base 2.25 m on 10°, centre of mass 1 m from the lower axle and 1.5 m high',
      given: { slope: '10 deg', tipOverSlope: '33.690 deg', levelShare: 0.5555556 },
      gives: '0.6731 1',
      source: worked('(1.25 cos 10° + 1.5 sin 10°)/(2.25 cos 10°), moments about the upper axle; data of an automobile text'),
    },
  ),
]
