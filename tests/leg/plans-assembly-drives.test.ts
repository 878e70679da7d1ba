import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { type AssemblyPlan, assemblyPlan, assemblyText, describeLeg, shoppingCsv, withFields } from '../../src/leg/index.js'
import { beltSetting } from '../../src/leg/plans/belt-setting.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { gearSetting } from '../../src/leg/plans/gear-setting.js'
import { geared } from './gear-legs.js'
import { driven } from './sideways-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}-leg-revised.yaml`, import.meta.url), 'utf8'))
const [desk, orchard, heath] = [read('desk'), read('orchard'), read('heath')]
const of = ({ drives }: AssemblyPlan, joint: string) => drives.find((one) => one.joint === joint)!

describe('a belt drive', () => {
  const plan = assemblyPlan(orchard)
  const bench = benchLeg(orchard)
  const s = beltSetting(bench, 'knee')

  test('the axes stand where a stretched belt closes around its pulleys', () => {
    // Perimeter of the hull of two circles from its support function, for a belt of 123 teeth that 700 N stretch.
    const { pitch, teeth, axialRigidity } = bench.x.belts.wide!
    const [r1, r2] = [(18 * pitch) / (2 * Math.PI), (108 * pitch) / (2 * Math.PI)]
    const steps = 20_000
    let around = 0
    for (let i = 0; i < steps; i++) {
      const t = (2 * Math.PI * (i + 0.5)) / steps
      around += (Math.max(r1, s.set * Math.cos(t) + r2) * 2 * Math.PI) / steps
    }
    expect(around).toBeCloseTo(teeth * pitch * (1 + 700 / axialRigidity), 7)
    expect(s.straight).toBeLessThan(s.set)
  })

  test('pitch, side force and force on the axes by hand', () => {
    const { massPerLength, pitch } = bench.x.belts.wide!
    expect(s.pitchAt(700)).toBeCloseTo(Math.sqrt(700 / massPerLength) / (2 * s.span), 9)
    // Less than a per cent of a fiftieth: F = 4 T d / L, and the tension that the push adds.
    const added = (bench.x.belts.wide!.axialRigidity * 2) / 50 ** 2
    expect(s.sideForce / ((4 * (700 + added)) / 50)).toBeCloseTo(1, 2)
    const lean = Math.asin((pitch * (108 - 18)) / (2 * Math.PI * s.set))
    expect(s.axisForce).toBeCloseTo(2 * 700 * Math.cos(lean), 6)
  })

  test('what to buy, how to tension it, and what a year leaves', () => {
    const { parts, steps, sizes, followUps, problems } = of(plan, 'knee')
    expect(parts.map(({ item }) => item)).toEqual(['tooth belt', 'pulley', 'pulley'])
    expect(parts[0]!.size).toBe('123 teeth of 5 mm, 25 mm wide')
    expect(sizes.find(({ what }) => what === 'length of the belt')!.value).toBe('615 mm')
    expect(steps.join(' ')).toMatch(/Pluck a span .* 366.5 Hz is 700 N/)
    expect(followUps.map(({ when }) => when)).toEqual(['after a day', 'after a week'])
    // The root of a share of tension is the share of the pitch.
    const year = /a pitch of ([\d.]+) Hz to ([\d.]+) Hz/.exec(followUps[0]!.expect)!
    expect(Number(year[1]) / s.pitchAt(700)).toBeCloseTo(Math.sqrt(0.6), 3)
    expect(problems).toEqual([])
    expect(plan.windings).toEqual([])
    expect(assemblyText(plan)).not.toMatch(/\bcord\b/)
    expect(shoppingCsv(plan)).toMatch(/pulley,"?108 teeth of 5 mm/)
  })

  test('a belt that never gets its tension, or cannot be laid on, is a problem of the plan', () => {
    const long = assemblyPlan(withFields(orchard, { 'belts.wide.teeth': 128 }))
    expect(long.problems.join(' ')).toMatch(/knee: a belt of 128 teeth has its tension with the axes at .*, beyond the adjustment of 3 mm/)
    const short = assemblyPlan(withFields(orchard, { 'joints.knee.drive.adjustment': '0.1 mm' }))
    expect(short.problems.join(' ')).toMatch(/knee: /)
  })
})

describe('gears, gearboxes and direct drives', () => {
  const plan = assemblyPlan(geared)
  test('the axes of the gears, the calliper over teeth and the foil', () => {
    const s = gearSetting(benchLeg(geared), 'knee')
    expect(s.standard).toBeCloseTo((0.8e-3 * 79) / 2, 12)
    // Near the pitch point the backlash grows by twice the tangent of the pressure angle.
    const first = 0.1e-3 / (2 * Math.tan((20 * Math.PI) / 180))
    expect((s.apart - s.standard) / first).toBeGreaterThan(0.97)
    expect((s.apart - s.standard) / first).toBeLessThan(1)
    expect(s.gap).toBeCloseTo(0.1e-3 * Math.cos((20 * Math.PI) / 180), 12)
    expect([s.pinion.tip, s.wheel.tip]).toEqual([expect.closeTo(0.8e-3 * 17, 12), expect.closeTo(0.8e-3 * 66, 12)])
    const { sizes, steps } = of(plan, 'knee')
    expect(sizes.map(({ what }) => what)).toContain('distance of the axes, full teeth')
    expect(steps.join(' ')).toMatch(/foil of 0.09 mm/)
  })

  test('no backlash asks for the pitch radii', () => {
    const s = gearSetting(benchLeg(withFields(geared, { 'joints.knee.drive.backlash': '0 mm' })), 'knee')
    expect(s.apart).toBe(s.standard)
  })

  test('the gearbox is ordered by its sheet and coupled before the link goes on', () => {
    const { parts, before, steps } = of(plan, 'hip')
    expect(parts[0]!.size).toMatch(/ratio 6, 2.5 N m at all times, 6 N m for a moment, play of at most 0.3°/)
    expect(before.join(' ')).toMatch(/6 turns turn the output once, the same way as it/)
    const order = plan.steps.map((step) => [before[1], steps[0]].indexOf(step)).filter((at) => at >= 0)
    expect(order).toEqual([0, 1])
  })

  test('a direct drive is carried by its output, or lined up with its pin', () => {
    const direct = assemblyPlan(desk)
    expect(of(direct, 'hip').steps[0]).toMatch(/Bolt the link of the hip on the face of the output/)
    expect(of(direct, 'knee').steps[0]).toMatch(/Line the pin of the knee up with the output/)
    expect(assemblyText(direct)).not.toMatch(/\b(cord|belt|gear)\b/)
  })
})

describe('a driven sideways hip and a rod', () => {
  test('its motor, gearbox and bearings are bought and put together', () => {
    const plan = assemblyPlan(driven)
    expect(plan.shopping.find(({ item }) => item === 'motor')!.quantity).toBe('3')
    expect(plan.shopping.some(({ item, remark }) => item === 'bearing' && remark === 'sideways hip')).toBe(true)
    expect(of(plan, 'sidewaysHip').steps[0]).toMatch(/Line the pair of bearings of the sideways hip up/)
  })

  test('a knee that a belt and a rod drive has its rod cut and set as one that a cord drives', () => {
    const belted = withFields(heath, {
      'belts.wide': orchard.belts.wide!,
      'joints.knee.drive': { ...orchard.joints.knee.drive, material: 'PC' },
    })
    const [before, after] = [assemblyPlan(heath).rod!, assemblyPlan(belted).rod!]
    expect(after.tolerance).toEqual(before.tolerance)
    expect(after.steps[2]).toMatch(/Join crank and large pulley on the hip axis/)
    expect(before.steps[2]).toMatch(/Join crank and drum on the hip axis/)
  })
})
