import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { driveCoupling, footPath, jerkLimitedMove, jointMove, strideTable, threeJointLeg } from '../../src/kinematics/index.js'

const limits = (maxRate: number, maxAcceleration: number, rampTime: number) =>
  ({ maxRate: [maxRate, 'rad/s'], maxAcceleration: [maxAcceleration, 'rad/s^2'], rampTime: [rampTime, 's'] }) as const
const angles = (a: number, b: number, c: number) => ({ sidewaysHip: [a, 'rad'], hip: [b, 'rad'], knee: [c, 'rad'] }) as const

describe('moves from rest to rest', () => {
  test('arrive together, within every limit, with rates and accelerations that are derivatives', () => {
    const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(
      fc.property(
        fc.tuple(within(-2, 2), within(-2, 2), within(-2, 2)),
        fc.tuple(within(-2, 2), within(-2, 2), within(-2, 2)),
        within(0.5, 10),
        within(5, 200),
        within(0.005, 0.2),
        (from, to, rate, acceleration, ramp) => {
          const one = limits(rate, acceleration, ramp)
          const move = jointMove({ from: angles(...from), to: angles(...to), limits: { sidewaysHip: one, hip: one, knee: one } })
          const at = (t: number) => {
            const out = new Float64Array(9)
            move.stateInto(out, 0, t)
            return out
          }
          const T = move.timeSi
          for (let j = 0; j < 3; j++) {
            expect(at(-1)[j]).toBeCloseTo(from[j]!, 12)
            expect(at(T + 1)[j]).toBeCloseTo(to[j]!, 9)
            expect(at(T / 2)[j]).toBeCloseTo((from[j]! + to[j]!) / 2, 9)
            expect(Math.abs(at(T)[3 + j]!)).toBeLessThan(1e-9)
          }
          const h = T * 1e-5
          for (let k = 1; k < 60; k++) {
            const [before, here, after] = [at((k * T) / 60 - h), at((k * T) / 60), at((k * T) / 60 + h)]
            for (let j = 0; j < 3; j++) {
              expect(Math.abs(here[3 + j]!)).toBeLessThanOrEqual(rate * (1 + 1e-9))
              expect(Math.abs(here[6 + j]!)).toBeLessThanOrEqual(acceleration * (1 + 1e-9))
              const jerk = (after[6 + j]! - before[6 + j]!) / (2 * h)
              expect(Math.abs(jerk)).toBeLessThanOrEqual((acceleration / ramp) * (1 + 1e-6))
              expect(Math.abs((after[j]! - before[j]!) / (2 * h) - here[3 + j]!)).toBeLessThan(1e-6 * (1 + rate))
              expect(Math.abs((after[3 + j]! - before[3 + j]!) / (2 * h) - here[6 + j]!)).toBeLessThan(1e-3 * (1 + acceleration))
            }
          }
        },
      ),
      { seed: 11, numRuns: 40 },
    )
  })

  test('the slowest joint takes the time it takes alone; one that stays, stays', () => {
    const one = limits(6, 80, 0.02)
    const move = jointMove({
      from: angles(0.1, 0, 1),
      to: angles(0.1, 1.2, 0.6),
      limits: { sidewaysHip: one, hip: one, knee: one },
    })
    expect(move.time.si).toBeCloseTo(jerkLimitedMove({ distance: '1.2 rad', ...one }).moveTime.si, 12)
    const out = new Float64Array(9)
    move.stateInto(out, 0, 0.1)
    expect([out[0], out[3], out[6]]).toEqual([0.1, 0, 0])
    expect(jerkLimitedMove({ distance: '0 rad', ...one }).moveTime.si).toBe(0)
    expect(() => jointMove({ from: angles(0, 0, 0), to: angles(1, 0, 0), limits: { sidewaysHip: one, hip: one } as never })).toThrow(
      /limits\.knee/,
    )
  })
})

describe('a stride as a table', () => {
  const leg = threeJointLeg({ hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm' })
  const given = {
    leg,
    path: footPath({
      midStance: { x: '0 mm', y: '58 mm', z: '-285 mm' },
      stanceSweep: '110 mm',
      stridePeriod: '0.55 s',
      dutyFactor: 0.6,
      lift: '40 mm',
    }),
    coupling: driveCoupling({ knee: 'cordFromHip', ratio: 0.8 }),
    load: { mass: '10.5 kg', legShare: 0.25 },
  } as const

  test('has a row a tick, drum angles by the coupling, and reads back from its text', () => {
    const table = strideTable(given)
    if (!table.walkable) throw new Error(table.reason)
    expect(table.rows.length).toBe(550)
    expect(table.step.si).toBeCloseTo(1e-3, 15)
    const column = (name: string) => table.columns.indexOf(name)
    for (const row of table.rows) {
      const [hip, knee] = [row[column('joint angle hip [rad]')]!, row[column('joint angle knee [rad]')]!]
      expect(row[column('drum angle knee [rad]')]).toBeCloseTo(hip + 0.8 * knee, 12)
      const foot = new Float64Array(3)
      leg.si.footInto(foot, 0, row[column('joint angle sideways hip [rad]')]!, hip, knee)
      for (const [k, axis] of ['x', 'y', 'z'].entries()) expect(row[column(`foot ${axis} [m]`)]).toBeCloseTo(foot[k]!, 12)
    }
    const [header, ...lines] = table.csv().trimEnd().split('\n')
    expect(header!.split(',')).toEqual(table.columns)
    expect(lines.length).toBe(550)
    for (const [i, line] of lines.entries())
      for (const [k, text] of line.split(',').entries())
        expect(Math.abs(Number(text) - table.rows[i]![k]!)).toBeLessThanOrEqual(1e-8 * Math.abs(table.rows[i]![k]!))
  })

  test('a rate that does not divide the stride, and a path out of reach', () => {
    expect(() => strideTable({ ...given, rate: '999 Hz' })).toThrow(
      /rate is '999 Hz'; must divide the stride into whole ticks, such as 998\.2 Hz/,
    )
    expect(() => strideTable({ ...given, rate: '1 Hz' })).toThrow(/rate/)
    const far = footPath({
      midStance: { x: '0 mm', y: '58 mm', z: '-340 mm' },
      stanceSweep: '200 mm',
      stridePeriod: '1 s',
      dutyFactor: 0.5,
    })
    const answer = strideTable({ ...given, path: far })
    expect(answer.walkable || answer.reason).toBe('unreachable')
    expect(() => strideTable({ ...given, drives: {} } as never)).toThrow(/drives/)
  })
})
