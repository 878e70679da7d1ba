import type { Step } from '../../formula/index.js'
import { amountText } from '../assess/sentence.js'
import type { Assessment, CheckResult } from '../result.js'
import { literal, markdownTable } from './blocks.js'
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

/** The assessment as a calculation sheet in Markdown: verdict, ranked checks, load cases, each check's calculation folded under it. */
export function markdownReport(assessment: Assessment): string {
  const { leg, checks, cases } = assessment
  return `${[
    `# ${literal(leg.name)}: calculation sheet`,
    leg.remark === undefined ? '' : `> ${literal(leg.remark).replaceAll(/\s+/g, ' ')}`,
    `**${verdictText(assessment)}**`,
    literal(assessment.governing.sentence),
    `What would help: ${assessment.governing.remedy}.`,
    priorsText(assessment),
    '## Cautions',
    CAUTIONS.map((caution) => `- ${caution}`).join('\n'),
    '## Checks, nearest to its limit first',
    'Reserve is capacity over demand; temperatures are compared as rises above the air. The order is by reserve over the reserve wanted. The range takes every uncertain value at its bad end, and at its good end.',
    markdownTable(
      ['', 'part', 'how it fails', 'load case', 'demand', 'capacity', 'reserve', 'wanted', 'range'],
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
      ? 'Nothing stands out.'
      : assessment.priors.tests
          .map(({ what, test, checks: names }) => `- **${capital(what)}**: ${test}. It decides ${names.join(', ')}.`)
          .join('\n'),
    '## Calculations',
    ...checks.map(checkText),
    '## Values that the specification left open',
    markdownTable(
      ['field', 'taken', 'why', 'evidence'],
      leg.defaults.map(({ path, value, why }) => [path, value, why.where, EVIDENCE[why.level] ?? why.level]),
    ),
    assessment.notEvaluated.length === 0
      ? ''
      : `## Checks not made\n\n${assessment.notEvaluated.map(({ id, why }) => `- ${id}: ${why}`).join('\n')}`,
  ]
    .filter((part) => part !== '')
    .join('\n\n')}\n`
}

function unsettledText({ unsettled }: Assessment): string {
  if (unsettled.length === 0) return ''
  return `## What does not come to rest\n\n${unsettled.map(({ case: id, joint, loop, why }) => `- ${id}, ${joint}: ${loop}. ${why}`).join('\n')}`
}

function checkText(check: CheckResult): string {
  const others =
    check.otherCases.length === 0
      ? ''
      : `Other load cases: ${check.otherCases.map((one) => `${one.case} ${reserveText(one.reserve)}`).join(', ')}.`
  return [
    `### ${capital(placeOf(check))}: ${check.mode}`,
    literal(`${check.sentence} ${others}`.trim()),
    `What would help: ${check.remedy}.`,
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
