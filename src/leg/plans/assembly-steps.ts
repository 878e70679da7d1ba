import { significant } from '../../units/index.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, jointWords, seenFrom } from '../numbers.js'
import type { AssemblyPlan } from './assembly-plan.js'
import { whole } from './bench.js'
import type { DriveWork } from './drive-work-plan.js'
import type { PressStep, TighteningStep } from './fastening-steps.js'
import type { FollowUp } from './follow-up.js'
import { phrase } from './sheet-units.js'
import { shareLeft, type TensionerSetting } from './tensioning.js'

const DAY = 86_400
const WEEK = 7 * DAY
/** A force as a scale shows it. @internal */
export const kilograms = (newton: number) => `${significant(newton / STANDARD_GRAVITY, 3)} kg on a scale`
const percent = (x: number) => `${Math.round(100 * x)} %`

/** Points to inspect again after a day and a week. @internal */
export function followUps(
  bench: LegModel,
  tensioners: readonly TensionerSetting[],
  screws: readonly TighteningStep[],
  drives: readonly DriveWork[],
): FollowUp[] {
  const left = (joint: DrivenJoint, time: number) => shareLeft(bench, joint, time)
  const all: FollowUp[] = [
    ...drives.flatMap((drive) => drive.followUps),
    ...tensioners.flatMap(({ joint, pretension, tensionPerTurn }) => {
      const follow = (when: FollowUp['when'], time: number): FollowUp => {
        const share = left(joint, time)
        return {
          when,
          what: `cord of the ${jointWords(joint)}`,
          expect: phrase`about ${percent(share)} of ${pretension} left, and less where the braid was not bedded in; ${significant((pretension.si * (1 - share)) / tensionPerTurn.si, 2)} turn of the screw brings it back`,
        }
      }
      return [follow('after a day', DAY), follow('after a week', WEEK)]
    }),
    ...screws.flatMap(({ what, afterDay, afterWeek, torque }) =>
      afterDay === undefined || afterWeek === undefined
        ? []
        : [
            {
              when: 'after a day' as const,
              what,
              expect: phrase`about ${percent(afterDay.si)} of the preload is left; tighten to ${torque} again`,
            },
            {
              when: 'after a week' as const,
              what,
              expect: phrase`about ${percent(afterWeek.si)} of the preload would be left if nobody had tightened after a day; tighten to ${torque} again`,
            },
          ],
    ),
  ]
  return all.sort((a, b) => (a.when === b.when ? 0 : a.when === 'after a day' ? -1 : 1))
}

/** Bedding, making and proof-pulling of the cords' ends. */
function cordEnds({ checks, bonds: bonded }: Pick<AssemblyPlan, 'checks' | 'bonds'>): string[] {
  const loads = (of: 'beddingLoad' | 'proofLoad') =>
    checks.map((check) => phrase`${jointWords(check.joint)} ${check[of]} (${kilograms(check[of].si)})`).join(', ')
  return [
    `Bed in each cord before its ends are made: load it ten times, behind a guard, to ${loads('beddingLoad')}. Most luggage scales end at 40 kg: use a crane scale beyond, or a lever of known ratio with a bag of water. It spares the tensioner the bedding stretch, which its end position counts on.`,
    ...(bonded.length > 0
      ? [
          'Bond the cord ends first and let them cure as the adhesive maker says, in free air: roughen and degrease the bore, spread the fibres, fill without bubbles. Gloves, eye protection, ventilation.',
          `Proof-pull every bonded end once, behind a guard, before it goes into the leg: ${loads('proofLoad')}.`,
        ]
      : [`Make all cord ends on the bench and proof-pull each once, behind a guard: ${loads('proofLoad')}.`]),
  ]
}

/** The order of work. @internal */
export function stepsOf({
  rod,
  drives,
  presses,
  prints,
  shaft,
  windings,
  tensioners,
  checks,
  bonds,
  sleeves,
  pivots,
  pinions,
  encoders,
}: Pick<AssemblyPlan, 'rod' | 'drives' | 'windings' | 'tensioners' | 'bonds' | 'checks'> & {
  sleeves: boolean
  pivots: readonly string[]
  pinions: readonly string[]
  encoders: readonly string[]
  presses: readonly PressStep[]
  prints: boolean
  shaft: boolean
}): string[] {
  return [
    ...(prints ? ['Print and break the coupons first; change the print before anything else is made.'] : []),
    checks.length > 0
      ? 'Measure every bore, pin and cord before anything is pressed or glued; write the numbers down for the test stand.'
      : 'Measure every bore and pin before anything is pressed or glued; write the numbers down for the test stand.',
    ...(checks.length > 0 ? cordEnds({ checks, bonds }) : []),
    ...checks.map(
      ({ joint, shortest, longest }) =>
        `Measure the finished cord of the ${jointWords(joint)} from end to end, laid straight: ${whole(shortest, Math.ceil)} to ${whole(longest, Math.floor)}. Otherwise make another one.`,
    ),
    ...pressing(presses),
    ...pivots,
    ...(sleeves ? ['Put the metal sleeves in; each must be level with or slightly above its part.'] : []),
    ...pinions,
    ...drives.flatMap(({ before }) => before),
    'Before a motor is bolted on, put one screw through the stack by hand and measure how far it stands out: no more than the thread of the motor is deep. Bolt the motors to their plates, then plate and hip housing, crosswise in the passes listed. Without a torque wrench, pull a lever of 100 mm on the key with a luggage scale, as listed.',
    'After each motor measure from a motor wire to its can: no contact, or a screw touches the winding.',
    ...encoders,
    ...(shaft ? ['Fit the hip shaft, its end cap and its screw.'] : []),
    ...(rod?.steps ?? []),
    ...drives.flatMap(({ steps }) => steps),
    ...windings.map(
      ({ joint, layAt, hipHeldAt, halfTurns, branches: [up, down], drumWrap }) =>
        phrase`Lay the cord of the ${jointWords(joint)} with ${hipHeldAt === undefined ? 'the joint' : phrase`the hip held at ${hipHeldAt} and the knee`} held at ${layAt}: ${significant(halfTurns.si, 3)} turns to each side of the pinion's middle, ${drumWrap} to each anchor. The branch that pulls ${up.pulls} lies ${up.onDrum} on the drum and ${up.onPinion} on the pinion, the other ${down.onDrum} and ${down.onPinion} (seen ${seenFrom(joint)}).`,
    ),
    ...tensioners.map(
      ({ joint, turnsToStart, turnsToSet, pretension, screwTorque }) =>
        phrase`Tension the ${jointWords(joint)}: some ${significant(turnsToStart.si, 2)} turns until the slack is gone, then ${significant(turnsToSet.si, 2)} turns to ${pretension} (${screwTorque} on the screw at the end). Turn the joint through its whole travel after every turn, hands clear, then lock the screw.`,
    ),
    'Switch off and wait before you reach in. First motion by hand, then at low current with the leg hung up.',
  ]
}

/** A larger force than this is beyond a bench vice. */
const VICE = 5000

/** How pins are pressed in. */
function pressing(presses: readonly PressStep[]): string[] {
  if (presses.length === 0) return []
  const printed = presses.some((press) => press.printed)
  const hard = presses.some(({ pressingForce }) => pressingForce.si > VICE)
  return [
    `Press the pins in with ${hard ? 'a workshop press with a force gauge' : 'a vice or an arbor press'} and a guide, never with a hammer; stop if the force passes the one listed by half${printed ? ', or the print turns white' : ''}. Eye protection: a hardened pin can shatter.`,
  ]
}
