import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { recorder } from '../../src/formula/index.js'
import {
  absPolymer,
  allMaterials,
  allowableStress,
  aluminium6061T6,
  anaerobic,
  asa,
  deratedStrength,
  designModulus,
  durationFactor,
  type Material,
  materialByName,
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
  tpu95a,
} from '../../src/materials/index.js'

/** Standard normal draws by Box and Muller from a fixed seed. */
function normals(seed: number): () => number {
  let state = seed
  const uniform = () => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
}

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

test('every factor is there with its source, and their product is the stress against rupture', () => {
  const { rupture, strength, factors, safetyFactor } = allowableStress(pa6, {
    direction: 'acrossLayers',
    temperature: '60 degC',
    duration: '1000 h',
    moisture: 'conditioned',
    cycles: 1e5,
    safetyFactor: 1.5,
    range: 'extremes',
  })
  expect(factors.map(({ name }) => name)).toEqual(['direction', 'temperature', 'duration', 'moisture', 'fatigue'])
  for (const end of ['low', 'typical', 'high'] as const) {
    const product = factors.reduce((all, factor) => all * factor[end], end === 'typical' ? strength.si : strength[end]) / safetyFactor
    expect(product / (end === 'typical' ? rupture.si : rupture[end])).toBeCloseTo(1, 12)
  }
  for (const factor of factors) expect(factor.source.where.length).toBeGreaterThan(2)
})

test('the amorphous rule is an assumption, however well the glass transition is known', () => {
  expect(allowableStress(pc, { ...base, temperature: '60 degC' }).stress.source.level).toBe('assumption')
})

test('above the limit nothing is left, and the state says so', () => {
  expect(allowableStress(pla, { ...base, temperature: '46 degC' })).toMatchObject({ state: 'aboveLimit', stress: { si: 0 } })
  expect(allowableStress(pa6, { ...base, temperature: '230 degC' })).toMatchObject({ state: 'aboveTable', stress: { si: 0 } })
})

describe('the clock of rupture', () => {
  const warm = { ...base, temperature: '40 degC', duration: '1 year' } as const
  const kept = (m: Material, c: Parameters<typeof allowableStress>[1]) =>
    allowableStress(m, c).factors.find(({ name }) => name === 'duration')!
  test('moves with heat: a year at 40 °C takes more of PLA than a year at 23 °C, by the same shift as its creep', () => {
    const cold = kept(pla, { ...warm, temperature: '23 degC' }).typical
    expect(cold).toBe(pla.strengthKept1Year.si)
    // By hand: ln a = Ea/R (1/T - 1/T0); the share after t/a over the share after a minute/a.
    const faster = Math.exp((pla.activationEnergy.si / 8.31446261815324) * (1 / 296.15 - 1 / 313.15))
    const year = 31557600
    const k = [pla.strengthKept1000Hours.si, pla.strengthKept1Year.si] as const
    const afterMinute = 1 - (1 - k[0]) * (Math.log(faster) / Math.log(60000))
    const afterYear = k[1] * faster ** (Math.log(k[1]) / Math.log(year / 60))
    expect(kept(pla, warm).typical).toBeCloseTo(afterYear / afterMinute, 12)
    expect(kept(pla, warm).typical).toBeLessThan(0.9 * cold)
  })
  test('a test of a minute at the temperature is the short-term strength there', () => {
    expect(kept(pla, { ...warm, duration: '1 min' }).typical).toBe(1)
    // Just past the minute nothing jumps.
    expect(kept(pla, { ...warm, duration: '60.001 s' as never }).typical).toBeCloseTo(1, 4)
  })
  test('the note says how the heat was counted, as a range, and that a year lies beyond the tests', () => {
    const text = (c: Parameters<typeof allowableStress>[1]) =>
      allowableStress(pla, c)
        .notes.map(({ text: t }) => t)
        .join('\n')
    expect(text({ ...base, temperature: '40 degC', duration: '100 h' })).toMatch('like 9.1 to 250 hours at 23 °C')
    expect(text(warm)).toMatch(/extrapolated beyond .*1000 h/)
    expect(text({ ...base, duration: '10 h' })).toBe('')
  })
})

