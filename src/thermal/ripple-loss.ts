import { formula } from '../formula/index.js'
import { BACK_EMF } from './motor-inputs.js'

/**
 * Eddy-current loss that the switching of the controller causes in the iron, also at standstill.
 *
 * The ripple is the voltage between switch and mean: its mean square is exact for every pattern of a two-level bridge whose voltage between two lines takes one
 * sign in a period. The eddy currents of the ripple are assumed to follow the same law as those of rotation. Skin effect lowers them, so the loss is an upper
 * estimate.
 */
export const rippleIronLoss = /* @__PURE__ */ formula('thermal.rippleIronLoss', {
  inputs: {
    /** Voltage of the supply. */
    supplyVoltage: { kind: 'voltage', above: 0 },
    /** Peak of the phase voltage that the controller makes on average: resistance times current, and back-EMF. */
    phaseVoltage: { kind: 'voltage', min: 0 },
    ...BACK_EMF,
    /** Drag torque per speed, from two no-load points (`noLoadSplit`): the eddy currents of rotation. */
    viscousDrag: { kind: 'torsionalDamping', min: 0 },
    /** Whether the rotor turns, or stands at its worst electrical angle. */
    rotor: { oneOf: ['turning', 'still'] },
  },
  output: {
    /** Root mean square of the ripple of one phase. */
    rippleVoltage: 'voltage',
    /** Loss in the iron. */
    loss: 'power',
  },
  equation: [
    'lines = equalText(rotor, "turning") ? 6 * sqrt(3) / pi : 2 * sqrt(3)',
    'rippleVoltage = sqrt((supplyVoltage * lines * phaseVoltage - 4.5 * phaseVoltage^2) / 9)',
    'loss = 6 * rippleVoltage^2 * viscousDrag / backEmfConstant^2',
  ],
  assumes: [
    'the whole ripple drives flux through the iron, none through leakage',
    'laminations thin against the skin depth at the switching frequency',
    'the part of the drag that grows with speed is eddy currents, not grease',
  ],
  requires: {
    phaseVoltage: {
      accepts: 'must be at most the supply voltage over √3, the limit of the modulation',
      holds: ({ phaseVoltage, supplyVoltage }) => phaseVoltage <= (supplyVoltage / Math.sqrt(3)) * (1 + 1e-9),
    },
  },
  source: [
    {
      level: 'computed',
      where: 'mean square of the pulses between lines; a voltage that rotates makes the same eddy currents as one that pulses',
    },
  ],
  si: ({ supplyVoltage, phaseVoltage, backEmfConstant, viscousDrag, rotor }) => {
    // Sum of the sizes of the three voltages between lines over the phase voltage: its mean over a turn, or its most.
    const lines = rotor === 'turning' ? (6 * Math.sqrt(3)) / Math.PI : 2 * Math.sqrt(3)
    const square = Math.max(0, supplyVoltage * lines * phaseVoltage - 4.5 * phaseVoltage * phaseVoltage) / 9
    return { rippleVoltage: Math.sqrt(square), loss: (6 * square * viscousDrag) / (backEmfConstant * backEmfConstant) }
  },
})
