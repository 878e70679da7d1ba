import { describe, expect, test } from 'vitest'
import { corrections } from '../../src/leg/learning/corrections.js'
import { cordSlip, cordWindup } from './plain-cord.js'
import { COMPARED, drawOf, LEGS, PLAIN_LOGS } from './plain-stands.js'

const csv = (head: string, rows: readonly (readonly (number | string)[])[]) => `${head}\n${rows.map((row) => row.join(',')).join('\n')}\n`
const told = ({ remarks }: ReturnType<typeof corrections>) => remarks.map(({ what, message }) => `${what}: ${message.slice(0, 14)}`)
const whats = ({ remarks }: ReturnType<typeof corrections>) => remarks.map(({ what }) => what)

describe('the plain cord', () => {
  // Span of 20 mm, wraps of steel-like cord on 16 and 96 mm.
  const R1 = { rigidity: 20e3, mu: 0.15, tension: 60, small: 8e-3, large: 48e-3, axes: Math.hypot(56e-3, 20e-3), turns: 30 }

  test('winds up as the closed form of a sticking cord does', () => {
    // Closed form of both branches with slip arcs T = T0 exp(mu phi), computed apart for 0.5 and 1 N m; cells of an arc leave a hundredth.
    const [half, whole] = cordWindup({ ...R1, turns: 3 }, [0.5, 1]) as [number, number]
    expect(half / 0.196504e-3).toBeCloseTo(1, 2)
    expect(whole / 0.569243e-3).toBeCloseTo(1, 2)
  })

  test('slips at 2 r T tanh(mu wrap / 2) where its spans are long against its wraps', () => {
    const long = { ...R1, axes: 200, turns: 3 }
    const wrap = 7 * Math.PI + 2 * Math.asin(56e-3 / long.axes)
    expect(cordSlip(long) / (2 * R1.large * R1.tension * Math.tanh((R1.mu * wrap) / 2))).toBeCloseTo(1, 2)
  })
})

describe('what was found on plain stands', () => {
  test('ends that scatter widely keep no more than the cord has: their band ends at 1', () => {
    const { leg, moved } = corrections(LEGS.cord, { 'pullOut knee': csv('breaking force [N]', [[2000], [2900], [2500]]) })
    expect(moved[0]!.state).toMatch(/corrected|confirmed/)
    const { high } = (leg.joints.knee.drive as unknown as { endRetention: { high: number } }).endRetention
    expect(high).toBe(1)
  })

  test('a gauge that starts below zero does not fold the line', () => {
    const head = 'upright force [N],upright deflection [mm]'
    const at = (zero: number, sign = 1) =>
      csv(
        head,
        [0, 5, 10, 15, 20].map((force, i) => [force, sign * (zero + 0.06 * force) + 0.002 * (i % 2)]),
      )
    const measured = (text: string) => corrections(LEGS.cord, { footDeflection: text }).compared[0]!.measured!.si
    for (const text of [at(0), at(-0.5), at(0.3), at(-0.5, -1)]) expect(measured(text) / 0.06e-3).toBeCloseTo(1, 2)
  })

  test('equal readings of a coarse display count each, and the interval holds its step', () => {
    const text = csv('free play [deg]', [['0.06'], ['0.06'], ['0.07'], ['0.06'], ['0.06']])
    const found = corrections(LEGS.belt, { 'freePlay hip': text })
    expect(whats(found)).toEqual([])
    expect(found.moved[0]!.readings).toBe(5)
    const same = corrections(LEGS.belt, { 'freePlay hip': csv('free play [deg]', [['0.06'], ['0.06'], ['0.06'], ['0.06']]) }).found[0]!
    // Half a step of 0.01 deg in 0.06 deg, uniform: 1.96 times a twelfth of its square.
    expect((same.interval![1] - same.interval![0]) / 2 / same.value).toBeGreaterThan((1.96 * 0.01) / 0.06 / Math.sqrt(12))
  })

  test('a whole run of single readings that was pasted twice counts once', () => {
    const run = [2510, 2440, 2380, 2600, 2490].map((x) => [x])
    const found = corrections(LEGS.cord, { 'pullOut knee': csv('breaking force [N]', [...run, ...run]) })
    expect(whats(found).filter((what) => what === 'duplicate')).toHaveLength(5)
    expect(found.moved[0]!.readings).toBe(5)
  })

  test('a coupon is no better known than its gauge, unless the log says so', () => {
    const rows = [3.9, 3.95, 4, 4.05].map((hole, i) => [hole, (hole - 0.05 + 0.002 * (i % 2)).toFixed(3)])
    const width = (text: string) => {
      const [low, high] = corrections(LEGS.cord, { 'couponHoles knee': text }).compared[0]!.interval!
      return (high.si - low.si) / 2
    }
    const text = csv('drawn hole [mm],measured hole [mm]', rows)
    expect(width(text)).toBeGreaterThan(0.02e-3)
    expect(width(`# gauge zero: 0.005 mm\n${text}`)).toBeLessThan(0.01e-3)
    expect(whats(corrections(LEGS.cord, { 'couponHoles knee': `# gauge zreo: 0.005 mm\n${text}` }))).toContain('instrument')
  })

  test('a sandwich that was loosened at once is one reading, however often its row repeats it', () => {
    const head = 'time [day],torque to loosen at once [N m],torque to loosen [N m]'
    const rows = (first: readonly number[]) =>
      csv(head, [
        [0.05, first[0]!, 0.9],
        [1, first[1]!, 0.8],
        [7, first[2]!, 0.72],
      ])
    const width = (first: readonly number[]) => {
      const [low, high] = corrections(LEGS.cord, { 'couponSandwich stack': rows(first) }).compared[0]!.interval!
      return high.si - low.si
    }
    expect(width([1, 1, 1]) / width([1, 1.0001, 0.9999])).toBeGreaterThan(1.5)
  })
})

