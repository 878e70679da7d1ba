// Drawings of one leg, with their geometry worked by hand from the numbers of its document.
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg, legDrawings } from '../../src/leg/index.js'
import { type Shapes, shapesOf } from '../drawing/shapes.js'

const leg = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
const drawings = legDrawings(assess(leg, { cases: ['walk'] }))
const named = (id: string) => drawings.find((one) => one.id === id)!
const view = (id: string, title: RegExp): Shapes => shapesOf(named(id), title)
const cells = (id: string) => new Map(named(id).table.rows.map(([name, value, unit, source]) => [name, { value, unit, source }]))
const value = (id: string, name: string) => Number(cells(id).get(name)!.value!.replace('−', '-'))
const close = (numbers: readonly number[]) => numbers.map((x) => expect.closeTo(x, 2))
const closeAll = (rows: readonly (readonly number[])[]) => rows.map(close)
/** A band above the axis and the same one below it. */
const mirrored = (...bands: readonly (readonly number[])[]) =>
  closeAll([...bands, ...bands.map(([left, bottom, right, top]) => [left!, -top!, right!, -bottom!])])
const DEG = Math.PI / 180
const polar = (radius: number, degrees: number, [x, y] = [0, 0]) =>
  [x! + radius * Math.cos(degrees * DEG), y! + radius * Math.sin(degrees * DEG)] as const

describe('the leg in its hardest pose', () => {
  const pose = view('leg', /^Hardest pose/)
  // Half a step of 120 mm ahead, 323 mm below the hip; forward is to the left. Knee and hip by the law of cosines, links of 165 and 180 mm.
  const foot = [-60, -323] as const
  const knee = Math.acos((60 ** 2 + 323 ** 2 - 165 ** 2 - 180 ** 2) / (2 * 165 * 180)) / DEG
  const hip = -Math.atan2(60, 323) / DEG - Math.atan2(180 * Math.sin(knee * DEG), 165 + 180 * Math.cos(knee * DEG)) / DEG
  const kneeAt = polar(165, hip - 90)
  // One foot of a slow walk bears half of the weight.
  const up = (10.5 * 9.80665) / 2

  test('angles and joints are those that put the foot at the end of its step', () => {
    expect([value('leg', 'hip angle'), value('leg', 'knee angle')]).toEqual([expect.closeTo(hip, 1), expect.closeTo(knee, 1)])
    // A seventh of the depth of the upper link; an eighth of the lower one's for the foot.
    expect(pose.circles('thick')).toEqual(
      closeAll([
        [0, 0, 34 / 7],
        [...kneeAt, 34 / 7],
        [...foot, 3],
      ]),
    )
    expect(pose.texts).toContain('323')
  })

  test('drums and motors: the hip’s above it, the knee’s on the upper link, on the centre of the cord', () => {
    const onLink = [kneeAt[0] * (1 - 118 / 165), kneeAt[1] * (1 - 118 / 165)]
    expect(pose.circles('thin')).toEqual(
      closeAll([
        [0, 0, 49.6],
        [0, 74, 8],
        [...kneeAt, 50.8],
        [onLink[0]!, onLink[1]!, 8],
      ]),
    )
    expect(pose.circles('hidden')).toEqual(
      closeAll([
        [0, 74, 31.5],
        [onLink[0]!, onLink[1]!, 31.5],
      ]),
    )
    expect(pose.texts).toEqual(expect.arrayContaining(['drum Ø99.2', 'drum Ø102']))
  })

  test('limits of the joints are ticked from straight down, and the present angle between them', () => {
    const radius = 0.42 * 165
    const tick = (at: number, centre?: readonly [number, number]) => [
      ...polar(0.93 * radius, at, centre as never),
      ...polar(1.07 * radius, at, centre as never),
    ]
    expect(pose.ends('thin')).toEqual(closeAll([tick(-85 - 90), tick(45 - 90), tick(20 + hip - 90, kneeAt), tick(135 + hip - 90, kneeAt)]))
    expect(pose.ends('thick').slice(0, 2)).toEqual(closeAll([tick(hip - 90), tick(knee + hip - 90, kneeAt)]))
    expect(pose.texts).toEqual(expect.arrayContaining(['(−85 to 45°)', '(20 to 135°)']))
  })

  test('the reach is that of the knee at its straightest limit', () => {
    const radius = Math.hypot(165 + 180 * Math.cos(20 * DEG), 180 * Math.sin(20 * DEG))
    // An arc about the hip, from end to end.
    const [left, , right, top] = pose.of('other')[0]!
    expect([Math.hypot(left, top), Math.hypot(right, top)]).toEqual(close([radius, radius]))
    expect(pose.texts).toContain(`reach ${radius.toPrecision(3)}`)
  })

  test('the foot carries half of the weight, and its arms about the joints are those of its line of action', () => {
    expect(value('leg', 'foot force, up')).toBeCloseTo(up, 1)
    const forward = value('leg', 'foot force, forward')
    const size = Math.hypot(forward, up)
    const arm = ([x, y]: readonly [number, number]) => Math.abs((foot[0] - x) * up + (foot[1] - y) * forward) / size
    expect(value('leg', 'arm of the foot force about the hip')).toBeCloseTo(arm([0, 0]), 1)
    expect(value('leg', 'arm of the foot force about the knee')).toBeCloseTo(arm(kneeAt), 1)
    // The arm is drawn from the joint to the line of action, at a right angle to the force.
    const [x0, y0, x1, y1] = pose.ends('fine').find(([x, y]) => x === 0 && y === 0)!
    expect(Math.hypot(x1 - x0, y1 - y0)).toBeCloseTo(arm([0, 0]), 1)
    expect(Math.abs((x1 - x0) * -forward + (y1 - y0) * up)).toBeLessThan(1)
    // 60 units long at 4 units to 1 : 10 mm are 150 mm, less the head.
    expect(pose.ends('force')).toHaveLength(1)
  })
})

