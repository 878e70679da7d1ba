import { type Quantity, significant } from '../../units/index.js'
import type { LegModel } from '../leg-model.js'
import { cordJoints, type DrivenJoint, driveOf, jointWords } from '../numbers.js'
import { retentionIn } from '../parts/transmission/cord/fields.js'
import { jointState } from '../what-if.js'
import { shareOfTension } from '../workshop-lines.js'
import { force, length } from './bench.js'
import type { CutList } from './cut-list.js'
import type { PressStep } from './fastening-steps.js'
import { phrase } from './sheet-units.js'
import type { TensionerSetting } from './tensioning.js'

/** A finished cord before it is tensioned: how long it may be, and what it is pulled with. */
export interface CordCheck {
  /** Joint of the drive. */
  readonly joint: DrivenJoint
  /** End to end, laid straight without tension: shorter does not go on, longer runs out of tensioner. */
  readonly shortest: Quantity<'length'>
  /** Longest length end to end; a longer cord runs out of tensioner. */
  readonly longest: Quantity<'length'>
  /** Load for bedding in: a third of the breaking strength. */
  readonly beddingLoad: Quantity<'force'>
  /** Load of the proof pull: twice the largest tension of every day, and no more than half of what the weakest ends hold. */
  readonly proofLoad: Quantity<'force'>
}

const DAILY = ['walk', 'walkBack', 'trot', 'slope', 'slopeDown', 'slopeAcross'] as const
const BEDDING = 1 / 3
const PROOF = 2
/** A proof load above this share of the strength of the weakest end would hurt good ends. */
const MAX_PROOF = 0.5

/** Checks of the cords. @internal */
export function cordChecks(leg: LegModel, cuts: CutList, tensioners: readonly TensionerSetting[]): CordCheck[] {
  return cordJoints(leg.x).map((joint) => {
    const cut = cuts.cords.find((cord) => cord.joint === joint)!
    const tensioner = tensioners.find((tensioner) => tensioner.joint === joint)!
    const { slackAtAssembly } = driveOf(leg.x, joint, 'cord').tensioner
    const { breakingStrength } = leg.drives[joint].cord
    const daily = Math.max(...DAILY.map((id) => jointState(leg, id, joint).drive.peak))
    return {
      joint,
      shortest: length(cut.betweenEnds.si - slackAtAssembly),
      longest: length(cut.betweenEnds.si + Math.max(0, tensioner.spare.si)),
      beddingLoad: force(BEDDING * breakingStrength),
      proofLoad: force(
        Math.min(PROOF * daily, MAX_PROOF * shareOfTension.si({ tension: breakingStrength, share: retentionIn(leg.x, joint).low })),
      ),
    }
  })
}

/** Remedies for a reading that is off. */
export interface Trouble {
  /** The reading that is off. */
  readonly reading: string
  /** Meaning of the reading. */
  readonly means: string
  /** Remedy. */
  readonly cure: string
}

/** Readings that may be off, step by step. @internal */
export function troubles(checks: readonly CordCheck[], presses: readonly PressStep[], tensioners: readonly TensionerSetting[]): Trouble[] {
  return [
    ...checks.flatMap(({ joint, shortest, longest }): Trouble[] => [
      {
        reading: phrase`cord of the ${jointWords(joint)} shorter than ${shortest}`,
        means: 'it will not go over its anchors, or with force only',
        cure: 'make another one; do not stretch it on',
      },
      {
        reading: phrase`cord of the ${jointWords(joint)} longer than ${longest}`,
        means: 'the tensioner runs out before the cord has bedded in',
        cure: 'shorten one end; a washer under the tensioner hides it for a week',
      },
    ]),
    ...presses.map(
      ({ joint, pressingForce, hole, printed }): Trouble => ({
        reading: phrase`pin of the ${joint} goes in with less than a quarter of ${pressingForce}, or by hand`,
        means: phrase`the hole is wider than ${hole}: the pin will work loose`,
        cure: `${printed ? 'print' : 'make'} the boss again with a smaller hole; glue alone must not hold it`,
      }),
    ),
    ...presses.map(
      ({ joint, pressingForce, printed }): Trouble => ({
        reading: phrase`pin of the ${joint} needs more than one and a half times ${pressingForce}${printed ? ', or the print turns white' : ''}`,
        means: 'the hole is too tight, and the boss is splitting',
        cure: `stop, press it out, ream the hole, look for cracks ${printed ? 'along the layers' : 'in the bore'}`,
      }),
    ),
    ...tensioners.map(
      ({ joint, turnsToSet, pretension }): Trouble => ({
        reading: phrase`${jointWords(joint)}: ${pretension} reached in less than two thirds of ${significant(turnsToSet.si, 2)} turns`,
        means: 'part of the cord is held by friction, or the scale is wrong',
        cure: 'turn the joint through its travel several times and read again; check the scale with a known weight',
      }),
    ),
    ...(checks.length === 0
      ? []
      : [
          {
            reading: 'tension falls by more than a tenth in the first hour',
            means: 'the braid beds in, or an end slips',
            cure: 'mark the cord at its ends with a pen, tension again, and look whether a mark moves',
          },
        ]),
    {
      reading: 'a screw turns on at its torque without stopping',
      means: 'the thread strips, or the part under the head yields',
      cure: 'stop, and replace the screw with its nut or thread; never finish with less torque',
    },
    {
      reading: 'a screw reaches its torque before the head touches',
      means: 'it is too long and touches the bottom of its hole',
      cure: 'take it out at once; in a motor it may already touch the winding: measure the resistance from can to winding',
    },
  ]
}

/** A part to try on scraps before the real ones are printed. */
export interface Coupon {
  /** The trial. */
  readonly what: string
  /** How to make and test the scrap. */
  readonly how: string
  /** Its expected result. */
  readonly expect: string
}

/** Coupons to print and break first. @internal */
export const coupons = (presses: readonly PressStep[], checks: readonly CordCheck[], printed: boolean): Coupon[] => [
  ...presses
    .filter((press) => press.printed)
    .map(
      ({ joint, hole, pressingForce, interference }): Coupon => ({
        what: phrase`boss of the ${joint} alone, three with holes of ${hole} and 0.03 mm on either side`,
        how: 'print them standing as in the leg, measure the holes with pin gauges or drills, press a pin into each with a scale under the vice',
        expect: phrase`${interference} of interference and about ${pressingForce}; take the hole that comes closest`,
      }),
    ),
  ...checks.map(
    ({ joint, proofLoad, beddingLoad }): Coupon => ({
      what: `two cord ends as for the ${jointWords(joint)}, on half a metre of cord`,
      how: 'bed in and proof-pull behind a guard, then pull one until it fails',
      expect: phrase`no movement at ${beddingLoad} and at ${proofLoad}; note where it fails`,
    }),
  ),
  ...(printed
    ? [
        {
          what: 'three bars of each print material, flat and standing',
          how: 'bend them over two edges with a bag of water until they break',
          expect: 'standing bars at no less than the share of the material; more scatter than a fifth means a printer that is not ready',
        },
      ]
    : []),
]
