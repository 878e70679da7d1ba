import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { footForces } from '../../src/kinematics/index.js'

/** By tests/oracles/kinematics-foot-forces.py. */
const oracle = JSON.parse(readFileSync(new URL('../oracles/kinematics-foot-forces.json', import.meta.url), 'utf8')) as {
  feet: number[][]
  normals: number[][]
  friction: number
  mass: number
  com: number[]
  acceleration: number[]
  moment: number[]
  forces: number[] | null
}[]
const v = <U extends string>([x, y, z]: readonly number[], unit: U) => ({ x: [x!, unit], y: [y!, unit], z: [z!, unit] }) as const
const solve = (c: Omit<(typeof oracle)[number], 'forces'>) =>
  footForces({
    feet: c.feet.map((at, i) => ({ at: v(at, 'm'), normal: { x: c.normals[i]![0]!, y: c.normals[i]![1]!, z: c.normals[i]![2]! } })),
    friction: c.friction,
    mass: [c.mass, 'kg'],
    centreOfMass: v(c.com, 'm'),
    acceleration: v(c.acceleration, 'm/s^2'),
    moment: v(c.moment, 'N m'),
  })

describe('forces of standing feet inside friction cones', () => {
  test('agree with a general minimiser, and where a linear programme has no solution there is none', () => {
    const count = { feasible: 0, not: 0, onTheVerge: 0 }
    for (const c of oracle) {
      const answer = solve(c)
      expect(answer.feasible).toBe(c.forces !== null)
      if (!answer.feasible) {
        count.not++
        continue
      }
      count.feasible++
      if (answer.worstUse.si > 1 - 1e-9) count.onTheVerge++
      const f = answer.forces.flatMap(({ x, y, z }) => [x.si, y.si, z.si])
      for (const [i, x] of c.forces!.entries()) expect(Math.abs(f[i]! - x)).toBeLessThan(2e-3)
      const squares = (forces: readonly number[]) => forces.reduce((sum, x) => sum + x * x, 0)
      expect(squares(f)).toBeLessThan(squares(c.forces!) * (1 + 1e-6))
    }
    expect(count.feasible).toBe(32)
    expect(count.onTheVerge).toBeGreaterThan(5)
    expect(count.not).toBe(32)
  })

  test('balance force and moment, push only and stay inside the cones', () => {
    const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(
      fc.property(
        fc.array(fc.tuple(within(-0.3, 0.3), within(-0.2, 0.2), within(-0.35, -0.2)), { minLength: 3, maxLength: 6 }),
        fc.tuple(within(-2, 2), within(-2, 2), within(-2, 2)),
        within(0.2, 1),
        (feet, acceleration, friction) => {
          const mean = [0, 1].map((k) => feet.reduce((sum, foot) => sum + foot[k]!, 0) / feet.length)
          const com = [...mean, 0]
          const c = {
            feet,
            normals: feet.map(() => [0, 0, 1]),
            friction,
            mass: 10,
            com,
            acceleration: [...acceleration],
            moment: [0, 0, 0],
          }
          const answer = solve(c)
          if (!answer.feasible) return
          const total = [0, 0, 0, 0, 0, 0]
          answer.forces.forEach(({ x, y, z }, i) => {
            const [fx, fy, fz] = [x.si, y.si, z.si]
            const [ax, ay, az] = feet[i]!.map((p, k) => p - com[k]!) as [number, number, number]
            for (const [k, part] of [fx, fy, fz, ay * fz - az * fy, az * fx - ax * fz, ax * fy - ay * fx].entries()) total[k]! += part
            expect(fz).toBeGreaterThanOrEqual(-1e-9)
            expect(Math.hypot(fx, fy)).toBeLessThanOrEqual(friction * fz + 1e-6)
          })
          const wanted = [10 * acceleration[0], 10 * acceleration[1], 10 * (acceleration[2] + 9.80665), 0, 0, 0]
          for (const [k, x] of total.entries()) expect(x).toBeCloseTo(wanted[k]!, 6)
        },
      ),
      { seed: 4 },
    )
  })

  test('four feet at the corners of a rectangle share by the lever arms; at rest nobody pulls sideways', () => {
    const corners = [
      [0.2, 0.12],
      [0.2, -0.12],
      [-0.2, 0.12],
      [-0.2, -0.12],
    ] as const
    const feet = corners.map(([x, y]) => ({ at: v([x, y, -0.28], 'm') }))
    const answer = footForces({ feet, friction: 0.6, mass: '10.5 kg', centreOfMass: { x: '40 mm', y: '0 mm', z: '0 mm' } })
    if (!answer.feasible) throw new Error('stands')
    const weight = 10.5 * 9.80665
    // A fifth of the half wheelbase forward: (1 ± 0.2) / 4 each, textbook statics.
    expect(answer.normals.map(({ si }) => si)).toEqual([1.2, 1.2, 0.8, 0.8].map((s) => expect.closeTo((s * weight) / 4, 6)))
    expect(answer.worstUse.si).toBeLessThan(1e-9)
  })

  test('a slope steeper than the friction angle holds nobody; a moment that only a line of feet would take, none', () => {
    const feet = [
      [0.2, 0.1],
      [0.2, -0.1],
      [-0.2, 0.1],
      [-0.2, -0.1],
    ].map(([x, y]) => ({ at: v([x!, y!, 0], 'm') }))
    const onSlope = (degrees: number) => {
      const s = (degrees * Math.PI) / 180
      return footForces({
        feet,
        friction: 0.5,
        mass: '10 kg',
        centreOfMass: { x: '0 mm', y: '0 mm', z: '100 mm' },
        gravity: v([-9.81 * Math.sin(s), 0, -9.81 * Math.cos(s)], 'm/s^2'),
      })
    }
    // atan 0.5 = 26.565 deg.
    expect(onSlope(26.5).feasible).toBe(true)
    expect(onSlope(26.6).feasible).toBe(false)
    const steep = onSlope(20)
    expect(steep.feasible && steep.worstUse.si).toBeGreaterThan(Math.tan((20 * Math.PI) / 180) / 0.5 - 1e-9)
    const two = { feet: [feet[0]!, feet[3]!], friction: 0.8, mass: '10 kg' } as const
    expect(footForces({ ...two, centreOfMass: { x: '0 mm', y: '0 mm', z: '280 mm' } }).feasible).toBe(true)
    expect(footForces({ ...two, centreOfMass: { x: '50 mm', y: '0 mm', z: '280 mm' } }).feasible).toBe(false)
    expect(() => footForces({ ...two, feet: [], centreOfMass: { x: '0 mm', y: '0 mm', z: '0 mm' } })).toThrow(/feet/)
    expect(() =>
      footForces({ ...two, feet: [{ at: v([0, 0, 0], 'm'), normal: { x: 0, y: 0, z: 0 } }], centreOfMass: v([0, 0, 1], 'm') }),
    ).toThrow(/feet\[0\]\.normal/)
  })
})
