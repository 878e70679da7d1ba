import { calculationOf, type LegCalculation, placeOf } from './calculation.js'
import { type CaseId, LOAD_CASES } from './cases/events.js'
import type { LegModel } from './leg-model.js'
import { NoValueError } from './no-value.js'
import { type DrivenJoint, drivenJoints, hasCord } from './numbers.js'
import { cycles, duration } from './parts/load/durations.js'
import { airTemperature } from './parts/load/fields.js'
import { driveLoad, driveMotion, footForce, groundForce, jointMotion, stride, stroke } from './parts/motion/values.js'
import { heat } from './parts/motors/heat.js'
import { rotorAtJoint } from './parts/motors/rotor.js'
import { pinForce } from './parts/pins-and-bosses/loads.js'
import { geometry, loose, peakTension, pretension, shaftForce, slackTorque, slipTorque, windup } from './parts/transmission/cord/values.js'
import * as transmission from './parts/transmission/questions.js'
import { blowTorque, freePlay, stiffness, windup as windupOfDrive } from './parts/transmission/through-hip/whole.js'
import type { Index, Named } from './run/index.js'
import { SECOND_STAGE } from './second-stage.js'
import { throughRatio } from './through-ratio.js'

const calculations = new WeakMap<LegModel, LegCalculation>()

/** Reads a leg from a calculation that is there already. */
export function keepCalculation(leg: LegModel, calculation: LegCalculation): void {
  calculations.set(leg, calculation)
}

/** The calculation of a leg at its end of the ranges; made once for each. */
export function calculationFor(leg: LegModel): LegCalculation {
  const known = calculations.get(leg)
  if (known !== undefined) return known
  const calculation = calculationOf(leg.x)
  keepCalculation(leg, calculation)
  if (leg.end !== 'typical') toEnd(calculation, leg.end)
  return calculation
}

/** Puts every uncertain leaf at its unfavourable or favourable end, as far as that is the same for most checks: much creep is unfavourable. */
function toEnd(calculation: LegCalculation, end: 'pessimistic' | 'optimistic'): void {
  const set = new Set<unknown>()
  const joints = drivenJoints(calculation.document)
  for (let met = -1; met !== set.size; ) {
    met = set.size
    for (const id of Object.keys(LOAD_CASES) as CaseId[]) for (const joint of joints) driveIn(calculation, id, joint)
    for (const cell of calculation.instances.leaves) {
      const range = calculation.rangeOf(cell)
      if (range === undefined || set.has(cell)) continue
      set.add(cell)
      const low = (end === 'pessimistic') !== cell.of.id.startsWith('material.creepCoefficient')
      calculation.put(cell, low ? range.low : range.high)
    }
  }
}

/** Instances of a leg by their names, with those that they imply. */
export const at = (calculation: LegCalculation, names: { readonly [X in Index]?: string }): Named =>
  calculation.instances.implied(placeOf(calculation, { leg: 'leg', ...names }))

/** What every transmission answers, under the largest torque of a load case. */
const transmissionAt = (calculation: LegCalculation, where: Named) => {
  const here = where as never
  return {
    ratio: calculation.get(transmission.ratio, here),
    efficiency: calculation.get(transmission.efficiency, here),
    stiffness: calculation.get(stiffness, here),
    windup: calculation.get(windupOfDrive, here),
    freePlay: calculation.get(freePlay, here),
    rotorAtJoint: calculation.get(rotorAtJoint, here),
  }
}

/** Cord of a joint, as tables and plans read it. */
export type DriveState = ReturnType<typeof driveAtPlace>
const driveAtPlace = (calculation: LegCalculation, where: Named) => {
  const here = where as never
  const { tautTension, slackTension, windup: angle, tangentStiffness } = calculation.get(windup, here)
  const { pinionWrap, drumWrapAngle, span } = calculation.get(geometry, here)
  return {
    pretension: calculation.get(pretension, here),
    hangs: calculation.get(loose, here),
    taut: tautTension,
    slack: slackTension,
    peak: calculation.get(peakTension, here),
    slackTorque: calculation.get(slackTorque, here),
    slipTorque: calculation.get(slipTorque, here),
    shaftForce: calculation.get(shaftForce, here),
    pinForce: calculation.get(pinForce, here),
    windup: angle,
    stiffness: tangentStiffness,
    pinionWrap,
    drumWrapAngle,
    span,
  }
}
const placeIn = (calculation: LegCalculation, id: CaseId, names: { readonly joint?: DrivenJoint } = {}): Named => {
  const { event, air, age } = LOAD_CASES[id]
  return at(calculation, { ...names, event, air, age })
}

