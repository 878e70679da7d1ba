import { formula } from '../formula/index.js'

/** The two numbers of the magnet, as inputs. */
const MAGNET = {
  /** Second derivative of the field over eight times the field (`shaftMagnetField`). */
  curvature: 'inverseArea',
  /** Derivative of the field over twice the field (`shaftMagnetField`). */
  slope: 'curvature',
} as const

const PLACE = { kind: 'length', default: '0 mm' } as const
const LEAN = { kind: 'angle', default: '0 rad' } as const

/**
 * Error of an angle sensor over the end of a shaft magnet, from where sensor and magnet sit and how they lean: the parts once and twice per turn.
 *
 * A magnet off centre or leaning makes no error by itself, because it turns with the shaft; it needs a sensor that is off as well. A sensor off centre
 * makes an error twice per turn only. The product of offset and lean is usually the largest part, and only its sign decides whether it cancels or adds.
 * The sensor's offset and lean are fixed in space, those of the magnet turn with it, with the magnetisation along their first axis.
 */
export const shaftMagnetError = /* @__PURE__ */ formula('kinematics.shaftMagnetError', {
  inputs: {
    ...MAGNET,
    /** Offset of the sensor, first axis. */
    sensorX: PLACE,
    /** Offset of the sensor, second axis. */
    sensorY: PLACE,
    /** Lean of the sensor’s normal towards the first axis. */
    sensorLeanX: LEAN,
    /** Lean of the sensor’s normal towards the second axis. */
    sensorLeanY: LEAN,
    /** Offset of the magnet’s axis in the plane of the sensor, along the magnetisation. */
    magnetX: PLACE,
    /** Offset of the magnet’s axis, across the magnetisation. */
    magnetY: PLACE,
    /** Lean of the magnet’s axis along the magnetisation. */
    magnetLeanX: LEAN,
    /** Lean of the magnet’s axis across the magnetisation. */
    magnetLeanY: LEAN,
  },
  output: {
    /** Part that repeats once per turn. */
    firstHarmonic: 'angle',
    /** Part that repeats twice per turn. */
    secondHarmonic: 'angle',
  },
  equation: [
    'firstReal = 2 * curvature * (sensorX * magnetX - sensorY * magnetY) - 2 * slope * sensorY * magnetLeanY + 2 * slope * sensorLeanX * magnetX + sensorLeanX * magnetLeanX',
    'firstImaginary = -2 * curvature * (sensorX * magnetY + sensorY * magnetX) - 2 * slope * sensorX * magnetLeanY - 2 * slope * sensorLeanY * magnetX - sensorLeanY * magnetLeanX',
    'secondReal = curvature * (sensorX^2 - sensorY^2) + slope * (sensorX * sensorLeanX - sensorY * sensorLeanY) + (sensorLeanX^2 - sensorLeanY^2) / 4',
    'secondImaginary = 2 * curvature * sensorX * sensorY + slope * (sensorX * sensorLeanY + sensorY * sensorLeanX) + sensorLeanX * sensorLeanY / 2',
    'firstHarmonic = sqrt(firstReal^2 + firstImaginary^2)',
    'secondHarmonic = sqrt(secondReal^2 + secondImaginary^2)',
  ],
  assumes: [
    'one point that senses both parts of the field; an array of sensors has other constants',
    'offsets and leans so small that their squares suffice',
    'magnetisation across the diameter, no iron near',
  ],
  source: [{ level: 'computed', where: 'field of the first circumferential harmonic, to second order in offsets and leans' }],
  si: (x) => {
    const { curvature: c, slope: b, sensorX, sensorY, sensorLeanX, sensorLeanY, magnetX, magnetY, magnetLeanX, magnetLeanY } = x
    return {
      firstHarmonic: Math.hypot(
        2 * c * (sensorX * magnetX - sensorY * magnetY) -
          2 * b * sensorY * magnetLeanY +
          2 * b * sensorLeanX * magnetX +
          sensorLeanX * magnetLeanX,
        2 * c * (sensorX * magnetY + sensorY * magnetX) +
          2 * b * sensorX * magnetLeanY +
          2 * b * sensorLeanY * magnetX +
          sensorLeanY * magnetLeanX,
      ),
      secondHarmonic: Math.hypot(
        c * (sensorX * sensorX - sensorY * sensorY) +
          b * (sensorX * sensorLeanX - sensorY * sensorLeanY) +
          (sensorLeanX * sensorLeanX - sensorLeanY * sensorLeanY) / 4,
        2 * c * sensorX * sensorY + b * (sensorX * sensorLeanY + sensorY * sensorLeanX) + (sensorLeanX * sensorLeanY) / 2,
      ),
    }
  },
})

