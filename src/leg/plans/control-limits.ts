import { adiabaticPulse, copperLoss, insulationClasses, windingHeatCapacity } from '../../thermal/index.js'
import { Quantity } from '../../units/index.js'
import { type Comparison, compare, comparisonAt, comparisonsOf } from '../assess/compare.js'
import { calculationOf, type LegCalculation, placeOf } from '../calculation.js'
import type { Joint, Prepared } from '../numbers.js'
import { CHECKS } from '../parts/index.js'
import { footForce, jointMotion, stroke } from '../parts/motion/values.js'
import { heat } from '../parts/motors/heat.js'
import type { Cell } from '../run/index.js'
import { torque } from './bench.js'

/** One current limit to set, and what it keeps from harm. */
export interface CurrentLimit {
  /** How long; absent for continuous and for a limit that no moment may pass. */
  readonly duration: Quantity<'time'> | undefined
  readonly what: string
  readonly peakPhase: Quantity<'peakPhaseCurrent'>
  readonly rmsPhase: Quantity<'rmsPhaseCurrent'>
  /** Joint torque that the current gives, losses of the drive taken off. */
  readonly jointTorque: Quantity<'torque'>
  /** The check whose reserve is 1 there, or the setting that caps it. */
  readonly protects: string
}

/** Checks that heat decides; touching the can is left out: it wants a guard, not a current limit. */
const HOT = ['motor.winding', 'motor.magnet', 'motor.plate', 'motor.runaway', 'cord.heat', 'controller.heat']
const ROUNDS = 48
/** The hottest spot of a winding above its mean, K; and a phase that holds still carries twice its share. */
const HOT_SPOT = 10
const WORST_PHASE = 2

/** The largest of `most` and less that passes, and what fails just above it. Reserves must fall as `x` grows. */
function largest(most: number, reserves: (x: number) => { least: number; by: string }): { x: number; by: string | undefined } {
  const top = reserves(most)
  if (top.least >= 1) return { x: most, by: undefined }
  let [low, high, by] = [0, most, top.by]
  for (let i = 0; i < ROUNDS; i++) {
    const middle = (low + high) / 2
    const found = reserves(middle)
    if (found.least >= 1) low = middle
    else {
      high = middle
      by = found.by
    }
  }
  return { x: low, by }
}

/** Smallest reserve among some comparisons. */
function leastOf(calculation: LegCalculation, comparisons: readonly Comparison[]): { least: number; by: string } {
  let [least, by] = [Number.POSITIVE_INFINITY, '']
  for (const one of comparisons) {
    const found = compare(calculation, one)
    if (typeof found === 'string' || found.reserve >= least) continue
    least = found.reserve
    by = `${one.check.part}: ${one.check.mode} (${one.check.id})`
  }
  return { least, by }
}

/** Joint torque that may be held continuously in hot still air, one phase carrying its peak, and what limits it. @internal */
export function continuousTorque(leg: Prepared, joint: Joint, mostTorque: number): { torque: number; by: string | undefined } {
  const calculation = calculationOf(leg.x)
  const held = { event: 'stand', air: 'hot', age: 'new' } as const
  const comparisons = CHECKS.filter(({ id }) => HOT.includes(id)).map((check) => comparisonAt(calculation, check, joint, 'stand', held))
  const here = calculation.instances.implied(placeOf(calculation, { joint, ...held })) as never
  const { x, by } = largest(mostTorque, (torque) => {
    const motion = { torque, shaftTorque: torque, shaftRms: torque, speed: 0, loadedSpeed: 0, lowest: 0, highest: 0 }
    calculation.pin(jointMotion, here, motion)
    const { unsettled } = calculation.get(heat, here)
    if (unsettled !== undefined) return { least: 0, by: `motor: temperatures do not converge (${unsettled})` }
    return leastOf(calculation, comparisons)
  })
  return { torque: x, by }
}

/** The foot force never counts as acting on a shorter arm than this share of the standing height: a leg straight over its foot takes no torque at all. */
const LEAST_ARM = 0.1

/**
 * Joint torque at which the cord, its ends, the drum or the pin fail for a moment, with a new cord at ordinary temperature. The foot force grows
 * with the torque on the arm that it has in walking. @internal
 */
export function mechanicalTorque(leg: Prepared, joint: Joint, mostTorque: number): { torque: number; by: string | undefined } {
  const calculation = calculationOf(leg.x)
  const walk = calculation.instances.implied(placeOf(calculation, { leg: 'leg', joint, event: 'walk' })) as never
  const arm = Math.abs(calculation.get(jointMotion, walk).torque) / calculation.get(footForce, walk)
  const force = 1 / Math.max(arm, LEAST_ARM * leg.x.robot.standHeight)
  const comparisons = comparisonsOf(calculation, CHECKS, ['drop']).filter((one) => one.joint === joint && one.check.scope === 'joint')
  leastOf(calculation, comparisons)
  const momentary = comparisons.filter(({ demand, capacity }) => {
    const read = readsOf([demand, capacity])
    return read.has('cord.pretension') && !read.has('motor.temperatures')
  })
  const here = calculation.instances.implied(placeOf(calculation, { leg: 'leg', joint, event: 'drop' })) as never
  const own = calculation.get(jointMotion, here)
  calculation.pin(stroke, here, 0)
  const { x, by } = largest(mostTorque, (torque) => {
    calculation.pin(jointMotion, here, { ...own, torque })
    calculation.pin(footForce, here, force * torque)
    return leastOf(calculation, momentary)
  })
  return { torque: x, by }
}

/** Ids of all values that some cells read. */
function readsOf(cells: readonly Cell[]): Set<string> {
  const seen = new Set<Cell>()
  const open = [...cells]
  for (let cell = open.pop(); cell !== undefined; cell = open.pop())
    if (!seen.has(cell)) {
      seen.add(cell)
      open.push(...cell.reads)
    }
  return new Set([...seen].map(({ of }) => of.id))
}

/**
 * Peak phase current that heats the winding from a temperature to its class within a time, nothing shed (so that it errs on the safe side),
 * one phase carrying its peak. @internal
 */
export function pulseCurrent(leg: Prepared, seconds: number, from: number, conductorMass: number): number {
  const { motor } = leg.x
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

/** A limit as the sheet lists it. @internal */
export const currentLimit = (
  what: string,
  duration: number | undefined,
  peak: number,
  jointTorquePerAmpere: number,
  protects: string,
): CurrentLimit => ({
  duration: duration === undefined ? undefined : new Quantity(duration, 'time'),
  what,
  peakPhase: new Quantity(peak, 'peakPhaseCurrent'),
  rmsPhase: new Quantity(peak / Math.SQRT2, 'rmsPhaseCurrent'),
  jointTorque: torque(peak * jointTorquePerAmpere),
  protects,
})
