import {
  amorphousStrengthFactor,
  deratedModulus,
  deratedStrength,
  durationFactor,
  fatigueFactor,
  moistureFactor,
  strainLimitedStress,
  tabulatedStrengthFactor,
} from '../../src/materials/index.js'
import { published } from './harness.js'

const arithmetic = (where: string) => ({ level: 'arithmetic', where }) as const

export const checks = [
  ...published(
    amorphousStrengthFactor,
    {
      what: 'halfway from 23 °C to 15 K below a glass transition of 60 °C',
      given: { temperature: '34 degC', glassTransition: '60 degC' },
      gives: { factor: 0.5, limit: '45 degC', state: 'usable' },
      within: '1e-9 %',
      source: arithmetic('midpoint of a straight line'),
    },
    {
      what: 'PLA at its ceiling',
      given: { temperature: '45.001 degC', glassTransition: '60 degC' },
      gives: { state: 'aboveLimit' },
      source: arithmetic('60 °C less 15 K'),
    },
  ),
  ...published(tabulatedStrengthFactor, {
    what: 'between 60 °C and 80 °C',
    given: { temperature: '70 degC', temperatures: ['23 degC', '60 degC', '80 degC'], shares: [1, 0.65, 0.45] },
    gives: { factor: 0.55, state: 'usable' },
    within: '1e-9 %',
    source: arithmetic('mean of two neighbouring points'),
  }),
  ...published(durationFactor, {
    what: 'geometric mean of a minute and 1000 hours',
    given: { duration: [Math.sqrt(60 * 3.6e6), 's'], kept1000Hours: 0.55, kept1Year: 0.32 },
    gives: 0.775,
    within: '1e-9 %',
    source: arithmetic('straight line in log time: half of the loss at half of the decades'),
  }),
  ...published(durationFactor, {
    what: 'warm, a thousandfold faster clock: 100 h like 1e5 h',
    given: { duration: '100 h', kept1000Hours: 0.55, kept1Year: 0.32, shift: 0.001 },
    gives: (0.32 * (3.6e8 / 31557600) ** (Math.log(0.32) / Math.log(31557600 / 60))) / (1 - (0.45 * Math.log(1000)) / Math.log(60000)),
    within: '1e-9 %',
    source: arithmetic('power of time from the share at a year, over the straight line at a thousand minutes'),
  }),
  ...published(strainLimitedStress, {
    what: 'polypropylene for a year at 1.5 %: 347 MPa times the strain',
    given: { shortTermStrength: '30 MPa', modulus: '347 MPa', strainLimit: '1.5 %', duration: '1 year' },
    gives: '5.205 MPa',
    source: {
      level: 'published',
      where: 'Crawford, Plastics Engineering, 3rd ed., design at 1.5 % with the secant modulus of 347 MN/m² after a year; product by hand',
    },
  }),
  ...published(deratedModulus, {
    what: 'product of two shares over the growth of strain',
    given: { modulus: '2 GPa', temperature: 0.5, moisture: 0.9, creepRatio: 1.5 },
    gives: '0.6 GPa',
    within: '1e-9 %',
    source: arithmetic('2 × 0.5 × 0.9 / 1.5'),
  }),
  ...published(fatigueFactor, {
    what: 'printed ASA in tension at 27 % of its strength: bars broke after 192 376 and 320 571 cycles',
    given: { cycles: Math.round(Math.sqrt(192376 * 320571)), ratioAtMillion: 0.22 },
    gives: 0.27,
    within: '10 %',
    source: {
      level: 'published',
      where:
        'fatigue of printed bars, R = 0.05, 10 Hz, quoted bar by bar in the open data set h2c-materials, 2026 (the share at a million is fitted to the whole series: this checks the line between)',
    },
  }),
  ...published(fatigueFactor, {
    what: 'a thousand cycles: half of the decades to a million',
    given: { cycles: 1000, ratioAtMillion: 0.25 },
    gives: 0.5,
    within: '1e-9 %',
    source: arithmetic('power law: square root of the share at a million'),
  }),
  ...published(moistureFactor, {
    what: 'nylon 6 halfway from 50 % humidity to soaked',
    given: { moisture: '6.1 %', conditioned: '2.8 %', saturated: '9.4 %', conditionedShare: 0.6, saturatedShare: 0.4 },
    gives: 0.5,
    within: '1e-9 %',
    source: arithmetic('mean of two neighbouring points'),
  }),
  ...published(deratedStrength, {
    what: 'product of five factors',
    given: { strength: '50 MPa', direction: 0.6, temperature: 0.5, duration: 0.4, moisture: 1, fatigue: 0.5, safetyFactor: 1.5 },
    gives: '2 MPa',
    within: '1e-9 %',
    source: arithmetic('50 × 0.6 × 0.5 × 0.4 × 0.5 / 1.5'),
  }),
]
