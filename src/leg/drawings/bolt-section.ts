import { type Point, plain, rectangle, View } from '../../drawing/index.js'
import * as bolts from '../parts/bolts/fields.js'
import { bearingDiameter } from '../parts/bolts/values.js'
import type { Facts } from './facts.js'
import { layers, METAL, WASHER } from './words.js'

/** Sizes of a bolt and of what it clamps, mm. */
export const boltSizes = (facts: Facts, boltGroup: string) => {
  const at = { boltGroup }
  const milli = <T extends Readonly<Record<string, number>>>(row: T) =>
    Object.fromEntries(Object.entries(row).map(([name, x]) => [name, 1000 * x])) as { readonly [N in keyof T]: number }
  const head = milli(facts.get(bolts.head, at))
  const thread = milli(facts.get(bolts.thread, at))
  const instances = facts.calculation.instances
  return {
    head,
    thread,
    ring: milli(facts.get(bolts.ring, at)),
    nutSizes: milli(facts.get(bolts.nutSizes, at)),
    hole: facts.mm(bolts.holeDiameter, at),
    washers: facts.get(bolts.washers, at),
    sleeves: facts.get(bolts.sleeves, at),
    nut: facts.get(bolts.nut, at),
    count: facts.get(bolts.count, at),
    torque: facts.get(bolts.tighteningTorque, at),
    thick: facts.get(bolts.thicknesses, at).map((x) => 1000 * x),
    materials: facts.get(bolts.layers, at).map((of) => instances.name('material', of)),
    metal: facts.get(bolts.layers, at).map((of) => facts.isMetal(instances.name('material', of))),
    bearing: facts.mm(bearingDiameter, at),
    cone: facts.get(bolts.coneAngle),
    boss: facts.get(bolts.bossDiameter, at),
  }
}
export type Sizes = ReturnType<typeof boltSizes>

export const threadName = ({ thread }: Sizes) => `M${plain(thread.diameter)}`

/** Sum of some lengths. */
export const sum = (list: readonly number[]) => list.reduce((all, x) => all + x, 0)

/** The section of a bolt through its axis. */
export function boltSection(s: Sizes): View {
  const view = new View('Section through the axis', { height: 300 })
  const grip = sum(s.thick)
  const washer = s.washers ? s.ring.thickness : 0
  const sleeve = s.ring.outerDiameter / 2
  const wide = 1.9 * Math.max(sleeve, s.head.headDiameter / 2, s.bearing / 2)
  const hole = s.hole / 2
  const inner = s.sleeves ? sleeve : hole
  const both = (
    low: number,
    high: number,
    from: number,
    to: number,
    hatch: { angle: number; spacing: number },
    line: 'thick' | 'thin' = 'thick',
  ) => {
    for (const side of [1, -1])
      view.area(rectangle(...ordered(side * from, side * to, low, high)), { hatch: { ...hatch, angle: side * hatch.angle }, line })
  }
  let y = 0
  s.thick.forEach((t, i) => {
    both(
      y - t,
      y,
      inner,
      wide,
      s.metal[i] ? { ...METAL, angle: i % 2 === 0 ? METAL.angle : -METAL.angle } : layers('flat', i % 2 === 0 ? 4 : 7),
    )
    view.dimension([-wide, y - t], [-wide, y], 'left')
    view.label([wide * 0.8, y - t / 2], s.materials[i]!, { end: 'dot' })
    y -= t
  })
  if (s.sleeves) both(-grip, 0, hole, sleeve, METAL)
  if (s.washers) both(0, washer, hole, s.ring.outerDiameter / 2, WASHER)
  const nutDown = bottom(view, s, -grip, washer, both)
  screw(view, s, washer, nutDown)
  if (!s.sleeves) cone(view, s, grip)
  if (s.thick.length > 1) view.dimension([-wide, -grip], [-wide, 0], 'left')
  view.dimension(
    [-s.head.headDiameter / 2, washer + s.head.headHeight],
    [s.head.headDiameter / 2, washer + s.head.headHeight],
    'above',
    undefined,
    'Ø',
  )
  if (s.sleeves)
    view.label([sleeve - (sleeve - hole) / 3, -grip * 0.4], `sleeve Ø${plain(s.hole)} / Ø${plain(s.ring.outerDiameter)}`, { end: 'dot' })
  else view.label([hole, -grip * 0.45], `hole Ø${plain(s.hole)}`)
  return view
}

