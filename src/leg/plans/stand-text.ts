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
      ...measurements.flatMap((measurement, i) => [
        subheading(`${i + 1}. ${measurement.what}`),
        text(measurement.how),
        led('Fixture:', measurement.fixture),
        led('Cost:', measurement.cost),
        led('Caution:', measurement.caution),
        text(`First lines of its log, which goes to learn under the name "${measurement.log}":`),
        code(measurement.csv),
      ]),
      heading('Coupons to load first'),
      text(
        `${hasPrints(bench.x) ? 'Each that is printed has the walls, the infill and the direction of the leg. ' : ''}Take at least three readings of each; learn sets them beside what the leg expects.`,
      ),
      ...coupons.flatMap((coupon) => [
        picture(couponPicture(bench, coupon)),
        led('Caution:', coupon.caution),
        text(`First lines of its log, which goes to learn under the name "${coupon.log}":`),
        code(coupon.csv),
      ]),
    ],
  }
}

const measurementTable = (measurements: StandPlan['measurements']): Block => {
  const effort = ['information', 'hands on', 'over after', 'information per hour', 'most sensitive check']
  return table(
    'Measurements and predictions',
    ['', 'measurement', 'compare', 'predicted', 'band', 'corrects', ...effort],
    measurements.map((measurement, i) => [
      i + 1,
      measurement.what,
      measurement.predictedIs,
      endless(measurement.predicted),
      measurement.band.map(endless).join(' to '),
      measurement.corrects ?? 'nothing: compare only',
      significant(measurement.information, 2),
      measurement.handsOn,
      measurement.elapsed,
      significant(measurement.informationPerHour, 2),
      measurement.moves === undefined ? '' : checkWords(measurement.moves),
    ]),
  )
}
