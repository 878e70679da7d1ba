import { type Given, notesOf, readInputs, type Si } from '../formula/index.js'
import { type In, InputError, type Note, Quantity, quantity, show } from '../units/index.js'
import { pulleyGeometry } from './geometry.js'
import { slackLimitTorque, slipLimitTorque } from './limits.js'
import { loadPath, type PathPoint } from './load-path.js'
import { type DriveState, driveWindup, freeArcStiffness, slipTorque, spanStiffness } from './stiffness.js'
import { type TravelEnd, type TravelPath, travelPath } from './travel-path.js'

const RANGE = { fields: { low: { kind: 'ratio', above: 0 }, high: { kind: 'ratio', above: 0 } } } as const

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
  /** Axial rigidity of the bedded-in cord. */
  axialRigidity: { kind: 'axialRigidity', above: 0 },
  /** Tension of both spans at rest. */
  pretension: { kind: 'force', above: 0 },
  /** Friction, cord on pinion: low and high end. */
  friction: RANGE,
  /** Friction, cord on drum; the pinion's where not given. */
  drumFriction: { ...RANGE, optional: true },
  /** Whether friction alone holds the cord on the pinion or a clamp in the middle of its wraps. */
  hold: { oneOf: ['frictionOnly', 'clampedMidPinion'], default: 'frictionOnly' },
  /** Tangential stiffness of the contact per length of cord, for windup; rigid where not given. */
  contactStiffness: { kind: 'foundationModulus', above: 0, optional: true },
  /** Highest tension the cord may carry; above it results bear a note. */
  allowableTension: { kind: 'force', above: 0, optional: true },
  /** Axial distance from groove to groove on the pinion. */
  groovePitch: { kind: 'length', above: 0, optional: true },
  /** Grooved length of the pinion. */
  pinionLength: { kind: 'length', above: 0, optional: true },
  /** Grooved length of the drum, both tracks. */
  drumLength: { kind: 'length', above: 0, optional: true },
  /** Free span of one branch, where idlers or measurement make it other than the geometry says. */
  span: { kind: 'length', above: 0, optional: true },
  /** Angle of contact on the pinion, where it is other than the geometry says. */
  pinionWrap: { kind: 'angle', above: 0, optional: true },
} as const

type Specified = Given<typeof SPECIFICATION>
/** A friction coefficient as one number, or as the interval it lies in. */
export type FrictionRange = In<'ratio'> | { readonly low: In<'ratio'>; readonly high: In<'ratio'> }
/** What a drive is made from. */
export type DriveSpecification = Omit<Specified, 'friction' | 'drumFriction'> & {
  readonly friction: FrictionRange
  readonly drumFriction?: FrictionRange | undefined
}

/** One result at either end of the friction interval. Which is the larger depends on the result: lost motion can even peak in between. */
export interface AtFriction<T> {
  readonly atLowFriction: T
  readonly atHighFriction: T
}

/** Windup at a torque, with bounds. */
export interface Windup {
  /** Angle of the joint against its unloaded place. */
  readonly windup: Quantity<'angle'>
  /** Slope of torque over angle. */
  readonly tangentStiffness: Quantity<'torsionalStiffness'>
  /** Torque over angle. */
  readonly secantStiffness: Quantity<'torsionalStiffness'>
  readonly tautTension: Quantity<'force'>
  readonly slackTension: Quantity<'force'>
  /** The torque, or the slip torque if that is less. */
  readonly torqueCarried: Quantity<'torque'>
  readonly state: 'tight' | 'slackSpan' | 'slips'
  /** Bounds the secant stiffness from below: all wrapped cord stretches freely. */
  readonly secantStiffnessAtLeast: Quantity<'torsionalStiffness'>
  /** Bounds tangent and secant stiffness from above: the wrapped cord gives nothing. */
  readonly stiffnessAtMost: Quantity<'torsionalStiffness'>
}

