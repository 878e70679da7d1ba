import { type Block, heading, led, type Page, points, steps, text } from '../report/blocks.js'
import { markdownPage } from '../report/markdown-blocks.js'
import { cordBlocks, cutBlocks } from './assembly-blocks.js'
import type { AssemblyPlan } from './assembly-plan.js'
import { kilograms } from './assembly-steps.js'
import { shown, table } from './sheet-units.js'

/** The assembly plan as Markdown. */
export const assemblyText = (plan: AssemblyPlan): string => markdownPage(assemblyPage(plan))

/** Lever on a key whose end a luggage scale pulls, m. */
const LEVER = 0.1

/** The assembly plan as a page. @internal */
export function assemblyPage(plan: AssemblyPlan): Page {
  const blocks: (Block | undefined)[] = [
    plan.problems.length === 0 ? undefined : led('This leg does not go together as specified:', ''),
    plan.problems.length === 0 ? undefined : points(plan.problems),
    heading('Cautions'),
    points(plan.cautions),
    ...cutBlocks(plan),
    heading('Shopping list'),
    table(
      'What to buy for one leg',
      ['item', 'size', 'quantity', 'remark'],
      plan.shopping.map((item) => [item.item, item.size, item.quantity, item.remark]),
    ),
    ...couponBlocks(plan),
    heading('Presses'),
    table(
      'Pins to press in',
      ['pin', 'joint', 'hole', 'interference', 'force into one boss, up to', 'hoop stress at the bore'],
      plan.presses.map((press) => [press.pin, press.joint, press.hole, press.interference, press.pressingForce, press.boreHoopStress]),
    ),
    ...bondBlocks(plan),
    ...cordBlocks(plan),
    heading('Tightening, in order'),
    screwTable(plan),
    heading('Order of work'),
    steps(plan.steps),
    heading('Again after a day and a week'),
    table(
      'What to look at again',
      ['when', 'what', 'expect'],
      plan.followUps.map((followUp) => [followUp.when, followUp.what, followUp.expect]),
    ),
    heading('When a reading is off'),
    table(
      'Readings, what they mean and what to do',
      ['reading', 'means', 'do'],
      plan.troubles.map((trouble) => [trouble.reading, trouble.means, trouble.cure]),
    ),
    heading('Assumed values'),
    table(
      'Assumed values and their reasons',
      ['what', 'value', 'reason'],
      plan.assumed.map((row) => [row.what, row.value, row.why]),
    ),
  ]
  return { title: `${plan.leg.name}: assembly plan`, blocks: blocks.filter((block) => block !== undefined) }
}

const couponBlocks = ({ coupons }: AssemblyPlan): Block[] =>
  coupons.length === 0
    ? []
    : [
        heading('Coupons first'),
        text('Their drawings and logs are on the plan for the test stand.'),
        table(
          'What to try on scraps',
          ['what', 'how', 'expect'],
          coupons.map((coupon) => [coupon.what, coupon.how, coupon.expect]),
        ),
      ]

const bondBlocks = ({ bonds }: AssemblyPlan): Block[] =>
  bonds.length === 0
    ? []
    : [
        heading('Bonds'),
        table(
          'Ends to bond',
          ['joint', 'adhesive', 'bonded length', 'gap around the cord', 'mechanical lock next to the bond'],
          bonds.map((bond) => [
            bond.joint,
            bond.adhesive,
            bond.bondedLength,
            bond.gap,
            bond.mechanicalLock ? 'yes' : 'no: add a knot or cone',
          ]),
        ),
      ]

const screwTable = ({ tightening }: AssemblyPlan): Block =>
  table(
    'Screws in their order',
    ['', 'what', 'screws', 'passes', 'last pass on a lever of 100 mm', 'preload', 'remark'],
    tightening.map((row, i) => [
      i + 1,
      row.what,
      `${row.count} × ${row.thread}`,
      row.passes.map(shown).join(', '),
      kilograms(row.torque.si / LEVER),
      row.preload,
      row.remark,
    ]),
  )