describe('the cord drive of the knee', () => {
  const [drum, pinion, distance] = [100 / 2 + 0.8, 14.4 / 2 + 0.8, 118]

  test('rims, bore, posts and motor have their sizes, and the spans touch drum and pinion crosswise', () => {
    const front = view('cord-drive-knee', /^From the robot/)
    // Grooves for a cord are 0.33 of its diameter deep.
    expect(front.circles('thick').slice(0, 3)).toEqual(
      closeAll([
        [0, 0, 50 + 0.528],
        [0, 0, 8],
        [0, distance, 7.2 + 0.528],
      ]),
    )
    expect(
      front
        .circles('thick')
        .slice(3)
        .map(([, , r]) => r),
    ).toEqual([2, 2])
    expect(front.circles('hidden')).toEqual([[0, distance, 31.5]])
    const group = named('cord-drive-knee').groups.find(({ place }) => place !== undefined)!
    const [ox, oy] = group.place!.to([0, 0])
    for (const [line, side] of [
      ['move', 1],
      ['moveSecond', -1],
    ] as const) {
      const path = group.items.find((item) => item.kind === 'path' && item.line === line && item.points.length > 40)!
      if (path.kind !== 'path') throw new Error('no path')
      const points = path.points.slice(1).map(([x, y]) => [(x - ox) / group.place!.scale, (oy - y) / group.place!.scale] as const)
      const onDrum = points.filter(([x, y]) => Math.abs(Math.hypot(x, y) - drum) < 1e-6)
      const onPinion = points.filter(([x, y]) => Math.abs(Math.hypot(x, y - distance) - pinion) < 1e-6)
      expect(onDrum.length + onPinion.length).toBe(points.length)
      const [start, end] = [onDrum.at(-1)!, onPinion[0]!]
      expect(Math.hypot(start[0] - end[0], start[1] - end[1])).toBeCloseTo(Math.sqrt(distance ** 2 - (drum + pinion) ** 2), 6)
      expect([Math.sign(start[0]), Math.sign(end[0])]).toEqual([side, -side])
    }
  })

  test('ratio, span, walk, wrap and the angle to lay the cord at follow from the document', () => {
    const span = Math.sqrt(distance ** 2 - (drum + pinion) ** 2)
    expect(value('cord-drive-knee', 'ratio')).toBeCloseTo(drum / pinion, 3)
    expect(value('cord-drive-knee', 'free span')).toBeCloseTo(span, 1)
    // From 20 to 135 degrees; the grooves are 2 mm apart.
    expect(value('cord-drive-knee', 'lay the cord with the knee at')).toBeCloseTo(77.5, 9)
    const walk = ((115 / 360) * drum * 2) / pinion
    expect(value('cord-drive-knee', 'walk along the pinion')).toBeCloseTo(walk, 2)
    // The cord leaves the drum at the crossed tangent, measured from the anchor below.
    const wrap = 180 - Math.acos((drum + pinion) / distance) / DEG + 90 - 90
    expect(value('cord-drive-knee', 'wrap of each branch on the drum at mid travel')).toBeCloseTo(wrap, 0)
    expect(value('cord-drive-knee', 'least wrap at an end of travel')).toBeCloseTo(wrap - 115 / 2, 0)
  })

  test('the anchors are shown at both ends of travel', () => {
    const front = view('cord-drive-knee', /^From the robot/)
    const at = (angle: number) => [...polar(0.6 * drum, angle), ...polar(1.1 * drum, angle)]
    expect(front.ends('other')).toEqual(closeAll([at(-90 + 57.5), at(-90 - 57.5)]))
    expect(front.texts).toEqual(
      expect.arrayContaining(['end at 135°', 'end at 20°', 'pinion groove', 'Ø14.4', 'drum groove', 'Ø100', 'bore Ø16', 'post Ø4']),
    )
  })

  test('the pinion is drawn with its turns, and with the exits of the cord half of its walk to each side', () => {
    const turns = value('cord-drive-knee', 'turns on the pinion')
    const walk = value('cord-drive-knee', 'walk along the pinion')
    const side = view('cord-drive-knee', /^Pinion at mid travel/)
    const rim = 7.728
    expect(side.of('thick')).toEqual(
      closeAll([
        [-7, -rim, 7, rim],
        [-0.8, -0.8, 0.8, 0.8],
      ]),
    )
    expect(side.of('axis')).toEqual([[-10, 0, 10, 0]])
    expect(side.ends('move')).toEqual(closeAll([1, 3].map((x) => [x - 0.5, -rim, x + 0.5, rim])))
    expect(side.ends('moveSecond')).toEqual(closeAll([-1, -3].map((x) => [x - 0.5, -rim, x + 0.5, rim])))
    const exits = [turns - walk / 2, turns + walk / 2, -turns - walk / 2, -turns + walk / 2]
    expect(side.ends('other').map(([x]) => x)).toEqual(exits.map((x) => expect.closeTo(x, 2)))
    expect(side.texts).toEqual(expect.arrayContaining(['clamp in the middle', '1.83 turns to each', 'Ø15.46']))
  })
})

