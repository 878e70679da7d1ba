import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { clampLoadAt } from '../../src/leg/clamp-load-at.js'
import { describeLeg, htmlPlans, learn, standPlan, standText } from '../../src/leg/index.js'
import { corrections } from '../../src/leg/learning/corrections.js'
import { couponsOf } from '../../src/leg/learning/coupon-logs.js'
import { materialState } from '../../src/leg/material-state.js'
import { pinSizeAt } from '../../src/leg/numbers.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { couponPicture } from '../../src/leg/plans/coupon-pictures.js'
import { materialOf } from '../../src/leg/schema/tables.js'
import { InputError } from '../../src/units/index.js'

const leg = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))
const bench = benchLeg(leg)
const { coupons } = standPlan(leg)
const kit = couponsOf(bench.x)
const compared = (log: string, rows: readonly (readonly number[])[]) => {
  const { csv } = coupons.find((one) => one.log === log)!
  const { compared, remarks } = corrections(leg, { [log]: `${csv}${rows.map((row) => row.join(',')).join('\n')}\n` })
  return { one: compared[0], remarks }
}
const scatter = (i: number) => 0.01 * Math.sin(78.233 * (i + 1) ** 2)
const six = [0, 1, 2, 3, 4, 5]

describe('the kit', () => {
  test('holds every kind, each with its fixture, its caution, its log and a dimensioned drawing', () => {
    expect(new Set(kit.map(({ id }) => id)).size).toBe(6)
    expect(coupons.map(({ log }) => log)).toEqual(kit.map(({ log }) => log))
    const text = standText(standPlan(leg))
    for (const one of coupons) {
      expect(one.how.length).toBeGreaterThan(80)
      expect(one.caution.length).toBeGreaterThan(20)
      expect(one.csv).toContain(`# log: ${one.log}\n`)
      expect(text).toContain(one.how)
      const { svg, table } = couponPicture(bench, one)
      expect(svg).toMatch(/^<svg/)
      expect(table!.rows.length).toBeGreaterThan(2)
    }
    expect(coupons.map(({ how }) => how).join()).toMatch(/luggage scale[\s\S]*/)
    expect(coupons.map(({ how }) => how).join()).toMatch(/filled with water/)
    expect(new Set(kit.map(({ log }) => log)).size).toBe(kit.length)
    expect(htmlPlans(leg).match(/<figure id=coupon/g)).toHaveLength(kit.length)
  })

  test('a bar breaks at the load of a beam on two supports', () => {
    const bars = coupons.find(({ log }) => log === 'couponBars ASA')!
    // F = 2 σ b h² / (3 L): 10 by 4 mm over 64 mm.
    const strength = materialOf('ASA').tensileStrength!.si
    const force = (2 * strength * 0.01 * 0.004 ** 2) / (3 * 0.064)
    expect(bars.expect).toContain(`${Number(force.toPrecision(4))} N`)
  })
})

