import { formula } from '../formula/index.js'
import type { ThreeJointLeg } from './leg.js'
import { LINK_LENGTHS } from './link-inputs.js'

/** Volume a foot can reach when no joint has a limit. It does not depend on the sideways offset of the hip: what the offset adds at the rim the hole around the axis takes. */
export const workspaceVolume = /* @__PURE__ */ formula('kinematics.workspaceVolume', {
  inputs: {
    ...LINK_LENGTHS,
  },
  /** Volume of all places the foot can reach. */
  output: 'volume',
  equation: ['result = 4 * pi / 3 * ((upperLink + lowerLink)^3 - abs(upperLink - lowerLink)^3)'],
  assumes: ['no joint limits, no parts in the way'],
  source: [{ level: 'computed', where: 'spherical shell less the cylinder of the offset (napkin-ring theorem)' }],
  si: ({ upperLink, lowerLink }) => ((4 * Math.PI) / 3) * ((upperLink + lowerLink) ** 3 - Math.abs(upperLink - lowerLink) ** 3),
})

/** Area a foot can reach in the leg plane between joint limits, for one sense of the knee. */
export const sagittalArea = /* @__PURE__ */ formula('kinematics.sagittalArea', {
  inputs: {
    ...LINK_LENGTHS,
    /** Range of the hip, highest less lowest; at most a full turn. */
    hipRange: { kind: 'angle', min: 0, max: '1 turn' },
    /** Knee angle at one limit: from 0 to 180 deg for a forward knee, from -180 deg to 0 for a backward one. */
    kneeFrom: { kind: 'angle', min: '-180 deg', max: '180 deg' },
    /** Knee angle at the other limit, on the same side of straight. */
    kneeTo: { kind: 'angle', min: '-180 deg', max: '180 deg' },
  },
  /** Area in the leg plane. */
  output: 'area',
  equation: ['result = upperLink * lowerLink * hipRange * abs(cos(kneeFrom) - cos(kneeTo))'],
  assumes: ['knee bends one way only, so that no place is counted twice'],
  requires: {
    kneeTo: { accepts: 'must be on the same side of straight as kneeFrom', holds: ({ kneeFrom, kneeTo }) => kneeFrom * kneeTo >= 0 },
  },
  source: [{ level: 'computed', where: 'integral of |det J| = l1 l2 |sin q3| over the joint ranges' }],
  si: ({ upperLink, lowerLink, hipRange, kneeFrom, kneeTo }) =>
    upperLink * lowerLink * hipRange * Math.abs(Math.cos(kneeFrom) - Math.cos(kneeTo)),
})

/** Volume a foot can reach between joint limits, for one sense of the knee and the foot on one side of the hip axis throughout. */
export const limitedWorkspaceVolume = /* @__PURE__ */ formula('kinematics.limitedWorkspaceVolume', {
  inputs: {
    ...LINK_LENGTHS,
    /** Range of the sideways hip, highest less lowest; at most a full turn. */
    sidewaysHipRange: { kind: 'angle', min: 0, max: '1 turn' },
    /** Lowest hip angle. */
    hipFrom: { kind: 'angle', min: '-180 deg', max: '180 deg' },
    /** Highest hip angle. */
    hipTo: { kind: 'angle', min: '-180 deg', max: '180 deg' },
    /** Lowest knee angle: from 0 to 180 deg for a forward knee, from -180 deg to 0 for a backward one. */
    kneeFrom: { kind: 'angle', min: '-180 deg', max: '180 deg' },
    /** Highest knee angle, on the same side of straight. */
    kneeTo: { kind: 'angle', min: '-180 deg', max: '180 deg' },
  },
  /** Volume between the limits. */
  output: 'volume',
  assumes: ['knee bends one way only', 'no parts in the way'],
  requires: {
    hipTo: { accepts: 'must be above hipFrom', holds: ({ hipFrom, hipTo }) => hipTo > hipFrom },
    kneeTo: {
      accepts: 'must be above kneeFrom and on the same side of straight',
      holds: ({ kneeFrom, kneeTo }) => kneeTo > kneeFrom && kneeFrom * kneeTo >= 0,
    },
  },
  valid: {
    'foot on one side of the hip axis everywhere between the limits (otherwise the part above it is taken off, not added)': (x) => {
      const [lowest, highest] = heightRange(x.upperLink, x.lowerLink, x.hipFrom, x.hipTo, x.kneeFrom, x.kneeTo)
      const rounding = 1e-12 * (x.upperLink + x.lowerLink)
      return lowest >= -rounding || highest <= rounding
    },
  },
  source: [{ level: 'computed', where: 'integral of |det J| = l1 l2 |sin q3| h over the joint ranges, in closed form' }],
  si: ({ upperLink: l1, lowerLink: l2, sidewaysHipRange, hipFrom, hipTo, kneeFrom, kneeTo }) => {
    // ∫ sin q3 sin(q2 + q3) dq3 = q3 cos q2 / 2 − sin(2 q3 + q2) / 4.
    const shank = (q2: number) =>
      0.5 * (kneeTo - kneeFrom) * Math.cos(q2) - 0.25 * (Math.sin(2 * kneeTo + q2) - Math.sin(2 * kneeFrom + q2))
    return Math.abs(
      sidewaysHipRange *
        l1 *
        l2 *
        (l1 * (Math.sin(hipTo) - Math.sin(hipFrom)) * (Math.cos(kneeFrom) - Math.cos(kneeTo)) + l2 * (shank(hipTo) - shank(hipFrom))),
    )
  },
})

