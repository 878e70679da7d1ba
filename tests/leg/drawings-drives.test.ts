import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { PAGE_WIDTH } from '../../src/drawing/index.js'
import { toothOutline } from '../../src/leg/drawings/gear-teeth.js'
import { assess, describeLeg, legDrawings, toDxf } from '../../src/leg/index.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { gearSetting } from '../../src/leg/plans/gear-setting.js'
import { outside, overlaps, textBoxes } from '../drawing/boxes.js'
import { dxfSizes } from '../drawing/dxf-sizes.js'
import { geared } from './gear-legs.js'
import { besideLinks } from './rod-bearing-legs.js'
import { driven } from './sideways-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}-leg-revised.yaml`, import.meta.url), 'utf8'))
const of = (leg: typeof geared, ...only: string[]) => legDrawings(assess(leg, { cases: ['stand', 'walk'] }), { only })
const rows = (drawing: { table: { rows: readonly (readonly string[])[] } }) =>
  new Map(drawing.table.rows.map(([name, value]) => [name, value]))

describe('drawings of belts, gears and outputs', () => {
  test('a belt is drawn with both pulleys at the distance of its axes, its spans as long as they are', () => {
    const [belt] = of(read('orchard'), 'belt-drive-knee')
    const table = rows(belt!)
    expect(table.get('distance of the axes, tensioned')).toBe('130.3')
    expect(table.get('pitch of a plucked span')).toBe('366.5')
    const dxf = toDxf(belt!)
    // Circles of both pulleys, and straight pieces as long as the free span.
    expect(dxf).toMatch(/14\.32/)
    expect(dxf).toMatch(/85\.94/)
  })

  test('a motor is drawn with what it carries: small pulley or pinion, and nothing where it turns the joint itself', () => {
    const table = (leg: typeof geared, joint: string) => rows(of(leg, `motor-${joint}`)[0]!)
    // 18 teeth of 5 mm; 15 teeth of module 0.8 and a tooth's height beyond.
    expect(Number(table(read('orchard'), 'knee').get('pitch diameter of the small pulley'))).toBeCloseTo((18 * 5) / Math.PI, 2)
    expect(Number(table(geared, 'knee').get('tip diameter of the pinion'))).toBeCloseTo((15 + 2) * 0.8, 2)
    const [direct] = of(read('desk'), 'motor-hip')
    expect(direct!.svg).not.toMatch(/pulley|pinion/)
  })

  test('a rod on ball bearings shows no pin between two cheeks', () => {
    const words = (leg: typeof geared) =>
      of(leg, 'rod-drive')[0]!
        .svg.replaceAll(/<[^>]*>/g, ' ')
        .replaceAll(/\s+/g, ' ')
    const [onBearings, onPins] = [words(besideLinks), words(read('heath'))]
    expect(onPins).toContain('between two cheeks')
    expect(onBearings).not.toMatch(/between two cheeks|Pin of the rod/)
    expect(onBearings).toContain('turn on ball bearings')
  })

  test('the tension of each belt falls over a year to the share of the document', () => {
    const leg = read('shingle')
    const [year] = of(leg, 'year')
    const table = rows(year!)
    for (const [name, set] of [
      ['hip', 420],
      ['knee', 450],
      ['upper link', 780],
    ] as const) {
      expect(Number(table.get(`pretension of the ${name}, set`))).toBe(set)
      expect(Number(table.get(`pretension of the ${name} after a year`))).toBeCloseTo(0.8 * set, 1)
    }
    expect(year!.description).toContain('Belts bed in')
  })

  test('the pulley of a belt is on the hip shaft as it is, and its housing ends before it', () => {
    const [shaft] = of(read('shingle'), 'hip-shaft')
    const table = rows(shaft!)
    expect([table.get('length of the pulley'), table.get('pitch circle of the pulley')]).toEqual(['25', '191'])
    expect(shaft!.svg).toContain('pulley, aluminium 6061-T6')
    // Bearings of 24 mm, 75 mm apart, the leg 16 mm beyond: 1 mm is left between bearing and pulley, half of it beside the housing.
    const { outlines } = dxfSizes(toDxf(shaft!))
    expect(outlines.some(([width, height]) => Math.abs(width - (14 + 75 + 12.5)) < 2e-4 && Math.abs(height - 5) < 2e-4)).toBe(true)
    expect(of(read('orchard'), 'hip-shaft')[0]!.svg).toContain('pulley')
  })

  test('the forces on the bolts of a motor are those of the check that they slide', () => {
    for (const name of ['orchard', 'shingle', 'mudflat']) {
      const verdict = assess(read(name))
      const [drawn] = legDrawings(verdict, { only: ['bolt-pattern-motor-knee'] })
      const slip = verdict.checks.find(({ id, joint }) => id === 'motorBolt.slip' && joint === 'knee')!
      expect(Number(rows(drawn!).get('force across each bolt'))).toBeCloseTo(slip.demand.in('N'), 0)
    }
  })

  test('a plate of metal weakens above its limit, one that is printed softens', () => {
    const limit = (name: string) => of(read(name), 'plate-heat-hip')[0]!.table.rows.find(([one]) => /^the plate/.test(one!))?.[0]
    expect(limit('orchard')).toBe('the plate weakens above')
    expect(limit('mudflat')).toBe('the plate softens above')
  })

  test('the limit of a plate in its drawings is that of its check: of a print below its softening', () => {
    const verdict = assess(read('mudflat'))
    const check = verdict.checks.find(({ id, joint }) => id === 'motor.plate' && joint === 'hip')!
    const [heat, plate] = legDrawings(verdict, { only: ['heat-hip', 'plate-heat-hip'] })
    const [ofHeat, ofPlate] = [rows(heat!), rows(plate!)]
    const limit = Number(ofHeat.get('air')) + check.capacity.in('K')
    expect(Number(ofHeat.get('limit of the mounting face and plate at the ring'))).toBeCloseTo(limit, 6)
    expect(Number(ofPlate.get('limit of the plate'))).toBeCloseTo(limit, 6)
    expect(Number(ofPlate.get('the plate softens above'))).toBeGreaterThan(limit)
  })

  test('teeth of a drawn gear are as wide as a calliper reads over them, and their tips on the tip circle', () => {
    const s = gearSetting(benchLeg(geared), 'knee')
    for (const one of [s.pinion, s.wheel]) {
      const gear = { centre: [0, 0] as const, teeth: one.teeth, module: 0.8, thinning: 0.05 }
      const points = toothOutline(gear, Math.PI / 2, one.spanned)
      const tips = points.map(([x, y]) => Math.hypot(x, y))
      expect(Math.max(...tips)).toBeCloseTo(500 * one.tip, 9)
      expect(Math.min(...tips)).toBeCloseTo(500 * one.root, 9)
      // The flanks are polygons of eight points: a little narrower than the curve.
      const width = Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x))
      expect(width).toBeLessThan(1000 * one.thinned + 1e-9)
      expect(width / (1000 * one.thinned)).toBeGreaterThan(0.99)
    }
  })

  test('each kind of drive has its drawing, and no other', () => {
    const drives = /^(cord-drive|belt-drive|gear-pair|output-stack)/
    const names = (leg: typeof geared) =>
      legDrawings(assess(leg, { cases: ['stand'] }))
        .map(({ id }) => id)
        .filter((id) => drives.test(id))
    expect(names(read('desk'))).toEqual(['output-stack-hip', 'output-stack-knee'])
    expect(names(geared)).toEqual(['output-stack-hip', 'gear-pair-knee'])
    expect(names(driven)).toEqual(['belt-drive-hip', 'belt-drive-knee', 'output-stack-sidewaysHip'])
  })

  test.each([
    ['desk', () => read('desk'), ['direct drive Ø70'], 0],
    ['orchard', () => read('orchard'), ['belt pulley Ø172', 'taut', 'slack'], 4],
    ['geared', () => geared, ['gearbox Ø70', '6 : 1', 'gear wheel Ø51.2', '15 to 64 teeth'], 0],
    ['mudflat', () => read('mudflat'), ['drum Ø', 'taut', 'slack'], 4],
  ])('the view of the whole %s leg shows how its joints are driven, without a text on another', (_, leg, words, spans) => {
    const [whole] = of(leg(), 'leg')
    for (const word of words) expect(whole!.svg).toContain(word)
    const boxes = textBoxes(whole!.svg)
    expect([...overlaps(boxes), ...outside(boxes, PAGE_WIDTH, whole!.height)]).toEqual([])
    expect(whole!.svg.match(/class="(move|moveSecond|bad|badSecond)"/g) ?? []).toHaveLength(spans)
  })

  test('the gearbox of a sideways hip is drawn without a text on another', () => {
    const [stack] = of(driven, 'output-stack-sidewaysHip')
    const boxes = textBoxes(stack!.svg)
    expect([...overlaps(boxes), ...outside(boxes, PAGE_WIDTH, stack!.height)]).toEqual([])
    expect(stack!.title).toMatch(/Gearbox of the sideways hip/)
  })
})
