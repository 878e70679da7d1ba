import { plain, rectangle, View } from '../../drawing/index.js'
import { ballBearing } from './ball-bearing.js'
import type { ShaftSizes } from './shaft-sizes.js'
import { layers, METAL, OTHER_METAL } from './words.js'

/** Wheel on the shaft in the plane of the leg, mm. */
export interface Wheel {
  readonly kind: 'drum' | 'pulley' | 'wheel'
  /** Name of the part with this diameter. */
  readonly circle: 'cord circle' | 'pitch circle' | 'diameter'
  readonly length: number
  readonly outer: number
  readonly name: string
  readonly metal: boolean
  /** Whether its sizes are assumed. */
  readonly assumed: boolean
}

/** Half of the length that is drawn on the shaft: no more than there is room for beside the nearer bearing. */
export const halfDrawn = (s: ShaftSizes, wheel: Wheel): number => Math.min(wheel.length / 2, Math.max(1, s.overhang - s.width / 2 - 1))

/** Places along the shaft and radii of the section. The bearings' middles stand at 0 and at the spacing; the plane of the leg at spacing and overhang. */
const placesOf = (s: ShaftSizes, wheel: Wheel) => {
  const [r, R] = [s.diameter / 2, s.outer / 2]
  const plane = s.spacing + s.overhang
  const hubHalf = halfDrawn(s, wheel)
  return {
    r,
    R,
    plane,
    hubHalf,
    end: plane + hubHalf,
    hub: Math.min(wheel.outer / 2, s.stack?.key === undefined ? 1.6 * r + 4 : s.stack.key.hub / 2),
    // The ring in which two parts of the stack touch is the spacer between bearing and hub.
    spacer: s.stack === undefined ? ([r, r + 1.5] as const) : ([s.stack.inner / 2, s.stack.outer / 2] as const),
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
    for (const x of [0, s.spacing]) ballBearing(view, s, x, side)
  }
  solids(view, s, at)
  stackOf(view, s, at)
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
    .label(
      [s.spacing + s.width / 4, R],
      `bearing ${plain(s.bore)} × ${plain(s.outer)} × ${plain(s.width)}, seat Ø${plain(s.outer - s.interference, 6)}`,
    )
    .label([plane + hubHalf * 0.6, broken * 0.9], wheel.name, { end: 'dot' })
    .label([end + s.capThickness / 2, s.capSpan * 0.4], `cap, ${s.capMaterial}`, { end: 'dot' })
    .label([end + s.capThickness + s.inner.diameter, 0], `screw M${plain(s.inner.diameter)}`)
    .label([plane - hubHalf * 0.5, -(hub + r) / 2], 'hub', { end: 'dot' })
    .label([s.spacing / 2, -R - 2.5], `housing, ${s.seat}`, { end: 'dot', side: 'right' })
}

/** Housing, spacers, wheel and hub above or below the axis. */
function half(view: View, s: ShaftSizes, wheel: Wheel, { r, R, plane, hubHalf, end, hub, broken, spacer }: Places, side: 1 | -1): void {
  const band = (from: number, to: number, low: number, high: number) =>
    side === 1 ? rectangle(from, low, to, high) : rectangle(from, -high, to, -low)
  const housing = s.seatMetal ? METAL : layers('flat', 4)
  // It ends before what turns in the plane of the leg.
  const housingEnd = Math.min(s.spacing + s.width / 2 + 2, plane - hubHalf - 0.5)
  view.area(band(-s.width / 2 - 2, housingEnd, R, R + 5), { hatch: housing, line: 'thin' })
  view.area(band(s.width / 2, s.spacing - s.width / 2, r, r + 1.5), { hatch: METAL, line: 'thin' })
  view.area(band(s.spacing + s.width / 2, plane - hubHalf, ...spacer), {
    hatch: (s.stack?.metal ?? true) ? METAL : layers('upright', 6),
    line: s.stack === undefined ? 'thin' : 'thick',
  })
  view.area(band(plane - hubHalf, end, hub, broken), {
    hatch: wheel.metal ? METAL : layers('upright', 6),
    line: wheel.assumed ? 'thin' : 'thick',
  })
  view.area(band(plane - hubHalf, end, r, hub), {
    hatch: wheel.metal ? OTHER_METAL : layers('upright', 9),
    line: s.stack?.key === undefined ? 'thin' : 'thick',
  })
}

/** Clamping screw of the stack, contact ring of its parts, and its key. */
function stackOf(view: View, { stack, width, spacing, diameter }: ShaftSizes, { r, plane, spacer: [inner, outer] }: Places): void {
  if (stack === undefined) return
  const { key, flat } = stack
  view
    .label([spacing + width / 2 + 1, outer], `spacer Ø${plain(2 * outer)} / ${plain(2 * inner)}, ${stack.material}`)
    .label([-width / 2 - diameter * 0.4, diameter * 0.7], `head or nut, ${plain(stack.torque)} N m`, { end: 'dot', side: 'left' })
  if (flat !== undefined)
    view
      .area(rectangle(plane - flat.length / 2, r - flat.depth, plane + flat.length / 2, r), { fill: 'tone' })
      .label([plane - flat.length / 4, r - flat.depth / 2], `flat ${plain(flat.depth)} deep, ${plain(flat.length)} long`, { end: 'dot' })
  if (key === undefined) return
  const bottom = r - key.shaftDepth
  view
    .area(rectangle(plane - key.length / 2, bottom, plane + key.length / 2, bottom + key.height), { fill: 'paper' })
    .label([plane - key.length / 4, bottom + key.height / 2], `key ${plain(key.width)} × ${plain(key.height)} × ${plain(key.length)}`, {
      end: 'dot',
    })
}

/** The shaft with its key, across the axis. */
export function keySection({ diameter, stack }: ShaftSizes): View | undefined {
  const key = stack?.key
  if (key === undefined) return undefined
  const view = new View('Shaft and hub across the axis', { height: 220, template: true })
  const [r, half] = [diameter / 2, key.width / 2]
  const [bottom, top] = [r - key.shaftDepth, r + key.hubDepth]
  const shoulder = Math.sqrt(r ** 2 - half ** 2)
  view.circle({ centre: [0, 0], radius: key.hub / 2 }, 'thick', 'tone')
  view.circle({ centre: [0, 0], radius: r }, 'thick', 'paper').centre({ centre: [0, 0], radius: key.hub / 2 }, 1.05)
  // The keyway of the hub stands out of its bore, above the key.
  view.area(
    [
      [-half, shoulder],
      [-half, top],
      [half, top],
      [half, shoulder],
    ],
    { fill: 'paper', line: 'thin' },
  )
  view.area(rectangle(-half, bottom, half, bottom + key.height), { fill: 'tone' })
  return view
    .dimension([-half, top], [half, top], 'above')
    .dimension([-half, bottom], [0, r], 'left')
    .dimension([-half, -r], [-half, top], 'left')
    .label([0.7 * r, -0.7 * r], `shaft Ø${plain(diameter)}`)
    .label([0.35 * key.hub, -0.35 * key.hub], [`hub Ø${plain(key.hub)}`, key.hubMaterial])
    .label([half, bottom + key.height / 2], `key ${plain(key.width)} × ${plain(key.height)}`)
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
