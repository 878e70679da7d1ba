import { describe, expect, test } from 'vitest'
import * as fasteners from '../../src/fasteners/index.js'
import { type AnyFormula, notesOf } from '../../src/formula/index.js'

type Given = Record<string, unknown>

/** A statement of a formula's validity range: what holds it only just, and the one input that then breaks it only just. */
interface Limit {
  readonly formula: { readonly id: string; readonly def: AnyFormula['def'] }
  readonly statement: string
  readonly inside: Given
  readonly outside: Given
}

const { metricThread } = fasteners
const polymer = { modulus: '2 GPa', poissonRatio: 0.38 }
const steel = { modulus: '207 GPa', poissonRatio: 0.29 }

const fit = { diameter: '4 mm', diametralInterference: '40 um', bossDiameter: '12 mm', boss: polymer, pin: steel }
const strip = {
  thread: metricThread('M4'),
  engagement: '6 mm',
  threadLength: '12 mm',
  partShearStrength: '20 MPa',
  screwShearStrength: '480 MPa',
  screwTensileStrength: '800 MPa',
}
const insert = {
  knurlDiameter: '6 mm',
  length: '8 mm',
  shearStrength: '20 MPa',
  share: 0.4,
  bossDiameter: '12 mm',
  bossStrength: '20 MPa',
  preload: '300 N',
  jacksOut: false,
}
const key = {
  torque: '1 N m',
  direction: 'oneWay',
  shaftDiameter: '10 mm',
  ...fasteners.parallelKeySize('3x3'),
  length: '12 mm',
  hub: { material: 'printed', outerDiameter: '30 mm', bearingStrength: '25 MPa', tensileStrength: '9 MPa' },
  shaftBearingStrength: '300 MPa',
  keyShearStrength: '200 MPa',
}
const { shaftAbove: _above, shaftUpTo: _upTo, ...keyed } = key
const glued = { diameter: '4 mm', shearStrength: '20 MPa', temperature: '23 degC', glassTransitionTemperature: '60 degC' }
const load = { radialLoad: '100 N', staticRating: '1 kN' }
const turned = { preload: '1 kN', thread: metricThread('M4'), headFriction: 0.1, bearingDiameter: '7 mm', holeDiameter: '4.5 mm' }
const cycle = { largestLoad: '100 N', smallestLoad: '0 N', clampLoad: '1 kN', loadFactor: 0.5 }
const bolt = { x: '0 mm', y: '0 mm', area: '8 mm^2' }
const group = { bolts: [bolt], forceX: '10 N', forceY: '0 N', atX: '0 mm' }
const roof = { force: '100 N', loadDiameter: '7 mm', supportDiameter: '10 mm', poissonRatio: 0.38 }
const lug = { force: '100 N', diameter: '4 mm', thickness: '6 mm' }

const oiled = {
  viscosity: '100 mm^2/s',
  meanDiameter: '16 mm',
  speed: '100 rpm',
  cleanliness: 'normal',
  fatigueLoadLimit: '60 N',
  load: '300 N',
}
const eccentric = {
  clampLoad: '900 N',
  loadAt: '10 mm',
  boltAt: '0 mm',
  edgeAt: '8 mm',
  faceArea: '224 mm^2',
  faceSecondMoment: '4778.7 mm^4',
  grip: '8 mm',
  memberModulus: '2 GPa',
  memberCompliance: '0.01786 um/N',
  boltCompliance: '0.007 um/N',
  boltDiameter: '3.34 mm',
  boltModulus: '207 GPa',
}

const peel = {
  force: '100 N',
  width: '20 mm',
  overlap: '12 mm',
  thickness: '3 mm',
  modulus: '2.5 GPa',
  poissonRatio: 0.35,
  bondThickness: '0.2 mm',
  bondModulus: '2.5 GPa',
  shearModulus: '0.9 GPa',
}
const formed = {
  thread: { diameter: '4 mm', pitch: '1.8 mm', pitchDiameter: '3.3 mm' },
  pilotDiameter: '3.2 mm',
  engagement: '10 mm',
  bossDiameter: '9 mm',
  shearStrength: '18 MPa',
  formingTorque: '0.6 N m',
  threadFriction: 0.25,
  headFriction: 0.2,
  bearingDiameter: '8 mm',
  holeDiameter: '4.5 mm',
}

const hook = {
  length: '20 mm',
  thickness: '2 mm',
  width: '8 mm',
  undercut: '1 mm',
  modulus: '2 GPa',
  allowableStrain: '2 %',
  friction: 0.3,
  entryAngle: '30 deg',
  holdingAngle: '45 deg',
}

