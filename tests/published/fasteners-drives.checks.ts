import { bearingCap, bearingSeat, bearingShoulder, frictionDrive, frictionFaceTorque, parallelKey } from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import rows from '../oracles/fasteners-seat.json' with { type: 'json' }
import { type Check, published } from './harness.js'

const hand = (where: string): Source => ({ level: 'arithmetic', where })
const rings: Source = {
  level: 'referenceLibrary',
  where: 'two thick rings by their displacements, four equations solved by numpy (tests/oracles/fasteners-seat.py)',
}
const keyExample: Source = {
  level: 'unverified',
  where: 'Budynas & Nisbett, Shigley, example 7-6: 40 hp at 600 rpm, 1 7/16 in shaft, 3/8 in key',
}
const key = {
  torque: '4200 lbf in',
  direction: 'oneWay',
  shaftDiameter: '1.4375 in',
  width: '0.375 in',
  height: '0.375 in',
  shaftDepth: '0.1875 in',
  hubDepth: '0.1875 in',
  shaftBearingStrength: '65 ksi',
} as const
const steelHub = { material: 'metal', outerDiameter: '4 in', bearingStrength: '65 ksi', tensileStrength: '65 ksi' } as const
const drum = {
  torque: '2 N m',
  direction: 'oneWay',
  shaftDiameter: '10 mm',
  width: '4 mm',
  height: '4 mm',
  shaftDepth: '2.5 mm',
  hubDepth: '1.8 mm',
  length: '12 mm',
  shaftBearingStrength: '300 MPa',
  keyShearStrength: '200 MPa',
} as const
const plastic = { material: 'printed', outerDiameter: '24 mm', bearingStrength: '30 MPa', tensileStrength: '12 MPa' } as const
const pinion = { friction: 0.2, outerDiameter: '20 mm', innerDiameter: '10 mm' } as const

