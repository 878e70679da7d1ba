import { formula } from '../formula/index.js'

/**
 * Field in the plane of an angle sensor over the end of a magnet that is magnetised across its diameter, and the two numbers by which misplaced sensors err.
 *
 * For discs about as long as their radius a closer magnet errs less, as long as the sensor takes its field. Farther out the error falls again, but so does
 * the field, and stray fields and noise count for more.
 */
export const shaftMagnetField = /* @__PURE__ */ formula('kinematics.shaftMagnetField', {
  inputs: {
    /** Remanence at the magnet’s temperature. */
    remanence: { kind: 'magneticFluxDensity', above: 0 },
    /** Radius of the magnet. */
    radius: { kind: 'length', above: 0 },
    /** Length of the magnet along the shaft. */
    length: { kind: 'length', above: 0 },
    /** Gap from the face of the magnet to the sensing element, inside its package. */
    gap: { kind: 'length', min: 0 },
  },
  output: {
    /** Field in the plane of the sensor, on the axis. */
    field: 'magneticFluxDensity',
    /** Second derivative of the field along the axis over eight times the field: the error of an offset. */
    curvature: 'inverseArea',
    /** Derivative of the field along the axis over twice the field, negative: the error of an offset with a lean. */
    slope: 'curvature',
  },
  equation: [
    'far = gap + length',
    'difference = gap / sqrt(radius^2 + gap^2) - far / sqrt(radius^2 + far^2)',
    'first = radius^2 / (radius^2 + gap^2)^(3/2) - radius^2 / (radius^2 + far^2)^(3/2)',
    'second = 3 * radius^2 * far / (radius^2 + far^2)^(5/2) - 3 * radius^2 * gap / (radius^2 + gap^2)^(5/2)',
    'field = abs(remanence / 4 * difference)',
    'curvature = second / (8 * difference)',
    'slope = first / (2 * difference)',
  ],
  assumes: ['uniform magnetisation across the diameter', 'no iron near the magnet: a steel shaft behind it changes the field'],
  source: [
    {
      level: 'unverified',
      where: 'A. Caciagli and others, J. Magn. Magn. Mater. 456 (2018) 423: field of a transversely magnetised cylinder',
    },
    { level: 'computed', where: 'field on the axis, differentiated along it' },
  ],
  si: ({ remanence, radius, length, gap }) => {
    const square = radius * radius
    const value = (u: number) => u / Math.sqrt(square + u * u)
    const slope = (u: number) => square / (square + u * u) ** 1.5
    const bend = (u: number) => (-3 * square * u) / (square + u * u) ** 2.5
    const far = gap + length
    const difference = value(gap) - value(far)
    return {
      field: Math.abs((remanence / 4) * difference),
      curvature: (bend(gap) - bend(far)) / (8 * difference),
      slope: (slope(gap) - slope(far)) / (2 * difference),
    }
  },
})

/** The same two numbers for a magnet so far away that its shape plays no part. At a gap of half a radius this overstates the curvature several times. */
export const dipoleMagnetField = /* @__PURE__ */ formula('kinematics.dipoleMagnetField', {
  inputs: {
    /** Distance from the middle of the magnet to the sensing element. */
    distance: { kind: 'length', above: 0 },
    /** Radius of the magnet, for the range of validity. */
    radius: { kind: 'length', above: 0 },
    /** Length of the magnet along the shaft, for the range of validity. */
    length: { kind: 'length', above: 0 },
  },
  output: {
    /** As of `shaftMagnetField`. */
    curvature: 'inverseArea',
    /** As of `shaftMagnetField`. */
    slope: 'curvature',
  },
  equation: ['curvature = 1.5 / distance^2', 'slope = -1.5 / distance'],
  valid: {
    'a gap above three radii: otherwise `shaftMagnetField`': ({ distance, radius, length }) => distance - length / 2 > 3 * radius,
  },
  source: [{ level: 'computed', where: 'field of a dipole across its axis, proportional to the inverse cube of the distance' }],
  si: ({ distance }) => ({ curvature: 1.5 / (distance * distance), slope: -1.5 / distance }),
})

/** Angle error of a sensor beside the axis of a far magnet, without approximation: its harmonics and its worst. */
export const dipoleOffsetError = /* @__PURE__ */ formula('kinematics.dipoleOffsetError', {
  inputs: {
    /** Distance of the sensor from the axis. */
    offset: { kind: 'length', min: 0 },
    /** Distance from the middle of the magnet to the plane of the sensor. */
    distance: { kind: 'length', above: 0 },
  },
  output: {
    /** Part that repeats twice per turn. */
    secondHarmonic: 'angle',
    /** Part that repeats four times per turn. */
    fourthHarmonic: 'angle',
    /** Largest error. */
    worstError: 'angle',
  },
  equation: [
    'k = 3 * offset^2 / (offset^2 + distance^2)',
    'q = k / (2 - k)',
    'secondHarmonic = q',
    'fourthHarmonic = q^2 / 2',
    'worstError = asin(q)',
  ],
  assumes: ['magnet on its axis and square to it, as a dipole'],
  requires: {
    offset: {
      accepts: 'must be below 0.7 of the distance (over √2): beyond, the field turns the other way',
      holds: (x) => 2 * x.offset ** 2 < x.distance ** 2,
    },
  },
  source: [{ level: 'computed', where: 'field of a dipole beside its axis; series of the angle' }],
  si: ({ offset, distance }) => {
    const k = (3 * offset * offset) / (offset * offset + distance * distance)
    const q = k / (2 - k)
    return { secondHarmonic: q, fourthHarmonic: (q * q) / 2, worstError: Math.asin(q) }
  },
})
