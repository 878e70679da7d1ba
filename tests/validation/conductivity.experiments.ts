import { fibreVolumeShare, halpinTsai, materialByName } from '../../src/materials/index.js'
import { experiment, rangeOf } from './experiment.js'

const SOURCE = 'Baraboi, Sova & Nastase 2026, Materials 19:2793, abstract'
const PLATE = 'guarded hot plate, heat through the layers of a printed plate'
const SCATTER = 'uncertainty that the source states; number of plates not in what was read'

/** PET and carbon fibre as the table of filled prints takes them: kg/m³, W/(m K). */
const PET = { density: 1340, along: 0.19, across: 0.1425, least: 0.08, most: 0.2 }
const FIBRE = { density: 1760, conductivity: 10.5 }
const FIBRE_SHARE = 0.15

/** Fibres that lie flat, at 15 % of the mass: a laminate of round fibres; the high end with more that stand up. */
function flatFibres() {
  const volumeShare = fibreVolumeShare.si({ massShare: FIBRE_SHARE, fibreDensity: FIBRE.density, matrixDensity: PET.density })
  const gain = (shape: number) => halpinTsai.si({ volumeShare, fillerRatio: FIBRE.conductivity / PET.along, shape })
  return { low: PET.least, typical: PET.across * gain(1), high: PET.most * gain(2) }
}

export const experiments = [
  experiment({
    subject: 'print',
    what: 'PLA: conductivity through a printed plate',
    kind: 'thermalConductivity',
    conditions: PLATE,
    measured: { value: '0.267 W/(m K)', low: '0.256 W/(m K)', high: '0.278 W/(m K)', scatter: SCATTER },
    source: SOURCE,
    judges: 'property',
    predict: () => rangeOf(materialByName('PLA').thermalConductivityAcrossLayers as never),
    changed: 'the high end of the range is that of this experiment',
  }),
  experiment({
    subject: 'print',
    what: 'PET with carbon fibre: conductivity through a printed plate, from fibre and polymer',
    kind: 'thermalConductivity',
    conditions: `${PLATE}; share of fibre not stated, taken as 15 % by mass`,
    measured: { value: '0.533 W/(m K)', low: '0.512 W/(m K)', high: '0.554 W/(m K)', scatter: SCATTER },
    source: SOURCE,
    judges: 'model',
    predict: flatFibres,
    outside:
      'fibres that stand up between the layers conduct more than flat ones: the error is on the safe side, since heat leaves a motor better',
    changed: 'the table has this value for PET-CF instead of the calculated one',
  }),
]
