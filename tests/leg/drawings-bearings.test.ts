import { describe, expect, test } from 'vitest'
import { PAGE_WIDTH } from '../../src/drawing/index.js'
import { assess, legDrawingNamed, legDrawings, toDxf, toTemplate } from '../../src/leg/index.js'
import { pivotChecks } from '../../src/leg/parts/ball-bearings/checks.js'
import { outside, overlaps, textBoxes } from '../drawing/boxes.js'
import { dxfSizes } from '../drawing/dxf-sizes.js'
import { besideLinks, singleBearings } from './rod-bearing-legs.js'

const cases = ['stand', 'hotDrop'] as const
const pairs = assess(besideLinks, { cases })
const single = assess(singleBearings, { cases })
const of = (verdict: typeof pairs, name: string) => legDrawingNamed(verdict, name)!
const value = ({ table }: { table: { rows: readonly (readonly string[])[] } }, name: string) =>
  table.rows.find(([one]) => one === name)![1]!
const outlines = (drawing: Parameters<typeof toDxf>[0]) => dxfSizes(toDxf(drawing)).outlines
const some = (sizes: readonly (readonly [number, number])[], width: number, height: number) =>
  sizes.some(([w, h]) => Math.abs(w - width) < 2e-4 && Math.abs(h - height) < 2e-4)

describe('ball bearings of pins and rods', () => {
  test('each place that has one has a section, and no other', () => {
    const names = (verdict: typeof pairs) =>
      legDrawings(verdict)
        .map(({ id }) => id)
        .filter((id) => id.startsWith('bearing-'))
    expect(names(pairs)).toEqual(['bearing-crank', 'bearing-rocker', 'bearing-drum', 'bearing-hip', 'bearing-knee'])
    expect(names(single)).toEqual(['bearing-crank', 'bearing-drum'])
  })

  test('rings, housing and spacers have the sizes of the document at full size', () => {
    // 5 × 16 × 5 in a pair 13 apart, in an eye of 25: rings 5 wide, housing from 16 to 25 over both, spacers of 8.
    const knee = outlines(of(pairs, 'bearing-knee'))
    const [ring, spacer] = [0.28 * 5.5, 0.14 * 11]
    expect(some(knee, 5, ring)).toBe(true)
    expect(some(knee, 18, 4.5)).toBe(true)
    expect(some(knee, 8, spacer)).toBe(true)
    // 12 × 28 × 8 alone, in a drum of 41.
    expect(some(outlines(of(single, 'bearing-drum')), 8, 6.5)).toBe(true)
  })

  test('the seat is bored smaller than the ring by its interference', () => {
    expect(value(of(pairs, 'bearing-crank'), 'seat')).toBe('12.99')
    expect(of(pairs, 'bearing-crank').svg).toContain('seat Ø12.992')
    expect(value(of(pairs, 'bearing-knee'), 'interference of the seat, at assembly')).toBe('30')
  })

  test('cap, shoulder, bond and eye of the rod are said and drawn', () => {
    const crank = of(pairs, 'bearing-crank')
    for (const word of ['rim Ø6.5', 'edge Ø8', 'screw M3', '1.1 N m', 'shoulder Ø7']) expect(crank.svg).toContain(word)
    expect(outlines(crank).some(([, height]) => Math.abs(height - 7) < 2e-4)).toBe(true)
    const rocker = of(pairs, 'bearing-rocker')
    expect(rocker.description).toContain('Adhesive holds the rings')
    expect(rocker.description).toContain('It sits in the eye of the rod')
    expect(of(single, 'bearing-crank').svg).not.toContain('shoulder')
    // Middle of the bearing to the plane of the rod: 14 mm for the drum.
    expect(value(of(pairs, 'bearing-drum'), 'middle of the bearing to the middle plane of the rod or of what holds its pin')).toBe('14')
  })

  test('the eye on the joint pin shows its bearings', () => {
    const pin = of(pairs, 'pin-knee')
    expect(pin.svg).toContain('bearing 5 × 16 × 5')
    expect(value(pin, 'outer diameter of the eye')).toBe('25')
    expect(some(outlines(pin), 20, 4.5)).toBe(true)
    expect(of(single, 'pin-knee').svg).not.toContain('bearing')
  })

  test('every check of a bearing stands in its drawing', () => {
    for (const { id, part, mode, joint } of pairs.checks.filter((one) => pivotChecks.some((check) => check.id === one.id))) {
      const place = joint ?? id.replace(/Bearing\..*/, '')
      expect(of(pairs, `bearing-${place}`).table.rows.map(([name]) => name)).toContain(`${part}: ${mode}`)
    }
  })
})

describe('the stack on the hip shaft', () => {
  test('its ring is drawn, its key in both sections and as a template', () => {
    const shaft = of(single, 'hip-shaft')
    // Spacer of 26 / 12.5.
    expect(outlines(shaft).some(([, height]) => Math.abs(height - 6.75) < 2e-4)).toBe(true)
    // Key 4 × 4 × 14 along the axis, and across it with keyways of 2.5 and 1.8 mm (DIN 6885).
    expect(some(outlines(shaft), 14, 4)).toBe(true)
    expect(some(outlines(shaft), 4, 4)).toBe(true)
    expect(value(shaft, 'keyway in the shaft, depth')).toBe('2.5')
    expect(value(shaft, 'keyway in the hub, depth')).toBe('1.8')
    expect(dxfSizes(toDxf(shaft)).circles).toEqual(expect.arrayContaining([expect.closeTo(30, 4), expect.closeTo(12, 4)]))
    const template = toTemplate(shaft)!
    expect(template).toMatch(/<circle [^>]*r="15"/)
    expect(template).toMatch(/<circle [^>]*r="6"/)
    expect(of(pairs, 'hip-shaft').table.rows.map(([name]) => name)).not.toContain('key')
    expect(toTemplate(of(pairs, 'hip-shaft'))).toBeUndefined()
  })

  test('its checks stand in the drawing', () => {
    const rows = of(single, 'hip-shaft').table.rows.map(([name]) => name)
    const own = single.checks.filter(({ id }) => /^shaftStack\.(gape|tip|slip|key)/.test(id))
    expect(own.length).toBeGreaterThan(1)
    for (const { part, mode } of own) expect(rows).toContain(`${part}: ${mode}`)
  })

  test('numbers of its legend run down the page', () => {
    const { svg } = of(single, 'hip-shaft')
    const numbers = [...svg.matchAll(/<text class="strong( end)?" x="[\d.]+" y="([\d.]+)">(\d+)</g)].map(
      ([, , y, n]) => [Number(n), Number(y)] as const,
    )
    expect(numbers).toHaveLength(9)
    const right = numbers.filter(([n]) => n > 1).sort(([a], [b]) => a - b)
    for (let i = 1; i < right.length; i++) expect(right[i]![1]).toBeGreaterThan(right[i - 1]![1])
  })
})

test('no text lies on another', () => {
  for (const verdict of [pairs, single])
    for (const { id, svg, height, answer } of legDrawings(verdict)) {
      const boxes = textBoxes(svg)
      expect([...overlaps(boxes), ...outside(boxes, PAGE_WIDTH, height)].map((flaw) => `${id}: ${flaw}`)).toEqual([])
      expect(answer).not.toContain('cannot be drawn')
      expect(svg.length).toBeLessThan(40_000)
    }
})
