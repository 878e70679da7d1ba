import { formula } from '../formula/index.js'

/** Strengths of the planes between layers. */
const LAYER_STRENGTHS = {
  /** Strength across the layers. */
  acrossStrength: { kind: 'stress', above: 0 },
  /** Shear strength between layers. */
  shearStrength: { kind: 'stress', above: 0 },
} as const

/**
 * Stress of a part in the axes of its layers: what pulls layers apart, what slides them, and the largest tension within them.
 * Give the six stresses in any axes of the part and the build direction in the same axes; its length does not matter.
 */
export const layerStress = /* @__PURE__ */ formula('materials.layerStress', {
  inputs: {
    /** Stress along x, tension positive. */
    xx: 'stress',
    /** Stress along y. */
    yy: 'stress',
    /** Stress along z. */
    zz: 'stress',
    /** Shear stress in xy. */
    xy: 'stress',
    /** Shear stress in yz. */
    yz: 'stress',
    /** Shear stress in zx. */
    zx: 'stress',
    /** Build direction: x, y and z parts of the normal of the layers. */
    buildDirection: { list: 'ratio', least: 3 },
  },
  output: {
    /** Stress across the layers, tension positive. */
    normal: 'stress',
    /** Size of the shear stress between layers. */
    shear: 'stress',
    /** Largest principal stress within the layers. */
    inPlaneLargest: 'stress',
    /** Smallest principal stress within the layers. */
    inPlaneSmallest: 'stress',
  },
  assumes: ['layers flat', 'stress that of a homogeneous part'],
  source: [{ level: 'commonPractice', where: 'Cauchy stress on a plane, any text on mechanics of materials' }],
  requires: {
    buildDirection: {
      accepts: 'must be three numbers, not all zero',
      holds: ({ buildDirection }) => buildDirection.length === 3 && Math.hypot(...buildDirection) > 0,
    },
  },
  si: ({ xx, yy, zz, xy, yz, zx, buildDirection }) => {
    const [a, b, c] = buildDirection as readonly [number, number, number]
    const length = Math.hypot(a, b, c)
    const [nx, ny, nz] = [a / length, b / length, c / length]
    const [tx, ty, tz] = [xx * nx + xy * ny + zx * nz, xy * nx + yy * ny + yz * nz, zx * nx + yz * ny + zz * nz]
    const normal = tx * nx + ty * ny + tz * nz
    const shear = Math.hypot(tx - normal * nx, ty - normal * ny, tz - normal * nz)
    // Two directions within the layer: the axis least along the normal, made square to it, and their cross product.
    const min = Math.abs(nx) <= Math.abs(ny) && Math.abs(nx) <= Math.abs(nz) ? 0 : Math.abs(ny) <= Math.abs(nz) ? 1 : 2
    const along = min === 0 ? nx : min === 1 ? ny : nz
    const size = Math.sqrt(1 - along * along)
    const ux = ((min === 0 ? 1 : 0) - along * nx) / size
    const uy = ((min === 1 ? 1 : 0) - along * ny) / size
    const uz = ((min === 2 ? 1 : 0) - along * nz) / size
    const [vx, vy, vz] = [ny * uz - nz * uy, nz * ux - nx * uz, nx * uy - ny * ux]
    const [px, py, pz] = [xx * ux + xy * uy + zx * uz, xy * ux + yy * uy + yz * uz, zx * ux + yz * uy + zz * uz]
    const uu = px * ux + py * uy + pz * uz
    const uv = px * vx + py * vy + pz * vz
    const vv = (xx * vx + xy * vy + zx * vz) * vx + (xy * vx + yy * vy + yz * vz) * vy + (zx * vx + yz * vy + zz * vz) * vz
    const middle = (uu + vv) / 2
    const radius = Math.hypot((uu - vv) / 2, uv)
    return { normal, shear, inPlaneLargest: middle + radius, inPlaneSmallest: middle - radius }
  },
})

/**
 * Whether layers hold together: (σₙ/Z)² + (τ/S)² of tension across and shear between them. Compression across the layers is never counted
 * against them, and its friction never for them.
 */
export const interlayerUtilisation = /* @__PURE__ */ formula('materials.interlayerUtilisation', {
  inputs: {
    /** Stress across the layers, tension positive. */
    normal: 'stress',
    /** Size of the shear stress between layers. */
    shear: { kind: 'stress', min: 0 },
    ...LAYER_STRENGTHS,
  },
  output: {
    /** Share of the strength used: all loads could grow by its reciprocal. */
    utilisation: 'ratio',
    /** Factor by which the loads may grow; infinite when nothing opens or slides the layers. */
    reserve: { kind: 'ratio', infinite: true },
    /** Whether the layers hold. */
    state: { oneOf: ['holds', 'separates'] },
  },
  equation: ['utilisation = sqrt((max(normal, 0 Pa) / acrossStrength)^2 + (shear / shearStrength)^2)', 'reserve = 1 / utilisation'],
  assumes: ['tension and shear interact as a quarter ellipse', 'compression neither helps nor harms'],
  source: [{ level: 'unverified', where: 'quadratic delamination criterion (Brewer & Lagace 1988) with tension only' }],
  si: ({ normal, shear, acrossStrength, shearStrength }) => {
    const utilisation = Math.hypot(Math.max(normal, 0) / acrossStrength, shear / shearStrength)
    return {
      utilisation,
      reserve: utilisation > 0 ? 1 / utilisation : Number.POSITIVE_INFINITY,
      state: utilisation <= 1 ? 'holds' : 'separates',
    }
  },
})

/**
 * What a bar's print direction makes of its load: a bar pulled or bent along its length, built at an angle to the plate.
 * Flat on the plate (0°) the stress runs along the layers; upright (90°) it pulls them apart.
 */
export const buildAngleUtilisation = /* @__PURE__ */ formula('materials.buildAngleUtilisation', {
  inputs: {
    /** Largest tension along the bar, from pull or bending. */
    stress: 'stress',
    /** Angle between the bar's length and the layers: 0° flat, 90° upright. */
    angle: { kind: 'angle', min: 0, max: '90 deg' },
    /** Strength along the layers. */
    alongStrength: { kind: 'stress', above: 0 },
    ...LAYER_STRENGTHS,
  },
  output: {
    /** Stress across the layers. */
    normal: 'stress',
    /** Shear between layers. */
    shear: 'stress',
    /** Share of the strength used, the worse of within and between layers. */
    utilisation: 'ratio',
    /** Where it fails first. */
    governs: { oneOf: ['withinLayers', 'betweenLayers'] },
  },
  assumes: ['uniaxial stress along the bar', 'layers flat'],
  source: [{ level: 'commonPractice', where: 'uniaxial stress on an inclined plane, any text on mechanics of materials' }],
  si: ({ stress, angle, alongStrength, acrossStrength, shearStrength }) => {
    const normal = stress * Math.sin(angle) ** 2
    const shear = Math.abs(stress) * Math.sin(angle) * Math.cos(angle)
    const between = interlayerUtilisation.si({ normal, shear, acrossStrength, shearStrength }).utilisation
    const within = (Math.abs(stress) * Math.cos(angle) ** 2) / alongStrength
    return { normal, shear, utilisation: Math.max(between, within), governs: between > within ? 'betweenLayers' : 'withinLayers' }
  },
})