export const checks: Check[] = [
  ...rows.flatMap(({ outside, raceway, housing, modulus, poisson, pressure, transfer }) =>
    published(bearingSeat, {
      what: `${outside} mm ring in a housing of ${modulus} MPa`,
      given: {
        outsideDiameter: [outside, 'mm'],
        racewayDiameter: [raceway, 'mm'],
        width: '6 mm',
        diametralInterference: '40 um',
        internalClearance: '50 um',
        housing: { diameter: [housing, 'mm'], modulus: [modulus, 'MPa'], poissonRatio: poisson, thermalExpansion: '70 ppm/K' },
        ring: {},
        temperatureChange: '0 K',
        friction: 0.2,
        load: 'rotating',
      },
      gives: {
        pressure: `${pressure} MPa` as never,
        housingHoopStress: [(pressure * (housing ** 2 + outside ** 2)) / (housing ** 2 - outside ** 2), 'MPa'],
        transfer,
        clearanceLeft: [50 - 40 * transfer, 'um'],
        gripTorque: [0.2 * pressure * Math.PI * 3 * outside ** 2, 'N mm'],
        seat: 'tight',
      },
      within: '0.0000001 %',
      source: rings,
    }),
  ),
  ...published(bearingSeat, {
    what: '19 mm ring, 30 K warmer: 19 × 30 × 58e-6 = 33.06 µm lost of 20',
    given: {
      outsideDiameter: '19 mm',
      racewayDiameter: '17.2 mm',
      width: '5 mm',
      diametralInterference: '20 um',
      internalClearance: '8 um',
      innerRacewayGrowth: '3 um',
      housing: { diameter: '30 mm', modulus: '2 GPa', poissonRatio: 0.38, thermalExpansion: '70 ppm/K' },
      ring: {},
      temperatureChange: '30 K',
      innerRingWarmer: '10 K',
      friction: 0.2,
      load: 'rotating',
    },
    // Clearance: 8 − 3 − 12e-6 × 17200 × 10 µm; release: 20/(19000 × 58e-6) K.
    gives: {
      diametralInterference: '-13.06 um',
      clearanceLeft: '2.936 um',
      releaseChange: '18.149 K',
      seat: 'ringCreeps',
      clearance: 'runsFree',
    },
    source: hand('free expansion of ring and housing, by hand'),
  }),
  ...published(bearingShoulder, {
    given: {
      thrust: '500 N',
      seatDiameter: '22 mm',
      contactDiameter: '21 mm',
      lipBore: '19 mm',
      thickness: '3 mm',
      compressiveStrength: '40 MPa',
      shearStrength: '10 MPa',
      bendingStrength: '30 MPa',
    },
    gives: {
      pressure: '7.9577 MPa',
      shearStress: '2.4114 MPa',
      bendingStress: '4.8229 MPa',
      capacity: '2073.45 N',
      reserve: 4.1469,
      governedBy: 'shear',
    },
    source: hand('ring π/4 (21² − 19²), root π 22 × 3, arm 1 mm on a strip of π 22 by 3, by hand'),
  }),
  ...published(
    bearingCap,
    {
      what: 'six bolts of example 8-4, 36 kip: n_L = 2.18',
      given: { thrust: '36 kip', screws: 6, clampLoad: '14.4 kip', loadFactor: 0.368, screwCapacity: '19.21 kip' },
      gives: { reserve: '2.18', governedBy: 'screws', state: 'closed' } as never,
      source: { level: 'published', where: 'Shigley 9th ed., example 8-4: S_p A_t = 85 × 0.226 kip' },
    },
    {
      what: 'the same with bolts that never yield: n_0 = 3.80',
      given: { thrust: '36 kip', screws: 6, clampLoad: '14.4 kip', loadFactor: 0.368, screwCapacity: '1000 kip' },
      gives: { reserve: '3.80', governedBy: 'lifting' } as never,
      source: { level: 'published', where: 'Shigley 9th ed., example 8-4' },
    },
  ),
  ...published(
    parallelKey,
    {
      what: 'crushing asks for 1.34 in at a reserve of 2.8',
      given: { ...key, length: '1.34 in', hub: steelHub, keyShearStrength: '37.5 ksi' },
      gives: { reserve: '2.8', governedBy: 'hubCrushing' } as never,
      source: keyExample,
    },
    {
      what: 'shear asks for 1.17 in at a reserve of 2.8',
      given: {
        ...key,
        length: '1.17 in',
        hub: { ...steelHub, bearingStrength: '200 ksi' },
        shaftBearingStrength: '200 ksi',
        keyShearStrength: '37.5 ksi',
      },
      gives: { reserve: '2.8', governedBy: 'keyShear' } as never,
      source: keyExample,
    },
    {
      what: '4x4 in a printed drum: 400 N on 1.5 by 12 mm, wall 5.2 by 12 mm takes half',
      given: { ...drum, hub: plastic },
      gives: {
        force: '400 N',
        hubPressure: '22.222 MPa',
        shaftPressure: '13.3333 MPa',
        keyShear: '8.3333 MPa',
        hubWallTension: '3.2051 MPa',
        torqueCapacity: '2.70000 N m',
        reserve: '1.35000 1',
        governedBy: 'hubCrushing',
      },
      source: hand('2T/d over each area, by hand'),
    },
    {
      what: 'a second key in a print counts for nothing',
      given: { ...drum, keys: 2, hub: plastic },
      gives: { force: '400 N' },
      source: { level: 'assumption', where: 'flanks of a print scatter by more than they give' },
    },
    {
      what: 'two keys in metal: 1.5 of one',
      given: { ...drum, keys: 2, hub: { ...plastic, material: 'metal' } },
      gives: { force: '266.667 N' },
      source: { level: 'published', where: 'Roloff/Matek: 0.75 each, read in a summary' },
    },
  ),
  ...published(
    frictionFaceTorque,
    {
      what: 'uniform wear: F f (D + d)/4',
      given: { ...pinion, clampLoad: '1 kN', pressure: 'worn' },
      gives: '1.5 N m',
      within: '0.000001 %',
      source: { level: 'published', where: 'Shigley 9th ed., eq. 16-25' },
    },
    {
      what: 'uniform pressure: F f/3 × (D³ − d³)/(D² − d²) = 200/3 × 7000/300 N mm',
      given: { ...pinion, clampLoad: '1 kN', pressure: 'uniform' },
      gives: '1555.56 N mm',
      source: { level: 'published', where: 'Shigley 9th ed., eq. 16-27' },
    },
  ),
  ...published(
    frictionDrive,
    {
      what: 'printed drum between two flanges, 1 kN: both sides share',
      given: {
        clampLoad: '1 kN',
        faces: [
          { ...pinion, surface: 'printed', allowablePressure: '15 MPa' },
          { ...pinion, surface: 'printed', allowablePressure: '15 MPa' },
        ],
        path: 'inParallel',
        torque: '0.8 N m',
      },
      gives: {
        slipTorque: '3.00000 N m',
        pressures: ['4.2441 MPa', '4.2441 MPa'],
        reserve: '3.75000 1',
        requiredReserve: '2.50000 1',
        state: 'frictionDrives',
      },
      source: hand('1000 N on π/4 (400 − 100) mm², 0.2 × 1000 N × 7.5 mm each side'),
    },
    {
      what: 'metal spacer, then printed drum: the print decides',
      given: {
        clampLoad: '1 kN',
        faces: [
          { ...pinion, surface: 'metal', allowablePressure: '200 MPa' },
          { ...pinion, surface: 'printed', allowablePressure: '15 MPa' },
        ],
        path: 'inSeries',
        torque: '0.8 N m',
      },
      gives: { slipTorque: '1.50000 N m', faceTorques: ['1.55556 N m', '1.50000 N m'], state: 'keyNeeded' },
      source: hand('even pressure on metal, mean radius on the print'),
    },
  ),
  ...published(bearingCap, {
    what: '1 kN on four screws of 400 N, half of it felt by the screws',
    given: { thrust: '1 kN', screws: 4, clampLoad: '400 N', loadFactor: 0.5, screwCapacity: '900 N' },
    gives: {
      screwLoad: '525.000 N',
      faceLoad: '275.000 N',
      liftThrust: '3200.00 N',
      capacity: '3200.00 N',
      governedBy: 'lifting',
      state: 'closed',
    },
    source: hand('400 + 125, 400 − 125, 4 × 400/0.5; the screws would bear 4 × 500/0.5'),
  }),
]
