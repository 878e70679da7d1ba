import { type FootForces, footForces, type NoFootForces } from './foot-forces.js'

/** Writes each leg's part of the weight; returns the largest part of friction in use, NaN where the feet cannot hold the weight. */
export function shareWeight(
  share: Float64Array,
  standing: readonly { leg: number; x: number; y: number }[],
  weightAt: { x: number; y: number },
  spec: {
    mass: number
    slope: number
    uphill: number
    friction: number
    gravity: number
    centreOfMass: { x: number; y: number; z: number }
  },
): number {
  const { mass, slope, uphill, friction, gravity: g, centreOfMass: c } = spec
  if (standing.length === 2) {
    const [a, b] = standing as [(typeof standing)[number], (typeof standing)[number]]
    const along =
      ((weightAt.x - a.x) * (b.x - a.x) + (weightAt.y - a.y) * (b.y - a.y)) / Math.max((b.x - a.x) ** 2 + (b.y - a.y) ** 2, 1e-30)
    const of = Math.min(1, Math.max(0, along))
    share[a.leg] = 1 - of
    share[b.leg] = of
    return Number.NaN
  }
  if (standing.length === 1) share[standing[0]!.leg] = 1
  if (standing.length < 3) return Number.NaN
  const m = (x: number) => [x, 'm'] as const
  const answer: FootForces | NoFootForces = footForces({
    feet: standing.map(({ x, y }) => ({ at: { x: m(x), y: m(y), z: m(0) } })),
    friction,
    mass: [mass, 'kg'],
    centreOfMass: { x: m(c.x), y: m(c.y), z: m(c.z) },
    gravity: {
      x: [-g * Math.sin(slope) * Math.cos(uphill), 'm/s^2'],
      y: [-g * Math.sin(slope) * Math.sin(uphill), 'm/s^2'],
      z: [-g * Math.cos(slope), 'm/s^2'],
    },
  })
  if (!answer.feasible) {
    share.fill(Number.NaN)
    return Number.NaN
  }
  standing.forEach(({ leg }, k) => {
    share[leg] = answer.normals[k]!.si / (mass * g * Math.cos(slope))
  })
  return answer.worstUse.si
}