/** Torques at which a drive stops holding. */
export interface DriveLimits {
  /** Solved: the pinion slips under the cord. Absent for a clamped cord, which cannot. */
  readonly slipTorque: Quantity<'torque'> | undefined
  /** Estimate with equal span forces, lower than the solved one. */
  readonly slipEstimate: Quantity<'torque'> | undefined
  /** Estimate with equal span forces of the torque at which a span goes loose if nothing slips. */
  readonly slackEstimate: Quantity<'torque'>
}

/** A load history at one pose. */
export interface LoadHistory {
  readonly points: readonly {
    readonly torque: Quantity<'torque'>
    readonly windup: Quantity<'angle'>
    readonly tautTension: Quantity<'force'>
    readonly slackTension: Quantity<'force'>
    readonly state: PathPoint['state']
  }[]
  /** Work put in over the history: where it ends as it began, the energy that friction took. */
  readonly loss: Quantity<'energy'>
  /** Angle between the extremes of windup found at zero torque; zero where the history meets zero torque less than twice. */
  readonly lostMotion: Quantity<'angle'>
  /** Angle at the joint that the pinion has slipped through. */
  readonly slipped: Quantity<'angle'>
}

/** What travel under load does to a drive. */
export interface TravelResult {
  readonly points: readonly {
    readonly jointAngle: Quantity<'angle'>
    readonly pinionAngle: Quantity<'angle'>
    readonly torque: Quantity<'torque'>
    readonly tautTension: Quantity<'force'>
    readonly slackTension: Quantity<'force'>
  }[]
  /** How far the history was followed. */
  readonly end: TravelEnd
  /**
   * `elementStays`: some cord element never leaves the pinion, the registry does not drift. `everyElementPasses`: the pinion travel
   * exceeds the wrap. `between`: the wrap would hold the travel but not the slip arcs beside it.
   */
  readonly regime: 'elementStays' | 'between' | 'everyElementPasses'
  /** Highest tension in the last cycle. */
  readonly peakTension: Quantity<'force'>
  /** Lowest tension of a span in the last cycle. */
  readonly leastTension: Quantity<'force'>
  /** Mean of both spans at the end of the last cycle: the pretension on the return. */
  readonly pretensionAtEnd: Quantity<'force'>
  /** Change of the pinion's angle against the joint over the last cycle. */
  readonly driftPerCycle: Quantity<'angle'>
  /** Axial walk of the wraps along the groove over the last cycle; absent without a groove pitch. */
  readonly walkPerCycle: Quantity<'length'> | undefined
  /** Least wrap left before an anchor. */
  readonly leastDrumWrap: Quantity<'angle'>
}

/** A cord drive: immutable, made from one specification; every result at both ends of the friction interval. */
export interface Drive {
  readonly ratio: Quantity<'ratio'>
  readonly span: Quantity<'length'>
  readonly pinionWrap: Quantity<'angle'>
  /** The drive at one end of the friction interval on SI numbers, as the kernels take it. */
  readonly si: AtFriction<DriveState>
  /** Torques at which it stops holding. */
  limits(): AtFriction<DriveLimits>
  /** Windup at a torque of either sign from rest. A torque above slip is answered: slips at so much. */
  windup(torque: In<'torque'>): AtFriction<Windup>
  /** Follows torques (or angles) at one pose, motor locked. */
  path(history: { readonly torques: readonly In<'torque'>[] } | { readonly angles: readonly In<'angle'>[] }): AtFriction<LoadHistory>
  /** Repeats a cycle of joint angle and torque, from mid travel, and looks at the last. */
  travel(cycle: {
    readonly steps: readonly { readonly jointAngle: In<'angle'>; readonly torque: In<'torque'> }[]
    /** Times the steps are repeated. */
    readonly cycles: number
    /** Longest step of the joint; default 0.01 rad. */
    readonly resolution?: In<'angle'> | undefined
  }): AtFriction<TravelResult>
}

