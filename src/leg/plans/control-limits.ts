import { bare } from '../../formula/index.js'
import { adiabaticPulse, copperLoss, insulationClasses, windingHeatCapacity } from '../../thermal/index.js'
import { Quantity } from '../../units/index.js'
import { driveState } from '../cases/drive.js'
import { heatOf } from '../cases/heat.js'
import { workOut } from '../cases/work-out.js'
import { reserveOf } from '../checks/check.js'
import { CHECKS } from '../checks/index.js'
import type { Joint, Prepared } from '../numbers.js'
import { bareSheet } from '../sheet.js'
import type { CaseState, JointState, Scene } from '../state.js'
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

/** Smallest reserve among checks in one state of one joint. */
function leastOf(leg: Prepared, state: CaseState, joint: Joint, wanted: (id: string) => boolean): { least: number; by: string } {
  const scene: Scene = { leg, state, joint, walkTorque: () => 0 }
  let [least, by] = [Number.POSITIVE_INFINITY, '']
  for (const check of CHECKS) {
    if (!wanted(check.id)) continue
    const found = check.run(bare, scene, state.joints[joint])
    if (found === undefined) continue
    const reserve = reserveOf(found)
    if (reserve < least) [least, by] = [reserve, `${check.part}: ${check.mode} (${check.id})`]
  }
  return { least, by }
}

const withJoint = (state: CaseState, joint: Joint, at: Partial<JointState>): CaseState => ({
  ...state,
  joints: { ...state.joints, [joint]: { ...state.joints[joint], ...at } },
})

/** Joint torque that may be held without end in hot still air, one phase carrying its peak, and what ends it. @internal */
export function continuousTorque(leg: Prepared, joint: Joint, mostTorque: number): { torque: number; by: string | undefined } {
  const state = workOut(leg, bareSheet, 'stall')
  const { x, by } = largest(mostTorque, (torque) => {
    const motion = { torque, shaftTorque: torque, shaftRms: torque, speed: 0, loadedSpeed: 0, lowest: 0, highest: 0 }
    const heat = heatOf(leg, bare, { joint, motion, air: leg.x.environment.hotAir, wind: 0, heating: 'held' })
    if (heat.unsettled !== undefined) return { least: 0, by: `motor: temperatures come to no rest (${heat.unsettled.loop})` }
    return leastOf(leg, withJoint(state, joint, { heat, motion }), joint, (id) => HOT.includes(id))
  })
  return { torque: x, by }
}

/** The foot force never counts as acting on a shorter arm than this share of the standing height: a leg straight over its foot asks no torque at all. */
const LEAST_ARM = 0.1

/**
 * Joint torque at which the cord, its ends, the drum or the pin give for a moment, cord new and at ordinary temperature, the foot force growing
 * with the torque on the arm that it has in walking. @internal
 */
export function mechanicalTorque(leg: Prepared, joint: Joint, mostTorque: number): { torque: number; by: string | undefined } {
  const state = workOut(leg, bareSheet, 'drop')
  const walk = workOut(leg, bareSheet, 'walk')
  const at = state.joints[joint]
  const arm = Math.abs(walk.joints[joint].motion.torque) / (walk.motion?.vertical ?? 1)
  const force = 1 / Math.max(arm, LEAST_ARM * leg.x.robot.standHeight)
  const { x, by } = largest(mostTorque, (torque) => {
    const drive = driveState(leg, bare, { joint, torque, stroke: 0, footForce: force * torque, air: state.air, age: 'new' })
    const scaled = withJoint(state, joint, { drive, motion: { ...at.motion, torque } })
    return leastOf(leg, scaled, joint, momentary)
  })
  return { torque: x, by }
}

const momentary = (id: string) => {
  const check = CHECKS.find((one) => one.id === id)
  return check?.scope === 'joint' && check.after.includes('drive') && !check.after.includes('heat') && check.cases.includes('drop')
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