describe('the grooves of the hip', () => {
  test('two grooves of 2 mm, seat 0.54 and depth 0.33 of the cord; the cord lies on its seat', () => {
    const profile = view('groove-hip', /^Groove profile/)
    expect(profile.circles('move')).toEqual(
      closeAll([
        [-1, 0.8, 0.8],
        [1, 0.8, 0.8],
      ]),
    )
    const [left, bottom, right, top] = profile.of('thick')[0]!
    expect([left, right, top]).toEqual(close([-2.4, 2.4, 0.528]))
    expect(bottom).toBeCloseTo(0, 2)
    expect(profile.texts).toEqual(expect.arrayContaining(['2', '0.528', 'cord Ø1.6', 'seat R0.864', 'PC, printed']))
    const drum = view('groove-hip', /^Upper half of the drum/)
    expect(drum.of('thick')).toEqual(closeAll([[-7, 11, 7, 48.8 + 0.528]]))
    expect(drum.texts).toEqual(expect.arrayContaining(['14', 'Ø22 / 2', 'Ø97.6 / 2', 'Ø98.66 / 2', 'drum, PC']))
    expect([value('groove-hip', 'drum, centre of the cord'), value('groove-hip', 'drum, outside')]).toEqual([99.2, 98.66])
  })
})

describe('the pin of the hip', () => {
  // An eye of 14 mm, gaps of 0.3, cheeks of 11; bosses of 15 with holes of 3.976 on a pin of 4.
  test('bosses, eye and pin lie along it with their gaps', () => {
    const section = view('pin-hip', /^Section along the pin/)
    expect(section.of('thick')).toEqual(
      closeAll([
        [7.3, 1.988, 18.3, 7.5],
        [7.3, -7.5, 18.3, -1.988],
        [-18.3, 1.988, -7.3, 7.5],
        [-18.3, -7.5, -7.3, -1.988],
        [-18.3, -2, 18.3, 2],
      ]),
    )
    expect(section.of('thin')).toEqual(
      closeAll([
        [-7, 2, 7, 12],
        [-7, -12, 7, -2],
      ]),
    )
    expect(section.of('axis')).toEqual(closeAll([[-20.3, 0, 20.3, 0]]))
    expect(section.texts).toEqual(['11', '14', '11', '36.6', 'Ø15', 'eye, ASA', 'boss, PC', 'pin Ø4 m6', 'hole Ø3.976', 'gap 0.3'])
    expect(
      named('pin-hip')
        .groups.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
        .join(' '),
    ).toContain('Layers of the boss cross the pin; those of the eye are assumed to cross it.')
  })

  test('four arrows press the eye on the pin, two each boss against it; each stands for its share', () => {
    const loads = view('pin-hip', /^Loads on the pin/)
    expect(loads.of('thick')).toEqual(closeAll([[-18.3, -2, 18.3, 2]]))
    // Quarters of the eye, halves of the bosses.
    expect(loads.ends('force').map(([x, y]) => [x, Math.sign(y)])).toEqual([
      ...[-5.25, -1.75, 1.75, 5.25].map((x) => [expect.closeTo(x, 2), 1]),
      ...[10.05, 15.55, -10.05, -15.55].map((x) => [expect.closeTo(x, 2), -1]),
    ])
    expect(new Set(loads.ends('force').map(([, y0, , y1]) => Math.abs(y0 - y1).toFixed(2))).size).toBe(1)
    const force = value('pin-hip', 'force on the pin')
    expect(loads.texts).toEqual(
      expect.arrayContaining([`${force.toPrecision(3)} N from the eye`, `${(force / 2).toPrecision(3)} N on each boss`]),
    )
  })

  test('the moment falls from the middle to nothing at the ends, by the loads that are drawn', () => {
    const force = value('pin-hip', 'force on the pin')
    expect(value('pin-hip', 'bending moment in the middle of the pin') / ((force / 2) * (11 / 2 + 0.3 + 14 / 4))).toBeCloseTo(1, 3)
    const curve = named('pin-hip')
      .groups.find(({ name }) => name.startsWith('Bending moment'))!
      .items.find((item) => item.kind === 'path' && item.line === 'force')!
    if (curve.kind !== 'path') throw new Error('no curve')
    const xs = curve.points.map(([x]) => x)
    const [left, right] = [Math.min(...xs), Math.max(...xs)]
    const ys = curve.points.map(([, y]) => y)
    const [base, peak] = [Math.max(...ys), Math.min(...ys)]
    const at = (mm: number) => {
      const x = left + ((mm + 18.3) / 36.6) * (right - left)
      const i = curve.points.findIndex(([px]) => px >= x - 1e-6)
      return (base - curve.points[i]![1]) / (base - peak)
    }
    const share = (moment: number) => expect.closeTo(moment / (11 / 2 + 0.3 + 14 / 4), 3)
    // At the edge of the eye, at the mouth of the boss, and in the middle of the boss, per half of the force.
    expect([at(7), at(-7), at(7.3), at(12.8), at(18.3), at(-18.3)]).toEqual([
      share(5.8),
      share(5.8),
      share(5.5),
      share(11 / 2 - 5.5 + 5.5 ** 2 / 22),
      share(0),
      share(0),
    ])
  })
})

