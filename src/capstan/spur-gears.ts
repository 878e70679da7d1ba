import { formula } from '../formula/index.js'
import { MODULE, TANGENTIAL_FORCE } from './belt-and-gear-inputs.js'
import { CENTRE_DISTANCE } from './inputs.js'

const PRESSURE_ANGLE = (20 * Math.PI) / 180

/** Pairs of teeth of two spur gears that are in contact on the average, 20° of pressure angle. */
export const spurContactRatio = /* @__PURE__ */ formula('capstan.spurContactRatio', {
  inputs: {
    /** Teeth of the pinion. */
    pinionTeeth: { kind: 'count', min: 6, whole: true },
    /** Teeth of the wheel. */
    wheelTeeth: { kind: 'count', min: 6, whole: true },
    ...MODULE,
    /** Tip radius of the pinion: for standard teeth a module more than its pitch radius. */
    pinionTipRadius: { kind: 'length', above: 0 },
    /** Tip radius of the wheel. */
    wheelTipRadius: { kind: 'length', above: 0 },
    ...CENTRE_DISTANCE,
  },
  output: {
    /** Length of the path of contact over the pitch of the base circles. */
    contactRatio: 'ratio',
    /** Pressure angle at which the gears work. */
    workingAngle: 'angle',
  },
  equation: [
    'workingAngle = acos(module * (pinionTeeth + wheelTeeth) / 2 * cos(20 deg) / centreDistance)',
    'pinionBase = module * pinionTeeth / 2 * cos(20 deg)',
    'wheelBase = module * wheelTeeth / 2 * cos(20 deg)',
    'contactRatio = (sqrt(pinionTipRadius^2 - pinionBase^2) + sqrt(wheelTipRadius^2 - wheelBase^2) - centreDistance * sin(workingAngle)) / (pi * module * cos(20 deg))',
  ],
  requires: {
    centreDistance: {
      accepts: 'must be more than the sum of the base radii, or no flanks touch',
      holds: (x) => x.centreDistance > (x.module * (x.pinionTeeth + x.wheelTeeth) * Math.cos(PRESSURE_ANGLE)) / 2,
    },
    pinionTipRadius: {
      accepts: 'must be more than the base radius of the pinion',
      holds: (x) => x.pinionTipRadius > (x.module * x.pinionTeeth * Math.cos(PRESSURE_ANGLE)) / 2,
    },
    wheelTipRadius: {
      accepts: 'must be more than the base radius of the wheel',
      holds: (x) => x.wheelTipRadius > (x.module * x.wheelTeeth * Math.cos(PRESSURE_ANGLE)) / 2,
    },
  },
  valid: {
    'contact ratio of at least 1 (below, the teeth let go before the next ones meet)': (_, { contactRatio }) => contactRatio >= 1,
    'the tips of each gear meet the flanks of the other above its base circle (else they cut in, or the roots are undercut)': (
      x,
      { workingAngle },
    ) => {
      const whole = x.centreDistance * Math.sin(workingAngle) * (1 + 1e-9)
      const base = (x.module * Math.cos(PRESSURE_ANGLE)) / 2
      return (
        Math.max(x.pinionTipRadius ** 2 - (x.pinionTeeth * base) ** 2, x.wheelTipRadius ** 2 - (x.wheelTeeth * base) ** 2) <= whole ** 2
      )
    },
  },
  assumes: ['involute flanks over the whole path of contact: no undercut'],
  source: [
    {
      level: 'published',
      where: 'T. Eritenel, notebook series on gears (2019), geometry, chapter 2, check of the contact ratio, with base circles',
    },
  ],
  si: ({ pinionTeeth, wheelTeeth, module, pinionTipRadius, wheelTipRadius, centreDistance }) => {
    const cos = Math.cos(PRESSURE_ANGLE)
    const [pinionBase, wheelBase] = [(module * pinionTeeth * cos) / 2, (module * wheelTeeth * cos) / 2]
    const workingAngle = Math.acos((pinionBase + wheelBase) / centreDistance)
    const path =
      Math.sqrt(pinionTipRadius ** 2 - pinionBase ** 2) +
      Math.sqrt(wheelTipRadius ** 2 - wheelBase ** 2) -
      centreDistance * Math.sin(workingAngle)
    return { contactRatio: path / (Math.PI * module * cos), workingAngle }
  },
})

