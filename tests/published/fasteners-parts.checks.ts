import {
  bearingOscillation,
  boltShearTension,
  bondedNut,
  bondedPin,
  headBearing,
  lugTearOut,
  nutPocketWall,
  pressFitHold,
} from '../../src/fasteners/index.js'
import type { Source } from '../../src/formula/index.js'
import oracle from '../oracles/fasteners-parts.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/fasteners-parts.py` })
const pieces = by('shear on small pieces of the outline')
const cold = { temperature: '20 degC', glassTransitionTemperature: '90 degC' } as const
const nut = { acrossFlats: '7 mm', height: '3.2 mm', substrateShearStrength: '5 MPa', ...cold } as const

const steelTables: Source = {
  level: 'published',
  where: 'Orange Book, bolt resistances by EN 1993-1-8, class 8.8: Fv,Rd with a partial factor of 1.25',
}

export const checks: Check[] = [
  ...published(
    boltShearTension,
    ...(
      [
        ['M16', '157 mm^2', 60.3],
        ['M20', '245 mm^2', 94.1],
      ] as const
    ).map(([size, stressArea, design]) => ({
      what: `${size} of class 8.8: ${design} kN times 1.25`,
      given: {
        shear: '10 kN' as const,
        tension: '0 N' as const,
        thread: { diameter: '16 mm' as const, stressArea, rootArea: stressArea },
        bolt: { tensileStrength: '800 MPa' as const, proofStress: '600 MPa' as const, yieldStrength: '640 MPa' as const },
      },
      gives: { shearLoad: [1.25 * design, 'kN'] as const },
      within: '0.0625 kN',
      source: steelTables,
    })),
  ),
  ...published(
    bondedNut,
    {
      what: 'print gives way in shear',
      given: { ...nut, shearStrength: '6 MPa', acrossLayersStrength: '12 MPa' },
      gives: {
        axialForce: printed(oracle.nut.substrate, 'N'),
        torque: printed(oracle.nut.torque, 'N m'),
        governedBy: 'substrateShear',
      },
      source: pieces,
    },
    {
      what: 'glue gives way',
      given: { ...nut, shearStrength: '6 MPa', substrateShearStrength: '20 MPa', acrossLayersStrength: '12 MPa' },
      gives: { axialForce: printed(oracle.nut.bond, 'N'), governedBy: 'bond' },
      source: pieces,
    },
  ),
  ...published(bondedPin, {
    given: { diameter: '3 mm', length: '4 mm', shearStrength: '6 MPa', ...cold },
    gives: { axialForce: printed(oracle.pin.force, 'N'), torque: printed(oracle.pin.torque, 'N m') },
    source: by('shear on small pieces of a cylinder'),
  }),
  ...published(nutPocketWall, {
    given: { torque: '2.5 N m', acrossFlats: '7 mm', height: '3.2 mm', wall: '2 mm' },
    gives: { meanPressure: printed(oracle.pocket.mean, 'MPa'), wallTension: printed(oracle.pocket.tension, 'MPa') },
    source: by('pressure over the flats by balance of moments; a fluid at that pressure'),
  }),
  ...published(
    lugTearOut,
    {
      what: 'front',
      given: { force: '900 N', edgeDistance: '9 mm', diameter: '5 mm', thickness: '4 mm', planes: 'front' },
      gives: { planeLength: printed(oracle.front.length, 'mm'), shearStress: printed(oracle.front.shear, 'MPa') },
      source: by('line along the load and circle of the hole, by root finding'),
    },
    {
      what: 'at 40 degrees',
      given: { force: '900 N', edgeDistance: '9 mm', diameter: '5 mm', thickness: '4 mm', planes: 'fortyDegrees' },
      gives: { planeLength: printed(oracle.forty.length, 'mm'), shearStress: printed(oracle.forty.shear, 'MPa') },
      source: by('line along the load and circle of the hole, by root finding'),
    },
  ),
  ...published(headBearing, {
    given: { force: '800 N', bearingDiameter: '7 mm', holeDiameter: '4.5 mm', allowablePressure: '10 MPa' },
    gives: {
      area: printed(oracle.head.area, 'mm^2'),
      pressure: printed(oracle.head.pressure, 'MPa'),
      allowableForce: printed(oracle.head.force, 'N'),
    },
    source: by('ring counted in sixteen million cells'),
  }),
  ...published(pressFitHold, {
    given: { pressure: '4 MPa', diameter: '6 mm', length: '10 mm', friction: 0.15, axialForce: '40 N', torque: '90 N mm' },
    gives: { reserve: printed(oracle.press.reserve, '1') },
    source: by('friction of a sleeve against slip along a helix'),
  }),
  ...published(bearingOscillation, {
    given: { halfAmplitude: '0.3 rad', balls: 8 },
    gives: { turnsPerCycle: printed(oracle.swing.turns, '1'), ballPitch: printed(oracle.swing.pitch, 'deg') },
    source: by('a swing in small steps; a ball between rolling races'),
  }),
]