describe('the motor of the knee on its plate', () => {
  test('section: motor in front of plate and sink, pinion at its front, magnet and encoder behind the plate', () => {
    const section = view('motor-knee', /^Section through the motor axis/)
    expect(section.of('thick')).toEqual(
      closeAll([
        // Sink, plate and mounting ring above the axis, then below it.
        [-4, 7, 0, 48],
        [-11, 7, -4, 48],
        [0, 7, 3, 20],
        [-4, -48, 0, -7],
        [-11, -48, -4, -7],
        [0, -20, 3, -7],
        // Motor, and its pinion as long as in the document and as thick as the circle of the cord.
        [3, -31.5, 32, 31.5],
        [32, -8, 46, 8],
      ]),
    )
    // Shaft through the plate, magnet of 6 × 2.5, gap of 1, encoder, board of 40.
    expect(section.of('thin').slice(0, 4)).toEqual(
      closeAll([
        [-12, -3.5, 3, 3.5],
        [-14.5, -3, -12, 3],
        [-16.5, -2.5, -15.5, 2.5],
        [-18.1, -20, -16.5, 20],
      ]),
    )
    expect(section.of('thin').slice(4)).toEqual(
      closeAll([
        [-16.5, 17, -11, 17],
        [-16.5, -17, -11, -17],
      ]),
    )
    expect(section.of('axis')).toEqual(closeAll([[-20.5, 0, 49, 0]]))
    expect(section.texts).toEqual(expect.arrayContaining(['32', '7', 'Ø63', 'sink 4', 'motor', 'magnet, gap 1', 'controller', 'plate, PC']))
  })

  test('the dot of each label lies in what the label names', () => {
    const { dots } = view('motor-knee', /^Section through the motor axis/)
    // Sink, motor, pinion, board of the controller, plate.
    const parts = [
      [-4, 7, 0, 48],
      [3, -31.5, 32, 31.5],
      [32, -8, 46, 8],
      [-18.1, -20, -16.5, 20],
      [-11, -48, -4, -7],
    ]
    expect(dots).toHaveLength(parts.length)
    for (const [i, [x, y]] of dots.entries()) {
      const [left, low, right, high] = parts[i] as [number, number, number, number]
      expect([x > left && x < right, y > low && y < high], String(i)).toEqual([true, true])
    }
  })

  test('face: plate, ring, opening and the holes for sleeves on their circle, the first two beside the top', () => {
    const face = view('motor-knee', /^Plate from the side of the motor/)
    expect(face.of('thick')).toEqual([[-42, -48, 42, 48]])
    expect(face.of('hidden')).toEqual([[-42, -48, 42, 48]])
    const holes = [135, 45, -45, -135].map((angle) => polar(15, angle))
    expect(face.circles('thick')).toEqual(closeAll([[0, 0, 20], [0, 0, 7], ...holes.map(([x, y]) => [x, y, 3.5])]))
    expect(face.circles('thin')).toEqual(closeAll(holes.map(([x, y]) => [x, y, 1.7])))
    expect(face.circles('axis')).toEqual([[0, 0, 15]])
    expect(face.circles('other')).toEqual([[0, 0, 31.5]])
    expect(face.texts).toEqual(
      expect.arrayContaining(['84', '96', 'motor Ø63', 'ring Ø40', '4 × Ø7', 'sleeves Ø3.4', 'on Ø30', 'opening Ø14']),
    )
  })

  test('each bolt of the circle is pushed across, the same way round', () => {
    const circle = view('bolt-pattern-motor-knee', /^From the side of the motor/)
    expect(circle.circles('thick').slice(0, 2)).toEqual([
      [0, 0, 20],
      [0, 0, 7],
    ])
    const arrows = circle.ends('force')
    expect(arrows).toHaveLength(4)
    const turning = new Set<number>()
    for (const [i, [x0, y0, x1, y1]] of arrows.entries()) {
      const [hx, hy] = polar(15, [135, 45, -45, -135][i]!)
      // At a right angle to the radius of its bolt, and toward it.
      expect((x1 - x0) * hx + (y1 - y0) * hy).toBeCloseTo(0, 1)
      turning.add(Math.sign(hx * (y1 - y0) - hy * (x1 - x0)))
      expect(Math.hypot(x1 - hx, y1 - hy)).toBeLessThan(Math.hypot(x0 - hx, y0 - hy))
    }
    expect(turning.size).toBe(1)
  })

  test('temperatures by radius: bolts, edge of the ring, and a rim with the area of the plate', () => {
    expect([value('plate-heat-knee', 'radius of the bolts'), value('plate-heat-knee', 'radius of the edge of the ring')]).toEqual([15, 20])
    expect(value('plate-heat-knee', 'radius of the rim')).toBeCloseTo(Math.sqrt((84 * 96) / Math.PI), 2)
    // Class H, magnets SH, and a plate of PC below its softening.
    expect(value('heat-knee', 'limit of the winding, hottest phase')).toBe(180)
    expect(value('heat-knee', 'limit of the can and magnets')).toBe(150)
    expect(value('heat-knee', 'air')).toBe(20)
  })
})

