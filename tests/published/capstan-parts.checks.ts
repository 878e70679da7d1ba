import {
  beltTeethInMesh,
  creepDrift,
  logarithmicPretensionLeft,
  residualWrap,
  singleTrackTravel,
  takeUp,
  wireRopeBendEfficiency,
} from '../../src/capstan/index.js'
import type { Source } from '../../src/formula/index.js'
import oracle from '../oracles/capstan-parts.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/capstan-parts.py` })
const rigging: Source = {
  level: 'published',
  where: 'Rigging Institute, Slings and D/d ratio (2011): strength efficiencies of wire rope slings',
}

export const checks: Check[] = [
  ...published(
    beltTeethInMesh,
    {
      what: '20 and 60 teeth of 3 mm at 400 mm',
      given: { smallTeeth: 20, largeTeeth: 60, pitch: '3 mm', centreDistance: '400 mm' },
      gives: { exact: printed(oracle.mesh, '1') },
      source: by('pitches between the touching points of the spans'),
    },
    {
      what: 'equal pulleys',
      given: { smallTeeth: 18, largeTeeth: 18, pitch: '5 mm', centreDistance: '200 mm' },
      gives: { exact: printed(oracle.meshEqual, '1') },
      source: by('pitches between the touching points of the spans'),
    },
  ),
  ...published(residualWrap, {
    given: { drumWrap: '200 deg', travel: '110 deg' },
    gives: printed(oracle.residual, 'deg'),
    source: by('anchors as points of the drum over the travel'),
  }),
  ...published(singleTrackTravel, {
    given: { drumWrapAngle: '300 deg', anchorGap: '20 deg', residualWrap: '15 deg' },
    gives: printed(oracle.track, 'deg'),
    source: by('drum turned until an anchor is at its residual wrap'),
  }),
  ...published(logarithmicPretensionLeft, {
    what: 'three decades',
    given: { pretension: '100 N', axialRigidity: '30 kN', perDecade: 2e-4, from: '1 s', to: '1000 s' },
    gives: { share: printed(oracle.relaxed, '1') },
    source: by('integral equation of the stress history'),
  }),
  ...published(takeUp, {
    what: 'a cord of 800 mm that has bedded, crept and cooled',
    given: {
      workingLength: '800 mm',
      pretension: '140 N',
      axialRigidity: '35 kN',
      beddingStrain: 2e-3,
      creepStrain: 5e-4,
      slack: '0.3 mm',
      temperatureRise: '-20 K',
      frameExpansion: '90 ppm/K',
      cordExpansion: '-5 ppm/K',
    },
    gives: {
      total: printed(oracle.takeUp, 'mm'),
      elastic: printed(oracle.elastic, 'mm'),
      bedding: printed(oracle.bedding, 'mm'),
      creep: printed(oracle.creep, 'mm'),
    },
    source: by('place of the anchor at which the cord has its pretension, by root finding'),
  }),
  ...published(creepDrift, {
    given: { ratio: 6, stroke: '1.2 rad', tensionDifference: '50 N', axialRigidity: '2 MN' },
    gives: [Number(oracle.drift) * 1e-3, 'mrad'],
    source: by('unstretched cord that passes the pinion, step by step'),
    within: '0.00005 mrad',
  }),
  ...published(
    wireRopeBendEfficiency,
    ...(
      [
        [1, '50 %'],
        [2, '65 %'],
        [4, '75 %'],
        [6, '80 %'],
      ] as const
    ).map(([bendRatio, gives]) => ({ what: `D/d ${bendRatio}`, given: { bendRatio }, gives, source: rigging })),
  ),
]
