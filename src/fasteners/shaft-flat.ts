import { formula } from '../formula/index.js'
import { SHAFT_IN_HUB } from './shaft-inputs.js'

/**
 * Torque through the flat of a D-shaped shaft: the shaft turns in its hub until the edge of the flat presses on it, and leans away to the other side of the bore.
 *
 * Half of the flat carries nothing, and the pressure grows towards its edge. A shaft with play in its bore, or with a rounded edge, presses harder.
 */
export const shaftFlat = /* @__PURE__ */ formula('fasteners.shaftFlat', {
  inputs: {
    ...SHAFT_IN_HUB,
    /** Depth of the flat, from the round surface. */
    depth: { kind: 'length', above: 0 },
    /** Length of the flat in the hub. */
    length: { kind: 'length', above: 0 },
    /** Pressure that the hub bears. */
    hubBearingStrength: { kind: 'stress', above: 0 },
  },
  output: {
    /** Width of the flat. */
    width: 'length',
    /** Distance from the middle of the flat to where it begins to press. */
    pressesFrom: 'length',
    /** Force on the flat, which pushes the shaft against the other side of the bore. */
    force: 'force',
    /** Pressure at the edge of the flat. */
    edgePressure: 'stress',
    /** Pressure opposite the flat. */
    borePressure: 'stress',
    /** Torque at which the edge reaches what the weaker of hub and shaft bears. */
    torqueCapacity: 'torque',
  },
  equation: [
    'width = 2 * sqrt(depth * (shaftDiameter - depth))',
    'around = width + pi * shaftDiameter / 2',
    'pressesFrom = (around - sqrt(around^2 - width^2)) / 2',
    'half = width / 2',
    'arm = (half^3 / 3 - pressesFrom * half^2 / 2 + pressesFrom^3 / 6) / (half - pressesFrom)',
    'edgePressure = torque / (arm * length)',
    'force = edgePressure * length * (half - pressesFrom) / 2',
    'borePressure = edgePressure * pressesFrom / (half - pressesFrom)',
    'torqueCapacity = min(hubBearingStrength, shaftBearingStrength) * arm * length',
  ],
  assumes: [
    'stiff shaft in a hub that presses back in proportion to what it is displaced, without play or friction',
    'the same along the flat',
    'sharp edges of the flat',
  ],
  source: [{ level: 'computed', where: 'balance of force and moment of a stiff D-shaped shaft on an elastic bed that only presses' }],
  requires: {
    depth: { accepts: 'must be less than half the shaft diameter', holds: ({ depth, shaftDiameter }) => depth < shaftDiameter / 2 },
  },
  valid: {
    'length up to 1.5 shaft diameters (uniform load along the flat)': ({ length, shaftDiameter }) =>
      length <= 1.5 * shaftDiameter * (1 + 1e-9),
  },
  si: ({ torque, shaftDiameter, depth, length, hubBearingStrength, shaftBearingStrength }) => {
    const width = 2 * Math.sqrt(depth * (shaftDiameter - depth))
    const around = width + (Math.PI * shaftDiameter) / 2
    const pressesFrom = (around - Math.sqrt(around * around - width * width)) / 2
    const half = width / 2
    const arm = (half ** 3 / 3 - (pressesFrom * half ** 2) / 2 + pressesFrom ** 3 / 6) / (half - pressesFrom)
    const edgePressure = torque / (arm * length)
    return {
      width,
      pressesFrom,
      force: (edgePressure * length * (half - pressesFrom)) / 2,
      edgePressure,
      borePressure: (edgePressure * pressesFrom) / (half - pressesFrom),
      torqueCapacity: Math.min(hubBearingStrength, shaftBearingStrength) * arm * length,
    }
  },
})
