import { boltStrength, metricThread, propertyClass, threadLimits } from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import { type Check, published, publishedValue } from './harness.js'

const NAMES = ['M1.6', 'M2', 'M2.5', 'M3', 'M4', 'M5', 'M6', 'M8', 'M10', 'M12'] as const

/** Stress areas as ISO 898-1 prints them, mm². */
const STRESS_AREAS: readonly (readonly [(typeof NAMES)[number], string])[] = [
  ['M3', '5.03'],
  ['M4', '8.78'],
  ['M5', '14.2'],
  ['M6', '20.1'],
  ['M8', '36.6'],
  ['M10', '58.0'],
  ['M12', '84.3'],
]

/** Proof and breaking loads of ISO 898-1 in N: proof of 8.8, 10.9, 12.9, breaking of 8.8 and 12.9. */
const LOADS: readonly (readonly [(typeof NAMES)[number], number, number, number, number, number])[] = [
  ['M3', 2920, 4180, 4880, 4020, 6140],
  ['M4', 5100, 7290, 8520, 7020, 10700],
  ['M5', 8230, 11800, 13800, 11350, 17300],
  ['M6', 11600, 16700, 19500, 16100, 24500],
  ['M8', 21200, 30400, 35500, 29200, 44600],
  ['M10', 33700, 48100, 56300, 46400, 70800],
  ['M12', 48900, 70000, 81800, 67400, 103000],
]

/** ISO 965-2 limits in mm: screw major largest and smallest, pitch largest and smallest (6g); nut pitch largest, minor largest (6H). */
const LIMITS: readonly (readonly [(typeof NAMES)[number], string, string, string, string, string, string])[] = [
  ['M1.6', '1.581', '1.496', '1.354', '1.291', '1.458', '1.321'],
  ['M2', '1.981', '1.886', '1.721', '1.654', '1.830', '1.679'],
  ['M2.5', '2.480', '2.380', '2.188', '2.117', '2.303', '2.138'],
  ['M3', '2.980', '2.874', '2.655', '2.580', '2.775', '2.599'],
  ['M4', '3.978', '3.838', '3.523', '3.433', '3.663', '3.422'],
  ['M5', '4.976', '4.826', '4.456', '4.361', '4.605', '4.334'],
  ['M6', '5.974', '5.794', '5.324', '5.212', '5.500', '5.153'],
  ['M8', '7.972', '7.760', '7.160', '7.042', '7.348', '6.912'],
  ['M10', '9.968', '9.732', '8.994', '8.862', '9.206', '8.676'],
  ['M12', '11.966', '11.701', '10.829', '10.679', '11.063', '10.441'],
]

const loadSource: Source = { level: 'standard', where: 'ISO 898-1:2013 tables of proof and breaking loads (two reproductions)' }

export const checks: Check[] = [
  ...STRESS_AREAS.map(([name, area]) =>
    publishedValue('fasteners.metricThread', `stress area of ${name}`, () => metricThread(name).stressArea, `${area} mm^2`, loadSource),
  ),
  ...LIMITS.flatMap(([name, major, majorLow, pitch, pitchLow, nutPitch, nutMinor]) =>
    published(threadLimits, {
      what: name,
      given: { thread: metricThread(name) },
      gives: {
        screwMajorLargest: `${major} mm` as '1 mm',
        screwMajorSmallest: `${majorLow} mm` as '1 mm',
        screwPitchLargest: `${pitch} mm` as '1 mm',
        screwPitchSmallest: `${pitchLow} mm` as '1 mm',
        nutPitchLargest: `${nutPitch} mm` as '1 mm',
        nutMinorLargest: `${nutMinor} mm` as '1 mm',
      },
      // Both the basic size and the limit are rounded to whole µm in the standard.
      within: '1 um',
      source: ['M3', 'M4', 'M5'].includes(name)
        ? { level: 'standard', where: 'ASME B1.13M / ISO 965-2 limits (read in a reproduction)' }
        : { level: 'unverified', where: 'ISO 965-2:1998 limits of sizes, 6g and 6H' },
    }),
  ),
  ...LOADS.flatMap(([name, proof88, proof109, proof129, breaking88, breaking129]) => {
    const load = (grade: '8.8' | '10.9' | '12.9', which: 'proofLoad' | 'breakingLoad', newtons: number) =>
      publishedValue(
        'fasteners.boltStrength',
        `${name} ${grade} ${which}`,
        () => boltStrength({ thread: metricThread(name), bolt: propertyClass(grade) })[which],
        `${newtons} N`,
        loadSource,
        // The standard prints three digits and cuts or rounds the fourth: one unit of the third.
        `${10 ** (Math.floor(Math.log10(newtons)) - 2)} N`,
      )
    return [
      load('8.8', 'proofLoad', proof88),
      load('10.9', 'proofLoad', proof109),
      load('12.9', 'proofLoad', proof129),
      load('8.8', 'breakingLoad', breaking88),
      load('12.9', 'breakingLoad', breaking129),
    ]
  }),
  ...published(boltStrength, {
    what: 'M4 8.8 in shear, thread and shank',
    given: { thread: metricThread('M4'), bolt: propertyClass('8.8') },
    // 0.6 × 800 MPa × 7.7496 mm² and × π/4 × 16 mm².
    gives: { yieldLoad: '5618 N', threadShearLoad: '3720 N', shankShearLoad: '6032 N' },
    source: { level: 'commonPractice', where: 'shear strength 0.6 of tensile strength, areas by hand' },
    within: '0.01 %',
  }),
]
