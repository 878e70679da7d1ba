import { type Given, property, readInputs, type Source } from '../formula/index.js'
import { InputError, Quantity } from '../units/index.js'
import { backlashAngle, beltTeethInMesh, beltToothShear, gearBacklash, lewisFormFactor, lewisRootStress } from './belt-and-gear.js'
import { JOB, type ReductionJob } from './compare-job.js'
import { type CordDrive, cordDrive } from './drive.js'
import type { AtFriction } from './drive-results.js'
import { frictionRange } from './drive-specification.js'
import { pulleyGeometry } from './geometry.js'
import { shaftForce } from './loads.js'

/** One term, side by side. A cell is left out where the term does not exist for that reduction or is not worked out: the note says which. */
export interface ComparedTerm<K extends 'ratio' | 'force' | 'angle' | 'count'> {
  /** Cord drive, at both ends of its friction. */
  readonly cord: AtFriction<Quantity<K>> | undefined
  readonly belt: Quantity<K> | undefined
  readonly gear: Quantity<K> | undefined
  /** What to mind when these are set against each other. */
  readonly note: string
}

/** Cord, tooth belt and spur gears at one torque and size. No term outweighs the others: there is no score. */
export interface ComparedReductions {
  /** Reduction that whole teeth leave. */
  readonly ratio: ComparedTerm<'ratio'>
  /** Difference of span tensions, or force at the pitch circle. */
  readonly tangentialForce: ComparedTerm<'force'>
  /** Force on either shaft at the torque. */
  readonly shaftForce: ComparedTerm<'force'>
  /** Angle of the joint between loading from either side: free play of teeth, hysteresis of the cord. */
  readonly lostMotion: ComparedTerm<'angle'>
  /** Elastic angle of the joint at the torque, free play not counted. */
  readonly windup: ComparedTerm<'angle'>
  /** Teeth that share the load; for the cord the turns on its pinion. */
  readonly engaged: ComparedTerm<'count'>
  /** What may be carried over what is: cord tension, tooth shear, root stress. Not comparable as safety: what breaks, and how, differs. */
  readonly reserve: ComparedTerm<'ratio'>
  /** Where the two clearances come from. */
  readonly backlash: {
    readonly belt: { readonly value: Quantity<'length'>; readonly source: Source }
    readonly gear: { readonly value: Quantity<'length'>; readonly source: Source }
  }
  /** The cord drive that was compared, for more of it. */
  readonly drive: CordDrive
}

/** Clearance of belt teeth in their grooves as a share of the pitch: a prior, to be replaced by a measurement. */
export const beltBacklashPrior = () =>
  property('ratio', {
    low: 0.01,
    typical: 0.03,
    high: 0.08,
    source: {
      level: 'assumption',
      where: 'teeth need clearance to enter and leave their grooves, trapezoidal ones more than rounded ones; no table could be opened',
    },
    conditions: 'share of the pitch, per pulley',
  })

const GIVEN: Source = { level: 'assumption', where: 'given with the job' }
const LEWIS_LEAST = 12

/**
 * Works the same job as a cord drive, a tooth belt and a pair of spur gears, and sets the terms side by side. Throws an `InputError` for what
 * a part refuses: overlapping pulleys, fewer teeth than can be cut.
 */
