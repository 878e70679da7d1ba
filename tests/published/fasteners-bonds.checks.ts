import {
  adhesiveTemperatureFactor,
  bondedNut,
  bondedPin,
  bondPrior,
  bondStrength,
  coneSocket,
  lapShear,
  lapStrength,
  pottedFerrule,
  socketShear,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import { type Check, published } from './harness.js'

const memory = (where: string): Source => ({ level: 'memory', where })
const hand = (where: string): Source => ({ level: 'computed', where })

const DOUBLE_LAP = {
  width: '1 in',
  overlap: '1 in',
  lap: 'double',
  inner: { thickness: '0.1 in', modulus: '30 Mpsi', thermalExpansion: [6 * 1.8, 'ppm/K'] },
  outer: { thickness: '0.15 in', modulus: '10 Mpsi', thermalExpansion: [13.3 * 1.8, 'ppm/K'] },
  bondThickness: '0.02 in',
  shearModulus: '0.2 Mpsi',
} as const

export const checks: Check[] = [
  ...published(lapShear, {
    what: 'single lap of equal sheets',
    given: {
      force: '1 kN',
      width: '25 mm',
      overlap: '12.5 mm',
      lap: 'single',
      inner: { thickness: '1.6 mm', modulus: '70 GPa' },
      outer: { thickness: '1.6 mm', modulus: '70 GPa' },
      bondThickness: '0.2 mm',
      shearModulus: '1 GPa',
    },
    gives: { averageStress: '3.200 MPa', innerEndStress: '6.2684 MPa', outerEndStress: '6.2684 MPa' },
    source: memory('Volkersen 1938; (wl/2) coth(wl/2) = 1.95889 by hand'),
  }),
  ...published(lapShear, {
    what: 'double lap of steel in aluminium, 2000 lbf: 604 cosh, and 130 °F colder',
    given: { ...DOUBLE_LAP, force: '2000 lbf', temperatureChange: [-130 / 1.8, 'K'] },
    gives: { outerEndStress: '4390 psi', innerEndStress: '-544.4 psi', thermalEndStress: '2467 psi' },
    source: {
      level: 'computed',
      where: 'Shigley 9th ed., problem 9-35 and its equation (from memory): 603.9 cosh, 816.2 sinh at 1.8255, by hand',
    },
  }),
  ...published(lapStrength, {
    what: 'the same without temperature: average 1000 psi, peak 1923 psi',
    given: { ...DOUBLE_LAP, shearStrength: '3000 psi' },
    gives: { elasticLimit: '3120.1 lbf', plasticLimit: '6000 lbf', longLapLimit: '3286.3 lbf' },
    within: '0.01 %',
    source: { level: 'computed', where: 'force in proportion to the peak of the equation above, by hand' },
  }),
  ...published(socketShear, {
    what: 'rigid socket, 15 mm: the cord would outgrow it by 1.2 in a thousand less',
    given: {
      force: '150 N',
      cordDiameter: '1 mm',
      boreDiameter: '1.6 mm',
      length: '15 mm',
      cordRigidity: '20 kN',
      socketRigidity: '1e9 kN',
      shearModulus: '50 MPa',
      held: 'mouth',
      cordExpansion: '-7 ppm/K',
      socketExpansion: '23 ppm/K',
      temperatureChange: '40 K',
    },
    gives: { mouthStress: '7.57396 MPa', endStress: '2.35696 MPa' },
    source: {
      level: 'referenceLibrary',
      where: 'boundary-value solution with scipy solve_bvp (tests/oracles/fasteners-ferrule.py)',
    },
  }),
  ...published(pottedFerrule, {
    what: 'rigid socket, 15 mm, G 1 GPa',
    given: {
      force: '150 N',
      cordDiameter: '1 mm',
      boreDiameter: '1.6 mm',
      length: '15 mm',
      cordRigidity: '20 kN',
      socketRigidity: '1e9 kN',
      shearModulus: '1 GPa',
      shearStrength: '15 MPa',
      held: 'mouth',
    },
    gives: { averageStress: '3.1831 MPa', mouthStress: '39.036 MPa', longBondLimit: '57.6 N' },
    source: hand('shear-lag equations of cord and socket; agrees with a boundary-value solution to 1e-9'),
  }),
  ...published(coneSocket, {
    what: '100 N, 2 mm mouth, 10 mm, 5 degrees, no friction',
    given: { force: '100 N', mouthDiameter: '2 mm', length: '10 mm', halfAngle: '5 deg', friction: 0, socketDiameter: '8 mm' },
    gives: { wideDiameter: '3.7498 mm', pressure: '12.655 MPa', state: 'releases' },
    source: hand('equilibrium of a frictionless cone: F / (π (D² - d²)/4) on the projected ring, by hand'),
  }),
  ...published(bondedPin, {
    what: '4 mm, 8 mm deep, 10 MPa, cold',
    given: { diameter: '4 mm', length: '8 mm', shearStrength: '10 MPa', temperature: '23 degC', glassTransitionTemperature: '60 degC' },
    gives: { axialForce: '1005.3 N', torque: '2.0106 N m', state: 'usable' },
    source: hand('π d L times strength, by hand'),
  }),
  ...published(bondedNut, {
    what: 'M4 nut, bond 5 MPa',
    given: {
      acrossFlats: '7 mm',
      height: '3 mm',
      shearStrength: '5 MPa',
      temperature: '23 degC',
      glassTransitionTemperature: '55 degC',
      substrateShearStrength: '15 MPa',
      acrossLayersStrength: '15 MPa',
    },
    gives: { axialForce: '363.73 N', governedBy: 'bond' },
    source: hand('2√3 s m times bond strength, by hand'),
  }),
  ...published(bondStrength, {
    what: 'retaining compound on stainless steel at 80 °C under alternating load: 20 × 0.65 × 0.25 × 0.70619 MPa',
    given: {
      shearStrength: '20 MPa',
      materialFactor: 0.65,
      fatigueFactor: 0.25,
      temperature: '80 degC',
      glassTransitionTemperature: '130 degC',
    },
    gives: { shearStrength: '2.2951 MPa', temperatureFactor: 0.70619, state: 'usable' },
    source: hand('factors multiplied; 1 - 0.5 × 57/97 on the line from 23 °C to half at 120 °C'),
  }),
  ...published(adhesiveTemperatureFactor, {
    what: 'an anaerobic as handbooks have it: 0.7 at 80 °C',
    given: { temperature: '80 degC', glassTransitionTemperature: bondPrior('anaerobicRetaining', 'steel').glassTransitionTemperature },
    gives: { factor: '0.7 1' },
    source: memory('adhesive handbooks: 0.7 of the strength of retaining compounds at 80 °C'),
  }),
  ...published(adhesiveTemperatureFactor, {
    what: 'ten kelvin below the glass transition',
    given: { temperature: '50 degC', glassTransitionTemperature: '60 degC' },
    gives: { factor: '0.5 1' },
    within: '1e-9',
    source: memory('adhesive handbooks: half the strength at Tg - 10 K'),
  }),
]
