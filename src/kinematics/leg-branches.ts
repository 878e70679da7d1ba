import { Quantity } from '../units/index.js'
import { FOOT_ABOVE, KNEE_BACKWARD, type LegGeometryKernel, REACHED } from './leg-geometry-kernel.js'
import { type LimitsSi, withinTurns } from './leg-limits.js'
import type { LegJoint } from './leg-specification.js'
import type { PerJoint } from './vectors.js'

/** One way to put the foot at a point. */
export interface LegBranch extends PerJoint<Quantity<'angle'>> {
  /** Which way the knee points; straight or folded where both ways meet. */
  readonly kneeBend: 'forward' | 'backward' | 'straight' | 'folded'
  /** Whether the foot is below the hip axis in the leg plane, above it (leg folded over the hip), or level with it where both meet. */
  readonly foot: 'below' | 'above' | 'level'
  /** Joints whose angle does not matter here and was set to zero: the foot is on their axis. */
  readonly freeJoints: readonly LegJoint[]
  /** Joints that this way turns beyond their limits. */
  readonly beyondLimits: readonly LegJoint[]
}

/** Relative to the leg's size: where two branches are closer than this they are one. */
const SAME_BRANCH = 1e-9

/** All ways to reach a point, those that meet given once; the status of the kernel is the reason where there is none. */
export function legBranches(
  leg: LegGeometryKernel,
  limits: LimitsSi,
  x: number,
  y: number,
  z: number,
): { readonly status: number; readonly branches: LegBranch[] } {
  const q = new Float64Array(3)
  const branches: LegBranch[] = []
  const sidewaysHipFree = leg.hipOffset === 0 && Math.hypot(y, z) <= SAME_BRANCH * sizeOf(leg)
  let status = REACHED
  for (const foot of [0, FOOT_ABOVE]) {
    for (const knee of [0, KNEE_BACKWARD]) {
      status = leg.jointAnglesInto(q, 0, x, y, z, foot + knee)
      if (status !== REACHED) return { status, branches }
      const branch = branchAt(leg, limits, q, { above: foot !== 0, backward: knee !== 0, sidewaysHipFree })
      if (branch !== undefined) branches.push(branch)
    }
  }
  return { status, branches }
}

const sizeOf = ({ hipOffset, upperLink, lowerLink }: LegGeometryKernel) => upperLink + lowerLink + Math.abs(hipOffset)

/** One way as the kernel's angles have it; absent where it meets another one that is given. */
function branchAt(
  leg: LegGeometryKernel,
  limits: LimitsSi,
  [q1, q2, q3]: Float64Array,
  { above, backward, sidewaysHipFree }: { readonly above: boolean; readonly backward: boolean; readonly sidewaysHipFree: boolean },
): LegBranch | undefined {
  const { upperLink: l1, lowerLink: l2 } = leg
  const near = SAME_BRANCH * sizeOf(leg)
  const level = Math.abs(l1 * Math.cos(q2!) + l2 * Math.cos(q2! + q3!)) <= near
  const met = Math.abs(Math.sin(q3!)) <= SAME_BRANCH
  if ((level && above) || (met && backward)) return undefined
  const hipFree = Math.hypot(l1 + l2 * Math.cos(q3!), l2 * Math.sin(q3!)) <= near
  const angles = { sidewaysHip: sidewaysHipFree ? inRange(0, limits, 0) : q1!, hip: hipFree ? inRange(0, limits, 1) : q2!, knee: q3! }
  const beyondLimits: LegJoint[] = []
  const turned = (joint: LegJoint, i: number) => {
    const fit = withinTurns(angles[joint], limits[2 * i]!, limits[2 * i + 1]!)
    if (Number.isNaN(fit)) beyondLimits.push(joint)
    return new Quantity(Number.isNaN(fit) ? angles[joint] : fit, 'angle')
  }
  const straight = Math.cos(q3!) > 0 ? 'straight' : 'folded'
  const bent = backward ? 'backward' : 'forward'
  return {
    sidewaysHip: turned('sidewaysHip', 0),
    hip: turned('hip', 1),
    knee: turned('knee', 2),
    kneeBend: met ? straight : bent,
    foot: level ? 'level' : above ? 'above' : 'below',
    freeJoints: [...(sidewaysHipFree ? (['sidewaysHip'] as const) : []), ...(hipFree ? (['hip'] as const) : [])],
    beyondLimits,
  }
}

/** A free joint's angle: zero, or the limit nearest to it. */
const inRange = (angle: number, limits: LimitsSi, i: number) => Math.min(limits[2 * i + 1]!, Math.max(limits[2 * i]!, angle))
