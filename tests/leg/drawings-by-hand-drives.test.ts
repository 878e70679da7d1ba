// Drawings of rods, belts and direct drives, with their geometry worked by hand from the numbers of their documents.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg, legDrawings } from '../../src/leg/index.js'
import { shapesOf } from '../drawing/shapes.js'

const drawn = (leg: string, ...only: string[]) => {
  const text = readFileSync(new URL(`../../examples/${leg}-leg-revised.yaml`, import.meta.url), 'utf8')
  return legDrawings(assess(describeLeg(text), { cases: ['walk'] }), { only })
}
const [rod] = drawn('heath', 'rod-drive')
const [belt] = drawn('orchard', 'belt-drive-knee')
const [hip, knee] = drawn('desk', 'output-stack-hip', 'output-stack-knee')
type Drawn = NonNullable<typeof rod>
const cell = ({ table }: Drawn, name: string) => table.rows.find(([one]) => one === name)?.[1]
const value = (drawing: Drawn, name: string) => Number(cell(drawing, name)!.replace('−', '-'))
const closeAll = (rows: readonly (readonly number[])[]) => rows.map((row) => row.map((x) => expect.closeTo(x, 2)))
const DEG = Math.PI / 180
const polar = (radius: number, degrees: number, x = 0, y = 0) =>
  [x + radius * Math.cos(degrees * DEG), y + radius * Math.sin(degrees * DEG)] as const

describe('the rod of a knee', () => {
  // Crank and rocker of 34 mm stand parallel: both are 165 degrees behind the knee's angle, and the rod is as long as the upper link.
  const view = shapesOf(rod!, /^Crank, rod and rocker/)

  test('crank and rocker stand where the knee’s angle puts them, at both ends of its range', () => {
    expect([value(rod!, 'crank from straight down, knee at 25°'), value(rod!, 'crank from straight down, knee at 125°')]).toEqual([
      25 - 165,
      125 - 165,
    ])
    // Between two parallels the rod makes the angle of the crank with the upper link.
    expect([value(rod!, 'between rod and rocker, knee at 25°'), value(rod!, 'between rod and rocker, knee at 125°')]).toEqual([40, 40])
    for (const [i, angle] of [-140, -40].entries()) {
      const [x, y] = polar(34, angle - 90)
      expect(view.of('other')[2 * i]).toEqual(closeAll([[Math.min(x, 0), Math.min(-165, y - 165), Math.max(x, 0), Math.max(0, y)]])[0])
    }
    // The lower links: half as long as they would be on the scale of the rod.
    expect(view.ends('other').map(([x0, y0, x1, y1]) => Math.atan2(x1 - x0, y0 - y1) / DEG)).toEqual(
      [25, 125].map((at) => expect.closeTo(at, 2)),
    )
  })

  test('the pose between them is drawn with pins on crank and rocker', () => {
    expect(view.of('thick')).toEqual(closeAll([[-34, -165, 0, 0]]))
    expect(view.circles('thick').map(([x, y]) => [x, y])).toEqual([
      [-34, 0],
      [-34, -165],
      [0, 0],
      [0, -165],
    ])
    expect(view.of('axis')).toEqual([[0, -165, 0, 0]])
    expect(view.texts).toEqual(['165', 'knee at 25°', 'hip axis, drum', 'crank 34', 'knee at 125°', 'rod 165', 'rocker 34', 'knee'])
  })

  test('its pin is drawn in eye and cheeks, with the moment that they bring', () => {
    const pin = shapesOf(rod!, /^Pin of the rod/)
    const band = (left: number, right: number) => [
      [left, 2, right, 8],
      [left, -8, right, -2],
    ]
    expect(pin.of('thin')).toEqual(closeAll([...band(-5, 5), ...band(5.3, 11.3), ...band(-11.3, -5.3)]))
    expect(pin.of('thick')).toEqual(closeAll([[-11.3, -2, 11.3, 2]]))
    expect(pin.texts).toEqual(['6', '10', '6', '22.6', 'eye of the rod', 'cheek', 'pin Ø4', 'gap 0.3'])
    const pull = value(rod!, 'largest pull in the rod')
    expect(value(rod!, 'bending moment in the middle of the pin') / ((pull / 2) * (6 / 2 + 0.3 + 10 / 4))).toBeCloseTo(1, 2)
    expect(pull).toBeGreaterThan(value(rod!, 'largest push in the rod'))
    expect([cell(rod!, 'material of the rod'), value(rod!, 'diameter of the rod')]).toEqual(['aluminium 6061-T6', 8])
  })
})

