import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ValidityError } from '../../src/formula/index.js'
import {
  ageingShift,
  arrheniusShift,
  boltzmannStrain,
  complianceFromRelaxation,
  complianceFromRelaxationSi,
  complianceLaw,
  creepUnderSteps,
  effectiveTimeUnderAgeing,
  equivalentTimeOfHistory,
  findleyLaw,
  findleyRelaxationModulus,
  findleySinhLaw,
  findleyStrain,
  findleyTimeToStrain,
  isochronousCurve,
  isometricCurve,
  type LinearCreepLaw,
  pronyCreepCompliance,
  pronyRelaxationModulus,
  relaxationCurve,
  relaxationFromComplianceSi,
  relaxationLaw,
  timeTemperatureShift,
  timeToStrain,
  wlfShift,
} from '../../src/materials/index.js'
import { Quantity } from '../../src/units/index.js'
import oracle from '../oracles/materials-viscoelastic.json' with { type: 'json' }

const seconds = (s: number) => new Quantity(s, 'time')
const near = (a: number, b: number, relative: number) => Math.abs(a - b) <= relative * Math.abs(b)

describe('conversions against mpmath', () => {
  test.each(oracle.findley)('Findley relaxation c=$c n=$n t=$t', ({ c, n, t, kept }) => {
    const e = findleyRelaxationModulus.si({ modulus: 1, creepCoefficient: c, creepExponent: n, time: t, referenceTime: 1 })
    expect(near(e, kept, 1e-11), `${e} against ${kept}`).toBe(true)
  })
  test.each(oracle.prony)('Prony series to compliance: $terms.length terms, long-term $longTerm', ({ longTerm, terms, compliance }) => {
    const mine = complianceFromRelaxationSi({ longTermModulus: longTerm, terms })
    expect(near(mine.instantCompliance, compliance.instant, 1e-13)).toBe(true)
    expect(mine.terms.length).toBe(compliance.terms.length)
    mine.terms.forEach((term, i) => {
      const wanted = compliance.terms[i]!
      expect(near(term.time, wanted.time, 1e-10), `${term.time} against ${wanted.time}`).toBe(true)
      expect(near(term.compliance, wanted.compliance, 1e-8), `${term.compliance} against ${wanted.compliance}`).toBe(true)
    })
    if ('viscosity' in compliance) expect(near(mine.viscosity!, compliance.viscosity!, 1e-13)).toBe(true)
    else expect(mine.viscosity).toBeUndefined()
  })
})

const positive = fc.double({ min: 0.01, max: 10, noNaN: true })
const logTime = fc.double({ min: -3, max: 8, noNaN: true }).map((x) => 10 ** x)
const series = fc
  .record({
    longTerm: fc.oneof(fc.constant(0), positive),
    terms: fc.array(fc.record({ modulus: positive, time: logTime }), { minLength: 1, maxLength: 8 }),
  })
  // Relaxation times closer than a percent are one term in any measurement.
  .filter(({ terms }) => {
    const sorted = terms.map(({ time }) => time).sort((a, b) => a - b)
    return sorted.every((t, i) => i === 0 || t > 1.01 * sorted[i - 1]!)
  })

