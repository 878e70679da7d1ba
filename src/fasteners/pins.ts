import { formula } from '../formula/index.js'
import { CHEEK_THICKNESS, LUG_HOLE, PIN_DIAMETER, PIN_FORCE } from './pin-inputs.js'

/** Shear stress of a pin cut in one or two planes. */
export const pinShear = /* @__PURE__ */ formula('fasteners.pinShear', {
  inputs: {
    ...PIN_FORCE,
    ...PIN_DIAMETER,
    /** Shear planes: 1 or, in a clevis, 2. */
    planes: { kind: 'count', min: 1, max: 2, whole: true, default: 2 },
  },
  output: {
    /** Average shear stress. */
    averageStress: 'stress',
    /** Stress at the neutral axis of a long pin, 4/3 of the average. */
    peakStress: 'stress',
  },
  equation: ['averageStress = force / (planes * pi / 4 * diameter^2)', 'peakStress = 4 / 3 * averageStress'],
  assumes: ['planes share the load equally'],
  source: [{ level: 'published', where: 'any strength-of-materials text: transverse shear of a round section' }],
  si: ({ force, diameter, planes }) => {
    const averageStress = force / ((planes * Math.PI * diameter * diameter) / 4)
    return { averageStress, peakStress: (4 / 3) * averageStress }
  },
})

/** Bending of a clevis pin: the load acts at the middle of each cheek and at the quarter points of the lug; the gaps between them count in full. */
export const clevisPinBending = /* @__PURE__ */ formula('fasteners.clevisPinBending', {
  inputs: {
    ...PIN_FORCE,
    ...PIN_DIAMETER,
    ...CHEEK_THICKNESS,
    /** Gap between cheek and lug, each side. */
    gap: { kind: 'length', min: 0 },
    /** Thickness of the lug in the middle. */
    lugThickness: { kind: 'length', above: 0 },
  },
  output: {
    /** Lever arm of half the force. */
    arm: 'length',
    /** Bending moment in the middle of the pin. */
    moment: 'torque',
    /** Bending stress. */
    bendingStress: 'stress',
    /** Moment over the plastic section modulus: compare it with the yield strength where a ductile pin may yield fully. */
    plasticBendingStress: 'stress',
  },
  equation: [
    'arm = cheekThickness / 2 + gap + lugThickness / 4',
    'moment = force / 2 * arm',
    'bendingStress = 32 * moment / (pi * diameter^3)',
    'plasticBendingStress = 3 * pi / 16 * bendingStress',
  ],
  assumes: [
    'pressure uniform along each cheek and each half of the lug: safe for stiff parts, nearly right for polymer parts on a steel pin',
  ],
  source: [{ level: 'unverified', where: 'Bruhn, Analysis and Design of Flight Vehicle Structures, chapter D1 (pin bending)' }],
  si: ({ force, diameter, cheekThickness, gap, lugThickness }) => {
    const arm = cheekThickness / 2 + gap + lugThickness / 4
    const moment = (force / 2) * arm
    const bendingStress = (32 * moment) / (Math.PI * diameter ** 3)
    return { arm, moment, bendingStress, plasticBendingStress: (bendingStress * 3 * Math.PI) / 16 }
  },
})

/** Pressure of a pin in its hole: the average over the projected area, and the peak of a close-fitting pin. */
export const pinBearing = /* @__PURE__ */ formula('fasteners.pinBearing', {
  title: 'bearing pressure of a pin',
  inputs: {
    /** Force on this hole. */
    force: { kind: 'force', min: 0 },
    ...PIN_DIAMETER,
    /** Thickness of the part. */
    thickness: { kind: 'length', above: 0 },
  },
  output: {
    /** Average over the projected area. */
    projectedPressure: 'stress',
    /** Peak of a cosine distribution around a close-fitting pin. */
    peakPressure: 'stress',
  },
  equation: ['projectedPressure = force / (diameter * thickness)', 'peakPressure = 4 / pi * projectedPressure'],
  assumes: ['uniform along the thickness', 'no clearance; with clearance the peak is higher'],
  source: [{ level: 'published', where: 'any machine-design text: bearing stress; cosine pressure of journals' }],
  si: ({ force, diameter, thickness }) => {
    const projectedPressure = force / (diameter * thickness)
    return { projectedPressure, peakPressure: (4 / Math.PI) * projectedPressure }
  },
})

