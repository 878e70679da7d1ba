import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import * as z from 'zod'
import {
  allMaterials,
  allowableStress,
  asa,
  designModulus,
  type Material,
  materialByName,
  materialFromCoupons,
  materialJsonSchema,
  pa6,
  pa12,
  pc,
  petg,
  pla,
  pom,
  pp,
  priorsOf,
  propertiesOf,
  readMaterial,
  serviceMargin,
  serviceVerdict,
  steel129,
  withProperties,
  writeMaterial,
} from '../../src/materials/index.js'

const named = allMaterials().map((m) => [m.name, m] as const)

describe('service verdict', () => {
  test('PLA beside a warm motor', () => {
    expect(serviceVerdict(pla, '30 degC')).toMatchObject({ verdict: 'ok' })
    // 15 K below a glass transition of 54 to 64 °C: marginal from 39 to 49 °C.
    expect(serviceVerdict(pla, '38.9 degC')).toMatchObject({ verdict: 'ok' })
    expect(serviceVerdict(pla, '45 degC')).toMatchObject({ verdict: 'marginal' })
    expect(serviceVerdict(pla, '48.9 degC')).toMatchObject({ verdict: 'marginal' })
    expect(serviceVerdict(pla, '49.1 degC')).toMatchObject({ verdict: 'fail' })
    const hot = serviceVerdict(pla, '55 degC')
    expect(hot).toMatchObject({ verdict: 'fail', limitedBy: 'creep near the glass transition' })
    expect(hot.reason).toMatch(/55 °C is above the loaded limit of PLA.*39 °C to 49 °C/)
    expect(serviceVerdict(pla, '55 degC', 'unloaded')).toMatchObject({ verdict: 'marginal', limitedBy: 'glass transition' })
  })
  test.each(named)('%s: never better when hotter, and the margin agrees', (_, m) => {
    const order = ['ok', 'marginal', 'fail']
    fc.assert(
      fc.property(fc.double({ min: 250, max: 700, noNaN: true }), fc.double({ min: 0, max: 200, noNaN: true }), (t, up) => {
        const at = (kelvin: number) => order.indexOf(serviceVerdict(m, [kelvin, 'K']).verdict)
        return at(t + up) >= at(t) && serviceMargin(m, [t, 'K']).si > 0 === (at(t) === 0)
      }),
    )
  })
  test('a material without a limit is unknown, not fine', () => {
    const bare = readMaterial({ name: 'X', title: 'x', family: 'adhesive', process: 'cured', properties: {} })
    expect(serviceVerdict(bare, '20 degC')).toMatchObject({ verdict: 'unknown' })
    expect(() => serviceVerdict(pla, '-300 degC')).toThrow('temperature')
  })
})