describe('Prony series', () => {
  test('round trip: relaxation to compliance and back', () => {
    fc.assert(
      fc.property(series, logTime, ({ longTerm, terms }, time) => {
        const back = relaxationFromComplianceSi(complianceFromRelaxationSi({ longTermModulus: longTerm, terms }))
        const original = pronyRelaxationModulus.si({ longTermModulus: longTerm, terms, time })
        return Math.abs(pronyRelaxationModulus.si({ ...back, time }) - original) <= 1e-7 * (longTerm + 10)
      }),
    )
  })
  test('E(t) J(t) never exceeds one, and is one at once', () => {
    fc.assert(
      fc.property(series, logTime, ({ longTerm, terms }, time) => {
        const c = complianceFromRelaxationSi({ longTermModulus: longTerm, terms })
        const at = (t: number) =>
          pronyRelaxationModulus.si({ longTermModulus: longTerm, terms, time: t }) *
          pronyCreepCompliance.si({ ...c, viscosity: c.viscosity, time: t })
        return at(time) <= 1 + 1e-9 && near(at(0), 1, 1e-12)
      }),
    )
  })
  test('the standard linear solid has its textbook retardation time', () => {
    const { terms, instantCompliance } = complianceFromRelaxation({
      longTermModulus: '1 GPa',
      terms: [{ modulus: '1 GPa', time: '100 s' }],
    })
    expect(terms[0]!.time.si).toBeCloseTo(200, 10)
    expect(terms[0]!.compliance.in('1/GPa')).toBeCloseTo(0.5, 12)
    expect(instantCompliance.in('1/GPa')).toBeCloseTo(0.5, 12)
  })
  test('a series without stiffness is refused', () => {
    expect(() => complianceFromRelaxation({ longTermModulus: '0 GPa', terms: [{ modulus: '0 GPa', time: '1 s' }] })).toThrow('above 0')
    expect(() => relaxationLaw({ longTermModulus: '1 GPa', terms: [{ modulus: '1 GPa', time: '0 s' }] })).toThrow('terms[0].time')
  })
})

const pmma = findleyLaw({ modulus: '2.4 GPa', creepCoefficient: 0.09, creepExponent: 0.27 })
const maxwell = complianceLaw({ instantCompliance: [1 / 20, '1/GPa'], terms: [], viscosity: '1e12 Pa s' })

describe('superposition', () => {
  const laws: LinearCreepLaw[] = [pmma, maxwell, relaxationLaw({ longTermModulus: '1 GPa', terms: [{ modulus: '1 GPa', time: '1 h' }] })]
  const corner = fc.record({
    gap: fc.oneof(fc.constant(0), fc.double({ min: 1e-3, max: 1e5, noNaN: true })),
    stress: fc.double({ min: -1e7, max: 1e7, noNaN: true }),
  })
  const corners = fc.array(corner, { minLength: 1, maxLength: 6 }).map((list) => {
    let time = 0
    return list.map(({ gap, stress }) => {
      time += gap
      return { time: seconds(time), stress: new Quantity(stress, 'stress') }
    })
  })
  test('is linear: the strain of a sum is the sum of the strains', () => {
    fc.assert(
      fc.property(fc.constantFrom(...laws), corners, fc.double({ min: -3, max: 3, noNaN: true }), logTime, (law, history, k, t) => {
        const end = history.at(-1)!.time.si + t
        const scaled = history.map(({ time, stress }) => ({ time, stress: stress.times(k) }))
        const [a] = boltzmannStrain(law, history, [seconds(end)])
        const [b] = boltzmannStrain(law, scaled, [seconds(end)])
        return Math.abs(b!.si - k * a!.si) <= 1e-11 * (Math.abs(a!.si) + 1e-4)
      }),
    )
  })
  test('of one step is the law itself, and nothing moves before the load', () => {
    for (const law of laws) {
      const [before, after] = boltzmannStrain(law, [{ time: '10 s', stress: '10 MPa' }], ['9 s', '1 h'])
      expect(before!.si).toBe(0)
      expect(near(after!.si, law.si(1e7, 3590), 1e-13)).toBe(true)
    }
  })
  test('a fine staircase tends to the ramp', () => {
    const steps = Array.from({ length: 4000 }, (_, i) => ({
      time: seconds((i + 0.5) / 4),
      stress: new Quantity((1e7 * (i + 1)) / 4000, 'stress'),
    }))
    const staircase = steps.flatMap((s, i) => [{ time: s.time, stress: i === 0 ? ('0 MPa' as const) : steps[i - 1]!.stress }, s])
    const [a] = boltzmannStrain(pmma, staircase, ['2000 s'])
    const [b] = boltzmannStrain(
      pmma,
      [
        { time: '0 s', stress: '0 MPa' },
        { time: '1000 s', stress: '10 MPa' },
      ],
      ['2000 s'],
    )
    expect(near(a!.si, b!.si, 1e-6)).toBe(true)
  })
  test('a short ramp long ago keeps its digits', () => {
    for (const law of laws) {
      const t = 1e6
      const rise = 0.999e-3 * t
      const ramp = [
        { time: seconds(0), stress: '0 MPa' },
        { time: seconds(rise), stress: '1 MPa' },
      ] as const
      const { integral } = law.linear
      const exact = (1e6 / rise) * (integral(t) - integral(t - rise))
      expect(near(boltzmannStrain(law, ramp, [seconds(t)])[0]!.si, exact, 5e-11)).toBe(true)
    }
  })
  test('above half of the strength it says it is out of range; a nonlinear law and a backward history are refused', () => {
    const history = [{ time: '0 s', stress: '25 MPa' }] as const
    expect(boltzmannStrain(pmma, history, ['1 h'], { strength: '40 MPa' })[0]!.notes?.[0]?.text).toMatch('half')
    expect(boltzmannStrain(pmma, history, ['1 h'], { strength: '60 MPa' })[0]!.notes).toBeUndefined()
    const sinh = findleySinhLaw({
      elasticStrain: '1 %',
      elasticStress: '20 MPa',
      creepStrain: '0.1 %',
      creepStress: '15 MPa',
      creepExponent: 0.2,
    })
    expect(() => boltzmannStrain(sinh, history, ['1 h'])).toThrow('linear law only')
    expect(() =>
      boltzmannStrain(
        pmma,
        [
          { time: '5 s', stress: '1 MPa' },
          { time: '4 s', stress: '1 MPa' },
        ],
        ['1 h'],
      ),
    ).toThrow('history[1].time')
  })
  test('relaxation by the integral agrees with the Mittag-Leffler function', () => {
    const kept = relaxationCurve(pmma, '1 year')
    for (const t of [60, 3600, 1e5, 3e7]) {
      const exact = findleyRelaxationModulus.si({ modulus: 1, creepCoefficient: 0.09, creepExponent: 0.27, time: t, referenceTime: 3600 })
      expect(near(kept.si(t), exact, 2e-4), `${t}: ${kept.si(t)} against ${exact}`).toBe(true)
    }
    expect(() => kept.si(1e9)).toThrow(RangeError)
  })
})

