import { type Issue, type Quantity, show } from '../../units/index.js'
import { meant } from './fields.js'
import type { LegData } from './schema.js'
import { bearingOf, pinOf, threadOf } from './tables.js'

/** Data some of whose fields may be missing, because they could not be read. */
export type Partly<T> = T extends Quantity | string | number | boolean
  ? T | undefined
  : T extends readonly (infer E)[]
    ? readonly Partly<E>[] | undefined
    : { readonly [K in keyof T]?: Partly<T[K]> } | undefined

type Report = (path: string, given: unknown, accepts: string) => void
type Data = NonNullable<Partly<LegData>>

/** What contradicts itself between fields that are each acceptable. Fields that could not be read are passed over. */
export function contradictions(data: Partly<LegData>): Issue[] {
  const issues: Issue[] = []
  const report: Report = (path, given, accepts) => issues.push({ path, given: show(given), accepts })
  if (data === undefined) return issues
  jointLimits(data, report)
  for (const joint of ['hip', 'knee'] as const) {
    pulleys(data, joint, report)
    pinAndBoss(data, joint, report)
  }
  reach(data, report)
  landing(data, report)
  fastenings(data, report)
  thermalParts(data, report)
  return issues
}

const below = (a: Quantity | undefined, b: Quantity | undefined): boolean => a !== undefined && b !== undefined && a.si < b.si
const notAbove = (a: Quantity | undefined, b: Quantity | undefined): boolean => a !== undefined && b !== undefined && a.si <= b.si

function jointLimits({ joints }: Data, report: Report): void {
  for (const joint of ['sidewaysHip', 'hip', 'knee'] as const) {
    const { from, to } = joints?.[joint] ?? {}
    if (notAbove(to as Quantity, from as Quantity))
      report(`joints.${joint}.to`, to, `must be above from (${from}); the limits are upside down`)
  }
}

/** Radius to the centre line of the cord, however it was given. */
function centreLine(
  pulley: { grooveDiameter?: Quantity | undefined; centreLineRadius?: Quantity | undefined } | undefined,
  cordDiameter: Quantity | undefined,
): number | undefined {
  if (pulley?.centreLineRadius !== undefined) return pulley.centreLineRadius.si
  if (pulley?.grooveDiameter === undefined || cordDiameter === undefined) return undefined
  return (pulley.grooveDiameter.si + cordDiameter.si) / 2
}

const millimetres = (x: number) => `${Number((x * 1000).toPrecision(4))} mm`

function pulleys({ drives, cords, joints }: Data, joint: 'hip' | 'knee', report: Report): void {
  const drive = drives?.[joint]
  if (drive === undefined) return
  const path = `drives.${joint}`
  for (const name of ['pinion', 'drum'] as const) {
    const pulley = drive[name]
    if (pulley === undefined) continue
    const given = [pulley.grooveDiameter, pulley.centreLineRadius].filter((x) => x !== undefined).length
    if (given !== 1) {
      const what = given === 0 ? undefined : { grooveDiameter: pulley.grooveDiameter, centreLineRadius: pulley.centreLineRadius }
      report(
        `${path}.${name}`,
        what,
        'must have exactly one of grooveDiameter (bottom of the groove) and centreLineRadius (centre line of the cord)',
      )
    }
  }
  const cord = drive.cord === undefined || cords === undefined ? undefined : cords[drive.cord]
  if (drive.cord !== undefined && cords !== undefined && !Object.hasOwn(cords, drive.cord)) {
    const names = Object.keys(cords)
    report(
      `${path}.cord`,
      drive.cord,
      `must be one of the names under cords: ${names.join(', ') || 'none is given'}${meant(drive.cord, names)}`,
    )
  }
  const pinion = centreLine(drive.pinion as never, cord?.diameter as Quantity)
  const drum = centreLine(drive.drum as never, cord?.diameter as Quantity)
  if (pinion === undefined || drum === undefined) return
  if (drum <= pinion)
    report(
      `${path}.drum`,
      `${millimetres(drum)} centre-line radius`,
      `must be larger than the pinion (${millimetres(pinion)}): the drive reduces`,
    )
  const { centreDistance } = drive
  const least = pinion + drum + (cord?.diameter?.si ?? 0)
  if (centreDistance !== undefined && centreDistance.si <= least)
    report(
      `${path}.centreDistance`,
      centreDistance,
      `must be above ${millimetres(least)}, pinion and drum radius and the cord between them; the pulleys overlap`,
    )
  if (notAbove(drive.drum?.grooveDiameter as Quantity, drive.drum?.bore as Quantity))
    report(`${path}.drum.bore`, drive.drum?.bore, `must be smaller than the groove diameter (${drive.drum?.grooveDiameter})`)
  const pitch = drive.drum?.groovePitch
  if (below(pitch as Quantity, cord?.diameter as Quantity))
    report(`${path}.drum.groovePitch`, pitch, `must be at least the cord diameter (${cord?.diameter})`)
  const range = joints?.[joint]
  if (pitch === undefined || range?.from === undefined || range.to === undefined || range.to.si <= range.from.si) return
  const turns = (range.to.si - range.from.si) / (2 * Math.PI)
  const ratio = drum / pinion
  const onPinion = ((drive.pinion?.wraps?.si ?? 0) + ratio * turns + 1) * pitch.si
  if (drive.pinion?.length !== undefined && drive.pinion.length.si < onPinion)
    report(
      `${path}.pinion.length`,
      drive.pinion.length,
      `must be at least ${millimetres(onPinion)} to hold its wraps and the joint's travel at this groove pitch`,
    )
  const onDrum = (turns + 1) * pitch.si
  if (drive.drum?.length !== undefined && drive.drum.length.si < onDrum)
    report(
      `${path}.drum.length`,
      drive.drum.length,
      `must be at least ${millimetres(onDrum)} to hold the joint's travel at this groove pitch`,
    )
}

