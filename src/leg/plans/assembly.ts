import { type In, quantity, significant } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { driveOf, hasCord, JOINTS, type Joint } from '../numbers.js'
import { knownOptions } from '../options.js'
import { CAUTIONS } from '../report/content.js'
import { assemblyPage } from './assembly-text.js'
import { type Assumed, benchLeg } from './bench.js'
import { type CutList, cutList, END_DIAMETERS } from './cut-list.js'
import { type BondStep, bonds, type PressStep, presses, type TighteningStep, tightening } from './fastening-steps.js'
import { displayed } from './show.js'
import { shareLeft, type TensionerSetting, tensionerSetting, type Winding, winding } from './tensioning.js'

/** What the plan needs and the specification does not hold. */
export interface AssemblyOptions {
  /** Free tail at each cord end, for pulling and for another end fitting. Default 150 mm. */
  readonly tail?: In<'length'>
  /** Stretch of a new braid that stays once it has been loaded. Default 1 %; measure yours. */
  readonly beddingStrain?: In<'strain'>
}

export const ASSEMBLY_OPTIONS = ['tail', 'beddingStrain'] as const

/** What to look at again after some time. */
export interface FollowUp {
  readonly when: 'after a day' | 'after a week'
  readonly what: string
  /** Share expected to be left by then, and the work to do. */
  readonly expect: string
}

/** How to put a leg together: cut list, windings, settings, torques, order, cautions. Plain data; `assemblyPage` renders it. */
export interface AssemblyPlan {
  readonly leg: Leg
  readonly cautions: readonly string[]
  readonly assumed: readonly Assumed[]
  readonly cuts: CutList
  readonly windings: readonly Winding[]
  readonly tensioners: readonly TensionerSetting[]
  readonly tightening: readonly TighteningStep[]
  readonly presses: readonly PressStep[]
  readonly bonds: readonly BondStep[]
  /** The order of work. */
  readonly steps: readonly string[]
  readonly followUps: readonly FollowUp[]
  /** What does not go together as specified. */
  readonly problems: readonly string[]
}

const DAY = 86_400
const WEEK = 7 * DAY

/**
 * The plan a builder works from: cuts, lay of the cords, positions of the tensioners, tightening of each screw in order, presses and bonds,
 * and the work to repeat after a day and a week.
 *
 * Throws an `InputError` for options that are not quantities of their kind. Estimates for trained judgement: cords under tension store
 * energy, and bonded or pressed parts must not be the only thing that keeps a part in place.
 */
export function assemblyPlan(leg: Leg, options: AssemblyOptions = {}): AssemblyPlan {
  knownOptions('assemblyPlan', options, ASSEMBLY_OPTIONS)
  const tail = quantity('length', options.tail ?? '150 mm')
  const bedding = quantity('strain', options.beddingStrain ?? '1 %')
  const bench = benchLeg(leg)
  const cuts = cutList(bench, tail.si)
  const cords = JOINTS.filter((joint) => hasCord(bench.x, joint))
  const windings = cords.map((joint) => winding(bench, joint))
  const tensioners = cuts.cords.map((cut) => tensionerSetting(bench, cut, bedding.si))
  const screws = tightening(bench)
  const pressed = presses(bench)
  const bonded = bonds(bench)
  const left = (joint: Joint, time: number) => shareLeft(bench, joint, time)
  const plan: AssemblyPlan = {
    leg,
    cautions: CAUTIONS,
    assumed: [
      {
        what: 'free tail at each cord end',
        value: String(tail),
        why: options.tail === undefined ? 'long enough to pull by hand' : 'given',
      },
      {
        what: 'bedding stretch of the braid',
        value: String(bedding),
        why:
          options.beddingStrain === undefined
            ? 'assumption: load a metre ten times to a third of its strength and measure what stays'
            : 'given',
      },
      ...(cords.some((joint) => driveOf(bench.x, joint, 'cord').ends !== 'bondedFerrule')
        ? [
            {
              what: 'cord inside one end',
              value: `splice ${END_DIAMETERS.splice}, sleeve ${END_DIAMETERS.swagedSleeve}, knot ${END_DIAMETERS.knot} cord diameters`,
              why: 'common practice; make one end on a scrap and measure it',
            },
          ]
        : []),
      { what: 'tensioner', value: 'pulls one cord end', why: 'the simplest kind; another kind changes turns and travel' },
    ],
    cuts,
    windings,
    tensioners,
    tightening: screws,
    presses: pressed,
    bonds: bonded,
    steps: stepsOf({ windings, tensioners, bonds: bonded, sleeves: Object.values(bench.x.bolts).some(({ sleeves }) => sleeves) }),
    followUps: [
      ...cords.flatMap((joint, i) => {
        const { pretension, tensionPerTurn } = tensioners[i] as TensionerSetting
        const follow = (when: FollowUp['when'], time: number): FollowUp => {
          const share = left(joint, time)
          return {
            when,
            what: `cord of the ${joint}`,
            expect: `about ${percent(share)} of ${pretension} left, and less where the braid was not bedded in; ${significant((pretension.si * (1 - share)) / tensionPerTurn.si, 2)} turn of the screw brings it back`,
          }
        }
        return [follow('after a day', DAY), follow('after a week', WEEK)]
      }),
      ...screws.flatMap(({ what, afterDay, afterWeek, torque }) =>
        afterDay === undefined || afterWeek === undefined
          ? []
          : [
              { when: 'after a day' as const, what, expect: `${percent(afterDay.si)} of the preload left; tighten to ${torque} again` },
              { when: 'after a week' as const, what, expect: `${percent(afterWeek.si)} left if never touched; tighten to ${torque} again` },
            ],
      ),
    ].sort((a, b) => (a.when === b.when ? 0 : a.when === 'after a day' ? -1 : 1)),
    problems: [
      ...windings
        .filter(({ leastDrumWrap }) => leastDrumWrap.si < LEAST_WRAP)
        .map(({ joint, leastDrumWrap }) => `${joint}: at one end of its travel only ${leastDrumWrap} of wrap is left before the anchor`),
      ...tensioners
        .filter(({ spare }) => spare.si < 0)
        .map(({ joint, end, travel }) => `${joint}: the tensioner needs ${end} and has ${travel}`),
      ...tensioners.filter(({ state }) => state === 'overhauls').map(({ joint }) => `${joint}: the tensioning screw is not self-locking`),
      ...pressed
        .filter(({ interference }) => interference.si <= 0)
        .map(({ joint }) => `${joint}: the pin is loose in its boss on average; it must be held by something else`),
    ],
  }
  return displayed(plan, assemblyPage)
}

