import {
  clampLoadOverTime,
  clampLoadPowerLaw,
  clampLoadQuasiElastic,
  clampLoadThroughHeat,
  compressionSleeve,
  embeddingLoss,
  springWasher,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import rows from '../oracles/fasteners-clamp.json' with { type: 'json' }
import heated from '../oracles/fasteners-heat.json' with { type: 'json' }
import { type Check, published, publishedValue } from './harness.js'

const series: Source = {
  level: 'referenceLibrary',
  where: 'mpmath 60-digit series of the Mittag-Leffler function (tests/oracles/fasteners-clamp.py)',
}
const volterra: Source = {
  level: 'referenceLibrary',
  where: 'product-trapezoidal Volterra solver with exact moments, numpy (tests/oracles/fasteners-clamp.py)',
}
const heat: Source = {
  level: 'referenceLibrary',
  where: 'product rule with exact moments of the power law on fine grids, numpy (tests/oracles/fasteners-heat.py)',
}
const springs: Source = { level: 'arithmetic', where: 'springs in series and side by side, by hand' }

/** Exponent, and sin(nπ)/(nπ) to four digits. */
const PURE_POWER = [
  [0.1, '0.9836'],
  [0.2, '0.9355'],
  [0.3, '0.8584'],
] as const

export const checks: Check[] = [
  ...rows.flatMap(({ c, n, r, hours, share, volterra: solved }) => {
    const what = `creep ${c} t^${n}, bolt ${r} of the parts, ${hours} h`
    return [
      ...published(clampLoadPowerLaw, {
        what,
        given: {
          clampLoad: '1000 N',
          elasticCompliance: [r, 'um/N'],
          creepingCompliance: '1 um/N',
          creepCoefficient: c,
          creepExponent: n,
          time: [hours, 'h'],
        },
        gives: { share },
        within: '0.00000001 %',
        source: series,
      }),
      publishedValue(
        'fasteners.clampLoadOverTime',
        what,
        () =>
          clampLoadOverTime({
            clampLoad: '1000 N',
            elasticCompliance: [r, 'um/N'],
            creepingLayers: [{ compliance: '1 um/N', creep: (time) => 1 + c * time.in('h') ** n }],
            times: [[hours, 'h']],
          }).clampLoads[0]!.over(1000).si,
        String(solved),
        volterra,
        '0.01 %',
      ),
    ]
  }),
  ...PURE_POWER.flatMap(([creepExponent, product]) =>
    published(clampLoadPowerLaw, {
      what: `pure power law ${creepExponent}: relaxation modulus times creep compliance`,
      given: {
        clampLoad: '1 N',
        elasticCompliance: '0 um/N',
        creepingCompliance: '1 um/N',
        creepCoefficient: 1e7,
        creepExponent,
        time: '1 h',
      },
      gives: { share: Number(product) / 1e7 },
      within: '0.006 %',
      source: { level: 'published', where: 'Ferry, Viscoelastic Properties of Polymers: E J = sin(nπ)/(nπ)' },
    }),
  ),
  ...published(clampLoadQuasiElastic, {
    what: 'modulus halved, bolt 12 % of the parts: 1.12/2.12',
    given: { clampLoad: '1000 N', elasticCompliance: '0.12 um/N', creepingCompliance: '1 um/N', creepRatio: 2 },
    gives: { clampLoad: '528.302 N', share: 0.528302 },
    source: { level: 'published', where: 'Crawford, Plastics Engineering 3rd ed., ch. 2, pseudo-elastic method; by hand' },
  }),
  ...published(clampLoadThroughHeat, {
    what: 'elastic layers: heat adds 2 µm over 2 µm/N, cooling takes it back',
    given: {
      clampLoad: '100 N',
      elasticCompliance: '0.5 um/N',
      creepingCompliance: '1.5 um/N',
      creep: () => 1,
      speedUp: () => 1,
      softening: () => 1,
      mismatchPerKelvin: '0.1 um',
      spells: [
        { duration: '1 h', temperatureChange: '20 K' },
        { duration: '1 h', temperatureChange: '-20 K' },
        { duration: '1 h', temperatureChange: '0 K' },
      ],
    },
    gives: { startLoads: ['101 N', '99 N', '100 N'], endLoads: ['101 N', '99 N', '100 N'], lowest: '99 N', state: 'clamped' },
    within: '0.000001 %',
    source: springs,
  }),
  ...published(clampLoadThroughHeat, {
    what: 'modulus halved at 20 K warmer: 2 µm/N of 100 N becomes 3.5 µm/N, and comes back',
    given: {
      clampLoad: '100 N',
      elasticCompliance: '0.5 um/N',
      creepingCompliance: '1.5 um/N',
      creep: () => 1,
      speedUp: () => 1,
      softening: (warmer) => 1 + warmer.in('K') / 20,
      mismatchPerKelvin: '0.1 um',
      spells: [
        { duration: '1 h', temperatureChange: '20 K' },
        { duration: '1 h', temperatureChange: '0 K' },
      ],
    },
    // (200 + 2)/3.5 N.
    gives: { startLoads: ['57.714 N', '100.000 N'], endLoads: ['57.714 N', '100.000 N'], lowest: '57.714 N', state: 'clamped' },
    source: springs,
  }),
  ...heated.flatMap(({ c, n, spells, starts, ends }) => {
    const at = (field: 'speed' | 'softening') => (difference: number) =>
      spells.find(({ warmer }) => Math.abs(warmer - difference) < 1e-9)?.[field] ?? 1
    const run = () =>
      clampLoadThroughHeat({
        clampLoad: '1000 N',
        elasticCompliance: '0.12 um/N',
        creepingCompliance: '1 um/N',
        creep: (time) => 1 + c * time.in('h') ** n,
        speedUp: (warmer) => at('speed')(warmer.in('K')),
        softening: (warmer) => at('softening')(warmer.in('K')),
        mismatchPerKelvin: '0.5 um',
        spells: spells.map(({ hours, warmer }) => ({ duration: [hours, 'h'], temperatureChange: [warmer, 'K'] })),
      })
    return spells.flatMap((_, i) => {
      const what = `creep ${c} t^${n}, spell ${i + 1} of ${spells.length}`
      return [
        publishedValue('fasteners.clampLoadThroughHeat', `${what}, start`, () => run().startLoads[i]!, `${starts[i]} N`, heat, '0.02 %'),
        publishedValue('fasteners.clampLoadThroughHeat', `${what}, end`, () => run().endLoads[i]!, `${ends[i]} N`, heat, '0.02 %'),
      ]
    })
  }),
  ...published(embeddingLoss, {
    given: { embedding: '11 um', boltCompliance: '0.008 um/N', memberCompliance: '0.047 um/N' },
    gives: '200 N',
    source: springs,
  }),
  ...published(springWasher, {
    given: { washerCompliance: '2 um/N', flatForce: '300 N', clampLoad: '200 N', boltCompliance: '0.01 um/N' },
    gives: { elasticCompliance: '2.01 um/N', state: 'springs' },
    source: springs,
  }),
  ...published(
    compressionSleeve,
    {
      what: 'flush: load shared by stiffness, 1 to 9',
      given: { clampLoad: '1000 N', sleeveCompliance: '0.01 um/N', printCompliance: '0.09 um/N', shortfall: '0 um' },
      gives: { sleeveLoad: '900 N', printLoad: '100 N' },
      within: '0.0001 %',
      source: springs,
    },
    {
      what: 'short by 100 µm where the print gives 90 µm',
      given: { clampLoad: '1000 N', sleeveCompliance: '0.01 um/N', printCompliance: '0.09 um/N', shortfall: '100 um' },
      gives: { sleeveLoad: '0 N', printLoad: '1000 N', state: 'sleeveTooShort' },
      within: '0.0001 N',
      source: springs,
    },
  ),
  ...published(
    clampLoadOverTime,
    {
      what: 'layers that do not creep: embedding takes 20 µm over 2 µm/N, a turn of the wrench brings it back',
      given: {
        clampLoad: '100 N',
        elasticCompliance: '0.5 um/N',
        creepingLayers: [{ compliance: '1.5 um/N', creep: () => 1 }],
        embedding: '20 um',
        retightenings: ['1 h'],
        times: ['0 h', '0.5 h', '1 h', '9 h'],
      },
      gives: { clampLoads: ['90 N', '90 N', '100 N', '100 N'], lowest: '90 N', state: 'clamped' },
      within: '0.000001 N',
      source: springs,
    },
    {
      what: 'two layers, one of which creeps to twice its compliance at once: 100 N × (0.5 + 1 + 0.5)/(0.5 + 2 + 0.5)',
      given: {
        clampLoad: '100 N',
        elasticCompliance: '0.5 um/N',
        creepingLayers: [
          { compliance: '1 um/N', creep: (time) => 2 - Math.exp(-time.in('s')) },
          { compliance: '0.5 um/N', creep: () => 1 },
        ],
        times: ['1 h'],
      },
      gives: { clampLoads: ['66.667 N'] },
      within: '0.01 N',
      source: springs,
    },
    {
      what: 'embedding of 300 µm opens it',
      given: {
        clampLoad: '100 N',
        elasticCompliance: '0.5 um/N',
        creepingLayers: [{ compliance: '1.5 um/N', creep: () => 1 }],
        embedding: '300 um',
        times: ['1 h'],
      },
      gives: { clampLoads: ['0.000 N'], lowest: '0.000 N', state: 'opens' },
      source: springs,
    },
  ),
]