/** Forces between the teeth of two spur gears under a torque, 20° of pressure angle. */
export const spurMeshForce = /* @__PURE__ */ formula('capstan.spurMeshForce', {
  inputs: {
    /** Torque of one gear. */
    torque: { kind: 'torque', min: 0 },
    /** Pitch radius of that gear. */
    pitchRadius: { kind: 'length', above: 0 },
    /** Pressure angle at the pitch circle. */
    pressureAngle: { kind: 'angle', above: 0, below: '90 deg', default: '20 deg' },
  },
  output: {
    /** Force along the pitch circle. */
    tangential: 'force',
    /** Force that pushes the axes apart. */
    radial: 'force',
    /** Both together: the force across each axis. */
    normal: 'force',
  },
  equation: ['tangential = torque / pitchRadius', 'radial = tangential * tan(pressureAngle)', 'normal = tangential / cos(pressureAngle)'],
  assumes: ['no friction between the flanks'],
  source: [{ level: 'published', where: 'T. Eritenel, notebook series on gears (2019), strength, chapter 1' }],
  si: ({ torque, pitchRadius, pressureAngle }) => {
    const tangential = torque / pitchRadius
    return { tangential, radial: tangential * Math.tan(pressureAngle), normal: tangential / Math.cos(pressureAngle) }
  },
})

/** Largest pressure between the flanks of two spur gears at the pitch point, 20° of pressure angle, by Hertz. */
export const spurContactPressure = /* @__PURE__ */ formula('capstan.spurContactPressure', {
  inputs: {
    ...TANGENTIAL_FORCE,
    /** Face width in contact. */
    faceWidth: { kind: 'length', above: 0 },
    /** Pitch radius of the pinion. */
    pinionRadius: { kind: 'length', above: 0 },
    /** Pitch radius of the wheel. */
    wheelRadius: { kind: 'length', above: 0 },
    /** Modulus of the pinion. */
    pinionModulus: { kind: 'modulus', above: 0 },
    /** Modulus of the wheel. */
    wheelModulus: { kind: 'modulus', above: 0 },
    /** Poisson's ratio of the pinion. */
    pinionPoissonRatio: { kind: 'ratio', min: 0, max: 0.5, default: 0.3 },
    /** Poisson's ratio of the wheel. */
    wheelPoissonRatio: { kind: 'ratio', min: 0, max: 0.5, default: 0.3 },
  },
  /** Pressure in the middle of the line of contact. */
  output: 'stress',
  equation: [
    'compliance = (1 - pinionPoissonRatio^2) / pinionModulus + (1 - wheelPoissonRatio^2) / wheelModulus',
    'curvature = (1 / pinionRadius + 1 / wheelRadius) / sin(20 deg)',
    'result = sqrt(tangentialForce / cos(20 deg) * curvature / (pi * faceWidth * compliance))',
  ],
  assumes: ['one pair of teeth carries all at the pitch point', 'smooth flanks, uniform along the face'],
  source: [
    {
      level: 'published',
      where:
        'Hertz pressure of two cylinders: G. M. Maitra, Handbook of Gear Design (1994), as T. Eritenel, notebook series on gears (2019), strength, chapter 3, print it',
    },
  ],
  si: (x) => {
    const compliance = (1 - x.pinionPoissonRatio ** 2) / x.pinionModulus + (1 - x.wheelPoissonRatio ** 2) / x.wheelModulus
    const curvature = (1 / x.pinionRadius + 1 / x.wheelRadius) / Math.sin(PRESSURE_ANGLE)
    return Math.sqrt(((x.tangentialForce / Math.cos(PRESSURE_ANGLE)) * curvature) / (Math.PI * x.faceWidth * compliance))
  },
})
