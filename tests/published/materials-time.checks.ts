import {
  ageingShift,
  arrheniusShift,
  boltzmannStrain,
  complianceLaw,
  creepModulus,
  creepUnderSteps,
  effectiveTimeUnderAgeing,
  equivalentTime,
  equivalentTimeOfHistory,
  findleyRelaxationModulus,
  findleySinhStrain,
  findleyStrain,
  findleyTimeToStrain,
  nortonBaileyStrain,
  powerLawRelaxationModulus,
  pronyCreepCompliance,
  pronyRelaxationModulus,
  standardSolidRetardationTime,
  timeTemperatureShift,
  wlfShift,
} from '../../src/materials/index.js'
import laws from '../oracles/materials-laws.json' with { type: 'json' }
import outside from '../oracles/materials-outside.json' with { type: 'json' }
import viscoelastic from '../oracles/materials-viscoelastic.json' with { type: 'json' }
import { published, publishedValue } from './harness.js'

const CRAWFORD_MAXWELL = {
  level: 'published',
  where: 'Crawford, Plastics Engineering, 3rd ed., pp. 86-100 (Maxwell element of 20 GPa and 1000 GPa s)',
} as const
const CRAWFORD_BEAM = {
  level: 'published',
  where: 'Crawford, Plastics Engineering, 3rd ed., p. 56 (polypropylene beam, 1-year secant modulus 347 MPa at 1.5 % strain)',
} as const
const mpmath = (how: string) =>
  ({ level: 'referenceLibrary', where: `mpmath, 40 digits: ${how} (tests/oracles/materials-laws.py)` }) as const
const EXACT = '1e-9 %'

const maxwell = complianceLaw({ instantCompliance: [1 / 20, '1/GPa'], terms: [], viscosity: [1e12, 'Pa s'] })
const ramped = (rate: number, until: number, at: number) =>
  boltzmannStrain(
    maxwell,
    [
      { time: '0 s', stress: '0 MPa' },
      { time: [until, 's'], stress: [rate * until, 'MPa'] },
    ],
    [[at, 's']],
  )[0] as never

const loads = {
  stresses: ['5 MPa', '10 MPa', '7 MPa'],
  durations: ['100 h', '50 h', '200 h'],
  referenceStrain: '0.1 %',
  referenceStress: '10 MPa',
  stressExponent: 1.5,
  timeExponent: 0.3,
} as const

const [solid] = viscoelastic.prony
const solidTerm = (solid as (typeof viscoelastic.prony)[number]).terms[0] as { modulus: number; time: number }
const solidKelvin = (solid as (typeof viscoelastic.prony)[number]).compliance.terms[0] as { compliance: number; time: number }

