import { additiveSwelling, fibreExpansion, fibreVolumeShare, halpinTsai, ruleOfMixtures } from '../../src/materials/index.js'
import oracle from '../oracles/materials-mixture.json' with { type: 'json' }
import { published } from './harness.js'

const byHand = (where: string) => ({ level: 'arithmetic', where }) as const
const read = (where: string) => ({ level: 'published', where }) as const
const by = (model: string) => ({ level: 'computed', where: `${model}: tests/oracles/materials-mixture.py` }) as const

export const checks = [
  ...published(fibreVolumeShare, {
    what: 'three parts by mass of a fibre twice as dense in seven of polymer',
    given: { massShare: 0.3, fibreDensity: '2000 kg/m^3', matrixDensity: '1000 kg/m^3' },
    gives: 0.15 / 0.85,
    within: '1e-9 %',
    source: byHand('0.15 of 0.15 + 0.7'),
  }),
  ...published(
    ruleOfMixtures,
    {
      what: 'epoxy of 3.0 GPa with 60 % of glass of 70 GPa, along the fibres',
      given: { share: 0.6, fillerRatio: 70 / 3 },
      gives: 43.2 / 3,
      within: '0.01 %',
      source: read('worked example 14.5-1 of a course on engineering materials (43.2 GPa)'),
    },
    {
      what: 'specific heat of PET with 30 % of glass',
      given: { share: 0.3, fillerRatio: 840 / 1140 },
      gives: 1020 / 1140,
      within: '4 %',
      source: read('MakeItFrom, page 30 % Glass Fiber PET (1020 J/(kg K)); PET 1140 in open material cards of FreeCAD'),
    },
  ),
  ...published(
    halpinTsai,
    {
      what: 'stiffness across fibres, 30 % of 74 GPa in 3.35 GPa',
      given: { volumeShare: 0.3, fillerRatio: 74 / 3.35, shape: 2 },
      gives: 6.93 / 3.35,
      within: '0.01 %',
      source: read('test of the open library feat after doi 10.1080/15376494.2014.938792, p. 11 (6.930 GPa)'),
    },
    {
      what: 'the same with the shape number 1',
      given: { volumeShare: 0.3, fillerRatio: 74 / 3.35, shape: 1 },
      gives: 5.879 / 3.35,
      within: '0.01 %',
      source: read('test of the open library feat after doi 10.1080/15376494.2014.938792, p. 11 (5.879 GPa)'),
    },
    {
      what: 'a tenth of round voids',
      given: { volumeShare: 0.1, fillerRatio: 0, shape: 2 },
      gives: 0.9 / 1.05,
      within: '1e-9 %',
      source: byHand('Maxwell’s result for spheres that do not conduct, (1 - φ)/(1 + φ/2)'),
    },
    {
      what: 'upright ABS with glass fibre: 1.95 GPa without, 5.3 % by volume',
      given: { volumeShare: 0.0535, fillerRatio: 72.4 / 1.95, shape: 2 },
      gives: 2.25 / 1.95,
      within: '3 %',
      source: read('a maker’s printed upright bars of ABS-GF, open data set MonkeyTDS, 2026 (2.25 GPa)'),
    },
  ),
  ...published(
    fibreExpansion,
    {
      what: 'epoxy with 60 % of E-glass, along the fibres',
      given: { volumeShare: 0.6, fibreExpansion: '5 ppm/K', matrixExpansion: '57.5 ppm/K', matrixModulus: '3.5 GPa', modulus: '44 GPa' },
      gives: '6.6 ppm/K',
      within: '2 %',
      source: read(
        'Callister, table B.6 (6.6 ppm/K); constituents: Michigan Technological University, table of selected fibres and matrices',
      ),
    },
    {
      what: 'moulded PA66 with 33 % of glass by mass and 9.0 GPa',
      given: { volumeShare: 0.181, fibreExpansion: '5 ppm/K', matrixExpansion: '90 ppm/K', matrixModulus: '3 GPa', modulus: '9 GPa' },
      gives: '30 ppm/K',
      within: '10 %',
      source: read('Crawford, Plastics Engineering, 3rd ed., table 1.8 (90 and 30 ppm/K); modulus of a data sheet of glass-filled PA66'),
    },
  ),
  ...published(additiveSwelling, {
    what: 'a polymer as dense as water',
    given: { density: '1000 kg/m^3' },
    gives: 1 / 3,
    within: '1e-9 %',
    source: byHand('a third of the added volume'),
  }),
  ...published(
    fibreVolumeShare,
    {
      what: '15 % of carbon fibre in PET',
      given: { massShare: 0.15, fibreDensity: '1760 kg/m^3', matrixDensity: '1340 kg/m^3' },
      gives: [oracle.carbonInPet, '1'] as never,
      within: 'digits',
      source: by('share whose fibres weigh that much, by bisection'),
    },
    {
      what: '30 % of glass in PA6',
      given: { massShare: 0.3, fibreDensity: '2540 kg/m^3', matrixDensity: '1140 kg/m^3' },
      gives: [oracle.glassInNylon, '1'] as never,
      within: 'digits',
      source: by('share whose fibres weigh that much, by bisection'),
    },
  ),
  ...published(
    additiveSwelling,
    {
      what: 'PA6 of 1140 kg/m³',
      given: { density: '1140 kg/m^3' },
      gives: [oracle.swellingOfNylon, '1'] as never,
      within: 'digits',
      source: by('edge of a cube that takes up little water'),
    },
    {
      what: 'ASA of 1070 kg/m³',
      given: { density: '1070 kg/m^3' },
      gives: [oracle.swellingOfStyrenic, '1'] as never,
      within: 'digits',
      source: by('edge of a cube that takes up little water'),
    },
  ),
]
