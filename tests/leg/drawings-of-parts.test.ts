// Views of single parts from sizes that are written here, with their geometry worked by hand.
import { describe, expect, test } from 'vitest'
import { type Drawing, distance, type View } from '../../src/drawing/index.js'
import { extensionFront, extensionPin, extensionSide } from '../../src/leg/drawings/extension-spring.js'
import { toothOutline } from '../../src/leg/drawings/gear-teeth.js'
import { seatSection } from '../../src/leg/drawings/seat-section.js'
import type { SeatSizes } from '../../src/leg/drawings/seat-sizes.js'
import { keySection } from '../../src/leg/drawings/shaft-section.js'
import type { ShaftSizes } from '../../src/leg/drawings/shaft-sizes.js'
import type { ExtensionSizes, TorsionSizes } from '../../src/leg/drawings/spring-sizes.js'
import { torsionSection } from '../../src/leg/drawings/torsion-spring.js'
import { shapesOf } from '../drawing/shapes.js'

const shown = (view: View) => {
  const place = { scale: 4, to: ([x, y]: readonly [number, number]) => [4 * x, -4 * y] as const }
  const drawing = { groups: [{ name: view.title, items: view.items(place), place }] } as unknown as Drawing
  return {
    ...shapesOf(drawing, /./),
    labels: view.labels.map(({ lines }) => lines.join(' ')),
    dimensions: view.dimensions.map(({ text }) => text),
  }
}
const closeAll = (rows: readonly (readonly number[])[]) => rows.map((row) => row.map((x) => expect.closeTo(x, 2)))
const mirrored = (...bands: number[][]) => closeAll([...bands, ...bands.map(([left, low, right, high]) => [left!, -high!, right!, -low!])])

