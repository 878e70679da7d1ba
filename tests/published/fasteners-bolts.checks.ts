import {
  boltGroupLoads,
  boltGroupShear,
  boltGroupTipping,
  drilledBolt,
  endCap,
  metricThread,
  powerScrew,
  prying,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import { type Check, published } from './harness.js'

const hand = (where: string): Source => ({ level: 'arithmetic', where })

const corner = (x: number, y: number) => ({ x: [x, 'mm'] as const, y: [y, 'mm'] as const, area: '144 mm^2' as const })

export const checks: Check[] = [
  ...published(boltGroupShear, {
    what: 'overhung bar, 16 kN at 425 mm, four bolts at 60 and 75 mm',
    given: {
      bolts: [corner(75, 60), corner(75, -60), corner(-75, -60), corner(-75, 60)],
      forceX: '0 kN',
      forceY: '-16 kN',
      atX: '425 mm',
      atY: '0 mm',
    },
    gives: { sizes: ['21.0 kN', '21.0 kN', '14.8 kN', '14.8 kN'], largest: '21.0 kN', centreMoment: '-6800 N m' },
    source: { level: 'published', where: 'Shigley 9th ed., example 8-7' },
  }),
  ...published(boltGroupShear, {
    what: 'the same bar: 4 kN down each, 6800 N m over Σr² 36 900 mm²',
    given: {
      bolts: [corner(75, 60), corner(75, -60), corner(-75, -60), corner(-75, 60)],
      forceX: '0 kN',
      forceY: '-16 kN',
      atX: '425 mm',
      atY: '0 mm',
    },
    // 184.2818 N/mm × 60 and 75 mm.
    gives: {
      alongX: ['11056.9 N', '-11056.9 N', '-11056.9 N', '11056.9 N'],
      alongY: ['-17821.1 N', '-17821.1 N', '9821.1 N', '9821.1 N'],
    },
    source: hand('Shigley 9th ed., eq. 8-57, by components'),
  }),
  ...published(boltGroupLoads, {
    what: 'four bolts at ±20 and ±30 mm, 100 N sideways and 240 N off, 60 mm above the face and 10 mm beside the middle',
    given: {
      bolts: [corner(30, 20), corner(30, -20), corner(-30, -20), corner(-30, 20)],
      force: { x: '100 N', y: '0 N', z: '240 N' },
      at: { x: '0 mm', y: '10 mm', z: '60 mm' },
      moment: {},
    },
    // Each 60 N off; 2400 N mm about x over 4 × 20 mm: 30 N with y; 6000 N mm about y over 4 × 30 mm: 50 N against x.
    // Sideways 25 N each, and −1000 N mm over Σr² 5200 mm²: 3.846 N along x with y, 5.769 N along y against x.
    gives: {
      tensions: ['40 N', '-20 N', '80 N', '140 N'],
      largestTension: '140 N',
      shears: ['29.417 N', '21.926 N', '21.926 N', '29.417 N'],
      largestShear: '29.417 N',
    },
    within: '0.001 N',
    source: hand('share of each load by hand'),
  }),
  ...published(boltGroupLoads, {
    what: 'three bolts in an L, 60 N m about x: skew bending',
    given: {
      bolts: [corner(0, 0), corner(30, 0), corner(0, 60)],
      force: { x: '0 N', y: '0 N', z: '0 N' },
      at: { x: '0 mm', y: '0 mm', z: '0 mm' },
      moment: { x: '60 N m' },
    },
    // Only the third has an arm about the line of the other two; the first answers it.
    gives: { tensions: ['-1000 N', '0 N', '1000 N'], largestTension: '1000 N' },
    within: '0.000001 N',
    source: hand('three bolts are statically determinate'),
  }),
  ...published(boltGroupTipping, {
    what: 'three bolts at 20, 40 and 60 mm',
    given: { distances: ['20 mm', '40 mm', '60 mm'], moment: '56 N m', tension: '300 N' },
    // Σy² = 5600 mm²: 200, 400, 600 N and 100 N each.
    gives: { tensions: ['300 N', '500 N', '700 N'], largest: '700 N' },
    within: '0.0001 %',
    source: hand('M y / Σy²'),
  }),
  ...published(prying, {
    given: { load: '200 N', loadToBolt: '10 mm', boltToToe: '8 mm', width: '20 mm', thickness: '5 mm', holeDiameter: '4 mm' },
    gives: { boltTension: '450 N', toeForce: '250 N', flangeStress: '30 MPa' },
    within: '0.0001 %',
    source: hand('P (a + b)/a; 6 × 200 × 10/(16 × 25)'),
  }),
  ...published(powerScrew, {
    what: 'square thread 32 mm, two starts',
    given: {
      force: '6.4 kN',
      meanDiameter: '30 mm',
      lead: '8 mm',
      halfThreadAngle: '0 deg',
      threadFriction: 0.08,
      collarFriction: 0.08,
      collarDiameter: '40 mm',
    },
    // The book prints 26.18 N m, -0.466 + 10.24 = 9.77 N m and 0.311.
    gives: {
      raisingTorque: '26.18 N m',
      threadTorque: '15.94 N m',
      collarTorque: '10.24 N m',
      loweringTorque: '9.77 N m',
      efficiency: 0.311,
      state: 'selfLocking',
    },
    source: { level: 'unverified', where: 'Shigley 9th ed., example 8-1' },
  }),
  ...published(drilledBolt, {
    what: 'M4 in M8',
    given: {
      outer: metricThread('M8'),
      inner: metricThread('M4'),
      outerYieldStrength: '640 MPa',
      innerYieldStrength: '640 MPa',
      tension: '4 kN',
      torque: '0 N m',
    },
    gives: {
      wall: '1.2332 mm',
      rootArea: '20.275 mm^2',
      stressArea: '24.042 mm^2',
      areaLeft: 0.6567,
      torsionLeft: 0.8536,
      yieldLoad: '12976 N',
      wallRule: 'met',
    },
    source: hand('A(d3) − π 16/4, A_s − π 16/4, 1 − (4/6.4664)⁴'),
  }),
  ...published(drilledBolt, {
    what: 'M4 in M8, tension and torque',
    given: {
      outer: metricThread('M8'),
      inner: metricThread('M4'),
      outerYieldStrength: '640 MPa',
      innerYieldStrength: '640 MPa',
      tension: '4 kN',
      torque: '4 N m',
    },
    // 4000/20.2747 = 197.29; 4000/45.318 × √3 = 152.88; root of squares.
    gives: { vonMises: '249.59 MPa', reserve: 2.5642, yieldTorque: '16.745 N m' },
    source: hand('von Mises of F/A and T/W, W = π (d3⁴ − D⁴)/(16 d3)'),
  }),
  ...published(
    drilledBolt,
    {
      what: 'M4 in M6: a wall of 0.387 mm is less than 1.5 pitches of 0.7 mm',
      given: {
        outer: metricThread('M6'),
        inner: metricThread('M4'),
        outerYieldStrength: '640 MPa',
        innerYieldStrength: '240 MPa',
        tension: '0 N',
        torque: '0 N m',
      },
      gives: { wall: '0.387 mm', yieldLoad: '3409 N', wallRule: 'tooThin' },
      source: hand('(4.7731 − 4)/2; (17.8936 − 12.5664) × 640, more than 1.25 × 8.7787 × 240'),
    },
    {
      what: 'M4 in M8 of soft steel: 4866 N do not make 1.25 times the 5618 N of the inner screw',
      given: {
        outer: metricThread('M8'),
        inner: metricThread('M4'),
        outerYieldStrength: '240 MPa',
        innerYieldStrength: '640 MPa',
        tension: '0 N',
        torque: '0 N m',
      },
      gives: { yieldLoad: '4866 N', wallRule: 'tooThin' },
      source: hand('20.2747 × 240 against 8.7787 × 640'),
    },
  ),
  ...published(endCap, {
    given: {
      thrust: '100 N',
      axleDiameter: '6 mm',
      capDiameter: '12 mm',
      capThickness: '2 mm',
      linkBore: '8 mm',
      linkWidth: '9.9 mm',
      axleLength: '10 mm',
    },
    // Arm 5 − 3 = 2 mm; around 18.8496 mm.
    gives: { play: '0.10000 mm', pressure: '1.59155 MPa', bendingStress: '15.9155 MPa', shearStress: '2.65258 MPa', state: 'turnsFreely' },
    source: hand('cantilever strip and ring areas'),
  }),
]
