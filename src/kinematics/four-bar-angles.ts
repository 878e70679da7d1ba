import type { FourBarSi } from './four-bar-specification.js'

const wrap = (angle: number) => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI))

/** Slack, relative to the linkage's size squared, for pins that touch to rounding. */
const TOUCHING = 8 * 2 ** -52

/** The angle between the sides `base` and `near` of a triangle by half angles, which cannot leave the domain of the arc cosine; NaN for no triangle. */
function triangleAngle(base: number, near: number, opposite: number): number {
  const wide = (base + near) * (base + near) - opposite * opposite
  const tight = opposite * opposite - (base - near) * (base - near)
  const slack = TOUCHING * (base + near) * (base + near)
  if (wide < -slack || tight < -slack) return Number.NaN
  return 2 * Math.atan2(Math.sqrt(Math.max(0, tight)), Math.sqrt(Math.max(0, wide)))
}

/**
 * Rocker and coupler directions from the crank's (2 numbers); `side` −1 is the open assembly, +1 the crossed one. SI numbers.
 * Returns why the linkage does not assemble, and then writes nothing; `undefined` where it does.
 */
export function rockerFromCrankInto(
  out: Float64Array,
  offset: number,
  { ground, crank, coupler, rocker }: FourBarSi,
  crankAngle: number,
  side: -1 | 1,
): 'pinTooFar' | 'pinTooNear' | undefined {
  const pinX = crank * Math.cos(crankAngle)
  const pinY = crank * Math.sin(crankAngle)
  const apart = Math.sqrt((pinX - ground) * (pinX - ground) + pinY * pinY)
  if (apart > (coupler + rocker) * (1 + TOUCHING)) return 'pinTooFar'
  const turn = triangleAngle(apart, rocker, coupler)
  if (Number.isNaN(turn)) return 'pinTooNear'
  const rockerAngle = wrap(Math.atan2(pinY, pinX - ground) + side * turn)
  out[offset] = rockerAngle
  out[offset + 1] = Math.atan2(rocker * Math.sin(rockerAngle) - pinY, ground + rocker * Math.cos(rockerAngle) - pinX)
  return undefined
}

/**
 * Crank and coupler directions from the rocker's, and the direction of the rocker's pin from the crank's pivot (3 numbers); `side` is the side of
 * that line the crank lies. The crank's direction is the line's, in (−π, π], plus the angle between them, not wrapped. SI numbers.
 * Returns whether the linkage assembles; where it does not, nothing is written.
 */
export function crankFromRockerInto(
  out: Float64Array,
  offset: number,
  { ground, crank, coupler, rocker }: FourBarSi,
  rockerAngle: number,
  side: -1 | 1,
): boolean {
  const pinX = ground + rocker * Math.cos(rockerAngle)
  const pinY = rocker * Math.sin(rockerAngle)
  const turn = triangleAngle(Math.sqrt(pinX * pinX + pinY * pinY), crank, coupler)
  if (Number.isNaN(turn)) return false
  const pinAngle = Math.atan2(pinY, pinX)
  const crankAngle = pinAngle + side * turn
  out[offset] = crankAngle
  out[offset + 1] = Math.atan2(pinY - crank * Math.sin(crankAngle), pinX - crank * Math.cos(crankAngle))
  out[offset + 2] = pinAngle
  return true
}
