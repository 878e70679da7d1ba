import { describe, expect, test } from 'vitest'
import {
  boltzmannStrain,
  fitActivationEnergy,
  fitFindley,
  fitFindleySinh,
  fitNortonBailey,
  fitRelaxation,
  isochronousCurve,
  pronyRelaxationModulus,
  relaxationCurve,
  relaxationLaw,
  timeToStrain,
} from '../../src/materials/index.js'
import { Quantity } from '../../src/units/index.js'
import oracle from '../oracles/materials-fit.json' with { type: 'json' }

const near = (a: number, b: number, relative: number) => expect(Math.abs(a - b) <= relative * Math.abs(b), `${a} against ${b}`).toBe(true)
const log = ({ time, stress, strain }: { time: number[]; stress: number | number[]; strain: number[] }) =>
  time.map((t, i) => ({ time: [t, 's'], stress: [Array.isArray(stress) ? stress[i]! : stress, 'Pa'], strain: strain[i]! }) as const)

describe('creep logs against scipy', () => {
  test('Findley: parameters and 95 % ranges', () => {
    const { parameters, law, notes, residuals, scatter } = fitFindley(log(oracle.findley))
    const { modulus, creepCoefficient, creepExponent } = parameters
    const mine = [modulus, creepCoefficient, creepExponent]
    const wanted = [oracle.findley.modulus, oracle.findley.coefficient, oracle.findley.exponent]
    mine.forEach((parameter, i) => {
      near(parameter.si, wanted[i]!, 1e-5)
      near(parameter.low, oracle.findley.low[i]!, 2e-3)
      near(parameter.high, oracle.findley.high[i]!, 2e-3)
    })
    expect(modulus.kind).toBe('modulus')
    near(law.si(8e6, 86400), oracle.findley.strain[8]!, 0.01)
    expect(residuals.length).toBe(oracle.findley.time.length)
    expect(scatter).toBeLessThan(0.006)
    expect(notes.map(({ text }) => text).join()).toMatch('ten times the longest reading, 168 h')
  })
  test('a law carries how far its log reached: beyond it every result has a note', () => {
    const hour = Array.from({ length: 8 }, (_, i) => 60 * 1.8 ** i)
    const { law } = fitFindley(hour.map((t) => ({ time: [t, 's'], stress: '8 MPa', strain: 0.004 * (1 + 0.1 * (t / 3600) ** 0.2) })))
    const said = (q: { readonly notes?: readonly { text: string }[] | undefined }) => (q.notes ?? []).map(({ text }) => text).join()
    expect(said(law.strain('8 MPa', '50 min'))).toBe('')
    expect(said(law.strain('8 MPa', '5 h'))).toMatch(/4\.9 times beyond the longest reading/)
    expect(said(law.strain('8 MPa', '10000 h'))).toMatch('more than one decade')
    expect(said(isochronousCurve(law, '1000 h', ['8 MPa'])[0]!.strain)).toMatch('extrapolated')
    expect(said(timeToStrain(law, '8 MPa', '0.5 %'))).toMatch('extrapolated')
    expect(said(relaxationCurve(law, '1 year')(new Quantity(3.6e6, 'time')))).toMatch('extrapolated')
    const history = [{ time: '0 s', stress: '8 MPa' }] as const
    const [early, late] = boltzmannStrain(law, history, ['10 min', '1000 h'])
    expect([said(early!), said(late!)]).toEqual(['', expect.stringMatching('extrapolated')])
  })
  test('Norton-Bailey', () => {
    const { parameters, referenceStress } = fitNortonBailey(log(oracle.norton))
    expect(referenceStress).toBe(15e6)
    near(parameters.referenceStrain.si, oracle.norton.referenceStrain, 1e-6)
    near(parameters.stressExponent.si, oracle.norton.stressExponent, 1e-6)
    near(parameters.timeExponent.si, oracle.norton.timeExponent, 1e-6)
  })
  test('Findley with sinh gives back what an exact log was made of', () => {
    const { parameters: p, law } = fitFindleySinh(log(oracle.sinh))
    near(p.elasticStrain.si, oracle.sinh.elasticStrain, 1e-4)
    near(p.elasticStress.si, oracle.sinh.elasticStress, 1e-4)
    near(p.creepStrain.si, oracle.sinh.creepStrain, 1e-4)
    near(p.creepStress.si, oracle.sinh.creepStress, 1e-4)
    near(p.creepExponent.si, oracle.sinh.exponent, 1e-4)
    near(law.si(10e6, 3600), oracle.sinh.strain[11 + 4]!, 1e-7)
  })
  test('a log that says too little is refused or said to be so', () => {
    const short = log(oracle.findley).slice(0, 6)
    expect(
      fitFindley(short.slice(1))
        .notes.map(({ text }) => text)
        .join(),
    ).toMatch('less than two decades')
    expect(() => fitFindley(short.slice(0, 4))).toThrow('at least 5')
    expect(() => fitFindley(short, { confidence: 1 })).toThrow('confidence')
    expect(() => fitFindleySinh(log(oracle.findley))).toThrow('three different stresses')
    expect(() => fitNortonBailey(log(oracle.findley))).toThrow('stress exponent')
    expect(() => fitNortonBailey([...log(oracle.norton), { time: '0 s', stress: '5 MPa', strain: '1 %' }])).toThrow('time zero')
    expect(() => fitFindley([...short, { time: '-1 s', stress: '1 MPa', strain: '1 %' }])).toThrow('readings[6].time')
  })
})

