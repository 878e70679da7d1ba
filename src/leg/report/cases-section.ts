import { unitSigns } from '../assess/sentence.js'
import { LOAD_CASES } from '../cases/events.js'
import { JOINTS } from '../numbers.js'
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

/** What each load case is, and the loads of each joint in it. */
export function casesSection(assessment: Assessment): Block {
  const { cases } = assessment
  const rows = cases.flatMap((one) =>
    JOINTS.map((joint) => {
      const j = one.joints[joint]
      return [
        one.title,
        joint,
        one.footForce,
        one.air,
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
      ].map((cell) => (cell === undefined ? 'none' : unitSigns(String(cell).replace('NaN', 'not a number'))))
    }),
  )
  const shown = unitsInHead({ head: HEAD, rows })
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
    const reason = `${loop} do not converge. ${why}`
    byReason.set(reason, [...(byReason.get(reason) ?? []), `${lower(LOAD_CASES[id].title)} (${joint})`])
  }
  return [
    section('unsettled', 'Load cases without a thermal steady state', [
      points([...byReason].map(([reason, cases]) => `${capital(reason)} Load cases: ${cases.join('; ')}.`)),
    ]),
  ]
}

/** How well the foot keeps its place. */
export const footSection = (assessment: Assessment): Block => section('foot', 'The foot', [points(footText(assessment))])

/** The measurements that decide most checks. */
export function measureSection({ priors }: Assessment): Block {
  const grouped = new Map<string, { readonly whats: string[]; readonly test: string; readonly checks: readonly string[] }>()
  for (const { what, test, checks } of priors.tests) {
    const key = `${test} ${checks.join()}`
    const known = grouped.get(key)
    if (known === undefined) grouped.set(key, { whats: [what], test, checks })
    else known.whats.push(what)
  }
  return section('measure', 'What to measure first', [
    priors.tests.length === 0
      ? text('No measurement decides more checks than the others.')
      : points(
          [...grouped].map(([, { whats, test, checks }]) => [
            { text: capital(listed(whats)), strong: true },
            `: ${test}. This decides ${checkList(checks)}.`,
          ]),
        ),
  ])
}