const LIMITS: readonly Limit[] = [
  {
    formula: fasteners.snapHook,
    statement: 'length at least five times the thickness (slender hook)',
    inside: { ...hook, thickness: '4 mm' },
    outside: { thickness: '4.01 mm' },
  },
  {
    formula: fasteners.lapPeel,
    statement: 'adhesive at most a tenth of the thickness of the parts',
    inside: { ...peel, bondThickness: '0.3 mm' },
    outside: { bondThickness: '0.301 mm' },
  },
  {
    formula: fasteners.lugStressConcentration,
    statement: 'hole from 0.15 to 0.75 of the width',
    inside: { width: '20 mm', diameter: '15 mm', end: 'round' },
    outside: { diameter: '15.01 mm' },
  },
  {
    formula: fasteners.lugStressConcentration,
    statement: 'hole from 0.15 to 0.75 of the width',
    inside: { width: '20 mm', diameter: '3 mm', end: 'square' },
    outside: { diameter: '2.99 mm' },
  },
  {
    formula: fasteners.threadFormingScrew,
    statement: 'hole from 0.75 to 0.9 of the diameter',
    inside: { ...formed, pilotDiameter: '3 mm' },
    outside: { pilotDiameter: '2.99 mm' },
  },
  {
    formula: fasteners.threadFormingScrew,
    statement: 'hole from 0.75 to 0.9 of the diameter',
    inside: { ...formed, pilotDiameter: '3.6 mm' },
    outside: { pilotDiameter: '3.61 mm' },
  },
  {
    formula: fasteners.threadFormingScrew,
    statement: 'engagement of 2 to 3 diameters',
    inside: { ...formed, engagement: '8 mm' },
    outside: { engagement: '7.99 mm' },
  },
  {
    formula: fasteners.threadFormingScrew,
    statement: 'engagement of 2 to 3 diameters',
    inside: { ...formed, engagement: '12 mm' },
    outside: { engagement: '12.01 mm' },
  },
  {
    formula: fasteners.threadFormingScrew,
    statement: 'boss of at least 2 diameters',
    inside: { ...formed, bossDiameter: '8 mm' },
    outside: { bossDiameter: '7.99 mm' },
  },
  {
    formula: fasteners.eccentricJoint,
    statement: 'the face is closed to its edges',
    inside: { ...eccentric, externalLoad: '223 N' },
    outside: { externalLoad: '223.5 N' },
  },
  {
    formula: fasteners.bearingLifeFactor,
    statement: 'viscosity ratio of at least 0.1',
    inside: { ...oiled, viscosity: '24.62 mm^2/s' },
    outside: { viscosity: '24.6 mm^2/s' },
  },
  {
    formula: fasteners.bearingLifeFactor,
    statement: 'life factor below its ceiling of 50',
    inside: { ...oiled, viscosity: '1000 mm^2/s', load: '144 N' },
    outside: { load: '142 N' },
  },
  {
    formula: fasteners.pressFit,
    statement: 'interference below 2 % of the diameter',
    inside: { ...fit, diametralInterference: '79.99 um' },
    outside: { diametralInterference: '80.01 um' },
  },
  {
    formula: fasteners.pressFit,
    statement: 'boss at least 1.2 times the bore',
    inside: { ...fit, bossDiameter: '4.801 mm' },
    outside: { bossDiameter: '4.799 mm' },
  },
  {
    formula: fasteners.sleeveJointTilt,
    statement: 'wall at most a half of the radius',
    inside: { clampLoad: '1200 N', radius: '8 mm', wall: '3.999 mm', length: '20 mm', modulus: '2.2 GPa', moment: '3 N m' },
    outside: { wall: '4.001 mm' },
  },
  {
    formula: fasteners.bearingCap,
    statement: 'clamp load at most the capacity of a screw',
    inside: { thrust: '100 N', screws: 4, clampLoad: '600 N', loadFactor: 0.9, screwCapacity: '600 N' },
    outside: { clampLoad: '601 N' },
  },
  {
    formula: fasteners.bearingEquivalentLoad,
    statement: 'axial load at most a quarter of the static rating in bores up to 12 mm and light series',
    inside: { ...load, axialLoad: '250 N' },
    outside: { axialLoad: '251 N' },
  },
  {
    formula: fasteners.bearingEquivalentLoad,
    statement: 'axial load at most half the static rating',
    inside: { ...load, axialLoad: '500 N' },
    outside: { axialLoad: '501 N' },
  },
  {
    formula: fasteners.bearingLife,
    statement: 'load at most half the dynamic rating',
    inside: { dynamicRating: '1 kN', load: '500 N', speed: '60 rpm' },
    outside: { load: '501 N' },
  },
  {
    formula: fasteners.boltGroupShear,
    statement: 'a single bolt carries no moment',
    inside: { ...group, atY: '0 mm' },
    outside: { atY: '1 mm' },
  },
  {
    formula: fasteners.bondedPin,
    statement: 'length up to 1.5 diameters (average shear)',
    inside: { ...glued, length: '6 mm' },
    outside: { length: '6.001 mm' },
  },
  {
    formula: fasteners.jointReserves,
    statement: 'preload below the proof load',
    inside: { clampLoad: '4.999 kN', externalLoad: '100 N', loadFactor: 0.9, proofLoad: '5 kN' },
    outside: { clampLoad: '5 kN' },
  },
  {
    formula: fasteners.boltFatigue,
    statement: 'M6 and larger (the endurance rule is fitted there)',
    inside: { ...cycle, thread: metricThread('M6') },
    outside: { thread: metricThread('M5') },
  },
  {
    formula: fasteners.memberStiffnessFit,
    statement: 'grip from 0.5 to 10 diameters',
    inside: { modulus: '70 GPa', diameter: '4 mm', grip: '40 mm' },
    outside: { grip: '40.01 mm' },
  },
  {
    formula: fasteners.memberStiffnessFit,
    statement: 'grip from 0.5 to 10 diameters',
    inside: { modulus: '70 GPa', diameter: '4 mm', grip: '2 mm' },
    outside: { grip: '1.999 mm' },
  },
  {
    formula: fasteners.pocketRoof,
    statement: 'thickness below a quarter of the support',
    inside: { ...roof, thickness: '2.5 mm' },
    outside: { thickness: '2.501 mm' },
  },
  {
    formula: fasteners.parallelKey,
    statement: 'length up to 1.5 shaft diameters (uniform load along the key)',
    inside: { ...keyed, length: '15 mm' },
    outside: { length: '15.01 mm' },
  },
  {
    formula: fasteners.parallelKey,
    statement: 'torque of one direction in a printed hub (a reversing key beats its way loose)',
    inside: keyed,
    outside: { direction: 'reversing' },
  },
  {
    formula: fasteners.shaftFlat,
    statement: 'length up to 1.5 shaft diameters (uniform load along the flat)',
    inside: {
      torque: '1 N m',
      shaftDiameter: '8 mm',
      depth: '1 mm',
      length: '12 mm',
      hubBearingStrength: '25 MPa',
      shaftBearingStrength: '300 MPa',
    },
    outside: { length: '12.01 mm' },
  },
  {
    formula: fasteners.pinEnduranceLimit,
    statement: 'diameter up to 51 mm',
    inside: { tensileStrength: '800 MPa', diameter: '51 mm' },
    outside: { diameter: '51.01 mm' },
  },
  {
    formula: fasteners.lugTearOut,
    statement: 'edge distance at least 1.5 diameters (2 is usual in plastics)',
    inside: { ...lug, edgeDistance: '6 mm' },
    outside: { edgeDistance: '5.999 mm' },
  },
  {
    formula: fasteners.threadStrip,
    statement: 'engagement within 2.5 diameters',
    inside: { ...strip, engagement: '10 mm' },
    outside: { engagement: '10.001 mm' },
  },
  {
    formula: fasteners.threadStrip,
    statement: 'engagement at least 0.6 diameters',
    inside: { ...strip, engagement: '2.4 mm' },
    outside: { engagement: '2.399 mm' },
  },
  {
    formula: fasteners.insertPullOut,
    statement: 'the share comes from a pull test',
    inside: { ...insert, calibrated: true },
    outside: { calibrated: false },
  },
  {
    formula: fasteners.tighteningTorque,
    statement: 'thread friction below 1',
    inside: { ...turned, threadFriction: 0.999 },
    outside: { threadFriction: 1 },
  },
]

const isFormula = (value: unknown): value is AnyFormula => typeof value === 'function' && 'def' in value
const written = Object.values(fasteners as Record<string, unknown>)
  .filter(isFormula)
  .flatMap(({ id, def }) => Object.keys(def.valid ?? {}).map((statement) => `${id}: ${statement}`))

test('every statement of a validity range has its limit below', () => {
  expect([...new Set(LIMITS.map(({ formula, statement }) => `${formula.id}: ${statement}`))].sort()).toEqual(written.sort())
})

describe('a broken statement becomes a note, one that holds does not', () => {
  test.each(LIMITS.map((limit) => [`${limit.formula.id}: ${limit.statement}`, limit] as const))('%s', (_, limit) => {
    const { formula, statement, inside, outside } = limit
    const told = (given: Given) => {
      const result = (formula as unknown as (x: Given) => unknown)(given)
      return (notesOf(result) ?? notesOf({ result }) ?? []).some(({ text }) => text === `outside validity: ${statement}`)
    }
    expect(told(inside)).toBe(false)
    expect(told({ ...inside, ...outside })).toBe(true)
  })
})
