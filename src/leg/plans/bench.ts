import { pulleyGeometry } from '../../capstan/index.js'
import { Quantity, significant } from '../../units/index.js'
import { placeOf } from '../calculation.js'
import type { Leg } from '../document/describe.js'
import { type LegModel, legModel } from '../leg-model.js'
import { materialState } from '../material-state.js'
import { type DrivenJoint, driveOf, legNumbers, rangeOf } from '../numbers.js'
import { frameMaterial } from '../parts/transmission/cord/fields.js'
import { SECOND_STAGE } from '../second-stage.js'
import { calculationFor } from '../what-if.js'
import { throughGeometry } from './through-geometry.js'

/** A value the plan needs and the specification does not hold. */
export interface Assumed {
  /** Name of the value. */
  readonly what: string
  /** The value that the plan uses, as text. */
  readonly value: string
  /** Why this value, or that it was given. */
  readonly why: string
}

/** One drive on the bench, SI: radii and arcs at mid travel, where the two anchors are opposite the pinion. */
export interface BenchDrive {
  readonly joint: DrivenJoint
  readonly pinionRadius: number
  readonly drumRadius: number
  readonly ratio: number
  readonly pinionWrap: number
  /** Wrap from tangent point to anchor of each branch at mid travel. */
  readonly drumWrap: number
  readonly span: number
  /** Travel of the drum. */
  readonly travel: number
}

/** The leg's numbers with materials looked up, as every plan starts from. */
export const benchLeg = (leg: Leg): LegModel => legModel(legNumbers(leg))

/** Material of what carries motor and drum of a joint at their distance. */
export function frameOf(leg: LegModel, joint: DrivenJoint): ReturnType<typeof materialState> {
  const calculation = calculationFor(leg)
  const here = calculation.instances.implied(placeOf(calculation, { joint }))
  return materialState(leg, calculation.instances.name('material', calculation.get(frameMaterial, here as never)))
}

/** Lowest and highest angle of the drum, pulley or wheel of a joint: those of the joint, of a knee that is driven through the hip those of hip and knee together, of its second stage those of the knee. */
export function drumRange(leg: LegModel, joint: DrivenJoint): { readonly lowest: number; readonly highest: number } {
  if ((joint as string) === SECOND_STAGE) return rangeOf(leg.x, 'knee')
  const through = joint === 'knee' ? throughGeometry(leg.x) : undefined
  if (through === undefined) return rangeOf(leg.x, joint)
  const hip = rangeOf(leg.x, 'hip')
  const ends = [through.drum(0, through.lowest), through.drum(0, through.highest)]
  return { lowest: hip.lowest + Math.min(...ends), highest: hip.highest + Math.max(...ends) }
}

/** Arcs and spans of one drive. */
export function benchDrive(leg: LegModel, joint: DrivenJoint): BenchDrive {
  const { pinionRadius, drumRadius, ratio } = leg.drives[joint]
  const { arrangement, centreDistance, pinion } = driveOf(leg.x, joint, 'cord')
  const { pinionWrap, drumWrapAngle, span } = pulleyGeometry.si({
    arrangement,
    pinionRadius,
    drumRadius,
    centreDistance,
    pinionTurns: pinion.turns,
  })
  const { lowest: from, highest: to } = drumRange(leg, joint)
  return {
    joint,
    pinionRadius,
    drumRadius,
    ratio,
    pinionWrap,
    drumWrap: drumWrapAngle / 2,
    span,
    travel: to - from,
  }
}

export const length = (x: number) => new Quantity(x, 'length')
/** A length as a rule reads it: to a tenth of a millimetre. */
export const byRule = (x: number) => `${Number((1000 * x).toFixed(1))} mm`
/** A length as a calliper reads it: to a hundredth of a millimetre. */
export const byCalliper = (x: number) => `${Number((1000 * x).toFixed(2))} mm`
/** A length of cord: to a millimetre, nothing finer is to be laid or cut. */
export const whole = (x: Quantity<'length'>, round: (mm: number) => number) => `${round(Number(x.in('mm').toFixed(6)))} mm`
/** A length in millimetres, as drawings and shops state it. */
export const inMillimetres = (x: number) => `${significant(1000 * x, 4)} mm`
export const force = (x: number) => new Quantity(x, 'force')
export const torque = (x: number) => new Quantity(x, 'torque')
export const angle = (x: number) => new Quantity(x, 'angle')
export const ratio = (x: number) => new Quantity(x, 'ratio')
export const count = (x: number) => new Quantity(x, 'count')
