import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { assess, describeLeg, governingReserve, legNumbers, passingRange, passingRangeText, withFields } from '../../src/leg/index.js'

const leg = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
const PRETENSION = 'joints.knee.drive.pretension'
const pretension = passingRange(leg, PRETENSION, { from: '220 N', to: '340 N', values: 7 })

test('the ends are those of the whole verdict: the leg meets its reserves just inside, and not just outside', () => {
  const [part, ...others] = pretension.passes
  expect(others).toEqual([])
  const meets = (newtons: number) => governingReserve(legNumbers(withFields(leg, { [PRETENSION]: `${newtons} N` }))).margin >= 1
  const [from, to] = [part!.from.in('N'), part!.to.in('N')]
  expect([meets(from), meets(to)]).toEqual([true, true])
  // The gap of 20 N is halved 14 times.
  const step = 20 / 2 ** 14
  expect([meets(from - 1.01 * step), meets(to + 1.01 * step)]).toEqual([false, false])
})

test('what decides beyond each end is the governing check of the leg there', () => {
  const [part] = pretension.passes
  for (const beyond of [part!.below!, part!.above!]) {
    const { governing, meetsTarget } = assess(withFields(leg, { [PRETENSION]: beyond.value }))
    expect(meetsTarget).toBe(false)
    expect(beyond.decides).toMatchObject({ id: governing.id, mode: governing.mode, caseTitle: governing.caseTitle })
    expect(beyond.margin).toBeCloseTo(governing.reserve / governing.requiredReserve, 12)
  }
})

