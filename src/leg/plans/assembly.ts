import { type In, InputError, issue, type Quantity, quantity, significant } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import type { LegModel } from '../leg-model.js'
import { cordJoints, drivenJoints, driveOf, jointWords, motorOf } from '../numbers.js'
import { knownOptions } from '../options.js'
import { leastPinionWrap, leastWrap } from '../parts/transmission/cord/fields.js'
import { hasPrints } from '../printed.js'
import { cautionsOf } from '../report/cautions.js'
import { calculationFor } from '../what-if.js'
import type { AssemblyPlan } from './assembly-plan.js'
import { followUps, stepsOf } from './assembly-steps.js'
import { assemblyPage } from './assembly-text.js'
import { type Assumed, benchLeg, length } from './bench.js'
import { END_DIAMETERS } from './cord-cut.js'
import { cutList, DEPTH } from './cut-list.js'
import { driveWork } from './drive-work.js'
import { bonds, presses, tightening } from './fastening-steps.js'
import { pivotSteps } from './pivot-work.js'
import { rodCut } from './rod-steps.js'
import { phrase, shown } from './sheet-units.js'
import { shoppingList } from './shopping.js'
import { displayed } from './show.js'
import { assumedOfStock } from './stock.js'
import { tensionerSetting, winding } from './tensioning.js'
import { cordChecks, coupons, troubles } from './workshop-checks.js'

/** What the plan needs and the specification does not hold. */
export interface AssemblyOptions {
  /** Free tail at each cord end, for pulling and for another end fitting. Default 150 mm. */
  readonly tail?: In<'length'>
  /** Stretch of a new braid that stays once it has been loaded. Default 1 %; measure yours. */
  readonly beddingStrain?: In<'strain'>
  /**
   * Depth of the threads in the motor, measured down to the first thing that a screw may not touch. Default: `tapDepth` of the motor, and one and a half
   * diameters without it.
   */
  readonly motorThreadDepth?: In<'length'>
}

export const ASSEMBLY_OPTIONS = ['tail', 'beddingStrain', 'motorThreadDepth'] as const

/**
 * The plan a builder works from, for every kind of drive: cuts, lay of the cords, positions of the tensioners, belts and gears with their axes, tightening of
 * each screw in order, presses and bonds, and the work to repeat after a day and a week.
 *
 * Throws an `InputError` for options that are not quantities of their kind or negative. Estimates for trained judgement: cords under tension store
 * energy, and bonded or pressed parts must not be the only thing that keeps a part in place.
 */
export function assemblyPlan(leg: Leg, options: AssemblyOptions = {}): AssemblyPlan {
  const { tail, bedding, depth } = optionsOf(options)
  const bench = benchLeg(leg)
  const tapped = drivenJoints(bench.x).map((joint) => motorOf(bench.x, joint).tapDepth)
  const cuts = cutList(bench, tail.si, depth?.si)
  const cords = cordJoints(bench.x)
  const windings = cords.map((joint) => winding(bench, joint))
  const rod = rodCut(bench)
  const drives = driveWork(bench, { tail: tail.si, beddingStrain: bedding.si })
  const tensioners = cuts.cords.map((cut) => tensionerSetting(bench, cut, bedding.si))
  const screws = tightening(bench)
  const pressed = presses(bench)
  const bonded = bonds(bench)
  const checks = cordChecks(bench, cuts, tensioners)
  const plan: AssemblyPlan = {
    leg,
    cautions: cautionsOf(bench.x),
    assumed: [
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
        value:
          depth !== undefined
            ? shown(depth)
            : [...new Set(tapped.map((one) => (one === undefined ? `${DEPTH} diameters` : shown(length(one)))))].join(' (hip), '),
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
    ],
    cuts,
    rod,
    drives,
    windings,
    tensioners,
    tightening: screws,
    presses: pressed,
    bonds: bonded,
    steps: stepsOf({
      drives,
      presses: pressed,
      prints: hasPrints(bench.x),
      shaft: cuts.shaft !== undefined,
      rod,
      windings,
      tensioners,
      checks,
      bonds: bonded,
      pivots: pivotSteps(bench.x),
      sleeves: Object.values(bench.x.bolts).some(({ sleeves }) => sleeves),
    }),
    followUps: followUps(bench, tensioners, screws, drives),
    checks,
    coupons: coupons(pressed, checks, hasPrints(bench.x)),
    troubles: [...troubles(checks, pressed, tensioners), ...drives.flatMap((one) => one.troubles)],
    shopping: shoppingList(bench, { cuts, rod, drives, bonds: bonded }),
    problems: [
      ...drives.flatMap((one) => one.problems),
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
      ...pressed
        .filter(({ interference }) => interference.si <= 0)
        .map(({ joint }) => `${joint}: the pin is loose in its boss on average; it must be held by something else`),
    ],
  }
  return displayed(plan, assemblyPage)
}

/** What is assumed of cords. */
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

function optionsOf(options: AssemblyOptions) {
  knownOptions('assemblyPlan', options, ASSEMBLY_OPTIONS)
  const tail = quantity('length', options.tail ?? '150 mm')
  const bedding = quantity('strain', options.beddingStrain ?? '1 %')
  const depth = options.motorThreadDepth === undefined ? undefined : quantity('length', options.motorThreadDepth)
  const bad = [
    ...(tail.si >= 0 ? [] : [issue('tail', tail, 'must not be negative')]),
    ...(bedding.si >= 0 ? [] : [issue('beddingStrain', bedding, 'must not be negative')]),
    ...(depth === undefined || depth.si > 0 ? [] : [issue('motorThreadDepth', depth, 'must be above zero')]),
  ]
  if (bad.length > 0) throw new InputError('assemblyPlan', bad)
  return { tail, bedding, depth }
}

/** Turns that are to be left between clamp and span. */
const leastTurnsOf = (bench: LegModel) => calculationFor(bench).get(leastPinionWrap, {} as never) / (2 * Math.PI)

/** Wrap that is to be left before an anchor. */
const leastWrapOf = (bench: LegModel) => calculationFor(bench).get(leastWrap, {} as never)
