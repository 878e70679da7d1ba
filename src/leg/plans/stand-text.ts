import { significant } from '../../units/index.js'
import { code, heading, led, markdownPage, type Page, points, subheading, table, text } from '../report/blocks.js'
import { endless } from './show.js'
import type { StandPlan } from './stand.js'

/** The plan for the test stand as Markdown. */
export const standText = (plan: StandPlan): string => markdownPage(standPage(plan))

/** The plan for the test stand as a page. @internal */
export function standPage({ leg, measurements, cautions }: StandPlan): Page {
  return {
    title: `${leg.name}: plan for the test stand`,
    blocks: [
      heading('Cautions'),
      points(cautions),
      heading('In order of what it tells'),
      text(
        'What a measurement tells: how far the reserves near their limit move, together, while its field runs through its range (natural logarithms).',
      ),
      table(
        'Measurements, the most telling first',
        ['', 'measurement', 'compare', 'predicted', 'band', 'corrects', 'tells', 'moves most'],
        measurements.map((one, i) => [
          i + 1,
          one.what,
          one.predictedIs,
          endless(one.predicted),
          one.band.map(endless).join(' to '),
          one.corrects ?? 'nothing: compare only',
          significant(one.information, 2),
          one.moves ?? '',
        ]),
      ),
      heading('How'),
      ...measurements.flatMap((one, i) => [
        subheading(`${i + 1}. ${one.what}`),
        text(one.how),
        led('Caution:', one.caution),
        text(`First lines of its log, which goes to learn under the name "${one.log}":`),
        code(one.csv),
      ]),
    ],
  }
}