test('a cord that is too loose goes slack, one that is too tight wears out: both ends are named in the text', () => {
  const lines = passingRangeText(pretension).split('\n')
  expect(lines).toHaveLength(4)
  expect(lines[0]).toBe(
    'joints, knee, drive: pretension. The leg has 280 N; 7 values from 220 N to 340 N were tried, all else as it is, at typical values.',
  )
  expect(lines[1]).toMatch(/^Every check has its required reserve from 27\d\.?\d? N to 29\d\.?\d? N\.$/)
  expect(lines[2]).toMatch(/^Below: the cord drive, knee loses the tension of its slack span, in the case "/)
  expect(lines[3]).toMatch(/^Above: the cord, knee wears out or breaks at its end under daily tension, in the case "/)
})

test('the printed ends pass as well', () => {
  const [, from, to] = /from ([\d.]+ N) to ([\d.]+ N)\./.exec(passingRangeText(pretension)) ?? []
  const [part] = pretension.passes
  expect(Number.parseFloat(from!)).toBeGreaterThanOrEqual(part!.from.si)
  expect(Number.parseFloat(to!)).toBeLessThanOrEqual(part!.to.si)
})

test('where no value passes, the nearest is named with its share of the required reserve', () => {
  const none = passingRange(leg, 'robot.mass', { from: '20 kg', to: '30 kg', values: 3 })
  expect(none.passes).toEqual([])
  const [nearest] = none.tried
  expect(passingRangeText(none).split('\n')[1]).toBe(
    `At none of these values does every check have its required reserve. The nearest is 20 kg, with ${Number((100 * nearest!.margin!).toPrecision(3))} % of the required reserve: the ${nearest!.decides!.place} ${nearest!.decides!.mode}, in the case "${nearest!.decides!.caseTitle.toLowerCase()}".`,
  )
})

test('values that the document does not allow carry its reason, and bound the range', () => {
  const drum = passingRange(leg, 'joints.knee.drive.drum.bore', { from: '10 mm', to: '120 mm', values: 5 })
  const refused = drum.tried.filter((one) => one.refused !== undefined)
  expect(refused.length).toBeGreaterThan(0)
  for (const one of refused) {
    expect(one.margin).toBeUndefined()
    expect(() => withFields(leg, { 'joints.knee.drive.drum.bore': one.value })).toThrow()
  }
})

test('a plate too long to be calculated is refused like one that the document does not allow', () => {
  const { tried, passes } = passingRange(leg, 'plates.bodyPlate.sink.size.width', {
    from: '84 mm',
    to: '900 mm',
    values: 3,
    cases: ['stand'],
  })
  expect(tried[2]!.refused).toMatch(/plates\.bodyPlate\.sink\.size.*5 times as long as it is wide/)
  expect(passes[0]!.above!.refused).toBeDefined()
})

test('the ends of the search are half and one and a half times the value, and may cross zero', () => {
  const { tried } = passingRange(leg, 'environment.coldAir', { from: '-20 degC', to: '10 degC', values: 3 })
  expect(tried.map(({ value }) => value.in('degC'))).toEqual([-20, -5, 10])
  const mass = passingRange(leg, 'robot.mass', { values: 3, cases: ['stand'] })
  expect(mass.tried.map(({ value }) => value.in('kg'))).toEqual([5.25, 10.5, 15.75])
})

test('the parts are apart, in rising order and hold the tried values that pass, whatever the search', () => {
  fc.assert(
    fc.property(fc.double({ min: 3, max: 10, noNaN: true }), fc.double({ min: 1, max: 10, noNaN: true }), (from, span) => {
      const { passes, tried } = passingRange(leg, 'robot.mass', {
        from: `${from} kg`,
        to: `${from + span} kg`,
        values: 4,
        cases: ['walk', 'hop'],
      })
      const ends = passes.flatMap((one) => [one.from.si, one.to.si])
      expect(ends).toEqual([...ends].sort((a, b) => a - b))
      for (const { value, margin } of tried)
        expect(passes.some((one) => one.from.si <= value.si && value.si <= one.to.si)).toBe((margin as number) >= 1)
    }),
    { numRuns: 15, seed: 3 },
  )
})

test.each([
  ['a path of nothing', () => passingRange(leg, 'joints.knee.drive.pretensoin'), /did you mean joints\.knee\.drive\.pretension\?/],
  ['a path of a word', () => passingRange(leg, 'name'), /path is 'name'; must lead to a quantity of the leg/],
  ['an end of another kind', () => passingRange(leg, PRETENSION, { from: '3 mm' }), /from is '3 mm'; must be a force/],
  [
    'ends in falling order',
    () => passingRange(leg, PRETENSION, { from: '300 N', to: '200 N' }),
    /to is 200 N; must be more than from, 300 N/,
  ],
  ['too few values', () => passingRange(leg, PRETENSION, { values: 2 }), /values is 2; must be a whole number from 3 to 1001/],
  [
    'a temperature without its ends',
    () => passingRange(leg, 'loadCases.airs.hot.temperature'),
    /from is undefined; must be given, because a share of/,
  ],
  ['an unknown option', () => passingRange(leg, PRETENSION, { steps: 3 } as never), /steps is 3; is no option/],
  ['an unknown load case', () => passingRange(leg, PRETENSION, { cases: ['wlak'] as never }), /did you mean walk\?/],
])('%s is refused by name', (_, work, message) => expect(work).toThrow(message))

const stand = { cases: ['stand'] } as const

test('without ends and number, 41 values from half to one and a half times the value, rising for a negative one as well', () => {
  const { tried, now } = passingRange(leg, 'robot.mass', stand)
  expect(tried.map(({ value }) => value.si / now.si)).toEqual(Array.from({ length: 41 }, (_, i) => expect.closeTo(0.5 + i / 40, 12)))
  const push = passingRange(leg, 'gaits.walk.traction.lowest', { ...stand, values: 3 })
  expect(push.now.si).toBeLessThan(0)
  expect(push.tried.map(({ value }) => value.si / push.now.si)).toEqual([1.5, 1, 0.5].map((x) => expect.closeTo(x, 12)))
})

test('where all values pass, the ends are those of the search, and the text says that none beyond were tried', () => {
  const all = passingRange(leg, 'robot.mass', { ...stand, from: '3 kg', to: '4 kg', values: 5 })
  expect(all.passes).toEqual([{ from: expect.objectContaining({ si: 3 }), to: expect.objectContaining({ si: 4 }) }])
  expect(passingRangeText(all).split('\n').slice(1)).toEqual([
    'Every check has its required reserve from 3 kg to 4 kg.',
    'Values below 3 kg were not tried.',
    'Values above 4 kg were not tried.',
  ])
})

test('where the document allows none of the values, the text gives its reason', () => {
  const none = passingRange(leg, 'joints.knee.drive.drum.bore', { ...stand, from: '0.4 m', to: '0.5 m', values: 3 })
  expect(none.tried.every(({ refused }) => refused !== undefined)).toBe(true)
  expect(passingRangeText(none).split('\n')[1]).toMatch(/^The document allows none of these values: .*drum.*\.$/)
})

test('an end at which the document stops is named in the text with its reason', () => {
  const long = passingRange(leg, 'plates.bodyPlate.sink.size.width', { ...stand, from: '84 mm', to: '900 mm', values: 3 })
  expect(passingRangeText(long).split('\n').at(-1)).toMatch(/^Above: the document does not allow it, because plates\.bodyPlate\.sink\.size/)
})

test('printed ends below zero lie within the range too', () => {
  const cold = passingRange(leg, 'gaits.walk.traction.lowest', { cases: ['walk'], from: -3, to: -0.01, values: 9 })
  const [part] = cold.passes
  expect(part?.below).toBeDefined()
  const [, from, to] = /reserve from (-[\d.]+) to (-[\d.]+)\.$/m.exec(passingRangeText(cold)) ?? []
  expect(Number(from)).toBeGreaterThanOrEqual(part!.from.si)
  expect(Number(from) - part!.from.si).toBeLessThan(0.002)
  expect(Number(to)).toBeLessThanOrEqual(part!.to.si)
})

test.each([
  ['ends that are equal', { from: '3 kg', to: '3 kg' }, /to is 3 kg; must be more than from, 3 kg/],
  ['a number of values that is not whole', { values: 3.5 }, /values is 3.5; must be a whole number/],
  ['too many values', { values: 1002 }, /values is 1002; must be a whole number from 3 to 1001/],
])('%s: refused by name', (_, options, message) => expect(() => passingRange(leg, 'robot.mass', options)).toThrow(message))

test('a field that is 0 has no default ends, and both are asked for', () => {
  const zero = withFields(leg, { 'robot.centreOfMassForward': '0 mm' })
  expect(() => passingRange(zero, 'robot.centreOfMassForward')).toThrow(
    /from is undefined; must be given, because the field is 0 in the leg[\s\S]*to is undefined/,
  )
})
