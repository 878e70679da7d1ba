import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg, markdownReport } from '../../src/leg/index.js'

const TEXT = readFileSync(new URL('../../examples/heath-leg-first.yaml', import.meta.url), 'utf8')
const first = assess(describeLeg(TEXT), { cases: ['walk'] })
const buckling = (assessment: typeof first) => assessment.checks.find(({ id }) => id === 'rod.buckling')

describe('what a check rests on', () => {
  test('the shares of a side add to 1', () => {
    for (const { restsOn } of first.checks)
      for (const side of Object.values(restsOn)) {
        const { measured, published, unverified, assumed } = side
        expect(measured + published + unverified + assumed).toBeCloseTo(1, 12)
      }
  })
  test('a reserve that no uncertain value moves rests on none', () => {
    const certain = first.checks.filter(({ range }) => range.worst === range.best)
    expect(certain.length).toBeGreaterThan(0)
    for (const { restsOn } of certain) expect(restsOn).toEqual({})
  })
  test('nothing is measured here before a measurement, and a material of one\u2019s own is', () => {
    expect(first.checks.flatMap(({ restsOn }) => Object.values(restsOn)).every(({ measured }) => measured === 0)).toBe(true)
    const own = TEXT.replaceAll('material: ASA', 'material: own ASA')
    const materials =
      'materials: { own ASA: { basedOn: ASA, modulus: { typical: 2.1 GPa, low: 2.0 GPa, high: 2.2 GPa, source: five bars in bending } } }'
    const measured = assess(describeLeg(`${own}\n${materials}\n`), { cases: ['walk'] })
    const before = buckling(first)
    const after = buckling(measured)
    // The narrowed modulus still moves the reserve, beside the ends and the dimensions of the rod.
    expect(after?.restsOn.capacity?.measured).toBeGreaterThan(0.3)
    expect(after?.reserve).toBeCloseTo(before?.reserve as number, 9)
    expect((after?.range.best as number) - (after?.range.worst as number)).toBeLessThan(
      (before?.range.best as number) - (before?.range.worst as number),
    )
  })
})

describe('the best measurement', () => {
  const found = first.bestMeasurement as NonNullable<typeof first.bestMeasurement>
  test('narrows the smallest reserve that one can narrow, and never widens it', () => {
    expect(found.check).toBe('rod.buckling')
    expect(found.values).toContain('modulus of elasticity of ASA')
    expect(found.after.worst).toBeGreaterThan(found.before.worst)
    expect(found.after.best).toBeLessThan(found.before.best)
    expect(found.before).toEqual({ worst: buckling(first)?.range.worst, best: buckling(first)?.range.best })
  })
  test('leaves what the check has when that value is exact', () => {
    const own = TEXT.replaceAll('material: ASA', 'material: own ASA')
    const exact = assess(describeLeg(`${own}\nmaterials: { own ASA: { basedOn: ASA, modulus: 2.1 GPa } }\n`), { cases: ['walk'] })
    expect(buckling(exact)?.range.worst).toBeCloseTo(found.after.worst, 9)
    expect(buckling(exact)?.range.best).toBeCloseTo(found.after.best, 9)
  })
  test('stands in the report', () => {
    const text = markdownReport(first)
    expect(text).toContain('The measurement that narrows it most: ')
    expect(text).toContain(found.test)
    expect(text).toContain('Uncertain: capacity ')
  })
})