describe('creep modulus of a material', () => {
  const polymers = allMaterials().filter(({ family }) => !['metal', 'magnet', 'adhesive'].includes(family))
  const at = fc.record({
    m: fc.constantFrom(...polymers),
    direction: fc.constantFrom('alongLayers' as const, 'acrossLayers' as const),
    celsius: fc.double({ min: -40, max: 160, noNaN: true }),
    hours: fc.double({ min: 0, max: 9000, noNaN: true }),
    moisture: fc.constantFrom('dry' as const, 'conditioned' as const, 'saturated' as const),
  })
  type At = typeof at extends fc.Arbitrary<infer T> ? T : never
  const of = ({ m, direction, celsius, hours, moisture }: At) =>
    designModulus(m, { direction, temperature: [celsius, 'degC'], duration: [hours, 'h'], moisture })
  test('never above the short-term modulus, falls with temperature, time and water, and its ends stay in order', () => {
    fc.assert(
      fc.property(at, fc.double({ min: 0, max: 50, noNaN: true }), (c, up) => {
        const { modulus, start } = of(c)
        const less = (a: { si: number; low: number; high: number }) =>
          a.si <= modulus.si * (1 + 1e-12) && a.low <= modulus.low * (1 + 1e-12) && a.high <= modulus.high * (1 + 1e-12)
        const wetter = c.moisture === 'dry' ? ('conditioned' as const) : ('saturated' as const)
        return (
          modulus.si <= start.si &&
          modulus.low <= modulus.si &&
          modulus.si <= modulus.high &&
          less(of({ ...c, celsius: c.celsius + up }).modulus) &&
          less(of({ ...c, hours: c.hours + up }).modulus) &&
          less(of({ ...c, moisture: wetter }).modulus)
        )
      }),
    )
  })
  test('PLA at its limit has nothing to count on; steel does not creep; above Tg the shift is flagged', () => {
    const warm = designModulus(pla, { direction: 'alongLayers', temperature: '50 degC', duration: '1 h', moisture: 'dry' })
    expect(warm.state).toBe('aboveLimit')
    expect(warm.modulus.si).toBe(0)
    const steel = designModulus(steel129, { direction: 'acrossLayers', temperature: '60 degC', duration: '1 year', moisture: 'saturated' })
    expect(steel.factors.map(({ name }) => name)).toEqual(['temperature'])
    expect(steel.modulus.si / steel129.modulus!.si).toBeGreaterThan(0.98)
    const energy = {
      typical: '150 kJ/mol',
      low: '100 kJ/mol',
      high: '250 kJ/mol',
      source: { level: 'assumption', where: 'a glass' },
    } as const
    const nylon = withProperties(pa6, { activationEnergy: energy })
    const at = (temperature: '30 degC' | '52 degC' | '54 degC', moisture: 'dry' | 'conditioned') =>
      designModulus(nylon, { direction: 'alongLayers', temperature, duration: '1000 h', moisture })
    const creep = (design: ReturnType<typeof at>) => design.factors.find(({ name }) => name === 'creep')!.typical
    expect(
      at('30 degC', 'conditioned')
        .notes.map(({ text }) => text)
        .join(),
    ).toMatch('above the glass transition')
    expect(
      at('30 degC', 'dry')
        .notes.map(({ text }) => text)
        .join(),
    ).not.toMatch('above the glass transition')
    // A semicrystalline polymer goes on creeping faster above its transition.
    expect(creep(at('54 degC', 'dry'))).toBeLessThan(creep(at('52 degC', 'dry')))
    expect(creep(at('30 degC', 'dry'))).toBeGreaterThan(creep(at('52 degC', 'dry')))
    expect(
      designModulus(petg, { direction: 'alongLayers', temperature: '23 degC', duration: '1 h', moisture: 'dry' }).modulus.source.level,
    ).toBe('assumption')
  })
})

