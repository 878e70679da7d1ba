import { rectangle, type View } from '../../drawing/index.js'
import { METAL, OTHER_METAL } from './words.js'

/** Sizes of a deep-groove ball bearing, mm. */
export interface BearingSizes {
  readonly bore: number
  readonly outer: number
  readonly width: number
}

/** Both rings and a ball of a bearing in section, above or below the axis; its middle stands at x. */
export function ballBearing(view: View, s: BearingSizes, x: number, side: 1 | -1): void {
  const [r, R] = [s.bore / 2, s.outer / 2]
  const ring = (R - r) * 0.28
  const band = (low: number, high: number) =>
    side === 1 ? rectangle(x - s.width / 2, low, x + s.width / 2, high) : rectangle(x - s.width / 2, -high, x + s.width / 2, -low)
  view.area(band(r, r + ring), { hatch: OTHER_METAL }).area(band(R - ring, R), { hatch: METAL })
  view.circle({ centre: [x, (side * (r + R)) / 2], radius: Math.min((R - r) * 0.29, s.width * 0.4) }, 'thin', 'paper')
}
