import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { comparisonAt } from '../../src/leg/assess/compare.js'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assemblyPlan, assess, controlSheet, describeLeg, withFields } from '../../src/leg/index.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { jointMotion } from '../../src/leg/parts/motion/values.js'
import { benchLeg } from '../../src/leg/plans/bench.js'
import { limitOf } from '../../src/leg/plans/control-limits.js'

const document = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
/** With the shorter pin, whose boss limits the current at its unfavourable end but holds without any. */
const leg = benchLeg(
  withFields(document, { 'pins.knee.lugThickness': '21 mm', 'pins.knee.cheekThickness': '17 mm', 'bosses.knee.engagement': '17 mm' }),
)

describe('the cautious limit', () => {
  test('is that of a print where a print may be weak, although a cord governs at typical values', () => {
    const never = controlSheet(document).joints.knee.currentLimits.at(-1)!
    expect(never.protects).toMatch(/loses the tension of its slack span/)
    expect(never.cautiousBy).toMatch(/^link eye on the pin: wears oval/)
    expect(never.cautious.si).toBeLessThan(0.6 * never.peakPhase.si)
  })

  test('counts the unfavourable ends of every check, not only of the one that governs at typical values', () => {
    const calculation = calculationOf(leg.x)
    const place = { event: 'drop', air: 'hot', age: 'new' } as const
    const here = calculation.instances.implied(placeOf(calculation, { leg: 'leg', joint: 'knee', ...place })) as never
    const own = calculation.get(jointMotion, here)
    const load = (torque: number) => {
      calculation.pin(jointMotion, here, { ...own, torque })
      return undefined
    }
    load(1)
    const ids = ['cord.slack', 'anchor.bearing', 'anchor.tearOut', 'boss.mouth', 'boss.bearing']
    const comparisons = CHECKS.filter(({ id }) => ids.includes(id)).map((check) => comparisonAt(calculation, check, 'knee', 'drop', place))
    expect(comparisons).toHaveLength(ids.length)
    const limit = (of: typeof comparisons) => limitOf(calculation, of, 60, load, '')
    const [all, each] = [limit(comparisons), comparisons.map((one) => limit([one]))]
    const able = each.filter(({ regardless }) => regardless.length === 0)
    expect(able.length).toBeGreaterThan(2)
    // A limit of one check alone is that of the leg with all others infinitely strong.
    expect(all.cautious).toBeCloseTo(Math.min(all.torque, ...able.map(({ cautious }) => cautious)), 6)
  })
})

test('a drum that unwinds its anchor fails its check, and the assembly plan reports the same', () => {
  const wrap = (of: typeof document) =>
    assess(of, { cases: ['walk'] }).checks.find(({ id, joint }) => id === 'cord.wrap' && joint === 'hip')!
  expect(wrap(document).reserve).toBeGreaterThan(1)
  // 141 degrees of wrap for each branch: a hip that turns 270 degrees leaves 6 of them before the anchor.
  const far = withFields(document, { 'joints.hip.range': ['-170 deg', '100 deg'], 'joints.hip.drive.pinion.length': '20 mm' })
  expect(wrap(far).reserve).toBeLessThan(1)
  expect(wrap(far).demand.in('deg')).toBeCloseTo(135 + 10, 9)
  expect(assemblyPlan(far).problems.join()).toMatch(/hip: at one end of its travel only 6\.\d+° of wrap/)
})

test('a pinion that unwinds to its clamp fails its check, and the assembly plan reports the same', () => {
  const clamped = withFields(document, { 'joints.knee.drive.hold': 'clampedMidPinion', 'joints.knee.drive.pinion.length': '40 mm' })
  const at = (turns: number) => withFields(clamped, { 'joints.knee.drive.pinion.turns': turns })
  const clamp = (of: typeof document) =>
    assess(of, { cases: ['walk'] }).checks.find(({ id, joint }) => id === 'cord.clamp' && joint === 'knee')!
  const [few, many] = [at(1), at(5)]
  expect([clamp(few).reserve < 1, clamp(many).reserve < 1]).toEqual([true, false])
  // Every turn more is half a turn more to each side of the clamp.
  expect(clamp(many).capacity.si - clamp(few).capacity.si).toBeCloseTo(4 * Math.PI, 9)
  expect(clamp(many).demand.si).toBe(clamp(few).demand.si)
  expect(assemblyPlan(few).problems.join()).toContain('knee: at an end of its travel the pinion unwinds to its clamp')
  expect(assemblyPlan(many).problems.join()).not.toContain('unwinds to its clamp')
})
