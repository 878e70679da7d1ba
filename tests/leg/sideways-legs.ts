import { readFileSync } from 'node:fs'
import { describeLeg, withFields } from '../../src/leg/index.js'

export const held = describeLeg(readFileSync(new URL('../../examples/orchard-leg-revised.yaml', import.meta.url), 'utf8'))
const gearbox = {
  kind: 'gearbox',
  ratio: 16,
  efficiency: 0.85,
  backlash: '0.2 deg',
  stiffness: '2 kN m/rad',
  ratedTorque: '36 N m',
  peakTorque: '45 N m',
  highestSpeed: '3000 rpm',
  mass: '0.4 kg',
}
/** The orchard carrier with a gearbox at its sideways hip, which was a torque limit. */
export const driven = withFields(held, {
  'plates.sidePlate': {
    mountedOn: 'body',
    material: 'aluminium 6061-T6',
    emissivity: 0.9,
    thickness: '6 mm',
    size: { width: '120 mm', height: '130 mm' },
  },
  'bearings.side': { size: '12x21x5', spacing: '60 mm', overhang: '30 mm', seatMaterial: 'aluminium 6061-T6', seatInterference: '0.01 mm' },
  'joints.sidewaysHip': {
    range: { lowest: '-20 deg', highest: '20 deg' },
    motor: 'outrunner',
    controller: 'bridge',
    plate: 'sidePlate',
    bearings: 'side',
    drive: gearbox,
  },
})
