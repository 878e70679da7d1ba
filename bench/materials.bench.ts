import {
  allowableStress,
  asa,
  designModulus,
  findleyLaw,
  pa6,
  relaxationCurve,
  strengthNumbers,
  strengthSi,
} from '../src/materials/index.js'
import type { Row } from './harness.js'

const conditions = { direction: 'acrossLayers', duration: '1000 h', moisture: 'conditioned', safetyFactor: 1.5 } as const
const temperatures = Array.from({ length: 64 }, (_, i) => 290 + i)
const prepared = strengthNumbers(asa, 'acrossLayers', 'conditioned')
const law = findleyLaw({ modulus: '2.3 GPa', creepCoefficient: 0.09, creepExponent: 0.155 })

export const rows: Row[] = [
  {
    work: 'allowable stress from prepared numbers (five factors)',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++) sum += strengthSi(prepared, temperatures[i & 63]!, 3.6e6, 1e5, 1.5)
        return sum
      },
    },
    bound: { atMostSeconds: 1e-6 },
  },
  {
    work: 'allowable stress with its range, chain and sources',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++) sum += allowableStress(asa, { ...conditions, temperature: [temperatures[i & 63]!, 'K'] }).stress.si
        return sum
      },
    },
  },
  {
    work: 'creep modulus with its range, chain and sources',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++)
          sum += designModulus(pa6, {
            direction: 'alongLayers',
            temperature: [temperatures[i & 63]!, 'K'],
            duration: '1 year',
            moisture: 'dry',
          }).modulus.si
        return sum
      },
    },
  },
  {
    work: 'relaxation curve of a creep law over a year (superposition integral, 240 times)',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++) sum += relaxationCurve(law, '1 year').si(1e6)
        return sum
      },
    },
    bound: { atMostSeconds: 0.02 },
  },
]
