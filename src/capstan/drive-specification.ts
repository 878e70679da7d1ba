import { type Given, isProperty, readInputs, type Si } from '../formula/index.js'
import { type In, InputError, type Issue, Quantity } from '../units/index.js'
import { type LoopCompliance, RIGID } from './branch.js'
import { frameCompliance } from './frame.js'
import { pulleyGeometry } from './geometry.js'

// No spread and no member access in these: bundlers keep what they cannot prove to be without effect.
const LOW_AND_HIGH = { low: { kind: 'ratio', above: 0 }, high: { kind: 'ratio', above: 0 } } as const
/** An interval of friction, as a specification takes it. */
export const RANGE = { fields: LOW_AND_HIGH } as const

const SPECIFICATION = {
  /** Whether the two spans cross between the pulleys. */
  arrangement: { oneOf: ['crossed', 'open'], default: 'crossed' },
  /** Radius of the pinion to the cord's centre line. */
  pinionRadius: { kind: 'length', above: 0 },
  /** Radius of the drum to the cord's centre line. */
  drumRadius: { kind: 'length', above: 0 },
  /** Distance between the two axes. */
  centreDistance: { kind: 'length', above: 0 },
  /** Full turns of cord on the pinion besides the part turn between the spans. */
  pinionTurns: { kind: 'count', min: 0 },
  /** Wrap on the drum from tangent point to anchor at mid travel, each side. */
  drumWrap: { kind: 'angle', above: 0 },
  /** Travel of the joint from end to end, half to either side of mid travel. Default: until an anchor reaches its tangent point. */
  travel: { kind: 'angle', min: 0, optional: true },
  /** Axial rigidity of the bedded-in cord. */
  axialRigidity: { kind: 'axialRigidity', above: 0 },
  /** Tension of both spans at rest. */
  pretension: { kind: 'force', above: 0 },
  /** Friction, cord on pinion: low and high end. */
  friction: RANGE,
  /** Friction, cord on drum. Default: that of the pinion. */
  drumFriction: { fields: LOW_AND_HIGH, optional: true },
  /** Exponent of friction that falls with pressure; both frictions are then those at the pretension. Default: 1, Coulomb friction. */
  frictionExponent: { kind: 'ratio', above: 0, max: 1, optional: true },
  /** Whether friction alone holds the cord on the pinion or a clamp in the middle of its wraps. */
  hold: { oneOf: ['frictionOnly', 'clampedMidPinion'], default: 'frictionOnly' },
  /** Tangential stiffness of the contact per length of cord, for windup. Default: rigid. */
  contactStiffness: { kind: 'foundationModulus', above: 0, optional: true },
  /**
   * Stiffness of frame, shafts and bearings between the two axes: along the line of centres, force per approach, and across it, force per sideways
   * shift. Default: rigid.
   */
  frameStiffness: {
    fields: {
      /** Force for each length that the axes approach along the line of centres. */
      along: { kind: 'linearStiffness', above: 0 },
      /** Force for each length that they shift across it. */
      across: { kind: 'linearStiffness', above: 0 },
    },
    optional: true,
  },
  /** A sprung tensioner: its stiffness along the cord, and the span that it is in, by the sign of the torque that tightens that span. Default: none. */
  tensioner: {
    fields: {
      /** Stiffness of the tensioner along the cord. */
      stiffness: { kind: 'linearStiffness', above: 0 },
      /** The span that it is in, by the sign of the torque that tightens that span. */
      span: { oneOf: ['positive', 'negative'] },
    },
    optional: true,
  },
  /** Highest tension the cord may carry; above it results bear a note. */
  allowableTension: { kind: 'force', above: 0, optional: true },
  /** Strain at which the cord breaks; more is an error, more than 2 % a note. Default: the highest of the fibres in `cordFibre`. */
  breakingStrain: { kind: 'strain', above: 0, default: '5.2 %' },
  /** Axial distance from groove to groove on the pinion. */
  groovePitch: { kind: 'length', above: 0, optional: true },
  /** Grooved length of the pinion. */
  pinionLength: { kind: 'length', above: 0, optional: true },
  /** Grooved length of the drum, both tracks. */
  drumLength: { kind: 'length', above: 0, optional: true },
  /** Free span of one branch, where idlers or a measurement differ from the geometry. Default: that of the geometry. */
  span: { kind: 'length', above: 0, optional: true },
  /** Angle of contact on the pinion, where it differs from the geometry. Default: that of the geometry. */
  pinionWrap: { kind: 'angle', above: 0, optional: true },
} as const

type Specified = Given<typeof SPECIFICATION>
/** A friction coefficient as one number, as the interval it lies in, or as a property, whose range is taken. */
export type FrictionRange =
  | In<'ratio'>
  | {
      /** The lowest friction to reckon with. */
      readonly low: In<'ratio'>
      /** The highest friction to reckon with. */
      readonly high: In<'ratio'>
    }
