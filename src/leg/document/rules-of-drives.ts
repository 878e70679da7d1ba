import { DRIVES } from './not-computed.js'
import type { PartlyLeg, Report } from './partly.js'
import { beltOverlap } from './rules-of-belts.js'
import { type CordDrive, cordRules } from './rules-of-cords.js'
import { jointTravel, pulleyRatio, throughRules } from './rules-of-through.js'

type JointName = 'sidewaysHip' | 'hip' | 'knee'
export const JOINT_NAMES = ['sidewaysHip', 'hip', 'knee'] as const

type Drive = NonNullable<NonNullable<NonNullable<PartlyLeg['joints']>['hip']>['drive']>

/** Pulleys of a cord drive as the document names them. */
const OF_DRIVE = { names: { pinion: 'pinion', drum: 'drum' }, reduces: true } as const

/** Contradictions within each drive and between a joint and what drives it. */
export function driveRules(data: PartlyLeg, report: Report): void {
  for (const name of JOINT_NAMES) {
    const joint = data.joints?.[name]
    if (joint === undefined) continue
    const { drive } = joint
    const path = `joints.${name}`
    // A word that is no kind of drive has its own message, and says nothing of what else is needed.
    if (drive?.kind !== undefined && (DRIVES as readonly string[]).includes(drive.kind))
      for (const needed of ['motor', 'controller', 'plate'] as const)
        if (joint[needed] === undefined) report(`${path}.${needed}`, undefined, `is needed because ${path}.drive.kind is ${drive.kind}`)
    if (drive?.kind === 'cord')
      cordRules(
        data,
        {
          ...(drive as CordDrive),
          ...OF_DRIVE,
          path: `${path}.drive`,
          axesPath: `${path}.drive.centreDistance`,
          travel: drumTravel(data, name),
        },
        report,
      )
    if (drive?.kind === 'belt') beltRules(data, path, drive, report)
    if (drive?.kind === 'direct' || drive?.kind === 'gearbox') outputRules(path, joint, drive, report)
    if (drive?.kind === 'gear') gearRules(path, drive, report)
  }
  throughRules(data, report)
}

/** Travel of a joint's drum: of a knee that is driven through the hip, the travel of hip and knee together, the latter by the ratio of its pulleys. */
function drumTravel(data: PartlyLeg, name: JointName): number | undefined {
  const own = jointTravel(data, name)
  if (name !== 'knee' || data.joints?.knee?.through === undefined || own === undefined) return own
  const hip = jointTravel(data, 'hip')
  return hip === undefined ? undefined : own * pulleyRatio(data) + hip
}

/** What may carry a joint, or the drum on the hip axis of a knee. */
interface Carried {
  readonly pin?: string
  readonly shaft?: string
  readonly through?: { readonly pivots?: { readonly drum?: object } }
}

/** Where the rotor carries the leg, or what drives the knee on the hip axis, the bearings of its output must be known. */
function outputRules(
  path: string,
  joint: object,
  drive: Extract<Drive, { readonly kind?: 'direct' | 'gearbox' | undefined }>,
  report: Report,
): void {
  // The sideways hip turns in bearings of its own, which are needed there.
  if (path === 'joints.sidewaysHip') return
  const { pin, shaft, through } = joint as Carried
  if (through === undefined ? pin !== undefined || shaft !== undefined : through.pivots?.drum !== undefined) return
  const why =
    through !== undefined
      ? `the output of the drive carries what ${path}.through has on the hip axis`
      : `${path} has neither pin nor shaft: the output of the drive carries the leg`
  for (const needed of ['radialLoad', 'tiltingMoment'] as const)
    if (drive[needed] === undefined) report(`${path}.drive.${needed}`, undefined, `is needed because ${why}`)
}

/** A pair of gears reduces. */
function gearRules(path: string, drive: Extract<Drive, { readonly kind?: 'gear' | undefined }>, report: Report): void {
  const { pinionTeeth, wheelTeeth } = drive
  if (pinionTeeth !== undefined && wheelTeeth !== undefined && wheelTeeth <= pinionTeeth)
    report(`${path}.drive.wheelTeeth`, wheelTeeth, `must be more than pinionTeeth (${pinionTeeth}): the drive reduces`)
}

function beltRules(data: PartlyLeg, path: string, drive: Extract<Drive, { readonly kind?: 'belt' | undefined }>, report: Report): void {
  const { smallTeeth, largeTeeth, belt, centreDistance } = drive
  if (largeTeeth !== undefined && smallTeeth !== undefined && largeTeeth <= smallTeeth)
    report(`${path}.drive.largeTeeth`, largeTeeth, `must be more than smallTeeth (${smallTeeth}): the drive reduces`)
  beltOverlap(data, { belt, teeth: [smallTeeth, largeTeeth], centreDistance, path: `${path}.drive.centreDistance` }, report)
}