/** Nut, washer and end of the screw, or the tapped metal; returns the end of the screw. */
function bottom(
  view: View,
  s: Sizes,
  y: number,
  washer: number,
  both: (low: number, high: number, from: number, to: number, hatch: { angle: number; spacing: number }, line?: 'thick' | 'thin') => void,
): number {
  const hole = s.hole / 2
  if (s.nut === 'tappedMetal') {
    const depth = 1.5 * s.thread.diameter
    both(
      y - depth - s.thread.diameter / 2,
      y,
      s.thread.diameter / 2,
      1.9 * Math.max(s.ring.outerDiameter / 2, s.head.headDiameter / 2, s.bearing / 2),
      METAL,
      'thin',
    )
    view.label([s.ring.outerDiameter / 2, y - depth * 0.6], 'tapped metal, depth assumed', { end: 'dot' })
    return y - depth
  }
  if (s.washers) both(y - washer, y, hole, s.ring.outerDiameter / 2, WASHER)
  const top = y - washer
  const [half, height] = [s.nutSizes.acrossFlats / 2, s.nutSizes.height]
  view.area(rectangle(-half, top - height, half, top), { fill: 'paper' })
  view.label([half, top - height / 2], `nut, ${plain(s.nutSizes.acrossFlats)} across flats`)
  return top - height - 2 * s.thread.pitch
}

function screw(view: View, s: Sizes, washer: number, end: number): void {
  const { headDiameter, headHeight, keySize, keyDepth } = s.head
  const r = s.thread.diameter / 2
  const root = s.thread.rootDiameter / 2
  view.area(
    [
      [-r, end],
      [r, end],
      [r, washer],
      [headDiameter / 2, washer],
      [headDiameter / 2, washer + headHeight],
      [-headDiameter / 2, washer + headHeight],
      [-headDiameter / 2, washer],
      [-r, washer],
    ],
    { fill: 'paper' },
  )
  const top = washer + headHeight
  view.line(
    [
      [-keySize / 2, top],
      [-keySize / 2, top - keyDepth],
      [0, top - keyDepth - keySize / 4],
      [keySize / 2, top - keyDepth],
      [keySize / 2, top],
    ],
    'hidden',
  )
  for (const side of [1, -1])
    view.line(
      [
        [side * root, end],
        [side * root, washer - 1],
      ],
      'thin',
    )
  view.line(
    [
      [0, top + 2],
      [0, end - 2],
    ],
    'axis',
  )
  view.label([headDiameter / 2, washer + headHeight * 0.7], [`screw ${threadName(s)}`, `${plain(s.torque)} N m`])
  if (s.washers) view.label([s.ring.outerDiameter / 2, washer / 2], `washer Ø${plain(s.ring.outerDiameter)} × ${plain(s.ring.thickness)}`)
}

/** The cone of pressure, from under the head and from the nut to the middle. */
function cone(view: View, s: Sizes, grip: number): void {
  const start = s.bearing / 2
  const tapped = s.nut === 'tappedMetal'
  const down = tapped ? grip : grip / 2
  const reach = start + down * Math.tan(s.cone)
  const limit = s.boss === undefined ? reach : Math.min(reach, (1000 * s.boss) / 2)
  for (const side of [1, -1]) {
    const points: Point[] = [
      [side * start, 0],
      [side * limit, -down],
    ]
    view.line(tapped ? points : [...points, [side * start, -grip]], 'other')
  }
  view.label([start + (limit - start) / 2, -down / 2], `clamp cone, half angle ${plain((s.cone * 180) / Math.PI)}°`)
}

const ordered = (a: number, b: number, low: number, high: number): [number, number, number, number] => [
  Math.min(a, b),
  low,
  Math.max(a, b),
  high,
]