/** Specification of a cord drive. */
export type CordDriveSpecification = Omit<Specified, 'friction' | 'drumFriction'> & {
  /** Friction of the cord on the pinion, and on the drum where that has none of its own. */
  readonly friction: FrictionRange
  /** Friction of the cord on the drum. Default: that on the pinion. */
  readonly drumFriction?: FrictionRange | undefined
}

/** A friction given as one number, an interval or a property, as an interval. */
export function frictionRange(given: FrictionRange | undefined): { readonly low: In<'ratio'>; readonly high: In<'ratio'> } | undefined {
  if (given === undefined) return undefined
  if (isProperty(given)) return { low: given.low, high: given.high }
  const interval = typeof given === 'object' && given !== null && !('kind' in given) && ('low' in given || 'high' in given)
  return interval ? (given as { low: In<'ratio'>; high: In<'ratio'> }) : { low: given as In<'ratio'>, high: given as In<'ratio'> }
}

/** A specification read into SI numbers. Throws one `InputError` that lists every issue. */
export function readDrive(given: CordDriveSpecification): Read {
  const { friction, drumFriction, ...rest } = (given ?? {}) as CordDriveSpecification
  const x = readInputs('capstan.cordDrive', SPECIFICATION, {
    ...rest,
    friction: frictionRange(friction),
    ...(drumFriction === undefined ? {} : { drumFriction: frictionRange(drumFriction) }),
  } as Specified)
  checkTogether(x)
  return x
}

/** A specification in SI numbers. */
export type Read = Si<typeof SPECIFICATION>

/** A strain as text. */
export const percent = (strain: number) => `${Number((100 * strain).toPrecision(3))} %`

const length = (l: number) => String(new Quantity(l, 'length'))

function checkTogether(x: Read): void {
  const issues: Issue[] = []
  if (x.centreDistance <= x.pinionRadius + x.drumRadius)
    issues.push({
      path: 'centreDistance',
      given: length(x.centreDistance),
      accepts: `must exceed the sum of the centre-line radii, ${length(x.pinionRadius + x.drumRadius)}, or the pulleys overlap`,
    })
  if (x.travel !== undefined && x.travel > 2 * x.drumWrap)
    issues.push({
      path: 'travel',
      given: String(new Quantity(x.travel, 'angle')),
      accepts: `must not exceed twice the drum wrap, ${new Quantity(2 * x.drumWrap, 'angle')}, or an anchor leaves the drum`,
    })
  if (x.contactStiffness !== undefined && (x.frictionExponent ?? 1) < 1)
    issues.push({ path: 'contactStiffness', given: 'given', accepts: 'must be omitted with a friction exponent below 1' })
  const strain = x.pretension / x.axialRigidity
  if (strain > x.breakingStrain)
    issues.push({
      path: 'axialRigidity',
      given: String(new Quantity(x.axialRigidity, 'axialRigidity')),
      accepts: `must not let the pretension of ${new Quantity(x.pretension, 'force')} strain the cord by ${percent(strain)}, beyond its break at ${percent(x.breakingStrain)}: force over strain, usually kilonewtons`,
    })
  for (const name of ['friction', 'drumFriction'] as const) {
    const range = x[name]
    if (range !== undefined && range.low > range.high)
      issues.push({ path: name, given: `${range.low} to ${range.high}`, accepts: 'must have its low end at most its high end' })
  }
  if (issues.length === 0 && x.groovePitch !== undefined) checkGrooves(x, x.groovePitch, issues)
  if (issues.length > 0) throw new InputError('capstan.cordDrive', issues)
}

/** The grooved lengths must hold the wraps. */
function checkGrooves(x: Read, groovePitch: number, issues: Issue[]): void {
  const wrap = x.pinionWrap ?? pulleyGeometry.si(x).pinionWrap
  const pinion = (groovePitch * wrap) / (2 * Math.PI)
  if (x.pinionLength !== undefined && pinion > x.pinionLength)
    issues.push({ path: 'pinionLength', given: length(x.pinionLength), accepts: `must hold the wraps, at least ${length(pinion)}` })
  const drum = 2 * groovePitch * Math.max(1, x.drumWrap / (2 * Math.PI))
  if (x.drumLength !== undefined && drum > x.drumLength)
    issues.push({
      path: 'drumLength',
      given: length(x.drumLength),
      accepts: `must hold the wraps of both tracks, at least ${length(drum)}`,
    })
}

/** Compliance besides that of the cord, for torque in the positive direction; `undefined` for a rigid frame without a tensioner. */
export function complianceOf(x: Read): LoopCompliance | undefined {
  const { frameStiffness: frame, tensioner } = x
  if (frame === undefined && tensioner === undefined) return undefined
  const given = frame === undefined ? RIGID : frameCompliance.si({ ...x, stiffnessAlong: frame.along, stiffnessAcross: frame.across })
  const spring = tensioner === undefined ? 0 : 1 / tensioner.stiffness
  return {
    sum: given.sum,
    difference: given.difference,
    tautSpan: tensioner?.span === 'positive' ? spring : 0,
    slackSpan: tensioner?.span === 'negative' ? spring : 0,
  }
}
