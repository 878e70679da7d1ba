import { formula } from '../formula/index.js'

/** Pressure of a pin or a bearing's ring in a seat that bears a force and a moment that tilts it: at the two ends of the seat. */
export const tiltedSeat = /* @__PURE__ */ formula('fasteners.tiltedSeat', {
  title: 'pressure in a seat under force and moment',
  inputs: {
    /** Force across the axis, in the middle of the seat. */
    force: { kind: 'force', min: 0 },
    /** Moment that tilts pin or ring in the plane of the force. */
    moment: { kind: 'torque', min: 0 },
    /** Diameter of the seat. */
    diameter: { kind: 'length', above: 0 },
    /** Length of the seat along the axis. */
    length: { kind: 'length', above: 0 },
  },
  output: {
    /** Force over the projected area. */
    averagePressure: 'stress',
    /** Projected pressure at the harder end. */
    peakPressure: 'stress',
    /** Projected pressure at the other end; negative where it presses on the opposite side. */
    endPressure: 'stress',
  },
  equation: [
    'averagePressure = force / (diameter * length)',
    'peakPressure = averagePressure + 6 * moment / (diameter * length^2)',
    'endPressure = averagePressure - 6 * moment / (diameter * length^2)',
  ],
  assumes: ['rigid pin or ring', 'the seat reacts in proportion to displacement, on both sides (press fit or bonded)'],
  source: [
    { level: 'published', where: 'any strength-of-materials text: eccentric force on a rectangle, F/A (1 ± 6 e/b)' },
    { level: 'computed', where: 'rigid limit of a pin on an elastic foundation, as fasteners.embeddedPin' },
  ],
  si: ({ force, moment, diameter, length }) => {
    const averagePressure = force / (diameter * length)
    const tilting = (6 * moment) / (diameter * length * length)
    return { averagePressure, peakPressure: averagePressure + tilting, endPressure: averagePressure - tilting }
  },
})