describe('the drawings of the kit', () => {
  const svgOf = (log: string) => couponPicture(bench, coupons.find((one) => one.log === log)!).svg as string
  const texts = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text)

  test.each([
    ['couponHoles knee', ['15', '75', '30', 'upper row Ø3.886 to', 'lower row Ø3.986 to']],
    ['couponBars ASA', ['80', '80', '64', '4', '10']],
    ['couponSplit knee', ['Ø15', 'Ø3.976', '11', 'layers across the']],
    ['couponDrum knee', ['Ø88']],
    ['couponSandwich stack', ['25', '7', '8']],
    ['couponPlate knee', ['84', '96', 'ring Ø40, two power', 'hole Ø14']],
  ])('%s has the sizes of the leg as dimensions', (log, sizes) => {
    const found = texts(svgOf(log))
    expect(found.filter((text) => sizes.includes(text as string)).sort()).toEqual([...sizes].sort())
    expect(svgOf(log)).not.toMatch(/NaN|undefined/)
  })

  test('the block of holes is five squares by two, with a hole in the middle of each, wider from each to the next', () => {
    const svg = svgOf('couponHoles knee')
    const [left, bottom, wide, high] = /<path class="thick fill-tone" d="M([\d.]+),([\d.]+)h([\d.]+)v-([\d.]+)h-/
      .exec(svg)!
      .slice(1)
      .map(Number) as [number, number, number, number]
    const square = wide / 5
    expect(high / square).toBeCloseTo(2, 3)
    const circles = [...svg.matchAll(/<circle [^>]*cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/g)].map((found) => found.slice(1).map(Number))
    expect(circles.map(([x, y]) => [(x! - left) / square, (bottom - y!) / square])).toEqual(
      Array.from({ length: 10 }, (_, i) => [expect.closeTo((i % 5) + 0.5, 2), expect.closeTo(i < 5 ? 1.5 : 0.5, 2)]),
    )
    const radii = circles.map(([, , r]) => r!)
    expect(radii).toEqual([...radii].sort((a, b) => a - b))
    // The block is drawn to scale: a square is 15 mm wide, and the first hole 3.886 mm.
    expect((2 * radii[0]!) / square).toBeCloseTo(3.886 / 15, 3)
  })

  test('the plate is drawn to scale, its ring in the middle', () => {
    const svg = svgOf('couponPlate knee')
    const [wide, high] = /<path class="thick fill-tone" d="M[\d.]+,[\d.]+h([\d.]+)v-([\d.]+)h-/.exec(svg)!.slice(1).map(Number) as [
      number,
      number,
    ]
    const [outer, inner] = [...svg.matchAll(/<circle [^>]*r="([\d.]+)"/g)].map(([, r]) => 2 * Number(r))
    expect([high / wide, outer! / wide, inner! / wide]).toEqual([96 / 84, 40 / 84, 14 / 84].map((x) => expect.closeTo(x, 3)))
  })
})

describe('learn takes each', () => {
  test('holes: narrower ones are named, with how much', () => {
    const { one } = compared(
      'couponHoles knee',
      six.map((i) => [4 + 0.02 * i, 3.94 + 0.02 * i + 0.1 * scatter(i)]),
    )
    expect(one).toMatchObject({ state: 'below' })
    expect(one!.measured!.in('mm')).toBeCloseTo(-0.06, 2)
    expect(one!.means).toMatch(/draw them larger/)
  })

  test('bars: the share of upright ones against the range of the material', () => {
    const { low, si } = materialOf('ASA').acrossLayersRatio!
    const rows = (share: number) => six.map((i) => [60 * (1 + scatter(i)), 60 * share * (1 + scatter(i + 7))])
    expect(compared('couponBars ASA', rows(si)).one!.state).toBe('agrees')
    expect(compared('couponBars ASA', rows(0.6 * low)).one).toMatchObject({
      state: 'below',
      means: expect.stringMatching(/layers hold less/),
    })
  })

  test('bosses split at the press fit of a thick ring (Lamé) whose hoop stress is the strength', () => {
    const { outerDiameter, axis } = bench.x.bosses[bench.x.joints.hip.boss as string]!
    const boss = bench.x.bosses[bench.x.joints.hip.boss as string]!
    const { modulus, poissonRatio } = materialState(bench, boss.material).elastic()
    const steel = materialState(bench, 'steel 12.9').elastic()
    const printed = materialOf(boss.material)
    const [d, D] = [pinSizeAt(bench.x, 'hip').diameter, outerDiameter]
    const hoop = (D * D + d * d) / (D * D - d * d)
    const perPressure = (hoop + poissonRatio) / modulus + (1 - steel.poissonRatio) / steel.modulus
    const share = axis === 'alongLayers' ? printed.acrossLayersRatio!.si : 1
    const expected = (d * perPressure * printed.tensileStrength!.si * share) / hoop
    const mm = 1000 * expected
    const { one } = compared(
      'couponSplit hip',
      six.map((i) => [1000 * d, 1000 * d - mm * (1 + scatter(i))]),
    )
    expect(one!.predicted.si / expected).toBeCloseTo(1, 6)
    expect(one!.state).toBe('agrees')
    expect(
      compared(
        'couponSplit hip',
        six.map((i) => [1000 * d, 1000 * d - 0.2 * mm * (1 + scatter(i))]),
      ).one!.state,
    ).toBe('below')
  })

  test('a cord on a printed drum: friction by Euler', () => {
    const rows = (mu: number) => six.map((i) => [5, 5 * Math.exp((mu + 0.1 * scatter(i)) * Math.PI), 0.5])
    expect(compared('couponDrum knee', rows(0.14)).one).toMatchObject({ state: 'agrees' })
    expect(compared('couponDrum knee', rows(0.45)).one).toMatchObject({ state: 'above' })
  })

  test('a sandwich: torque to loosen falls as the clamp load', () => {
    const [group] = Object.keys(leg.bolts) as [string]
    const { preload, after } = clampLoadAt(bench, group)
    const rows = (factor: number) =>
      [1, 3, 7].map((days, i) => [days, 1, (factor * after(days, 296.15) * (1 + scatter(i))) / preload] as const)
    expect(compared(`couponSandwich ${group}`, rows(1)).one!.state).toBe('agrees')
    expect(compared(`couponSandwich ${group}`, rows(0.3)).one!.state).toBe('below')
  })

  test('a heated plate: twice the calculated rise is above, whatever the power', () => {
    const first = compared(
      'couponPlate knee',
      [5, 10, 15].map((power, i) => [power, 20 + 7 * power * (1 + scatter(i)), 20]),
    ).one!
    const ratio = first.measured!.si
    const rows = (factor: number) =>
      [5, 10, 15].map((power, i) => [power, 20 + ((7 * factor) / ratio) * power * (1 + scatter(i)), 20] as const)
    expect(compared('couponPlate knee', rows(2)).one).toMatchObject({ state: 'above', means: expect.stringMatching(/gets hotter/) })
    expect(compared('couponPlate knee', rows(1)).one).toMatchObject({ state: 'agrees' })
  })
})