const asRange = (given: FrictionRange | undefined) =>
  given !== undefined && typeof given === 'object' && given !== null && 'low' in given && 'high' in given && !('kind' in given)
    ? given
    : given === undefined
      ? undefined
      : ({ low: given, high: given } as { low: In<'ratio'>; high: In<'ratio'> })

/**
 * Makes a cord drive from its specification. Throws one `InputError` that lists every issue: overlapping pulleys, a friction interval
 * upside down, wraps that do not fit the grooved lengths.
 */
export function drive(given: DriveSpecification): Drive {
  const { friction, drumFriction, ...rest } = (given ?? {}) as DriveSpecification
  const x = readInputs('capstan.drive', SPECIFICATION, {
    ...rest,
    friction: asRange(friction),
    ...(drumFriction === undefined ? {} : { drumFriction: asRange(drumFriction) }),
  } as Specified)
  checkTogether(x)
  const geometry = pulleyGeometry.si({ ...x, extraTurns: x.pinionTurns })
  const span = x.span ?? geometry.span
  const pinionWrap = x.pinionWrap ?? geometry.pinionWrapAngle
  const state = (end: 'low' | 'high'): DriveState => ({
    axialRigidity: x.axialRigidity,
    pretension: x.pretension,
    pinionRadius: x.pinionRadius,
    drumRadius: x.drumRadius,
    span,
    pinionWrap,
    drumWrapTaut: x.drumWrap,
    drumWrapSlack: x.drumWrap,
    friction: x.friction[end],
    drumFriction: (x.drumFriction ?? x.friction)[end],
    hold: x.hold,
    contactStiffness: x.contactStiffness,
  })
  const si = { atLowFriction: state('low'), atHighFriction: state('high') }
  const inherited = notesOf(given)
  const both = <T>(f: (d: DriveState) => T): AtFriction<T> => ({ atLowFriction: f(si.atLowFriction), atHighFriction: f(si.atHighFriction) })
  const about = (peak: number): readonly Note[] | undefined => {
    if (x.allowableTension === undefined || peak <= x.allowableTension) return inherited
    const text = `tension of ${new Quantity(peak, 'force')} is above the allowable ${new Quantity(x.allowableTension, 'force')} of the cord`
    return [...(inherited ?? []), { formula: 'capstan.drive', text }]
  }
  return {
    ratio: new Quantity(x.drumRadius / x.pinionRadius, 'ratio', undefined, inherited),
    span: new Quantity(span, 'length', undefined, inherited),
    pinionWrap: new Quantity(pinionWrap, 'angle', undefined, inherited),
    si,
    limits: () => both((d) => limitsOf(d, about(d.pretension))),
    windup: (torque) => {
      const wanted = quantity('torque', torque).si
      return both((d) => windupOf(d, wanted, about))
    },
    path: (history) => {
      const byTorque = 'torques' in history
      const values = byTorque ? history.torques.map((t) => quantity('torque', t).si) : history.angles.map((a) => quantity('angle', a).si)
      if (x.contactStiffness !== undefined)
        throw new InputError('capstan.drive.path', [
          {
            path: 'contactStiffness',
            given: show(x.contactStiffness),
            accepts: 'must be left out: a load history takes sticking cord as rigid',
          },
        ])
      return both((d) => historyOf(loadPath(d, byTorque ? 'torque' : 'angle', finely(values)), about))
    },
    travel: ({ steps, cycles, resolution = '0.01 rad' }) => {
      if (!(Number.isInteger(cycles) && cycles >= 1) || steps.length === 0)
        throw new InputError('capstan.drive.travel', [
          { path: 'cycles', given: show(cycles), accepts: 'must be a whole number of at least 1, with at least one step' },
        ])
      const q = steps.map((step) => quantity('angle', step.jointAngle).si)
      const t = steps.map((step) => quantity('torque', step.torque).si)
      const longest = quantity('angle', resolution).si
      if (!(longest > 0))
        throw new InputError('capstan.drive.travel', [{ path: 'resolution', given: show(resolution), accepts: 'must be above 0' }])
      const repeat = (list: number[]) => Float64Array.from({ length: cycles * list.length }, (_, i) => list[i % list.length] as number)
      return both((d) =>
        travelOf(d, travelPath(d, repeat(q), repeat(t), longest), steps.length, Math.max(...q, 0) - Math.min(...q, 0), x, about),
      )
    },
  }
}

