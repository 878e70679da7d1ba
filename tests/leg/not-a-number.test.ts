import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { reserveOf } from '../../src/leg/assess/compare.js'
import {
  assess,
  describeLeg,
  governingReserve,
  htmlReport,
  legFigures,
  legFormula,
  legNumbers,
  markdownReport,
} from '../../src/leg/index.js'
import { quantity } from '../../src/units/index.js'

const read = (name: string) => readFileSync(new URL(`../../examples/mudflat-leg-${name}.yaml`, import.meta.url), 'utf8')
interface Document {
  name: string
  motors: { main: { terminalResistance: string } }
}
const changed = (name: string, change: (data: Document) => void) => {
  const data = parse(read(name))
  change(data)
  return describeLeg(data)
}
/** A leg with a force that the document refuses: a leg that was changed as an object is not read again. */
const forced = (name: string, path: readonly string[], force: string) => {
  const change = (at: Readonly<Record<string, unknown>>, [first = '', ...rest]: readonly string[]): object => ({
    ...at,
    [first]: rest.length === 0 ? quantity('force', force as '1 N') : change(at[first] as Readonly<Record<string, unknown>>, rest),
  })
  const leg = describeLeg(read(name))
  return change(leg as unknown as Readonly<Record<string, unknown>>, path) as typeof leg
}
const slips = {
  'a breaking strength of 2.4 N': forced('first', ['cords', 'braid', 'breakingStrength'], '2.4 N'),
  'a pretension of 90 kN': forced('first', ['joints', 'hip', 'drive', 'pretension'], '90 kN'),
  'a knee pretension of 200 kN': forced('revised', ['joints', 'knee', 'drive', 'pretension'], '200 kN'),
}

describe.each(Object.entries(slips))('a leg with %s', (_, leg) => {
  const verdict = assess(leg)

  test('fails in the full verdict, with a finite reserve for every check', () => {
    expect(verdict.passes).toBe(false)
    for (const check of verdict.checks) expect(check.reserve, check.id).toBeGreaterThanOrEqual(0)
    expect(verdict.governing.reserve).toBe(Math.min(...verdict.checks.map(({ reserve }) => reserve)))
  })

  test('fails in the fast, swept and optimised forms by the same amount', () => {
    const least = Math.min(...verdict.checks.map(({ reserve, requiredReserve }) => reserve / requiredReserve))
    const quick = governingReserve(legNumbers(leg))
    expect(quick.margin).toBe(least)
    expect(legFigures(leg)({}).margin.si).toBe(least)
    expect((legFormula(leg)({}) as { si: number }).si).toBeLessThan(1)
  })

  test('prints no NaN', () => {
    // The page's script may compare with undefined.
    const page = htmlReport(verdict).replace(/<script[\s\S]*?<\/script>/g, '')
    for (const text of [markdownReport(verdict), page]) expect(text).not.toMatch(/\bNaN\b|undefined|\[object/)
  })
})

test('a demand or capacity that is not a number has no reserve', () => {
  expect(reserveOf(Number.NaN, 1)).toBe(0)
  expect(reserveOf(1, Number.NaN)).toBe(0)
  expect(reserveOf(0, Number.NaN)).toBe(0)
  expect(reserveOf(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY)).toBe(0)
  expect(reserveOf(2, 3)).toBe(1.5)
})

test('a motor without a steady temperature leaves no undefined cell in the HTML report', () => {
  const leg = changed('first', ({ motors }) => {
    motors.main.terminalResistance = '0.6 ohm'
  })
  const verdict = assess(leg)
  expect(verdict.unsettled.length).toBeGreaterThan(0)
  // One sentence, its first letter alone a capital.
  for (const { why } of verdict.unsettled) expect(why).toMatch(/^[A-Z][^A-Z.]+\.$/)
  const html = htmlReport(verdict)
  expect(html.replace(/<script>[\s\S]*<\/script>/, '')).not.toContain('undefined')
  expect(html).toContain('unsteady')
  const [first] = verdict.unsettled
  const title = verdict.cases.find(({ id }) => id === first?.case)?.title
  for (const report of [html, markdownReport(verdict)])
    expect(report).toMatch(
      new RegExp(`Load cases without a thermal steady state[^:]*of the ${first?.joint} do not converge[^:]*Load cases: [^:]*${title}`, 'i'),
    )
})

test('a name cannot put a tag or a link into a Markdown report', () => {
  const leg = changed('revised', (data) => {
    data.name = 'x <script>alert(1)</script> [here](javascript:alert(1))'
  })
  const text = markdownReport(assess(leg, { cases: ['walk'] }))
  expect(text).not.toContain('<script')
  expect(text).not.toContain('](javascript')
})
