// What holds of every view of every leg: leaders and dimensions end at what they name, numbers are those of the document or of the table, and what turns
// about an axis is drawn the same on both sides of it.
import { readFileSync } from 'node:fs'
import { describe, expect, test, vi } from 'vitest'
import { type Drawing, Figure, type Item, type Point, type View } from '../../src/drawing/index.js'
import { scaleFor } from '../../src/drawing/view-layout.js'
import { legDrawings } from '../../src/leg/drawings/index.js'
import { type Assessment, assess, describeLeg, type Leg, withFields } from '../../src/leg/index.js'
import { geared } from './gear-legs.js'
import { besideLinks, singleBearings } from './rod-bearing-legs.js'
import { EXTENSION, sprungAndBalanced, plain as unsprung } from './sprung-legs.js'
import { cordKnee, cordOnRotor } from './through-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const mudflat = read('mudflat-leg-revised')

const LEGS: Readonly<Record<string, Leg>> = {
  cord: withFields(mudflat, {
    'ends.potted': { length: '20 mm', socketDiameter: '2.2 mm', adhesive: 'epoxy', mechanicalLock: true },
    'joints.knee.drive.ends': 'bondedFerrule',
    'joints.knee.drive.end': 'potted',
  }),
  rod: read('heath-leg-revised'),
  direct: read('desk-leg-revised'),
  belt: read('orchard-leg-revised'),
  beltAlong: read('shingle-leg-revised'),
  geared,
  sprungAndBalanced,
  extension: withFields(unsprung, { 'joints.knee.spring': EXTENSION }),
  cordOnRotor,
  cordKnee,
  besideLinks,
  singleBearings,
}

interface Drawn {
  readonly verdict: Assessment
  readonly drawings: readonly Drawing[]
  readonly views: readonly { readonly drawing: Drawing; readonly view: View }[]
}

/** The drawings of an assessment, with the views that they are made of. */
function drawn(verdict: Assessment): Drawn {
  const found: { id: string; view: View }[] = []
  const own = Figure.prototype.view
  const spy = vi.spyOn(Figure.prototype, 'view').mockImplementation(function (this: Figure, view: View) {
    found.push({ id: this.words.id, view })
    return own.call(this, view)
  })
  const drawings = legDrawings(verdict) as unknown as readonly Drawing[]
  spy.mockRestore()
  return { verdict, drawings, views: found.map(({ id, view }) => ({ drawing: drawings.find((one) => one.id === id)!, view })) }
}

const ALL = Object.entries(LEGS).map(([name, leg]) => [name, drawn(assess(leg, { cases: ['walk', 'drop'] }))] as const)

/** Shapes of a view in millimetres, with y up. */
const place = { scale: 1, to: ([x, y]: Point): Point => [x, -y] }
const mm = ([x, y]: Point): Point => [x, -y]

function toPiece([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay]
  const share = dx === 0 && dy === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)))
  return Math.hypot(x - ax - share * dx, y - ay - share * dy)
}

function isInside([x, y]: Point, corners: readonly Point[]): boolean {
  let odd = false
  corners.forEach(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length]!
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) odd = !odd
  })
  return odd
}

/** How far a point is from the nearest line of an item, and whether it lies within it. */
function nearness(at: Point, item: Item): readonly [off: number, within: boolean] {
  if (item.kind === 'circle') {
    const off = Math.hypot(at[0] - mm(item.centre)[0], at[1] - mm(item.centre)[1])
    return [Math.abs(off - item.radius), off <= item.radius]
  }
  if (item.kind !== 'path') return [Number.POSITIVE_INFINITY, false]
  const points = item.points.map(mm)
  const ring = item.closed === true ? [...points, points[0]!] : points
  const offs = ring.slice(1).map((point, i) => toPiece(at, ring[i]!, point))
  return [Math.min(...offs), points.length > 2 && isInside(at, points)]
}

/** Places along an axis at which a view has a corner, a centre or the side of a circle; and the origin, which is an axis or a middle plane. */
const placesOf = (items: readonly Item[], axis: 0 | 1): number[] => [
  0,
  ...items.flatMap((item) => {
    if (item.kind === 'path') return item.points.map((point) => mm(point)[axis])
    return item.kind === 'circle' ? [-1, 0, 1].map((sign) => mm(item.centre)[axis] + sign * item.radius) : []
  }),
]