type Read = Si<typeof SPECIFICATION>

function checkTogether(x: Read): void {
  const issues: { path: string; given: string; accepts: string }[] = []
  const length = (l: number) => String(new Quantity(l, 'length'))
  if (x.centreDistance <= x.pinionRadius + x.drumRadius)
    issues.push({
      path: 'centreDistance',
      given: length(x.centreDistance),
      accepts: `must exceed the sum of the centre-line radii, ${length(x.pinionRadius + x.drumRadius)}, or the pulleys overlap`,
    })
  for (const name of ['friction', 'drumFriction'] as const) {
    const range = x[name]
    if (range !== undefined && range.low > range.high)
      issues.push({ path: name, given: `${range.low} to ${range.high}`, accepts: 'must have its low end at most its high end' })
  }
  if (issues.length === 0 && x.groovePitch !== undefined) {
    const wrap = x.pinionWrap ?? pulleyGeometry.si({ ...x, extraTurns: x.pinionTurns }).pinionWrapAngle
    const pinion = (x.groovePitch * wrap) / (2 * Math.PI)
    if (x.pinionLength !== undefined && pinion > x.pinionLength)
      issues.push({ path: 'pinionLength', given: length(x.pinionLength), accepts: `must hold the wraps, at least ${length(pinion)}` })
    const drum = 2 * x.groovePitch * Math.max(1, x.drumWrap / (2 * Math.PI))
    if (x.drumLength !== undefined && drum > x.drumLength)
      issues.push({
        path: 'drumLength',
        given: length(x.drumLength),
        accepts: `must hold the wraps of both tracks, at least ${length(drum)}`,
      })
  }
  if (issues.length > 0) throw new InputError('capstan.drive', issues)
}

function limitsOf(d: DriveState, notes: readonly Note[] | undefined): DriveLimits {
  const torque = (t: number) => new Quantity(t, 'torque', undefined, notes)
  const slips = d.hold === 'frictionOnly'
  return {
    slipTorque: slips ? torque(slipTorque.si({ ...d, drumFriction: d.drumFriction }).torque) : undefined,
    slipEstimate: slips ? torque(slipLimitTorque.si({ ...d, pinionWrapAngle: d.pinionWrap })) : undefined,
    slackEstimate: torque(slackLimitTorque.si(d)),
  }
}

function windupOf(d: DriveState, torque: number, about: (peak: number) => readonly Note[] | undefined): Windup {
  // Mid travel: both sides are alike, so that windup is an odd function of torque.
  const x = { ...d, torque: Math.abs(torque), drumFriction: d.drumFriction, contactStiffness: d.contactStiffness }
  const y = driveWindup.si(x)
  const sign = torque < 0 ? -1 : 1
  const notes = about(y.tautTension)
  const stiffness = (k: number) => new Quantity(k, 'torsionalStiffness', undefined, notes)
  return {
    windup: new Quantity(sign * y.windup, 'angle', undefined, notes),
    tangentStiffness: stiffness(y.tangentStiffness),
    secantStiffness: stiffness(y.secantStiffness),
    tautTension: new Quantity(y.tautTension, 'force', undefined, notes),
    slackTension: new Quantity(y.slackTension, 'force', undefined, notes),
    torqueCarried: new Quantity(sign * y.torqueCarried, 'torque', undefined, notes),
    state: y.state,
    secantStiffnessAtLeast: stiffness(freeArcStiffness.si(d)),
    stiffnessAtMost: stiffness(spanStiffness.si({ ...d, microSlipLength: 0 })),
  }
}

/** Points between two given ones, so that loss and lost motion do not depend on how finely a history is given. */
const BETWEEN = 24

