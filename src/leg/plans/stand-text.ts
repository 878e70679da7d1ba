import { significant } from '../../units/index.js'
import { hasPrints } from '../printed.js'
import { type Block, code, heading, led, type Page, picture, points, subheading, text } from '../report/blocks.js'
import { checkWords } from '../report/content.js'
import { markdownPage } from '../report/markdown-blocks.js'
import { benchLeg } from './bench.js'
import { couponPicture } from './coupon-pictures.js'
import { table } from './sheet-units.js'
import { endless } from './show.js'
import type { StandPlan } from './stand-plan.js'

/** The plan for the test stand as Markdown. */
export const standText = (plan: StandPlan): string => markdownPage(standPage(plan))

/** The plan for the test stand as a page. @internal */
export function standPage({ leg, measurements, coupons, cautions }: StandPlan): Page {
  const bench = benchLeg(leg)
  return {
    title: `${leg.name}: plan for the test stand`,
    blocks: [
      heading('Cautions'),
      points(cautions),
      heading('Measurements, most informative for an hour of work first'),
      text(
        'Information: the sum of the changes of the reserves near their limit (natural logarithms) while the field runs through its range.',
      ),
      measurementTable(measurements),
      heading('How'),
      ...measurements.flatMap((one, i) => [
        subheading(`${i + 1}. ${one.what}`),
        text(one.how),
        led('Fixture:', one.fixture),
        led('Cost:', one.cost),
        led('Caution:', one.caution),
        text(`First lines of its log, which goes to learn under the name "${one.log}":`),
        code(one.csv),
      ]),
      heading('Coupons to load first'),
      text(
        `${hasPrints(bench.x) ? 'Each that is printed has the walls, the infill and the direction of the leg. ' : ''}Take at least three readings of each; learn sets them beside what the leg expects.`,
      ),
      ...coupons.flatMap((one) => [
        picture(couponPicture(bench, one)),
        led('Caution:', one.caution),
        text(`First lines of its log, which goes to learn under the name "${one.log}":`),
        code(one.csv),
      ]),
    ],
  }
}

const measurementTable = (measurements: StandPlan['measurements']): Block => {
  const effort = ['information', 'hands on', 'over after', 'information per hour', 'most sensitive check']
  return table(
    'Measurements and predictions',
    ['', 'measurement', 'compare', 'predicted', 'band', 'corrects', ...effort],
    measurements.map((one, i) => [
      i + 1,
      one.what,
      one.predictedIs,
      endless(one.predicted),
      one.band.map(endless).join(' to '),
      one.corrects ?? 'nothing: compare only',
      significant(one.information, 2),
      one.handsOn,
      one.elapsed,
      significant(one.informationPerHour, 2),
      one.moves === undefined ? '' : checkWords(one.moves),
    ]),
  )
}
