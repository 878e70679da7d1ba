import { readFileSync } from 'node:fs'
import { describeLeg, withFields } from '../../src/leg/index.js'

/** The revised mudflat leg, and the same with a spring beside its knee (oracles/leg-springs.py has the numbers). */
export const plain = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))

export const TORSION = {
  kind: 'torsion',
  wire: 'musicWire',
  wireDiameter: '3 mm',
  coilDiameter: '26 mm',
  coils: 9.5,
  fixedLeg: '60 mm',
  movingLeg: '60 mm',
  freeAngle: '10 deg',
  winds: 'growing',
  mandrel: '16 mm',
  seat: { material: 'ASA', length: '40 mm' },
} as const
export const EXTENSION = {
  kind: 'extension',
  wire: 'musicWire',
  wireDiameter: '2 mm',
  coilDiameter: '16 mm',
  coils: 24,
  freeLength: '74 mm',
  initialTension: '10 N',
  bendRadius: '4 mm',
  fixedEnd: { up: '90 mm', forward: '10 mm' },
  movingEnd: { down: '-15 mm', forward: '25 mm' },
  anchor: { material: 'ASA', pinDiameter: '8 mm', depth: '22 mm', arm: '5 mm' },
} as const

export const torsion = withFields(plain, { 'joints.knee.spring': TORSION })
export const extension = withFields(plain, { 'joints.knee.spring': EXTENSION })
/** The same with a spring of each kind and counterweights at both links. */
export const sprungAndBalanced = withFields(torsion, {
  'joints.hip.spring': { ...EXTENSION, anchor: { ...EXTENSION.anchor, material: 'PC' } },
  'links.upper.counterweight': { mass: '0.4 kg', beyond: '60 mm' },
  'links.lower.counterweight': { mass: '0.25 kg', beyond: '45 mm' },
})
/** Springs at hip and knee whose rates are by wire and by sheet, counterweights on both links, and pushes across the leg. */
export const balancedAndSprung = withFields(plain, {
  'joints.hip.spring': { ...TORSION, winds: 'falling', freeAngle: '-10 deg' },
  'joints.knee.spring': { ...EXTENSION, rate: '1 N/mm', hookRadius: '7 mm' },
  'links.upper.counterweight': { mass: '0.4 kg', beyond: '60 mm' },
  'links.lower.counterweight': { mass: '0.25 kg', beyond: '45 mm' },
  'links.lower.centreOfMass': '70 mm',
  'gaits.walk.lateral': 0.1,
  'loadCases.events.hop.lateral': 0.1,
  'loadCases.events.drop.lateral': 0.1,
})