describe('curves and times', () => {
  const sinh = findleySinhLaw({
    elasticStrain: '1 %',
    elasticStress: '20 MPa',
    creepStrain: '0.1 %',
    creepStress: '15 MPa',
    creepExponent: 0.2,
  })
  test('isochronous and isometric curves meet', () => {
    for (const law of [pmma, sinh]) {
      const [point] = isochronousCurve(law, '100 h', ['12 MPa'])
      const [back] = isometricCurve(law, point!.strain, ['100 h'])
      expect(near(back!.stress.si, 12e6, 1e-9)).toBe(true)
      expect(near(timeToStrain(law, '12 MPa', point!.strain).in('h'), 100, 1e-6)).toBe(true)
    }
  })
  test('a century that does not reach the strain is infinite, a load that does at once is zero', () => {
    expect(timeToStrain(pmma, '1 MPa', '20 %').si).toBe(Number.POSITIVE_INFINITY)
    expect(timeToStrain(pmma, '30 MPa', '1 %').si).toBe(0)
    expect(
      findleyTimeToStrain({ strain: '1 %', stress: '30 MPa', modulus: '2.4 GPa', creepCoefficient: 0.1, creepExponent: 0.2 }),
    ).toMatchObject({
      state: 'onLoading',
    })
  })
  test('creep asked above half of the strength carries a note, or throws when strict', () => {
    const given = {
      stress: '25 MPa',
      modulus: '2.4 GPa',
      creepCoefficient: 0.1,
      creepExponent: 0.2,
      time: '1 h',
      strength: '40 MPa',
    } as const
    expect(
      findleyStrain(given)
        .notes?.map(({ text }) => text)
        .join(),
    ).toMatch('half of the strength')
    expect(() => findleyStrain(given, { strict: true })).toThrow(ValidityError)
  })
  test('a law that knows its strength says so wherever it is asked above half of it', () => {
    const known = findleyLaw({ modulus: '2.4 GPa', creepCoefficient: 0.09, creepExponent: 0.27, strength: '40 MPa' })
    const said = (result: { readonly notes?: readonly { readonly text: string }[] | undefined } | undefined) => result?.notes?.[0]?.text
    expect(said(known.strain('20 MPa', '1 h'))).toBeUndefined()
    expect(said(known.strain('-21 MPa', '1 h'))).toMatch('half')
    expect(isochronousCurve(known, '1 h', ['19 MPa', '21 MPa']).map(({ strain }) => said(strain) !== undefined)).toEqual([false, true])
    expect(said(isometricCurve(known, '2 %', ['1 h'])[0]!.stress)).toMatch('half')
    expect(said(isometricCurve(known, '0.2 %', ['1 h'])[0]!.stress)).toBeUndefined()
    expect(said(timeToStrain(known, '21 MPa', '3 %'))).toMatch('half')
    expect(said(boltzmannStrain(known, [{ time: '0 s', stress: '21 MPa' }], ['1 h'])[0])).toMatch('half')
    expect(
      said(
        relaxationLaw({ longTermModulus: '1 GPa', terms: [{ modulus: '1 GPa', time: '1 h' }] }, { strength: '40 MPa' }).strain(
          '30 MPa',
          '1 s',
        ),
      ),
    ).toMatch('half')
    expect(() => complianceLaw({ instantCompliance: [0.5, '1/GPa'], terms: [] }, { strength: '-1 MPa' })).toThrow('strength')
    const time = {
      strain: '3 %',
      stress: '25 MPa',
      modulus: '2.4 GPa',
      creepCoefficient: 0.1,
      creepExponent: 0.2,
      strength: '40 MPa',
    } as const
    expect(
      findleyTimeToStrain(time)
        .time.notes?.map(({ text }) => text)
        .join(),
    ).toMatch('half of the strength')
  })
  test.each(['-1 h', 'Infinity h'])('a duration of %s is refused', (time) => {
    expect(() =>
      findleyStrain({ stress: '1 MPa', modulus: '2 GPa', creepCoefficient: 0.1, creepExponent: 0.2, time: time as '1 h' }),
    ).toThrow('time')
  })
})

