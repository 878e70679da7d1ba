import { significant } from '../../units/index.js'
import { type DriveKind, jointWords } from '../numbers.js'
import { type Block, heading, led, type Page, points, steps, table, text } from '../report/blocks.js'
import { markdownPage } from '../report/markdown-blocks.js'
import type { AssemblyPlan } from './assembly-plan.js'
import { kilograms } from './assembly-steps.js'
import { benchLeg } from './bench.js'
import { wordsOfKind } from './drive-facts.js'
import { windingPicture } from './winding-picture.js'

/** The assembly plan as Markdown. */
export const assemblyText = (plan: AssemblyPlan): string => markdownPage(assemblyPage(plan))

/** Lever on a key whose end a luggage scale pulls, m. */
const LEVER = 0.1

const rodBlocks = (rod: AssemblyPlan['rod']): Block[] =>
  rod === undefined
    ? []
    : [
        table(
          'Rod of the knee to make',
          ['rod', 'pin to pin', 'within', 'crank', 'rocker', 'pin at each end', 'angle of rod and rocker at the limits of the knee'],
          [
            [
              `${rod.material}, ${rod.diameter}`,
              rod.betweenPins,
              rod.tolerance,
              rod.crank,
              rod.rocker,
              rod.pin === undefined ? 'none given' : `${rod.pin.size} x ${rod.pin.catalogue ?? rod.pin.length}: ${rod.pin.fit}`,
              rod.transmissionAngles.join(' and '),
            ],
          ],
        ),
      ]

const ALONG = {
  counterweight: 'counterweight',
  spring: 'spring',
  beltAlongLink: 'belt along the upper link',
  cordAlongLink: 'cord along the upper link',
} as const
const wordsOfWork = (kind: AssemblyPlan['drives'][number]['kind']): string =>
  kind in ALONG ? ALONG[kind as keyof typeof ALONG] : wordsOfKind(kind as DriveKind).drive

/** Belts, gears, gearboxes, direct drives, springs and counterweights: what to buy, cut and set. */
const driveBlocks = (drives: AssemblyPlan['drives']): Block[] =>
  drives.map(({ joint, kind, sizes }) =>
    table(
      `Sizes and settings: ${wordsOfWork(kind)} of the ${jointWords(joint)}`,
      [`${wordsOfWork(kind)} of the ${jointWords(joint)}`, 'size'],
      sizes.map(({ what, value }) => [what, value]),
    ),
  )

