import type { Loop, Round } from './value.js'

/** How a loop ended. */
export interface Settled {
  readonly x: number
  readonly rounds: number
  readonly settled: boolean
}

/**
 * Finds where a round leaves its number in place: plain rounds helped by the secant. What a round moves changes almost linearly with where it
 * starts, so the secant needs few rounds; a step more than three times the plain one is not trusted.
 */
export function settle({ start, within, most, highest = Number.POSITIVE_INFINITY }: Loop, round: (x: number) => Round): Settled {
  let x = start
  let last = Number.NaN
  let lastMoved = Number.NaN
  for (let rounds = 1; rounds <= most; rounds++) {
    const moved = round(x).next - x
    if (Number.isNaN(moved)) return { x, rounds, settled: false }
    if (Math.abs(moved) <= within) return { x, rounds, settled: true }
    const secant = (-moved * (x - last)) / (moved - lastMoved)
    last = x
    lastMoved = moved
    x += Math.abs(secant) < 3 * Math.abs(moved) ? secant : moved
    if (x > highest) x = last < highest ? (last + highest) / 2 : highest
    if (last >= highest && x >= highest) return { x: highest, rounds, settled: false }
  }
  return { x, rounds: most, settled: false }
}