describe('the lower of rupture and design strain', () => {
  const year = { ...base, duration: '1 year' } as const
  const printed = polymers.filter((m) => m.strainLimit !== undefined)
  test.each(printed.map((m) => [m.name, m] as const))('%s: after a year the stress keeps the design strain, at 23 and at 40 °C', (_, m) => {
    for (const temperature of ['23 degC', '40 degC'] as const) {
      const { stress, governs, rupture, designStrain } = allowableStress(m, { ...year, temperature })
      const { modulus } = designModulus(m, { direction: 'alongLayers', temperature, duration: '1 year', moisture: 'dry' })
      expect(stress.si / modulus.si).toBeLessThanOrEqual(m.strainLimit!.si * (1 + 1e-12))
      expect(designStrain!.si / modulus.si).toBeCloseTo(m.strainLimit!.si, 12)
      expect(stress.si).toBe(Math.min(rupture.si, designStrain!.si))
      expect(governs).toBe(designStrain!.si < rupture.si ? 'designStrain' : 'rupture')
    }
  })
  test('ASA for a year: the strain governs, and the safety factor on rupture does not divide it again', () => {
    const one = allowableStress(asa, year)
    expect(one.governs).toBe('designStrain')
    expect(allowableStress(asa, { ...year, safetyFactor: 1.2 }).stress.si).toBe(one.stress.si)
    expect(allowableStress(asa, { ...year, safetyFactor: 4 }).governs).toBe('rupture')
  })
  test('shear between layers: the largest principal strain is the limit', () => {
    const { designStrain } = allowableStress(asa, { ...year, direction: 'interlayerShear' })
    const { modulus } = designModulus(asa, { direction: 'acrossLayers', temperature: '23 degC', duration: '1 year', moisture: 'dry' })
    expect((designStrain!.si * (1 + asa.poissonRatio.si)) / modulus.si).toBeCloseTo(asa.strainLimit.si, 12)
  })
  test('metals have one criterion; a polymer without a design strain says so', () => {
    expect(allowableStress(steel129, year)).toMatchObject({ governs: 'rupture' })
    expect(allowableStress(steel129, year).designStrain).toBeUndefined()
    expect(
      allowableStress(tpu95a, year)
        .notes.map(({ text }) => text)
        .join(),
    ).toMatch('no design strain')
  })
})

describe('the range of a result', () => {
  const warm = { direction: 'alongLayers', temperature: '45 degC', duration: '1 year', moisture: 'dry' } as const
  /** A draw of a value whose range holds nine tenths, its typical value the median: two halves of a log-normal. */
  const draw = (p: { low: number; si: number; high: number }, z: number) =>
    p.si * (z < 0 ? p.low / p.si : p.high / p.si) ** (Math.abs(z) / 1.6448536)
  test.each(['ASA', 'PETG', 'PC', 'PLA'])('%s: the ends of the modulus are the 5 and 95 %% quantiles of independent scatter', (name) => {
    const m = materialByName(name)
    const c = { ...warm, temperature: '35 degC', duration: '1000 h' } as const
    const z = normals(7)
    const drawn = Array.from({ length: 20000 }, () => {
      const v = (p: { low: number; si: number; high: number } | undefined) => draw(p!, z())
      const modulus = v(m.modulus)
      const n = Math.min(0.95, v(m.creepExponent))
      const faster = Math.exp((v(m.activationEnergy) / 8.31446261815324) * (1 / 296.15 - 1 / 308.15))
      return modulus / (1 + v(m.creepCoefficient) * (1000 * faster) ** n)
    }).sort((a, b) => a - b)
    const { modulus } = designModulus(m, c)
    expect(modulus.low / drawn[1000]!).toBeGreaterThan(0.88)
    expect(modulus.low / drawn[1000]!).toBeLessThan(1.12)
    expect(modulus.high / drawn[19000]!).toBeGreaterThan(0.88)
    expect(modulus.high / drawn[19000]!).toBeLessThan(1.12)
  })
  test('extremes are offered, and never narrower', () => {
    for (const m of polymers) {
      const joint = allowableStress(m, { ...warm, safetyFactor: 1 }).stress
      const extremes = allowableStress(m, { ...warm, safetyFactor: 1, range: 'extremes' }).stress
      expect(extremes.si).toBe(joint.si)
      expect(extremes.low).toBeLessThanOrEqual(joint.low * (1 + 1e-12))
      expect(extremes.high).toBeGreaterThanOrEqual(joint.high * (1 - 1e-12))
    }
  })
  test('an unknown rule is refused', () => {
    expect(() => allowableStress(pla, { ...base, range: 'worst' as never })).toThrow('range')
    expect(() => designModulus(pla, { ...warm, range: 'worst' as never })).toThrow('range')
  })
})

test('the prepared numbers give the same stress against rupture, and record the chain', () => {
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
    range: 'extremes',
  })
  expect(si / checked.rupture.low).toBeCloseTo(1, 12)
  expect(steps().map(({ formula }) => formula)).toEqual([
    'materials.amorphousStrengthFactor',
    'materials.arrheniusShift',
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
