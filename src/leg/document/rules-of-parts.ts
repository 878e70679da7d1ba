import { Quantity } from '../../units/index.js'
import { bearingOf, pinOf, threadOf } from '../schema/tables.js'
import { below, entriesOf, millimetres, notAbove, type PartlyLeg, type Report } from './partly.js'

/** Contradictions within links, pins, bolts, shafts, bearings, motors and plates. */
export function partRules(data: PartlyLeg, report: Report): void {
  linkRules(data, report)
  counterweightRules(data, report)
  centreRules(data, report)
  pinRules(data, report)
  boltRules(data, report)
  shaftRules(data, report)
  motorRules(data, report)
}

/** The standing foot must lie within reach, and a wall fits its section. */
function linkRules({ links, robot }: PartlyLeg, report: Report): void {
  for (const name of ['upper', 'lower'] as const) {
    const link = links?.[name]
    const { wall, box, tube } = link?.section ?? {}
    for (const [side, size] of [
      ['width', box?.width],
      ['depth', box?.depth],
      ['diameter', tube],
    ] as const)
      if (wall !== undefined && size !== undefined && 2 * wall.si > size.si)
        report(`links.${name}.section.wall`, wall, `must be at most half the ${side} (${size})`)
    if (below(link?.length, link?.centreOfMass))
      report(`links.${name}.centreOfMass`, link?.centreOfMass, `must be at most the length of the link (${link?.length})`)
  }
  const [upper, lower, height] = [links?.upper?.length?.si, links?.lower?.length?.si, robot?.standHeight]
  if (upper === undefined || lower === undefined || height === undefined) return
  if (height.si >= upper + lower)
    report(
      'robot.standHeight',
      height,
      `must be below ${millimetres(upper + lower)}, the length of both links; the foot cannot reach the ground`,
    )
  if (height.si <= Math.abs(upper - lower))
    report(
      'robot.standHeight',
      height,
      `must be above ${millimetres(Math.abs(upper - lower))}, the folded leg; the foot cannot come so near`,
    )
}

/** A robot weighs more than what balances its legs. */
function counterweightRules({ links, robot }: PartlyLeg, report: Report): void {
  const weights = (['upper', 'lower'] as const).map((name) => links?.[name]?.counterweight?.mass?.si ?? 0)
  const all = (robot?.legs ?? 0) * weights.reduce((sum, weight) => sum + weight, 0)
  if (robot?.mass !== undefined && all >= robot.mass.si)
    report('robot.mass', robot.mass, `must be more than the counterweights of all legs (${new Quantity(all, 'mass')}), which it includes`)
}

/** A robot whose centre of mass is not over its feet lies on its side. */
function centreRules({ links, robot }: PartlyLeg, report: Report): void {
  const across = robot?.hipTrack === undefined || links?.hipOffset === undefined ? undefined : robot.hipTrack.si + 2 * links.hipOffset.si
  for (const [name, distance, between] of [
    ['centreOfMassForward', robot?.hipSpacing?.si, 'front and hind feet'],
    ['centreOfMassLeft', across, 'left and right feet'],
  ] as const) {
    const given = robot?.[name]
    if (given !== undefined && distance !== undefined && Math.abs(given.si) >= distance / 2)
      report(`robot.${name}`, given, `must be less than ${millimetres(distance / 2)} either way, half the distance of ${between}`)
  }
}

function pinRules({ joints, pins, bosses }: PartlyLeg, report: Report): void {
  for (const joint of ['hip', 'knee'] as const) {
    const { pin: pinName, boss: bossName } = joints?.[joint] ?? {}
    const pin = pinName === undefined ? undefined : pins?.[pinName]
    const boss = bossName === undefined ? undefined : bosses?.[bossName]
    if (bossName !== undefined && pinName === undefined)
      report(`joints.${joint}.pin`, undefined, `is needed because joints.${joint}.boss names what a pin is pressed into`)
    if (boss === undefined || pin?.size === undefined) continue
    const { diameter } = pinOf(pin.size)
    const path = `bosses.${bossName}`
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
}

function boltRules({ bolts }: PartlyLeg, report: Report): void {
  for (const [name, group] of entriesOf(bolts)) {
    const { pattern, count } = group
    if (pattern?.kind === 'rows' && pattern.distances !== undefined && count !== undefined && pattern.distances.length !== count)
      report(`bolts.${name}.pattern.distances`, `${pattern.distances.length} distances`, `must have one for each of the ${count} bolts`)
  }
}

function shaftRules({ shafts, bearings }: PartlyLeg, report: Report): void {
  for (const [name, shaft] of entriesOf(shafts)) {
    const outer = shaft.thread === undefined ? undefined : threadOf(shaft.thread)
    const inner = shaft.innerThread === undefined ? undefined : threadOf(shaft.innerThread)
    if (outer !== undefined && inner !== undefined && inner.diameter >= outer.rootDiameter)
      report(
        `shafts.${name}.innerThread`,
        shaft.innerThread,
        `must be smaller than the root of the shaft's own thread (${shaft.thread}, ${millimetres(outer.rootDiameter)})`,
      )
    const pair = shaft.bearings === undefined ? undefined : bearings?.[shaft.bearings]
    const bore = pair?.own?.bore?.si ?? (pair?.size === undefined ? undefined : bearingOf(pair.size, undefined)?.bore)
    if (outer === undefined || bore === undefined || Math.abs(bore - outer.diameter) <= 1e-6) continue
    const own = pair?.own !== undefined
    report(
      `bearings.${shaft.bearings}.${own ? 'own.bore' : 'size'}`,
      own ? pair?.own?.bore : pair?.size,
      `must have the bore of the shaft (${shaft.thread})`,
    )
  }
}

function motorRules({ motors, plates, joints, loadCases }: PartlyLeg, report: Report): void {
  for (const [name, motor] of entriesOf(motors)) {
    const { mountOuterDiameter, mountInnerDiameter, phaseInductance, polePairs } = motor
    if (notAbove(mountOuterDiameter, mountInnerDiameter))
      report(`motors.${name}.mountOuterDiameter`, mountOuterDiameter, `must be larger than mountInnerDiameter (${mountInnerDiameter})`)
    if ((phaseInductance?.si ?? 0) > 0 && polePairs === undefined)
      report(`motors.${name}.polePairs`, undefined, `is needed because motors.${name}.phaseInductance is given`)
  }
  for (const joint of ['sidewaysHip', 'hip', 'knee'] as const) {
    const { motor: motorName, plate: plateName } = joints?.[joint] ?? {}
    const ring = motorName === undefined ? undefined : motors?.[motorName]?.mountOuterDiameter
    const size = plateName === undefined ? undefined : plates?.[plateName]?.size
    for (const side of ['width', 'height'] as const)
      if (notAbove(size?.[side], ring))
        report(`plates.${plateName}.size.${side}`, size?.[side], `must be larger than the mounting ring of its motor (${ring})`)
  }
  const { hot, cold } = loadCases?.airs ?? {}
  if (below(hot?.temperature, cold?.temperature))
    report('loadCases.airs.hot.temperature', hot?.temperature, `must be above that of cold (${cold?.temperature})`)
}