describe('the belt of a knee', () => {
  const [small, large] = [(18 * 5) / (2 * Math.PI), (108 * 5) / (2 * Math.PI)]
  // Length of an open belt round two pulleys (Shigley, eq. 17-1), solved for the distance at 123 teeth of 5 mm.
  const lengthAt = (distance: number) => {
    const lean = Math.asin((large - small) / distance)
    return 2 * Math.sqrt(distance ** 2 - (large - small) ** 2) + large * (Math.PI + 2 * lean) + small * (Math.PI - 2 * lean)
  }
  const distance = value(belt!, 'distance of the axes, tensioned')

  test('the belt is as long as its teeth at the distance where it lies straight', () => {
    expect(lengthAt(value(belt!, 'distance of the axes, belt straight'))).toBeCloseTo(123 * 5, 0)
    expect(distance).toBeGreaterThan(value(belt!, 'distance of the axes, belt straight'))
    expect([value(belt!, 'pitch diameter of the small pulley') / 2, value(belt!, 'pitch diameter of the large pulley') / 2]).toEqual([
      expect.closeTo(small, 2),
      expect.closeTo(large, 1),
    ])
  })

  test('pulleys, motor and both ends of the adjustment are drawn, and the spans touch the pulleys', () => {
    const view = shapesOf(belt!, /^Along the axes/)
    const at = view.circles('thick')[1]![1]
    expect(at).toBeCloseTo(distance, 1)
    expect(view.circles('thick')).toEqual(
      closeAll([
        [0, 0, large],
        [0, at, small],
      ]),
    )
    expect(view.circles('hidden')).toEqual(closeAll([[0, at, 45]]))
    expect(view.circles('other')).toEqual(
      closeAll([
        [0, 127, small],
        [0, 133, small],
      ]),
    )
    const span = Math.sqrt(at ** 2 - (large - small) ** 2)
    expect(value(belt!, 'free span')).toBeCloseTo(span, 1)
    const lines = view.ends('move')
    expect(lines).toHaveLength(2)
    for (const [x0, y0, x1, y1] of lines) {
      expect(Math.hypot(x1 - x0, y1 - y0)).toBeCloseTo(span, 2)
      const ends = [Math.hypot(x0, y0), Math.hypot(x1, y1 - at)]
      expect(ends).toEqual([expect.closeTo(large, 2), expect.closeTo(small, 2)])
      expect(Math.sign(x0)).toBe(Math.sign(x1))
    }
    expect(view.texts).toEqual(expect.arrayContaining(['±3', 'motor Ø90', '18 teeth', '108 teeth', 'belt 123 teeth', 'of 5, 25 wide']))
  })

  test('a plucked span sounds as a string of its mass and tension; both spans pull on the axis', () => {
    // f = sqrt(F / m') / 2 L, 0.11 kg/m at 700 N.
    const span = value(belt!, 'free span') / 1000
    expect(value(belt!, 'pitch of a plucked span')).toBeCloseTo(Math.sqrt(700 / 0.11) / (2 * span), 0)
    const lean = Math.asin((large - small) / shapesOf(belt!, /^Along the axes/).circles('thick')[1]![1])
    expect(value(belt!, 'force on each axis at rest')).toBeCloseTo(2 * 700 * Math.cos(lean), 0)
  })
})

describe('a motor that turns its joint itself', () => {
  test('plate, motor and link stand along the axis, with the plane of the leg beside the middle of the bearings', () => {
    const view = shapesOf(hip!, /^Section along the axis/)
    // A plate of 5 mm, 78 high; a motor of Ø70 × 20; the middle of its bearings at 10, the plane of the leg 14 beyond.
    expect(view.of('thick').slice(0, 2)).toEqual(
      closeAll([
        [-5, -39, 0, 39],
        [0, -35, 20, 35],
      ]),
    )
    expect(view.of('thick')[2]![0]).toBe(20)
    expect(view.ends('other').map(([x]) => x)).toEqual([10, 24])
    expect(view.texts).toEqual(expect.arrayContaining(['14', '20', 'Ø70', 'motor', 'plate, PC', 'plane of the leg', 'link']))
    expect(hip!.description).toContain(
      'They bear 120 N across the axis and 2.4 N m of tilting. The plane of the leg is 14 mm beside their middle',
    )
  })

  test('a joint whose bearings carry the leg as well is drawn with its link about the plane, and says that both axes must be one', () => {
    const view = shapesOf(knee!, /^Section along the axis/)
    expect(view.of('thick').slice(0, 2)).toEqual(
      closeAll([
        [-4, -35, 0, 35],
        [0, -35, 20, 35],
      ]),
    )
    // The link of 14 mm lies about the plane, at 30.
    const [left, , right] = view.of('thick').at(-1)!
    expect([left, right]).toEqual([23, 37])
    expect(view.ends('other').map(([x]) => x)).toEqual([10, 30])
    expect(knee!.answer).toBe('Output of the knee')
    expect(knee!.description).toContain('A pin, a shaft or bearings carry the leg as well: their axis and that of the output must be one.')
    expect(cell(knee!, 'output bearing of the drive: is overloaded by what it carries')).toBeUndefined()
  })
})