describe.each(ALL)('%s', (_, { verdict, drawings, views }) => {
  test('the leader of every label ends in what it names: an arrow on a line, a dot inside an outline', () => {
    const lost = views.flatMap(({ drawing, view }) => {
      const items = view.items(place)
      const unit = 1 / (4 * scaleFor(view))
      // The wire of a spring is named at its middle; a place of the whole leg is a sign of some size.
      const wire = Number(drawing.table.rows.find(([name]) => name === 'wire diameter')?.[1] ?? 0)
      const near = drawing.id === 'leg' ? 4 : Math.max(2 * unit, wire / 2 + 0.01)
      return view.labels
        .filter(({ anchor, end }) => {
          const found = items.map((item) => nearness(anchor, item))
          const onLine = found.some(([off]) => off <= near)
          return end === 'arrow' ? !onLine : end === 'dot' && !onLine && !found.some(([, within]) => within)
        })
        .map(({ lines, meaning }) => `${drawing.id}, ${view.title}: ${lines.join(' ')} ${meaning ?? ''}`)
    })
    expect(lost).toEqual([])
  })

  test('both ends of every dimension are ends of what is drawn, and its number is their distance', () => {
    const wrong = views.flatMap(({ drawing, view }) => {
      const items = view.items(place)
      return view.dimensions.flatMap(({ from, to, side, text }) => {
        const axis = side === 'above' || side === 'below' ? 0 : 1
        const places = placesOf(items, axis)
        // A hook is measured by the axis of its wire, the leg of a spring to the middle of its seat, and an adjustment by centres.
        const isSpring = drawing.id.startsWith('spring-')
        const off = [from, to].filter((end) => !isSpring && !text.startsWith('±') && !places.some((at) => Math.abs(at - end[axis]) < 0.01))
        const distance = Math.abs(to[axis] - from[axis]) / (text.startsWith('±') ? 2 : 1)
        const number = Number(/[\d.]+/.exec(text)?.[0]) / (text.endsWith('/ 2') ? 2 : 1)
        const differs = Math.abs(number - distance) > 5.1e-3 * Math.max(1, distance)
        return off.length > 0 || differs ? [`${drawing.id}, ${view.title}, ${side}: ${text}, ${distance}`] : []
      })
    })
    expect(wrong).toEqual([])
  })

  /** Sizes that the picture alone has: height of the hip, rim and length of a pinion, what is left of a pin or shaft, a spring’s mean radius. */
  const DERIVED = /^(leg|cord-drive-(hip|knee)|through-drive|rod-drive|hip-shaft|spring-knee): Ø?[\d.]+$/
  test('the number of every dimension stands in the table of the drawing', () => {
    const missing = views.flatMap(({ drawing, view }) => {
      const numbers = new Set(drawing.table.rows.flatMap(([, value = '']) => value.match(/[\d.]+/g) ?? []))
      return view.dimensions.filter(({ text }) => !numbers.has(/[\d.]+/.exec(text)?.[0] ?? '')).map(({ text }) => `${drawing.id}: ${text}`)
    })
    expect(missing.filter((line) => !DERIVED.test(line))).toEqual([])
  })

  test('a section through an axis is the same on both sides of it', () => {
    // A groove is drawn above its axis only; a screw has its axis upright; a shaft its key, and a motor its link, on one side.
    const sections = views.filter(
      ({ drawing, view }) => / along the (axis|cord)$/.test(view.title) && !/^(groove|output-stack)/.test(drawing.id),
    )
    const uneven = sections.flatMap(({ drawing, view }) => {
      const keyOf = (points: readonly Point[], sign: 1 | -1) =>
        points
          .map(([x, y]) => `${x.toFixed(3)} ${(sign * y + 0).toFixed(3)}`.replaceAll('-0.000', '0.000'))
          .sort()
          .join()
      const paths = view.items(place).flatMap((item) => (item.kind === 'path' && item.line !== 'move' ? [item.points] : []))
      const known = new Set(paths.map((points) => keyOf(points, 1)))
      const lone = paths.filter((points) => !known.has(keyOf(points, -1)))
      const allowed = drawing.id === 'hip-shaft' ? 1 : 0
      return lone.length > allowed ? [`${drawing.id}, ${view.title}: ${lone.length} lines`] : []
    })
    expect(uneven).toEqual([])
  })

  test('a description states one check: the one nearest to its limit; bolts have several', () => {
    const said = drawings.filter(({ id }) => !/^(reserve-bars|bolt-(stack|motor.*|plate.*))$/.test(id))
    const counts = said.map(({ id, description }) => [id, (description.match(/, reserve (over )?[\d.]+, /g) ?? []).length] as const)
    expect(counts.filter(([, count]) => count > 1)).toEqual([])
  })

  test('bars of temperatures end before the end of their axis', () => {
    const beyond = drawings
      .filter(({ id }) => id.startsWith('heat-'))
      .filter(({ groups }) =>
        groups.some(({ items }) => items.some((item) => item.kind === 'path' && item.line === 'thin' && item.points.length === 3)),
      )
    expect(beyond.map(({ id }) => id)).toEqual([])
  })

  // One that throws is replaced by a note, so that the others are there: no example leg may need that.
  test('every part can be drawn', () => {
    expect(
      drawings.filter(({ answer }) => answer.endsWith('cannot be drawn')).map(({ id, description }) => `${id}: ${description}`),
    ).toEqual([])
  })

  test('without any other check than the first the drawings are the same, with no answer and no result of what was not checked', () => {
    const [first] = verdict.checks
    const bare = legDrawings(
      { ...verdict, checks: [first!] },
      { only: drawings.map(({ id }) => id).filter((id) => !/^(leg|stride|year|reserve-bars|torque.*)$/.test(id)) },
    )
    const named = new Set([`${first!.part}: ${first!.mode}`])
    const results = bare.flatMap(({ id, table }) =>
      table.rows.flatMap(([name = '', value = '']) => (/reserve/.test(value) && !named.has(name) ? [`${id}: ${name}`] : [])),
    )
    expect(bare.filter(({ answer }) => answer.endsWith('cannot be drawn')).map(({ description }) => description)).toEqual([])
    expect(results).toEqual([])
  })
})

