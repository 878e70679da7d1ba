import { formula } from '../formula/index.js'
import { PITCH, THREAD_PROFILE } from './thread-inputs.js'

const COS_30 = Math.sqrt(3) / 2

/**
 * Diameters and areas of an ISO metric thread from its diameter and pitch.
 *
 * Two diameters are easily mixed up: the minor diameter of the basic profile (flat, the bore of a nut) and the root diameter
 * of the screw (rounded, the core of the bolt); their areas differ by about 6 %.
 */
export const threadGeometry = /* @__PURE__ */ formula('fasteners.threadGeometry', {
  inputs: {
    /** Nominal (major) diameter. */
    diameter: { kind: 'length', above: 0 },
    ...PITCH,
  },
  output: {
    /** Basic pitch diameter d2. */
    pitchDiameter: 'length',
    /** Basic minor diameter d1 (D1 of the nut), at the flat of the basic profile. */
    minorDiameter: 'length',
    /** Root diameter d3 of the screw, at the rounded root. */
    rootDiameter: 'length',
    /** Stress area: circle on the mean of pitch and root diameter. */
    stressArea: 'area',
    /** Area on the root diameter. */
    rootArea: 'area',
    /** Lead angle at the pitch diameter. */
    leadAngle: 'angle',
  },
  equation: [
    'height = sqrt(3) / 2 * pitch',
    'pitchDiameter = diameter - 3 / 4 * height',
    'minorDiameter = diameter - 5 / 4 * height',
    'rootDiameter = diameter - 17 / 12 * height',
    'stressArea = pi / 4 * ((pitchDiameter + rootDiameter) / 2)^2',
    'rootArea = pi / 4 * rootDiameter^2',
    'leadAngle = atan(pitch / (pi * pitchDiameter))',
  ],
  assumes: ['single start', '60 degree ISO profile'],
  source: [{ level: 'standard', where: 'ISO 68-1:1998 (profile), ISO 724:1993 (diameters), ISO 898-1:2013, 9.1.6.1 (stress area)' }],
  requires: { pitch: { accepts: 'must be less than 0.8 of the diameter', holds: ({ pitch, diameter }) => pitch < 0.8 * diameter } },
  si: ({ diameter, pitch }) => {
    const height = COS_30 * pitch
    const pitchDiameter = diameter - 0.75 * height
    const rootDiameter = diameter - (17 / 12) * height
    const stressDiameter = (pitchDiameter + rootDiameter) / 2
    return {
      pitchDiameter,
      minorDiameter: diameter - 1.25 * height,
      rootDiameter,
      stressArea: (Math.PI / 4) * stressDiameter * stressDiameter,
      rootArea: (Math.PI / 4) * rootDiameter * rootDiameter,
      leadAngle: Math.atan(pitch / (Math.PI * pitchDiameter)),
    }
  },
})

/** Limits of a 6g screw thread and of a 6H nut thread, from the basic sizes and the tolerances of their pitch. */
export const threadLimits = /* @__PURE__ */ formula('fasteners.threadLimits', {
  inputs: {
    /** Sizes of the thread, from `metricThread`. */
    thread: THREAD_PROFILE,
  },
  output: {
    /** Largest major diameter of the screw. */
    screwMajorLargest: 'length',
    /** Smallest major diameter of the screw. */
    screwMajorSmallest: 'length',
    /** Largest pitch diameter of the screw. */
    screwPitchLargest: 'length',
    /** Smallest pitch diameter of the screw. */
    screwPitchSmallest: 'length',
    /** Largest pitch diameter of the nut. */
    nutPitchLargest: 'length',
    /** Largest minor diameter of the nut. */
    nutMinorLargest: 'length',
  },
  equation: [
    'screwMajorLargest = thread.diameter - thread.allowance',
    'screwMajorSmallest = screwMajorLargest - thread.screwMajorTolerance',
    'screwPitchLargest = thread.pitchDiameter - thread.allowance',
    'screwPitchSmallest = screwPitchLargest - thread.screwPitchTolerance',
    'nutPitchLargest = thread.pitchDiameter + thread.nutPitchTolerance',
    'nutMinorLargest = thread.minorDiameter + thread.nutMinorTolerance',
  ],
  assumes: ['tolerance classes 6g and 6H, uncoated'],
  source: [{ level: 'standard', where: 'ISO 965-1:2013, clauses 5 to 13' }],
  si: ({ thread }) => ({
    screwMajorLargest: thread.diameter - thread.allowance,
    screwMajorSmallest: thread.diameter - thread.allowance - thread.screwMajorTolerance,
    screwPitchLargest: thread.pitchDiameter - thread.allowance,
    screwPitchSmallest: thread.pitchDiameter - thread.allowance - thread.screwPitchTolerance,
    nutPitchLargest: thread.pitchDiameter + thread.nutPitchTolerance,
    nutMinorLargest: thread.minorDiameter + thread.nutMinorTolerance,
  }),
})