/** Whether a range holds an even and an odd multiple of π. */
const multiplesOfPi = (low: number, high: number): readonly [even: boolean, odd: boolean] => {
  const holds = (first: number) => first + 2 * Math.PI * Math.ceil((low - first) / (2 * Math.PI)) <= high
  return [holds(0), holds(Math.PI)]
}

/**
 * Lowest and highest height of the hip axis over the foot in the leg plane, l1 cos q2 + l2 cos(q2 + q3), along the edge of the box of hip and knee limits.
 * Only the signs matter: both that occur inside occur on the edge.
 */
function heightRange(l1: number, l2: number, low2: number, high2: number, low3: number, high3: number): [number, number] {
  const heights: number[] = []
  // With one joint at a limit the height is a cosine of the other: its ends, and its crests where they are inside.
  const cosine = (size: number, lean: number, offset: number, low: number, high: number) => {
    const [even, odd] = multiplesOfPi(low + lean, high + lean)
    heights.push(offset + size * Math.cos(low + lean), offset + size * Math.cos(high + lean))
    if (even) heights.push(offset + size)
    if (odd) heights.push(offset - size)
  }
  for (const q2 of [low2, high2]) cosine(l2, q2, l1 * Math.cos(q2), low3, high3)
  for (const q3 of [low3, high3]) {
    const [across, along] = [l2 * Math.sin(q3), l1 + l2 * Math.cos(q3)]
    cosine(Math.hypot(across, along), Math.atan2(across, along), 0, low2, high2)
  }
  return [Math.min(...heights), Math.max(...heights)]
}

/** Why the reachable space may overlap itself. */
export type OverlapReason = 'kneeBothWays' | 'footAboveHip' | 'sidewaysHipBeyondTurn' | 'hipBeyondTurn'

/**
 * Whether joint limits let the reachable space overlap itself: the knee may bend both ways, the foot be below the hip axis and above it, or a joint turn
 * more than once round. Integrals over joint angles then count places more than once.
 */
export function workspaceOverlaps(leg: ThreeJointLeg): { readonly overlaps: boolean; readonly because: readonly OverlapReason[] } {
  const { upperLink: l1, lowerLink: l2 } = leg.si
  const [low1, high1, low2, high2, low3, high3] = leg.limitsSi as unknown as [number, number, number, number, number, number]
  const because: OverlapReason[] = []
  const once = (low: number, high: number) => (high - low < 2 * Math.PI ? ([low, high] as const) : ([-Math.PI, Math.PI] as const))
  // The knee's bend changes sides where it is straight or folded, not where it only comes to be.
  const inside = 1e-12
  if (multiplesOfPi(low3 + inside, high3 - inside).includes(true) || !Number.isFinite(high3 - low3)) because.push('kneeBothWays')
  if (high1 - low1 > 2 * Math.PI) because.push('sidewaysHipBeyondTurn')
  if (high2 - low2 > 2 * Math.PI) because.push('hipBeyondTurn')
  const [lowest, highest] = heightRange(l1, l2, ...once(low2, high2), ...once(low3, high3))
  if (lowest < -1e-12 * l1 && highest > 1e-12 * l1) because.push('footAboveHip')
  return { overlaps: because.length > 0, because }
}
