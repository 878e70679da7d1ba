import type { Step } from '../../formula/index.js'
import { amountText } from '../assess/sentence.js'
import { LOAD_CASES } from '../cases/events.js'
import type { Assessment, CheckResult } from '../result.js'
import {
  bandText,
  CAUTIONS,
  capital,
  EVIDENCE,
  footText,
  placeOf,
  priorsText,
  reserveText,
  standing,
  temperatureText,
  verdictText,
  words,
} from './content.js'
import { literal } from './markdown-blocks.js'

/** The assessment as a calculation sheet in Markdown: verdict, ranked checks, load cases, each check's calculation folded under it. */
export function markdownReport(assessment: Assessment): string {
  const { leg, checks, cases } = assessment
  return `${[
    `# ${literal(leg.name)}: calculation sheet`,
    leg.remark === undefined ? '' : `> ${literal(leg.remark).replaceAll(/\s+/g, ' ')}`,
    `**${verdictText(assessment)}**`,
    literal(assessment.governing.sentence),
    `Remedy: ${assessment.governing.remedy}.`,
    priorsText(assessment),
    '## Cautions',
    CAUTIONS.map((caution) => `- ${caution}`).join('\n'),
    '## Checks, nearest to its limit first',
    'Reserve is capacity over demand. Temperatures are compared as rises above the air. Checks are ordered by reserve over required reserve. The two ends of the range are the reserves with every uncertain value at its unfavourable end and at its favourable end.',
    markdownTable(
      ['', 'part', 'how it fails', 'load case', 'demand', 'capacity', 'reserve', 'required reserve', 'range'],
      checks.map((check) => [
        standing(check),
        placeOf(check),
        check.mode,
        check.caseTitle,
        amountText(check.demand),
        amountText(check.capacity),
        reserveText(check.reserve),
        reserveText(check.requiredReserve),
        bandText(check),
      ]),
    ),
    '## Load cases',
    cases.map((one) => `- **${one.title}.** ${one.story}`).join('\n'),
    markdownTable(
      [
        'load case',
        'foot force',
        'air',
        'joint',
        'torque',
        'speed',
        'motor torque',
        'peak phase current',
        'pretension',
        'taut',
        'slack',
        'motor loss',
        'winding',
        'mount',
      ],
      cases.flatMap((one) =>
        (['hip', 'knee'] as const).map((joint) => {
          const j = one.joints[joint]
          return [
            one.title,
            String(one.footForce),
            String(one.air),
            joint,
            String(j.torque),
            String(j.speed),
            String(j.motorTorque),
            String(j.peakPhaseCurrent),
            String(j.pretension),
            String(j.tautTension),
            String(j.slackTension),
            String(j.motorLoss),
            temperatureText(j.windingTemperature),
            temperatureText(j.mountTemperature),
          ]
        }),
      ),
    ),
    '## The foot',
    footText(assessment)
      .map((line) => `- ${line}`)
      .join('\n'),
    unsettledText(assessment),
    '## What to measure first',
    assessment.priors.tests.length === 0
      ? 'No measurement decides more checks than the others.'
      : assessment.priors.tests
          .map(({ what, test, checks: names }) => `- **${capital(what)}**: ${test}. It decides ${names.join(', ')}.`)
          .join('\n'),
    '## Calculations',
    ...checks.map(checkText),
    '## Assumed values',
    markdownTable(
      ['field', 'value', 'reason', 'evidence'],
      leg.defaults.map(({ path, value, why }) => [path, value, why.where, EVIDENCE[why.level] ?? why.level]),
    ),
    assessment.notEvaluated.length === 0
      ? ''
      : `## Checks not evaluated\n\n${assessment.notEvaluated.map(({ id, why }) => `- ${id}: ${why}`).join('\n')}`,
  ]
    .filter((part) => part !== '')
    .join('\n\n')}\n`
}

function unsettledText({ unsettled }: Assessment): string {
  if (unsettled.length === 0) return ''
  return `## Load cases without a thermal steady state\n\n${unsettled.map(({ case: id, joint, loop, why }) => `- ${LOAD_CASES[id].title}, ${joint}: ${loop}. ${why}`).join('\n')}`
}

function checkText(check: CheckResult): string {
  const others =
    check.otherCases.length === 0
      ? ''
      : `Reserves in other load cases: ${check.otherCases.map((one) => `${LOAD_CASES[one.case].title} (${reserveText(one.reserve)})`).join('; ')}.`
  return [
    `### ${capital(placeOf(check))}: ${check.mode}`,
    literal(`${check.sentence} ${others}`.trim()),
    `Remedy: ${check.remedy}.`,
    check.notes.length === 0 ? '' : check.notes.map((note) => `- Note: ${note}.`).join('\n'),
    `<details><summary>Calculation (${check.steps.length} steps), sources</summary>`,
    check.steps.map(stepText).join('\n'),
    check.sources.map(({ level, where }) => `- Source (${EVIDENCE[level] ?? level}): ${where}`).join('\n'),
    '</details>',
  ]
    .filter((part) => part !== '')
    .join('\n\n')
}

function stepText(step: Step, i: number): string {
  const list = (record: Readonly<Record<string, string>>) =>
    Object.entries(record)
      .map(([name, text]) => `${words(name)} ${text}`)
      .join('; ')
  const notes = step.notes.map((note) => ` *Outside: ${note}.*`).join('')
  return `${i + 1}. **${step.title}** (\`${step.formula}\`): ${list(step.inputs)} → **${list(step.results)}**${notes}`
}

function markdownTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const cell = (one: string) => literal(one).replaceAll('|', '\\|').replaceAll(/\s+/g, ' ')
  const line = (cells: readonly string[]) => `| ${cells.map(cell).join(' | ')} |`
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')
}
