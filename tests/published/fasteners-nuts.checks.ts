import {
  headBearing,
  looseNutPressure,
  nutBearingArea,
  nutInPocket,
  nutPocketWall,
  nutPullThrough,
  pocketRoof,
  washerSpread,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import rows from '../oracles/fasteners-nut.json' with { type: 'json' }
import { type Check, published } from './harness.js'

const outline: Source = {
  level: 'referenceLibrary',
  where:
    'outline of the turned nut against the wall, virtual work with numerical derivatives, numpy and scipy (tests/oracles/fasteners-nut.py)',
}
const unverified = (where: string): Source => ({ level: 'unverified', where })
const hand = (where: string): Source => ({ level: 'arithmetic', where })
const nut = { acrossFlats: '7 mm', height: '3 mm', flats: 6, compressiveStrength: '60 MPa' } as const

export const checks: Check[] = [
  ...rows.flatMap(({ clearance, rounding, torque, bed, peak, turn }) => [
    ...published(nutInPocket, {
      what: `${clearance} mm of clearance on a 7 mm nut`,
      given: { ...nut, torque: [torque, 'N m'], clearance: [clearance, 'mm'] },
      gives: { roundingTorque: `${rounding} N m` as never },
      // The brute force has 200 001 points along a wall.
      within: '0.02 %',
      source: outline,
    }),
    ...published(looseNutPressure, {
      what: `${clearance} mm of clearance, ${torque} N m, bed of ${bed} N/mm³`,
      given: { ...nut, torque: [torque, 'N m'], clearance: [clearance, 'mm'], wallModulus: [bed * 4, 'MPa'], wallDepth: '4 mm' },
      gives: { cornerPressure: `${peak} MPa` as never, turn: `${turn} deg` as never },
      within: '0.02 %',
      source: outline,
    }),
  ]),
  ...published(nutInPocket, {
    what: 'as wide as its corners: 7 mm × (2/√3 − 1) = 1.0829 mm',
    given: { ...nut, torque: '0.1 N m', clearance: '1.083 mm' },
    gives: { state: 'spinsFree' },
    source: { level: 'arithmetic', where: 'width across corners of a hexagon' },
  }),
  ...published(headBearing, {
    what: 'M4 washer on a medium hole',
    given: { force: '477 N', bearingDiameter: '9 mm', holeDiameter: '4.5 mm', allowablePressure: '20 MPa' },
    gives: { area: '47.7129 mm^2', pressure: '9.9973 MPa', reserve: '2.0005 1', allowableForce: '954.26 N' },
    source: hand('ring area, by hand'),
  }),
  ...published(washerSpread, {
    what: '0.8 mm washer under 6.53 mm',
    given: { headBearing: '6.53 mm', thickness: '0.8 mm', outerDiameter: '9 mm' },
    gives: '8.13 mm',
    within: '1e-6 mm',
    source: { level: 'commonPractice', where: '45 degree spread through a washer' },
  }),
  ...published(
    nutBearingArea,
    {
      what: 'M4',
      given: { acrossFlats: '7 mm', bearingDiameter: '5.9 mm', holeDiameter: '4.5 mm' },
      gives: { ringArea: '11.4 mm^2', hexagonArea: '26.5 mm^2' },
      source: hand('ring and hexagon less the hole, by hand'),
    },
    {
      what: 'M6',
      given: { acrossFlats: '10 mm', bearingDiameter: '8.9 mm', holeDiameter: '6.6 mm' },
      gives: { ringArea: '28.0 mm^2', hexagonArea: '52.4 mm^2' },
      source: hand('ring and hexagon less the hole, by hand'),
    },
  ),
  ...published(
    nutInPocket,
    {
      what: 'six flats: 6T/(s² m) and 4T/(s² m)',
      given: { torque: '0.8 N m', acrossFlats: '7 mm', height: '3 mm', flats: 6, clearance: '0 mm', compressiveStrength: '60 MPa' },
      gives: { cornerPressure: '32.653 MPa', plasticPressure: '21.769 MPa', state: 'held' },
      source: hand('moment of triangular and of uniform pressure on half of each flat, by hand'),
    },
    {
      what: 'six flats: σ s² m/6, force 3T/(6a) on half of a = s/√3',
      given: { torque: '0.8 N m', acrossFlats: '7 mm', height: '3 mm', flats: 6, clearance: '0 mm', compressiveStrength: '60 MPa' },
      gives: {
        yieldTorque: '1.47000 N m',
        roundingTorque: '2.20500 N m',
        flatForce: '98.974 N',
        contactWidth: '2.02073 mm',
        freeAngle: '0.000 deg',
        holdAngle: '0.000 deg',
      },
      source: hand('moment of triangular and of uniform pressure on half of each flat, by hand'),
    },
    {
      what: 'two flats: 18T/(s² m)',
      given: { torque: '0.8 N m', acrossFlats: '7 mm', height: '3 mm', flats: 2, clearance: '0 mm', compressiveStrength: '60 MPa' },
      gives: { cornerPressure: '97.959 MPa', state: 'roundsOut' },
      source: hand('moment of triangular pressure on half of each flat, by hand'),
    },
  ),
  ...published(nutPocketWall, {
    what: 'M4 nut, 0.8 N m, 3 mm wall',
    given: { torque: '0.8 N m', acrossFlats: '7 mm', height: '3 mm', wall: '3 mm' },
    gives: { meanPressure: '8.1633 MPa', wallTension: '9.5238 MPa' },
    source: hand('mean pressure of six flats, thin ring, by hand'),
  }),
  ...published(nutPullThrough, {
    what: 'six sides under 3 mm',
    given: { force: '1 kN', acrossFlats: '7 mm', cover: '3 mm', sides: 'six', shearStrength: '20 MPa' },
    gives: { area: '72.746 mm^2', shearStress: '13.746 MPa', pullThroughForce: '1454.9 N' },
    source: hand('2√3 s times cover, by hand'),
  }),
  ...published(pocketRoof, {
    what: 'edge of a clamped plate under a small central load',
    given: { force: '100 N', supportDiameter: '100 mm', loadDiameter: '0.1 mm', thickness: '2 mm' },
    gives: { edgeStress: '11.94 MPa' },
    source: hand('clamped circular plate, point load: 3F/(2π t²) at the edge, Timoshenko & Woinowsky-Krieger (unverified)'),
  }),
  ...published(pocketRoof, {
    what: 'clamped plate 20 mm, loaded over 10 mm',
    given: { force: '100 N', supportDiameter: '20 mm', loadDiameter: '10 mm', thickness: '3 mm', poissonRatio: 0.3 },
    // 6/9 × 100/(4π) × 7/8 and × 1.3 × (ln 2 + 1/16).
    gives: { edgeStress: '4.6420 MPa', middleStress: '5.2115 MPa' },
    source: unverified('Timoshenko & Woinowsky-Krieger, section 19: clamped plate loaded over a central circle; by hand'),
  }),
  ...published(nutPullThrough, {
    what: 'slid in from the side: three sides hold',
    given: { force: '1 kN', acrossFlats: '7 mm', cover: '3 mm', sides: 'three', shearStrength: '20 MPa' },
    gives: { area: '36.373 mm^2', shearStress: '27.493 MPa', pullThroughForce: '727.46 N' },
    source: hand('√3 s times cover, by hand'),
  }),
]
