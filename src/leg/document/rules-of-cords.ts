import type { Quantity } from '../../units/index.js'
import { below, millimetres, notAbove, type PartlyLeg, type Report } from './partly.js'

type Drive = NonNullable<NonNullable<NonNullable<PartlyLeg['joints']>['hip']>['drive']>
/** A cord drive of which any field may be missing. */
export type CordDrive = Extract<Drive, { readonly kind?: 'cord' | undefined }>

/** A cord between two pulleys, with its places in the document. */
interface CordPulleys extends Pick<CordDrive, 'pinion' | 'drum' | 'cord' | 'ends' | 'end' | 'centreDistance'> {
  /** Path of the drive. */
  readonly path: string
  /** Path of the distance of its axes. */
  readonly axesPath: string
  /** Fields of the pulley that is wound around, and of the drum that holds the ends. */
  readonly names: { readonly pinion: string; readonly drum: string }
  /** Whether the drum must be the larger one. */
  readonly reduces: boolean
  /** Travel of the drum. */
  readonly travel: number | undefined
}

/** Contradictions of a cord between two pulleys. */
export function cordRules(data: PartlyLeg, drive: CordPulleys, report: Report): void {
  const { path, names } = drive
  const cord = drive.cord === undefined ? undefined : data.cords?.[drive.cord]
  if (drive.ends === 'bondedFerrule' && drive.end === undefined)
    report(`${path}.end`, undefined, `is needed because ${path}.ends is bondedFerrule: name one of the section ends`)
  const end = drive.end === undefined ? undefined : data.ends?.[drive.end]
  if (notAbove(end?.socketDiameter, cord?.diameter))
    report(`ends.${drive.end}.socketDiameter`, end?.socketDiameter, `must be larger than the cord (${cord?.diameter})`)
  if ((drive.drum?.throughBolts ?? 0) > 0 && drive.drum?.throughBoltThread === undefined)
    report(`${path}.${names.drum}.throughBoltThread`, undefined, `is needed because ${path}.${names.drum}.throughBolts is above 0`)
  const pinion = centreLine(drive.pinion, cord?.diameter)
  const drum = centreLine(drive.drum, cord?.diameter)
  if (pinion === undefined || drum === undefined) return
  radiusRules(drive, { pinion, drum, cord: cord?.diameter }, report)
  grooveRules(drive, { cord: cord?.diameter, ratio: drum / pinion }, report)
}

/** Radius to the centre line of the cord, however it was given. */
export function centreLine(pulley: CordDrive['pinion'] | CordDrive['drum'], cordDiameter: Quantity | undefined): number | undefined {
  if (pulley?.centreLineRadius !== undefined) return pulley.centreLineRadius.si
  if (pulley?.grooveDiameter === undefined || cordDiameter === undefined) return undefined
  return (pulley.grooveDiameter.si + cordDiameter.si) / 2
}

/** Pulleys that do not reduce, overlap, or have a bore that reaches the groove. */
function radiusRules(
  drive: CordPulleys,
  { pinion, drum, cord }: { pinion: number; drum: number; cord: Quantity | undefined },
  report: Report,
): void {
  const { path, names } = drive
  if (drive.reduces && drum <= pinion)
    report(
      `${path}.${names.drum}`,
      `${millimetres(drum)} centre-line radius`,
      `must be larger than the pinion (${millimetres(pinion)}): the drive reduces`,
    )
  const min = pinion + drum + (cord?.si ?? 0)
  if (drive.centreDistance !== undefined && drive.centreDistance.si <= min)
    report(
      drive.axesPath,
      drive.centreDistance,
      `must be above ${millimetres(min)}, the radii of ${names.pinion} and ${names.drum} and the cord between them; the pulleys overlap`,
    )
  const [bore, groove] = [drive.drum?.bore, drive.drum?.grooveDiameter]
  if (notAbove(groove, bore)) report(`${path}.${names.drum}.bore`, bore, `must be smaller than the groove diameter (${groove})`)
  const floor = 2 * drum - (cord?.si ?? 0)
  if (groove === undefined && bore !== undefined && bore.si >= floor)
    report(`${path}.${names.drum}.bore`, bore, `must be smaller than the diameter at the bottom of the groove (${millimetres(floor)})`)
}

/** Grooves that are too narrow for the cord or too few for the travel. */
function grooveRules(drive: CordPulleys, { cord, ratio }: { cord: Quantity | undefined; ratio: number }, report: Report): void {
  const { path, names, travel } = drive
  const pitch = drive.drum?.groovePitch
  if (below(pitch, cord)) report(`${path}.${names.drum}.groovePitch`, pitch, `must be at least the cord diameter (${cord})`)
  if (pitch === undefined || travel === undefined) return
  const turns = travel / (2 * Math.PI)
  const onPinion = ((drive.pinion?.turns?.si ?? 0) + ratio * turns + 1) * pitch.si
  const onDrum = (turns + 1) * pitch.si
  for (const [pulley, length, needed, what] of [
    [names.pinion, drive.pinion?.length, onPinion, "its turns and the joint's travel"],
    [names.drum, drive.drum?.length, onDrum, "the joint's travel"],
  ] as const)
    if (length !== undefined && length.si < needed)
      report(`${path}.${pulley}.length`, length, `must be at least ${millimetres(needed)} to hold ${what} at this groove pitch`)
}