describe('logs that mislead', () => {
  const clean = (log: string, readings: number) => {
    const one = PLAIN_LOGS.find((each) => each.log === log)!
    const { text, truth } = one.make(drawOf(77, 0), readings)
    const [head, ...rows] = text.trim().split('\n') as [string, ...string[]]
    return { leg: LEGS[one.leg], head, truth, rows: rows.map((row) => row.split(',').map(Number)) }
  }
  type Change = (rows: number[][]) => number[][]
  const column =
    (at: number, change: (x: number, i: number) => number): Change =>
    (rows) =>
      rows.map((row, i) => row.map((x, k) => (k === at ? change(x, i) : x)))
  const half = (factor: number) => (x: number, i: number) => (i < 5 ? x : x * factor)

  test.each<[string, string, number, Change, RegExp]>([
    ['half of the rows in kilograms', 'pretension knee', 10, column(1, half(1 / 9.80665)), /misfit|implausible/],
    ['half of the currents in another range', 'noLoad', 10, column(1, half(0.1)), /misfit|implausible/],
    ['half of the currents read at another zero', 'efficiency hip', 10, column(1, (x, i) => (i < 5 ? x : x + 8)), /misfit/],
    ['a cord that slipped on the way up', 'windup knee', 17, column(1, (x, i) => (i < 6 ? x : x + 1.2)), /misfit|implausible/],
    ['a spring that let go in the middle', 'springTorque knee', 10, column(1, (x, i) => (i < 6 ? x : x / 3)), /misfit|implausible/],
    ['one end that was pulled out by hand', 'pullOut knee', 10, column(0, (x, i) => (i === 4 ? 0.3 * x : x)), /spike/],
    ['one reading a tenth', 'freePlay hip', 10, column(0, (x, i) => (i === 4 ? x / 10 : x)), /spike/],
    ['half of the forces in kilograms', 'footDeflection', 10, column(0, half(1 / 9.80665)), /misfit|spike|implausible/],
    ['force and deflection swapped', 'footDeflection', 10, (rows) => rows.map(([a, b]) => [b!, a!]), /implausible/],
    ['flat and upright bars swapped', 'couponBars ASA', 10, (rows) => rows.map(([a, b]) => [b!, a!]), /implausible/],
    ['pin and hole swapped', 'couponSplit knee', 10, (rows) => rows.map(([a, b]) => [b!, a!]), /implausible/],
    ['time that runs backward', 'beltPitch hip', 10, (rows) => [...rows].reverse(), /order/],
    ['one drum pulled at ten times the force', 'couponDrum knee', 10, column(1, (x, i) => (i === 4 ? 10 * x : x)), /spike/],
  ])('%s (%s)', (_, log, readings, change, words) => {
    const { leg, head, rows, truth } = clean(log, readings)
    const at = (changed: number[][]) =>
      corrections(leg, {
        [log]: csv(
          head,
          changed.map((row) => row.map((x) => Number(x.toPrecision(5)))),
        ),
      })
    const before = told(at(rows))
    const after = at(change(rows))
    const more = told(after).filter((what) => !before.includes(what))
    expect(more.join(' ')).toMatch(words)
    // What is used all the same holds the truth, or was named as a misfit.
    for (const [path, made] of Object.entries(truth)) {
      const interval =
        path === COMPARED ? after.compared[0]?.interval?.map(({ si }) => si) : after.found.find((field) => field.path === path)?.interval
      if (interval !== undefined && !more.some((what) => what.startsWith('misfit'))) {
        expect(made, path).toBeGreaterThan(interval[0] as number)
        expect(made, path).toBeLessThan(interval[1] as number)
      }
    }
  })
})
