import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { quickFor } from '../../src/leg/assess/quick.js'
import { assess, type CheckResult, describeLeg, legNumbers, markdownReport, withFields } from '../../src/leg/index.js'
import { fieldAt, takesQuantity } from '../../src/leg/plans/with-fields.js'
import { documentAmount, roundedBeyond, roundedIn } from '../../src/leg/report/amounts.js'
import { changesOf } from '../../src/leg/report/changes.js'
import { fieldRows } from '../../src/leg/report/fields-list.js'
import { Quantity } from '../../src/units/index.js'

const revised = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
const loose = assess(withFields(revised, { 'joints.knee.drive.pretension': '200 N', 'joints.hip.drive.pretension': '100 N' }))
const changes = changesOf(loose)
const keyOf = ({ id, joint }: { id: string; joint?: string }) => (joint === undefined ? id : `${id} ${joint}`)

test('every check that is short has its changes, and a leg that holds has none', () => {
  const short = loose.checks.filter((check) => check.reserve < check.requiredReserve)
  expect(short.length).toBeGreaterThan(1)
  expect(changes.map(({ check }) => check)).toEqual(short)
  expect(changesOf(assess(revised))).toEqual([])
})

const first = (name: string) => assess(describeLeg(readFileSync(new URL(`../../examples/${name}-leg-first.yaml`, import.meta.url), 'utf8')))
const mudflat = first('mudflat')
const shingle = first('shingle')

test.each([
  ['mudflat with slack cords', loose, 2],
  ['mudflat', mudflat, 6],
  ['orchard', first('orchard'), 3],
  ['desk', first('desk'), 4],
  ['heath', first('heath'), 2],
  ['shingle', shingle, 1],
])('%s: with a change in the document the check has its required reserve, and each check that does worse is named', (_, verdict, least) => {
  const before = new Map(verdict.checks.map((check) => [keyOf(check), check]))
  const offered = changesOf(verdict).flatMap(({ check, changes: own }) => own.map((change) => ({ check, ...change })))
  const legs = [...new Set(offered.map(({ path, to }) => `${path} ${to}`))]
  // Of a leg on which most is short, trying each change would take long: at most six of them.
  const tried = new Set(legs.filter((_, i) => i % Math.ceil(legs.length / 6) === 0))
  const after = new Map<string, Map<string, CheckResult>>()
  let compared = 0
  for (const { check, path, to, harms } of offered) {
    const leg = `${path} ${to}`
    if (!tried.has(leg)) continue
    if (!after.has(leg)) after.set(leg, new Map(assess(withFields(verdict.leg, { [path]: to })).checks.map((one) => [keyOf(one), one])))
    const checks = after.get(leg) as Map<string, CheckResult>
    expect(checks.get(keyOf(check))?.reserve, `${keyOf(check)} ${leg}`).toBeGreaterThanOrEqual(check.requiredReserve)
    const worse = [...checks].filter(([key, { reserve, requiredReserve }]) => {
      const was = before.get(key)
      const isShort = was !== undefined && was.reserve < was.requiredReserve
      return !(reserve >= (isShort ? 0.99 * was.reserve : requiredReserve))
    })
    expect(harms.map(({ key }) => key).sort(), leg).toEqual(worse.map(([key]) => key).sort())
    compared++
  }
  expect(compared).toBeGreaterThanOrEqual(least)
})

test('where no single change suffices, the one that is named gives the reserve that is named', () => {
  const { leg, cases } = mudflat
  const quick = quickFor(cases.map(({ id }) => id))
  const rows = fieldRows(leg)
  const named = changesOf(mudflat).flatMap(({ check, nearest }) => (nearest === undefined ? [] : [{ check, nearest }]))
  expect(named.length).toBeGreaterThan(3)
  for (const { check, nearest } of named) {
    const { path } = rows.find(({ name, value }) => name === nearest.name && value === nearest.from)!
    const reserve = quick.reserveOf(legNumbers(withFields(leg, { [path]: nearest.to })), keyOf(check as never))
    expect(reserve! / nearest.reserve, `${check.id} ${path}`).toBeCloseTo(1, 2)
    expect(nearest.reserve).toBeGreaterThan(check.reserve)
    expect(nearest.reserve).toBeLessThan(check.requiredReserve)
  }
})