describe('hardening', () => {
  const law = { referenceStrain: '0.1 %', referenceStress: '10 MPa', stressExponent: 1.5, timeExponent: 0.3 } as const
  test('one load cut in two is one load, by either rule', () => {
    for (const rule of ['strainHardening', 'timeHardening'] as const) {
      const whole = creepUnderSteps({ ...law, rule, stresses: ['10 MPa'], durations: ['10 h'] }).strain.si
      const cut = creepUnderSteps({ ...law, rule, stresses: ['10 MPa', '10 MPa'], durations: ['3 h', '7 h'] }).strain.si
      expect(near(cut, whole, 1e-12)).toBe(true)
    }
  })
  test('a step without its duration is named', () => {
    expect(() => creepUnderSteps({ ...law, stresses: ['10 MPa', '5 MPa'], durations: ['10 h'] })).toThrow('as many as stresses')
  })
  test('time hardening is the lower bound when loads rise, the upper when they fall', () => {
    const run = (rule: 'strainHardening' | 'timeHardening', stresses: readonly ['5 MPa' | '10 MPa', '5 MPa' | '10 MPa']) =>
      creepUnderSteps({ ...law, rule, stresses: [...stresses], durations: ['100 h', '100 h'] }).strain.si
    expect(run('timeHardening', ['5 MPa', '10 MPa'])).toBeLessThan(run('strainHardening', ['5 MPa', '10 MPa']))
    expect(run('timeHardening', ['10 MPa', '5 MPa'])).toBeGreaterThan(run('strainHardening', ['10 MPa', '5 MPa']))
  })
})