describe('slips', () => {
  test.each<[string, string, readonly (readonly number[])[]]>([
    ['inches', 'couponHoles hip', six.map((i) => [4, 0.157 + 0.001 * i])],
    ['flat in newton, upright in kilograms', 'couponBars ASA', six.map((i) => [600 + i, 3 + 0.01 * i])],
    ['degrees for turns', 'couponDrum knee', six.map((i) => [5, 8 + 0.1 * i, 180])],
    ['kelvin', 'couponPlate knee', six.map((i) => [10, 320 + i, 20])],
  ])('%s (%s) is named, and not compared', (_, log, rows) => {
    const { one, remarks } = compared(log, rows)
    expect(one).toBeUndefined()
    expect(remarks).toContainEqual(expect.objectContaining({ what: 'implausible', message: expect.stringMatching(/expected/) }))
  })

  test('few rows, another file and a missing column are named', () => {
    expect(compared('couponBars ASA', [[60, 40]]).remarks).toContainEqual(expect.objectContaining({ what: 'few readings' }))
    const { csv } = coupons.find(({ log }) => log === 'couponHoles hip')!
    const wrong = corrections(leg, { 'couponHoles knee': `${csv}4,4\n4,4\n4,4\n` })
    expect(wrong.remarks).toContainEqual(expect.objectContaining({ what: 'wrong file' }))
    expect(() => corrections(leg, { 'couponHoles knee': 'drawn hole [mm]\n4\n' })).toThrow(InputError)
    expect(() => corrections(leg, { 'couponHoles ankle': csv })).toThrow(/couponHoles (hip|knee)/)
  })

  test('coupons go with other logs, and move no field', () => {
    const { csv } = coupons.find(({ log }) => log === 'couponHoles knee')!
    const { moved, compared: all, leg: next } = learn(leg, { 'couponHoles knee': `${csv}4,3.99\n4.02,4\n4.04,4.03\n` }, { cases: ['walk'] })
    expect(moved).toEqual([])
    expect(all).toHaveLength(1)
    expect(next).toEqual(leg)
  })
})
