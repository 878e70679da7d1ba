import { adiabaticPulse, copperLoss, insulationClasses, windingHeatCapacity } from '../../thermal/index.js'
import { type Joint, motorOf, type Prepared } from '../numbers.js'

/** The hottest spot of a winding above its mean, K; and a phase that holds still carries twice its share. */
const HOT_SPOT = 10
const WORST_PHASE = 2

/**
 * Peak phase current that heats the winding from a temperature to its class within a time, nothing shed (so that it errs on the safe side),
 * one phase carrying its peak. @internal
 */
export function pulseCurrent(leg: Prepared, joint: Joint, seconds: number, from: number, conductorMass: number): number {
  const motor = motorOf(leg.x, joint)
  const limit = insulationClasses[motor.windingClass].si - HOT_SPOT
  if (from >= limit) return 0
  const heatCapacity = windingHeatCapacity.si({
    conductorMass,
    conductorSpecificHeat: 385,
    insulationMass: 0,
    insulationSpecificHeat: 1200,
  })
  // The time is inverse to the loss, and the loss goes with the square of the current: one evaluation of each gives the current.
  const loss = adiabaticPulse.si({ heatCapacity, lossAt20: 1, from, to: limit }) / seconds
  const perSquare = copperLoss.si({ peakPhaseCurrent: 1, terminalResistance: motor.terminalResistance })
  return Math.sqrt(loss / (WORST_PHASE * perSquare))
}
