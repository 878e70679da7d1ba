import { fourBarDeadPoint } from '../../kinematics/index.js'
import type { Quantity } from '../../units/index.js'
import { below, millimetres, notAbove, type PartlyLeg, type Report } from './partly.js'

type JointName = 'sidewaysHip' | 'hip' | 'knee'
export const JOINT_NAMES = ['sidewaysHip', 'hip', 'knee'] as const

type Drive = NonNullable<NonNullable<NonNullable<PartlyLeg['joints']>['hip']>['drive']>
type CordDrive = Extract<Drive, { readonly kind?: 'cord' | undefined }>

/** Contradictions within each drive and between a joint and what drives it. */
export function driveRules(data: PartlyLeg, report: Report): void {
  for (const name of JOINT_NAMES) {
    const joint = data.joints?.[name]
    if (joint === undefined) continue
    const { drive } = joint
    const path = `joints.${name}`
    if (drive?.kind !== undefined && drive.kind !== 'held')
      for (const needed of ['motor', 'controller', 'plate'] as const)
        if (joint[needed] === undefined) report(`${path}.${needed}`, undefined, `is needed because ${path}.drive.kind is ${drive.kind}`)
    if (drive?.kind === 'cord') cordRules(data, name, drive as CordDrive, report)
    if (drive?.kind === 'belt') beltRules(data, path, drive, report)
    if (drive?.kind === 'direct' || drive?.kind === 'gearbox') outputRules(path, joint, drive, report)
    if (drive?.kind === 'gear') gearRules(path, drive, report)
  }
  throughRules(data, report)
}

/** Radius to the centre line of the cord, however it was given. */
function centreLine(pulley: CordDrive['pinion'] | CordDrive['drum'], cordDiameter: Quantity | undefined): number | undefined {
  if (pulley?.centreLineRadius !== undefined) return pulley.centreLineRadius.si
  if (pulley?.grooveDiameter === undefined || cordDiameter === undefined) return undefined
  return (pulley.grooveDiameter.si + cordDiameter.si) / 2
}

function cordRules(data: PartlyLeg, name: JointName, drive: CordDrive, report: Report): void {
  const path = `joints.${name}.drive`
  const cord = drive.cord === undefined ? undefined : data.cords?.[drive.cord]
  if (drive.ends === 'bondedFerrule' && drive.end === undefined)
    report(`${path}.end`, undefined, `is needed because ${path}.ends is bondedFerrule: name one of the section ends`)
  const end = drive.end === undefined ? undefined : data.ends?.[drive.end]
  if (notAbove(end?.socketDiameter, cord?.diameter))
    report(`ends.${drive.end}.socketDiameter`, end?.socketDiameter, `must be larger than the cord (${cord?.diameter})`)
  if ((drive.drum?.throughBolts ?? 0) > 0 && drive.drum?.throughBoltThread === undefined)
    report(`${path}.drum.throughBoltThread`, undefined, `is needed because ${path}.drum.throughBolts is above 0`)
  const pinion = centreLine(drive.pinion, cord?.diameter)
  const drum = centreLine(drive.drum, cord?.diameter)
  if (pinion === undefined || drum === undefined) return
  if (drum <= pinion)
    report(
      `${path}.drum`,
      `${millimetres(drum)} centre-line radius`,
      `must be larger than the pinion (${millimetres(pinion)}): the drive reduces`,
    )
  const least = pinion + drum + (cord?.diameter?.si ?? 0)
  if (drive.centreDistance !== undefined && drive.centreDistance.si <= least)
    report(
      `${path}.centreDistance`,
      drive.centreDistance,
      `must be above ${millimetres(least)}, the radii of pinion and drum and the cord between them; the pulleys overlap`,
    )
  const [bore, groove] = [drive.drum?.bore, drive.drum?.grooveDiameter]
  if (notAbove(groove, bore)) report(`${path}.drum.bore`, bore, `must be smaller than the groove diameter (${groove})`)
  const floor = 2 * drum - (cord?.diameter?.si ?? 0)
  if (groove === undefined && bore !== undefined && bore.si >= floor)
    report(`${path}.drum.bore`, bore, `must be smaller than the diameter at the bottom of the groove (${millimetres(floor)})`)
  grooveRules(data, name, drive, { cord: cord?.diameter, ratio: drum / pinion }, report)
}

function grooveRules(
  data: PartlyLeg,
  name: JointName,
  drive: CordDrive,
  { cord, ratio }: { cord: Quantity | undefined; ratio: number },
  report: Report,
): void {
  const path = `joints.${name}.drive`
  const pitch = drive.drum?.groovePitch
  if (below(pitch, cord)) report(`${path}.drum.groovePitch`, pitch, `must be at least the cord diameter (${cord})`)
  const travel = drumTravel(data, name)
  if (pitch === undefined || travel === undefined) return
  const turns = travel / (2 * Math.PI)
  const onPinion = ((drive.pinion?.turns?.si ?? 0) + ratio * turns + 1) * pitch.si
  const onDrum = (turns + 1) * pitch.si
  for (const [pulley, length, needed, what] of [
    ['pinion', drive.pinion?.length, onPinion, "its turns and the joint's travel"],
    ['drum', drive.drum?.length, onDrum, "the joint's travel"],
  ] as const)
    if (length !== undefined && length.si < needed)
      report(`${path}.${pulley}.length`, length, `must be at least ${millimetres(needed)} to hold ${what} at this groove pitch`)
}