describe('stiffness against what others measured', () => {
  const cold = (m: Material, duration: '1 h' | '1000 h' | '1 year', direction: 'alongLayers' | 'acrossLayers' = 'alongLayers') =>
    designModulus(m, { direction, temperature: '23 degC', duration, moisture: 'dry' })
  test.each([
    // Data sheet of PC to ISO 899-1: 2400 at once, 2200 and 1900 MPa.
    ['PC', pc, 2400, '1 h', 2200],
    ['PC', pc, 2400, '1000 h', 1900],
    // Data sheet of POM-C to ISO 899-1: 2850 at once, 2500 and 1300 MPa.
    ['POM', pom, 2850, '1 h', 2500],
    ['POM', pom, 2850, '1000 h', 1300],
    // Data sheet of PP stock to DIN 53444: 1400 at once, 4 MPa at 1 % after 1000 h.
    ['PP', pp, 1400, '1000 h', 400],
  ] as const)('%s of %#: the share left by creep', (_, m, atOnce, duration, after) => {
    const { typical } = cold(m, duration).factors.find(({ name }) => name === 'creep')!
    expect(typical).toBeCloseTo(after / atOnce, 2)
  })
  test('the creep factor and both its ends by hand: Findley with the time shifted by Arrhenius', () => {
    const { creepCoefficient: c, creepExponent: n, activationEnergy: e } = pc
    const { factors } = designModulus(pc, {
      direction: 'alongLayers',
      temperature: '60 degC',
      duration: '1000 h',
      moisture: 'dry',
      range: 'extremes',
    })
    const creep = factors.find(({ name }) => name === 'creep')!
    const left = (cc: number, nn: number, energy: number) => {
      const faster = Math.exp((energy / 8.31446261815324) * (1 / 296.15 - 1 / 333.15))
      return 1 / (1 + cc * (1000 * faster) ** nn)
    }
    expect(creep.typical / left(c.si, n.si, e.si)).toBeCloseTo(1, 12)
    expect(creep.low / left(c.high, n.high, e.high)).toBeCloseTo(1, 12)
    expect(creep.high / left(c.low, n.low, e.low)).toBeCloseTo(1, 12)
  })
  test('PP after a year: the secant of 347 MPa at 1.5 % (Crawford, Plastics Engineering, example 2.6) lies in the range', () => {
    const { modulus } = cold(pp, '1 year')
    expect(modulus.low).toBeLessThan(347e6)
    expect(modulus.high).toBeGreaterThan(347e6)
    expect(Math.abs(modulus.si - 347e6)).toBeLessThan(100e6)
  })
  test('POM at 100 °C: 0.70 of 3.25 GPa and 28 of 68 MPa (data sheet of POM-H, ASTM D638)', () => {
    const warm = { direction: 'alongLayers', temperature: '100 degC', duration: '0 s', moisture: 'dry' } as const
    const stiff = designModulus(pom, warm).factors.find(({ name }) => name === 'temperature')!
    expect(stiff.typical).toBeCloseTo(0.7 / 3.25, 3)
    const strong = allowableStress(pom, { ...warm, safetyFactor: 1 }).factors.find(({ name }) => name === 'temperature')!
    expect(strong.low <= 28 / 68 && 28 / 68 <= strong.high).toBe(true)
    expect(Math.abs(strong.typical - 28 / 68)).toBeLessThan(0.02)
  })
  test('a stress above half of the strength leaves a note', () => {
    const c = { direction: 'acrossLayers', temperature: '40 degC', duration: '1 h', moisture: 'dry' } as const
    const { stress } = allowableStress(petg, { ...c, duration: '0 s', safetyFactor: 2 })
    expect(designModulus(petg, { ...c, stress: stress.lowest }).notes).toEqual([])
    const over = designModulus(petg, { ...c, stress: [-1.01 * stress.low, 'Pa'] })
    expect(over.notes.map(({ text }) => text).join()).toMatch('above half')
    expect(over.modulus.notes).toEqual(over.notes)
  })
  test('a glass keeps its stiffness where own warm coupons say its strength falls', () => {
    const weak = materialFromCoupons({
      name: 'x',
      basedOn: asa,
      coupons: [{ property: 'tensileStrength', values: ['40 MPa', '41 MPa', '40.4 MPa'] }],
      warm: [{ temperature: '60 degC', values: ['20 MPa', '20.2 MPa', '19.9 MPa'] }],
    })
    const at = (m: Material) => designModulus(m, { direction: 'alongLayers', temperature: '60 degC', duration: '1 h', moisture: 'dry' })
    expect(at(weak).modulus.si).toBe(at(asa).modulus.si)
    const { glassTransitionTemperature: _, ...unknown } = weak
    expect(at(unknown as Material).factors[0]).toMatchObject({ name: 'temperature', source: { level: 'assumption' } })
    expect(at(unknown as Material).factors[0]?.typical).toBeCloseTo(60.1 / 121.4, 12)
    expect(at(unknown as Material).modulus.si).toBeLessThan(0.7 * at(asa).modulus.si)
  })
})

