import { insertPullOut, metricThread, threadStrip } from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import { type Check, published } from './harness.js'

const hand = (where: string): Source => ({ level: 'arithmetic', where })

/** Sheared areas in mm² per mm of engagement: part and screw at basic sizes, part and screw at the worst limits, engagement of equal strength in mm. */
const STRIP: readonly (readonly ['M3' | 'M4' | 'M5' | 'M6' | 'M8', string, string, string, string, string])[] = [
  ['M3', '8.247', '5.793', '5.547', '3.903', '2.58'],
  ['M4', '10.996', '7.639', '7.769', '5.473', '3.21'],
  ['M5', '13.744', '9.740', '9.999', '7.073', '4.01'],
  ['M6', '16.493', '11.5865', '12.191', '8.646', '4.66'],
  ['M8', '21.991', '15.661', '16.829', '12.161', '6.02'],
]
const strengths = { partShearStrength: '20 MPa', screwShearStrength: '480 MPa', screwTensileStrength: '800 MPa' } as const

export const checks: Check[] = [
  ...STRIP.flatMap(([name, partBasic, screwBasic, partWorst, screwWorst, equal]) => {
    const engagement = [metricThread(name).diameter.in('mm') * 1.5, 'mm'] as const
    const given = { thread: metricThread(name), engagement, threadLength: engagement, ...strengths }
    const areas = (part: string, screw: string) => ({
      partAreaPerLength: `${part} mm` as '1 mm',
      screwAreaPerLength: `${screw} mm` as '1 mm',
    })
    return published(
      threadStrip,
      {
        what: `${name}, basic profile`,
        given: { ...given, limits: 'basic' },
        gives: areas(partBasic, screwBasic),
        source: hand('7/8 π d, and π D1/P (P/2 + (d2 − D1) tan 30°)'),
      },
      {
        what: `${name}, loosest 6g and 6H`,
        given,
        gives: { ...areas(partWorst, screwWorst), equalStrengthEngagement: `${equal} mm` as '1 mm' },
        // Published limits are whole µm: half of one in two diameters is 0.01 mm of area per length.
        within: '0.01 mm',
        source: { level: 'published', where: "FED-STD-H28/2B and Machinery's Handbook 24 on the limits of ISO 965-2" },
      },
    )
  }),
  ...published(threadStrip, {
    what: 'M8 thread printed in PA12: 3.41 kN over 16 mm at the worst limits',
    given: {
      thread: metricThread('M8'),
      engagement: '16 mm',
      threadLength: '16 mm',
      partShearStrength: '12.664 MPa',
      screwShearStrength: '480 MPa',
      screwTensileStrength: '800 MPa',
    },
    gives: { partStripForce: '3.41 kN', screwBreakForce: '29.29 kN', partEqualStrengthEngagement: '137.4 mm', governedBy: 'partThread' },
    source: {
      level: 'published',
      where:
        'Sliwka & Wojcik, Polymers 18 (2025) 112 (abstract): 3.41 kN, strength worked back from it; 36.6085 × 800/(16.829 × 12.664) by hand',
    },
  }),
  ...published(threadStrip, {
    what: 'M4, 24 mm engaged: 10 mm count',
    given: { thread: metricThread('M4'), engagement: '24 mm', threadLength: '30 mm', ...strengths, limits: 'basic' },
    gives: {
      usefulEngagement: '10.0000 mm',
      partStripForce: '2199.1 N',
      screwStripForce: '36.67 kN',
      screwBreakForce: '7.023 kN',
      partEqualStrengthEngagement: '31.94 mm',
      governedBy: 'partThread',
    },
    source: hand('10.9956 and 7.639 mm²/mm over 10 mm; 8.7787 × 800 N, over 10.9956 × 20'),
  }),
  ...published(insertPullOut, {
    what: 'knurl 5.6 mm, 8 mm long, half of 20 MPa',
    given: {
      knurlDiameter: '5.6 mm',
      length: '8 mm',
      shearStrength: '20 MPa',
      share: 0.5,
      calibrated: true,
      bossDiameter: '10.4 mm',
      bossStrength: '20 MPa',
      preload: '1 kN',
      jacksOut: true,
    },
    // π × 5.6 × 8 × 10 = 1407.43 N; × 2.8 mm; ring π/4 (108.16 − 31.36) × 20 = 1206.37 N.
    gives: {
      pullOut: '1407.43 N',
      turnOut: '3.94081 N m',
      bossTension: '1206.37 N',
      preloadUse: 0.828932,
      evidence: 'calibrated',
      state: 'holds',
    },
    source: hand('envelope of the knurl and ring of the boss'),
  }),
]