describe('relaxation logs', () => {
  const readings = oracle.relaxation.time.map((t, i) => ({ time: [t, 's'], modulus: [oracle.relaxation.modulus[i]!, 'Pa'] }) as const)
  test('Prony moduli against non-negative least squares', () => {
    const { series, scatter } = fitRelaxation(readings)
    near(scatter, oracle.relaxation.scatter, 1e-6)
    near(series.longTermModulus.si, oracle.relaxation.longTerm, 1e-5)
    const kept = oracle.relaxation.tau.flatMap((tau, i) =>
      oracle.relaxation.moduli[i]! > 1 ? [[tau, oracle.relaxation.moduli[i]!] as const] : [],
    )
    expect(series.terms.length).toBe(kept.length)
    series.terms.forEach(({ time, modulus }, i) => {
      near(time.si, kept[i]![0], 1e-10)
      expect(Math.abs(modulus.si - kept[i]![1])).toBeLessThan(1e4)
    })
    const law = relaxationLaw(series)
    near(1e6 / law.si(1e6, 0), pronyRelaxationModulus({ ...series, time: '0 s' }).si, 1e-9)
  })
  test('too few readings, and too many terms, are refused', () => {
    expect(() => fitRelaxation(readings.filter((_, i) => i % 15 === 0))).toThrow('7 moduli')
    expect(() => fitRelaxation(readings, { termsPerDecade: 9 })).toThrow('termsPerDecade')
    expect(fitRelaxation(readings, { fluid: true }).series.longTermModulus.si).toBe(0)
  })
  test('activation energy and its range', () => {
    const shifts = oracle.activation.temperature.map((t, i) => ({ temperature: [t, 'K'], shift: oracle.activation.shift[i]! }) as const)
    const energy = fitActivationEnergy(shifts, '296.15 K')
    near(energy.si, oracle.activation.energy, 1e-10)
    near(energy.high - energy.si, oracle.activation.half, 1e-8)
    near(energy.si - energy.low, oracle.activation.half, 1e-8)
    expect(() => fitActivationEnergy(shifts.slice(0, 1), '296.15 K')).toThrow('two temperatures')
    expect(() => fitActivationEnergy([...shifts, { temperature: '296.15 K', shift: 1 }], '296.15 K')).toThrow('leave the reference out')
    expect(() =>
      fitActivationEnergy(
        shifts.map((s) => ({ ...s, shift: 2 })),
        '296.15 K',
      ),
    ).toThrow('fall with temperature')
  })
})
