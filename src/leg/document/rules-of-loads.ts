import { meant } from '../schema/index.js'
import { entriesOf, millimetres, type PartlyLeg, type Report } from './partly.js'

/** Contradictions between masses, and between the load cases and the leg that must bear them. */
export function loadRules(data: PartlyLeg, report: Report): void {
  massRules(data, report)
  combinationRules(data, report)
  landingRules(data, report)
  feetRules(data, report)
}

function massRules({ robot, links, motors, plates, joints }: PartlyLeg, report: Report): void {
  const robotMass = robot?.mass
  for (const name of ['upper', 'lower'] as const) {
    const mass = links?.[name]?.mass
    if (mass === undefined || robotMass === undefined) continue
    const carried = carriedMass(name, { motors, plates, joints })
    if (mass.si + carried >= robotMass.si)
      report(
        `links.${name}.mass`,
        mass,
        `must leave the robot (${robotMass}) heavier than one link with what it carries (${(mass.si + carried).toPrecision(3)} kg)`,
      )
  }
}

/** Mass of the motors on a link, as far as it can be read. */
function carriedMass(link: 'upper' | 'lower', { motors, plates, joints }: Pick<PartlyLeg, 'motors' | 'plates' | 'joints'>): number {
  let mass = 0
  for (const joint of ['sidewaysHip', 'hip', 'knee'] as const) {
    const { motor, plate } = joints?.[joint] ?? {}
    if (motor === undefined || plate === undefined || plates?.[plate]?.mountedOn !== link) continue
    mass += motors?.[motor]?.mass?.si ?? 0
  }
  return mass
}

function combinationRules({ loadCases }: PartlyLeg, report: Report): void {
  for (const [i, combination] of (loadCases?.combine ?? []).entries())
    for (const part of ['events', 'airs', 'ages'] as const) {
      const known = Object.keys(loadCases?.[part] ?? {})
      for (const [k, name] of (combination?.[part] ?? []).entries())
        if (name !== undefined && !known.includes(name))
          report(
            `loadCases.combine[${i}].${part}[${k}]`,
            name,
            `must be one of the names under loadCases.${part}: ${known.join(', ')}${meant(name, known)}`,
          )
    }
}

/** The straightest and the most folded leg within its knee limits, as far as they can be read. */
function reachOf({ links, joints }: Pick<PartlyLeg, 'links' | 'joints'>) {
  const [upper, lower, range] = [links?.upper?.length?.si, links?.lower?.length?.si, joints?.knee?.range]
  if (upper === undefined || lower === undefined || range?.lowest === undefined || range.highest === undefined) return undefined
  const reach = (knee: number) => Math.sqrt(upper ** 2 + lower ** 2 + 2 * upper * lower * Math.cos(knee))
  const [one, other] = [reach(range.lowest.si), reach(range.highest.si)]
  const straddles = range.lowest.si < 0 && range.highest.si > 0
  return { longest: straddles ? upper + lower : Math.max(one, other), shortest: Math.min(one, other) }
}

/** A landing is borne by feet that the robot has. */
function feetRules({ loadCases, robot }: PartlyLeg, report: Report): void {
  for (const [name, event] of entriesOf(loadCases?.events))
    if ((event.kind === 'hop' || event.kind === 'drop') && event.feet !== undefined && robot?.legs !== undefined && event.feet > robot.legs)
      report(`loadCases.events.${name}.feet`, event.feet, `must be at most the number of legs (${robot.legs})`)
}

/** A landing may not fold the leg further than its knee bends. */
function landingRules({ loadCases, links, joints, robot }: PartlyLeg, report: Report): void {
  const reach = reachOf({ links, joints })
  if (reach === undefined) return
  const { longest, shortest } = reach
  for (const [name, event] of entriesOf(loadCases?.events)) {
    if (event.kind !== 'hop' && event.kind !== 'drop') continue
    const path = `loadCases.events.${name}`
    const { touchDownHeight, travel } = event
    const touchDown = touchDownHeight ?? robot?.standHeight
    if (touchDownHeight !== undefined && (touchDownHeight.si > longest || touchDownHeight.si <= shortest))
      report(
        `${path}.touchDownHeight`,
        touchDownHeight,
        `must be above ${millimetres(shortest)} and at most ${millimetres(longest)}, the most folded and the straightest leg within its knee limits`,
      )
    else if (travel !== undefined && touchDown !== undefined && touchDown.si > shortest && travel.si > touchDown.si - shortest)
      report(
        `${path}.travel`,
        travel,
        `must be at most ${millimetres(touchDown.si - shortest)}, from touch-down (hip at ${millimetres(touchDown.si)}) to the most folded leg within its knee limits`,
      )
  }
}