describe('a ball bearing in its seat', () => {
  const seat: SeatSizes = {
    bore: 5,
    outer: 16,
    width: 5,
    spacing: undefined,
    housing: 24,
    housingIs: 'document',
    interference: 0.02,
    retainedBy: 'press',
    material: 'PC',
    metal: false,
    isInEye: false,
    axle: 'pin',
    beside: undefined,
    cap: undefined,
  }
  // A ring takes 0.28 of the height between bore and outside: 5.5 mm.
  const races = (x: number) => [
    [x - 2.5, 2.5, x + 2.5, 4.04],
    [x - 2.5, 6.46, x + 2.5, 8],
  ]

  test('seat, rings and pin stand about the axis', () => {
    const { of, circles, labels, dimensions } = shown(seatSection(seat))
    expect(of('thick').slice(0, -1)).toEqual(mirrored([-2.5, 8, 2.5, 12], ...races(0)))
    // The pin goes on by 0.4 of the bearing's diameter to the right and by 2 to the left.
    expect(of('thick').at(-1)).toEqual(closeAll([[-4.5, -2.5, 8.9, 2.5]])[0])
    expect(of('axis')).toEqual(closeAll([[-7.5, 0, 11.9, 0]]))
    expect(circles('thin')).toEqual(
      closeAll([
        [0, 5.25, 1.595],
        [0, -5.25, 1.595],
      ]),
    )
    expect(dimensions).toEqual(['5', 'Ø16', 'Ø24'])
    expect(labels).toEqual(['PC', 'seat Ø15.98 20 µm tight', 'pin Ø5'])
    expect(shown(seatSection({ ...seat, interference: -0.01 })).labels[1]).toBe('seat Ø16.01 10 µm loose')
  })

  test('a pair stands at its distance with spacers between its rings; rings that touch have none', () => {
    const { of, dimensions, labels } = shown(seatSection({ ...seat, spacing: 12 }))
    expect(of('thick').slice(0, -1)).toEqual(mirrored([-8.5, 8, 8.5, 12], ...races(-6), ...races(6)))
    expect(of('thin')).toEqual(
      closeAll([
        [-3.5, 2.5, 3.5, 4.04],
        [-3.5, 6.46, 3.5, 8],
        [-3.5, -4.04, 3.5, -2.5],
        [-3.5, -8, 3.5, -6.46],
      ]),
    )
    expect(dimensions).toEqual(['5', 'Ø16', 'Ø24', '12'])
    expect(labels).toContain('spacers, 7 long')
    const touching = shown(seatSection({ ...seat, spacing: 5 }))
    expect([touching.of('thin'), touching.labels.filter((one) => one.startsWith('spacers'))]).toEqual([[], []])
  })

  test('what stands beside it has its middle at its distance, and keeps clear of the bearing', () => {
    const arm = { offset: 10, thickness: 6, words: 'arm that holds the pin', both: false }
    const { of, dimensions, labels } = shown(seatSection({ ...seat, beside: arm }))
    // No taller than 1.6 bores.
    expect(of('thin')).toEqual(mirrored([7, 2.5, 13, 8]))
    expect(of('axis')[0]).toEqual([10, -11, 10, 11])
    expect(dimensions).toContain('10')
    expect(labels).toContain('arm that holds the pin')
    const both = shown(seatSection({ ...seat, beside: { ...arm, both: true } }))
    expect(both.of('thin')).toEqual(
      closeAll([
        [7, 2.5, 13, 8],
        [7, -8, 13, -2.5],
        [-13, 2.5, -7, 8],
        [-13, -8, -7, -2.5],
      ]),
    )
    const near = shown(seatSection({ ...seat, beside: { ...arm, offset: 0 } }))
    expect(near.of('thin')).toEqual(mirrored([3, 2.5, 6, 8]))
    expect(near.dimensions).not.toContain('0')
  })

  test('shoulder, cap and screw hold the inner ring', () => {
    const cap = { thread: 4, head: 7, torque: 1.2, shoulder: 8, rim: 7, edge: 12 }
    const { of, ends, labels } = shown(seatSection({ ...seat, retainedBy: 'cap', cap }))
    expect(of('thick').slice(7)).toEqual(
      closeAll([
        [2.5, -4, 5, 4],
        [-3.5, -3.5, -2.5, 3.5],
        [-5.9, -6, -3.5, 6],
        [-9.9, -3.5, -5.9, 3.5],
      ]),
    )
    expect(ends('hidden')).toEqual(
      closeAll([
        [-5.9, 2, 3.5, 2],
        [-5.9, -2, 3.5, -2],
      ]),
    )
    expect(labels).toEqual(expect.arrayContaining(['shoulder Ø8', 'cap, rim Ø7 edge Ø12 screw M4 1.2 N m']))
  })
})

test('a key sits in shaft and hub by the depths of its keyways', () => {
  const key = { width: 4, height: 4, shaftDepth: 2.5, hubDepth: 1.8, length: 10, hub: 22, hubMaterial: 'steel' }
  const view = keySection({ diameter: 12, stack: { key } } as unknown as ShaftSizes)!
  const { of, circles, labels, dimensions } = shown(view)
  expect(circles('thick')).toEqual([
    [0, 0, 11],
    [0, 0, 6],
  ])
  expect(of('thick')).toEqual([[-2, 3.5, 2, 7.5]])
  // The keyway of the hub stands out of the bore by its depth.
  expect(of('thin')).toEqual(closeAll([[-2, Math.sqrt(36 - 4), 2, 7.8]]))
  expect(dimensions).toEqual(['4', '2.5', '13.8'])
  expect(labels).toEqual(['shaft Ø12', 'hub Ø22 steel', 'key 4 × 4'])
  expect(keySection({ diameter: 12, stack: undefined } as unknown as ShaftSizes)).toBeUndefined()
})

