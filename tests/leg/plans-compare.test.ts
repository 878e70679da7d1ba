import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, compareLegs, comparisonText, describeLeg, withFields } from '../../src/leg/index.js'
import { InputError } from '../../src/units/index.js'

const leg = describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))

describe('two designs side by side', () => {
  test('twice the pretension doubles the torque until the slack span is loose, and nothing else of the knee is touched by hand', () => {
    const both = compareLegs(leg, { 'drives.knee.pretension': '370 N' }, { cases: ['walk'] })
    const slack = both.checks.find(({ id, after }) => id === 'cord.slack' && after?.joint === 'knee')
    expect(slack?.factor).toBeCloseTo(2, 10)
    const hip = both.checks.find(({ id, after }) => id === 'cord.slack' && after?.joint === 'hip')
    expect(hip?.factor).toBe(1)
    expect(both.changed).toEqual([{ path: 'drives.knee.pretension', before: '185 N', after: '370 N' }])
    const text = comparisonText(both)
    expect(text).toContain('drives.knee.pretension')
    // What did not move is counted, and not listed.
    const moved = both.checks.filter(({ factor }) => Math.abs((factor ?? 2) - 1) > 0.005)
    expect(moved.length).toBeLessThan(both.checks.length)
    // Two tables, each with two lines of head; one field was changed.
    expect(text.match(/^\|/gm)).toHaveLength(2 + 1 + 2 + moved.length)
    expect(text).toContain(`${both.checks.length - moved.length} checks are the same in both.`)
  })

  test('each side is what assess says of that leg alone', () => {
    const both = compareLegs(leg, { 'robot.mass': '12 kg' }, { cases: ['stand', 'walk'] })
    const alone = assess(withFields(leg, { 'robot.mass': '12 kg' }), { cases: ['stand', 'walk'] })
    expect(both.after.checks.map(({ reserve }) => reserve)).toEqual(alone.checks.map(({ reserve }) => reserve))
    expect(both.before.governing.reserve).toBe(assess(leg, { cases: ['stand', 'walk'] }).governing.reserve)
  })

  test('a section can be taken out, and a check that then no longer applies is said to be missing', () => {
    const both = compareLegs(leg, { sink: undefined, 'bolts.motor.nut': 'onWasher' }, { cases: ['walk'] })
    expect(both.leg.plates.bodyPlate!.sink).toBeUndefined()
    expect(both.leg.plates.kneePlate!.sink).toBeUndefined()
    const friction = compareLegs(leg, { 'drives.hip.hold': 'frictionOnly' }, { cases: ['walk'] })
    const slip = friction.checks.find(({ id, after }) => id === 'cord.slip' && after?.joint === 'hip')
    expect(slip?.before).toBeUndefined()
    expect(slip?.factor).toBeUndefined()
  })

  test('lists are reached by place', () => {
    const { pattern } = withFields(leg, { 'bolts.stack.rows[0]': '9 mm' }).bolts.stack!
    expect(pattern.kind === 'rows' && pattern.distances[0]?.in('mm')).toBeCloseTo(9, 12)
  })

  test('a changed default is no default any more, and one taken out comes back', () => {
    expect(leg.defaults.some(({ path }) => path === 'usage.standingTime')).toBe(true)
    const once = withFields(leg, { 'usage.standingTime': '1 h' })
    expect(once.defaults.some(({ path }) => path === 'usage.standingTime')).toBe(false)
    expect(withFields(once, { 'usage.standingTime': undefined }).defaults.some(({ path }) => path === 'usage.standingTime')).toBe(true)
  })

  test.each([
    [{}, /at least one field/],
    [{ 'drives.knee.pretension.x': 1 }, /path of a field/],
    [{ 'bolts.stack.rows[9]': '9 mm' }, /path of a field/],
    [{ 'drives.knee.pretention': '3 N' }, /pretension/],
    [{ 'drives.knee.pretension': '3 mm' }, /force/],
    [{ 'robot.standHeight': '2 m' }, /cannot reach/],
    [{ '__proto__.x': 1 }, /path of a field/],
    [{ defaults: [] }, /path of a field/],
  ])('%j is refused', (changes, message) => {
    expect(() => compareLegs(leg, changes)).toThrow(message)
    expect(() => compareLegs(leg, changes)).toThrow(InputError)
  })
})