const of = (name: string) => ALL.find(([one]) => one === name)![1]
const drawingOf = (name: string, id: string) => of(name).drawings.find((one) => one.id === id)!
const viewOf = (name: string, id: string, title: RegExp) => {
  const { view } = of(name).views.find((one) => one.drawing.id === id && title.test(one.view.title))!
  const paths = view.items(place).flatMap((item) => (item.kind === 'path' ? [{ line: item.line, points: item.points.map(mm) }] : []))
  return {
    ...view,
    labels: view.labels.map(({ lines }) => lines.join(' ')),
    paths,
    of: (line: string) => paths.filter((one) => one.line === line),
  }
}
const numberOf = ({ table }: Drawing, name: string | RegExp) =>
  Number(table.rows.find(([one]) => (typeof name === 'string' ? one === name : name.test(one!)))![1]!.replace('−', '-'))

test('a ferrule is drawn round its cord: bore and wall to scale, adhesive between', () => {
  const { of: lines, labels } = viewOf('cord', 'ferrule-knee', /along the cord/)
  const heights = (line: string) =>
    lines(line)
      .map(({ points }) => points.map(([, y]) => y))
      .map((ys) => [Math.min(...ys), Math.max(...ys)])
  // A bore of 2.2 mm, a wall of 1 mm, and a cord of 1.2 mm.
  const wall = numberOf(drawingOf('cord', 'ferrule-knee'), 'wall of the ferrule')
  const cord = numberOf(drawingOf('cord', 'ferrule-knee'), 'cord diameter')
  expect(wall).toBeGreaterThan(0.2)
  expect(heights('thick')).toEqual([
    [1.1, expect.closeTo(1.1 + wall, 6)],
    [expect.closeTo(-1.1 - wall, 6), -1.1],
  ])
  expect(heights('fine')).toEqual([
    [cord / 2, 1.1],
    [-1.1, -cord / 2],
  ])
  expect(labels).toEqual([`ferrule, wall ${wall} assumed`, 'adhesive', `cord Ø${cord}`])
})

test('the line of action of gears passes the pitch point at 20° to the tangent of both pitch circles', () => {
  const [{ points }] = viewOf('geared', 'gear-pair-knee', /in mesh/).of('axis') as unknown as [{ points: readonly Point[] }]
  const [[x0, y0], [x1, y1]] = points as unknown as [Point, Point]
  expect([x0 + x1, y0 + y1]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)])
  expect((Math.atan2(y1 - y0, x1 - x0) * 180) / Math.PI).toBeCloseTo(20, 9)
})

