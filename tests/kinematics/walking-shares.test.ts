import fc from 'fast-check'
import { expect, test } from 'vitest'
import { STANCE_PARTS, walkingShares } from '../../src/kinematics/index.js'

const body = { legs: 4, dutyFactor: 0.75, spacing: '420 mm', width: '306 mm', stepLength: '120 mm' } as const
const unit = { noNaN: true, noDefaultInfinity: true }

test('a leg that stands alone on its side carries half of the weight, a third more than its mean', () => {
  const { shares, largest } = walkingShares(body)
  expect(largest.si).toBeCloseTo(0.5, 12)
  expect(shares.length).toBe(2 * STANCE_PARTS)
})

test('the front leg and the hind one are each other’s mirror in time', () => {
  const { shares } = walkingShares(body)
  const [front, hind] = [shares.slice(0, STANCE_PARTS), shares.slice(STANCE_PARTS)]
  for (const [i, share] of front.entries()) expect(share.si).toBeCloseTo(hind[STANCE_PARTS - 1 - i]!.si, 9)
})

test('feet carry the whole weight: no leg less over its stance than its share, and some leg half of it where four walk', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.5, max: 0.95, ...unit }),
      fc.double({ min: -0.2, max: 0.2, ...unit }),
      fc.double({ min: -0.2, max: 0.2, ...unit }),
      (dutyFactor, along, aside) => {
        const given = {
          legs: 4,
          dutyFactor,
          spacing: 0.4,
          width: 0.3,
          stepLength: 0.1,
          weightForward: 0.4 * along,
          weightLeft: 0.3 * aside,
        }
        const { shares, largest } = walkingShares.si(given)
        // Parts of the stance at their largest, averaged and summed over the four legs: at least the weight.
        expect((2 * shares.reduce((sum, share) => sum + share, 0) * dutyFactor) / STANCE_PARTS).toBeGreaterThan(1 - 1e-9)
        expect(largest).toBeLessThanOrEqual(1 + 1e-12)
        expect(largest).toBeGreaterThan(dutyFactor < 0.9 ? 0.5 - 1e-9 : 0.25)
        // The side that it stands on does not count: legs are built alike.
        const mirrored = walkingShares.si({ ...given, weightLeft: -given.weightLeft }).shares
        for (const [i, share] of mirrored.entries()) expect(share).toBeCloseTo(shares[i]!, 6)
      },
    ),
    { numRuns: 60 },
  )
})

test('where all feet fly between steps, those that stand carry more', () => {
  const { shares } = walkingShares.si({
    legs: 4,
    dutyFactor: 0.2,
    spacing: 0.4,
    width: 0.3,
    stepLength: 0.1,
    weightForward: 0,
    weightLeft: 0,
  })
  // A single foot at a time, for four fifths of the stride.
  for (const share of shares) expect(share).toBeCloseTo(1 / 0.8, 9)
})

test('bad input is named', () => {
  expect(() => walkingShares({ ...body, legs: 1 })).toThrow(/legs/)
  expect(() => walkingShares({ ...body, dutyFactor: 0 })).toThrow(/dutyFactor/)
})
