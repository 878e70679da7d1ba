import { type Given, property, readInputs, type Source } from '../formula/index.js'
import { InputError, type Issue, issue, Quantity, refuse } from '../units/index.js'
import { beltTeethInMesh, beltToothShear } from './belt-teeth.js'
import { JOB, type ReductionJob } from './compare-job.js'
import { cordDrive } from './drive.js'
import type { AtFriction } from './drive-results.js'
import { frictionRange } from './drive-specification.js'
import { backlashAngle, gearBacklash, lewisFormFactor, lewisRootStress } from './gear-teeth.js'
import { pulleyGeometry } from './geometry.js'
import { shaftForce } from './loads.js'

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
const LEWIS_MIN_TEETH = 12
const WHERE = 'capstan.compareReductions'

type Job = ReturnType<typeof readJob>
type Teeth = readonly [small: number, large: number]

/** The job in SI numbers. Nested records ignore unknown keys in a formula; here a misspelt clearance would be lost, so each is read by itself too. */
export function readJob(job: ReductionJob) {
  const cord = { ...job?.cord, friction: frictionRange(job?.cord?.friction) }
  const x = readInputs(WHERE, JOB, { ...job, cord } as Given<typeof JOB>)
  for (const name of ['cord', 'belt', 'gear'] as const)
    readInputs(`${WHERE}.${name}`, JOB[name].fields, (name === 'cord' ? cord : job[name]) as never)
  const small = x.wheelRadius / x.ratio
  const teeth = (perTooth: number): Teeth => [Math.round(small / perTooth), Math.round(x.wheelRadius / perTooth)]
  const beltTeeth = teeth(x.belt.pitch / (2 * Math.PI))
  const gearTeeth = teeth(x.gear.module / 2)
  const issues: Issue[] = []
  const requireTeeth = ([found]: Teeth, min: number, path: string, given: unknown) => {
    if (found < min) issues.push(issue(path, given, `leaves ${found} teeth on the small wheel; at least ${min} are required`))
  }
  requireTeeth(beltTeeth, 6, 'belt.pitch', job.belt.pitch)
  requireTeeth(gearTeeth, LEWIS_MIN_TEETH, 'gear.module', job.gear.module)
  if (issues.length > 0) throw new InputError(WHERE, issues)
  return { ...x, smallRadius: small, beltTeeth, gearTeeth }
}

/** Cord drive of the job. */
export function cordTerms(job: ReductionJob, x: Job) {
  const { smallRadius } = x
  const drive = cordDrive({
    ...job.cord,
    pinionRadius: [smallRadius, 'm'],
    drumRadius: [x.wheelRadius, 'm'],
    centreDistance: job.centreDistance,
  })
  const torque = [x.torque, 'N m'] as const
  const wound = drive.windup(torque)
  const loop = drive.path({ torques: [torque, [-x.torque, 'N m'], torque, [-x.torque, 'N m']] })
  const each = <T>(of: (end: 'atLowFriction' | 'atHighFriction') => T): AtFriction<T> => ({
    atLowFriction: of('atLowFriction'),
    atHighFriction: of('atHighFriction'),
  })
  const pulleys = {
    arrangement: 'crossed',
    pinionRadius: smallRadius,
    drumRadius: x.wheelRadius,
    centreDistance: x.centreDistance,
  } as const
  return {
    drive,
    ratio: each(() => drive.ratio),
    tangentialForce: each((end) => new Quantity(wound[end].torqueCarried.si / x.wheelRadius, 'force')),
    shaftForce: each((end) => {
      const { tautTension, slackTension } = wound[end]
      return new Quantity(shaftForce.si({ ...pulleys, tautTension: tautTension.si, slackTension: slackTension.si }).force, 'force')
    }),
    // The torque comes back through zero, so the lost motion is known.
    lostMotion: each((end) => loop[end].lostMotion as Quantity<'angle'>),
    windup: each((end) => wound[end].windup),
    engaged: each(() => new Quantity(drive.pinionWrap.in('turn'), 'count')),
    reserve: each((end) => new Quantity(x.cord.allowableTension / wound[end].tautTension.si, 'ratio')),
  }
}

/** Tooth belt of the job. */
export function beltTerms(job: ReductionJob, { belt, torque, width, centreDistance, beltTeeth: [smallTeeth, largeTeeth] }: Job) {
  const [small, large] = [(smallTeeth * belt.pitch) / (2 * Math.PI), (largeTeeth * belt.pitch) / (2 * Math.PI)]
  const pull = torque / large
  const mesh = beltTeethInMesh.si({ smallTeeth, largeTeeth, pitch: belt.pitch, centreDistance })
  if (mesh.teethInMesh < 1 || centreDistance <= large + small)
    refuse(WHERE, 'centreDistance', job.centreDistance, 'must keep the belt pulleys apart, with a tooth in mesh')
  const pulleys = { arrangement: 'open', pinionRadius: small, drumRadius: large, centreDistance } as const
  const { span } = pulleyGeometry.si({ ...pulleys, pinionTurns: 0 })
  const slack = belt.pretension < pull / 2
  const spans = slack
    ? { tautTension: pull, slackTension: 0 }
    : { tautTension: belt.pretension + pull / 2, slackTension: belt.pretension - pull / 2 }
  const shear = beltToothShear.si({ tangentialForce: pull, teethInMesh: mesh.teethInMesh, width, rootWidth: belt.rootWidth })
  const prior = beltBacklashPrior()
  const clearance = belt.backlash ?? prior.si * belt.pitch
  return {
    ratio: new Quantity(largeTeeth / smallTeeth, 'ratio'),
    tangentialForce: new Quantity(pull, 'force'),
    shaftForce: new Quantity(shaftForce.si({ ...pulleys, ...spans }).force, 'force'),
    lostMotion: new Quantity(2 * backlashAngle.si({ backlash: clearance, pitchRadius: large }), 'angle'),
    windup: new Quantity((pull * span) / ((slack ? 1 : 2) * belt.axialRigidity * large), 'angle'),
    engaged: new Quantity(mesh.teethInMesh, 'count'),
    toothFactor: mesh.toothFactor,
    reserve: new Quantity(belt.allowableShear / shear, 'ratio'),
    backlash: { value: new Quantity(clearance, 'length'), source: belt.backlash === undefined ? prior.source : GIVEN },
  }
}

/** Spur gears of the job. */
export function gearTerms({ gear, torque, width, gearTeeth: [smallTeeth, largeTeeth] }: Job) {
  const radius = (largeTeeth * gear.module) / 2
  const pull = torque / radius
  const root = lewisRootStress.si({
    tangentialForce: pull,
    module: gear.module,
    faceWidth: width,
    formFactor: lewisFormFactor.si({ teeth: smallTeeth }),
    pitchSpeed: 0,
  }).rootStress
  const centreDistance = ((smallTeeth + largeTeeth) * gear.module) / 2
  const clearance = gear.backlash ?? gearBacklash.si({ module: gear.module, centreDistance }).alongPitchCircle
  return {
    ratio: new Quantity(largeTeeth / smallTeeth, 'ratio'),
    tangentialForce: new Quantity(pull, 'force'),
    shaftForce: new Quantity(pull / Math.cos((20 * Math.PI) / 180), 'force'),
    lostMotion: new Quantity(backlashAngle.si({ backlash: clearance, pitchRadius: radius }), 'angle'),
    reserve: new Quantity(gear.allowableStress / root, 'ratio'),
    backlash: {
      value: new Quantity(clearance, 'length'),
      source: gear.backlash === undefined ? (gearBacklash.def.source[0] as Source) : GIVEN,
    },
  }
}
