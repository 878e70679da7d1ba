import type { Given, Si } from '../formula/index.js'
import { type Note, Quantity } from '../units/index.js'
import type { CordDriveState } from './branch.js'
import type { Read } from './drive-specification.js'
import { loadPath, type PathPoint } from './load-path.js'
import { shaftForce } from './loads.js'
import { strokeLosses } from './losses.js'

/** A cycle of loaded stroke and return, for what it loses. */
export const LOSS_CYCLE = {
  /** Torque at the joint during the loaded stroke. */
  torque: 'torque',
  /** Torque at the joint on the way back. */
  returnTorque: 'torque',
  /** Angle the joint turns each way. */
  stroke: { kind: 'angle', above: 0 },
  /** Friction of the pinion's bearings. */
  bearingFriction: { kind: 'ratio', min: 0 },
  /** Radius at which bearing friction acts. */
  bearingRadius: { kind: 'length', min: 0 },
  /** Share of the cord's pull lost over one pulley, on and off it, by rubbing of its own fibres; about 0.01 to 0.02 for wire rope. */
  bendingLoss: { kind: 'ratio', min: 0 },
} as const

/** A cycle of loaded stroke and return, for what it loses. */
export type LossCycle = Given<typeof LOSS_CYCLE>

/** One way in which energy is lost. */
export interface LossTerm {
  /** Energy lost per cycle. */
  readonly energy: Quantity<'energy'>
  /** The same over the energy that passes the drive in a cycle, either way. */
  readonly share: Quantity<'ratio'>
}

/** What a cycle loses, term by term: each has its own cause and its own cure, so they are never one number. */
export interface CycleLosses {
  /** Energy that passes the drive in a cycle: torque times stroke, out and back, either sign. */
  readonly passed: Quantity<'energy'>
  /** Slip in the arcs as the torque rises and falls: the exact hysteresis loop of the settled load cycle, motor locked. */
  readonly microSlip: LossTerm
  /** Creep of the cord over the pulleys as it runs under unequal tensions. */
  readonly creep: LossTerm
  /** Bearings of the pinion. */
  readonly bearings: LossTerm
  /** Fibres rubbing as the cord bends on and off both pulleys. */
  readonly bending: LossTerm
  /** The worst the load cycle met: once the pinion `slips`, micro-slip holds gross slip too. */
  readonly state: PathPoint['state']
}

const SETTLING = 4
const PER_LEG = 96

/** Losses of a cycle at one end of the friction interval. */
export function lossesOf(
  d: CordDriveState,
  { arrangement, centreDistance }: Read,
  cycle: Si<typeof LOSS_CYCLE>,
  about: (peak: number) => readonly Note[] | undefined,
): CycleLosses {
  const { torque, returnTorque, stroke } = cycle
  const legs = Array.from({ length: 2 * SETTLING }, (_, i) => (i % 2 === 0 ? torque : returnTorque))
  const steps = legs.flatMap((to, i) => {
    const from = i === 0 ? 0 : (legs[i - 1] as number)
    return Array.from({ length: PER_LEG }, (_, k) => from + ((to - from) * (k + 1)) / PER_LEG)
  })
  const path = loadPath(d, 'torque', steps)
  const last = path.slice(-2 * PER_LEG - 1)
  let loop = 0
  for (let i = 1; i < last.length; i++) {
    const [p, q] = [last[i - 1] as PathPoint, last[i] as PathPoint]
    loop += 0.5 * (p.torque + q.torque) * (q.windup + q.slipped - p.windup - p.slipped)
  }
  const pinionTravel = (stroke * d.drumRadius) / d.pinionRadius
  const both = [path.at(-1 - PER_LEG) as PathPoint, path.at(-1) as PathPoint].map((p) => {
    const spans = { tautTension: Math.max(p.tautTension, p.slackTension), slackTension: Math.min(p.tautTension, p.slackTension) }
    const force = shaftForce.si({ ...d, arrangement, centreDistance, ...spans }).force
    return strokeLosses.si({ ...d, ...cycle, ...spans, pinionTravel, shaftForce: force })
  })
  const passed = (Math.abs(torque) + Math.abs(returnTorque)) * stroke
  const notes = about(Math.max(...path.map((p) => Math.max(p.tautTension, p.slackTension))))
  const term = (energy: number): LossTerm => ({
    energy: new Quantity(energy, 'energy', undefined, notes),
    share: new Quantity(passed > 0 ? energy / passed : 0, 'ratio', undefined, notes),
  })
  const sum = (name: 'creep' | 'bearings' | 'bending') => term(both.reduce((all, one) => all + one[name], 0))
  const worst = (['slips', 'slackSpan'] as const).find((state) => path.some((p) => p.state === state))
  return {
    passed: new Quantity(passed, 'energy', undefined, notes),
    microSlip: term(loop),
    creep: sum('creep'),
    bearings: sum('bearings'),
    bending: sum('bending'),
    state: worst ?? 'tight',
  }
}