describe('an extension spring', () => {
  const turned = ([x, y]: readonly [number, number], angle: number) =>
    [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)] as const
  const spring = {
    kind: 'extension',
    wire: 1,
    coil: 8,
    coils: 10,
    freeLength: 30,
    hook: 4,
    hookGiven: false,
    bend: 1,
    bendGiven: true,
    pin: 4,
    depth: 8,
    arm: 3,
    holder: 'PC',
    mostForce: 56.78,
    fixed: [-10, 25],
    straight: [0, -40],
    travel: [0.5, 1.5],
    movingAt: (angle: number) => turned([0, -40], angle),
    state: (angle: number) => ({ length: 60 + 10 * angle, arm: 5, force: 10 }),
  } as unknown as ExtensionSizes

  test('both pins from the axis: the moving one with the joint straight, and at both ends of its travel', () => {
    const { circles, ends, dimensions, labels } = shown(extensionFront(spring, 'knee'))
    const [low, high] = [turned([0, -40], 0.5), turned([0, -40], 1.5)]
    expect(circles('other')).toEqual(
      closeAll([
        [...low, 2],
        [...high, 2],
      ]),
    )
    expect(circles('thick')).toEqual([
      [0, -40, 2],
      [-10, 25, 2],
    ])
    expect(ends('other')).toEqual(closeAll([[-10, 25, ...low]]))
    expect(ends('axis').at(-1)).toEqual(closeAll([[-10, 25, ...high]])[0])
    // The fixed pin is 25 above and 10 in front; the moving one straight below.
    expect(dimensions).toEqual(['25', '10', '40'])
    expect(labels).toEqual([
      'axis of the knee',
      'fixed pin Ø4',
      'moving pin Ø4 knee straight',
      'knee at 28.6° 65 long',
      'knee at 85.9° 75 long',
    ])
    const aside = shown(extensionFront({ ...spring, fixed: [0, 25], straight: [5, -40] } as never, 'knee'))
    expect(aside.dimensions).toEqual(['25', '40', '5'])
  })

  test('unloaded from the side: hooks inside the free length, a body of its coils and one more wire', () => {
    const { of, circles, ends, dimensions, labels } = shown(extensionSide(spring))
    expect(of('thick')).toEqual(closeAll([[-5.5, -4.5, 5.5, 4.5]]))
    // Insides of the hooks 30 apart, their mean radius 4.
    expect(circles('thick')).toEqual(
      closeAll([
        [11.5, 0, 3.5],
        [11.5, 0, 4.5],
        [-11.5, 0, 3.5],
        [-11.5, 0, 4.5],
      ]),
    )
    expect(ends('thin').map(([x0, , x1]) => (x0 + x1) / 2)).toEqual(Array.from({ length: 10 }, (_, i) => expect.closeTo(-5.5 + (i + 1), 2)))
    expect(of('axis')).toEqual([[-19, 0, 19, 0]])
    expect(dimensions).toEqual(['30', 'Ø8'])
    expect(labels).toEqual(['wire Ø1 10 coils', 'hook R4, assumed', 'bend R1'])
    // Of many coils five at each end are drawn.
    const long = shown(extensionSide({ ...spring, coils: 20, freeLength: 60, hookGiven: true, bendGiven: false }))
    expect(long.ends('thin')).toHaveLength(10)
    expect(long.labels.slice(1)).toEqual(['hook R4', 'bend R1, assumed'])
    expect(shown(extensionSide({ ...spring, coils: 15, freeLength: 60 })).ends('thin')).toHaveLength(15)
  })

  test('its pin goes into the holder as deep as the document says, and a wire beyond the hook', () => {
    const { of, circles, dimensions, labels } = shown(extensionPin(spring, true))
    expect(of('thin')).toEqual(closeAll([[-10, -4.4, 0, 4.4]]))
    expect(of('thick')).toEqual([[-8, -2, 4, 2]])
    expect(circles('thick')).toEqual([[3, -2.5, 0.5]])
    expect(of('axis')).toEqual([[-12, 0, 7, 0]])
    expect(dimensions).toEqual(['8', '3', 'Ø4'])
    expect(labels).toEqual(['hook, 56.8 N at most', 'PC'])
  })
})

