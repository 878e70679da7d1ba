import { formula } from '../formula/index.js'
import { NOMINAL_DIAMETER, PITCH, ROOT_AREA, STRESS_AREA } from './thread-inputs.js'

/**
 * A bolt drilled and tapped from its end for a smaller screw: its remaining strength in tension and torsion, and whether the wall is thick enough.
 *
 * The hole counts with the major diameter of the inner thread, not with the diameter of the tap drill. Torsional strength falls far less than tensile strength.
 */
export const drilledBolt = /* @__PURE__ */ formula('fasteners.drilledBolt', {
  title: 'strength of a bolt drilled from its end',
  inputs: {
    /** The outer thread's sizes. */
    outer: {
      fields: {
        /** Root diameter. */
        rootDiameter: { kind: 'length', above: 0 },
        ...STRESS_AREA,
        ...ROOT_AREA,
      },
    },
    /** The inner thread's sizes. */
    inner: {
      fields: {
        ...NOMINAL_DIAMETER,
        ...PITCH,
        ...STRESS_AREA,
      },
    },
    /** Yield strength of the outer bolt; below that of its class where drilling has tempered it. */
    outerYieldStrength: { kind: 'stress', above: 0 },
    /** Yield strength of the inner screw. */
    innerYieldStrength: { kind: 'stress', above: 0 },
    /** Tension of the outer bolt over the drilled part. */
    tension: { kind: 'force', min: 0 },
    /** Torque in its thread while it is tightened, or carried. */
    torque: { kind: 'torque', min: 0 },
  },
  output: {
    /** Wall from the inner thread to the outer thread's root. */
    wall: 'length',
    /** Area left, by the root diameter (safe). */
    rootArea: 'area',
    /** Area left, by the stress area. */
    stressArea: 'area',
    /** Share of the stress area that is left. */
    areaLeft: 'ratio',
    /** Share of the torsional section modulus that is left. */
    torsionLeft: 'ratio',
    /** Remaining yield load, by the root diameter. */
    yieldLoad: 'force',
    /** Torque at yield. */
    yieldTorque: 'torque',
    /** Von Mises stress under tension and torque together. */
    vonMises: 'stress',
    /** Yield strength over that; infinite without load. */
    reserve: { kind: 'ratio', infinite: true },
    /** Whether wall and strengths meet the rule: yield load 1.25 times the inner screw's, wall 1.5 inner pitches, width 1.4 times the inner diameter. */
    wallRule: { oneOf: ['met', 'tooThin'] },
  },
  equation: [
    'hole = pi / 4 * inner.diameter^2',
    'wall = (outer.rootDiameter - inner.diameter) / 2',
    'rootArea = outer.rootArea - hole',
    'stressArea = outer.stressArea - hole',
    'areaLeft = stressArea / outer.stressArea',
    'torsionLeft = 1 - (inner.diameter / outer.rootDiameter)^4',
    'modulus = pi / 16 * outer.rootDiameter^3 * torsionLeft',
    'yieldLoad = rootArea * outerYieldStrength',
    'yieldTorque = modulus * outerYieldStrength / sqrt(3)',
    'vonMises = sqrt((tension / rootArea)^2 + 3 * (torque / modulus)^2)',
  ],
  assumes: ['elastic torsion', 'hole on the axis', 'no notch at the end of the hole: do not let it end at a head or first engaged turn'],
  source: [
    { level: 'computed', where: 'areas and section moduli of a ring' },
    { level: 'assumption', where: 'wall rule: nut-dilation range of VDI 2230-1 (unverified) and a wall of 1.5 pitches' },
  ],
  requires: {
    inner: {
      accepts: 'must be smaller than the root of the outer thread, in diameter and in area',
      holds: ({ inner, outer }) =>
        inner.diameter < outer.rootDiameter && (Math.PI / 4) * inner.diameter ** 2 < Math.min(outer.rootArea, outer.stressArea),
    },
  },
  si: ({ outer, inner, outerYieldStrength, innerYieldStrength, tension, torque }) => {
    const hole = (Math.PI / 4) * inner.diameter ** 2
    const wall = (outer.rootDiameter - inner.diameter) / 2
    const rootArea = outer.rootArea - hole
    const stressArea = outer.stressArea - hole
    const torsionLeft = 1 - (inner.diameter / outer.rootDiameter) ** 4
    const modulus = (Math.PI / 16) * outer.rootDiameter ** 3 * torsionLeft
    const vonMises = Math.hypot(tension / rootArea, (Math.sqrt(3) * torque) / modulus)
    const yieldLoad = rootArea * outerYieldStrength
    return {
      wall,
      rootArea,
      stressArea,
      areaLeft: stressArea / outer.stressArea,
      torsionLeft,
      yieldLoad,
      yieldTorque: (modulus * outerYieldStrength) / Math.sqrt(3),
      vonMises,
      reserve: vonMises === 0 ? Number.POSITIVE_INFINITY : outerYieldStrength / vonMises,
      wallRule:
        yieldLoad >= 1.25 * inner.stressArea * innerYieldStrength && wall >= 1.5 * inner.pitch && outer.rootDiameter >= 1.4 * inner.diameter
          ? ('met' as const)
          : ('tooThin' as const),
    }
  },
})

