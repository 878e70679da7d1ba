import { plain, rectangle, View } from '../../drawing/index.js'
import type { ShaftSizes } from './shaft-sizes.js'
import { layers, METAL, OTHER_METAL } from './words.js'

/** What sits on the shaft in the plane of the leg, mm. */
export interface Wheel {
  readonly length: number
  readonly outer: number
  readonly name: string
  readonly metal: boolean
}

/** Places along the shaft and radii of the section. The bearings' middles stand at 0 and at the spacing; the plane of the leg at spacing and overhang. */
const placesOf = (s: ShaftSizes, wheel: Wheel) => {
  const [r, R] = [s.diameter / 2, s.outer / 2]
  const plane = s.spacing + s.overhang
  const hubHalf = Math.min(wheel.length / 2, Math.max(1, s.overhang - s.width / 2 - 1))
  return {
    r,
    R,
    plane,
    hubHalf,
    end: plane + hubHalf,
    hub: Math.min(wheel.outer / 2, 1.6 * r + 4),
    broken: Math.min(wheel.outer / 2, R + 8),
  }
}
type Places = ReturnType<typeof placesOf>

/** The shaft in its bearings with hub, cap and screw. */
export function shaftSection(s: ShaftSizes, wheel: Wheel): View {
  const view = new View('Section along the axis', { height: 260, numbered: true })
  const at = placesOf(s, wheel)
  const { R, plane, hubHalf, end, hub, broken, r } = at
  for (const side of [1, -1] as const) {
    half(view, s, wheel, at, side)
    for (const x of [0, s.spacing]) bearing(view, s, x, side)
  }
  solids(view, s, at)
  view.line(
    [
      [-s.width / 2 - s.diameter - 2, 0],
      [end + s.capThickness + s.inner.diameter + 3, 0],
    ],
    'axis',
  )
  view.line(
    [
      [plane, -broken - 3],
      [plane, broken + 3],
    ],
    'axis',
  )
  return view
    .dimension([0, -R], [s.spacing, -R], 'below')
    .dimension([s.spacing, -R], [plane, -broken], 'below')
    .label([s.spacing + s.width / 4, R * 0.9], `bearing ${plain(s.bore)} × ${plain(s.outer)} × ${plain(s.width)}`)
    .label([plane + hubHalf * 0.6, broken * 0.9], wheel.name, { end: 'dot' })
    .label([end + s.capThickness / 2, s.capSpan * 0.4], `cap, ${s.capMaterial}`, { end: 'dot' })
    .label([end + s.capThickness + s.inner.diameter, 0], `screw M${plain(s.inner.diameter)}`)
    .label([plane - hubHalf * 0.5, -(hub + r) / 2], 'hub', { end: 'dot' })
    .label([s.spacing / 2, -R - 2.5], `housing, ${s.seat}`, { end: 'dot', side: 'right' })
}

/** Housing, spacers, wheel and hub above or below the axis. */
function half(view: View, s: ShaftSizes, wheel: Wheel, { r, R, plane, hubHalf, end, hub, broken }: Places, side: 1 | -1): void {
  const band = (from: number, to: number, low: number, high: number) =>
    side === 1 ? rectangle(from, low, to, high) : rectangle(from, -high, to, -low)
  const housing = s.seatMetal ? METAL : layers('flat', 4)
  view.area(band(-s.width / 2 - 2, s.spacing + s.width / 2 + 2, R, R + 5), { hatch: housing, line: 'thin' })
  view.area(band(s.width / 2, s.spacing - s.width / 2, r, r + 1.5), { hatch: METAL, line: 'thin' })
  view.area(band(s.spacing + s.width / 2, plane - hubHalf, r, r + 1.5), { hatch: METAL, line: 'thin' })
  view.area(band(plane - hubHalf, end, hub, broken), { hatch: wheel.metal ? METAL : layers('upright', 6) })
  view.area(band(plane - hubHalf, end, r, hub), { hatch: wheel.metal ? OTHER_METAL : layers('upright', 9), line: 'thin' })
}

/** Shaft, head, cap and screw, and the hidden thread of the screw. */
function solids(view: View, s: ShaftSizes, { r, end }: Places): void {
  const head = s.diameter
  view.area(rectangle(-s.width / 2, -r, end, r), { fill: 'paper' })
  view.area(rectangle(-s.width / 2 - head * 0.64, -head * 0.8, -s.width / 2, head * 0.8), { line: 'thin', fill: 'paper' })
  view.area(rectangle(end, -s.capSpan / 2, end + s.capThickness, s.capSpan / 2), { hatch: s.capMetal ? OTHER_METAL : layers('upright', 4) })
  view.area(rectangle(end + s.capThickness, -s.inner.diameter * 0.85, end + s.capThickness + s.inner.diameter, s.inner.diameter * 0.85), {
    fill: 'paper',
  })
  const [deep, major] = [end - s.engagement, s.inner.diameter / 2]
  view.line(
    [
      [deep, -major],
      [deep, major],
    ],
    'hidden',
  )
  for (const side of [1, -1])
    view.line(
      [
        [deep, side * major],
        [end, side * major],
      ],
      'hidden',
    )
}

function bearing(view: View, s: ShaftSizes, x: number, side: 1 | -1): void {
  const [r, R] = [s.bore / 2, s.outer / 2]
  const ring = (R - r) * 0.28
  const band = (low: number, high: number) =>
    side === 1 ? rectangle(x - s.width / 2, low, x + s.width / 2, high) : rectangle(x - s.width / 2, -high, x + s.width / 2, -low)
  view.area(band(r, r + ring), { hatch: OTHER_METAL }).area(band(R - ring, R), { hatch: METAL })
  view.circle({ centre: [x, (side * (r + R)) / 2], radius: Math.min((R - r) * 0.29, s.width * 0.4) }, 'thin', 'paper')
}