/** Tension next to a pin hole: average over the net section and, for brittle parts and fatigue, with the stress concentration. */
export const lugNetSection = /* @__PURE__ */ formula('fasteners.lugNetSection', {
  title: 'net section of a lug',
  inputs: {
    /** Force through the hole. */
    force: { kind: 'force', min: 0 },
    /** Width of the eye across the load. */
    width: { kind: 'length', above: 0 },
    ...LUG_HOLE,
    /** Thickness. */
    thickness: { kind: 'length', above: 0 },
    /** Stress concentration of the net section: 1 for a ductile part under static load, 2 to 3 for a close pin in a brittle one. */
    stressConcentration: { kind: 'ratio', min: 1, default: 1 },
  },
  output: {
    /** Average tension over both sides. */
    averageStress: 'stress',
    /** Times the stress concentration. */
    peakStress: 'stress',
  },
  equation: ['averageStress = force / ((width - diameter) * thickness)', 'peakStress = stressConcentration * averageStress'],
  assumes: ['hole in the middle of the width'],
  source: [
    { level: 'published', where: 'Shigley 9th ed., section 8-12 (tension of members); concentration after Peterson, lugs (unverified)' },
  ],
  requires: { width: { accepts: 'must be larger than the hole', holds: ({ width, diameter }) => width > diameter } },
  si: ({ force, width, diameter, thickness, stressConcentration }) => {
    const averageStress = force / ((width - diameter) * thickness)
    return { averageStress, peakStress: stressConcentration * averageStress }
  },
})

/** Shear of a pin tearing out towards the edge, along two planes. */
export const lugTearOut = /* @__PURE__ */ formula('fasteners.lugTearOut', {
  title: 'shear-out of a lug',
  inputs: {
    /** Force towards the edge. */
    force: { kind: 'force', min: 0 },
    /** Distance from the hole's centre to the edge. */
    edgeDistance: { kind: 'length', above: 0 },
    ...LUG_HOLE,
    /** Thickness. */
    thickness: { kind: 'length', above: 0 },
    /** Where the planes start: at the front of the hole (safe), or 40 degrees from the load (usual for ductile lugs). */
    planes: { oneOf: ['front', 'fortyDegrees'], default: 'front' },
  },
  output: {
    /** Length of each shear plane. */
    planeLength: 'length',
    /** Shear stress. */
    shearStress: 'stress',
  },
  equation: [
    'planeLength = edgeDistance - diameter / 2 * (equalText(planes, "front") ? 1 : cos(40 deg))',
    'shearStress = force / (2 * planeLength * thickness)',
  ],
  assumes: ['two planes share the load'],
  source: [{ level: 'unverified', where: 'Bruhn, Analysis and Design of Flight Vehicle Structures, chapter D1 (shear-out at 40 degrees)' }],
  requires: { edgeDistance: { accepts: 'must reach past the hole', holds: ({ edgeDistance, diameter }) => edgeDistance > diameter / 2 } },
  valid: {
    'edge distance at least 1.5 diameters (2 is usual in plastics)': ({ edgeDistance, diameter }) => edgeDistance >= 1.5 * diameter,
  },
  si: ({ force, edgeDistance, diameter, thickness, planes }) => {
    const reach = edgeDistance - (diameter / 2) * (planes === 'front' ? 1 : Math.cos((40 * Math.PI) / 180))
    return { planeLength: reach, shearStress: force / (2 * reach * thickness) }
  },
})