describe('a material of your own', () => {
  const flat = ['41 MPa', '43 MPa', '42.5 MPa', '40.2 MPa', '43.3 MPa', '41.8 MPa'] as const
  const coupons = [{ property: 'tensileStrength', values: flat, measured: 'flat, 5 mm/min' }] as const
  test('replaces what was measured and keeps the source of the rest', () => {
    const mine = materialFromCoupons({
      name: 'my ASA',
      basedOn: asa,
      coupons,
      acrossLayers: ['24 MPa', '26 MPa', '25.2 MPa', '23.1 MPa', '25.5 MPa'],
    })
    const mean = (41 + 43 + 42.5 + 40.2 + 43.3 + 41.8) / 6
    expect(mine.tensileStrength!.in('MPa')).toBeCloseTo(mean, 12)
    expect(mine.tensileStrength!.source.where).toMatch(
      /own measurement of 6 coupons, flat, 5 mm\/min; range for 90 % of parts at 95 % confidence/,
    )
    expect(mine.acrossLayersRatio!.si).toBeCloseTo(24.76 / mean, 12)
    expect(mine.density).toBe(asa.density)
    expect(mine.glassTransitionTemperature!.source).toBe(asa.glassTransitionTemperature!.source)
    const { stress } = allowableStress(mine, {
      direction: 'acrossLayers',
      temperature: '23 degC',
      duration: '1 s',
      moisture: 'dry',
      safetyFactor: 2,
    })
    expect(stress.in('MPa')).toBeCloseTo(24.76 / 2, 10)
  })
  test('its range holds what the claim says', () => {
    // 2000 sets of six from one normal population: the range must hold 90 % of it in 95 % of the sets, give or take.
    let seed = 1
    const uniform = () => {
      seed = (seed * 48271) % 2147483647
      return seed / 2147483647
    }
    const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
    const cdf = (x: number) => {
      // Trapezoid sum of the normal density: independent of the library's distribution functions.
      let sum = 0
      for (let i = 0; i < 400; i++) sum += Math.exp(-(((x * (i + 0.5)) / 400) ** 2) / 2)
      return 0.5 + (sum * (x / 400)) / Math.sqrt(2 * Math.PI)
    }
    let held = 0
    for (let k = 0; k < 2000; k++) {
      const values = Array.from({ length: 6 }, () => [40 + 2 * normal(), 'MPa'] as const)
      const { low, high } = materialFromCoupons({ name: 'x', basedOn: asa, coupons: [{ property: 'tensileStrength', values }] })
        .tensileStrength!
      if (cdf((high / 1e6 - 40) / 2) - cdf((low / 1e6 - 40) / 2) >= 0.9) held++
    }
    expect(held / 2000).toBeGreaterThan(0.935)
    expect(held / 2000).toBeLessThan(0.965)
  })
  test('warm coupons replace the rule for temperature', () => {
    const mine = materialFromCoupons({
      name: 'my ASA',
      basedOn: asa,
      coupons,
      warm: [
        { temperature: '60 degC', values: ['28 MPa', '29 MPa', '28.4 MPa'] },
        { temperature: '80 degC', values: ['18 MPa', '18.6 MPa', '18.2 MPa'] },
      ],
    })
    const at = (t: '60 degC' | '90 degC') =>
      allowableStress(mine, { direction: 'alongLayers', temperature: t, duration: '1 s', moisture: 'dry', safetyFactor: 1 })
    expect(at('60 degC').stress.in('MPa')).toBeCloseTo((28 + 29 + 28.4) / 3, 10)
    expect(at('90 degC')).toMatchObject({ state: 'aboveTable' })
  })
  test('a set too small or too scattered for the claim is refused, with every other fault beside it', () => {
    expect(() =>
      materialFromCoupons({
        name: 'x',
        basedOn: asa,
        coupons: [
          { property: 'tensileStrength', values: ['40 MPa', '41 MPa'] },
          { property: 'modulus', values: ['2 GPa', '0.3 GPa', '3.9 GPa'] },
          { property: 'tensilStrength' as 'tensileStrength', values: [] },
          { property: 'density', values: ['1 kg/m^3', '2 N' as '2 kg/m^3', '3 kg/m^3'] },
        ],
      }),
    ).toThrow(/at least 3 coupons[\s\S]*too few or too scattered[\s\S]*did you mean tensileStrength[\s\S]*coupons\[3\]\.values\[1\]/)
    expect(() => materialFromCoupons({ name: 'x', basedOn: asa, coupons: [], acrossLayers: ['1 MPa', '1 MPa', '1.1 MPa'] })).toThrow(
      'along the layers',
    )
    expect(() => materialFromCoupons({ name: 'x', basedOn: asa, coupons: [], warm: [] })).toThrow('23 °C')
    expect(() => materialFromCoupons({ name: 'x', basedOn: asa, coupons: [], confidence: 1 })).toThrow('confidence')
  })
  test('strength that seems higher across the layers than along them is scatter and is not counted', () => {
    const flat12 = ['45 MPa', '46 MPa', '44 MPa', '45.5 MPa'] as const
    const mine = materialFromCoupons({
      name: 'x',
      basedOn: pa12,
      coupons: [{ property: 'tensileStrength', values: flat12 }],
      acrossLayers: ['45 MPa', '46 MPa', '47 MPa', '46 MPa'],
    })
    expect([mine.acrossLayersRatio!.si, mine.acrossLayersRatio!.high]).toEqual([1, 1])
    expect(mine.acrossLayersRatio!.conditions).toMatch('not counted')
    const c = { temperature: '23 degC', duration: '0 s', moisture: 'dry', safetyFactor: 1 } as const
    expect(allowableStress(mine, { ...c, direction: 'acrossLayers' }).stress.si).toBe(mine.tensileStrength!.si)
    const source = { level: 'published', where: 'own bars' } as const
    const ratio = { typical: 1.1, low: 1, high: 1.2, source } as const
    expect(() => withProperties(pa12, { acrossLayersRatio: ratio })).toThrow('share')
    const sheared = withProperties(pa12, { interlayerShearRatio: ratio })
    expect(() => allowableStress(sheared, { ...c, direction: 'interlayerShear' })).toThrow('interlayerShearRatio')
  })
  test('what cannot be read is named, not a crash', () => {
    expect(() => materialFromCoupons(undefined as never)).toThrow('must be an object')
    expect(() => materialFromCoupons({ name: '', basedOn: undefined, warm: 3 } as never)).toThrow(
      /name[\s\S]*basedOn[\s\S]*coupons[\s\S]*warm/,
    )
    expect(() =>
      materialFromCoupons({
        name: 'x',
        basedOn: asa,
        coupons,
        warm: [{ temperature: 'hot' as '1 K', values: ['30 MPa', '31 MPa', '30 MPa'] }],
      }),
    ).toThrow('warm[0].temperature')
  })
  test('own values that contradict the table are refused: nothing gets better with time, water or load', () => {
    const source = { level: 'published', where: 'own bars' } as const
    const share = (typical: number) => ({ typical, low: typical - 0.02, high: typical + 0.02, source })
    expect(() => withProperties(pa6, { strengthConditionedRatio: share(0.3) })).toThrow(/strengthSaturatedRatio.*strengthConditionedRatio/)
    expect(() => withProperties(pla, { strengthKept1Year: share(0.7) })).toThrow('strengthKept1000Hours')
    const document = writeMaterial(pa6)
    const { modulusSaturatedRatio: wet, modulusConditionedRatio: damp } = document.properties
    expect(() =>
      readMaterial({ ...document, properties: { ...document.properties, modulusSaturatedRatio: damp, modulusConditionedRatio: wet } }),
    ).toThrow('properties.modulusSaturatedRatio')
    // One end out of order is enough.
    expect(() => withProperties(pa6, { strengthConditionedRatio: { typical: 0.6, low: 0.1, high: 0.7, source } })).toThrow(
      'strengthSaturatedRatio',
    )
  })
  test('withProperties refuses a typical outside its range and an unknown name', () => {
    const source = { level: 'published', where: 'own bar' } as const
    expect(
      withProperties(pom, { modulus: { typical: '2.7 GPa', low: '2.6 GPa', high: '2.8 GPa', source } }).modulus!.in('GPa'),
    ).toBeCloseTo(2.7, 12)
    expect(() =>
      withProperties(pom, { modulus: { typical: '2.7 GPa', low: '2.8 GPa', high: '2.9 GPa', source }, stiffness: 1 } as never),
    ).toThrow(/modulus\.typical[\s\S]*stiffness/)
  })
})

