import type { Property } from '../formula/index.js'
import { bracketRoot } from '../numeric/index.js'
import { type In, InputError, type Note, quantity } from '../units/index.js'
import { checkPartLimits, type PartLimit } from './limits.js'
import type { MotorMount } from './mount.js'
import { requireMadeBy } from './must-be-made.js'
import { uncertain } from './uncertain.js'

/** The largest torque that keeps every part within its limit, and the part that sets it. */
export interface TorqueLimit {
  /**
   * `found`; `tooHot` where a part is beyond its limit without any torque; `runaway` where losses outgrow the paths before any part meets its limit:
   * the torque is then the last that settles.
   */
  readonly state: 'found' | 'tooHot' | 'runaway'
  /** Motor torque with its 95 % band, from the scatter of correlations, joints and motor constant; 0 when too hot already. */
  readonly torque: Property<'torque'>
  /** The part that governs; `runaway` in that state. */
  readonly governs: string
  /** Temperatures there with their bands; peaks of the settled cycle for a duty. */
  readonly temperatures: Readonly<Record<string, Property<'temperature'>>>
  /** Remarks of links and losses there; the torque carries them too. */
  readonly notes: readonly Note[]
}

/** A limit in numbers: temperature of its part from those of all nodes. */
export interface LimitNumbers {
  readonly part: string
  readonly node: string
  readonly of: (T: ArrayLike<number>) => number
  readonly limit: number
}

/** The name under which a limit may ask for the hottest phase of the winding, which at a hold heats twice its share. */
const HOTTEST_PHASE = 'hottestPhase'

/** Temperature of the hottest phase: it stands off the stator as far as the winding's mean, or twice as far at a hold. */
export function hottestPhaseOf(nodes: readonly string[], speed: number): LimitNumbers['of'] {
  const winding = nodes.indexOf('winding')
  const stator = nodes.indexOf('stator')
  const share = speed === 0 ? 2 : 1
  return (T) => T[stator]! + share * (T[winding]! - T[stator]!)
}

/** Limits as numbers; parts without a temperature are left out, but not all of them. */
export function readLimits(where: string, mount: MotorMount, limits: readonly PartLimit[], speed: number): LimitNumbers[] {
  requireMadeBy(where, 'mount', mount, 'motorMount')
  const { nodes } = mount.si.network(0, 0)
  checkPartLimits(where, limits, [...nodes, HOTTEST_PHASE])
  const known = limits.flatMap(({ part, node, limit }) => {
    const index = nodes.indexOf(node)
    if (limit === undefined) return []
    const of = index < 0 ? hottestPhaseOf(nodes, speed) : (T: ArrayLike<number>) => T[index]!
    return [{ part, node, of, limit: quantity('temperature', limit as In<'temperature'>).si }]
  })
  if (known.length === 0)
    throw new InputError(where, [
      { path: 'limits', given: `${limits.length} without a temperature`, accepts: 'needs at least one part with a limit' },
    ])
  return known
}

/** The limit with the smallest margin, from each part's temperature. */
export function worstOf(limits: readonly LimitNumbers[], temperature: (limit: LimitNumbers, i: number) => number) {
  let worst = 0
  let margin = Number.POSITIVE_INFINITY
  limits.forEach((each, i) => {
    const left = each.limit - temperature(each, i)
    if (left < margin) {
      margin = left
      worst = i
    }
  })
  return { worst: limits[worst]!, index: worst, margin }
}

/** Temperature that a search takes for runaway: far beyond any limit, kelvin. */
const RUNAWAY_MARGIN = -1000
const MARGIN_TOLERANCE = 1e-3
const TORQUE_TOLERANCE = 1e-6
/** A margin left at the largest torque that settles, beyond which no part but the runaway governs, kelvin. */
const LEFT = 0.1

/** Torque at which the worst margin is used up, or the last one that settles. `marginAt` gives undefined in a runaway. */
export function largestTorque(mount: MotorMount, marginAt: (torque: number) => number | undefined): { torque: number; runaway: boolean } {
  const scale = mount.motor.motorConstant.si
  const margin = (torque: number) => marginAt(torque) ?? RUNAWAY_MARGIN
  let low = 0
  let high = scale
  for (let k = 0; k < 60 && margin(high) > 0; k++) {
    low = high
    high *= 2
  }
  let torque = bracketRoot(margin, low, high, { xTolerance: TORQUE_TOLERANCE * scale, fTolerance: MARGIN_TOLERANCE })
  let left = marginAt(torque)
  // The root of a jump may lie on its far side.
  for (let k = 1; left === undefined && torque > 0; k *= 2) {
    torque = Math.max(0, torque - k * TORQUE_TOLERANCE * scale)
    left = marginAt(torque)
  }
  return { torque, runaway: (left ?? 0) > LEFT }
}

/** The answer for a torque whose governing part has a band of `half` kelvin and warms by `slope` kelvin per newton metre. */
export function torqueLimit(
  state: TorqueLimit['state'],
  torque: number,
  half: number,
  slope: number,
  governs: string,
  temperatures: TorqueLimit['temperatures'],
  notes: readonly Note[],
): TorqueLimit {
  const wide = slope > 0 ? half / slope : 0
  return {
    state,
    torque: uncertain('torque', torque, Math.max(0, torque - wide), torque + wide, notes, 'largest torque'),
    governs,
    temperatures,
    notes,
  }
}