export const checks = [
  publishedValue(
    'materials.boltzmannStrain',
    'slow ramp of 0.1 MPa/s for 100 s',
    () => ramped(0.1, 100, 100),
    '0.1 %',
    CRAWFORD_MAXWELL,
    '1e-6',
  ),
  publishedValue('materials.boltzmannStrain', 'fast ramp of 10 MPa/s for 1 s', () => ramped(10, 1, 1), '0.0505 %', CRAWFORD_MAXWELL),
  publishedValue('materials.boltzmannStrain', 'fast ramp, then held to 100 s', () => ramped(10, 1, 100), '0.1495 %', CRAWFORD_MAXWELL),
  ...published(pronyCreepCompliance, {
    what: 'Maxwell element 100 s after a step: 0.15 % at 10 MPa',
    given: { instantCompliance: [1 / 20, '1/GPa'], terms: [], viscosity: [1e12, 'Pa s'], time: '100 s' },
    gives: '0.15 1/GPa',
    within: EXACT,
    source: CRAWFORD_MAXWELL,
  }),
  publishedValue(
    'materials.creepModulus',
    'load of the beam, 48 E I y/L³ with I = 28 mm⁴, y = 5 mm, L = 100 mm, from its secant (5.205 MPa at 1.5 %)',
    () => (48 * creepModulus({ stress: '5.205 MPa', strain: '1.5 %' }).in('MPa') * 28 * 5) / 100 ** 3,
    2.33,
    CRAWFORD_BEAM,
  ),
  publishedValue(
    'materials.wlfShift',
    'universal constants, 10 K above the glass transition: log of the shift',
    () => Math.log10(wlfShift({ temperature: '70 degC', reference: '60 degC' }).si),
    '-2.831',
    { level: 'arithmetic', where: 'Williams-Landel-Ferry equation by hand: -17.44 × 10 / 61.6' },
  ),
  publishedValue(
    'materials.wlfShift',
    'far above, the shift tends to ten to the minus C1: at 1e6 K it is 17.439',
    () => -Math.log10(wlfShift.si({ temperature: 333.15 + 1e6, reference: 333.15, c1: 17.44, c2: 51.6 })),
    '17.4391',
    { level: 'arithmetic', where: '17.44 × 1e6 / (1e6 + 51.6)' },
  ),
  ...published(
    arrheniusShift,
    {
      what: 'a rate that doubles from 25 to 35 °C has 52.9 kJ/mol',
      given: { temperature: '35 degC', reference: '25 degC', activationEnergy: '52.9 kJ/mol' },
      gives: 0.5,
      within: '0.001',
      source: { level: 'unverified', where: 'Atkins, Physical Chemistry (doubling per 10 K near room temperature: about 53 kJ/mol)' },
    },
    {
      what: '45 °C against 23 °C at 150 kJ/mol',
      given: { temperature: '318.15 K', reference: '296.15 K', activationEnergy: '150 kJ/mol' },
      gives: laws.arrhenius,
      within: EXACT,
      source: mpmath('exponential of the difference of reciprocals'),
    },
  ),
  ...published(timeTemperatureShift, {
    what: '25 °C to 70 °C across a glass transition of 60 °C',
    given: { temperature: '343.15 K', reference: '298.15 K', glassTransition: '333.15 K', activationEnergy: '150 kJ/mol' },
    gives: { shift: laws.across, law: 'wlf' },
    within: EXACT,
    source: mpmath('Arrhenius up to the glass transition times Williams-Landel-Ferry above it'),
  }),
  publishedValue(
    'materials.equivalentTime',
    'an hour 10 K above the glass transition, in hours at it',
    () => equivalentTime({ time: '1 h', shift: wlfShift({ temperature: '70 degC', reference: '60 degC' }) }).in('h'),
    String(10 ** -laws.wlfLogAt10),
    mpmath('ten to the power of the Williams-Landel-Ferry sum'),
    EXACT,
  ),
  ...published(equivalentTimeOfHistory, {
    what: 'an hour at 23 °C, two at 40 °C, half an hour at 45 °C, 120 kJ/mol',
    given: {
      durations: ['3600 s', '7200 s', '1800 s'],
      temperatures: ['296.15 K', '313.15 K', '318.15 K'],
      reference: '296.15 K',
      activationEnergy: '120 kJ/mol',
    },
    gives: { time: [laws.history.time, 's'], hottestShare: laws.history.hottestShare },
    within: EXACT,
    source: mpmath('quadrature of the rate of reduced time'),
  }),
  ...published(ageingShift, {
    what: '24 h against 1000 h of age, shift rate 0.85',
    given: { age: '1000 h', referenceAge: '24 h', shiftRate: 0.85 },
    gives: laws.ageingShift,
    within: EXACT,
    source: mpmath('exponential of the logarithm'),
  }),
  ...published(
    effectiveTimeUnderAgeing,
    ...laws.ageing.map(({ time, age, rate, effective }) => ({
      what: `shift rate ${rate}`,
      given: { time: [time, 's'], age: [age, 's'], shiftRate: rate } as const,
      gives: [effective, 's'] as const,
      within: EXACT,
      source: mpmath('quadrature of (age/(age + s))^rate, the definition of effective time'),
    })),
  ),
  ...published(findleyStrain, {
    what: '10 MPa, 2.4 GPa, 1000 h',
    given: { stress: '10 MPa', modulus: '2400 MPa', creepCoefficient: 0.09, creepExponent: 0.27, time: '1000 h' },
    gives: [laws.findleyStrain, '1'],
    within: EXACT,
    source: mpmath('the law written with exponential and logarithm'),
  }),
  ...published(findleySinhStrain, {
    what: '12 MPa, 100 h',
    given: {
      stress: '12 MPa',
      elasticStrain: '1 %',
      elasticStress: '20 MPa',
      creepStrain: '0.1 %',
      creepStress: '15 MPa',
      creepExponent: 0.2,
      time: '100 h',
    },
    gives: [laws.findleySinh, '1'],
    within: EXACT,
    source: mpmath('the law written with exponential and logarithm'),
  }),
  ...published(findleyTimeToStrain, {
    what: '1 % at 10 MPa',
    given: { strain: '1 %', stress: '10 MPa', modulus: '2400 MPa', creepCoefficient: 0.3, creepExponent: 0.25 },
    gives: { time: [laws.timeToStrainHours, 'h'], state: 'byCreep' },
    within: EXACT,
    source: mpmath('exponential of the logarithm'),
  }),
  ...published(nortonBaileyStrain, {
    what: '7 MPa for 500 h from 0.1 % at 10 MPa and 1 h',
    given: {
      stress: '7 MPa',
      time: '500 h',
      referenceStrain: '0.1 %',
      referenceStress: '10 MPa',
      stressExponent: 1.5,
      timeExponent: 0.3,
    },
    gives: [laws.nortonBailey, '1'],
    within: EXACT,
    source: mpmath('exponential of the logarithms'),
  }),
  ...published(
    creepUnderSteps,
    ...laws.steps.map(({ rule, afterEach }) => ({
      what: rule,
      given: { ...loads, rule: rule as 'strainHardening' },
      gives: { strain: [afterEach[2] as number, '1'] as const, afterEach: afterEach.map((e) => [e, '1'] as const) },
      within: '1e-7 %',
      source: {
        level: 'referenceLibrary',
        where: 'scipy solve_ivp (DOP853) and mpmath quadrature of the strain rate of either rule (tests/oracles/materials-laws.py)',
      } as const,
    })),
  ),
  ...published(
    powerLawRelaxationModulus,
    ...laws.powerLaw.map(({ n, factor }) => ({
      what: `n = ${n}`,
      given: { compliance: '1 1/GPa', creepExponent: n } as const,
      gives: [factor, 'GPa'] as const,
      within: EXACT,
      source: mpmath('quadrature of the convolution identity ∫ J(t - s) E(s) ds = t'),
    })),
  ),
  ...published(
    findleyRelaxationModulus,
    ...laws.findleyHalf.map(({ c, t, kept }) => ({
      what: `square root of time, c = ${c}, ${t} h: exp(z²) erfc(z)`,
      given: { modulus: '1 GPa', creepCoefficient: c, creepExponent: 0.5, time: [t, 'h'] } as const,
      gives: [kept, 'GPa'] as const,
      within: EXACT,
      source: mpmath('Mittag-Leffler function of order one half'),
    })),
    ...viscoelastic.findley.map(({ c, n, t, kept }) => ({
      what: `c = ${c}, n = ${n}, ${t} h`,
      given: { modulus: '1 GPa', creepCoefficient: c, creepExponent: n, time: [t, 'h'] } as const,
      gives: [kept, 'GPa'] as const,
      within: EXACT,
      source: mpmath('numerical inversion of the Laplace transform, Talbot contour'),
    })),
  ),
  ...published(standardSolidRetardationTime, {
    what: 'root of the transformed modulus',
    given: {
      relaxationTime: [solidTerm.time, 's'],
      instantModulus: [1 + solidTerm.modulus, 'GPa'],
      longTermModulus: '1 GPa',
    },
    gives: [solidKelvin.time, 's'],
    within: EXACT,
    source: mpmath('polyroots'),
  }),
  ...published(
    pronyRelaxationModulus,
    ...(outside.ladder as [number, number][]).map(([seconds, modulus]) => ({
      what: `Maxwell ladder of three elements held for ${seconds} s: differential equations integrated`,
      given: {
        longTermModulus: '1 GPa',
        terms: [
          { modulus: '0.5 GPa', time: '2 s' },
          { modulus: '0.3 GPa', time: '40 s' },
          { modulus: '0.2 GPa', time: '900 s' },
        ],
        time: [seconds, 's'],
      } as const,
      gives: [modulus, 'GPa'] as const,
      within: '1e-7 %',
      source: {
        level: 'referenceLibrary',
        where: 'scipy solve_ivp (Radau) of s˙ = -s/τ for each element (tests/oracles/materials-outside.py)',
      } as const,
    })),
    {
      what: 'Maxwell element after one relaxation time: 36.8 % of the stress is left',
      given: { longTermModulus: '0 GPa', terms: [{ modulus: '20 GPa', time: '50 s' }], time: '50 s' },
      gives: '7.358 GPa',
      source: { level: 'arithmetic', where: '20 GPa / e = 7.3576 GPa; relaxation time η/E = 1000/20 s of the Maxwell element' },
    },
    {
      what: 'two terms, 1.2 + 0.5 e^-1 + 0.3 e^-0.1',
      given: {
        longTermModulus: '1.2 GPa',
        terms: [
          { modulus: '0.5 GPa', time: '10 s' },
          { modulus: '0.3 GPa', time: '100 s' },
        ],
        time: '10 s',
      },
      gives: '1.655391 GPa',
      source: { level: 'arithmetic', where: '0.5 × 0.36787944 + 0.3 × 0.90483742 + 1.2, tabulated exponentials' },
    },
  ),
]