/** The assembly plan as a page. @internal */
export function assemblyPage(plan: AssemblyPlan): Page {
  const { leg, cuts, windings, tensioners } = plan
  const bench = benchLeg(leg)
  const noCords = windings.length === 0
  const blocks: (Block | undefined)[] = [
    plan.problems.length === 0 ? undefined : led('This leg does not go together as specified:', ''),
    plan.problems.length === 0 ? undefined : points(plan.problems),
    heading('Cautions'),
    points(plan.cautions),
    heading('Cut list'),
    noCords
      ? undefined
      : table(
          'Cords to cut',
          ['cord', 'joint', 'cut', 'end to end, laid loose', 'tail, each end', 'inside each end', 'clamp on the pinion at'],
          cuts.cords.map((one) => [
            one.cord,
            one.joint,
            one.cutLength,
            one.betweenEnds,
            one.tail,
            `${one.endLength} (${one.ends})`,
            one.clampAt === undefined ? 'not clamped' : `${one.clampAt} from an end`,
          ]),
        ),
    table(
      'Pins to buy',
      ['pin', 'joint', 'length needed', 'buy', 'fit'],
      cuts.pins.map((one) => [one.size, one.joint, one.length, one.catalogue ?? 'cut it', one.fit]),
    ),
    cuts.shaft === undefined
      ? undefined
      : text(
          `Hip shaft: ${cuts.shaft.thread} bolt of class ${cuts.shaft.propertyClass}, at least ${cuts.shaft.leastLength} from the outer face of the far bearing to the plane of the leg; drill its end ${cuts.shaft.tapDrill} by ${cuts.shaft.drillDepth} deep and tap ${cuts.shaft.innerThread} for ${cuts.shaft.threadDepth} of full thread. Clamp it; chips and cutting oil: eye protection.`,
        ),
    ...rodBlocks(plan.rod),
    ...driveBlocks(plan.drives),
    table(
      'Bolts to buy',
      ['bolts', 'count', 'at least', 'never longer than', 'buy'],
      cuts.bolts.map((one) => [
        `${one.thread} class ${one.propertyClass}, ${one.group}`,
        one.count,
        one.leastLength,
        one.mostLength ?? 'no limit',
        one.catalogue ?? 'none fits',
      ]),
    ),
    text('A screw that is too long shorts the winding of the motor: measure the depth of its threads first.'),
    noCords
      ? undefined
      : table(
          'Finished cords, before they are tensioned',
          ['joint', 'end to end, at least', 'at most', 'bed in with', 'proof-pull with'],
          plan.checks.map((one) => [one.joint, one.shortest, one.longest, one.beddingLoad, one.proofLoad]),
        ),
    heading('Shopping list'),
    table(
      'What to buy for one leg',
      ['item', 'size', 'quantity', 'remark'],
      plan.shopping.map((one) => [one.item, one.size, one.quantity, one.remark]),
    ),
    heading('Coupons first'),
    text('Their drawings and logs are on the plan for the test stand.'),
    table(
      'What to try on scraps',
      ['what', 'how', 'expect'],
      plan.coupons.map((one) => [one.what, one.how, one.expect]),
    ),
    heading('Presses'),
    table(
      'Pins to press in',
      ['pin', 'joint', 'hole', 'interference', 'force into one boss, up to', 'hoop stress at the bore'],
      plan.presses.map((one) => [one.pin, one.joint, one.hole, one.interference, one.pressingForce, one.boreHoopStress]),
    ),
    plan.bonds.length === 0 ? undefined : heading('Bonds'),
    plan.bonds.length === 0
      ? undefined
      : table(
          'Ends to bond',
          ['joint', 'adhesive', 'bonded length', 'gap around the cord', 'mechanical lock next to the bond'],
          plan.bonds.map((one) => [
            one.joint,
            one.adhesive,
            one.bondedLength,
            one.gap,
            one.mechanicalLock ? 'yes' : 'no: add a knot or cone',
          ]),
        ),
    ...(noCords
      ? []
      : [
          heading('Windings'),
          table(
            'How each cord lies',
            ['joint', 'spans', 'lay at', 'turns on the pinion', 'wrap of each branch on the drum', 'least wrap left'],
            windings.map((one) => [
              one.joint,
              one.arrangement,
              one.hipHeldAt === undefined ? one.layAt : `${one.layAt}, hip at ${one.hipHeldAt}`,
              significant(one.pinionTurns.si, 3),
              one.drumWrap,
              one.leastDrumWrap,
            ]),
          ),
          { kind: 'pictures' as const, pictures: windings.map((one) => windingPicture(bench, one)) },
          heading('Tensioners'),
          table(
            'How far each tensioner is turned',
            [
              'joint',
              'screw',
              'pretension',
              'slack gone at',
              'set at',
              'end of life at',
              'travel',
              'turns to slack gone',
              'turns to set',
              'per turn',
            ],
            tensioners.map((one) => [
              one.joint,
              one.thread,
              one.pretension,
              one.start,
              one.set,
              one.end,
              one.travel,
              significant(one.turnsToStart.si, 2),
              significant(one.turnsToSet.si, 2),
              one.tensionPerTurn,
            ]),
          ),
        ]),
    heading('Tightening, in order'),
    table(
      'Screws in their order',
      ['', 'what', 'screws', 'passes', 'last pass on a lever of 100 mm', 'preload', 'remark'],
      plan.tightening.map((one, i) => [
        i + 1,
        one.what,
        `${one.count} × ${one.thread}`,
        one.passes.join(', '),
        kilograms(one.torque.si / LEVER),
        one.preload,
        one.remark,
      ]),
    ),
    heading('Order of work'),
    steps(plan.steps),
    heading('Again after a day and a week'),
    table(
      'What to look at again',
      ['when', 'what', 'expect'],
      plan.followUps.map((one) => [one.when, one.what, one.expect]),
    ),
    heading('When a reading is off'),
    table(
      'Readings, what they mean and what to do',
      ['reading', 'means', 'do'],
      plan.troubles.map((one) => [one.reading, one.means, one.cure]),
    ),
    heading('Assumed values'),
    table(
      'Assumed values and their reasons',
      ['what', 'value', 'reason'],
      plan.assumed.map((one) => [one.what, one.value, one.why]),
    ),
  ]
  return { title: `${leg.name}: assembly plan`, blocks: blocks.filter((block) => block !== undefined) }
}