describe('temperature and age', () => {
  test('WLF below its reference carries a note, throws when strict, and has no answer at C2 below it', () => {
    expect(wlfShift({ temperature: '50 degC', reference: '60 degC' }).notes?.[0]?.text).toMatch('below it the law is wrong')
    expect(() => wlfShift({ temperature: '50 degC', reference: '60 degC' }, { strict: true })).toThrow(ValidityError)
    expect(() => wlfShift({ temperature: '5 degC', reference: '60 degC' })).toThrow('must be less than c2 below the reference')
    expect(() => wlfShift({ temperature: '-300 degC', reference: '60 degC' })).toThrow('temperature')
  })
  test('Arrhenius above the glass transition carries a note', () => {
    const given = { temperature: '70 degC', reference: '23 degC', activationEnergy: '150 kJ/mol', glassTransition: '60 degC' } as const
    expect(arrheniusShift(given).notes?.[0]?.text).toMatch('glass transition')
  })
  test('the two laws join at the glass transition, and crossing it is said', () => {
    const given = { reference: '23 degC', glassTransition: '60 degC', activationEnergy: '150 kJ/mol' } as const
    const below = timeTemperatureShift({ ...given, temperature: '59.9999 degC' })
    const above = timeTemperatureShift({ ...given, temperature: '60.0001 degC' })
    expect(near(below.shift.si, above.shift.si, 1e-4)).toBe(true)
    expect([below.law, above.law]).toEqual(['arrhenius', 'wlf'])
    expect(below.shift.notes).toBeUndefined()
    expect(above.shift.notes?.[0]?.text).toMatch('break in slope')
  })
  test('shifts fall with temperature, undo themselves, and chain', () => {
    const t = fc.double({ min: 250, max: 330, noNaN: true })
    fc.assert(
      fc.property(t, t, t, fc.double({ min: 1e4, max: 2.5e5, noNaN: true }), (a, b, c, activationEnergy) => {
        const shift = (temperature: number, reference: number) =>
          arrheniusShift.si({ temperature, reference, activationEnergy, glassTransition: undefined })
        return near(shift(a, b) * shift(b, c), shift(a, c), 1e-9) && (a <= b || shift(a, c) <= shift(b, c))
      }),
    )
  })
  test('spells of one temperature add up to one spell', () => {
    const one = equivalentTimeOfHistory({
      durations: ['3 h', '5 h'],
      temperatures: ['40 degC', '40 degC'],
      reference: '23 degC',
      activationEnergy: '150 kJ/mol',
    })
    const shift = arrheniusShift({ temperature: '40 degC', reference: '23 degC', activationEnergy: '150 kJ/mol' })
    expect(near(one.time.si, (8 * 3600) / shift.si, 1e-12)).toBe(true)
    expect(one.hottestShare.si).toBe(1)
    expect(() =>
      equivalentTimeOfHistory({ durations: ['3 h', '5 h'], temperatures: ['40 degC'], reference: '23 degC', activationEnergy: '1 kJ/mol' }),
    ).toThrow('as many as durations')
  })
  test('an ageing glass: no rate is no effect, short creep is clock time, and effective time is never longer', () => {
    expect(ageingShift({ age: '100 h', referenceAge: '1 h', shiftRate: 0 }).si).toBe(1)
    fc.assert(
      fc.property(logTime, logTime, fc.double({ min: 0, max: 1.2, noNaN: true }), (time, age, shiftRate) => {
        const effective = effectiveTimeUnderAgeing.si({ time, age, shiftRate })
        return effective <= time * (1 + 1e-9) && (time > 1e-6 * age || near(effective, time, 1e-5))
      }),
    )
    const nearly = (shiftRate: number) => effectiveTimeUnderAgeing.si({ time: 1e6, age: 1e3, shiftRate })
    expect(near(nearly(1), 1e3 * Math.log(1001), 1e-12)).toBe(true)
    expect(near(nearly(1 - 1e-9), nearly(1), 1e-7)).toBe(true)
  })
})
