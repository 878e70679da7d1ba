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
  'bearings.side': { size: '12x28x8', spacing: '60 mm', overhang: '30 mm', seatMaterial: 'aluminium 6061-T6', seatInterference: '0.01 mm' },
  'joints.sidewaysHip': {
    range: { lowest: '-20 deg', highest: '20 deg' },
    motor: 'outrunner',
    controller: 'bridge',
    plate: 'sidePlate',
    bearings: 'side',
    drive: gearbox,
  },
})

/** The same with a cord at its sideways hip: pinion and drum of the sizes of the other joints' ratios. */
export const corded = withFields(driven, {
  cords: {
    braid: {
      fibre: 'LCP',
      diameter: '1.6 mm',
      breakingStrength: '2.9 kN',
      axialRigidity: '24 kN',
      thermalExpansion: '-5 ppm/K',
      pretensionLeft: [0.8, 0.9, 0.96],
    },
  },
  'joints.sidewaysHip.drive': {
    kind: 'cord',
    arrangement: 'open',
    pinion: { grooveDiameter: '14.4 mm', turns: 3, length: '14 mm' },
    drum: { grooveDiameter: '110 mm', material: 'PC', bore: '22 mm', length: '14 mm', groovePitch: '2 mm' },
    centreDistance: '80 mm',
    cord: 'braid',
    pretension: '260 N',
    friction: [0.08, 0.14, 0.2],
    hold: 'clampedMidPinion',
    ends: 'splice',
    anchor: { postDiameter: '4 mm', postLength: '10 mm', edgeDistance: '9 mm' },
    tensioner: { thread: 'M3', travel: '22 mm' },
  },
})
