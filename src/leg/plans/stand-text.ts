import { significant } from '../../units/index.js'
import { page, points, table } from './show.js'
import type { StandPlan } from './stand.js'

/** The plan for the test stand as Markdown. */
export function standText({ leg, measurements, cautions }: StandPlan): string {
  return page([
    `# ${leg.name}: plan for the test stand`,
    '## Cautions',
    points(cautions),
    '## In order of what it tells',
    'What a measurement tells: how far the reserves near their limit move, together, while its field runs through its range (natural logarithms).',
    table(
      ['', 'measurement', 'compare', 'predicted', 'band', 'corrects', 'tells', 'moves most'],
      measurements.map((one, i) => [
        i + 1,
        one.what,
        one.predictedIs,
        one.predicted,
        one.band.join(' to '),
        one.corrects ?? 'nothing: compare only',
        significant(one.information, 2),
        one.moves ?? '',
      ]),
    ),
    '## How',
    ...measurements.map(
      (one, i) =>
        `### ${i + 1}. ${one.what}\n\n${one.how}\n\n**Caution:** ${one.caution}\n\nLog, given to \`learn\` as \`${one.log}\`:\n\n\`\`\`\n${one.csv}\`\`\``,
    ),
  ])
}
