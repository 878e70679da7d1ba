import { formula } from '../formula/index.js'
import { BELT_FITS, BELT_PULLEYS, TANGENTIAL_FORCE } from './belt-and-gear-inputs.js'

const WIDTH = {
  /** Width of the belt. */
  width: { kind: 'length', above: 0 },
} as const

/** Teeth of a tooth belt in mesh on the small pulley, and the tooth factor when they are few. */
export const beltTeethInMesh = /* @__PURE__ */ formula('capstan.beltTeethInMesh', {
  inputs: BELT_PULLEYS,
  output: {
    /** Teeth in mesh, before rounding down. */
    exact: 'ratio',
    /** Whole teeth in mesh. */
    teethInMesh: 'count',
    /** Share of the belt's rating: 1 from six teeth, 0.2 less for each one missing. */
    toothFactor: 'ratio',
  },
  equation: [
    'exact = smallTeeth / 2 - pitch * smallTeeth * (largeTeeth - smallTeeth) / (2 * pi^2 * centreDistance)',
    'teethInMesh = floor(exact)',
    'toothFactor = teethInMesh >= 6 ? 1 : max(0, 1 - 0.2 * (6 - teethInMesh))',
  ],
  requires: BELT_FITS,
  source: [{ level: 'unverified', where: 'ISO 5295 (trapezoidal synchronous belts)' }],
  si: ({ smallTeeth, largeTeeth, pitch, centreDistance }) => {
    const exact = smallTeeth / 2 - (pitch * smallTeeth * (largeTeeth - smallTeeth)) / (2 * Math.PI * Math.PI * centreDistance)
    const teethInMesh = Math.floor(exact)
    return { exact, teethInMesh, toothFactor: teethInMesh >= 6 ? 1 : Math.max(0, 1 - 0.2 * (6 - teethInMesh)) }
  },
})

/** Power and torque a trapezoidal tooth belt may transmit. */
export const beltRating = /* @__PURE__ */ formula('capstan.beltRating', {
  inputs: {
    /** Allowable tension of a belt of the reference width. */
    allowableTension: { kind: 'force', above: 0 },
    /** Mass per length of a belt of the reference width. */
    massPerLength: { kind: 'massPerLength', min: 0 },
    /** Reference width. */
    referenceWidth: { kind: 'length', above: 0 },
    ...WIDTH,
    /** Belt speed. */
    speed: { kind: 'velocity', above: 0 },
    /** Tooth factor of the small pulley. */
    toothFactor: { kind: 'ratio', min: 0, max: 1 },
    /** Pitch radius of the small pulley. */
    pitchRadius: { kind: 'length', above: 0 },
  },
  output: {
    /** Power. */
    power: 'power',
    /** Torque at the small pulley. */
    torque: 'torque',
    /** Width factor. */
    widthFactor: 'ratio',
  },
  equation: [
    'widthFactor = (width / referenceWidth)^1.14',
    'power = (toothFactor * widthFactor * allowableTension - width / referenceWidth * massPerLength * speed^2) * speed',
    'torque = (toothFactor * widthFactor * allowableTension - width / referenceWidth * massPerLength * speed^2) * pitchRadius',
  ],
  requires: {
    speed: {
      accepts: 'leaves no tension for power at this speed',
      holds: ({ allowableTension, massPerLength, referenceWidth, width, speed, toothFactor }) =>
        toothFactor * (width / referenceWidth) ** 1.14 * allowableTension > (width / referenceWidth) * massPerLength * speed * speed,
    },
  },
  source: [{ level: 'unverified', where: 'ISO 5295: P = (k_z k_w T_a − (b/b₀) m v²) v, k_w = (b/b₀)^1.14' }],
  si: ({ allowableTension, massPerLength, referenceWidth, width, speed, toothFactor, pitchRadius }) => {
    const share = width / referenceWidth
    const widthFactor = share ** 1.14
    const force = toothFactor * widthFactor * allowableTension - share * massPerLength * speed * speed
    return { power: force * speed, torque: force * pitchRadius, widthFactor }
  },
})

/** Mean shear stress in the teeth of a tooth belt or printed pulley. */
export const beltToothShear = /* @__PURE__ */ formula('capstan.beltToothShear', {
  inputs: {
    ...TANGENTIAL_FORCE,
    /** Whole teeth in mesh. */
    teethInMesh: { kind: 'count', min: 1 },
    ...WIDTH,
    /** Width of a tooth at its root, along the belt. */
    rootWidth: { kind: 'length', above: 0 },
  },
  /** Mean shear stress of the teeth in mesh. */
  output: 'stress',
  equation: ['result = tangentialForce / (teethInMesh * width * rootWidth)'],
  assumes: ['all teeth in mesh carry alike; the first carries more'],
  source: [{ level: 'computed', where: 'force over sheared area' }],
  si: ({ tangentialForce, teethInMesh, width, rootWidth }) => tangentialForce / (teethInMesh * width * rootWidth),
})