describe('documents', () => {
  const schema = z.fromJSONSchema(materialJsonSchema() as never)
  test.each(named)('%s: written and read back exactly, and its schema accepts it', (_, m) => {
    const text = JSON.stringify(writeMaterial(m))
    const back = readMaterial(text)
    expect(back.name).toBe(m.name)
    expect(propertiesOf(back)).toEqual(propertiesOf(m))
    expect(back.strengthCurve).toEqual(m.strengthCurve)
    expect(back.modulusCurve).toEqual(m.modulusCurve)
    expect(schema.safeParse(JSON.parse(text)).success).toBe(true)
  })
  test('the schema and the reader refuse the same faults', () => {
    const good = writeMaterial(pla)
    const faults = {
      family: { ...good, family: 'crystal' },
      surplus: { ...good, colour: 'red' },
      unit: { ...good, properties: { density: { ...good.properties.density!, typical: '1240 N' } } },
      level: { ...good, properties: { density: { ...good.properties.density!, source: { level: 'rumour', where: 'x' } } } },
      unnamed: { ...good, name: '' },
    }
    for (const fault of Object.values(faults)) {
      expect(schema.safeParse(fault).success).toBe(false)
      expect(() => readMaterial(fault)).toThrow()
    }
    expect(() => readMaterial({ ...good, properties: { densty: good.properties.density } })).toThrow('did you mean density')
    expect(() =>
      readMaterial({
        ...good,
        strengthCurve: {
          ...pom.strengthCurve,
          points: [
            [23, 1, 1, 1],
            [60, 0.5, 0.4, 0.6],
          ],
        },
      }),
    ).toThrow('strengthCurve.points[1]')
    expect(() => readMaterial({ ...good, modulusCurve: { points: [[23, 1, 1, 1]] } })).toThrow('modulusCurve')
    expect(() => readMaterial('{')).toThrow('must be JSON')
    expect(() => readMaterial(7)).toThrow('must be an object')
  })
  test('priors are counted', () => {
    const { share, names } = priorsOf(pla)
    expect(names).toContain('creepCoefficient')
    expect(names).not.toContain('modulus')
    expect(share).toBeCloseTo(names.length / propertiesOf(pla).length, 14)
  })
})

