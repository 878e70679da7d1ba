import { clampLoadOverTime, hexNut, metricThread } from '../src/fasteners/index.js'
import type { Row } from './harness.js'

const creep = (seconds: number) => 1 + 0.1 * (seconds / 3600) ** 0.25
const joint = {
  clampLoad: 1500,
  elasticCompliance: 8e-9,
  creepingLayers: [{ compliance: 6e-8, creep }],
  embedding: 5e-6,
  retightenings: [259200],
  times: Array.from({ length: 100 }, (_, i) => 60 * 1.14 ** i),
}
const SIZES = ['M3', 'M4', 'M5', 'M6'] as const

export const rows: Row[] = [
  {
    work: 'clamp load of a creeping joint at 100 times, one retightening',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++) sum += clampLoadOverTime.si(joint).lowest
        return sum
      },
    },
    bound: { atMostSeconds: 5e-3 },
  },
  {
    work: 'thread and nut looked up',
    ours: {
      name: 'limbwright',
      run: (times) => {
        let sum = 0
        for (let i = 0; i < times; i++) sum += metricThread.si(SIZES[i & 3]!).stressArea + hexNut.si(SIZES[i & 3]!).height
        return sum
      },
    },
  },
]
