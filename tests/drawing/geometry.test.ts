import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  arcPoints,
  bar,
  barBlock,
  boxOf,
  crosses,
  distance,
  Figure,
  hatchLines,
  minus,
  type Point,
  pathData,
  plain,
  polar,
  rectangle,
  tangent,
  textWidth,
  ticksOf,
  toDxf,
  View,
  wrapped,
} from '../../src/drawing/index.js'
import { pathPoints } from './path-points.js'

/** Distance of a point from a straight piece,. */
const offPiece = (point: Point, [from, to]: readonly [Point, Point]) => {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
  const share = dx === 0 && dy === 0 ? 0 : ((point[0] - from[0]) * dx + (point[1] - from[1]) * dy) / (dx * dx + dy * dy)
  const along = Math.min(1, Math.max(0, share))
  return distance(point, [from[0] + along * dx, from[1] + along * dy])
}

describe('geometry', () => {
  test('a path ends on its points to half a tenth of a unit and passes the others within a quarter, however long it is', () => {
    const spot = fc.tuple(fc.double({ min: -500, max: 500, noNaN: true }), fc.double({ min: -500, max: 500, noNaN: true }))
    fc.assert(
      fc.property(
        fc.array(fc.array(spot, { minLength: 2, maxLength: 40 }), { minLength: 1, maxLength: 4 }),
        fc.boolean(),
        (lines, closed) => {
          const again = pathPoints(pathData((lines as Point[][]).map((points) => ({ points, closed }))))
          expect(again).toHaveLength(lines.length)
          for (const [i, line] of lines.entries()) {
            const last = line.at(-1) as Point
            expect(distance(again[i]!.at(-1) as Point, last)).toBeLessThan(0.08)
            const corners = again[i] as Point[]
            const pieces = corners.map((end, k) => [corners[Math.max(0, k - 1)] as Point, end] as const)
            for (const point of line) expect(Math.min(...pieces.map((piece) => offPiece(point, piece)))).toBeLessThan(0.23)
            if (line.length < 6)
              for (const point of line) expect(Math.min(...corners.map((one) => distance(one, point)))).toBeLessThan(0.08)
          }
        },
      ),
    )
    expect(
      pathData([
        {
          points: [
            [1, 2],
            [1, 4.5],
            [3, 4.5],
            [2, 3],
          ],
        },
      ]),
    ).toBe('M1,2v2.5h2l-1-1.5')
    expect(pathData([{ points: [[3, 4]] }])).toBe('M3,4h0')
  })

  test('a tangent touches both circles at right angles to their radii', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 1.05, max: 4, noNaN: true }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.boolean(),
        fc.constantFrom(1 as const, -1 as const),
        (r, R, apart, at, crossed, side) => {
          const [first, second] = [
            { centre: [3, 4] as const, radius: r },
            { centre: polar([3, 4], (r + R) * apart, at), radius: R },
          ]
          const [a, b] = tangent(first, second, side, crossed)
          expect(distance(a, first.centre)).toBeCloseTo(r, 9)
          expect(distance(b, second.centre)).toBeCloseTo(R, 9)
          const dot = (p: readonly number[], q: readonly number[]) => p[0]! * q[0]! + p[1]! * q[1]!
          expect(dot(minus(b, a), minus(a, first.centre))).toBeCloseTo(0, 6)
          expect(dot(minus(b, a), minus(b, second.centre))).toBeCloseTo(0, 6)
          // Length of the span: crossed and open tangent of two circles.
          const reach = crossed ? r + R : r - R
          expect(distance(a, b)).toBeCloseTo(Math.sqrt(((r + R) * apart) ** 2 - reach ** 2), 6)
        },
      ),
    )
  })

  test('arcs end where they should, and a bar encloses both of its circles', () => {
    const arc = arcPoints({ centre: [1, 2], radius: 5 }, 0, Math.PI / 2)
    expect(arc[0]).toEqual([6, 2])
    expect(arc.at(-1)![1]).toBeCloseTo(7, 12)
    const box = boxOf(bar({ centre: [0, 0], radius: 3 }, { centre: [20, 0], radius: 2 }))
    expect([box.left, box.right]).toEqual([expect.closeTo(-3, 1), expect.closeTo(22, 1)])
  })

  test('a bar that leans encloses both of its circles as well', () => {
    const outline = bar({ centre: [1, 2], radius: 3 }, { centre: [7, 10], radius: 2 })
    const { left, bottom, right, top } = boxOf(outline)
    expect([left, bottom, right, top]).toEqual([-2, -1, 9, 12].map((x) => expect.closeTo(x, 1)))
    // Both sides are tangents of circles 10 apart.
    const sides = outline.map((point, i) => distance(point, outline[(i + 1) % outline.length] as Point)).filter((length) => length > 2)
    expect(sides).toEqual([expect.closeTo(Math.sqrt(100 - 1), 9), expect.closeTo(Math.sqrt(100 - 1), 9)])
  })

  test('hatch lines stay inside the area and out of its holes', () => {
    const lines = hatchLines([rectangle(0, 0, 10, 10), rectangle(4, 4, 6, 6)], Math.PI / 2, 1)
    for (const [[x0, y0], [x1, y1]] of lines) {
      expect(x0).toBeCloseTo(x1, 9)
      expect(Math.min(y0, y1)).toBeGreaterThanOrEqual(-1e-9)
      expect(Math.max(y0, y1)).toBeLessThanOrEqual(10 + 1e-9)
      if (x0 > 4 && x0 < 6) expect(Math.max(y0, y1) <= 4 + 1e-9 || Math.min(y0, y1) >= 6 - 1e-9).toBe(true)
    }
    // Ten lines of ten, two of them cut by the hole.
    expect(lines.reduce((sum, [a, b]) => sum + distance(a, b), 0)).toBeCloseTo(100 - 4, 6)
  })

  test('crossing pieces are told from those that do not', () => {
    expect(
      crosses(
        [
          [0, 0],
          [2, 2],
        ],
        [
          [0, 2],
          [2, 0],
        ],
      ),
    ).toBe(true)
    expect(
      crosses(
        [
          [0, 0],
          [1, 1],
        ],
        [
          [3, 0],
          [2, 5],
        ],
      ),
    ).toBe(false)
  })
})

