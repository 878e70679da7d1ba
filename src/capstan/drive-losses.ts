import type { Given, Si } from '../formula/index.js'
import { type Note, Quantity } from '../units/index.js'
import type { CordDriveState } from './branch.js'
import type { Read } from './drive-specification.js'
import { fineHistory } from './fine-history.js'
import { shaftForce } from './loads.js'
import { strokeLosses } from './losses.js'
import type { PathPoint } from './path-point.js'
import { travelLoss } from './travel-loss.js'
import type { TravelEnd } from './travel-point.js'

/** A cycle of loaded stroke and return whose losses are required. */
export const LOSS_CYCLE = {
  /** Torque at the joint during the loaded stroke. */
  torque: 'torque',
  /** Torque at the joint on the way back. */
  returnTorque: 'torque',
  /** Angle the joint turns each way, half to either side of mid travel. */
  stroke: { kind: 'angle', above: 0 },
  /** Friction of the pinion's bearings. */
  bearingFriction: { kind: 'ratio', min: 0 },
  /** Radius at which bearing friction acts. */
  bearingRadius: { kind: 'length', min: 0 },
  /** Share of the cord's pull lost over one pulley, on and off it, by rubbing of its own fibres; about 0.01 to 0.02 for wire rope. */
  bendingLoss: { kind: 'ratio', min: 0 },
} as const

/** A cycle of loaded stroke and return whose losses are required. */
export type LossCycle = Given<typeof LOSS_CYCLE>

/** One way in which energy is lost. */
export interface LossTerm {
  /** Energy lost per cycle. */
  readonly energy: Quantity<'energy'>
  /** The same over the energy that passes the drive in a cycle, either way. */
  readonly share: Quantity<'ratio'>
}

/** Losses of a cycle, term by term: each has its own cause and its own remedy, so they are never one number. */
export interface CycleLosses {
  /** Energy that passes the drive in a cycle: torque times stroke, out and back, either sign. */
  readonly passed: Quantity<'energy'>
  /** Slip in the arcs as the torque rises and falls: the exact hysteresis loop of the settled load cycle, motor locked. */
  readonly microSlip: LossTerm
  /**
   * Creep of the cord over the pulleys as it travels under load: the loss of a settled cycle of travel beyond micro-slip. A cord
   * anchored on its drum loses about half as much as an endless belt. Absent where the travel cannot be followed.
   */
  readonly creep: LossTerm | undefined
  /** Bearings of the pinion. */
  readonly bearings: LossTerm
  /** Fibres rubbing as the cord bends on and off both pulleys. */
  readonly bending: LossTerm
  /** The worst state in the load cycle: once the pinion `slips`, micro-slip holds gross slip too. */
  readonly state: PathPoint['state']
  /** Whether the stroke could be followed, or the end of its travel. */
  readonly travel: TravelEnd
}

/** Load cycles after which a load history has settled. */
const SETTLING_CYCLES = 4

/** Losses of a cycle at one end of the friction interval. */
export function lossesOf(
  d: CordDriveState,
  { arrangement, centreDistance }: Read,
  cycle: Si<typeof LOSS_CYCLE>,
  about: (peak: number) => readonly Note[] | undefined,
): CycleLosses {
  const { torque, returnTorque, stroke } = cycle
  const swings = Array.from({ length: 2 * SETTLING_CYCLES }, (_, i) => (i % 2 === 0 ? torque : returnTorque))
  const { points, ends, work } = fineHistory(d, 'torque', swings)
  const after = (swing: number) => points[ends.at(swing) as number] as PathPoint
  const microSlip = (work.at(-1) as number) - (work.at(-3) as number)
  const travel = travelLoss(d, torque, returnTorque, stroke)
  const pinionTravel = (stroke * d.drumRadius) / d.pinionRadius
  const both = [after(-2), after(-1)].map((p) => {
    const spans = { tautTension: Math.max(p.tautTension, p.slackTension), slackTension: Math.min(p.tautTension, p.slackTension) }
    const force = shaftForce.si({ ...d, arrangement, centreDistance, ...spans }).force
    return strokeLosses.si({ ...d, ...cycle, ...spans, pinionTravel, shaftForce: force })
  })
  const passed = (Math.abs(torque) + Math.abs(returnTorque)) * stroke
  const notes = about(points.reduce((max, p) => Math.max(max, p.tautTension, p.slackTension), 0))
  const term = (energy: number): LossTerm => ({
    energy: new Quantity(energy, 'energy', undefined, notes),
    share: new Quantity(passed > 0 ? energy / passed : 0, 'ratio', undefined, notes),
  })
  const sum = (name: 'bearings' | 'bending') => term(both.reduce((all, side) => all + side[name], 0))
  const worst = (['slips', 'slackSpan'] as const).find((state) => points.some((p) => p.state === state))
  return {
    passed: new Quantity(passed, 'energy', undefined, notes),
    microSlip: term(microSlip),
    creep: travel.energy === undefined ? undefined : term(travel.energy - microSlip),
    bearings: sum('bearings'),
    bending: sum('bending'),
    state: worst ?? 'tight',
    travel: travel.end,
  }
}
