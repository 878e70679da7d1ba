import { allowableStress, designModulus, materialByName } from '../../src/materials/index.js'
import { experiment } from './experiment.js'

const SHEETS = 'makers’ sheets of printed bars, open data set MonkeyTDS (github.com/Monkey-Machina, 2026)'
const IN_WATER = 'upright bars to ISO 527, annealed and then 48 h in water at 60 °C'
/** Along the layers the wet share set the range; across the layers it did not. */
const ALONG_ONLY = 'the water shares of the table come from bars along the layers; these are across them'

/** Upright and wet: strength and modulus with standard deviation, MPa. */
const CASES = [
  {
    name: 'PA-CF',
    what: 'PA6 with 20 % carbon fibre',
    state: 'saturated',
    how: `${IN_WATER} (5.3 %)`,
    strength: [25.5, 1.2],
    modulus: [1056, 128],
    source: SHEETS,
  },
  {
    name: 'PA-CF',
    what: 'PA12 with 10 % carbon fibre',
    state: 'saturated',
    how: `${IN_WATER} (2.9 %)`,
    strength: [42.1, 1.8],
    modulus: [1622, 72],
    source: SHEETS,
  },
  {
    name: 'PA6-GF',
    what: 'PA6 with 25 % glass fibre',
    state: 'saturated',
    how: `${IN_WATER} (4.6 %)`,
    strength: [26.3, 1.5],
    modulus: [1165, 118],
    source: SHEETS,
  },
  {
    name: 'PA6',
    what: 'copolyamide',
    state: 'saturated',
    how: 'upright bars to ISO 527, "wet", water not stated',
    strength: [13.7, 1.2],
    modulus: [660, 29],
    source: SHEETS,
  },
] as const

const OUTSIDE: Readonly<Record<string, string>> = {
  'strength PA12 with 10 % carbon fibre':
    'the entry PA-CF stands for PA6 and PA12 together; PA12 hardly loses strength in water, so that the error is on the safe side',
}

const SCATTER = 'one standard deviation; number of bars not stated'

export const experiments = CASES.flatMap(({ name, what, state, how, strength, modulus, source }) => {
  const scatter = SCATTER
  const rest = { subject: 'print', conditions: `${what}; ${how}`, source, judges: 'model', changed: ALONG_ONLY } as const
  const beyond = (quantity: string) => {
    const reason = OUTSIDE[`${quantity} ${what}`]
    return reason === undefined ? {} : { outside: reason }
  }
  return [
    experiment({
      ...rest,
      what: `${what}, wet and upright: strength`,
      kind: 'stress',
      measured: {
        value: [strength[0], 'MPa'],
        low: [strength[0] - strength[1], 'MPa'],
        high: [strength[0] + strength[1], 'MPa'],
        scatter,
      },
      ...beyond('strength'),
      predict: () => {
        const { rupture } = allowableStress(materialByName(name), {
          direction: 'acrossLayers',
          temperature: '23 degC',
          duration: '1 min',
          moisture: state,
          safetyFactor: 1,
        })
        return { low: rupture.low, typical: rupture.si, high: rupture.high }
      },
    }),
    experiment({
      ...rest,
      what: `${what}, wet and upright: modulus`,
      kind: 'modulus',
      measured: { value: [modulus[0], 'MPa'], low: [modulus[0] - modulus[1], 'MPa'], high: [modulus[0] + modulus[1], 'MPa'], scatter },
      ...beyond('modulus'),
      predict: () => {
        const found = designModulus(materialByName(name), {
          direction: 'acrossLayers',
          temperature: '23 degC',
          duration: '1 min',
          moisture: state,
        })
        return { low: found.modulus.low, typical: found.modulus.si, high: found.modulus.high }
      },
    }),
  ]
})