function pinAndBoss({ pins, bosses }: Data, joint: 'hip' | 'knee', report: Report): void {
  const boss = bosses?.[joint]
  const size = pins?.[joint]?.size
  const path = `bosses.${joint}`
  if (boss === undefined || size === undefined) return
  const diameter = pinOf(size).diameter
  if (boss.outerDiameter !== undefined && boss.outerDiameter.si <= diameter)
    report(
      `${path}.outerDiameter`,
      boss.outerDiameter,
      `must be larger than its pin (${millimetres(diameter)}); the boss is smaller than its pin`,
    )
  if (boss.hole !== undefined && Math.abs(boss.hole.si - diameter) > 0.1 * diameter)
    report(`${path}.hole`, boss.hole, `must be within 10 % of the pin's diameter (${millimetres(diameter)})`)
  if (boss.edgeDistance !== undefined && boss.edgeDistance.si <= diameter / 2)
    report(
      `${path}.edgeDistance`,
      boss.edgeDistance,
      `must be above half the pin's diameter (${millimetres(diameter / 2)}), or the hole is open`,
    )
}

/** The standing foot must lie within reach of the links and the joint limits. */
function reach({ links, robot }: Data, report: Report): void {
  const upper = links?.upper?.length?.si
  const lower = links?.lower?.length?.si
  const height = robot?.standHeight?.si
  if (upper === undefined || lower === undefined || height === undefined) return
  if (height >= upper + lower)
    report(
      'robot.standHeight',
      robot?.standHeight,
      `must be below ${millimetres(upper + lower)}, the length of both links; the foot cannot reach the ground`,
    )
  if (height <= Math.abs(upper - lower))
    report(
      'robot.standHeight',
      robot?.standHeight,
      `must be above ${millimetres(Math.abs(upper - lower))}, the folded leg; the foot cannot come so near`,
    )
  for (const name of ['upper', 'lower'] as const) {
    const { wall, width, depth } = links?.[name] ?? {}
    for (const [side, size] of [
      ['width', width],
      ['depth', depth],
    ] as const)
      if (wall !== undefined && size !== undefined && 2 * wall.si > size.si)
        report(`links.${name}.wall`, wall, `must be at most half the ${side} (${size})`)
  }
}