test('a torsion spring wound most has its moving leg straight down, on the side from which it winds the coil up', () => {
  const spring = drawingOf('sprungAndBalanced', 'spring-knee')
  const front = viewOf('sprungAndBalanced', 'spring-knee', /From the robot’s left/)
  const [down] = front.dimensions
  // The leg leaves the mean circle of the coil at its side and presses 60 mm further on.
  expect(down).toMatchObject({ from: [0, 0], side: 'left', text: '60' })
  expect(Math.abs(down!.to[0])).toBeCloseTo(numberOf(spring, /mean diameter|coil/) / 2, 6)
  expect(down!.to[1]).toBeCloseTo(-60, 6)
})

test('the hook of a spring is said to be assumed where the document gives none, and its bend where that is not given', () => {
  const { labels } = viewOf('extension', 'spring-knee', /from the side/i)
  expect(labels.slice(1)).toEqual(['hook R8, assumed', 'bend R4'])
})

test('the tilting moment on a bearing that nothing holds on the other side is its load at its distance', () => {
  const crank = drawingOf('singleBearings', 'bearing-crank')
  const [load, distance] = [numberOf(crank, /^load across/), numberOf(crank, /^middle of the bearing/)]
  expect(numberOf(crank, /^tilting moment/) / ((load * distance) / 1000)).toBeCloseTo(1, 3)
})

test('the landing begins with the torque and the reserve against slack of the touch-down, and both get worse', () => {
  for (const name of ['cord', 'rod']) {
    const check = of(name).verdict.checks.find(({ id, joint }) => id === 'cord.slack' && joint === 'knee')!
    expect(check.case).toBe('drop')
    const rows = drawingOf(name, 'leg').table.rows.filter(([one]) => one!.startsWith('landing, '))
    const found = rows.map(([, value]) =>
      /^knee −([\d.]+) N m, reserve of the cord against slack ([\d.]+)/.exec(value!)!.slice(1).map(Number),
    )
    expect(found[0]![0]! / check.demand.si).toBeCloseTo(1, 2)
    expect(found[0]![1]! / check.reserve).toBeCloseTo(1, 2)
    expect(found).toHaveLength(4)
    for (const [i, [torque, reserve]] of found.slice(1).entries()) {
      expect(torque).toBeGreaterThan(found[i]![0]!)
      expect(reserve).toBeLessThan(found[i]![1]!)
    }
  }
})

test('places of motors are said to be assumed where the document does not give them', () => {
  const said = (name: string) =>
    drawingOf(name, 'leg')
      .groups.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
      .join(' ')
  expect(said('cord')).toContain('motors, the hip’s at an assumed place.')
  expect(said('cordKnee')).toContain('motors, both at assumed places on the body.')
  expect(said('direct')).toContain('motors. ')
})

test('crank, rod and rocker of the leg in its hardest pose are as long as in the document, from the hip to the knee', () => {
  const { through } = of('rod').verdict.leg.joints.knee
  if (through?.kind !== 'rod') throw new Error('a rod drives the knee of this leg')
  const lines = viewOf('rod', 'leg', /^Hardest pose/)
    .paths.filter(({ points }) => points.length === 2)
    .map(({ points }) => points)
  const lengths = lines.map(([a, b]) => Math.hypot(b![0] - a![0], b![1] - a![1]))
  for (const long of [through.crank, through.rod, through.rocker])
    expect(Math.min(...lengths.map((one) => Math.abs(one - long.in('mm'))))).toBeLessThan(1e-6)
  expect(lines.some(([from], i) => from![0] === 0 && from![1] === 0 && Math.abs(lengths[i]! - through.crank.in('mm')) < 1e-6)).toBe(true)
})

test('the year of a leg names what walking needs of each of its cords and belts', () => {
  const needs = (name: string) =>
    drawingOf(name, 'year').table.rows.flatMap(([one, value]) =>
      /^pretension that the .* needs to walk/.test(one!) ? [Number(value)] : [],
    )
  for (const [name, count] of [
    ['cord', 2],
    ['rod', 2],
    ['cordKnee', 3],
  ] as const) {
    expect(needs(name), name).toHaveLength(count)
    for (const tension of needs(name)) expect(tension, name).toBeGreaterThan(1)
  }
})
