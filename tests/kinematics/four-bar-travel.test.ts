import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fourBarDeadPoint, fourBarKneePose } from '../../src/kinematics/index.js'
import { RodGeometry } from '../../src/leg/plans/rod-geometry.js'

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const STEPS = 100

/** A linkage and a range of the knee that keeps clear of dead points. */
const clear = fc
  .record({
    crank: within(0.02, 0.4),
    coupler: within(0.02, 0.4),
    rocker: within(0.02, 0.4),
    rockerAngleAtStraightKnee: within(-Math.PI, Math.PI),
    kneeLowest: within(-2, 1),
    travel: within(0.3, 2.5),
    crankSide: fc.constantFrom('positive' as const, 'negative' as const),
  })
  .map(({ kneeLowest, travel, ...links }) => ({ linkage: { ...links, ground: 0.15 }, kneeLowest, kneeHighest: kneeLowest + travel }))
  .filter(({ linkage, kneeLowest, kneeHighest }) => {
    const { margin, state } = fourBarDeadPoint.si({ ...linkage, kneeLowest, kneeHighest })
    return state === 'drivesThroughout' && margin > 0.05
  })

test('between dead points the crank turns as its ratio says, without a jump', () => {
  let goesRound = 0
  fc.assert(
    fc.property(clear, ({ linkage, kneeLowest, kneeHighest }) => {
      const step = (kneeHighest - kneeLowest) / STEPS
      const poses = Array.from({ length: STEPS + 1 }, (_, i) => fourBarKneePose.si({ ...linkage, kneeAngle: kneeLowest + i * step }))
      for (const [i, { crankAngle }] of poses.slice(1).entries()) {
        const ratios = [poses[i]!, poses[i + 1]!].map(({ ratio }) => ratio)
        const [least, most] = [Math.min(...ratios), Math.max(...ratios)]
        // The mean ratio of a step lies near those at its ends.
        const mean = (crankAngle - poses[i]!.crankAngle) / step
        expect(Math.abs(mean - (least + most) / 2)).toBeLessThan(0.1 + 3 * (most - least))
      }
      if (linkage.rocker > linkage.ground) goesRound++
    }),
    { numRuns: 300 },
  )
  expect(goesRound).toBeGreaterThan(20)
})

test('the drum of a knee turns without a jump where crank and rocker stand more than half a turn apart', () => {
  // Rocker at 200°, crank at 10°: 190° apart there, less than half a turn at one end of the range.
  const x = {
    links: { upper: { length: 0.15 } },
    joints: {
      knee: { range: { lowest: 0, highest: 0.9 }, through: { kind: 'rod', crank: 0.06, rod: 0.0662, rocker: 0.03, rockerAngle: 2.8 } },
    },
  } as unknown as ConstructorParameters<typeof RodGeometry>[0]
  const rod = new RodGeometry(x)
  const apart = [0, 0.3, 0.6, 0.9].map((knee) => 2.8 + knee - rod.pose(knee).crankAngle)
  expect(Math.min(...apart)).toBeLessThan(Math.PI)
  expect(Math.max(...apart)).toBeGreaterThan(Math.PI)
  for (let knee = 0; knee < 0.9; knee += 0.01) expect(Math.abs(rod.drum(0, knee + 0.01) - rod.drum(0, knee))).toBeLessThan(0.1)
})

test.each([
  ['the links do not reach', { rocker: 0.026, coupler: 0.1 }, 0.3, 'apart'],
  ['crank and rod are in line', { rocker: 0.03, coupler: 0.15 }, Math.PI - 1.9, 'crankDeadPoint'],
] as const)('where %s the pose names it, and no drum torque is finite', (_, links, kneeAngle, state) => {
  const pose = fourBarKneePose({
    ground: '150 mm',
    crank: '30 mm',
    coupler: [links.coupler, 'm'],
    rocker: [links.rocker, 'm'],
    rockerAngleAtStraightKnee: '1.9 rad',
    crankSide: 'positive',
    kneeAngle: [kneeAngle, 'rad'],
  })
  expect(pose.state).toBe(state)
  expect(pose.ratio.si).toBe(Number.POSITIVE_INFINITY)
})
