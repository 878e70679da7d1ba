import type { Fields } from '../../schema/index.js'

/** The whole machine that the leg belongs to. */
export const robot = {
  /** Mass of the whole robot with its load. */
  mass: { kind: 'mass', min: '50 g', max: '500 kg', usual: ['0.3 kg', '80 kg'] },
  /** Number of legs. Default: 4. */
  legs: { integer: true, min: 2, max: 12, default: 4, because: 'four legs, the usual case', level: 'commonPractice' },
  /** Height of the hip axis above the ground when standing. */
  standHeight: { kind: 'length', min: '10 mm', max: '3 m', usual: ['40 mm', '1 m'] },
  /** Distance from front to rear hip. Default: 400 mm. */
  hipSpacing: {
    kind: 'length',
    min: '10 mm',
    max: '4 m',
    usual: ['40 mm', '1.5 m'],
    default: '400 mm',
    because: 'a body of ordinary proportions',
  },
  /** Distance from left to right sideways-hip axis. Default: 200 mm. */
  hipTrack: {
    kind: 'length',
    min: '10 mm',
    max: '3 m',
    usual: ['30 mm', '1 m'],
    default: '200 mm',
    because: 'a body of ordinary proportions',
  },
  /** Height of the centre of mass when standing. Default: the height of the hip. */
  centreOfMassHeight: { kind: 'length', min: '5 mm', max: '3 m', usual: ['30 mm', '1.2 m'], optional: true },
  /** Distance of the centre of mass forward of the middle between the hips. Default: 0 mm. */
  centreOfMassForward: { kind: 'length', min: '-5 m', max: '5 m', default: '0 mm', because: 'load in the middle of the body' },
  /** Distance of the centre of mass to the left of the middle. Default: 0 mm. */
  centreOfMassLeft: { kind: 'length', min: '-5 m', max: '5 m', default: '0 mm', because: 'load in the middle of the body' },
  /** Whether the hind legs are built as this one, or mirrored front to back. Default: alike. */
  hindLegs: { oneOf: ['alike', 'mirrored'], default: 'alike', because: 'all knees point the same way', level: 'commonPractice' },
} as const satisfies Fields
