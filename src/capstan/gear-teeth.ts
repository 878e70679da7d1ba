import { formula } from '../formula/index.js'
import { MODULE, TANGENTIAL_FORCE } from './belt-and-gear-inputs.js'
import { CENTRE_DISTANCE } from './inputs.js'

/** Root stress of a spur gear tooth by the Lewis formula. */
export const lewisRootStress = /* @__PURE__ */ formula('capstan.lewisRootStress', {
  inputs: {
    ...TANGENTIAL_FORCE,
    ...MODULE,
    /** Face width. */
    faceWidth: { kind: 'length', above: 0 },
    /** Lewis form factor of the tooth number (0.296 for 16 teeth, 20° full depth). */
    formFactor: { kind: 'ratio', above: 0 },
    /** Pitch-line speed. */
    pitchSpeed: { kind: 'velocity', min: 0, default: '0 m/s' },
  },
  output: {
    /** Bending stress at the root. */
    rootStress: 'stress',
    /** Dynamic factor for cut teeth. */
    dynamicFactor: 'ratio',
  },
  equation: [
    'dynamicFactor = (6.1 m/s + pitchSpeed) / (6.1 m/s)',
    'rootStress = dynamicFactor * tangentialForce / (faceWidth * module * formFactor)',
  ],
  assumes: ['one tooth carries all', 'no stress concentration, no temperature: for polymers the flank temperature decides'],
  source: [
    { level: 'unverified', where: "Lewis equation with Barth's factor (6.1 + V)/6.1: Shigley's Mechanical Engineering Design, sec. 14-1" },
  ],
  si: ({ tangentialForce, module, faceWidth, formFactor, pitchSpeed }) => {
    const dynamicFactor = (6.1 + pitchSpeed) / 6.1
    return { rootStress: (dynamicFactor * tangentialForce) / (faceWidth * module * formFactor), dynamicFactor }
  },
})

/** Lewis form factor of a spur gear tooth, 20° full depth, between the printed tooth numbers by straight lines in 1/z. */
export const lewisFormFactor = /* @__PURE__ */ formula('capstan.lewisFormFactor', {
  inputs: {
    /** Teeth. */
    teeth: { kind: 'count', min: 12, whole: true },
  },
  /** Form factor. */
  output: 'ratio',
  source: [{ level: 'published', where: 'A. Blengino, lewis_factor_table.csv of an open gear library: table of full-depth teeth, read' }],
  si: ({ teeth }) => {
    const z = [12, 13, 14, 15, 16, 17, 18, 20, 22, 24, 28, 32, 38, 45, 55, 65, 80, 100, 150, 200, 300, 400, 500, Number.POSITIVE_INFINITY]
    const y = [
      0.245, 0.264, 0.276, 0.289, 0.295, 0.302, 0.308, 0.32, 0.33, 0.337, 0.352, 0.364, 0.383, 0.399, 0.415, 0.425, 0.436, 0.446, 0.458,
      0.463, 0.471, 0.478, 0.484, 0.484,
    ]
    let i = 0
    while (i < z.length - 2 && teeth > (z[i + 1] as number)) i++
    const [a, b] = [1 / (z[i] as number), 1 / (z[i + 1] as number)]
    const [ya, yb] = [y[i] as number, y[i + 1] as number]
    return ya + ((yb - ya) * (a - 1 / teeth)) / (a - b)
  },
})

/** Lost motion at the joint that a clearance between teeth makes. */
export const backlashAngle = /* @__PURE__ */ formula('capstan.backlashAngle', {
  inputs: {
    /** Clearance along the pitch circle. */
    backlash: { kind: 'length', min: 0 },
    /** Pitch radius of the wheel on the joint. */
    pitchRadius: { kind: 'length', above: 0 },
  },
  /** Angle of free play at the joint. */
  output: 'angle',
  equation: ['result = backlash / pitchRadius'],
  source: [{ level: 'computed', where: 'arc over radius' }],
  si: ({ backlash, pitchRadius }) => backlash / pitchRadius,
})

/** Least backlash of a pair of metal spur gears: an allowance for tooth errors, heat and bearings, so that they never jam. Printed gears need more. */
export const gearBacklash = /* @__PURE__ */ formula('capstan.gearBacklash', {
  inputs: {
    ...MODULE,
    ...CENTRE_DISTANCE,
  },
  output: {
    /** Least backlash along the line of action. */
    normal: 'length',
    /** The same along the pitch circle, at 20° of pressure angle. */
    alongPitchCircle: 'length',
  },
  equation: ['normal = 2 / 3 * (0.06 mm + 0.0005 * centreDistance + 0.03 * module)', 'alongPitchCircle = normal / cos(20 deg)'],
  assumes: ['ferrous gears in ferrous housings at less than 15 m/s', 'commercial tolerances of housing, shafts and bearings'],
  source: [{ level: 'unverified', where: 'ISO/TR 10064-2: (2/3)(0.06 mm + 0.0005 a + 0.03 m)' }],
  si: ({ module, centreDistance }) => {
    const normal = (2 / 3) * (6e-5 + 0.0005 * centreDistance + 0.03 * module)
    return { normal, alongPitchCircle: normal / Math.cos((20 * Math.PI) / 180) }
  },
})
