import { readFileSync } from 'node:fs'
import { describeLeg, withFields } from '../../src/leg/index.js'

const desk = describeLeg(readFileSync(new URL('../../examples/desk-leg-revised.yaml', import.meta.url), 'utf8'))

/** The desk walker with a bought gearbox at the hip and a pair of printed gears at the knee, its motors wound for more speed. */
export const geared = withFields(desk, {
  'motors.pancake': {
    ...desk.motors.pancake,
    speedConstant: '160 rpm/V',
    terminalResistance: '0.35 ohm',
    rotorInertia: '12 kg mm^2',
    mass: '0.1 kg',
  },
  'joints.hip.drive': {
    kind: 'gearbox',
    ratio: 6,
    efficiency: 0.9,
    backlash: '0.3 deg',
    stiffness: '300 N m/rad',
    ratedTorque: '2.5 N m',
    peakTorque: '6 N m',
    highestSpeed: '3000 rpm',
    inertia: '1.5 kg mm^2',
    mass: '0.11 kg',
    radialLoad: '150 N',
    tiltingMoment: '2 N m',
  },
  'joints.knee.drive': {
    kind: 'gear',
    pinionTeeth: 15,
    wheelTeeth: 64,
    module: '0.8 mm',
    faceWidth: '11 mm',
    pinionMaterial: 'aluminium 6061-T6',
    wheelMaterial: 'PC',
    backlash: '0.1 mm',
  },
  'controllers.bridge.currentLimit': '20 A',
})