describe('a torsion spring in section', () => {
  const spring = (coils: number, mandrel?: number) =>
    ({ kind: 'torsion', wire: 2, coil: 16, coils, mandrel, bodyLength: () => 2 * (coils + 1) }) as unknown as TorsionSizes

  test('coils lie beside each other on the mandrel, half a pitch lower on the other side', () => {
    const { of, circles, dimensions, labels } = shown(torsionSection(spring(3.25, 12)))
    expect(circles('thick').filter(([, y]) => y > 0)).toEqual([1, 3, 5, 7].map((x) => [x, 8, 1]))
    expect(circles('thick').filter(([, y]) => y < 0)).toEqual([2, 4, 6].map((x) => [x, -8, 1]))
    expect(of('thin')).toEqual(closeAll([[-2, -6, 10.5, 6]]))
    expect(of('axis')).toEqual(closeAll([[-3, 0, 11.5, 0]]))
    expect(dimensions).toEqual(['8.5', 'Ø16'])
    expect(labels).toEqual(['wire Ø2 3.25 coils', 'mandrel Ø12'])
    expect(
      shown(torsionSection(spring(3.5)))
        .circles('thick')
        .filter(([, y]) => y < 0),
    ).toHaveLength(4)
    expect(shown(torsionSection(spring(3.5))).of('thin')).toEqual([])
  })

  test('of a long one four coils at each end are drawn, with dash-two-dots between', () => {
    const { circles, ends } = shown(torsionSection(spring(20)))
    expect(
      circles('thick')
        .filter(([, y]) => y > 0)
        .map(([x]) => x),
    ).toEqual([1, 3, 5, 7, 35, 37, 39, 41])
    expect(ends('other')).toEqual([9, 7, -7, -9].map((y) => [8, y, 34, y]))
    expect(
      shown(torsionSection(spring(12)))
        .circles('thick')
        .filter(([, y]) => y > 0),
    ).toHaveLength(13)
  })
})

test('a tooth is half a pitch thick on the pitch circle, less its thinning, between root and tip', () => {
  const [module, teeth] = [2, 20]
  const outline = toothOutline({ centre: [0, 0], teeth, module, thinning: 0 }, Math.PI / 2, 1)
  const radii = outline.map((point) => distance(point, [0, 0]))
  expect([Math.min(...radii), Math.max(...radii)]).toEqual([expect.closeTo(20 - 2.5, 9), expect.closeTo(22, 9)])
  // Symmetric about its direction.
  for (const [i, [x, y]] of outline.entries()) {
    const [ox, oy] = outline[outline.length - 1 - i]!
    expect([x, y]).toEqual([expect.closeTo(-ox, 9), expect.closeTo(oy, 9)])
  }
  // An involute: its angle to the middle changes as tan a - a, a = acos(base / radius).
  const base = 20 * Math.cos((20 * Math.PI) / 180)
  const inv = (radius: number) => Math.sqrt((radius / base) ** 2 - 1) - Math.acos(base / radius)
  for (const point of outline.filter((one) => distance(one, [0, 0]) > base + 1e-9)) {
    const half = Math.abs(Math.PI / 2 - Math.atan2(point[1], point[0]))
    expect(half).toBeCloseTo(Math.PI / 2 / teeth + inv(20) - inv(distance(point, [0, 0])), 9)
  }
  const thinned = toothOutline({ centre: [0, 0], teeth, module, thinning: 0.1 }, Math.PI / 2, 1)
  const [at, thin] = [outline, thinned].map((one) => one[5]!) as [readonly [number, number], readonly [number, number]]
  expect((Math.atan2(thin[1], thin[0]) - Math.atan2(at[1], at[0])) * 2 * 20).toBeCloseTo(0.1, 9)
  const three = toothOutline({ centre: [1, 2], teeth, module, thinning: 0 }, 0, 3)
  expect(three).toHaveLength(3 * outline.length)
  const middle = (i: number) => {
    const [first, last] = [three[i * outline.length]!, three[(i + 1) * outline.length - 1]!]
    return Math.atan2((first[1] + last[1]) / 2 - 2, (first[0] + last[0]) / 2 - 1)
  }
  expect([0, 1, 2].map(middle)).toEqual([-1, 0, 1].map((k) => expect.closeTo((k * 2 * Math.PI) / teeth, 9)))
})