export function compareReductions(job: ReductionJob): ComparedReductions {
  const where = 'capstan.compareReductions'
  const x = readInputs(where, JOB, { ...job, cord: { ...job?.cord, friction: frictionRange(job?.cord?.friction) } } as Given<typeof JOB>)
  // A nested record may carry more than is asked; here a misspelt clearance would be lost.
  for (const name of ['cord', 'belt', 'gear'] as const)
    readInputs(
      `${where}.${name}`,
      JOB[name].fields,
      (name === 'cord' ? { ...job.cord, friction: frictionRange(job.cord.friction) } : job[name]) as never,
    )
  const smallRadius = x.wheelRadius / x.ratio
  const teeth = {
    belt: [Math.round((2 * Math.PI * smallRadius) / x.belt.pitch), Math.round((2 * Math.PI * x.wheelRadius) / x.belt.pitch)] as const,
    gear: [Math.round((2 * smallRadius) / x.gear.module), Math.round((2 * x.wheelRadius) / x.gear.module)] as const,
  }
  const issues = [
    teeth.belt[0] < 6 && { path: 'belt.pitch', given: String(new Quantity(x.belt.pitch, 'length')), accepts: few(teeth.belt[0], 6) },
    teeth.gear[0] < LEWIS_LEAST && {
      path: 'gear.module',
      given: String(new Quantity(x.gear.module, 'length')),
      accepts: few(teeth.gear[0], LEWIS_LEAST),
    },
  ].filter((issue) => issue !== false)
  if (issues.length > 0) throw new InputError(where, issues)

  const cord = cordDrive({
    ...job.cord,
    pinionRadius: [smallRadius, 'm'],
    drumRadius: [x.wheelRadius, 'm'],
    centreDistance: job.centreDistance,
  })
  const torque = [x.torque, 'N m'] as const
  const wound = cord.windup(torque)
  const loop = cord.path({ torques: [torque, [-x.torque, 'N m'], torque, [-x.torque, 'N m']] })
  const each = <T>(of: (end: 'atLowFriction' | 'atHighFriction') => T): AtFriction<T> => ({
    atLowFriction: of('atLowFriction'),
    atHighFriction: of('atHighFriction'),
  })
  const geometry = { pinionRadius: smallRadius, drumRadius: x.wheelRadius, centreDistance: x.centreDistance }
  const force = (si: number) => new Quantity(si, 'force')
  const cordShaft = each((end) => {
    const { tautTension, slackTension } = wound[end]
    return force(shaftForce.si({ ...geometry, arrangement: 'crossed', tautTension: tautTension.si, slackTension: slackTension.si }).force)
  })

  const [beltSmall, beltRadius] = teeth.belt.map((count) => (count * x.belt.pitch) / (2 * Math.PI)) as [number, number]
  const beltPull = x.torque / beltRadius
  const mesh = beltTeethInMesh.si({ smallTeeth: teeth.belt[0], largeTeeth: teeth.belt[1], ...x.belt, centreDistance: x.centreDistance })
  if (mesh.teethInMesh < 1 || x.centreDistance <= beltRadius + beltSmall)
    throw new InputError(where, [
      {
        path: 'centreDistance',
        given: String(new Quantity(x.centreDistance, 'length')),
        accepts: 'must keep the belt pulleys apart, with a tooth in mesh',
      },
    ])
  const beltGeometry = { arrangement: 'open', pinionRadius: beltSmall, drumRadius: beltRadius, centreDistance: x.centreDistance } as const
  const { span: beltSpan } = pulleyGeometry.si({ ...beltGeometry, pinionTurns: 0 })
  const beltLoose = x.belt.pretension < beltPull / 2
  const [beltTaut, beltSlack] = beltLoose ? [beltPull, 0] : [x.belt.pretension + beltPull / 2, x.belt.pretension - beltPull / 2]
  const shear = beltToothShear.si({ tangentialForce: beltPull, teethInMesh: mesh.teethInMesh, width: x.width, rootWidth: x.belt.rootWidth })
  const prior = beltBacklashPrior()
  const beltClearance = x.belt.backlash ?? prior.si * x.belt.pitch

  const gearRadius = (teeth.gear[1] * x.gear.module) / 2
  const gearPull = x.torque / gearRadius
  const gearCentres = ((teeth.gear[0] + teeth.gear[1]) * x.gear.module) / 2
  const root = lewisRootStress.si({
    tangentialForce: gearPull,
    module: x.gear.module,
    faceWidth: x.width,
    formFactor: lewisFormFactor.si({ teeth: teeth.gear[0] }),
    pitchSpeed: 0,
  }).rootStress
  const gearClearance = x.gear.backlash ?? gearBacklash.si({ module: x.gear.module, centreDistance: gearCentres }).alongPitchCircle

  const ratio = (si: number) => new Quantity(si, 'ratio')
  const angle = (si: number) => new Quantity(si, 'angle')
  const count = (si: number) => new Quantity(si, 'count')
  return {
    ratio: {
      cord: each(() => cord.ratio),
      belt: ratio(teeth.belt[1] / teeth.belt[0]),
      gear: ratio(teeth.gear[1] / teeth.gear[0]),
      note: 'teeth are whole: belt and gear come as near as they can; the cord takes any ratio, and creeps unless clamped',
    },
    tangentialForce: {
      cord: each((end) => force(wound[end].torqueCarried.si / x.wheelRadius)),
      belt: force(beltPull),
      gear: force(gearPull),
      note: 'at whole teeth the pitch radius, and with it the force, moves a little; a cord that slips carries less than asked',
    },
    shaftForce: {
      cord: cordShaft,
      belt: force(shaftForce.si({ ...beltGeometry, tautTension: beltTaut, slackTension: beltSlack }).force),
      gear: force(gearPull / Math.cos((20 * Math.PI) / 180)),
      note: 'cord and belt load their shafts at rest too, with the pretension; gears only under torque',
    },
    lostMotion: {
      // The torque comes back through zero, so the lost motion is known.
      cord: each((end) => loop[end].lostMotion as Quantity<'angle'>),
      belt: angle(2 * backlashAngle.si({ backlash: beltClearance, pitchRadius: beltRadius })),
      gear: angle(backlashAngle.si({ backlash: gearClearance, pitchRadius: gearRadius })),
      note: 'teeth are free at no torque, whatever the load; the cord has no free play but a hysteresis that grows with load. The belt has its clearance at both pulleys, at most',
    },
    windup: {
      cord: each((end) => wound[end].windup),
      belt: angle((beltPull * beltSpan) / ((beltLoose ? 1 : 2) * x.belt.axialRigidity * beltRadius)),
      gear: undefined,
      note: 'belt: spans only, teeth and wrapped arcs taken as rigid, an optimistic value; gear: tooth bending is not worked out, and not small for printed teeth',
    },
    engaged: {
      cord: each(() => count(cord.pinionWrap.in('turn'))),
      belt: count(mesh.teethInMesh),
      gear: count(1),
      note: `cord: turns on the pinion. Belt: full rating needs six teeth in mesh, here a share of ${mesh.toothFactor.toFixed(1)} is left. Gear: one tooth carries all in the calculation`,
    },
    reserve: {
      cord: each((end) => ratio(x.cord.allowableTension / wound[end].tautTension.si)),
      belt: ratio(x.belt.allowableShear / shear),
      gear: ratio(x.gear.allowableStress / root),
      note: 'cord tension, mean tooth shear, Lewis root stress: set against each other only with allowables of like service factor; heat, wear and creep are in none',
    },
    backlash: {
      belt: { value: new Quantity(beltClearance, 'length'), source: x.belt.backlash === undefined ? prior.source : GIVEN },
      gear: {
        value: new Quantity(gearClearance, 'length'),
        source: x.gear.backlash === undefined ? (gearBacklash.def.source[0] as Source) : GIVEN,
      },
    },
    drive: cord,
  }
}

const few = (teeth: number, least: number) => `leaves ${teeth} teeth on the small wheel; at least ${least} are wanted`