/** Travel of a joint's drum: of a knee that is driven through the hip, the travel of hip and knee together. */
function drumTravel(data: PartlyLeg, name: JointName): number | undefined {
  const of = (joint: JointName) => {
    const { lowest, highest } = data.joints?.[joint]?.range ?? {}
    return lowest === undefined || highest === undefined ? undefined : highest.si - lowest.si
  }
  const own = of(name)
  if (name !== 'knee' || data.joints?.knee?.through === undefined || own === undefined) return own
  const hip = of('hip')
  return hip === undefined ? undefined : own + hip
}

/** Where the rotor carries the leg, the bearings of its output must be known. */
function outputRules(
  path: string,
  joint: object,
  drive: Extract<Drive, { readonly kind?: 'direct' | 'gearbox' | undefined }>,
  report: Report,
): void {
  // The sideways hip turns in bearings of its own, which are needed there.
  const { pin, shaft } = joint as { readonly pin?: string; readonly shaft?: string }
  if (pin !== undefined || shaft !== undefined || path === 'joints.sidewaysHip') return
  for (const needed of ['radialLoad', 'tiltingMoment'] as const)
    if (drive[needed] === undefined)
      report(
        `${path}.drive.${needed}`,
        undefined,
        `is needed because ${path} has neither pin nor shaft: the output of the drive carries the leg`,
      )
}

/** A pair of gears reduces. */
function gearRules(path: string, drive: Extract<Drive, { readonly kind?: 'gear' | undefined }>, report: Report): void {
  const { pinionTeeth, wheelTeeth } = drive
  if (pinionTeeth !== undefined && wheelTeeth !== undefined && wheelTeeth <= pinionTeeth)
    report(`${path}.drive.wheelTeeth`, wheelTeeth, `must be more than pinionTeeth (${pinionTeeth}): the drive reduces`)
}

function beltRules(data: PartlyLeg, path: string, drive: Extract<Drive, { readonly kind?: 'belt' | undefined }>, report: Report): void {
  const belt = drive.belt === undefined ? undefined : data.belts?.[drive.belt]
  const { smallTeeth, largeTeeth, centreDistance } = drive
  if (largeTeeth !== undefined && smallTeeth !== undefined && largeTeeth <= smallTeeth)
    report(`${path}.drive.largeTeeth`, largeTeeth, `must be more than smallTeeth (${smallTeeth}): the drive reduces`)
  if (belt?.pitch === undefined || smallTeeth === undefined || largeTeeth === undefined || centreDistance === undefined) return
  const least = (belt.pitch.si * (smallTeeth + largeTeeth)) / (2 * Math.PI)
  if (centreDistance.si <= least)
    report(
      `${path}.drive.centreDistance`,
      centreDistance,
      `must be above ${millimetres(least)}, the pitch radii of both pulleys; they overlap`,
    )
}

/** A knee driven through the hip has its motor off the upper link; a rod must close at every angle of the knee. */
function throughRules(data: PartlyLeg, report: Report): void {
  const knee = data.joints?.knee
  const { through } = knee ?? {}
  const plate = knee?.plate === undefined ? undefined : data.plates?.[knee.plate]
  if (through !== undefined && plate?.mountedOn !== undefined && plate.mountedOn !== 'body')
    report(
      `plates.${knee?.plate}.mountedOn`,
      plate.mountedOn,
      'must be body: joints.knee.through drives the knee from a drum on the hip axis',
    )
  if (through === undefined && plate?.mountedOn === 'body' && knee?.drive?.kind !== 'held')
    report('joints.knee.through', undefined, `is needed because the knee's motor sits on the body (plates.${knee?.plate}.mountedOn)`)
  if (through?.kind !== 'rod') return
  const { crank, rocker, rod } = through
  const link = data.links?.upper?.length
  if (crank === undefined || rocker === undefined || rod === undefined || link === undefined) return
  const longest = Math.max(crank.si, rocker.si, rod.si, link.si)
  if (2 * longest >= crank.si + rocker.si + rod.si + link.si)
    report(
      'joints.knee.through.rod',
      rod,
      `must close with crank, rocker and upper link: the longest of the four (${millimetres(longest)}) must be shorter than the others together`,
    )
  if (knee?.range?.lowest === undefined || knee.range.highest === undefined || through.rockerAngle === undefined) return
  const { lowest, highest } = knee.range
  const { margin, kneeAngle, state } = fourBarDeadPoint.si({
    ground: link.si,
    crank: crank.si,
    coupler: rod.si,
    rocker: rocker.si,
    rockerAngleAtStraightKnee: through.rockerAngle.si,
    crankSide: Math.sin(through.rockerAngle.si + (lowest.si + highest.si) / 2) >= 0 ? 'positive' : 'negative',
    kneeLowest: lowest.si,
    kneeHighest: highest.si,
  })
  const degrees = (x: number) => `${Number(((x * 180) / Math.PI).toPrecision(4))} deg`
  if (state === 'apart')
    report('joints.knee.through.rod', rod, `must reach the rocker at every angle of the knee; at ${lowest} it does not`)
  else if (margin === 0)
    report(
      'joints.knee.through.rockerAngle',
      through.rockerAngle,
      `must keep the knee away from dead points: at ${degrees(kneeAngle)} ${state === 'crankDeadPoint' ? 'crank' : 'rocker'} and rod are in line`,
    )
}
