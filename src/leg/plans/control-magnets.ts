import { backEmfConstant, magnetDerating, torqueConstants } from '../../thermal/index.js'
import { calculationOf, placeOf } from '../calculation.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, motorOf } from '../numbers.js'
import { magnetCoefficient } from '../parts/motors/fields.js'

/** Torque per peak phase ampere of a motor (N·m/A). @internal */
export interface ColdTorqueConstants {
  readonly typical: number
  /** The most over the ranges of speed constant and magnets: a current then gives the most torque to what may break. */
  readonly highest: number
}

/** Torque per ampere of the motor of a joint with its magnets as warm as some air (K). @internal */
export function coldTorqueConstants(leg: LegModel, joint: DrivenJoint, magnetTemperature: number): ColdTorqueConstants {
  const calculation = calculationOf(leg.x)
  const here = calculation.instances.implied(placeOf(calculation, { joint })) as never
  const { speedConstant, speedConstantBasis: basis } = motorOf(leg.x, joint)
  const { typical, high } = backEmfConstant.si({ speedConstant, basis })
  const of = (emf: number, coefficient: number) => {
    const derated = magnetDerating.si({ backEmfConstant: emf, magnetTemperature, coefficient })
    return torqueConstants.si({ backEmfConstant: derated.backEmfConstant }).peakPhase
  }
  const usual = calculation.get(magnetCoefficient, here)
  const range = calculation.rangeOf(calculation.instances.find(magnetCoefficient as never, {}, here))
  const coefficients = range === undefined ? [usual] : [range.low, range.high]
  return { typical: of(typical, usual), highest: Math.max(...coefficients.map((coefficient) => of(high, coefficient))) }
}
