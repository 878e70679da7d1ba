import fc from 'fast-check'
import { expect, test } from 'vitest'
import { StandingFeet } from '../../src/kinematics/springy-feet.js'
import { supportMargin } from '../../src/kinematics/support-margin.js'

/** Feet on a coarse grid as often as anywhere: many then carry alike, and several lift off at once. */
const place = fc.oneof(fc.integer({ min: -2, max: 2 }), fc.double({ min: -2, max: 2, noNaN: true }))
const point = fc.record({ x: place, y: place })

test('inside their polygon the feet carry the whole weight, balance its moments and never pull', () => {
  let held = 0
  fc.assert(
    fc.property(fc.array(point, { minLength: 1, maxLength: 8 }), point, (places, at) => {
      const feet = new StandingFeet()
      for (const { x, y } of places) feet.add(x, y)
      feet.carry(at.x, at.y)
      const shares = [...feet.shares.subarray(0, feet.count)]
      expect(Math.min(...shares)).toBeGreaterThanOrEqual(0)
      if (places.length < 2) return
      const sum = (of: (i: number) => number) => shares.reduce((all, share, i) => all + share * of(i), 0)
      expect(sum(() => 1)).toBeCloseTo(1, 9)
      if (places.length < 3 || supportMargin(places, at) < 1e-6) return
      held++
      expect(sum((i) => places[i]!.x)).toBeCloseTo(at.x, 6)
      expect(sum((i) => places[i]!.y)).toBeCloseTo(at.y, 6)
    }),
    { numRuns: 2000 },
  )
  expect(held).toBeGreaterThan(100)
})

test('outside it the two feet beside the weight carry all of it', () => {
  const feet = new StandingFeet()
  for (const [x, y] of [
    [0, 0],
    [1, 0],
    [0, 1],
    [1, 1],
  ] as const)
    feet.add(x, y)
  feet.carry(0.25, -0.5)
  expect([...feet.shares.subarray(0, 4)]).toEqual([0.75, 0.25, 0, 0])
})
