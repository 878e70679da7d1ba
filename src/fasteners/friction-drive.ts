import { formula, property } from '../formula/index.js'
import { CLAMP_LOAD_LEFT, FACE_FRICTION, TOUCHING_RING } from './bolt-inputs.js'
import { headBearing } from './head-bearing.js'

const friction = (typical: number, low: number, high: number, conditions: string) =>
  property('ratio', {
    typical,
    low,
    high,
    source: { level: 'unverified', where: 'handbook ranges of dry friction; measure your own faces' },
    conditions,
  })

/** Friction of clamped faces, before a test of your own; take the low end for a drive. */
export const faceFrictions = {
  /** Machined steel on steel. */
  steelOnSteel: /* @__PURE__ */ friction(0.15, 0.1, 0.2, 'machined, wiped, traces of oil'),
  /** Print on machined steel. */
  printOnSteel: /* @__PURE__ */ friction(0.25, 0.15, 0.4, 'flat printed face, dry'),
  /** Print on print. */
  printOnPrint: /* @__PURE__ */ friction(0.3, 0.2, 0.5, 'flat printed faces, dry'),
}

/** Torque at which a clamped flat ring slips. */
export const frictionFaceTorque = /* @__PURE__ */ formula('fasteners.frictionFaceTorque', {
  inputs: {
    /** Clamp load on the face. */
    clampLoad: { kind: 'force', min: 0 },
    ...FACE_FRICTION,
    ...TOUCHING_RING,
    /** How the load spreads: uniformly, or denser towards the axis as on worn faces and under a bolt (the lower result, friction at the mean radius). */
    pressure: { oneOf: ['uniform', 'worn'] },
  },
  /** Torque at slip. */
  output: 'torque',
  source: [{ level: 'published', where: 'Shigley 9th ed., section 16-5: disc clutches, uniform pressure and uniform wear' }],
  requires: {
    outerDiameter: {
      accepts: 'must be larger than the inner diameter',
      holds: ({ outerDiameter, innerDiameter }) => outerDiameter > innerDiameter,
    },
  },
  si: ({ clampLoad, friction: f, outerDiameter: D, innerDiameter: d, pressure }) =>
    pressure === 'worn' ? (f * clampLoad * (D + d)) / 4 : (f * clampLoad * (D * D + D * d + d * d)) / (3 * (D + d)),
})

/**
 * Torque that a clamped stack drives by friction alone, over metal and printed faces.
 *
 * Metal faces keep a uniform pressure. A printed face counts at its mean radius, must not be crushed, and needs a larger reserve. Use the remaining clamp load (`clampLoadOverTime`, `clampLoadThroughHeat`), not the one at tightening; friction and a key do not add up, because a key carries only after the face has slipped.
 */
export const frictionDrive = /* @__PURE__ */ formula('fasteners.frictionDrive', {
  inputs: {
    ...CLAMP_LOAD_LEFT,
    /** Faces that the torque crosses. */
    faces: {
      list: {
        fields: {
          ...TOUCHING_RING,
          /** Coefficient of friction: the lowest (`faceFrictions`). */
          friction: { kind: 'ratio', above: 0 },
          /** Metal on metal, or a print on at least one side. */
          surface: { oneOf: ['metal', 'printed'] },
          /** Allowable pressure of the softer side at its temperature over time. */
          allowablePressure: { kind: 'stress', above: 0 },
        },
      },
    },
    /** How the torque meets the faces: in series (the weakest decides) or in parallel, as on both sides of a disc between two flanges. */
    path: { oneOf: ['inSeries', 'inParallel'] },
    /** Torque to drive. */
    torque: { kind: 'torque', min: 0 },
  },
  output: {
    /** Torque at slip. */
    slipTorque: 'torque',
    /** Torque at slip of each face. */
    faceTorques: { list: 'torque' },
    /** Pressure on each face. */
    pressures: { list: 'stress' },
    /** Torque at slip over torque; infinite without torque. */
    reserve: { kind: 'ratio', infinite: true },
    /** Required reserve: 1.5 over metal, 2.5 as soon as a face is printed. */
    requiredReserve: 'ratio',
    /** Whether friction drives, a key, pins or teeth are needed, or a face is crushed. */
    state: { oneOf: ['frictionDrives', 'keyNeeded', 'facesCrushed'] },
  },
  assumes: ['shared faces slip together'],
  source: [
    { level: 'published', where: 'Shigley 9th ed., section 16-5, as fasteners.frictionFaceTorque' },
    { level: 'assumption', where: 'required reserves: spread of friction on machined and on printed faces' },
  ],
  requires: {
    faces: {
      accepts: 'needs at least one, each wider than its bore',
      holds: ({ faces }) => faces.length > 0 && faces.every(({ outerDiameter, innerDiameter }) => outerDiameter > innerDiameter),
    },
  },
  si: ({ clampLoad, faces, path, torque }) => {
    const faceTorques: number[] = []
    const pressures: number[] = []
    let crushed = false
    let printed = false
    for (const { outerDiameter, innerDiameter, friction: f, surface, allowablePressure } of faces) {
      const pressure = surface === 'metal' ? 'uniform' : 'worn'
      faceTorques.push(frictionFaceTorque.si({ clampLoad, friction: f, outerDiameter, innerDiameter, pressure }))
      const bearing = headBearing.si({ force: clampLoad, bearingDiameter: outerDiameter, holeDiameter: innerDiameter, allowablePressure })
      pressures.push(bearing.pressure)
      crushed ||= bearing.reserve < 1
      printed ||= surface === 'printed'
    }
    const slipTorque = path === 'inParallel' ? faceTorques.reduce((a, b) => a + b, 0) : Math.min(...faceTorques)
    const requiredReserve = printed ? 2.5 : 1.5
    return {
      slipTorque,
      faceTorques,
      pressures,
      reserve: torque === 0 ? Number.POSITIVE_INFINITY : slipTorque / torque,
      requiredReserve,
      state: crushed
        ? ('facesCrushed' as const)
        : slipTorque > 0 && slipTorque >= requiredReserve * torque
          ? ('frictionDrives' as const)
          : ('keyNeeded' as const),
    }
  },
})
