import { formula } from '../formula/index.js'
import { ACROSS_FLATS, NUT_HEIGHT, NUT_TORQUE } from './nut-inputs.js'

const SCREW_FORCE = {
  /** Force of the screw. */
  force: { kind: 'force', min: 0 },
} as const

/** Tension in the wall around a nut pocket by a torque on the nut; it splits thin bosses along a layer. */
export const nutPocketWall = /* @__PURE__ */ formula('fasteners.nutPocketWall', {
  inputs: {
    ...NUT_TORQUE,
    ...ACROSS_FLATS,
    ...NUT_HEIGHT,
    /** Thinnest wall between pocket and outside. */
    wall: { kind: 'length', above: 0 },
  },
  output: {
    /** Average of the pressure around the pocket. */
    meanPressure: 'stress',
    /** Average tension in the wall. */
    wallTension: 'stress',
  },
  equation: ['meanPressure = 3 * torque / (2 * acrossFlats^2 * height)', 'wallTension = meanPressure * acrossFlats / (2 * wall)'],
  assumes: [
    'all six flats touch',
    'elastic forces on the flats spread around as a uniform pressure',
    'the peak at a sharp inner corner is several times higher: round it',
  ],
  source: [{ level: 'computed', where: 'balance of forces across a cut through the pocket' }],
  si: ({ torque, acrossFlats, height, wall }) => {
    const flat = acrossFlats / Math.sqrt(3)
    const meanPressure = (3 * torque) / (6 * flat) / (flat * height)
    return { meanPressure, wallTension: (meanPressure * acrossFlats) / (2 * wall) }
  },
})

/** A nut pulled through the material that covers its pocket: plug shear around the nut. */
export const nutPullThrough = /* @__PURE__ */ formula('fasteners.nutPullThrough', {
  inputs: {
    ...SCREW_FORCE,
    ...ACROSS_FLATS,
    /** Thickness of material between nut and joint face. */
    cover: { kind: 'length', above: 0 },
    /** Sides that hold: all round, or three where the nut was slid in from the side. */
    sides: { oneOf: ['six', 'three'] },
    /** Shear strength of the cover in that direction. */
    shearStrength: { kind: 'stress', above: 0 },
  },
  output: {
    /** Sheared area. */
    area: 'area',
    /** Shear stress. */
    shearStress: 'stress',
    /** Force at which the plug shears out. */
    pullThroughForce: 'force',
  },
  assumes: ['uniform shear around the plug'],
  source: [{ level: 'computed', where: 'perimeter of a hexagon, 2√3 times its width across flats, times the cover' }],
  si: ({ force, acrossFlats, cover, sides, shearStrength }) => {
    const area = (sides === 'six' ? 2 : 1) * Math.sqrt(3) * acrossFlats * cover
    return { area, shearStress: force / area, pullThroughForce: shearStrength * area }
  },
})

/** Bending of a thin roof over a nut where the joint face below it is hollow: a clamped round plate loaded over the nut. */
export const pocketRoof = /* @__PURE__ */ formula('fasteners.pocketRoof', {
  inputs: {
    ...SCREW_FORCE,
    /** Diameter on which the roof is held. */
    supportDiameter: { kind: 'length', above: 0 },
    /** Diameter over which the nut presses. */
    loadDiameter: { kind: 'length', above: 0 },
    /** Thickness of the roof. */
    thickness: { kind: 'length', above: 0 },
    /** Poisson's ratio. */
    poissonRatio: { kind: 'ratio', min: 0, max: 0.5, default: 0.38 },
  },
  output: {
    /** Bending stress at the held edge. */
    edgeStress: 'stress',
    /** Bending stress in the middle, without the screw hole; next to the hole up to twice as high. */
    middleStress: 'stress',
  },
  equation: [
    'ratio = loadDiameter / supportDiameter',
    'edgeStress = 3 * force / (2 * pi * thickness^2) * (1 - ratio^2 / 2)',
    'middleStress = 3 * force * (1 + poissonRatio) / (2 * pi * thickness^2) * (log(1 / ratio) + ratio^2 / 4)',
  ],
  assumes: ['thin elastic plate, clamped edge, uniform load over the nut'],
  source: [
    {
      level: 'unverified',
      where: 'Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, section 19 (clamped plate loaded over a central circle)',
    },
  ],
  requires: {
    supportDiameter: {
      accepts: 'must not be smaller than the loaded circle',
      holds: ({ supportDiameter, loadDiameter }) => supportDiameter >= loadDiameter,
    },
  },
  valid: { 'thickness below a quarter of the support': ({ thickness, supportDiameter }) => thickness <= 0.25 * supportDiameter },
  si: ({ force, supportDiameter, loadDiameter, thickness, poissonRatio }) => {
    const ratio = loadDiameter / supportDiameter
    const perMoment = 6 / (thickness * thickness)
    return {
      edgeStress: ((perMoment * force) / (4 * Math.PI)) * (1 - (ratio * ratio) / 2),
      middleStress: ((perMoment * force * (1 + poissonRatio)) / (4 * Math.PI)) * (Math.log(1 / ratio) + (ratio * ratio) / 4),
    }
  },
})