/**
 * An end cap or big washer on a screw that keeps a free-turning link on its axle: play, bearing, bending and shear of the cap.
 *
 * Use the largest width of the link, because a printed link grows when warm or wet and a steel axle hardly does, so the play disappears.
 */
export const endCap = /* @__PURE__ */ formula('fasteners.endCap', {
  title: 'end cap of an axle',
  inputs: {
    /** Thrust of the link against the cap. */
    thrust: { kind: 'force', min: 0 },
    /**
     * Diameter up to which the cap is held flat on the axle end: that of the axle under a head or washer as wide. Under a narrower screw head the cap lifts off
     * beside it: give the diameter of that head.
     */
    axleDiameter: { kind: 'length', above: 0 },
    /** Outer diameter of the cap. */
    capDiameter: { kind: 'length', above: 0 },
    /** Thickness of the cap. */
    capThickness: { kind: 'length', above: 0 },
    /** Bore of the link that turns on the axle. */
    linkBore: { kind: 'length', above: 0 },
    /** Width of the link along the axle. */
    linkWidth: { kind: 'length', above: 0 },
    /** Length of axle between its shoulder and the cap. */
    axleLength: { kind: 'length', above: 0 },
  },
  output: {
    /** Axial play of the link; negative when it is clamped. */
    play: 'length',
    /** Pressure of link on cap. */
    pressure: 'stress',
    /** Bending stress of the cap at the edge of what holds it, the overhang as a cantilever. */
    bendingStress: 'stress',
    /** Shear stress of the cap around what holds it. */
    shearStress: 'stress',
    /** Whether the link turns freely. */
    state: { oneOf: ['turnsFreely', 'clamped'] },
  },
  equation: [
    'arm = (capDiameter + linkBore) / 4 - axleDiameter / 2',
    'play = axleLength - linkWidth',
    'pressure = thrust / (pi / 4 * (capDiameter^2 - linkBore^2))',
    'bendingStress = 6 * thrust * arm / (pi * axleDiameter * capThickness^2)',
    'shearStress = thrust / (pi * axleDiameter * capThickness)',
  ],
  assumes: [
    'cap clamped flat as far as the axle reaches; a narrower screw head holds it only under the head',
    'overhang as a cantilever strip: stress from 3 % below to 50 % above that of a ring plate clamped there, for caps up to three times as wide',
    'uniform thrust around the axle',
  ],
  source: [{ level: 'computed', where: 'cantilever strip and ring areas' }],
  requires: {
    linkBore: { accepts: 'must not be smaller than the axle', holds: ({ linkBore, axleDiameter }) => linkBore >= axleDiameter },
    capDiameter: {
      accepts: 'must be larger than the bore of the link, or it keeps nothing',
      holds: ({ capDiameter, linkBore }) => capDiameter > linkBore,
    },
  },
  si: ({ thrust, axleDiameter, capDiameter, capThickness, linkBore, linkWidth, axleLength }) => {
    const arm = (capDiameter + linkBore) / 4 - axleDiameter / 2
    const around = Math.PI * axleDiameter
    const play = axleLength - linkWidth
    return {
      play,
      pressure: thrust / ((Math.PI / 4) * (capDiameter ** 2 - linkBore ** 2)),
      bendingStress: (6 * thrust * arm) / (around * capThickness ** 2),
      shearStress: thrust / (around * capThickness),
      state: play > 0 ? ('turnsFreely' as const) : ('clamped' as const),
    }
  },
})
