import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { recorder } from '../../src/formula/index.js'
import {
  absPolymer,
  allMaterials,
  allowableStress,
  aluminium6061T6,
  anaerobic,
  deratedStrength,
  designModulus,
  durationFactor,
  type Material,
  moistureFactor,
  pa6,
  pc,
  pla,
  pom,
  stainless304,
  stainless316,
  steel129,
  strengthNumbers,
  strengthSi,
  tabulatedStrengthFactor,
} from '../../src/materials/index.js'

const base = { direction: 'alongLayers', temperature: '23 degC', duration: '1 s', moisture: 'dry', safetyFactor: 1 } as const
const polymers = allMaterials().filter(({ family }) => family !== 'metal' && family !== 'magnet' && family !== 'adhesive')

describe('never above the cold dry short-term strength, and monotone', () => {
  const anyPolymer = fc.constantFrom(...polymers)
  const conditions = fc.record({
    direction: fc.constantFrom('alongLayers' as const, 'acrossLayers' as const, 'interlayerShear' as const),
    celsius: fc.double({ min: -40, max: 200, noNaN: true }),
    seconds: fc.double({ min: 0, max: 3e8, noNaN: true }),
    moisture: fc.constantFrom('dry' as const, 'conditioned' as const, 'saturated' as const),
    cycles: fc.double({ min: 1, max: 1e8, noNaN: true }),
  })
  type C = typeof conditions extends fc.Arbitrary<infer T> ? T : never
  const stress = (m: Material, c: C) =>
    allowableStress(m, {
      direction: c.direction,
      temperature: [c.celsius, 'degC'],
      duration: [c.seconds, 's'],
      moisture: c.moisture,
      cycles: c.cycles,
      safetyFactor: 1,
    }).stress

  test('bounded by the strength of the table, at every end of the range', () => {
    fc.assert(
      fc.property(anyPolymer, conditions, (m, c) => {
        const s = stress(m, c)
        const strength = m.tensileStrength!
        const eps = 1 + 1e-12
        return (
          s.low >= 0 &&
          s.low <= strength.low * eps &&
          s.si <= strength.si * eps &&
          s.high <= strength.high * eps &&
          s.low <= s.si &&
          s.si <= s.high
        )
      }),
    )
  })

  test.each(['celsius', 'seconds', 'cycles'] as const)('falls with %s', (axis) => {
    fc.assert(
      fc.property(anyPolymer, conditions, fc.double({ min: 0, max: 1, noNaN: true }), (m, c, up) => {
        const top = { celsius: 250, seconds: 4e8, cycles: 1e9 }[axis]
        const more = { ...c, [axis]: c[axis] + up * (top - c[axis]) }
        return stress(m, more).si <= stress(m, c).si * (1 + 1e-12)
      }),
    )
  })

  test('falls with moisture', () => {
    fc.assert(
      fc.property(anyPolymer, conditions, (m, c) => {
        const [dry, conditioned, soaked] = (['dry', 'conditioned', 'saturated'] as const).map(
          (moisture) => stress(m, { ...c, moisture }).si,
        )
        return soaked! <= conditioned! && conditioned! <= dry!
      }),
    )
  })
})

test('at 23 °C, dry, for a second, along the layers it is the strength itself', () => {
  for (const m of polymers) expect(allowableStress(m, base).stress.si).toBe(m.tensileStrength?.si)
  expect(allowableStress(steel129, base).stress.si).toBe(1100e6)
})

test('every factor is there with its source, and their product is the answer', () => {
  const { stress, strength, factors, safetyFactor } = allowableStress(pa6, {
    direction: 'acrossLayers',
    temperature: '60 degC',
    duration: '1000 h',
    moisture: 'conditioned',
    cycles: 1e5,
    safetyFactor: 1.5,
  })
  expect(factors.map(({ name }) => name)).toEqual(['direction', 'temperature', 'duration', 'moisture', 'fatigue'])
  for (const end of ['low', 'typical', 'high'] as const) {
    const product = factors.reduce((all, factor) => all * factor[end], end === 'typical' ? strength.si : strength[end]) / safetyFactor
    expect(product / (end === 'typical' ? stress.si : stress[end])).toBeCloseTo(1, 12)
  }
  for (const factor of factors) expect(factor.source.where.length).toBeGreaterThan(2)
  expect(stress.source.level).toBe('unverified')
})

test('the amorphous rule is an assumption, however well the glass transition is known', () => {
  expect(allowableStress(pc, { ...base, temperature: '60 degC' }).stress.source.level).toBe('assumption')
})

test('above the limit nothing is left, and the state says so', () => {
  expect(allowableStress(pla, { ...base, temperature: '46 degC' })).toMatchObject({ state: 'aboveLimit', stress: { si: 0 } })
  expect(allowableStress(pa6, { ...base, temperature: '230 degC' })).toMatchObject({ state: 'aboveTable', stress: { si: 0 } })
})

test('warm time is said to count more than cold time, as a range', () => {
  const { notes } = allowableStress(pla, { ...base, temperature: '40 degC', duration: '100 h' })
  expect(notes.map(({ text }) => text).join()).toMatch('like 9.1 to 250 hours at 23 °C')
})

