import { describe, expect, test } from 'vitest'
import { PAGE_WIDTH } from '../../src/drawing/index.js'
import { Facts } from '../../src/leg/drawings/facts.js'
import { LegValues } from '../../src/leg/drawings/leg-values.js'
import { springSizes, torsionSizes } from '../../src/leg/drawings/spring-sizes.js'
import { assess, legDrawingNamed, legDrawings, legNumbers, legPoseDrawing, toDxf, toTemplate, withFields } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { springChecks } from '../../src/leg/parts/springs/checks.js'
import { outside, overlaps, textBoxes } from '../drawing/boxes.js'
import { dxfSizes } from '../drawing/dxf-sizes.js'
import { EXTENSION, plain, sprungAndBalanced, TORSION } from './sprung-legs.js'

const verdict = assess(sprungAndBalanced, { cases: ['stand', 'walk'] })
const named = (name: string) => legDrawingNamed(verdict, name)!
const value = (drawing: { table: { rows: readonly (readonly string[])[] } }, name: string) =>
  Number(drawing.table.rows.find(([one]) => one === name)![1]!.replace('−', '-'))

describe('springs beside the drives', () => {
  test('a torsion spring: its sizes are those of the document, its coil at full size in the DXF', () => {
    const drawing = named('spring-knee')
    const { circles } = dxfSizes(toDxf(drawing))
    // Inside and outside of the coil, its mean circle, the mandrel, the wire.
    for (const diameter of [23, 29, 26, 16, 3]) expect(circles.some((one) => Math.abs(one - diameter) < 1e-4)).toBe(true)
    expect(value(drawing, 'body length, unloaded')).toBe(31.5)
    // 20 to 135 degrees, legs touching at 10.
    expect(value(drawing, 'wound, knee at 20°')).toBe(10)
    expect(value(drawing, 'wound, knee at 135°')).toBe(125)
    const rate = value(drawing, 'rate')
    expect(value(drawing, 'torque on the joint, knee at 135°')).toBeCloseTo((-rate * 125 * Math.PI) / 180, 2)
    expect(drawing.description).toContain('to smaller angles')
  })

  test('legs leave the coil where its part of a turn puts them: half a turn more turns both the same way', () => {
    const of = (coils: number, winds: 'growing' | 'falling') => {
      const leg = withFields(plain, {
        'joints.knee.spring': { ...TORSION, coils, winds, freeAngle: winds === 'growing' ? '10 deg' : '140 deg' },
      })
      const s = torsionSizes(new LegValues(legModel(legNumbers(leg))), 'knee')
      return (((s.movingAt(s.free) - s.fixedAt) / Math.PI + 4) % 2) * 180
    }
    expect(of(9.5, 'growing') % 360).toBeCloseTo(0, 9)
    expect(of(9, 'growing')).toBeCloseTo(180, 9)
    // A quarter of a turn on, counter-clockwise from straight, and clockwise.
    expect(of(9.25, 'growing')).toBeCloseTo(270, 9)
    expect(of(9.25, 'falling')).toBeCloseTo(90, 9)
  })

  test('the pull of the hook is that of the whole travel, where the spring is longest in its middle', () => {
    const spring = { ...EXTENSION, movingEnd: { down: '5.6 mm', forward: '24.4 mm' } }
    const one = assess(withFields(plain, { 'joints.knee.spring': spring }), { cases: ['stand'] })
    const s = springSizes(new Facts(one), 'knee')!
    if (s.kind !== 'extension') throw new Error('the knee has an extension spring')
    const steps = Array.from({ length: 400 }, (_, i) => s.state(s.travel[0] + (i / 399) * (s.travel[1] - s.travel[0])).force)
    const most = Math.max(...steps)
    expect(most).toBeGreaterThan(1.1 * Math.max(steps[0]!, steps.at(-1)!))
    const said = Number(/hook,\s+([\d.]+)\s+N\s+at\s+most/.exec(legDrawingNamed(one, 'spring-knee')!.svg.replaceAll(/<[^>]*>/g, ' '))![1])
    expect(Math.abs(said / most - 1)).toBeLessThan(5e-3)
  })

  test('an extension spring: both pins stand where the document has them, and the spring is as long as between them', () => {
    const drawing = named('spring-hip')
    const s = springSizes(new Facts(verdict), 'hip')!
    if (s.kind !== 'extension') throw new Error('the hip has an extension spring')
    expect(s.fixed).toEqual([-10, 90].map((x) => expect.closeTo(x, 9)))
    expect(s.straight).toEqual([-25, 15].map((x) => expect.closeTo(x, 9)))
    for (const angle of [...s.travel, 0.3]) {
      const [x, y] = s.movingAt(angle)
      expect(Math.hypot(x - s.fixed[0], y - s.fixed[1])).toBeCloseTo(s.state(angle).length, 9)
    }
    // Straight, by hand: 15 forward of the fixed pin and 75 below it.
    expect(s.state(0).length).toBeCloseTo(Math.hypot(15, 75), 9)
    const { circles } = dxfSizes(toDxf(drawing))
    expect(circles.filter((one) => Math.abs(one - 8) < 1e-4)).toHaveLength(4)
    expect(value(drawing, 'free length between the insides of the hooks')).toBe(74)
  })

  test('the printed template has the pins at full size', () => {
    const svg = toTemplate(named('spring-hip'))!
    const pins = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="4"\/>/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
    const [moving, fixed] = pins as [readonly [number, number], readonly [number, number]]
    expect(pins).toHaveLength(2)
    expect(Math.hypot(moving[0] - fixed[0], moving[1] - fixed[1])).toBeCloseTo(Math.hypot(15, 75), 2)
    expect(toTemplate(named('spring-knee'))).toContain('r="8"')
  })

  test('every check of a spring stands in its drawing, and marks the spring on the leg', () => {
    const own = verdict.checks.filter(({ id }) => springChecks.some((check) => check.id === id))
    expect(own.length).toBeGreaterThan(6)
    for (const { part, mode, joint } of own) expect(named(`spring-${joint}`).table.rows.map(([name]) => name)).toContain(`${part}: ${mode}`)
    const leg = legPoseDrawing(verdict, { ...own.find(({ joint }) => joint === 'hip')!, reserve: 0.9 })
    expect(leg.svg).toMatch(/class="bad"/)
    expect(leg.svg).toMatch(/hip spring/)
    expect(leg.svg).toMatch(/knee spring/)
  })

  test('counterweights stand beyond their joints, and a disc of steel has their mass', () => {
    for (const [link, mass, beyond] of [
      ['upper', 0.4, 60],
      ['lower', 0.25, 45],
    ] as const) {
      const drawing = named(`counterweight-${link}`)
      expect(value(drawing, 'centre of the counterweight beyond the joint')).toBe(beyond)
      const [d, width] = [value(drawing, 'diameter of a steel disc of that mass'), value(drawing, 'width of that disc')]
      expect(((Math.PI / 4) * d ** 2 * width * 7850) / 1e9).toBeCloseTo(mass, 3)
    }
    expect(named('leg').svg.match(/counterweight/g)).toHaveLength(2)
  })

  test('no text lies on another, and a leg without springs has no such drawing', () => {
    for (const { id, svg, height, answer } of legDrawings(verdict)) {
      const boxes = textBoxes(svg)
      expect([...overlaps(boxes), ...outside(boxes, PAGE_WIDTH, height)].map((flaw) => `${id}: ${flaw}`)).toEqual([])
      expect(answer).not.toContain('cannot be drawn')
      expect(svg.length).toBeLessThan(40_000)
    }
    const names = legDrawings(assess(plain, { cases: ['stand'] })).map(({ id }) => id)
    expect(names.filter((id) => /^(spring|counterweight)/.test(id))).toEqual([])
  })
})
