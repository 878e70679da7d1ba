import { formula } from '../formula/index.js'
import { SHAFT_IN_HUB } from './shaft-inputs.js'
import { sizeTable } from './size-table.js'

/** Parallel keys such as `'5x5'` (width × height): the shafts they belong to, and how deep they sit in shaft and hub. */
export const parallelKeySize = /* @__PURE__ */ sizeTable('fasteners.parallelKeySize', {
  what: 'a parallel key',
  columns: {
    shaftAbove: ['length', 'mm'],
    shaftUpTo: ['length', 'mm'],
    width: ['length', 'mm'],
    height: ['length', 'mm'],
    shaftDepth: ['length', 'mm'],
    hubDepth: ['length', 'mm'],
  },
  source: [{ level: 'standard', where: 'DIN 6885-1 (ISO 773), read in two reproductions' }],
  rows: {
    '2x2': [6, 8, 2, 2, 1.2, 1],
    '3x3': [8, 10, 3, 3, 1.8, 1.4],
    '4x4': [10, 12, 4, 4, 2.5, 1.8],
    '5x5': [12, 17, 5, 5, 3, 2.3],
    '6x6': [17, 22, 6, 6, 3.5, 2.8],
    '8x7': [22, 30, 8, 7, 4, 3.3],
    '10x8': [30, 38, 10, 8, 5, 3.3],
    '12x8': [38, 44, 12, 8, 5, 3.3],
    '14x9': [44, 50, 14, 9, 5.5, 3.8],
  },
})

/**
 * Torque through a parallel key: crushing of hub and shaft, shear of the key, tension of the hub's wall over the keyway.
 *
 * A metal hub yields until two keys share; a printed keyway is less exact than its flank deflects, so a second key in a print counts for nothing.
 */
export const parallelKey = /* @__PURE__ */ formula('fasteners.parallelKey', {
  inputs: {
    ...SHAFT_IN_HUB,
    /** How the torque acts. */
    direction: { oneOf: ['oneWay', 'reversing'] },
    /** Width of the key. */
    width: { kind: 'length', above: 0 },
    /** Height of the key. */
    height: { kind: 'length', above: 0 },
    /** Depth of the keyway in the shaft. */
    shaftDepth: { kind: 'length', above: 0 },
    /** Depth of the keyway in the hub, from the bore's edge. */
    hubDepth: { kind: 'length', above: 0 },
    /** Straight length of key in contact with both, without its round ends. */
    length: { kind: 'length', above: 0 },
    /** Number of keys. */
    keys: { kind: 'count', min: 1, max: 2, whole: true, default: 1 },
    /** Hub. */
    hub: {
      fields: {
        /** Material of the hub. */
        material: { oneOf: ['metal', 'printed'] },
        /** Outer diameter. */
        outerDiameter: { kind: 'length', above: 0 },
        /** Allowable pressure on its flank: yield strength of a metal, compressive strength of a print at temperature times its long-term share. */
        bearingStrength: { kind: 'stress', above: 0 },
        /** Allowable tension of its wall: across the layers where they lie along the axis. */
        tensileStrength: { kind: 'stress', above: 0 },
      },
    },
    /** Shear strength of the key. */
    keyShearStrength: { kind: 'stress', above: 0 },
  },
  output: {
    /** Force on one key at the shaft's surface. */
    force: 'force',
    /** Pressure on the hub's flank. */
    hubPressure: 'stress',
    /** Pressure on the shaft's flank. */
    shaftPressure: 'stress',
    /** Shear of the key. */
    keyShear: 'stress',
    /** Tension of the hub's wall over the keyway. */
    hubWallTension: 'stress',
    /** Torque at which the weakest of the four fails. */
    torqueCapacity: 'torque',
    /** Capacity over torque; infinite without torque. */
    reserve: { kind: 'ratio', infinite: true },
    /** Governing mode of failure. */
    governedBy: { oneOf: ['hubCrushing', 'shaftCrushing', 'keyShear', 'hubWall'] },
  },
  assumes: [
    'force at the surface of the shaft, uniform along the key and over each flank',
    'no friction in the fit',
    'two keys in metal carry as one and a half, in a print as one',
    "the hub's wall carries half of the key's force, like a ring under one tangential force that a uniform shear at its rim balances; round corners of the keyway",
  ],
  source: [
    { level: 'published', where: 'Budynas & Nisbett, Shigley, section 7-7: shear F/(w l), crushing on the flank' },
    { level: 'unverified', where: 'Roloff/Matek, Machine Elements: two keys carry as 2 × 0.75' },
    { level: 'assumption', where: 'a second key in a print counts for nothing' },
  ],
  requires: {
    height: { accepts: 'must be larger than the depth in the shaft', holds: ({ height, shaftDepth }) => height > shaftDepth },
    hubDepth: {
      accepts: 'must be at least the part of the key that is outside the shaft',
      holds: ({ hubDepth, height, shaftDepth }) => hubDepth >= (height - shaftDepth) * (1 - 1e-9),
    },
    hub: {
      accepts: 'must leave a wall over the keyway: outer diameter above shaft diameter plus twice the depth in the hub',
      holds: ({ hub, shaftDiameter, hubDepth }) => hub.outerDiameter > shaftDiameter + 2 * hubDepth,
    },
  },
  valid: {
    'length up to 1.5 shaft diameters (uniform load along the key)': ({ length, shaftDiameter }) =>
      length <= 1.5 * shaftDiameter * (1 + 1e-9),
    'torque of one direction in a printed hub (a reversing key beats its way loose)': ({ hub, direction }) =>
      hub.material === 'metal' || direction === 'oneWay',
  },
  si: ({ torque, shaftDiameter, width, height, shaftDepth, hubDepth, length, keys, hub, shaftBearingStrength, keyShearStrength }) => {
    const counted = keys === 1 || hub.material === 'printed' ? 1 : 1.5
    const force = (2 * torque) / (shaftDiameter * counted)
    const hubArea = (height - shaftDepth) * length
    const shaftArea = shaftDepth * length
    const wallArea = 2 * ((hub.outerDiameter - shaftDiameter) / 2 - hubDepth) * length
    const hubForce = hub.bearingStrength * hubArea
    const shaftForce = shaftBearingStrength * shaftArea
    const shearForce = keyShearStrength * width * length
    const wallForce = hub.tensileStrength * wallArea
    const min = Math.min(hubForce, shaftForce, shearForce, wallForce)
    return {
      force,
      hubPressure: force / hubArea,
      shaftPressure: force / shaftArea,
      keyShear: force / (width * length),
      hubWallTension: force / wallArea,
      torqueCapacity: (min * shaftDiameter * counted) / 2,
      reserve: force === 0 ? Number.POSITIVE_INFINITY : min / force,
      governedBy:
        min === hubForce
          ? ('hubCrushing' as const)
          : min === shaftForce
            ? ('shaftCrushing' as const)
            : min === shearForce
              ? ('keyShear' as const)
              : ('hubWall' as const),
    }
  },
})
