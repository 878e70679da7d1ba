import {
  bearingDutyLoad,
  bearingEquivalentLoad,
  bearingLife,
  bearingOscillation,
  bearingReliability,
  bearingStaticSafety,
  clampedShaft,
  toleranceMonteCarlo,
  toleranceStack,
  uniformStackProbability,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import { type Check, published } from './harness.js'

const hand = (where: string): Source => ({ level: 'arithmetic', where })
const FRACTIONS: Source = { level: 'referenceLibrary', where: 'the cut box in exact fractions (Python fractions)' }
const three = ['0.1 mm', '0.1 mm', '0.1 mm'] as const

/** Share of bearings, and millions of turns of 512 that so many reach. */
const RELIABILITIES = [
  ['90 %', 512],
  ['95 %', 327.68],
  ['96 %', 281.6],
  ['97 %', 240.64],
  ['98 %', 189.44],
  ['99 %', 128],
] as const

export const checks: Check[] = [
  ...published(bearingLife, {
    what: '540 million turns at 2.278 kN ask for 18.55 kN by the cube root',
    given: { dynamicRating: '18.55 kN', load: '2.278 kN', speed: '300 rpm' },
    gives: { turns: '5.40e8' as never },
    source: { level: 'published', where: 'Shigley 8th ed., problem 11-1, instructor solution (x_D = 540, F_D = 2.278 kN)' },
  }),
  ...published(bearingLife, {
    what: 'eight times the load rating cubed, 99 %, 60 rpm',
    given: { dynamicRating: '800 N', load: '100 N', reliability: '99 %', speed: '60 rpm' },
    gives: { time: '128000000 s' },
    within: '0.000001 %',
    source: { level: 'unverified', where: 'ISO 281:2007, a1 = 0.25: 0.25 × 512 million turns at one a second' },
  }),
  ...published(bearingReliability, {
    what: 'problem 11-1: 540 million turns at 2.278 kN, a bearing of 19.5 kN taken',
    given: { dynamicRating: '19.5 kN', load: '2.278 kN', turns: 5.4e8 },
    gives: { reliability: 0.919, ratingNeeded: '18.59 kN' },
    source: { level: 'published', where: 'Shigley 8th ed., problem 11-1, instructor solution' },
  }),
  ...published(bearingReliability, {
    what: 'the characteristic life is where 63.2 % have failed',
    given: { dynamicRating: '1 kN', load: '1 kN', turns: 4.459e6, requiredReliability: 0.36787944 },
    gives: { reliability: 0.36787944, ratingNeeded: '1.000000 kN' },
    source: { level: 'published', where: 'Weibull distribution: e^-1 at the characteristic life' },
  }),
  ...published(bearingEquivalentLoad, {
    what: '02-65 mm: 7 kN turning with the outer ring (1.2), 3 kN axial, C0 34 kN',
    given: { radialLoad: '8.4 kN', axialLoad: '3 kN', staticRating: '34 kN', axialFactor: 1.03 / 0.084 },
    gives: { dynamicLoad: '9.31 kN', axialCounts: 'axialCounts' },
    source: { level: 'published', where: 'Shigley 9th ed., table 11-1 (Y 1.55 at Fa/C0 0.084, 1.45 at 0.110), a notebook on it' },
  }),
  ...published(bearingEquivalentLoad, {
    what: '10x22x6 at 300 N axial, 400 N radial: f0 Fa/C0 = 3.307',
    given: { radialLoad: '400 N', axialLoad: '300 N', staticRating: '1270 N', axialFactor: 14 },
    // Y between 2.07: 1.31 and 3.45: 1.15 is 1.16657: 224 + 349.97 N; static 240 + 150 N is less than 400 N.
    gives: { dynamicLoad: '573.97 N', staticLoad: '400 N', axialCounts: 'axialCounts' },
    source: { level: 'unverified', where: 'ISO 281:2007 table 3, interpolated by hand' },
  }),
  ...published(bearingDutyLoad, {
    given: {
      parts: [
        { load: '1 kN', turns: 0.5 },
        { load: '2 kN', turns: 0.5 },
      ],
    },
    gives: '1650.96 N',
    source: hand('cube root of (1 + 8)/2'),
  }),
  ...published(bearingOscillation, {
    given: { halfAmplitude: '45 deg', balls: 9 },
    gives: { turnsPerCycle: 0.5, ballPitch: '80 deg', state: 'fatigueLife' },
    within: '0.0001 %',
    source: hand('4 × 45°/360°; cage turns at about half speed, so 2 × 360°/9'),
  }),
  ...published(bearingStaticSafety, {
    given: { staticRating: '1270 N', staticLoad: '1000 N', duty: 'shock' },
    gives: { safety: 1.27, requiredSafety: 1.5, state: 'dents' },
    within: '0.0001 %',
    source: { level: 'published', where: "ISO 76 practice, a rolling-bearing maker's load page: 1.5 for shock" },
  }),
  ...published(toleranceStack, {
    given: {
      parts: [
        { nominal: '20 mm', tolerance: '0.3 mm', bias: '0.1 mm' },
        { nominal: '12 mm', tolerance: '0.4 mm', sensitivity: -1, bias: '-0.1 mm' },
      ],
    },
    gives: { nominal: '8 mm', mean: '8.2 mm', worstCase: '0.7 mm', rootOfSquares: '0.5 mm', inflated: '0.75 mm' },
    within: '0.0001 %',
    source: hand('3-4-5; biases of opposite sensitivity add'),
  }),
  ...published(
    uniformStackProbability,
    {
      what: 'three equal: beyond two tolerances, 1/48',
      given: { tolerances: three, limit: '0.2 mm' },
      gives: { exceedance: 0.0208333, normalExceedance: 0.0227501 },
      source: { level: 'published', where: 'Irwin 1927, Hall 1927: (1/2)³/3!' },
    },
    {
      what: 'two equal: beyond one tolerance, 1/8',
      given: { tolerances: ['0.1 mm', '0.1 mm'], limit: '0.1 mm' },
      gives: { exceedance: 0.125 },
      within: '0.000001 %',
      source: { level: 'published', where: 'triangular distribution' },
    },
    {
      what: 'one of 1 mm among eleven of 1 µm: beyond half of it, a quarter',
      given: { tolerances: ['1 mm', ...Array<'1 um'>(11).fill('1 um')], limit: '0.5 mm' },
      gives: { exceedance: 0.25 },
      within: '0.00000001 %',
      source: hand('the small ones are even about zero, so they move as much out as in'),
    },
    {
      what: 'twelve equal, each ± 1: beyond 2',
      given: { tolerances: Array<'1 mm'>(12).fill('1 mm'), limit: '2 mm' },
      gives: { exceedance: 0.1607270497635081 },
      within: '0.000000001 %',
      source: FRACTIONS,
    },
    {
      what: 'twelve equal, each ± 1: the far corner beyond 11',
      given: { tolerances: Array<'1 mm'>(12).fill('1 mm'), limit: '11 mm' },
      gives: { exceedance: 5.096864498991235e-13 },
      within: '0.000000001 %',
      source: FRACTIONS,
    },
    {
      what: 'unlike ones: 1, 0.1, 0.1, 0.02, 0.05 mm beyond 1.05 mm',
      given: { tolerances: ['1 mm', '0.1 mm', '0.1 mm', '0.02 mm', '0.05 mm'], limit: '1.05 mm' },
      gives: { exceedance: 0.007937333333333333 },
      within: '0.000000001 %',
      source: FRACTIONS,
    },
    {
      what: 'm6 pin in an H7 hole of 4 mm, both even: tight in 2 of 3',
      given: { tolerances: ['4 um', '6 um'], limit: '-2 um' },
      gives: { exceedance: 0.6666667 },
      source: hand('hole even over 0 to 12 µm against a pin of mean 8 µm'),
    },
  ),
  ...published(toleranceMonteCarlo, {
    what: 'three even: beyond two tolerances, 1/48 each side',
    given: {
      parts: three.map((tolerance) => ({ nominal: '1 mm' as const, tolerance, spread: 'uniform' as const })),
      least: '2.8 mm',
      largest: '3.2 mm',
      draws: 400_000,
    },
    gives: { mean: '3 mm', scatter: '0.1 mm', tooSmall: 0.0208333, tooLarge: 0.0208333, standardError: 0.00031595 },
    // Four standard errors of the chances.
    within: '4.4 %',
    source: { level: 'published', where: 'Irwin 1927, Hall 1927' },
  }),
  ...published(clampedShaft, {
    what: 'two equal rings of 20 and 10 mm',
    given: {
      sections: [
        { length: '10 mm', outerDiameter: '20 mm', innerDiameter: '10 mm', modulus: '2 GPa', shearModulus: '0.75 GPa' },
        { length: '10 mm', outerDiameter: '20 mm', innerDiameter: '10 mm', modulus: '2 GPa', shearModulus: '0.75 GPa' },
      ],
      clampLoad: '1 kN',
      friction: 0.2,
      moment: '2 N m',
      torque: '2 N m',
    },
    // I = π/64 (160000 − 10000) = 7363.11 mm⁴; W/A = (400 + 100)/(8 × 20) mm; 0.2 × 1000 × 7.5 mm.
    gives: {
      torsionalStiffness: '552.233 N m/rad',
      bendingStiffness: '736.311 N m/rad',
      gapMoment: '3.125 N m',
      slipTorque: '1.50000 N m',
      joints: 'closed',
      drive: 'keyNeeded',
    },
    source: hand('polar and axial moments of a ring, its core, its mean radius'),
  }),
  ...RELIABILITIES.flatMap(([reliability, millions]) =>
    published(bearingLife, {
      what: `load an eighth of the rating, ${reliability}`,
      given: { dynamicRating: '800 N', load: '100 N', reliability, speed: '60 rpm' },
      gives: { turns: `${millions}e6 1` as never },
      within: '0.000001 %',
      source: { level: 'unverified', where: 'ISO 281:2007 table 12: 1, 0.64, 0.55, 0.47, 0.37, 0.25 of 512 million turns' },
    }),
  ),
  ...published(bearingEquivalentLoad, {
    what: '10x22x6 mostly axial: f0 Fa/C0 = 3.31, static 0.6 × 100 + 0.5 × 300 N',
    given: { radialLoad: '100 N', axialLoad: '300 N', staticRating: '1270 N', axialFactor: 14 },
    gives: { dynamicLoad: '405.97 N', staticLoad: '210.00 N', axialCounts: 'axialCounts' },
    source: { level: 'unverified', where: 'ISO 281:2007 table 3, ISO 76, by hand: 56 + 1.16657 × 300' },
  }),
  ...published(bearingEquivalentLoad, {
    what: '10x22x6 mostly radial: 60 N beside 400 N count for nothing (e 0.255)',
    given: { radialLoad: '400 N', axialLoad: '60 N', staticRating: '1270 N', axialFactor: 14 },
    gives: { dynamicLoad: '400.00 N', staticLoad: '400.00 N', axialCounts: 'radialOnly' },
    source: { level: 'unverified', where: 'ISO 281:2007 table 3' },
  }),
  ...published(
    bearingStaticSafety,
    {
      what: 'normal duty',
      given: { staticRating: '1270 N', staticLoad: '1000 N', duty: 'normal' },
      gives: { requiredSafety: '1.0000 1', state: 'enough' },
      source: { level: 'published', where: "ISO 76 practice, a rolling-bearing maker's load page: 1" },
    },
    {
      what: 'quiet or oscillating duty',
      given: { staticRating: '1270 N', staticLoad: '1000 N', duty: 'quiet' },
      gives: { requiredSafety: '2.0000 1', state: 'dents' },
      source: { level: 'unverified', where: "a rolling-bearing maker's load page: 2" },
    },
  ),
  ...published(bearingOscillation, {
    what: 'half an amplitude of 30 degrees with nine balls: 60 of 80 degrees',
    given: { halfAmplitude: '30 deg', balls: 9 },
    gives: { turnsPerCycle: '0.33333 1', state: 'falseBrinelling' },
    source: hand('4 × 30°/360°'),
  }),
]