test('the prepared numbers give the same stress, and record the chain', () => {
  const x = strengthNumbers(absPolymer, 'acrossLayers', 'conditioned', 'low', true)
  const { of, steps } = recorder()
  const si = strengthSi(x, 323.15, 1e6, 1e4, 2, of)
  const checked = allowableStress(absPolymer, {
    direction: 'acrossLayers',
    temperature: '50 degC',
    duration: '1e6 s' as never,
    moisture: 'conditioned',
    cycles: 1e4,
    safetyFactor: 2,
  })
  expect(si).toBe(checked.stress.low)
  expect(steps().map(({ formula }) => formula)).toEqual([
    'materials.amorphousStrengthFactor',
    'materials.durationFactor',
    'materials.fatigueFactor',
    'materials.deratedStrength',
  ])
})

test('a table that would make strength rise is refused', () => {
  const table = { temperature: '50 degC', temperatures: ['23 degC', '80 degC'] } as const
  expect(() => tabulatedStrengthFactor({ ...table, shares: [0.5, 1] })).toThrow('never rise')
  expect(() => tabulatedStrengthFactor({ ...table, shares: [1, 0.5, 0.2] })).toThrow('as many as temperatures')
  expect(() => tabulatedStrengthFactor({ ...table, temperatures: ['80 degC', '23 degC'], shares: [1, 0.5] })).toThrow('must rise')
  expect(() => durationFactor({ duration: '1 h', kept1000Hours: 0.3, kept1Year: 0.5 })).toThrow('after 1000 hours')
  const water = { moisture: '5 %', conditioned: '3 %', saturated: '9 %', conditionedShare: 0.6, saturatedShare: 0.4 } as const
  expect(() => moistureFactor({ ...water, saturatedShare: 0.7 })).toThrow('50 % humidity')
  expect(() => moistureFactor({ ...water, saturated: '2 %' })).toThrow('conditioned content')
  expect(moistureFactor({ ...water, moisture: '10 %' }).notes?.[0]?.text).toMatch('saturation')
  expect(() =>
    deratedStrength({ strength: '50 MPa', direction: 1.1, temperature: 1, duration: 1, moisture: 1, fatigue: 1, safetyFactor: 1 }),
  ).toThrow('direction')
})

test('warm metal: a quarter of the yield of austenitic steel is gone at 100 °C, its stiffness is not', () => {
  const warm = { ...base, temperature: '100 degC' } as const
  // EN 10028-7: 157 of 210 MPa (1.4301), 175 of 220 MPa (1.4401).
  for (const share of [157 / 210, 175 / 220]) {
    const [, factor] = allowableStress(stainless304, warm).factors
    expect(factor!.low <= share && share <= factor!.high).toBe(true)
  }
  // ISO 898-1:1988: 1020 of 1100 MPa at 100 °C, 925 at 200 °C.
  expect(allowableStress(steel129, warm).stress.in('MPa')).toBeCloseTo(1020, -1)
  expect(allowableStress(steel129, { ...warm, temperature: '200 degC' }).stress.in('MPa')).toBeCloseTo(925, -1)
  // Aluminum Association: 262 and 103 of 276 MPa at 100 and 204 °C.
  expect(allowableStress(aluminium6061T6, warm).stress.in('MPa')).toBeCloseTo(262, 0)
  expect(allowableStress(aluminium6061T6, { ...warm, temperature: '204 degC' }).stress.in('MPa')).toBeCloseTo(103, -1)
  for (const m of [stainless304, stainless316, aluminium6061T6, steel129]) {
    const { modulus, start } = designModulus(m, { direction: 'alongLayers', temperature: '100 degC', duration: '1 year', moisture: 'dry' })
    expect(modulus.si / start.si).toBeGreaterThan(0.96)
  }
})

test('shear: between layers the two shares multiply end by end, without layers it is von Mises', () => {
  const share = (m: Material) => allowableStress(m, { ...base, direction: 'interlayerShear' }).factors[0]!
  const { acrossLayersRatio: across, interlayerShearRatio: shear } = pla
  const between = share(pla)
  expect(between.low).toBe(across.low * shear.low)
  expect(between.typical).toBe(across.si * shear.si)
  expect(between.high).toBe(across.high * shear.high)
  expect(share(pom)).toMatchObject({ low: 0.5, high: 0.6 })
  expect(share(pom).typical).toBeCloseTo(1 / Math.sqrt(3), 3)
})

test('an adhesive is asked in shear', () => {
  expect(() => allowableStress(anaerobic, base)).toThrow(/direction.*interlayerShear/)
  expect(allowableStress(anaerobic, { ...base, direction: 'interlayerShear' }).stress.in('MPa')).toBe(22)
})

describe('bad conditions are named', () => {
  test.each([
    [{ temperature: '-300 degC' }, 'temperature'],
    [{ temperature: '-1 K' }, 'temperature'],
    [{ duration: '-1 h' }, 'duration'],
    [{ direction: 'sideways' }, 'direction'],
    [{ moisture: 'damp' }, 'moisture'],
    [{ safetyFactor: 0.5 }, 'safetyFactor'],
    [{ cycles: 0 }, 'cycles'],
    [{ temperature: undefined }, 'temperature'],
    [{ temperatur: '20 degC' }, 'temperatur'],
  ])('%o', (change, path) => {
    expect(() => allowableStress(pla, { ...base, ...change } as never)).toThrow(path)
  })
  test('metals under cycles are sent to the metal rules', () => {
    expect(() => allowableStress(steel129, { ...base, cycles: 1e6 })).toThrow('goodmanSafetyFactor')
  })
  test('a property that is not known is named', () => {
    const { acrossLayersRatio: _, ...bare } = pla
    expect(() => allowableStress(bare, { ...base, direction: 'acrossLayers' })).toThrow('acrossLayersRatio')
  })
})