describe("values of one's own that no such material has", () => {
  const source = { level: 'published', where: 'a table on the web' } as const
  const at = (typical: string) => ({ typical, low: typical, high: typical, source }) as never
  const said = (notes: readonly { text: string }[]) => notes.map(({ text }) => text).join('\n')

  test('PLA with a glass transition of 137 °C (a printed misprint of 57 or 60) is doubted by every result', () => {
    const odd = withProperties(pla, { glassTransitionTemperature: at('137 degC') })
    expect(odd.doubts?.join()).toMatch(/glassTransitionTemperature is 137 .*54 .*64 .*PLA/)
    const c = { direction: 'alongLayers', temperature: '23 degC', duration: '1 h', moisture: 'dry' } as const
    expect(said(allowableStress(odd, { ...c, safetyFactor: 1 }).notes)).toMatch('137')
    expect(said(designModulus(odd, c).notes)).toMatch('137')
    expect(serviceVerdict(odd, '23 degC').reason).toMatch('137')
    // The doubt stays with the material in a file.
    expect(readMaterial(JSON.stringify(writeMaterial(odd))).doubts).toEqual(odd.doubts)
  })
  test('stainless steel with 90 W/(m K) is doubted; with 900 it is refused', () => {
    const steel = materialByName('stainless 304')
    expect(withProperties(steel, { thermalConductivity: at('90 W/(m K)') }).doubts?.join()).toMatch('thermalConductivity')
    expect(() => withProperties(steel, { thermalConductivity: at('900 W/(m K)') })).toThrow('no material of the family metal')
    const document = writeMaterial(steel)
    const row = document.properties.thermalConductivity!
    const wrong = {
      ...document,
      properties: { ...document.properties, thermalConductivity: { ...row, typical: '90 W/(m K)', high: '90 W/(m K)' } },
    }
    expect(readMaterial(wrong).doubts).toBeUndefined()
    expect(readMaterial(wrong, { basedOn: steel }).doubts?.length).toBe(1)
  })
  test('a modulus of a polymer in the wrong unit is refused, from coupons and in a document', () => {
    const stiff = { property: 'modulus', values: ['2100 GPa', '2150 GPa', '2050 GPa'] } as const
    expect(() => materialFromCoupons({ name: 'x', basedOn: asa, coupons: [stiff] })).toThrow('check the unit and the digits')
  })
  test('coupons that lie in the range of the table, or a little beside it, are not doubted', () => {
    expect(withProperties(pla, { tensileStrength: at('70 MPa') }).doubts).toBeUndefined()
    for (const m of allMaterials())
      for (const [name, value] of propertiesOf(m)) expect(withProperties(m, { [name]: value }).doubts, `${m.name} ${name}`).toBeUndefined()
  })
})

test('a property without words where words belong is rejected by its place', () => {
  const document = structuredClone(writeMaterial(pc)) as unknown as {
    properties: Record<string, { source: { where: unknown }; conditions: unknown }>
  }
  document.properties.density!.conditions = null
  expect(() => readMaterial(document)).toThrow(/properties\.density\.conditions is null; must be text/)
  document.properties.density!.conditions = 'at 23 °C'
  document.properties.density!.source.where = 5
  expect(() => readMaterial(document)).toThrow(/properties\.density\.source\.where is 5; must be text/)
})
