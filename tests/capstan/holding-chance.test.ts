import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { frictionToHold, holdingChance, travelLimits } from '../../src/capstan/index.js'
import { randomStream } from '../../src/numeric/index.js'

const hip = {
  axialRigidity: 35000,
  pretension: 140,
  pinionRadius: 0.0075,
  drumRadius: 0.0465,
  span: 0.03046,
  pinionWrap: 24.1,
  drumWrap: 3.49,
  travel: 1.92,
}

test('the friction that holds a torque is the one whose holding torque it is', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 13, noNaN: true }), (torque) => {
      const friction = frictionToHold.si({ ...hip, torque })
      expect(travelLimits.si({ ...hip, friction, hold: 'frictionOnly' }).holdingTorque / torque).toBeCloseTo(1, 8)
    }),
  )
  expect(frictionToHold.si({ ...hip, torque: 0 })).toBe(0)
  // No friction holds more than a slack span allows.
  expect(frictionToHold.si({ ...hip, torque: 40 })).toBe(Number.POSITIVE_INFINITY)
})

test('the chance is the share of drives with friction drawn from the interval that hold', () => {
  const frictionNeeded = frictionToHold.si({ ...hip, torque: 11 })
  const { holds, slips, index } = holdingChance.si({ frictionNeeded, frictionLow: 0.08, frictionHigh: 0.2, coverage: 0.9 })
  expect(holds + slips).toBeCloseTo(1, 14)
  expect(index).toBeGreaterThan(0)
  const draw = randomStream(3)
  // Nine tenths of a lognormal lie within 1.6448536 standard deviations of its logarithm (table of the normal distribution).
  const [mean, deviation] = [Math.log(Math.sqrt(0.08 * 0.2)), Math.log(0.2 / 0.08) / (2 * 1.6448536)]
  const drawn = Array.from({ length: 2000 }, () => draw.lognormal(mean, deviation))
  const held = drawn.filter((friction) => travelLimits.si({ ...hip, friction, hold: 'frictionOnly' }).holdingTorque >= 11).length
  // Three standard deviations of a share of 2000.
  expect(Math.abs(held / 2000 - holds)).toBeLessThan(3 * Math.sqrt((holds * slips) / 2000))
})

test('ends and errors', () => {
  const x = { frictionLow: 0.08, frictionHigh: 0.2, coverage: 0.9 }
  expect(holdingChance.si({ ...x, frictionNeeded: 0 }).holds).toBe(1)
  expect(holdingChance.si({ ...x, frictionNeeded: Math.sqrt(0.08 * 0.2) }).holds).toBeCloseTo(0.5, 14)
  expect(holdingChance.si({ ...x, frictionNeeded: Number.POSITIVE_INFINITY }).holds).toBe(0)
  expect(holdingChance.si({ ...x, frictionNeeded: 0.08 }).slips).toBeCloseTo(0.05, 12)
  expect(holdingChance({ frictionNeeded: 0.05, frictionLow: 0.08, frictionHigh: 0.2 }).holds.notes).toBeUndefined()
  expect(holdingChance({ frictionNeeded: 0.02, frictionLow: 0.08, frictionHigh: 0.2 }).holds.notes?.[0]?.text).toContain('1e-4')
  expect(() => holdingChance({ frictionNeeded: 0.1, frictionLow: 0.2, frictionHigh: 0.1 })).toThrow(
    'frictionHigh is 0.1; must be above the low end',
  )
})
