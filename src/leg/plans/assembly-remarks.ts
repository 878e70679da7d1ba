import { type Quantity, significant } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { cordJoints, drivenJoints, driveOf, jointWords, motorOf, ofJointsInWords } from '../numbers.js'
import { leastPinionWrap, leastWrap } from '../parts/transmission/cord/fields.js'
import { calculationFor } from '../what-if.js'
import type { AssemblyOptions, ReadOptions } from './assembly-options.js'
import type { AssemblyPlan } from './assembly-plan.js'
import { type Assumed, length } from './bench.js'
import { END_DIAMETERS } from './cord-cut.js'
import { DEPTH } from './cut-list.js'
import { phrase, shown } from './sheet-units.js'
import { assumedOfStock } from './stock.js'

/** Depth of the thread in a motor, as its document has it or as it is assumed. */
const depthInWords = (depth: number | undefined) => (depth === undefined ? `${DEPTH} diameters` : shown(length(depth)))

/** Values that the plan assumes, each with its reason. */
export function assumedOf(
  bench: LegModel,
  options: AssemblyOptions,
  { tail, bedding, depth }: ReadOptions,
  drives: AssemblyPlan['drives'],
): Assumed[] {
  const cords = cordJoints(bench.x)
  const tapped = drivenJoints(bench.x).map((joint) => motorOf(bench.x, joint).tapDepth)
  return [
    ...(cords.length === 0 ? [] : assumedOfCords(options, tail, bedding)),
    ...(cords.some((joint) => driveOf(bench.x, joint, 'cord').ends !== 'bondedFerrule')
      ? [
          {
            what: 'cord inside one end',
            value: `splice ${END_DIAMETERS.splice}, sleeve ${END_DIAMETERS.swagedSleeve}, knot ${END_DIAMETERS.knot} cord diameters`,
            why: 'common practice; make one end on a scrap and measure it',
          },
        ]
      : []),
    {
      what: 'depth of the threads in the motor',
      value: depth !== undefined ? shown(depth) : ofJointsInWords(bench.x, (joint) => depthInWords(motorOf(bench.x, joint).tapDepth)),
      why:
        depth !== undefined || !tapped.includes(undefined)
          ? 'given'
          : 'assumption: measure yours with a depth gauge before any screw goes in',
    },
    ...(cords.length === 0
      ? []
      : [{ what: 'tensioner', value: 'pulls one cord end', why: 'the simplest kind; another kind changes turns and travel' }]),
    ...(drives.some(({ kind }) => kind === 'belt')
      ? [{ what: 'plucked span', value: 'a limp string', why: 'a stiff belt sounds higher: compare with the pull across the span once' }]
      : []),
    ...assumedOfStock(bench),
  ]
}

/** Assumptions on cords. */
const assumedOfCords = (options: AssemblyOptions, tail: Quantity<'length'>, bedding: Quantity<'strain'>): Assumed[] => [
  {
    what: 'free tail at each cord end',
    value: shown(tail),
    why: options.tail === undefined ? 'long enough to pull by hand' : 'given',
  },
  {
    what: 'bedding stretch of the braid',
    value: shown(bedding),
    why:
      options.beddingStrain === undefined
        ? 'assumption: load a metre ten times to a third of its strength and measure what stays'
        : 'given',
  },
]

/** Conflicts that keep the leg from being assembled as specified. */
export function problemsOf(
  bench: LegModel,
  { drives, cuts, windings, tensioners, presses }: Pick<AssemblyPlan, 'drives' | 'cuts' | 'windings' | 'tensioners' | 'presses'>,
): string[] {
  return [
    ...drives.flatMap((drive) => drive.problems),
    ...cuts.bolts
      .filter(({ catalogue }) => catalogue === undefined)
      .map(({ group, leastLength, mostLength }) =>
        mostLength === undefined
          ? phrase`screws of ${group}: none of at least ${leastLength} is sold; change the stack`
          : phrase`screws of ${group}: none is sold from ${leastLength} to ${mostLength}, which the thread of the motor bears; change the stack or add a washer`,
      ),
    ...windings
      .filter(({ leastDrumWrap }) => leastDrumWrap.si < leastWrapOf(bench))
      .map(
        ({ joint, leastDrumWrap }) =>
          phrase`${jointWords(joint)}: at one end of its travel only ${leastDrumWrap} of wrap is left before the anchor`,
      ),
    ...windings.flatMap(({ joint, leastTurns, halfTurns }) =>
      leastTurns === undefined || leastTurns.si >= leastTurnsOf(bench)
        ? []
        : [
            `${jointWords(joint)}: at an end of its travel the pinion unwinds to its clamp, which then pulls on the bare cord; give it ${significant(halfTurns.si - leastTurns.si + leastTurnsOf(bench), 2)} turns to each side`,
          ],
    ),
    ...tensioners
      .filter(({ spare }) => spare.si < 0)
      .map(({ joint, end, travel }) => phrase`${jointWords(joint)}: the tensioner needs ${end} and has ${travel}`),
    ...tensioners
      .filter(({ state }) => state === 'overhauls')
      .map(({ joint }) => `${jointWords(joint)}: the tensioning screw is not self-locking`),
    ...presses
      .filter(({ interference }) => interference.si <= 0)
      .map(({ joint }) => `${joint}: the pin is loose in its boss on average; it must be held by something else`),
  ]
}

/** Turns that are to be left between clamp and span. */
const leastTurnsOf = (bench: LegModel) => calculationFor(bench).get(leastPinionWrap, {} as never) / (2 * Math.PI)

/** Wrap that is to be left before an anchor. */
const leastWrapOf = (bench: LegModel) => calculationFor(bench).get(leastWrap, {} as never)
