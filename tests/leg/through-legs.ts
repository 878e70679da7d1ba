import { readFileSync } from 'node:fs'
import { describeLeg, withFields } from '../../src/leg/index.js'
import { TORSION } from './sprung-legs.js'

const text = (name: string) => readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')

/** The shingle carrier, whose knee a belt along the upper link drives. */
export const [beltFirst, beltRevised] = [describeLeg(text('shingle-leg-first')), describeLeg(text('shingle-leg-revised'))]

const CORD = `    through:
      kind: cord
      arrangement: crossed
      hipDrum: { grooveDiameter: 52 mm, turns: 3, length: 16 mm }
      kneeDrum: { grooveDiameter: 64 mm, material: PC, bore: 10 mm, length: 14 mm, groovePitch: 2 mm }
      cord: braid
      pretension: 330 N
      friction: [0.08, 0.14, 0.20]
      hold: clampedMidPinion
      ends: splice
      anchor: { postDiameter: 4 mm, postLength: 10 mm, edgeDistance: 9 mm }
      tensioner: { thread: M3, travel: 20 mm }
`
/** The heath carrier with a crossed cord along its upper link instead of the rod: the knee turns against its drum on the hip axis. */
export const cordText = text('heath-leg-revised')
  .replace(/ {4}through:\n(?: {6}.*\n)+/, CORD)
  .replace(/ {2}rodPin:.*\n/, '')
export const cordKnee = describeLeg(cordText)

/** A gearbox for a joint of a walker of some kilograms. */
export const BOX = {
  kind: 'gearbox',
  ratio: 9,
  efficiency: 0.92,
  backlash: '0.15 deg',
  stiffness: '4 kN m/rad',
  ratedTorque: '30 N m',
  peakTorque: '75 N m',
  highestSpeed: '4000 rpm',
  inertia: '8 kg mm^2',
  mass: '0.45 kg',
  radialLoad: '4 kN',
  tiltingMoment: '90 N m',
  overhang: '16 mm',
} as const
/** The shingle carrier whose gearbox turns the pulley on the hip axis itself. */
export const beltOnGearbox = withFields(beltRevised, { 'joints.knee.drive': BOX })
/** The heath carrier whose gearbox turns the crank of the rod itself. */
export const rodOnGearbox = withFields(describeLeg(text('heath-leg-revised')), {
  'joints.knee.drive': {
    ...BOX,
    ratio: 6,
    turns: 'against',
    ratedTorque: '14 N m',
    peakTorque: '30 N m',
    radialLoad: '1.2 kN',
    tiltingMoment: '25 N m',
  },
})
/** The same with its crossed cord on a drum that the rotor turns itself. */
export const cordOnRotor = withFields(cordKnee, {
  'joints.knee.drive': { kind: 'direct', radialLoad: '1.5 kN', tiltingMoment: '30 N m', overhang: '12 mm' },
})
/** The shingle carrier with a torsion spring beside the knee that its belt drives. */
export const sprungBelt = withFields(beltRevised, {
  'joints.knee.spring': { ...TORSION, rate: '2.5 N m/rad', mandrel: undefined, seat: { material: 'aluminium 6061-T6', length: '40 mm' } },
})
