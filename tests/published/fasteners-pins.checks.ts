import {
  clevisPinBending,
  embeddedPin,
  embeddedPinElastic,
  goodmanReserve,
  lugNetSection,
  lugTearOut,
  pinBearing,
  pinEnduranceLimit,
  pinShear,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import { type Check, published } from './harness.js'

const bvp: Source = {
  level: 'referenceLibrary',
  where:
    "the beam's differential equation EI y'''' + k y = 0 with free ends, solved with numpy.linalg from exponentials (tests/oracles/fasteners-pins.py)",
}
const sections: Source = { level: 'arithmetic', where: 'areas and section moduli by hand' }
const pin = { force: '100 N', diameter: '4 mm', arm: '5 mm', pinModulus: '200 GPa', foundationModulus: '2000 N/mm^2' } as const

export const checks: Check[] = [
  ...published(pinShear, {
    what: '1 kN, 4 mm, two planes',
    given: { force: '1 kN', diameter: '4 mm' },
    gives: { averageStress: '39.7887 MPa', peakStress: '53.0516 MPa' },
    source: { level: 'published', where: 'Gere & Goodno, Mechanics of Materials: 4/3 of the average in a round section; average by hand' },
  }),
  ...published(clevisPinBending, {
    what: 'cheeks 4 mm, gaps 0.5 mm, eye 8 mm',
    given: { force: '1 kN', diameter: '4 mm', cheekThickness: '4 mm', gap: '0.5 mm', lugThickness: '8 mm' },
    // 2 + 0.5 + 2 mm; 500 N × 4.5 mm; over π d³/32 and over d³/6.
    gives: { arm: '4.5 mm', moment: '2.25 N m', bendingStress: '358.099 MPa', plasticBendingStress: '210.9375 MPa' },
    within: '0.0002 %',
    source: sections,
  }),
  ...published(pinBearing, {
    given: { force: '420 N', diameter: '4 mm', thickness: '7 mm' },
    gives: { projectedPressure: '15 MPa', peakPressure: '19.0986 MPa' },
    within: '0.0002 %',
    source: sections,
  }),
  ...published(lugNetSection, {
    given: { force: '600 N', width: '14 mm', diameter: '4 mm', thickness: '6 mm', stressConcentration: 2.5 },
    gives: { averageStress: '10 MPa', peakStress: '25 MPa' },
    within: '0.0001 %',
    source: sections,
  }),
  ...published(
    lugTearOut,
    {
      what: 'planes from the front of the hole',
      given: { force: '600 N', edgeDistance: '8 mm', diameter: '4 mm', thickness: '5 mm' },
      gives: { planeLength: '6 mm', shearStress: '10 MPa' },
      within: '0.0001 %',
      source: sections,
    },
    {
      what: 'planes at 40 degrees',
      given: { force: '600 N', edgeDistance: '8 mm', diameter: '4 mm', thickness: '5 mm', planes: 'fortyDegrees' },
      gives: { planeLength: '6.467911 mm' },
      source: { level: 'unverified', where: 'Bruhn D1; 8 mm − 2 mm × cos 40° = 8 − 1.532089' },
    },
  ),
  ...published(embeddedPin, {
    what: 'no arm: four times the average at the mouth, twice at the end',
    given: { force: '100 N', arm: '0 mm', depth: '10 mm', diameter: '4 mm' },
    gives: { averagePressure: '2.5 MPa', mouthPressure: '10 MPa', endPressure: '5 MPa', pivotDepth: '6.6666667 mm' },
    within: '0.00001 %',
    source: { level: 'published', where: 'Hetényi 1946, rigid limit; classic result 4P/L and −2P/L of a free rigid bar under an end load' },
  }),
  ...published(embeddedPin, {
    what: 'arm half the depth: seven times the average',
    given: { force: '100 N', arm: '5 mm', depth: '10 mm', diameter: '4 mm' },
    gives: {
      mouthPressure: '17.5 MPa',
      mouthPeakPressure: '22.281692 MPa',
      endPressure: '12.5 MPa',
      pivotDepth: '5.833333 mm',
      moment: '0.578703704 N m',
      momentDepth: '1.666667 mm',
      bendingStress: '92.103555 MPa',
    },
    within: '0.0001 %',
    source: {
      level: 'referenceLibrary',
      where: 'numerical integration of the linear reaction with numpy (tests/oracles/fasteners-pins.py)',
    },
  }),
  ...published(
    embeddedPinElastic,
    {
      what: '20 mm deep, slender',
      given: { ...pin, depth: '20 mm' },
      gives: {
        slenderness: 2.37526753,
        mouthPressure: '9.8996094 MPa',
        mouthPeakPressure: '12.6045742 MPa',
        endPressure: '2.549301077 MPa',
        mouthDisplacement: '19.7992188 um',
        moment: '0.650127995 N m',
        bendingStress: '103.4710841 MPa',
      },
      within: '0.00001 %',
      source: bvp,
    },
    {
      what: '5 mm deep, nearly rigid',
      given: { ...pin, depth: '5 mm' },
      gives: { mouthPressure: '50.1538297 MPa', endPressure: '39.9053735 MPa', moment: '0.526676645 N m' },
      within: '0.00001 %',
      source: bvp,
    },
  ),
  ...published(
    pinEnduranceLimit,
    {
      what: 'machined shaft of 22 mm, 1226 MPa',
      given: { tensileStrength: '1226 MPa', diameter: '22 mm', bending: 'rotating', surface: 'machined' },
      gives: { surfaceFactor: 0.685, sizeFactor: 0.893, enduranceLimit: '375 MPa' },
      source: { level: 'published', where: 'Shigley 8th ed., problem 7-2, instructor solution' },
    },
    {
      what: 'small machined pin of 1000 MPa',
      given: { tensileStrength: '1000 MPa', diameter: '4 mm', surface: 'machined' },
      gives: { sizeFactor: 1, enduranceLimit: '361.5 MPa', shearEnduranceLimit: '208.6 MPa' },
      within: '0.02 %',
      source: { level: 'arithmetic', where: '0.5 × 1000 × 4.51 × 1000^−0.265, × 0.577' },
    },
  ),
  ...published(
    goodmanReserve,
    {
      what: 'reversed, 167 MPa',
      given: { largestStress: '167 MPa', smallestStress: '-167 MPa', enduranceLimit: '361.5 MPa', tensileStrength: '1000 MPa' },
      gives: { reserve: 2.16 },
      source: { level: 'arithmetic', where: '361.5/167' },
    },
    {
      what: 'pulsating, 0 to 167 MPa',
      given: { largestStress: '167 MPa', smallestStress: '0 MPa', enduranceLimit: '361.5 MPa', tensileStrength: '1000 MPa' },
      gives: { alternatingStress: '83.5 MPa', meanStress: '83.5 MPa', reserve: 3.18 },
      source: { level: 'arithmetic', where: '1/(83.5/361.5 + 83.5/1000)' },
    },
  ),
]
