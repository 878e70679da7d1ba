import { significant } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import type { Joint } from '../numbers.js'
import { SECOND_STAGE, type ThroughCord } from '../second-stage.js'
import { cordCut } from './cord-cut.js'
import type { DriveWork } from './drive-work-plan.js'
import { phrase, shown } from './sheet-units.js'
import { shareLeft, type TensionerSetting, tensionerSetting, type Winding, winding } from './tensioning.js'

/** Inputs of the work on a cord that the document does not hold, SI. */
export interface CordWorkInputs {
  readonly tail: number
  readonly beddingStrain: number
}

/** Cord to buy over cord to cut: one more, and coupons. */
const SPARE = 2
const DAY = 86_400
const stage = SECOND_STAGE as Joint

/** A cord along the upper link: what to cut, how to lay it, tension it and look after it. @internal */
export function throughCordWork(leg: LegModel, through: ThroughCord, { tail, beddingStrain }: CordWorkInputs): DriveWork {
  const cut = cordCut(leg, stage, tail)
  const lay = winding(leg, stage)
  const set = tensionerSetting(leg, cut, beddingStrain)
  const left = (days: number) => `${Math.round(100 * shareLeft(leg, stage, days * DAY))} %`
  const metres = Math.ceil(10 * SPARE * cut.cutLength.in('m')) / 10
  return {
    joint: 'knee',
    kind: 'cordAlongLink',
    sizes: [
      { what: 'cord', value: cut.cord },
      { what: 'cut', value: phrase`${cut.cutLength}, with tails of ${cut.tail}` },
      { what: 'end to end, laid loose', value: shown(cut.betweenEnds) },
      { what: 'inside each end', value: phrase`${cut.endLength} (${cut.ends})` },
      ...(cut.clampAt === undefined ? [] : [{ what: 'clamp on the drum on the hip axis', value: phrase`${cut.clampAt} from an end` }]),
      ...sizesOf(lay, set),
    ],
    parts: [
      { item: 'cord', size: cut.cord, quantity: `${metres} m`, remark: 'along the upper link: twice the cut, one spare and coupons' },
      {
        item: 'tensioning screw',
        size: set.thread,
        quantity: '1',
        remark: phrase`cord along the upper link: thread over at least ${set.travel} of travel`,
      },
    ],
    before: [
      `Bed in the cord of the upper link before its ends are made: load it ten times, behind a guard, to a third of its strength. Make both ends and proof-pull each once.`,
    ],
    steps: stepsOf(lay, set, through),
    followUps: [
      { when: 'after a day', what: 'cord of the upper link', expect: phrase`about ${left(1)} of ${set.pretension} left; bring it back` },
      { when: 'after a week', what: 'cord of the upper link', expect: phrase`about ${left(7)} of ${set.pretension} left; bring it back` },
    ],
    troubles: [
      {
        reading: 'the knee stands off its angle, hip and motor where they were',
        means: 'the cord of the upper link has slipped on the drum on the hip axis, or an end has moved',
        cure: 'mark the cord at drum and ends with a pen, tension again, and look which mark moves',
      },
    ],
    problems: problemsOf(lay, set),
  }
}

const sizesOf = (lay: Winding, set: TensionerSetting) => [
  { what: 'spans', value: lay.arrangement },
  { what: 'turns on the drum on the hip axis', value: significant(lay.pinionTurns.si, 3) },
  { what: 'wrap of each branch on the drum on the knee, and least wrap left', value: phrase`${lay.drumWrap}, ${lay.leastDrumWrap}` },
  { what: 'pretension', value: shown(set.pretension) },
  { what: 'tensioner: slack gone, set, end of life, travel', value: [set.start, set.set, set.end, set.travel].map(shown).join(', ') },
  { what: 'tension for each turn of its screw', value: shown(set.tensionPerTurn) },
]

const stepsOf = (lay: Winding, set: TensionerSetting, { arrangement }: ThroughCord): string[] => [
  phrase`Lay the cord of the upper link with the knee held at ${lay.layAt}: its middle at the middle of the drum on the hip axis, ${significant(lay.halfTurns.si, 3)} turns to each side, ${lay.drumWrap} to each anchor on the knee. The branch that pulls ${lay.branches[0].pulls} lies ${lay.branches[0].onDrum} on the knee and ${lay.branches[0].onPinion} on the hip axis (seen from the robot's left)${arrangement === 'crossed' ? '; the spans cross once between them and must not rub' : ''}.`,
  phrase`Tension it: some ${significant(set.turnsToStart.si, 2)} turns until the slack is gone, then ${significant(set.turnsToSet.si, 2)} turns to ${set.pretension} (${set.screwTorque} on the screw). Swing the knee through its travel after every turn, hands clear, then lock the screw.`,
  'Hold upper link and knee where the drive of the knee stands in the middle of its travel, then tighten key or clamp of the drum on the hip axis. Swing hip and knee by hand through all their corners.',
]

const problemsOf = (lay: Winding, set: TensionerSetting): string[] => [
  ...(set.spare.si < 0 ? [phrase`knee: the tensioner of the cord along the upper link needs ${set.end} and has ${set.travel}`] : []),
  ...(set.state === 'overhauls' ? ['knee: the tensioning screw of the cord along the upper link is not self-locking'] : []),
  ...(lay.leastDrumWrap.si < 0 ? ['knee: the cord along the upper link unwinds to its anchor at an end of travel'] : []),
]
