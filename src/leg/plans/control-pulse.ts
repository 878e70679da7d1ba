import { adiabaticPulse, copperLoss, windingHeatCapacity } from '../../thermal/index.js'
import { Quantity } from '../../units/index.js'
import { comparisonAt, reserveOf } from '../assess/compare.js'
import { worstEnds } from '../assess/survey.js'
import { calculationOf, type LegCalculation, placeOf } from '../calculation.js'
import type { Check } from '../cases/check.js'
import { LOAD_CASES } from '../cases/events.js'
import type { LegModel } from '../leg-model.js'
import { airNamed, type DrivenJoint, type Joint } from '../numbers.js'
import { CHECKS } from '../parts/index.js'
import { terminalResistance, worstPhase } from '../parts/motors/fields.js'
import { heat } from '../parts/motors/heat.js'

/** A winding before a pulse, SI. @internal */
export interface PulseStart {
  /** Temperature of the winding after walking in hot still air until it settles, and the one at which its hottest spot reaches the insulation class. */
  readonly from: number
  readonly to: number
  /** Resistance between two terminals at 20 °C. */
  readonly resistance: number
  /** Loss of the phase that carries its peak while the motor holds still, over the mean of the phases. */
  readonly worstPhase: number
  /** Whether the temperatures of walking settle. */
  readonly settled: boolean
}

const WALK = 'hotAfternoon'
const WINDING = CHECKS.find(({ id }) => id === 'motor.winding') as Check

/** The winding of a joint before a pulse: at typical values, and with every uncertain value at its unfavourable end for the winding. @internal */
export function pulseStarts(leg: LegModel, joint: DrivenJoint): { readonly typical: PulseStart; readonly unfavourable: PulseStart } {
  const calculation = calculationOf(leg.x)
  const comparison = comparisonAt(calculation, WINDING, joint as Joint, WALK)
  const typical = startAt(calculation, leg, joint)
  const group = {
    comparisons: [comparison],
    reserve: reserveOf(calculation.read(comparison.demand) as number, calculation.read(comparison.capacity) as number),
  }
  for (const { cell, range, low, high } of worstEnds(calculation, [group]).get(group)?.moves ?? [])
    calculation.put(cell, low < high ? range.low : range.high)
  return { typical, unfavourable: startAt(calculation, leg, joint) }
}

function startAt(calculation: LegCalculation, leg: LegModel, joint: DrivenJoint): PulseStart {
  const { event, air, age } = LOAD_CASES[WALK]
  const here = calculation.instances.implied(placeOf(calculation, { joint, event, air, age })) as never
  const { demand, capacity } = comparisonAt(calculation, WINDING, joint as Joint, WALK)
  const { winding, unsettled } = calculation.get(heat, here)
  const { temperature } = airNamed(leg.x, 'hot')
  // Both sides of the check are rises above the air; the demand is that of the hottest spot.
  const spot = (calculation.read(demand) as number) + temperature - winding
  return {
    from: winding,
    to: (calculation.read(capacity) as number) + temperature - spot,
    resistance: calculation.get(terminalResistance, here),
    worstPhase: calculation.get(worstPhase, here),
    settled: unsettled === undefined,
  }
}

const NONE = new Quantity(0, 'mass')

/**
 * Peak phase current (A) that heats the hottest spot of a winding to its insulation class within a time (s). No heat is shed: it errs on the safe side.
 * One phase carries its peak. 0 where walking leaves the winding at its class, or does not settle. @internal
 */
export function pulseCurrent({ from, to, resistance, worstPhase, settled }: PulseStart, seconds: number, conductorMass: number): number {
  if (!(settled && from < to)) return 0
  // Copper alone, at the specific heat that the formula has with its source: insulation would take up some heat more.
  const { si: heatCapacity } = windingHeatCapacity({ conductorMass: new Quantity(conductorMass, 'mass'), insulationMass: NONE })
  // The time is inverse to the loss, and the loss goes with the square of the current: one evaluation of each gives the current.
  const loss = adiabaticPulse.si({ heatCapacity, lossAt20: 1, from, to }) / seconds
  const perSquare = copperLoss.si({ peakPhaseCurrent: 1, terminalResistance: resistance })
  return Math.sqrt(loss / (worstPhase * perSquare))
}