describe('bolts', () => {
  test('a stack bolt through sleeve and washers: layers, head and nut of M4 by their standards', () => {
    const section = view('bolt-stack', /^Section through the axis/)
    const [sleeve, hole, beyond] = [4.5, 2.25, 1.9 * 4.5]
    const both = (...bands: number[][]) =>
      closeAll(
        bands.flatMap(([left, bottom, right, top]) => [
          [left!, bottom!, right!, top!],
          [-right!, bottom!, -left!, top!],
        ]),
      )
    expect(section.of('thick').slice(0, 10)).toEqual(
      both([sleeve, -7, beyond, 0], [sleeve, -15, beyond, -7], [hole, -15, sleeve, 0], [hole, 0, sleeve, 0.8], [hole, -15.8, sleeve, -15]),
    )
    // Nut 7 across flats and 3.2 high; screw with a head of 7 by 4, two pitches of 0.7 and more beyond the nut.
    expect(section.of('thick').slice(10)).toEqual(
      closeAll([
        [-3.5, -19, 3.5, -15.8],
        [-3.5, -20.4, 3.5, 4.8],
      ]),
    )
    // Socket of 3 across.
    expect(section.of('hidden')[0]![2]).toBe(1.5)
    expect(section.texts).toEqual(
      expect.arrayContaining(['Ø7', '7', '8', '15', 'screw M4', '1.2 N m', 'washer Ø9 × 0.8', 'sleeve Ø4.5 / Ø9', 'nut, 7 across flats']),
    )
    expect(named('bolt-stack').description).toContain(
      'An M4 screw clamps 7 mm of ASA and 8 mm of ASA, with a nut on a washer, through a metal sleeve.',
    )
  })

  test('a motor bolt ends in the metal that it is screwed into, a diameter and a half deep', () => {
    const section = view('bolt-motor', /^Section through the axis/)
    expect(section.of('thick').at(-1)).toEqual(close([-2.75, -11 - 4.5, 2.75, 3 + 0.5]))
    expect(section.of('thin').slice(0, 2)).toEqual(
      closeAll([
        [1.5, -17, 6.65, -11],
        [-6.65, -17, -1.5, -11],
      ]),
    )
    expect(section.texts).toEqual(expect.arrayContaining(['tapped metal, depth', 'aluminium 6061-T6', 'PC', '11']))
    expect(cells('bolt-motor').has('nut height')).toBe(false)
  })

  test('clamp loads fall from tightening on, and their bars with them', () => {
    const [tight, settled, left] = ['tightened', 'after embedding', 'after 70 days at room temperature'].map((name) =>
      value('bolt-stack', `clamp load ${name}`),
    ) as [number, number, number]
    expect(tight).toBeGreaterThan(settled)
    expect(settled).toBeGreaterThanOrEqual(left)
    const bars = named('bolt-stack')
      .groups.find(({ name }) => name.startsWith('Clamp load'))!
      .items.flatMap((item) => (item.kind === 'path' && item.closed === true ? [item.points[1]![0] - item.points[0]![0]] : []))
    expect(bars.map((length) => length / bars[0]!)).toEqual([1, expect.closeTo(settled / tight, 3), expect.closeTo(left / tight, 3)])
  })

  test('the bolts of the stack hold the foot about the tipping edge, each by its distance', () => {
    const pull = [1, 2, 3, 4].map((i) => value('bolt-pattern-stack', `bolt ${i}, pull`))
    const foot = (10.5 * 9.80665) / 2
    expect(2 * (8 * pull[0]! + 48 * pull[2]!)).toBeCloseTo(58 * foot, -1)
    expect([pull[1], pull[3]]).toEqual([pull[0], pull[2]])
    expect(pull[2]! / pull[0]!).toBeCloseTo(6, 2)
    // The ground pushes along the walk as well, with 0.15 of the foot's force.
    expect(value('bolt-pattern-stack', 'force across each bolt')).toBeCloseTo((foot * Math.sqrt(1 + 0.15 ** 2)) / 4, 2)
    const side = view('bolt-pattern-stack', /^Bracket from the side/)
    expect(side.of('thick').map(([, low, , high]) => (low + high) / 2)).toEqual(close([8, 48]))
    expect(side.of('axis')[0]).toEqual([0, 0, 58, 0])
    expect(side.texts).toEqual(expect.arrayContaining(['58', '8', '48', '2 × 30.3 N', '2 × 5.04 N', 'foot 51.5 N']))
  })
})