const driveIn = (calculation: LegCalculation, id: CaseId, joint: DrivenJoint) => {
  const where = placeIn(calculation, id, { joint })
  const cord = hasCord(calculation.document, joint) ? driveAtPlace(calculation, where) : undefined
  return {
    motion: calculation.get(jointMotion, where as never),
    /** The same at the drum of its drive. */
    drum: calculation.get(driveMotion, where as never),
    transmission: transmissionAt(calculation, where),
    /** Its cord. Throws a `NoValueError` where it is driven otherwise. */
    get drive(): DriveState {
      if (cord === undefined) throw new NoValueError(`the ${joint} is not driven by cord`)
      return cord
    },
    heat: calculation.get(heat, where as never),
  }
}

/** One load case of a leg. */
export function caseState(leg: LegModel, id: CaseId) {
  const calculation = calculationFor(leg)
  const where = placeIn(calculation, id) as never
  return {
    motion: LOAD_CASES[id].event === 'shelf' ? undefined : calculation.get(stride, where),
    joints: { hip: driveIn(calculation, id, 'hip'), knee: driveIn(calculation, id, 'knee') },
    air: calculation.get(airTemperature, where),
    duration: calculation.get(duration, where),
    cycles: calculation.get(cycles, where),
  }
}

/** One load case of a leg, worked out. */
export type CaseState = ReturnType<typeof caseState>

/** A driven joint of a leg in one load case. */
export const jointState = (leg: LegModel, id: CaseId, joint: DrivenJoint) => driveIn(calculationFor(leg), id, joint)

/** A drive under an imposed torque. */
export interface DriveRequest {
  readonly joint: DrivenJoint
  readonly torque: number
  readonly stroke: number
  readonly footForce: number
  readonly air: number
  readonly age: 'new' | 'year'
}

/** Tensions, limits and windup of a drive by cord under an imposed torque, at a temperature and age. */
export const driveAt = (leg: LegModel, ask: DriveRequest): DriveState => under(leg, ask, driveAtPlace)

/** What a drive of any kind answers under an imposed torque, with the torque of a blow that it bears. */
export const transmissionUnder = (leg: LegModel, ask: DriveRequest) =>
  under(leg, ask, (calculation, where) => ({
    ...transmissionAt(calculation, where),
    blowTorque: calculation.get(blowTorque, where as never),
  }))

/** Windup of one stage alone under an imposed torque, and the torque of a blow that it bears: from the motor to its drum, or along the upper link. */
export const stageUnder = (leg: LegModel, ask: DriveRequest) =>
  under(leg, ask, (calculation, where) => ({
    windup: calculation.get(transmission.windup, where as never),
    blowTorque: calculation.get(transmission.blowTorque, where as never),
  }))

function under<T>(leg: LegModel, { joint, torque, age, ...ask }: DriveRequest, read: (calculation: LegCalculation, where: Named) => T): T {
  const calculation = calculationFor(leg)
  const where = at(calculation, { joint, event: 'walk', air: 'normal', age })
  const here = where as never
  calculation.set(airTemperature, here, ask.air)
  const second = joint === 'knee' ? throughRatio(leg.x) : undefined
  const stageBehind = { joint: SECOND_STAGE, event: 'walk', air: 'normal', age }
  const pins = [
    [driveLoad, here, Math.abs(torque)],
    ...(second === undefined ? [] : [[driveLoad, at(calculation, stageBehind) as never, Math.abs(torque * second)] as const]),
    [stroke, here, ask.stroke],
    [footForce, here, ask.footForce],
    [groundForce, here, ask.footForce],
  ] as const
  for (const [of, place, x] of pins) calculation.pin(of as typeof stroke, place, x)
  try {
    return read(calculation, where)
  } finally {
    for (const [of, place] of pins) calculation.unpin(of as typeof stroke, place)
    calculation.restore(calculation.cell(airTemperature, here))
  }
}
