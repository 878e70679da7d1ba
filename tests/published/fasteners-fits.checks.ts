import {
  allowableInterference,
  bossWallStress,
  effectiveBossDiameter,
  fitProbability,
  holeCoupon,
  interferenceChange,
  pressFit,
  pressFitGrip,
  pressFitHold,
  pressFitOverTime,
  releaseTemperature,
  spinningInsertion,
  surfaceSmoothing,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import decay from '../oracles/fasteners-clamp.json' with { type: 'json' }
import { type Check, published, publishedValue } from './harness.js'

const lame: Source = { level: 'arithmetic', where: 'thick cylinders as any machine-design text prints them, by hand' }
const steel = { modulus: '207 GPa', poissonRatio: 0.292 } as const
const rigid = { modulus: '1e9 GPa', poissonRatio: 0.3 } as const

export const checks: Check[] = [
  ...published(
    pressFit,
    {
      what: 'unlike metals',
      given: {
        diameter: '0.781 in',
        diametralInterference: '0.0015 in',
        bossDiameter: '3 in',
        boss: { modulus: '14 Mpsi', poissonRatio: 0.28 },
        pin: { modulus: '30 Mpsi', poissonRatio: 0.28 },
      },
      gives: { pressure: '15265 psi' },
      source: { level: 'published', where: 'Norton, Machine Design 4th ed., example 10-5' },
    },
    {
      what: 'steel in steel, printed in SI',
      given: { diameter: '100 mm', diametralInterference: '0.02 mm', bossDiameter: '160 mm', boss: steel, pin: steel },
      gives: { pressure: '12.6 MPa' },
      source: { level: 'published', where: "Brown, Marks' Calculations for Machine Design, p. 136, example 6" },
    },
    {
      what: 'steel in steel, printed in inches',
      given: {
        diameter: '4 in',
        diametralInterference: '0.001 in',
        bossDiameter: '6 in',
        boss: { modulus: '30 Mpsi', poissonRatio: 0.3 },
        pin: { modulus: '30 Mpsi', poissonRatio: 0.3 },
      },
      gives: { pressure: '2.1 ksi' },
      source: { level: 'published', where: "Brown, Marks' Calculations for Machine Design, p. 136, example 6" },
    },
    {
      what: 'nylon ring on a rigid shaft: radial interference 0.32 mm gives 8.5 MPa',
      given: {
        diameter: '30 mm',
        diametralInterference: '0.64 mm',
        bossDiameter: '50 mm',
        boss: { modulus: '1 GPa', poissonRatio: 0.4 },
        pin: rigid,
      },
      gives: { pressure: '8.5 MPa', boreHoopStress: '18.0 MPa' },
      within: '1 %',
      source: { level: 'published', where: 'Crawford, Plastics Engineering 3rd ed., example 2.7 (interference printed to two digits)' },
    },
    {
      what: 'von Mises, Tresca, outside and hollow pin',
      given: {
        diameter: '4 mm',
        diametralInterference: '0.04 mm',
        bossDiameter: '12 mm',
        pinBore: '2 mm',
        boss: { modulus: '2 GPa', poissonRatio: 0.4 },
        pin: { modulus: '200 GPa', poissonRatio: 0.3 },
      },
      // Pressure 0.01 / (1.65/2000 + 1.366667/200000); hoop 1.25 p; outside 0.25 p; pin bore -2 p / (1 - 1/4).
      gives: {
        pressure: '12.0216 MPa',
        boreHoopStress: '15.0270 MPa',
        boreVonMises: '23.4730 MPa',
        boreTresca: '27.0486 MPa',
        outsideHoopStress: '3.00541 MPa',
        pinHoopStress: '-32.0577 MPa',
        outsideGrowth: '18.0325 um',
        pinShare: 0.00821479,
      },
      within: '0.002 %',
      source: lame,
    },
  ),
  ...published(bossWallStress, {
    what: 'a cylinder of outside 3, bore 1 times, at the mean radius',
    given: { pressure: '8 MPa', diameter: '10 mm', bossDiameter: '30 mm', radius: '10 mm' },
    // base = 8/(9 - 1) = 1 MPa; ratio (15/10)^2 = 2.25.
    gives: { hoopStress: '3.25000 MPa', radialStress: '-1.25000 MPa' },
    source: lame,
  }),
  ...published(effectiveBossDiameter, {
    given: { freeRadii: ['9 mm', '5.5 mm', '12 mm'] },
    gives: '11.0000 mm',
    source: { level: 'commonPractice', where: 'inscribed cylinder: twice the least distance' },
  }),
  ...published(pressFitGrip, {
    what: 'nylon ring, friction 0.25, 5 mm long',
    given: { pressure: '8.5 MPa', diameter: '30 mm', length: '5 mm', friction: 0.25 },
    gives: { axialForce: '1 kN', torque: '15 N m' },
    within: '0.2 %',
    source: { level: 'published', where: 'Crawford, Plastics Engineering 3rd ed., example 2.7 (pressure printed to two digits)' },
  }),
  ...published(pressFitHold, {
    what: '3-4-5: axial 3 kN and tangential 4 kN',
    given: { pressure: '10 MPa', diameter: '20 mm', length: '40 mm', friction: 0.4, axialForce: '3 kN', torque: '40 N m' },
    gives: { demand: '5.0000 kN', capacity: '10.053 kN', reserve: 2.0106, retention: 'frictionHolds' },
    source: { level: 'arithmetic', where: 'resultant of axial and tangential force against friction' },
  }),
  ...published(spinningInsertion, {
    what: '3-4-5 of feed and surface speed',
    given: { straightForce: '500 N', diameter: '4 mm', feed: '30 mm/s', spin: '20 rad/s' },
    gives: { axialForce: '300 N', torque: '0.8 N m' },
    within: '0.0001 %',
    source: { level: 'arithmetic', where: 'friction against the resultant velocity: 500 × 3/5, and 500 × 4/5 × 2 mm' },
  }),
  ...published(allowableInterference, {
    what: 'rigid pin, boss of twice the bore: δ = dσ/E (1 + ν/k), k = 5/3',
    given: {
      diameter: '10 mm',
      bossDiameter: '20 mm',
      boss: { modulus: '2 GPa', poissonRatio: 0.4 },
      pin: rigid,
      allowableInLayers: '20 MPa',
      allowableAcrossLayers: '10 MPa',
      boreAxis: 'acrossLayers',
      criterion: 'hoop',
    },
    gives: { diametralInterference: '0.124 mm', pressure: '12 MPa', governedBy: 'inLayers' },
    within: '0.001 %',
    source: { level: 'published', where: 'Engineering Plastics Handbook, press fits (allowable interference of a hub on a rigid shaft)' },
  }),
  ...published(
    interferenceChange,
    {
      what: 'steel ring of 19 mm in a polymer bore, 30 K warmer, loses 33 um',
      given: {
        diametralInterference: '0 mm',
        diameter: '19 mm',
        bossExpansion: '70 ppm/K',
        pinExpansion: '12 ppm/K',
        temperatureChange: '30 K',
      },
      gives: { diametralInterference: '-33.06 um', state: 'loose' },
      within: '0.001 um',
      source: { level: 'arithmetic', where: '19 mm × 58 ppm/K × 30 K' },
    },
    {
      what: 'nylon ring heated by 214 K slips off',
      given: {
        diametralInterference: '0.642 mm',
        diameter: '30 mm',
        bossExpansion: '100 ppm/K',
        pinExpansion: '0 ppm/K',
        temperatureChange: '214 K',
      },
      gives: { diametralInterference: '0 mm', state: 'loose' },
      within: '0.0001 um',
      source: { level: 'published', where: 'Crawford, Plastics Engineering 3rd ed., example 2.7' },
    },
  ),
  ...published(releaseTemperature, {
    what: 'nylon ring, 0.32 mm radial on 15 mm',
    given: { diametralInterference: '0.642 mm', diameter: '30 mm', bossExpansion: '100 ppm/K', pinExpansion: '0 ppm/K' },
    gives: { temperatureChange: '214 K', releases: 'onHeating' },
    source: { level: 'published', where: 'Crawford, Plastics Engineering 3rd ed., example 2.7 (radial interference 0.321 mm)' },
  }),
  ...published(surfaceSmoothing, {
    given: { boreRoughness: '6.3 um', pinRoughness: '3.7 um' },
    gives: '8 um',
    within: '0.0001 um',
    source: { level: 'unverified', where: 'DIN 7190-1:2017: 0.8 × (6.3 + 3.7) µm' },
  }),
  ...published(fitProbability, {
    what: 'm6 pin in an H7 hole of 4 mm, tolerances taken as six standard deviations',
    given: {
      pinDiameter: '4.008 mm',
      pinScatter: '1.3333333 um',
      holeDiameter: '4.006 mm',
      holeScatter: '2 um',
      allowableInterference: '8 um',
    },
    // Mean 2, sd 2.40370 µm: Φ(-0.832050) and Φ(-2.496151).
    gives: { mean: '2 um', scatter: '2.40370 um', looseProbability: 0.20269, splitProbability: 0.0062775, goodProbability: 0.791033 },
    within: '0.002 %',
    source: { level: 'referenceLibrary', where: 'scipy 1.17 stats.norm.cdf' },
  }),
  ...published(holeCoupon, {
    what: 'five holes drawn 4.10 mm',
    given: { diameters: ['3.98 mm', '4.02 mm', '4.00 mm', '3.96 mm', '4.04 mm'], drawn: '4.10 mm' },
    // t(0.975, 4) = 2.776445, chi2(0.05, 4) = 0.710723.
    gives: { mean: '4 mm', undersize: '0.1 mm', scatter: '31.6228 um', meanUncertainty: '39.2649 um', scatterUpperLimit: '75.0205 um' },
    within: '0.001 %',
    source: { level: 'referenceLibrary', where: 'scipy 1.17 stats.t.ppf, stats.chi2.ppf' },
  }),
  ...decay.flatMap(({ c, n, r, hours, volterra }) =>
    publishedValue(
      'fasteners.pressFitOverTime',
      `boss creeps ${c} t^${n}, pin gives ${r} of the boss, ${hours} h`,
      () =>
        pressFitOverTime({
          pressure: '1 MPa',
          pinShare: r / (1 + r),
          creep: (time) => 1 + c * time.in('h') ** n,
          times: [[hours, 'h']],
        }).pressures[0]!,
      `${volterra} MPa`,
      { level: 'referenceLibrary', where: 'product-trapezoidal Volterra solver, numpy (tests/oracles/fasteners-clamp.py)' },
      '0.01 %',
    ),
  ),
]