/** A landing starts within the leg's reach and may not fold it further than its knee bends. */
function landing({ links, robot, joints, usage }: Data, report: Report): void {
  const [upper, lower] = [links?.upper?.length?.si, links?.lower?.length?.si]
  const [from, to] = [joints?.knee?.from?.si, joints?.knee?.to?.si]
  const travel = usage?.landingTravel
  const touchDown = usage?.touchDownHeight ?? robot?.standHeight
  if (upper === undefined || lower === undefined || from === undefined || to === undefined || touchDown === undefined) return
  const hipToFoot = (knee: number) => Math.sqrt(upper ** 2 + lower ** 2 + 2 * upper * lower * Math.cos(knee))
  const shortest = Math.min(hipToFoot(from), hipToFoot(to))
  const longest = from < 0 && to > 0 ? upper + lower : Math.max(hipToFoot(from), hipToFoot(to))
  if (usage?.touchDownHeight !== undefined && (touchDown.si > longest || touchDown.si <= shortest))
    report(
      'usage.touchDownHeight',
      touchDown,
      `must be above ${millimetres(shortest)} and at most ${millimetres(longest)}, the most folded and the straightest leg within its knee limits`,
    )
  else if (travel !== undefined && touchDown.si > shortest && travel.si > touchDown.si - shortest)
    report(
      'usage.landingTravel',
      travel,
      `must be at most ${millimetres(touchDown.si - shortest)}, from touch-down (hip at ${millimetres(touchDown.si)}) to the most folded leg within its knee limits`,
    )
}

function fastenings({ bolts, shaft, bearings, bondedEnd, drives, cords }: Data, report: Report): void {
  const outer = shaft?.thread === undefined ? undefined : threadOf(shaft.thread)
  const inner = shaft?.innerThread === undefined ? undefined : threadOf(shaft.innerThread)
  if (outer !== undefined && inner !== undefined && inner.diameter >= outer.rootDiameter)
    report(
      'shaft.innerThread',
      shaft?.innerThread,
      `must be smaller than the root of the shaft's own thread (${shaft?.thread}, ${millimetres(outer.rootDiameter)})`,
    )
  if (bearings !== undefined) {
    const { size, own } = bearings
    if ((size === undefined) === (own === undefined))
      report('bearings', bearings, 'must have exactly one of size (a bearing of the table) and own (the values of its sheet)')
    const bore = own?.bore?.si ?? (size === undefined ? undefined : bearingOf(size, undefined)?.bore)
    if (outer !== undefined && bore !== undefined && Math.abs(bore - outer.diameter) > 1e-6)
      report(
        own === undefined ? 'bearings.size' : 'bearings.own.bore',
        own?.bore ?? size,
        `must have the bore of the shaft (${shaft?.thread})`,
      )
  }
  const { stack } = bolts ?? {}
  if (stack?.rows !== undefined && stack.count !== undefined && stack.rows.length !== stack.count)
    report('bolts.stack.rows', `${stack.rows.length} distances`, `must have one for each of the ${stack.count} bolts`)
  for (const joint of ['hip', 'knee'] as const)
    if (drives?.[joint]?.ends === 'bondedFerrule' && bondedEnd === undefined)
      report('bondedEnd', undefined, `is needed because drives.${joint}.ends is bondedFerrule`)
  if (bondedEnd?.socketDiameter === undefined || drives === undefined || cords === undefined) return
  for (const joint of ['hip', 'knee'] as const) {
    const drive = drives[joint]
    const cord = drive?.cord === undefined ? undefined : cords[drive.cord]
    if (drive?.ends === 'bondedFerrule' && notAbove(bondedEnd.socketDiameter as Quantity, cord?.diameter as Quantity))
      report('bondedEnd.socketDiameter', bondedEnd.socketDiameter, `must be larger than the cord (${cord?.diameter})`)
  }
}

function thermalParts({ motor, plate, environment }: Data, report: Report): void {
  if (notAbove(motor?.mountOuterDiameter as Quantity, motor?.mountInnerDiameter as Quantity))
    report('motor.mountOuterDiameter', motor?.mountOuterDiameter, `must be larger than mountInnerDiameter (${motor?.mountInnerDiameter})`)
  if (motor?.phaseInductance !== undefined && motor.phaseInductance.si > 0 && motor.polePairs === undefined)
    report('motor.polePairs', undefined, 'is needed because motor.phaseInductance is given')
  for (const side of ['width', 'height'] as const)
    if (notAbove(plate?.[side] as Quantity, motor?.mountOuterDiameter as Quantity))
      report(`plate.${side}`, plate?.[side], `must be larger than the motor's mounting ring (${motor?.mountOuterDiameter})`)
  if (below(environment?.hotAir as Quantity, environment?.coldAir as Quantity))
    report('environment.hotAir', environment?.hotAir, `must be above coldAir (${environment?.coldAir})`)
}