/** Largest error of an angle sensor over a shaft magnet, for offsets and leans known in size only: every direction at its worst. */
export const shaftMagnetErrorBound = /* @__PURE__ */ formula('kinematics.shaftMagnetErrorBound', {
  inputs: {
    ...MAGNET,
    /** Offset of the sensor from the axis of rotation. */
    sensorOffset: { kind: 'length', min: 0 },
    /** Lean of the sensor’s normal. */
    sensorLean: { kind: 'angle', min: 0, default: '0 rad' },
    /** Offset of the magnet’s axis in the plane of the sensor. */
    magnetOffset: { kind: 'length', min: 0 },
    /** Lean of the magnet’s axis. */
    magnetLean: { kind: 'angle', min: 0, default: '0 rad' },
  },
  output: {
    /** Bound of the part that repeats once per turn. */
    firstHarmonic: 'angle',
    /** Bound of the part that repeats twice per turn. */
    secondHarmonic: 'angle',
  },
  equation: [
    'firstHarmonic = 2 * abs(curvature) * sensorOffset * magnetOffset + 2 * abs(slope) * (sensorOffset * magnetLean + sensorLean * magnetOffset) + sensorLean * magnetLean',
    'secondHarmonic = abs(curvature) * sensorOffset^2 + abs(slope) * sensorOffset * sensorLean + sensorLean^2 / 4',
  ],
  assumes: ['as `shaftMagnetError`'],
  source: [{ level: 'computed', where: 'sum of the sizes of the terms of `shaftMagnetError`' }],
  si: ({ curvature, slope, sensorOffset: s, sensorLean, magnetOffset: e, magnetLean }) => ({
    firstHarmonic: 2 * Math.abs(curvature) * s * e + 2 * Math.abs(slope) * (s * magnetLean + sensorLean * e) + sensorLean * magnetLean,
    secondHarmonic: Math.abs(curvature) * s * s + Math.abs(slope) * s * sensorLean + (sensorLean * sensorLean) / 4,
  }),
})

/** Error once per turn by a field that is fixed in space: a motor next to it, its cables, the earth. */
export const strayFieldError = /* @__PURE__ */ formula('kinematics.strayFieldError', {
  inputs: {
    /** Stray field in the plane of the sensor. */
    strayField: { kind: 'magneticFluxDensity', min: 0 },
    /** Field of the magnet in the plane of the sensor. */
    field: { kind: 'magneticFluxDensity', above: 0 },
  },
  output: {
    /** Part that repeats once per turn. */
    firstHarmonic: 'angle',
    /** Largest error. */
    worstError: 'angle',
  },
  equation: ['firstHarmonic = strayField / field', 'worstError = asin(strayField / field)'],
  assumes: ['one point that senses the field; an array cancels a uniform stray field'],
  requires: {
    strayField: { accepts: 'must be below the field of the magnet, or the reading does not turn', holds: (x) => x.strayField < x.field },
  },
  source: [{ level: 'computed', where: 'sum of a turning and a fixed vector' }],
  si: ({ strayField, field }) => ({ firstHarmonic: strayField / field, worstError: Math.asin(strayField / field) }),
})
