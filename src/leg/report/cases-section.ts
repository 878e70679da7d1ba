import { Quantity, significant } from '../../units/index.js'
import { unitSigns } from '../assess/sentence.js'
import { LOAD_CASES } from '../cases/events.js'
import { entriesOfJoints, jointWords } from '../numbers.js'
import type { Assessment } from '../result.js'
import { capital, listed } from './amounts.js'
import { type Block, points, section, table, text } from './blocks.js'
import { lower } from './checks-section.js'
import { checkList, footText, temperatureText } from './content.js'
import { unitsInHead } from './unit-heads.js'

const HEAD = [
  'load case',
  'joint',
  'foot force',
  'air',
  'torque',
  'speed',
  'motor torque',
  'peak phase current',
  'pretension',
  'taut',
  'slack',
  'copper loss',
  'winding',
  'mount',
] as const

const UNIT = /^-?[\d.]+(?:e-?\d+)? (.+)$/
/** The cells of a column, its quantities in the unit of the largest one. */
function inOneUnit(cells: readonly (Quantity | string | undefined)[]): readonly string[] {
  const sizes = cells.filter((cell) => cell instanceof Quantity).filter(({ si }) => Number.isFinite(si))
  const largest = sizes.reduce<Quantity | undefined>(
    (best, size) => (Math.abs(size.si) > Math.abs(best?.si ?? -1) ? size : best),
    undefined,
  )
  const unit = UNIT.exec(String(largest))?.[1]
  return cells.map((cell) => {
    if (cell === undefined) return 'none'
    if (typeof cell === 'string') return unitSigns(cell)
    if (Number.isNaN(cell.si)) return 'not a number'
    return unitSigns(unit === undefined ? String(cell) : `${significant(cell.in(unit as never), 4)} ${unit}`)
  })
}

/** Description of each load case, with the loads of each joint. */
export function casesSection(assessment: Assessment): Block {
  const { cases } = assessment
  const rows = cases.flatMap((loadCase) =>
    entriesOfJoints(loadCase.joints).map(([joint, j]) => {
      return [
        loadCase.title,
        jointWords(joint),
        loadCase.footForce,
        loadCase.air,
        j.torque,
        j.speed,
        j.motorTorque,
        j.peakPhaseCurrent,
        j.pretension,
        j.tautTension,
        j.slackTension,
        j.motorLoss,
        temperatureText(j.windingTemperature),
        temperatureText(j.mountTemperature),
      ]
    }),
  )
  const columns = HEAD.map((_, i) => inOneUnit(rows.map((cells) => cells[i])))
  // A leg without cords and belts has no tensions.
  const used = HEAD.map((_, i) => i).filter((i) => columns[i]!.some((cell) => cell !== 'none'))
  const shown = unitsInHead({
    head: used.map((i) => HEAD[i]!),
    rows: rows.map((_, k) => used.map((i) => columns[i]![k]!)),
  })
  return section('cases', 'Load cases', [
    points(cases.map(({ title, story }) => [{ text: `${title}.`, strong: true }, ` ${story}`])),
    text('The copper loss is part of the heat of a motor; its drag adds to it. Both stand in the calculation steps.'),
    table('Loads of each joint in each load case', shown.head, shown.rows),
    ...unsettledBlocks(assessment),
  ])
}

function unsettledBlocks({ unsettled }: Assessment): Block[] {
  if (unsettled.length === 0) return []
  const byReason = new Map<string, string[]>()
  for (const { case: id, joint, loop, why } of unsettled) {
    const reason = `${loop} of the ${jointWords(joint)} do not converge. ${why}`
    byReason.set(reason, [...(byReason.get(reason) ?? []), lower(LOAD_CASES[id].title)])
  }
  return [
    section('unsettled', 'Load cases without a thermal steady state', [
      points([...byReason].map(([reason, cases]) => `${capital(reason)} Load cases: ${cases.join('; ')}.`)),
    ]),
  ]
}

/** How well the foot keeps its place. */
export const footSection = (assessment: Assessment): Block => section('foot', 'The foot', [points(footText(assessment))])

const SAME_CHECKS = 'the same checks as the one before'

/** The measurements that decide most checks. */
export function measureSection({ priors }: Assessment): Block {
  const grouped = new Map<string, { readonly whats: string[]; readonly test: string; readonly checks: readonly string[] }>()
  for (const { what, test, checks } of priors.tests) {
    const key = `${test} ${checks.join()}`
    const known = grouped.get(key)
    if (known === undefined) grouped.set(key, { whats: [what], test, checks })
    else known.whats.push(what)
  }
  const all = [...grouped.values()].map((group) => ({ ...group, decides: checkList(group.checks) }))
  return section('measure', 'What to measure first', [
    priors.tests.length === 0
      ? text('No measurement decides more checks than the others.')
      : points(
          all.map(({ whats, test, decides }, i) => [
            { text: capital(listed(whats)), strong: true },
            `: ${test}. This decides ${decides === all[i - 1]?.decides ? SAME_CHECKS : decides}.`,
          ]),
        ),
  ])
}
