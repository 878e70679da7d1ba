import { formula } from '../formula/index.js'
import { CORD_TENSION } from './cord-inputs.js'
import { LIKELY_FRICTION } from './friction-inputs.js'
import { WRAP_TO_ANCHOR } from './inputs.js'

/** Diameters of a hollow round section. */
const HOLLOW_SECTION = {
  /** Outer diameter of the section. */
  outerDiameter: { kind: 'length', above: 0 },
  /** Diameter of the bore. */
  boreDiameter: { kind: 'length', min: 0 },
} as const

/** Torsion and bending of the neck that carries a drum: the torque of the cord and its sideways pull. */
export const drumNeckStress = /* @__PURE__ */ formula('capstan.drumNeckStress', {
  title: 'stress in the neck of a drum',
  inputs: {
    /** Torque the section carries. */
    torque: { kind: 'torque', min: 0 },
    /** Sideways pull of the spans. */
    sidePull: { kind: 'force', min: 0 },
    /** Distance from the pull to the section. */
    arm: { kind: 'length', min: 0 },
    ...HOLLOW_SECTION,
  },
  requires: {
    boreDiameter: {
      accepts: 'must be less than the outer diameter',
      holds: ({ outerDiameter, boreDiameter }) => boreDiameter < outerDiameter,
    },
  },
  output: {
    /** Shear stress at the surface from torque. */
    torsionStress: 'stress',
    /** Normal stress at the surface from bending; across the layers where the drum is printed lying on its end. */
    bendingStress: 'stress',
    /** Equivalent stress of both by von Mises, for a section loaded along its strong direction. */
    equivalentStress: 'stress',
  },
  equation: [
    'sectionModulus = pi * (outerDiameter^4 - boreDiameter^4) / (32 * outerDiameter)',
    'torsionStress = torque / (2 * sectionModulus)',
    'bendingStress = sidePull * arm / sectionModulus',
    'equivalentStress = sqrt(bendingStress^2 + 3 * torsionStress^2)',
  ],
  assumes: ['round section', 'Saint-Venant torsion and beam bending, no notch factor'],
  source: [{ level: 'computed', where: 'elastic torsion and bending of a hollow round shaft; any strength-of-materials text' }],
  si: ({ torque, sidePull, arm, outerDiameter: D, boreDiameter: d }) => {
    const modulus = (Math.PI * (D ** 4 - d ** 4)) / (32 * D)
    const torsionStress = torque / (2 * modulus)
    const bendingStress = (sidePull * arm) / modulus
    return { torsionStress, bendingStress, equivalentStress: Math.sqrt(bendingStress * bendingStress + 3 * torsionStress * torsionStress) }
  },
})

/** Force along the axis with which a tight cord wedges the walls of its groove apart. */
export const grooveWedging = /* @__PURE__ */ formula('capstan.grooveWedging', {
  inputs: {
    ...CORD_TENSION,
    /** Angle of contact that presses on the wall considered. */
    wrapAngle: { kind: 'angle', min: 0 },
    /** Included angle of the groove where the cord bears, flank to flank. */
    grooveAngle: { kind: 'angle', above: 0, max: '180 deg' },
  },
  /** Axial force on one wall, all along the wrap. */
  output: 'force',
  equation: ['result = tension * wrapAngle / (2 * tan(grooveAngle / 2))'],
  assumes: ['no flank friction (safe)', 'uniform tension'],
  source: [{ level: 'computed', where: 'balance of a wedge: T/R per length shared by two flanks' }],
  si: ({ tension, wrapAngle, grooveAngle }) => (tension * wrapAngle) / (2 * Math.tan(grooveAngle / 2)),
})

/**
 * Whether the layers of a drum printed lying on its end come apart, with or without through bolts that clamp the stack: bending by the
 * cord's sideways pull and axial wedging against clamp load and layer strength.
 */
