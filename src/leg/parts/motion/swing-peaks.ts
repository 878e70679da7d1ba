/** A peak is found when the next parabola would raise it by less than this part of it. */
const PEAK_TOLERANCE = 1e-6
const MAX_STEPS = 4

/** Quantities of which the largest values of a swing are looked for. */
export interface Watched {
  /** Each at the last moment taken. */
  now(): readonly number[]
  /** The largest so far of one of them. */
  most(quantity: number): number
}

/** What is watched, at a phase of the swing. */
interface Sample {
  readonly phase: number
  readonly values: readonly (readonly number[])[]
}

/**
 * Takes the moments of a swing in which a torque, a speed or an angle of a joint is largest: parabolas through three moments that have a peak between them, step by
 * step. It gives a peak up as soon as it cannot become the largest of the swing, after a step or two, where `minimiseScalar` goes on to its last digit. Source: Brent, Algorithms for Minimization without Derivatives, 1973, ch. 5, "successive parabolic interpolation".
 */
export function takeSwingPeaks(watched: readonly Watched[], samples: readonly Sample[], take: (phase: number) => void): void {
  for (const [k, quantity] of watched.entries()) {
    const value = (q: number, i: number) => samples[i]!.values[k]![q]!
    const point = (q: number, i: number): Point => [samples[i]!.phase, value(q, i)]
    for (let i = 1; i < samples.length - 1; i++)
      for (let q = 0; q < samples[i]!.values[k]!.length; q++) {
        if (value(q, i) < value(q, i - 1) || value(q, i) < value(q, i + 1)) continue
        const at = (phase: number) => {
          take(phase)
          return quantity.now()[q]!
        }
        climb([point(q, i - 1), point(q, i), point(q, i + 1)], () => quantity.most(q), at)
      }
  }
}

type Point = readonly [phase: number, value: number]

/** Goes to the top between three points, unless it is lower than what there is already: where the rise to the middle once more would not reach that. */
function climb([a, b, c]: readonly [Point, Point, Point], max: () => number, at: (phase: number) => number): void {
  let [left, top, right] = [a, b, c]
  let doubt = (top[1] - Math.min(left[1], right[1])) / 4
  for (let step = 0; step < MAX_STEPS; step++) {
    const [phase, height] = vertex(left, top, right)
    if (!(height - top[1] > PEAK_TOLERANCE * Math.abs(height) && height + doubt > max())) return
    const found: Point = [phase, at(phase)]
    doubt = Math.abs(found[1] - height)
    const isHigher = found[1] > top[1]
    if (phase < top[0]) {
      if (isHigher) right = top
      else left = found
    } else if (isHigher) left = top
    else right = found
    if (isHigher) top = found
  }
}

/** The top of the parabola through three points, of which the middle one is the highest; not a number where they are level. */
function vertex([x, fx]: Point, [y, fy]: Point, [z, fz]: Point): Point {
  const [before, after] = [(fy - fx) / (y - x), (fz - fy) / (z - y)]
  const bend = (after - before) / (z - x)
  const at = (x + y) / 2 - before / (2 * bend)
  return [at, fy - bend * (at - y) ** 2]
}