const finely = (values: readonly number[]): Float64Array =>
  Float64Array.from({ length: values.length * BETWEEN }, (_, i) => {
    const k = Math.floor(i / BETWEEN)
    const from = k === 0 ? 0 : (values[k - 1] as number)
    return from + (((values[k] as number) - from) * ((i % BETWEEN) + 1)) / BETWEEN
  })

function historyOf(fine: readonly PathPoint[], about: (peak: number) => readonly Note[] | undefined): LoadHistory {
  let [work, low, high, peak] = [0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0]
  let [torque, angle] = [0, 0]
  const largest = fine.reduce((most, p) => Math.max(most, Math.abs(p.torque)), 0)
  for (const p of fine) {
    const now = p.windup + p.slipped
    const next = Math.abs(p.torque) < 1e-10 * largest ? 0 : p.torque
    work += 0.5 * (next + torque) * (now - angle)
    // Windup where the torque passes zero.
    if (torque !== 0 && torque * next <= 0) {
      const zero = angle + ((now - angle) * torque) / (torque - next)
      low = Math.min(low, zero)
      high = Math.max(high, zero)
    }
    peak = Math.max(peak, p.tautTension, p.slackTension)
    torque = next
    angle = now
  }
  const notes = about(peak)
  return {
    points: fine
      .filter((_, i) => (i + 1) % BETWEEN === 0)
      .map((p) => ({
        torque: new Quantity(p.torque, 'torque', undefined, notes),
        windup: new Quantity(p.windup + p.slipped, 'angle', undefined, notes),
        tautTension: new Quantity(p.tautTension, 'force', undefined, notes),
        slackTension: new Quantity(p.slackTension, 'force', undefined, notes),
        state: p.state,
      })),
    loss: new Quantity(work, 'energy', undefined, notes),
    lostMotion: new Quantity(high > low ? high - low : 0, 'angle', undefined, notes),
    slipped: new Quantity(fine.at(-1)?.slipped ?? 0, 'angle', undefined, notes),
  }
}

function travelOf(
  d: DriveState,
  path: TravelPath,
  stepsPerCycle: number,
  stroke: number,
  x: Read,
  about: (peak: number) => readonly Note[] | undefined,
): TravelResult {
  const last = path.points.slice(-stepsPerCycle)
  const end = last.at(-1)
  const before = path.points.at(-1 - stepsPerCycle)
  const peak = Math.max(...last.map((p) => p.peakTension))
  const notes = about(peak)
  const q = <K extends 'angle' | 'force' | 'torque' | 'length'>(si: number, kind: K) => new Quantity(si, kind, undefined, notes)
  const drift = before === undefined || end === undefined ? (end?.pinionAngle ?? 0) : end.pinionAngle - before.pinionAngle
  const pinionTravel = (stroke * d.drumRadius) / d.pinionRadius
  return {
    points: path.points.map((p) => ({
      jointAngle: q(p.jointAngle, 'angle'),
      pinionAngle: q(p.pinionAngle, 'angle'),
      torque: q(p.torque, 'torque'),
      tautTension: q(p.tautTension, 'force'),
      slackTension: q(p.slackTension, 'force'),
    })),
    end: path.end,
    regime: path.elementStays ? 'elementStays' : pinionTravel > d.pinionWrap ? 'everyElementPasses' : 'between',
    peakTension: q(peak, 'force'),
    leastTension: q(Math.min(...last.map((p) => Math.min(p.tautTension, p.slackTension))), 'force'),
    pretensionAtEnd: q(end === undefined ? d.pretension : 0.5 * (end.tautTension + end.slackTension), 'force'),
    driftPerCycle: q(drift, 'angle'),
    walkPerCycle: x.groovePitch === undefined ? undefined : q((Math.abs(drift) * x.groovePitch) / (2 * Math.PI), 'length'),
    leastDrumWrap: q(path.leastDrumWrap, 'angle'),
  }
}