export const delamination = /* @__PURE__ */ formula('capstan.delamination', {
  title: 'splitting of a drum between its layers',
  inputs: {
    /** Bending moment across the layer considered. */
    bendingMoment: { kind: 'torque', min: 0 },
    /** Axial force that pulls the layers apart, such as wedging in the groove. */
    axialForce: { kind: 'force', min: 0 },
    /** Clamp load of all through bolts together, as it is left after creep and heat; 0 without bolts. */
    clampLoad: { kind: 'force', min: 0 },
    ...HOLLOW_SECTION,
    /** Allowable stress across the layers for the temperature and time considered. */
    allowableAcrossLayers: { kind: 'stress', above: 0 },
    /** Share of the section lost to bolt holes. */
    holeShare: { kind: 'ratio', min: 0, below: 1, default: 0 },
  },
  requires: {
    boreDiameter: {
      accepts: 'must be less than the outer diameter',
      holds: ({ outerDiameter, boreDiameter }) => boreDiameter < outerDiameter,
    },
  },
  output: {
    /** Largest stress across the layers, tension positive. */
    layerStress: 'stress',
    /** Clamp load at which no layer is in tension. */
    clampToStayClosed: 'force',
    /** Allowable over stress; infinite where the stack stays in compression. */
    reserve: { kind: 'ratio', infinite: true },
    /** Closed by clamping, held by the layer bond, or split. */
    state: { oneOf: ['closed', 'heldByBond', 'splits'] },
  },
  equation: [
    'area = pi / 4 * (outerDiameter^2 - boreDiameter^2) * (1 - holeShare)',
    'sectionModulus = pi * (outerDiameter^4 - boreDiameter^4) / (32 * outerDiameter) * (1 - holeShare)',
    'layerStress = bendingMoment / sectionModulus + (axialForce - clampLoad) / area',
    'clampToStayClosed = bendingMoment / sectionModulus * area + axialForce',
  ],
  assumes: [
    'plane sections stay plane',
    'bolts and holes at equal spacing, clamp load central; holes take their share of area and section modulus',
    'clamp load does not change with the load',
  ],
  source: [{ level: 'computed', where: 'combined axial force and bending of a hollow round section; any strength-of-materials text' }],
  si: ({ bendingMoment, axialForce, clampLoad, outerDiameter: D, boreDiameter: d, allowableAcrossLayers, holeShare }) => {
    const area = (Math.PI / 4) * (D * D - d * d) * (1 - holeShare)
    const modulus = ((Math.PI * (D ** 4 - d ** 4)) / (32 * D)) * (1 - holeShare)
    const bending = bendingMoment / modulus
    const layerStress = bending + (axialForce - clampLoad) / area
    const state: 'closed' | 'heldByBond' | 'splits' =
      layerStress <= 0 ? 'closed' : layerStress <= allowableAcrossLayers ? 'heldByBond' : 'splits'
    return {
      layerStress,
      clampToStayClosed: bending * area + axialForce,
      reserve: layerStress <= 0 ? Number.POSITIVE_INFINITY : allowableAcrossLayers / layerStress,
      state,
    }
  },
})

/** Pull on a cord anchor, lessened by the wrap before it. */
export const anchorPull = /* @__PURE__ */ formula('capstan.anchorPull', {
  title: 'pull on the anchor of a cord',
  inputs: {
    /** Tension of the span. */
    spanTension: { kind: 'force', min: 0 },
    /** Tension stored in the wrap at rest: the pretension. */
    storedTension: { kind: 'force', min: 0 },
    /** Coefficient of friction, cord on drum; the low end of its range is safe. */
    friction: { kind: 'ratio', min: 0 },
    ...WRAP_TO_ANCHOR,
  },
  /** Force on the anchor: never below the stored tension while the span is tighter than it. */
  output: 'force',
  equation: ['result = min(max(storedTension, spanTension * exp(-friction * wrapAngle)), spanTension * exp(friction * wrapAngle))'],
  assumes: ['the wrap held the stored tension before the load came', 'Coulomb friction'],
  valid: LIKELY_FRICTION,
  source: [{ level: 'computed', where: 'Euler-Eytelwein decay from the tangent point until the stored tension is met' }],
  si: ({ spanTension, storedTension, friction, wrapAngle }) => {
    const factor = Math.exp(friction * wrapAngle)
    return Math.min(Math.max(storedTension, spanTension / factor), spanTension * factor)
  },
})