describe('texts and numbers', () => {
  test('numbers with a true minus sign and few digits', () => {
    expect([plain(-Math.PI), plain(0), plain(1234.5678), plain(0.5, 2), plain(1e-12)]).toEqual(['−3.142', '0', '1235', '0.5', '0'])
    expect([plain(2.5e6), plain(999_940), plain(-2e-5), plain(0.00012)]).toEqual(['2.5e+6', '999900', '−2e−5', '0.00012'])
  })

  test('ticks are round, inside the range, and not too many', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
        fc.integer({ min: 2, max: 9 }),
        (low, span, most) => {
          const ticks = ticksOf(low, low + span, most)
          expect(ticks.length).toBeLessThanOrEqual(most)
          for (const tick of ticks) {
            expect(tick).toBeGreaterThanOrEqual(low - 1e-6 * span)
            expect(tick).toBeLessThanOrEqual(low + span * (1 + 1e-6))
          }
        },
      ),
    )
  })

  test('broken lines keep a number with its unit and stay within their width', () => {
    const lines = wrapped('the nearer bearing carries 649 N of 980 N, reserve 1.51', 90, 11)
    expect(lines.join(' ')).toBe('the nearer bearing carries 649 N of 980 N, reserve 1.51')
    expect(lines.some((line) => /^N/.test(line))).toBe(false)
    for (const line of lines) expect(textWidth(line, 11)).toBeLessThanOrEqual(90)
  })
})

test('DXF of a drawing begins and ends as the format asks', () => {
  const text = toDxf(new Figure({ id: 'x', title: 'X', answer: 'X' }).view(new View('X').area(rectangle(0, 0, 10, 10))).done())!
  expect(text.startsWith('999\nmillimetres\n')).toBe(true)
  expect(text.trimEnd().endsWith('EOF')).toBe(true)
  expect(new View('x').boxAt(1).left).toBe(Number.POSITIVE_INFINITY)
})

test('the rule of a row of bars is interrupted at each name that it would cross, and stands elsewhere at its place', () => {
  const bars = ['short', 'a name that is longer than the rule is away'].map((name) => ({ name, to: 1, text: '1' }))
  const { items, height } = barBlock({ to: 4, bars, rules: [{ at: 1, name: 'limit', line: 'bad', each: [1, 1] }] }, 0)
  const texts = items.filter((item) => item.kind === 'text')
  const [rule] = items.filter((item) => item.kind === 'lines')
  const length = rule!.pieces.reduce((sum, [[, a], [, b]]) => sum + b - a, 0)
  for (const [[x, top], [end, bottom]] of rule!.pieces) {
    expect(end).toBe(x)
    for (const {
      at: [left, base],
      text,
      anchor,
    } of texts.filter(({ anchor: own }) => own !== 'end'))
      if (left < x && x < left + textWidth(text, 11) && anchor !== 'middle') expect(bottom < base - 9 || top > base, text).toBe(true)
  }
  expect(length).toBeGreaterThan(height - 60)
  const own = barBlock({ to: 4, bars, rules: [{ at: 1, name: 'limit', each: [1, 2] }] }, 0).items.filter((item) => item.kind === 'lines')
  expect(new Set(own[0]!.pieces.map(([[x]]) => x)).size).toBe(2)
})
