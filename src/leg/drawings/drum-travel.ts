import { type Figure, type Point, plain, plotBlock } from '../../drawing/index.js'
import { rangeOf } from '../numbers.js'
import { drumRange } from '../plans/bench.js'
import { throughGeometry } from '../plans/through-geometry.js'
import { capital, type Facts } from './facts.js'
import { angle, degrees } from './words.js'

const TRAVEL_STEPS = 12

/** How far the drum on the hip axis that drives the knee turns: over the travel of the knee, with the hip at either end of its own. */
export function drumTravel(figure: Figure, facts: Facts, turned: string): void {
  const { leg } = facts
  const geometry = throughGeometry(leg.x)
  if (geometry === undefined) return
  const hip = rangeOf(leg.x, 'hip')
  const { lowest, highest } = drumRange(leg, 'knee')
  const curve = (at: number): Point[] =>
    Array.from({ length: TRAVEL_STEPS + 1 }, (_, i) => {
      const knee = geometry.lowest + (i / TRAVEL_STEPS) * (geometry.highest - geometry.lowest)
      return [degrees(knee), degrees(geometry.drum(at, knee))]
    })
  figure.block(`${capital(turned)} on the hip axis over the travel of the knee`, (y) =>
    plotBlock(
      {
        x: { title: 'knee, °' },
        y: { title: `${turned}, °` },
        curves: [
          { points: curve(hip.highest), line: 'thick', label: `hip at ${plain(degrees(hip.highest), 3)}°` },
          { points: curve(hip.lowest), line: 'hidden', label: `hip at ${plain(degrees(hip.lowest), 3)}°` },
        ],
        height: 90,
      },
      y,
    ),
  )
  figure.rows(
    angle(`${turned} on the hip axis, lowest angle`, lowest, 'geometry'),
    angle(`${turned} on the hip axis, highest angle`, highest, 'geometry'),
  )
}
