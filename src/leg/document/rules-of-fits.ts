import { threadOf } from '../schema/tables.js'
import { entriesOf, millimetres, notAbove, type PartlyLeg, type Report } from './partly.js'

type Joints = NonNullable<PartlyLeg['joints']>
type Drive = NonNullable<NonNullable<Joints['hip']>['drive']>
type Anchor = NonNullable<Extract<Drive, { readonly kind?: 'cord' | undefined }>['anchor']>

/** Contradictions of sizes that lie one within another: posts and edges, teeth and pitch, rings and caps, sinks and motors. */
export function fitRules(data: PartlyLeg, report: Report): void {
  anchorRules(data, report)
  toothRules(data, report)
  ringRules(data, report)
  sinkRules(data, report)
  circleRules(data, report)
}

/** The hole of an anchor's post lies within its drum. */
function anchorRules({ joints }: PartlyLeg, report: Report): void {
  const held: [string, { readonly anchor?: Anchor | undefined } | undefined][] = [
    ['joints.hip.drive', joints?.hip?.drive as { anchor?: Anchor } | undefined],
    ['joints.knee.drive', joints?.knee?.drive as { anchor?: Anchor } | undefined],
    ['joints.knee.through', joints?.knee?.through as { anchor?: Anchor } | undefined],
  ]
  for (const [path, drive] of held) {
    const { edgeDistance, postDiameter } = drive?.anchor ?? {}
    if (edgeDistance !== undefined && postDiameter !== undefined && edgeDistance.si <= postDiameter.si / 2)
      report(
        `${path}.anchor.edgeDistance`,
        edgeDistance,
        `must be above half the post's diameter (${millimetres(postDiameter.si / 2)}), or its hole is open`,
      )
  }
}

/** The teeth of a belt leave room for those of its pulleys. */
function toothRules({ belts }: PartlyLeg, report: Report): void {
  for (const [name, { pitch, toothRootWidth }] of entriesOf(belts))
    if (notAbove(pitch, toothRootWidth))
      report(
        `belts.${name}.toothRootWidth`,
        toothRootWidth,
        `must be below the pitch (${pitch}): the pulley has teeth between those of the belt`,
      )
}

/** A bearing has a ring round its bore, and an end cap reaches over it. */
function ringRules({ bearings, shafts }: PartlyLeg, report: Report): void {
  for (const [name, { own }] of entriesOf(bearings))
    if (notAbove(own?.outerDiameter, own?.bore))
      report(`bearings.${name}.own.outerDiameter`, own?.outerDiameter, `must be larger than the bore (${own?.bore})`)
  for (const [name, { thread, capSpan }] of entriesOf(shafts)) {
    const shaft = thread === undefined ? undefined : threadOf(thread).diameter
    if (shaft !== undefined && capSpan !== undefined && capSpan.si <= shaft)
      report(
        `shafts.${name}.capSpan`,
        capSpan,
        `must be larger than the shaft (${thread}, ${millimetres(shaft)}): the cap rests on what turns round it`,
      )
  }
}

/** The ring of a motor lies on its sink. */
function sinkRules({ joints, motors, plates }: PartlyLeg, report: Report): void {
  for (const joint of ['sidewaysHip', 'hip', 'knee'] as const) {
    const { motor, plate } = joints?.[joint] ?? {}
    const ring = motor === undefined ? undefined : motors?.[motor]?.mountOuterDiameter
    const size = plate === undefined ? undefined : plates?.[plate]?.sink?.size
    for (const side of ['width', 'height'] as const)
      if (notAbove(size?.[side], ring))
        report(`plates.${plate}.sink.size.${side}`, size?.[side], `must be larger than the mounting ring of its motor (${ring})`)
  }
}

/** Screws into a motor lie within its face. */
function circleRules({ joints, motors, bolts }: PartlyLeg, report: Report): void {
  for (const joint of ['sidewaysHip', 'hip', 'knee'] as const) {
    const { motor, motorBolts } = joints?.[joint] ?? {}
    const { nut, pattern } = (motorBolts === undefined ? undefined : bolts?.[motorBolts]) ?? {}
    const can = motor === undefined ? undefined : motors?.[motor]?.canDiameter
    if (nut !== 'tappedMetal' || pattern?.kind !== 'circle' || can === undefined) continue
    const { diameter } = pattern as { readonly diameter?: typeof can }
    if (notAbove(can, diameter))
      report(
        `bolts.${motorBolts}.pattern.diameter`,
        diameter,
        `must be below the diameter of its motor (${can}), which the screws are tapped into`,
      )
  }
}