test('no change needs a cord or a belt that no catalogue has: one of the same size and another strength or pitch', () => {
  const paths = [mudflat, shingle].flatMap((verdict) => changesOf(verdict).flatMap(({ changes: own }) => own.map(({ path }) => path)))
  expect(paths.length).toBeGreaterThan(10)
  expect(paths.filter((path) => /^cords\.|^belts\..+\.pitch$/.test(path))).toEqual([])
  // Nor for an easier load case.
  const eased = [...changesOf(mudflat), ...changesOf(shingle)].flatMap(({ nearest, changes: own }) =>
    [nearest, ...own].map((one) => one?.name),
  )
  expect(eased.filter((one) => one?.startsWith('load cases'))).toEqual([])
})

test('a check that applies only after a change, and one that falls further, are named with the change', () => {
  const found = changesOf(mudflat).flatMap(({ changes: own }) => own.flatMap(({ harms }) => harms))
  expect(found.some(({ check }) => check === undefined)).toBe(true)
  expect(found.some(({ further }) => further)).toBe(true)
  const text = markdownReport(mudflat)
  expect(text).toMatch(/\([^)]*a check that applies then\)/)
  expect(text).toMatch(/further below: K\d+/)
})

test('the first screen has the numbers: what to change, from what to what', () => {
  const text = markdownReport(loose)
  const first = text.slice(text.indexOf('## Verdict'), text.indexOf('## Title block'))
  const [change] = changes.find(({ check }) => check === loose.governing)!.changes
  expect(first).toContain(`**${change!.to}** instead of ${change!.from} (${change!.name})`)
})

test('a value is rounded away from where it came from, by less than a fifth of the change', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-4, max: 1e4, noNaN: true }), fc.double({ min: 0.4, max: 2.5, noNaN: true }), (from, factor) => {
      fc.pre(Math.abs(factor - 1) > 1e-3)
      const to = from * factor
      const rounded = roundedBeyond(from, to)
      const beyond = (rounded - to) / (to - from)
      expect(beyond).toBeGreaterThanOrEqual(-1e-6)
      expect(beyond).toBeLessThanOrEqual(0.2 + 1e-6)
    }),
  )
})

test('an angle is rounded in degrees, as it is printed', () => {
  const degree = Math.PI / 180
  expect(roundedIn('angle', 14 * degree, 5.9 * degree) / degree).toBeCloseTo(5, 9)
  expect(roundedIn('length', 0.007, 0.00746)).toBeCloseTo(0.0075, 12)
  expect(roundedIn('ratio', 0.4, 0.52)).toBeCloseTo(0.52, 12)
})

test.each(['mudflat', 'orchard'])('the %s leg takes a changed quantity exactly where reading it whole does', (name) => {
  const leg = describeLeg(readFileSync(new URL(`../../examples/${name}-leg-revised.yaml`, import.meta.url), 'utf8'))
  const reads = (path: string, to: string): boolean => {
    try {
      withFields(leg, { [path]: to })
      return true
    } catch {
      return false
    }
  }
  const counts = { taken: 0, refused: 0 }
  for (const { path, kind } of fieldRows(leg)) {
    const now = fieldAt(leg, path)
    if (!(now instanceof Quantity) || kind === undefined) continue
    for (const factor of [0.2, 4]) {
      const to = documentAmount(kind, factor * now.si)
      const expected = reads(path, to)
      expect(takesQuantity(leg, path, to), `${path} ${to}`).toBe(expected)
      counts[expected ? 'taken' : 'refused']++
    }
  }
  expect(Math.min(counts.taken, counts.refused)).toBeGreaterThan(20)
  expect(takesQuantity(leg, 'robot.mass', 'heavy')).toBe(false)
  expect(takesQuantity(leg, 'robot.weight', '1 kg')).toBe(false)
})
