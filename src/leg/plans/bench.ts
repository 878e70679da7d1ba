import { pulleyGeometry } from '../../capstan/index.js'
import { InputError, Quantity, show } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { driveOf, hasCord, JOINTS, type Joint, type LegNumbers, legNumbers, type Prepared, prepare, rangeOf } from '../numbers.js'

/** A value the plan needs and the specification does not hold. */
export interface Assumed {
  /** What the value is. */
  readonly what: string
  /** The value that the plan uses, as text. */
  readonly value: string
  /** Why this value, or that it was given. */
  readonly why: string
}

/** One drive on the bench, SI: radii and arcs at mid travel, where the two anchors stand opposite the pinion. */
export interface BenchDrive {
  readonly joint: Joint
  readonly pinionRadius: number
  readonly drumRadius: number
  readonly ratio: number
  readonly pinionWrap: number
  /** Wrap from tangent point to anchor of each branch at mid travel. */
  readonly drumWrap: number
  readonly span: number
  readonly middle: number
  readonly travel: number
}

/** The leg's numbers with materials looked up, as every plan starts from. */
export const benchLeg = (leg: Leg): Prepared => prepare(planNumbers(leg))

/** The numbers of a leg that plans can be made for. Throws an `InputError` for a knee that is driven through the hip. */
export function planNumbers(leg: Leg): LegNumbers {
  const x = legNumbers(leg)
  const { through } = x.joints.knee
  const other = JOINTS.find((joint) => !hasCord(x, joint))
  if (other !== undefined)
    throw new InputError('plan', [
      {
        path: `joints.${other}.drive.kind`,
        given: show(x.joints[other].drive.kind),
        accepts: 'is not in plans and drawings yet: they are for drives by cord; the assessment holds for this leg',
      },
    ])
  if (through === undefined) return x
  throw new InputError('plan', [
    {
      path: 'joints.knee.through',
      given: show(through.kind),
      accepts: 'is not in plans and drawings yet: they are for a motor that turns its own joint; the assessment holds for this leg',
    },
  ])
}

/** Arcs and spans of one drive. */
export function benchDrive(leg: Prepared, joint: Joint): BenchDrive {
  const { pinionRadius, drumRadius, ratio } = leg.drives[joint]
  const { arrangement, centreDistance, pinion } = driveOf(leg.x, joint, 'cord')
  const { pinionWrap, drumWrapAngle, span } = pulleyGeometry.si({
    arrangement,
    pinionRadius,
    drumRadius,
    centreDistance,
    pinionTurns: pinion.turns,
  })
  const { lowest: from, highest: to } = rangeOf(leg.x, joint)
  return {
    joint,
    pinionRadius,
    drumRadius,
    ratio,
    pinionWrap,
    drumWrap: drumWrapAngle / 2,
    span,
    middle: (from + to) / 2,
    travel: to - from,
  }
}

export const length = (x: number) => new Quantity(x, 'length')
export const force = (x: number) => new Quantity(x, 'force')
export const torque = (x: number) => new Quantity(x, 'torque')
export const angle = (x: number) => new Quantity(x, 'angle')
export const ratio = (x: number) => new Quantity(x, 'ratio')
export const count = (x: number) => new Quantity(x, 'count')
