import { formula } from '../formula/index.js'

/** Stiffness of one clamped layer as a cone of pressure that widens from the bearing ring. */
export const frustumStiffness = /* @__PURE__ */ formula('fasteners.frustumStiffness', {
  inputs: {
    /** Modulus of the layer along the bolt. */
    modulus: { kind: 'modulus', above: 0 },
    /** Thickness of the frustum. */
    thickness: { kind: 'length', above: 0 },
    /** Diameter of its narrow end. */
    narrowDiameter: { kind: 'length', above: 0 },
    /** Diameter of the hole. */
    holeDiameter: { kind: 'length', above: 0 },
    /** Half angle of the cone. */
    halfAngle: { kind: 'angle', above: 0, below: '60 deg', default: '30 deg' },
  },
  /** Stiffness. */
  output: 'linearStiffness',
  assumes: ['even pressure on each plane of the cone', 'material reaches as far as the cone: else `memberCompliance`'],
  source: [{ level: 'published', where: 'Shigley 9th ed., eq. 8-19 and 8-20' }],
  requires: {
    narrowDiameter: { accepts: 'must be larger than the hole', holds: ({ narrowDiameter, holeDiameter }) => narrowDiameter > holeDiameter },
  },
  si: ({ modulus, thickness, narrowDiameter: D, holeDiameter: d, halfAngle }) => {
    const tan = Math.tan(halfAngle)
    const wide = D + 2 * thickness * tan
    return (Math.PI * modulus * d * tan) / Math.log(((wide - d) * (D + d)) / ((wide + d) * (D - d)))
  },
})

/** Compliance between two depths of a cone that starts with `start` and widens by its half angle, limited to the diameter `limit`. */
function coneCompliance(from: number, to: number, start: number, halfAngle: number, limit: number, hole: number, modulus: number): number {
  if (to <= from) return 0
  const slope = 2 * Math.tan(halfAngle)
  const full = start >= limit ? 0 : (limit - start) / slope
  const coneEnd = Math.min(to, Math.max(from, full))
  let sum = 0
  if (coneEnd > from) {
    const narrow = { thickness: coneEnd - from, narrowDiameter: start + slope * from }
    sum += 1 / frustumStiffness.si({ modulus, ...narrow, holeDiameter: hole, halfAngle })
  }
  if (to > coneEnd) sum += (4 * (to - coneEnd)) / (Math.PI * modulus * (limit * limit - hole * hole))
  return sum
}

/**
 * Compliance of a stack of unlike layers between head and nut: a cone of pressure from each bearing ring until they meet, no wider than each layer really is.
 *
 * Layers are listed from the head. A thin boss ends the cone early and becomes a sleeve. For a tapped part use one cone only.
 */
export const memberCompliance = /* @__PURE__ */ formula('fasteners.memberCompliance', {
  inputs: {
    /** Layers from head to nut. */
    layers: {
      list: {
        fields: {
          /** Thickness. */
          thickness: { kind: 'length', above: 0 },
          /** Modulus along the bolt (across the layers of a print that lies flat). */
          modulus: { kind: 'modulus', above: 0 },
          /** Outer diameter of the material around the bolt: twice the way to its nearest edge. */
          outerDiameter: { kind: 'length', above: 0 },
          /** Hole diameter. */
          holeDiameter: { kind: 'length', above: 0 },
        },
      },
    },
    /** Bearing diameter under the head, or of its washer. */
    headBearing: { kind: 'length', above: 0 },
    /** Bearing diameter under the nut, or of its washer; of no account in a tapped part. */
    nutBearing: { kind: 'length', above: 0 },
    /** Whether a nut or the last layer's thread closes the joint. */
    end: { oneOf: ['nut', 'tapped'], default: 'nut' },
    /** Half angle of the cone. */
    halfAngle: { kind: 'angle', above: 0, below: '60 deg', default: '30 deg' },
  },
  output: {
    /** Compliance of the stack. */
    compliance: 'linearCompliance',
    /** Compliance of each layer. */
    layerCompliances: { list: 'linearCompliance' },
    /** Length of grip. */
    grip: 'length',
  },
  assumes: ['even pressure on each plane', "edges limit the cone to a sleeve of the layer's outer diameter"],
  source: [
    { level: 'published', where: 'Shigley 9th ed., eq. 8-19 (cone), members in series' },
    { level: 'memory', where: 'VDI 2230-1, section 5.1.2 (cone and sleeve of a limited boss)' },
  ],
  requires: {
    layers: {
      accepts: 'every layer must be wider than its hole',
      holds: ({ layers }) => layers.every(({ outerDiameter, holeDiameter }) => outerDiameter > holeDiameter),
    },
    headBearing: {
      accepts: 'must be larger than the hole of the layer below it',
      holds: ({ layers, headBearing }) => headBearing > layers[0]!.holeDiameter,
    },
    nutBearing: {
      accepts: 'must be larger than the hole of the layer above it',
      holds: ({ layers, nutBearing, end }) => end === 'tapped' || nutBearing > layers[layers.length - 1]!.holeDiameter,
    },
  },
  si: ({ layers, headBearing, nutBearing, end, halfAngle }) => {
    const slope = 2 * Math.tan(halfAngle)
    let grip = 0
    for (const { thickness } of layers) grip += thickness
    const meet = end === 'tapped' ? grip : Math.min(grip, Math.max(0, (grip + (nutBearing - headBearing) / slope) / 2))
    const layerCompliances: number[] = []
    let compliance = 0
    let top = 0
    for (const { thickness, modulus, outerDiameter, holeDiameter } of layers) {
      const bottom = top + thickness
      const one =
        coneCompliance(top, Math.min(bottom, meet), headBearing, halfAngle, outerDiameter, holeDiameter, modulus) +
        coneCompliance(grip - bottom, grip - Math.max(top, meet), nutBearing, halfAngle, outerDiameter, holeDiameter, modulus)
      layerCompliances.push(one)
      compliance += one
      top = bottom
    }
    return { compliance, layerCompliances, grip }
  },
})

