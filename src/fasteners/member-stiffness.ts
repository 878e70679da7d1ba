import { formula } from '../formula/index.js'
import { GRIP } from './bolt-inputs.js'

const CONE_ANGLE = {
  /** Half angle of the cone. */
  halfAngle: { kind: 'angle', above: 0, below: '60 deg', default: '30 deg' },
} as const

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
    ...CONE_ANGLE,
  },
  /** Stiffness. */
  output: 'linearStiffness',
  equation: [
    'wideDiameter = narrowDiameter + 2 * thickness * tan(halfAngle)',
    'result = pi * modulus * holeDiameter * tan(halfAngle) / log((wideDiameter - holeDiameter) * (narrowDiameter + holeDiameter) / ((wideDiameter + holeDiameter) * (narrowDiameter - holeDiameter)))',
  ],
  assumes: ['uniform pressure on each plane of the cone', 'material reaches as far as the cone: else `memberCompliance`'],
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

/** A clamped layer. */
interface Layer {
  readonly thickness: number
  readonly modulus: number
  readonly outerDiameter: number
  readonly holeDiameter: number
}

/** Compliance over a thickness of a cone that starts with the diameter `start` and widens until it meets the layer's edge, a sleeve from there. */
function coneCompliance(start: number, thickness: number, halfAngle: number, { modulus, outerDiameter, holeDiameter }: Layer): number {
  const length = Math.min(thickness, Math.max(0, (outerDiameter - start) / (2 * Math.tan(halfAngle))))
  let sum = 0
  if (length > 0) sum += 1 / frustumStiffness.si({ modulus, thickness: length, narrowDiameter: start, holeDiameter, halfAngle })
  if (thickness > length) sum += (4 * (thickness - length)) / (Math.PI * modulus * (outerDiameter ** 2 - holeDiameter ** 2))
  return sum
}

/** Diameter with which a cone that starts with `start` enters each layer: a layer narrower than the cone sends it on with its own diameter. */
function enteredWith(layers: readonly Layer[], start: number, halfAngle: number): number[] {
  let diameter = start
  return layers.map(({ thickness, outerDiameter }) => {
    const entered = diameter
    diameter = Math.min(entered + 2 * thickness * Math.tan(halfAngle), outerDiameter)
    return entered
  })
}

/** Both cones: from the head, and from the nut (none in a tapped part, which the head's cone runs through). */
function bothCones(layers: readonly Layer[], headBearing: number, nutBearing: number, end: 'nut' | 'tapped', halfAngle: number) {
  const fromHead = enteredWith(layers, headBearing, halfAngle)
  if (end === 'tapped') return { fromHead, fromNut: layers.map(() => Number.POSITIVE_INFINITY) }
  return { fromHead, fromNut: enteredWith([...layers].reverse(), nutBearing, halfAngle).reverse() }
}

/**
 * Compliance of a stack of unlike layers between head and nut: a cone of pressure from each bearing ring until they meet, no wider than each layer really is.
 *
 * Layers are listed from the head. A thin boss ends the cone early and becomes a sleeve, and the cone behind it starts with the diameter of the boss. A tapped part has one cone only.
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
    /** Bearing diameter under the nut, or of its washer; not used in a tapped part. */
    nutBearing: { kind: 'length', above: 0 },
    /** Whether a nut or the last layer's thread closes the joint. */
    end: { oneOf: ['nut', 'tapped'], default: 'nut' },
    ...CONE_ANGLE,
  },
  output: {
    /** Compliance of the stack. */
    compliance: 'linearCompliance',
    /** Compliance of each layer. */
    layerCompliances: { list: 'linearCompliance' },
    /** Length of grip. */
    grip: 'length',
  },
  assumes: ['uniform pressure on each plane', "edges limit the cone to a sleeve of the layer's outer diameter"],
  source: [
    { level: 'published', where: 'Shigley 9th ed., eq. 8-19 (cone), members in series' },
    { level: 'unverified', where: 'VDI 2230-1, section 5.1.2 (cone and sleeve of a limited boss)' },
  ],
  requires: {
    layers: {
      accepts:
        'every layer must be wider than its hole, and its hole narrower than the cone of pressure that reaches it (a thicker washer widens the cone)',
      holds: ({ layers, headBearing, nutBearing, end, halfAngle }) => {
        const { fromHead, fromNut } = bothCones(layers, headBearing, nutBearing, end, halfAngle)
        return layers.every(({ outerDiameter, holeDiameter: hole }, i) => Math.min(outerDiameter, fromHead[i]!, fromNut[i]!) > hole)
      },
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
    const { fromHead, fromNut } = bothCones(layers, headBearing, nutBearing, end, halfAngle)
    const slope = 2 * Math.tan(halfAngle)
    const layerCompliances: number[] = []
    let compliance = 0
    let grip = 0
    for (let i = 0; i < layers.length; i++) {
      const layer = layers[i]!
      const meet = Math.min(layer.thickness, Math.max(0, (layer.thickness + (fromNut[i]! - fromHead[i]!) / slope) / 2))
      const one =
        coneCompliance(fromHead[i]!, meet, halfAngle, layer) + coneCompliance(fromNut[i]!, layer.thickness - meet, halfAngle, layer)
      layerCompliances.push(one)
      compliance += one
      grip += layer.thickness
    }
    return { compliance, layerCompliances, grip }
  },
})

/** The half angle of the pressure cone in bolt practice, by how long and how wide the clamped parts are. */
export const coneHalfAngle = /* @__PURE__ */ formula('fasteners.coneHalfAngle', {
  inputs: {
    ...GRIP,
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
  source: [{ level: 'unverified', where: 'VDI 2230-1, equations 5.1/26 and 5.1/27' }],
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