/** A tenth of a right angle or so is kept before an anchor. */
const LEAST_WRAP = (10 * Math.PI) / 180
const percent = (x: number) => `${Math.round(100 * x)} %`

function stepsOf({
  windings,
  tensioners,
  bonds: bonded,
  sleeves,
}: Pick<AssemblyPlan, 'windings' | 'tensioners' | 'bonds'> & { sleeves: boolean }): string[] {
  return [
    'Measure every bore, pin and cord before anything is pressed or glued; write the numbers down for the test stand.',
    'Bed in each cord before its ends are made: load it ten times to a third of its breaking strength, behind a guard. It spares the tensioner the bedding stretch, which its end position counts on.',
    ...(bonded.length > 0
      ? [
          'Bond the cord ends first and let them cure as the adhesive maker says, in free air: roughen and degrease the bore, spread the fibres, fill without bubbles. Gloves, eye protection, ventilation.',
          'Proof-pull every bonded end once to twice its daily tension, behind a guard, before it goes into the leg.',
        ]
      : ['Make all cord ends on the bench and proof-pull each once to twice its daily tension, behind a guard.']),
    'Press the pins in with a vice or an arbor press and a guide, never with a hammer; stop if the force passes the one listed by half, or the print turns white. Eye protection: a hardened pin can shatter.',
    'Seat the bearings by their outer rings; put shoulder and cap on.',
    ...(sleeves ? ['Put the metal sleeves in; each must be level with or slightly above its print.'] : []),
    'Bolt the motors to their plates, then plate and hip housing, crosswise in the passes listed.',
    'Fit the hip shaft, its end cap and its screw.',
    ...windings.map(
      ({ joint, layAt, halfTurns, branches: [up, down], drumWrap }) =>
        `Lay the cord of the ${joint} with the joint held at ${layAt}: ${significant(halfTurns.si, 3)} turns to each side of the pinion's middle, ${drumWrap} to each anchor. The branch that pulls ${up.pulls} lies ${up.onDrum} on the drum and ${up.onPinion} on the pinion, the other ${down.onDrum} and ${down.onPinion} (seen from the robot's left).`,
    ),
    ...tensioners.map(
      ({ joint, turnsToStart, turnsToSet, pretension, screwTorque }) =>
        `Tension the ${joint}: some ${significant(turnsToStart.si, 2)} turns until the slack is gone, then ${significant(turnsToSet.si, 2)} turns to ${pretension} (${screwTorque} on the screw at the end). Turn the joint through its whole travel after every turn, hands clear, then lock the screw.`,
    ),
    'Switch off and wait before you reach in. First motion by hand, then at low current with the leg hung up.',
  ]
}
