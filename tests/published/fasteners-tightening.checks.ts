import {
  looseningTorque,
  metricThread,
  nutFactor,
  preloadAtUtilisation,
  preloadBand,
  preloadFromTorque,
  threadGeometry,
  tighteningTorque,
  torqueFromNutFactor,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import { type Check, published } from './harness.js'

const book = (where: string): Source => ({ level: 'published', where })
const unverified = (where: string): Source => ({ level: 'unverified', where })
const hand = (where: string): Source => ({ level: 'arithmetic', where })
const M = (size: Parameters<typeof metricThread>[0]) => metricThread(size)
const stress = (mpa: number) => [mpa, 'MPa'] as const

/** ISO 68-1 relations evaluated by hand: pitch, minor and root diameter in mm, stress and root area in mm². */
const THREADS: readonly (readonly [diameter: number, pitch: number, d2: string, d1: string, d3: string, stress: string, root: string])[] = [
  [1.6, 0.35, '1.3727', '1.2211', '1.1706', '1.2700', '1.0762'],
  [2, 0.4, '1.7402', '1.5670', '1.5093', '2.0732', '1.7890'],
  [2.5, 0.45, '2.2077', '2.0129', '1.9479', '3.3908', '2.9801'],
  [3, 0.5, '2.6752', '2.4587', '2.3866', '5.0308', '4.4734'],
  [4, 0.7, '3.5453', '3.2422', '3.1412', '8.7787', '7.7496'],
  [5, 0.8, '4.4804', '4.1340', '4.0185', '14.1825', '12.6829'],
  [6, 1, '5.3505', '4.9175', '4.7731', '20.1234', '17.8936'],
  [8, 1.25, '7.1881', '6.6468', '6.4664', '36.6085', '32.8410'],
  [10, 1.5, '9.0257', '8.3762', '8.1597', '57.9896', '52.2923'],
  [12, 1.75, '10.8633', '10.1056', '9.8530', '84.2665', '76.2474'],
]

/** Socket head screws of class 8.8, friction 0.12, utilisation 0.9: preload in N and tightening torque in N m by hand, preload in kN as tables print it. */
const TIGHTENED = [
  ['M3', '2545.6', '1.3245', 5.07, 3.4, undefined],
  ['M4', '4421.4', '3.0492', 6.53, 4.5, '4.4'],
  ['M5', '7202.3', '6.0912', 8.03, 5.5, '7.2'],
  ['M6', '10182.3', '10.302', 9.38, 6.6, '10.2'],
  ['M8', '18628.1', '24.965', 12.33, 9, '18.6'],
  ['M10', '29604.4', '49.087', 15.33, 11, '29.6'],
  ['M12', '43111.3', '84.411', 17.23, 13.5, undefined],
] as const

export const checks: Check[] = [
  ...THREADS.flatMap(([d, p, d2, d1, d3, As, A3]) =>
    published(threadGeometry, {
      what: `M${d}`,
      given: { diameter: [d, 'mm'], pitch: [p, 'mm'] },
      gives: { pitchDiameter: `${Number(d2)} mm`, minorDiameter: `${Number(d1)} mm`, rootDiameter: `${Number(d3)} mm` },
      within: '0.00006 mm',
      source: hand('ISO 68-1 and ISO 724 relations, by hand'),
    }).concat(
      published(threadGeometry, {
        what: `M${d}`,
        given: { diameter: [d, 'mm'], pitch: [p, 'mm'] },
        gives: { stressArea: `${Number(As)} mm^2`, rootArea: `${Number(A3)} mm^2` },
        within: '0.0002 mm^2',
        source: hand('ISO 898-1 stress area and root area, by hand'),
      }),
    ),
  ),
  ...TIGHTENED.flatMap(([size, preload, torque, bearing, hole, tabled]) => [
    ...published(preloadAtUtilisation, {
      what: `${size} 8.8, friction 0.12`,
      given: { thread: M(size), yieldStrength: stress(640), threadFriction: 0.12 },
      gives: `${preload} N` as '1 N',
      source: hand('VDI 2230 (unverified): 0.9 × 640 A_s/√(1 + 3 (1.5 d2/d_s (P/(π d2) + 0.12/cos 30°))²)'),
    }),
    ...(tabled === undefined
      ? []
      : published(preloadAtUtilisation, {
          what: `${size} 8.8, friction 0.12, as the table prints it`,
          given: { thread: M(size), yieldStrength: stress(640), threadFriction: 0.12 },
          gives: `${tabled} kN` as '1 kN',
          source: unverified('VDI 2230-1 table A1, assembly preloads'),
        })),
    ...published(tighteningTorque, {
      what: `${size} 8.8 socket head, against the short formula of bolt practice`,
      given: {
        preload: `${preload} N` as '1 N',
        thread: M(size),
        threadFriction: 0.12,
        headFriction: 0.12,
        bearingDiameter: [bearing, 'mm'],
        holeDiameter: [hole, 'mm'],
      },
      gives: { torque: `${torque} N m` as '1 N m' },
      // The short formula linearises the thread's small angles.
      within: '0.3 %',
      source: unverified('VDI 2230-1, 0.16 P + 0.58 d2 mu + Dkm/2 mu, evaluated by hand'),
    }),
  ]),
  ...published(tighteningTorque, {
    what: 'M6 at 10182 N, friction 0.12',
    given: {
      preload: '10182 N',
      thread: M('M6'),
      threadFriction: 0.12,
      headFriction: 0.12,
      bearingDiameter: '9.38 mm',
      holeDiameter: '6.6 mm',
    },
    gives: { torque: '10.321 N m', threadTorque: '5.4397 N m', headTorque: '4.8813 N m', nutTorque: '5.4397 N m', nutFactor: '0.16894 1' },
    source: hand('10182 N · (2.67525 · 0.199701 + 3.995 · 0.12) mm: exact screw equation, by hand'),
  }),
  ...published(preloadFromTorque, {
    what: 'M6, the way back',
    given: {
      torque: '10.321 N m',
      thread: M('M6'),
      threadFriction: 0.12,
      headFriction: 0.12,
      bearingDiameter: '9.38 mm',
      holeDiameter: '6.6 mm',
    },
    gives: { preload: '10182 N', state: 'tightened' },
    within: '0.01 %',
    source: hand('exact screw equation, by hand; the torque is rounded to five digits'),
  }),
  ...published(nutFactor, {
    what: '3/4-16 UNF, f = 0.15',
    given: { diameter: '0.75 in', meanDiameter: '0.7094 in', lead: '0.0625 in', threadFriction: 0.15, headFriction: 0.15 },
    gives: '0.1894 1',
    source: book("Shigley's Mechanical Engineering Design, 9th ed., eq. 8-26 and example 8-3 (answer computed from it)"),
  }),
  ...published(torqueFromNutFactor, {
    what: '3/4-16, 25 kip, K = 0.2',
    given: { nutFactor: 0.2, preload: '25 kip', diameter: '0.75 in' },
    gives: '3750 lbf in',
    source: book("Shigley's Mechanical Engineering Design, 9th ed., example 8-3"),
  }),
  ...published(looseningTorque, {
    what: 'M6 at 10 kN, friction 0.12',
    given: {
      preload: '10 kN',
      pitch: '1 mm',
      pitchDiameter: '5.3505 mm',
      threadFriction: 0.12,
      headFriction: 0.12,
      bearingDiameter: '9.38 mm',
      holeDiameter: '6.6 mm',
    },
    gives: { torque: '6.8921 N m', state: 'selfHolding' },
    source: hand('d2/2 tan(rho - phi) + Dkm/2 mu: 10⁴·(2.67525·0.078427 + 3.995·0.12) N mm, by hand'),
  }),
  ...published(preloadBand, {
    what: 'M6, 10 N m, friction 0.12 sure and a perfect wrench',
    given: {
      torque: '10.321 N m',
      thread: M('M6'),
      lowestFriction: 0.12,
      highestFriction: 0.12,
      wrenchError: 0,
      bearingDiameter: '9.38 mm',
      holeDiameter: '6.6 mm',
    },
    gives: { lowest: '10182 N', highest: '10182 N', tighteningFactor: '1 1' },
    within: '0.01 %',
    source: hand('exact screw equation, by hand; the torque is rounded to five digits'),
  }),
  ...published(preloadBand, {
    what: 'M6, 10 N m ± 5 %, friction 0.10 to 0.16',
    given: {
      torque: '10 N m',
      thread: M('M6'),
      lowestFriction: 0.1,
      highestFriction: 0.16,
      wrenchError: 0.05,
      bearingDiameter: '9.38 mm',
      holeDiameter: '6.6 mm',
    },
    // Arms 0.87080 and 1.29987 mm.
    gives: { lowest: '7308.4 N', highest: '12057.8 N', tighteningFactor: '1.6499 1' },
    source: hand('exact screw equation at both ends: 0.95 × 10/arm, 1.05 × 10/arm'),
  }),
  ...published(tighteningTorque, {
    what: 'the same with a lock nut of 0.5 N m: on the wrench and in the pocket, not in the preload',
    given: {
      preload: '10182 N',
      thread: M('M6'),
      threadFriction: 0.12,
      headFriction: 0.12,
      bearingDiameter: '9.38 mm',
      holeDiameter: '6.6 mm',
      prevailingTorque: '0.5 N m',
    },
    gives: { torque: '10.821 N m', threadTorque: '5.4397 N m', nutTorque: '5.9397 N m', nutFactor: '0.16894 1' },
    source: hand('prevailing torque added'),
  }),
  ...published(preloadFromTorque, {
    what: 'a lock nut takes all of a small torque',
    given: {
      torque: '0.4 N m',
      thread: M('M6'),
      threadFriction: 0.12,
      headFriction: 0.12,
      bearingDiameter: '9.38 mm',
      holeDiameter: '6.6 mm',
      prevailingTorque: '0.5 N m',
    },
    gives: { preload: '0.000 N', state: 'prevailingTorqueNotOvercome' },
    source: hand('nothing is left'),
  }),
  ...published(threadGeometry, {
    what: 'M6 lead angle',
    given: { diameter: '6 mm', pitch: '1 mm' },
    gives: { leadAngle: '3.4046 deg' },
    source: hand('atan(1/(π × 5.3505))'),
  }),
]
