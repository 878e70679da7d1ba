import { LONGEST_PLATE } from '../../thermal/index.js'
import { InputError, type Issue, issue } from '../../units/index.js'
import { AGES, AIRS, EVENTS } from '../parts/load/section.js'
import type { LegData } from './fields.js'

type Report = (path: string, given: unknown, why: string) => void

/** Throws for what a document may contain and no check calculates yet: a verdict without it would be unsafe. */
export function rejectNotComputed(data: LegData): void {
  const issues: Issue[] = []
  const report: Report = (path, given, why) => issues.push(issue(path, given, `is not calculated yet: ${why}`))
  joints(data, report)
  mounts(data, report)
  parts(data, report)
  loads(data, report)
  if (issues.length > 0) throw new InputError('leg', issues)
}

/** Kinds of drive that hip and knee are calculated with. */
export const DRIVES = ['cord', 'belt', 'direct', 'gear', 'gearbox'] as const

function joints({ joints: { sidewaysHip, hip, knee }, plates }: LegData, report: Report): void {
  if (sidewaysHip !== undefined && sidewaysHip.drive.kind !== 'held' && sidewaysHip.bearings === undefined)
    report('joints.sidewaysHip.bearings', undefined, 'a driven sideways hip must turn in bearings of its own')
  for (const [name, joint] of Object.entries({ hip, knee })) {
    if (!(DRIVES as readonly string[]).includes(joint.drive.kind))
      report(`joints.${name}.drive.kind`, joint.drive.kind, `hip and knee must be driven by one of ${DRIVES.join(', ')}`)
  }
  for (const [name, joint] of Object.entries({ sidewaysHip, hip, knee }))
    if (joint !== undefined && joint.controllerOn !== 'air')
      report(`joints.${name}.controllerOn`, joint.controllerOn, 'a controller must hang in free air')
  const { through } = knee
  if (through?.kind === 'rod' && through.pin === undefined)
    report('joints.knee.through.pin', 'missing', 'the rod must have a pin at each end')
  for (const [name, { bolts }] of Object.entries(plates))
    if (bolts !== undefined && name !== hip.plate)
      report(`plates.${name}.bolts`, bolts, 'only the plate of the hip may have bolts of its own')
}

/** Each motor gives its heat to a plate of its own, which is next to the joint that it drives. */
function mounts({ joints, plates }: LegData, report: Report): void {
  const carried = new Map<string, string>()
  for (const joint of ['sidewaysHip', 'hip', 'knee'] as const) {
    const plate = joints[joint]?.plate
    if (plate === undefined) continue
    const path = `joints.${joint}.plate`
    const other = carried.get(plate)
    if (other !== undefined)
      report(path, plate, `it carries the motor of joints.${other} as well; give each motor its part of the area as a plate of its own`)
    carried.set(plate, joint)
    const { mountedOn } = plates[plate] as LegData['plates'][string]
    if (mountedOn === 'lower' && joint !== 'knee')
      report(
        `plates.${plate}.mountedOn`,
        mountedOn,
        `it carries the motor of joints.${joint}, which must sit on the body or on the upper link`,
      )
  }
  for (const [name, { size, sink }] of Object.entries(plates)) {
    const [path, { width, height }] = sink === undefined ? [`plates.${name}.size`, size] : [`plates.${name}.sink.size`, sink.size]
    if (Math.max(width.si, height.si) > LONGEST_PLATE * Math.min(width.si, height.si))
      report(path, `${width} by ${height}`, `what cools a motor must be at most ${LONGEST_PLATE} times as long as it is wide`)
  }
}

function parts({ links, foot, robot }: LegData, report: Report): void {
  for (const name of ['upper', 'lower'] as const) {
    const { section } = links[name]
    if (section.tube !== undefined) report(`links.${name}.section.tube`, section.tube, 'a link must have a box section')
  }
  if (foot.kind !== 'toes') report('foot.kind', foot.kind, 'the foot must have toes')
  for (const name of ['centreOfMassForward', 'centreOfMassLeft'] as const)
    if (robot[name].si !== 0 && robot.legs !== 4)
      report(`robot.${name}`, robot[name], 'with other than four legs the centre of mass must be in the middle')
}

function loads({ loadCases: { airs, ages, events, combine } }: LegData, report: Report): void {
  for (const [section, given, library] of [
    ['airs', airs, AIRS],
    ['ages', ages, AGES],
    ['events', events, EVENTS],
  ] as const)
    for (const name of Object.keys(given))
      if (!Object.hasOwn(library, name)) report(`loadCases.${section}.${name}`, name, `names must be ${Object.keys(library).join(', ')}`)
  if (combine !== undefined) report('loadCases.combine', 'combinations', 'the load cases of the library are combined by name')
  for (const [name, event] of Object.entries(events)) {
    const own = (EVENTS as Readonly<Record<string, { readonly kind: string; readonly gait?: string }>>)[name]
    if (own === undefined) continue
    if (event.kind !== own.kind) report(`loadCases.events.${name}.kind`, event.kind, `it must be ${own.kind}`)
    else if ('gait' in event && event.gait !== own.gait) report(`loadCases.events.${name}.gait`, event.gait, `it must be ${own.gait}`)
    if (event.kind === 'slope' && own.kind === 'slope') slope(name, event, report)
  }
}

/** The slope is climbed straight up and descended straight down; one of the wrong sign would load nothing. */
function slope(
  name: string,
  { angle, direction }: Extract<LegData['loadCases']['events'][string], { kind: 'slope' }>,
  report: Report,
): void {
  const path = `loadCases.events.${name}`
  if (name === 'slopeAcross') {
    if (direction !== 'across') report(`${path}.direction`, direction, 'the robot must walk across the fall line')
    return
  }
  if (direction !== 'along') report(`${path}.direction`, direction, 'the robot must walk along the fall line')
  if (name === 'slopeUp' ? angle.si < 0 : angle.si > 0)
    report(`${path}.angle`, angle, name === 'slopeUp' ? 'it must be 0 deg or uphill' : 'it must be 0 deg or downhill')
}
