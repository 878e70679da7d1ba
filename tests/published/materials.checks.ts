import {
  amorphousStrengthFactor,
  deratedStrength,
  durationFactor,
  fatigueFactor,
  moistureFactor,
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
