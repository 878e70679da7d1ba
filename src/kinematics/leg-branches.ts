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
const MEETING = 1e-9

/** All ways to reach a point, those that meet given once; the kernel's status says why there is none. */
export function legBranches(
  leg: LegGeometryKernel,
  limits: LimitsSi,
  x: number,
  y: number,
  z: number,
): { readonly status: number; readonly branches: LegBranch[] } {
  const { hipOffset: d, upperLink: l1, lowerLink: l2 } = leg
  const q = new Float64Array(3)
  const branches: LegBranch[] = []
  const size = l1 + l2 + Math.abs(d)
  const axisDistance = Math.hypot(y, z)
  const sidewaysHipFree = d === 0 && axisDistance <= MEETING * size
  let status = REACHED
  for (const foot of [0, FOOT_ABOVE]) {
    for (const knee of [0, KNEE_BACKWARD]) {
      status = leg.jointAnglesInto(q, 0, x, y, z, foot + knee)
      if (status !== REACHED) return { status, branches }
      const [q1, q2, q3] = q as unknown as [number, number, number]
      const level = Math.abs(l1 * Math.cos(q2) + l2 * Math.cos(q2 + q3)) <= MEETING * size
      const met = Math.abs(Math.sin(q3)) <= MEETING
      if ((level && foot !== 0) || (met && knee !== 0)) continue
      const hipFree = Math.hypot(l1 + l2 * Math.cos(q3), l2 * Math.sin(q3)) <= MEETING * size
      const joints = [
        ['sidewaysHip', sidewaysHipFree ? inRange(0, limits, 0) : q1, 0],
        ['hip', hipFree ? inRange(0, limits, 1) : q2, 1],
        ['knee', q3, 2],
      ] as const
      const angles = {} as Record<LegJoint, Quantity<'angle'>>
      const beyondLimits: LegJoint[] = []
      for (const [joint, angle, i] of joints) {
        const fit = withinTurns(angle, limits[2 * i]!, limits[2 * i + 1]!)
        if (Number.isNaN(fit)) beyondLimits.push(joint)
        angles[joint] = new Quantity(Number.isNaN(fit) ? angle : fit, 'angle')
      }
      branches.push({
        sidewaysHip: angles.sidewaysHip,
        hip: angles.hip,
        knee: angles.knee,
        kneeBend: met ? (Math.cos(q3) > 0 ? 'straight' : 'folded') : knee === 0 ? 'forward' : 'backward',
        foot: level ? 'level' : foot === 0 ? 'below' : 'above',
        freeJoints: [...(sidewaysHipFree ? (['sidewaysHip'] as const) : []), ...(hipFree ? (['hip'] as const) : [])],
        beyondLimits,
      })
    }
  }
  return { status, branches }
}

/** A free joint's angle: zero, or the limit nearest to it. */
const inRange = (angle: number, limits: LimitsSi, i: number) => Math.min(limits[2 * i + 1]!, Math.max(limits[2 * i]!, angle))