describe('the shaft of the hip', () => {
  // Bearings 10 × 26 × 8 at 0 and 30; the plane of the leg 28 beyond, with a drum of 14; a cap of 3 × 18 and a screw M4.
  test('bearings, spacers, housing, drum, cap and screw stand along it', () => {
    const section = view('hip-shaft', /^Section along the axis/)
    const races = [0, 30].flatMap((x) => [
      [x - 4, 5, x + 4, 7.24],
      [x - 4, 10.76, x + 4, 13],
    ])
    expect(section.of('thick').slice(0, 10)).toEqual(mirrored([51, 12, 65, 21], ...races))
    expect(section.of('thick').slice(10)).toEqual(
      closeAll([
        [-4, -5, 65, 5],
        [65, -9, 68, 9],
        [68, -3.4, 72, 3.4],
      ]),
    )
    // Balls between the races; they are 0.29 of the height of a ring thick.
    expect(section.circles('thin').map(([x, y]) => [x, y])).toEqual([
      [0, 9],
      [30, 9],
      [0, -9],
      [30, -9],
    ])
    const rings = [
      [-6, 13, 36, 18],
      [4, 5, 26, 6.5],
      [34, 5, 51, 6.5],
      [51, 5, 65, 12],
    ]
    expect(section.of('thin').slice(0, 8)).toEqual(mirrored(...rings))
    expect(section.ends('hidden')).toEqual(
      closeAll([
        [57, -2, 57, 2],
        [57, 2, 65, 2],
        [57, -2, 65, -2],
      ]),
    )
    expect(section.of('axis')).toEqual(
      closeAll([
        [-16, 0, 75, 0],
        [58, -24, 58, 24],
      ]),
    )
    expect(section.texts).toEqual(['30', '28', '1', '2', '3', '4', '5', '6'])
  })

  test('its table has what is to be made: length to the plane of the leg, spacer, seats', () => {
    // From the outer face of the far bearing: half of its width, 30 and 28.
    expect(value('hip-shaft', 'least length of the shaft to the plane of the leg')).toBe(62)
    expect(value('hip-shaft', 'spacer between the bearings')).toBe(22)
    expect(value('hip-shaft', 'bore of the seats')).toBe(25.95)
  })

  test('the bearings carry the load of the leg about each other, drawn to one scale', () => {
    const loads = view('hip-shaft', /^Loads of the shaft/)
    const leg = value('hip-shaft', 'load in the plane of the leg')
    const near = (leg * 58) / 30
    expect(value('hip-shaft', 'load of the nearer bearing')).toBeCloseTo(near, 0)
    const ends = loads.ends('force')
    expect(ends.map(([x]) => x)).toEqual(close([58, 30, 0]))
    const lengths = ends.map(([, y]) => Math.abs(y))
    expect(lengths[1]! / lengths[0]!).toBeCloseTo(58 / 30, 2)
    expect(lengths[2]! / lengths[0]!).toBeCloseTo(28 / 30, 2)
    expect(ends.map(([, y0, , y1]) => Math.sign(y1 - y0))).toEqual([-1, 1, -1])
    expect(loads.texts).toEqual(
      expect.arrayContaining(['nearer bearing', 'farther bearing', `${near.toPrecision(3)} N`, `${(near - leg).toPrecision(3)} N`]),
    )
  })

  test('its end is drilled for the thread and three pitches more, with the cap and the screw on it', () => {
    const end = view('shaft-end', /^Section along the axis/)
    // M4: core hole 3.3, pitch 0.7.
    expect([value('shaft-end', 'core hole of the inner thread'), value('shaft-end', 'drilled depth')]).toEqual([3.3, 10.1])
    expect(end.of('thick').slice(1)).toEqual(
      closeAll([
        [0, 2.25, 3, 9],
        [0, -9, 3, -2.25],
        [-7.6, -2, 3, 2],
        [3, -3.4, 7, 3.4],
      ]),
    )
    const [left, bottom, right, top] = end.of('thick')[0]!
    expect([bottom, right, top]).toEqual([-5, 0, 5])
    expect(left).toBeLessThan(-10.1)
    expect(end.texts).toEqual(
      expect.arrayContaining(['3', '8', '10.1', 'M10', 'cap Ø18', 'screw M4', '1.5 N m', 'drill Ø3.3', 'tap M4', 'hole Ø4.5']),
    )
  })
})

test('over a year each cord keeps the share of its pretension that the document gives', () => {
  expect(value('year', 'pretension of the hip after a year')).toBeCloseTo(0.9 * 185, 1)
  expect(value('year', 'pretension of the knee after a year')).toBeCloseTo(0.9 * 280, 1)
})

test('the bars of the reserves are as long as the reserves, up to 4, nearest to the required one first', () => {
  const items = named('reserve-bars').groups.at(-1)!.items
  const lengths = items.flatMap((item) => (item.kind === 'path' && item.closed === true ? [item.points[1]![0] - item.points[0]![0]] : []))
  const reserves = named('reserve-bars').table.rows.map(([, text]) => Number(/reserve ([\d.]+)/.exec(text!)![1]))
  expect(lengths).toHaveLength(14)
  for (const [i, length] of lengths.entries()) expect(length / lengths[0]! / (reserves[i]! / reserves[0]!)).toBeCloseTo(1, 1)
})