/** The half angle of the pressure cone in bolt practice, by how long and how wide the clamped parts are. */
export const coneHalfAngle = /* @__PURE__ */ formula('fasteners.coneHalfAngle', {
  inputs: {
    /** Length of grip. */
    grip: { kind: 'length', above: 0 },
    /** Bearing diameter under the head. */
    bearingDiameter: { kind: 'length', above: 0 },
    /** Outer diameter of the clamped parts. */
    outerDiameter: { kind: 'length', above: 0 },
    /** Nut or tapped part. */
    end: { oneOf: ['nut', 'tapped'] },
  },
  /** Half angle of the cone. */
  output: 'angle',
  assumes: ['one material', "steel-like Poisson's ratio"],
  source: [{ level: 'memory', where: 'VDI 2230-1, equations 5.1/26 and 5.1/27' }],
  requires: {
    outerDiameter: {
      accepts: 'must be larger than the bearing diameter, or the parts are a plain sleeve',
      holds: ({ outerDiameter, bearingDiameter }) => outerDiameter > bearingDiameter,
    },
  },
  si: ({ grip, bearingDiameter, outerDiameter, end }) => {
    const beta = grip / bearingDiameter
    const y = outerDiameter / bearingDiameter
    return Math.atan(
      end === 'nut' ? 0.362 + 0.032 * Math.log(beta / 2) + 0.153 * Math.log(y) : 0.348 + 0.013 * Math.log(beta) + 0.193 * Math.log(y),
    )
  },
})

/** Constants A and B of the exponential fit by material. */
const WILEMAN = {
  steel: [0.78715, 0.62873],
  aluminium: [0.7967, 0.63816],
  castIron: [0.77871, 0.61616],
  general: [0.78952, 0.62914],
} as const

/** Stiffness of clamped parts of one material by an exponential fit to finite-element results: a second opinion on the cones. */
export const memberStiffnessFit = /* @__PURE__ */ formula('fasteners.memberStiffnessFit', {
  inputs: {
    /** Modulus of the parts. */
    modulus: { kind: 'modulus', above: 0 },
    /** Bolt diameter. */
    diameter: { kind: 'length', above: 0 },
    /** Length of grip. */
    grip: { kind: 'length', above: 0 },
    /** Whose constants to use. */
    material: { oneOf: ['steel', 'aluminium', 'castIron', 'general'], default: 'general' },
  },
  /** Stiffness. */
  output: 'linearStiffness',
  assumes: ['one material of ample width', 'washer face of 1.5 diameters'],
  source: [
    { level: 'published', where: 'Wileman, Choudhury, Green 1991, as Shigley 9th ed., eq. 8-23 and table 8-8 (aluminium from memory)' },
  ],
  valid: { 'grip from 0.5 to 10 diameters': ({ grip, diameter }) => grip >= 0.5 * diameter && grip <= 10 * diameter },
  si: ({ modulus, diameter, grip, material }) => {
    const [a, b] = WILEMAN[material]
    return modulus * diameter * a * Math.exp((b * diameter) / grip)
  },
})
