import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  ALL_CASE_IDS,
  assess,
  checkReserves,
  describeLeg,
  type LegNumbers,
  legNumbers,
  markdownReport,
  withFields,
} from '../../src/leg/index.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const leg = read('mudflat-leg-revised')
/** The same leg with a share of its load to the side, in every gait and landing. */
function pushed(numbers: LegNumbers, lateral: number): LegNumbers {
  const all = <T>(section: { readonly [name: string]: T }, of: (one: T) => T) =>
    Object.fromEntries(Object.entries(section).map(([name, one]) => [name, of(one)]))
  const events = all(numbers.loadCases.events, (event) => (event.kind === 'hop' || event.kind === 'drop' ? { ...event, lateral } : event))
  return { ...numbers, gaits: all(numbers.gaits, (gait) => ({ ...gait, lateral })), loadCases: { ...numbers.loadCases, events } }
}

describe.each(['mudflat-leg-revised', 'heath-leg-revised', 'desk-leg-revised'])('%s', (name) => {
  const numbers = legNumbers(read(name))

  test('a larger push to the side never raises a reserve', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.5, noNaN: true }), fc.double({ min: 0.001, max: 0.5, noNaN: true }), (share, more) => {
        const [less, larger] = [share, share + more].map((one) => checkReserves(pushed(numbers, one), ALL_CASE_IDS))
        for (const [check, reserve] of less!) {
          const after = larger!.get(check)!
          if (!(after <= reserve * (1 + 1e-12))) expect([check, after]).toEqual([check, reserve])
        }
      }),
      { numRuns: 5 },
    )
  })

  test('a link pushed sideways is never safer than its bending in the plane', () => {
    const { checks } = assess(withFields(read(name), { 'loadCases.events.drop.lateral': 1e-9 }), { cases: ['drop', 'slopeAcross'] })
    const margin = (id: string) => checks.find((one) => one.id === id)!.reserve
    for (const link of ['upper', 'lower']) expect(margin(`${link}Link.sideways`)).toBeLessThanOrEqual(margin(`${link}Link.bending`))
  })
})

test('a foot that nothing pushes sideways has no such check', () => {
  const { checks, notEvaluated } = assess(leg, { cases: ['walk', 'drop'] })
  expect(checks.some(({ id }) => id.includes('Link.sideways'))).toBe(false)
  expect(notEvaluated.find(({ id }) => id === 'upperLink.sideways')?.why).toBe('no force pushes the foot sideways in these load cases')
})

test('a link that is printed standing has the strength across its layers, also in its plane', () => {
  const reserve = (axis: string, id: string) =>
    assess(withFields(leg, { 'links.upper.axis': axis, 'links.lower.axis': axis }), { cases: ['slopeAcross'] }).checks.find(
      (one) => one.id === id,
    )!.reserve
  for (const id of ['upperLink.bending', 'lowerLink.bending', 'upperLink.sideways', 'lowerLink.sideways'])
    expect(reserve('acrossLayers', id), id).toBeLessThan(0.75 * reserve('alongLayers', id))
})

test('a negative push to the side, or one of twice the load, is rejected', () => {
  expect(() => withFields(leg, { 'gaits.walk.lateral': -0.1 })).toThrow(/gaits.walk.lateral/)
  expect(() => withFields(leg, { 'loadCases.events.drop.lateral': 2.1 })).toThrow(/drop.lateral/)
})

describe('the foot pushed to the side', () => {
  const { foot } = assess(leg, { cases: ['slopeAcross'] })
  const { push, deflection, ofLinks, play } = foot.sideways

  test('gives by its push over its stiffness, and links are part of it', () => {
    expect(deflection!.si).toBeCloseTo(push.si / foot.stiffness!.y.si, 12)
    expect(ofLinks!.si).toBeGreaterThan(0)
    expect(ofLinks!.si).toBeLessThan(deflection!.si)
  })

  test('plays on the knee pin by gap and tilt of the eye, worked by hand', () => {
    const { lugThickness, gap } = leg.pins[leg.joints.knee.pin!]!
    expect(play!.si).toBeCloseTo(gap.si + (0.1e-3 / lugThickness.si) * leg.links.lower.length.si, 12)
  })

  test('stands in the report', () => {
    expect(markdownReport(assess(leg, { cases: ['slopeAcross'] }))).toContain(`push to the side of ${push}`)
  })
})

describe('the hip', () => {
  const { hip, ...joints } = leg.joints
  test('takes the couple in its shaft, and without one in its pin', () => {
    const { checks } = assess(leg, { cases: ['slopeAcross'] })
    expect(checks.filter(({ id }) => id === 'pin.eyeEdge').map(({ joint }) => joint)).toEqual(['knee'])
    const { shaft: _, ...bare } = hip
    const unshafted = describeLeg({ ...leg, shafts: {}, bearings: {}, joints: { ...joints, hip: bare } } as never)
    const pinned = assess(unshafted, { cases: ['slopeAcross'] }).checks.find(({ id, joint }) => id === 'pin.eyeEdge' && joint === 'hip')!
    // The hip is farther from the foot than the knee.
    const knee = assess(leg, { cases: ['slopeAcross'] }).checks.find(({ id, joint }) => id === 'pin.eyeEdge' && joint === 'knee')!
    expect(pinned.demand.si).toBeGreaterThan(knee.demand.si)
  })

  test('tilts its shaft: a push loads bearings and shaft more, and a wider pair of bearings less', () => {
    const reserve = (lateral: number, spacing: string, id: string) =>
      assess(withFields(leg, { 'loadCases.events.drop.lateral': lateral, 'bearings.spacing': spacing }), { cases: ['drop'] }).checks.find(
        (one) => one.id === id,
      )!.reserve
    for (const id of ['bearing.static', 'shaft.bending']) expect(reserve(0.3, '30 mm', id), id).toBeLessThan(reserve(0, '30 mm', id))
    expect(reserve(0.3, '60 mm', 'bearing.static')).toBeGreaterThan(1.4 * reserve(0.3, '30 mm', 'bearing.static'))
  })
})
