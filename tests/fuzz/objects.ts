// Fuzzes solver objects and study tools: a whole specification, spoilt as people spoil it.
import { compareReductions, cordDrive, slackTension } from '../../src/capstan/index.js'
import * as kinematics from '../../src/kinematics/index.js'
import { allowableStress, materialByName, readMaterial, writeMaterial } from '../../src/materials/index.js'
import { randomStream } from '../../src/numeric/index.js'
import * as study from '../../src/study/index.js'
import * as thermal from '../../src/thermal/index.js'
import { type Fault, faultOf } from './judge.js'
import { mutated, notANumber } from './mutate.js'

type Specification = Record<string, unknown>
type Call = (given: never) => unknown

const leg = { hipOffset: '58 mm', upperLink: '165 mm', lowerLink: '180 mm', limits: { knee: { lowest: '12 deg', highest: '140 deg' } } }
const angles = { sidewaysHip: '0 deg', hip: '-30 deg', knee: '60 deg' }
const path = {
  midStance: { x: '0 mm', y: '58 mm', z: '-285 mm' },
  stanceSweep: '110 mm',
  stridePeriod: '0.55 s',
  dutyFactor: 0.5,
  lift: '40 mm',
  swing: 'matched',
}
const at = (x: number, y: number) => ({ at: { x: `${x} mm`, y: `${y} mm`, z: '0 mm' } })
const corner = (x: number, y: number) => ({ x: `${x} mm`, y: `${y} mm` })
const corners = [corner(200, 120), corner(200, -120), corner(-200, 120), corner(-200, -120)]
const feet = [at(200, 120), at(200, -120), at(-200, 120), at(-200, -120)]
const links = {
  hipLink: { mass: '620 g', centreOfMass: { x: '0 mm', y: '35 mm', z: '0 mm' } },
  upperLink: {
    mass: '340 g',
    centreOfMass: { x: '0 mm', y: '0 mm', z: '-70 mm' },
    inertia: { xx: '900 kg mm^2', yy: '900 kg mm^2', zz: '150 kg mm^2' },
  },
  lowerLink: { mass: '160 g', centreOfMass: { x: '0 mm', y: '0 mm', z: '-85 mm' } },
}
const rotary = {
  ratio: 6.2,
  efficiency: 0.93,
  backEfficiency: 0.9,
  rotorInertia: '70 kg mm^2',
  motor: { torqueConstant: '0.087 N m/A', resistance: '0.14 ohm', noLoadCurrent: '0.7 A' },
}
const limit = { maxRate: '6 rad/s', maxAcceleration: '80 rad/s^2', rampTime: '20 ms' }
const drive = {
  arrangement: 'crossed',
  pinionRadius: '7.5 mm',
  drumRadius: '46.5 mm',
  centreDistance: '62 mm',
  pinionTurns: 3,
  drumWrap: '200 deg',
  travel: '110 deg',
  axialRigidity: '35 kN',
  pretension: '140 N',
  friction: { low: 0.1, high: 0.18 },
  allowableTension: '278 N',
  groovePitch: '2 mm',
}
const machine = { speedConstant: '110 rpm/V', speedConstantBasis: 'catalogue', terminalResistance: '0.18 ohm' }
const mount = {
  body: {
    canDiameter: '52 mm',
    canLength: '22 mm',
    ringInnerDiameter: '12 mm',
    ringOuterDiameter: '35 mm',
    mass: '210 g',
    windingMass: '55 g',
    statorMass: '70 g',
    canMass: '65 g',
    windingToStator: '0.8 K/W',
    statorToCan: '6 K/W',
    statorToBase: '0.3 K/W',
  },
  plate: {
    width: '84 mm',
    height: '96 mm',
    thickness: '7 mm',
    conductivity: '0.2 W/(m K)',
    density: '1070 kg/m^3',
    specificHeat: '1300 J/(kg K)',
  },
  surroundings: { air: '38 degC' },
}
const given = { load: study.uniform('400 N', '600 N'), friction: study.normal(0.2, 0.02), wrapAngle: '2 turn' }

const TARGETS: readonly (readonly [name: string, given: Specification, call: Call])[] = [
  [
    'cordDrive',
    { drive, torque: '6 N m' },
    ((x: { drive: never; torque: never }) => [cordDrive(x.drive).limits(), cordDrive(x.drive).overTravel(x.torque)]) as Call,
  ],
  [
    'compareReductions',
    {
      torque: '6 N m',
      wheelRadius: '46.5 mm',
      ratio: 6.2,
      centreDistance: '62 mm',
      width: '12 mm',
      cord: {
        axialRigidity: '35 kN',
        pretension: '140 N',
        friction: { low: 0.1, high: 0.18 },
        pinionTurns: 3,
        drumWrap: '200 deg',
        allowableTension: '274 N',
      },
      belt: { pitch: '3 mm', rootWidth: '1.7 mm', allowableShear: '2 MPa', axialRigidity: '60 kN', pretension: '80 N' },
      gear: { module: '1 mm', allowableStress: '40 MPa' },
    },
    compareReductions as Call,
  ],
  [
    'threeJointLeg',
    { leg, at: { x: '20 mm', y: '58 mm', z: '-290 mm' } },
    ((x: { leg: never; at: never }) => kinematics.threeJointLeg(x.leg).jointAngles(x.at)) as Call,
  ],
  ['footPath', path, kinematics.footPath as Call],
  [
    'strideDemand',
    {
      leg,
      path,
      masses: links,
      coupling: { knee: 'cordFromHip', ratio: 1 },
      load: { mass: '10.5 kg', legShare: 0.25 },
      drives: { sidewaysHip: rotary, hip: rotary, knee: rotary },
    },
    ((x: Record<'leg' | 'path' | 'masses' | 'coupling' | 'load' | 'drives', never>) => {
      const one = kinematics.threeJointLeg(x.leg)
      return kinematics.strideDemand({
        leg: one,
        path: kinematics.footPath(x.path),
        dynamics: kinematics.legDynamics(one, x.masses),
        drives: x.drives,
        coupling: kinematics.driveCoupling(x.coupling),
        load: x.load,
      })
    }) as Call,
  ],
  [
    'gait',
    {
      feet: corners,
      gait: 'walk',
      dutyFactor: 0.8,
      stridePeriod: '1 s',
      forward: '0.15 m/s',
      turnRate: '10 deg/s',
      slope: '5 deg',
      mass: '10.5 kg',
      centreOfMass: { x: '0 mm', y: '0 mm', z: '280 mm' },
    },
    kinematics.gait as Call,
  ],
  [
    'footForces',
    { feet, friction: 0.5, mass: '10.5 kg', centreOfMass: { x: '30 mm', y: '0 mm', z: '280 mm' } },
    kinematics.footForces as Call,
  ],
  [
    'supportPolygon',
    { feet: corners, centreOfMass: { x: '20 mm', y: '5 mm', z: '280 mm' }, mass: '10.5 kg' },
    kinematics.supportPolygon as Call,
  ],
  [
    'jointMove',
    { from: angles, to: { ...angles, knee: '90 deg' }, limits: { sidewaysHip: limit, hip: limit, knee: limit } },
    kinematics.jointMove as Call,
  ],
  [
    'landOnSpringAndDamper',
    { mass: '10.5 kg', dropHeight: '120 mm', stiffness: '9 N/mm', damping: '150 N s/m' },
    kinematics.landOnSpringAndDamper as Call,
  ],
  [
    'chainFromDenavitHartenberg',
    {
      chain: { convention: 'modified', rows: [{}, { a: '165 mm' }, { a: '180 mm', type: 'turning' }] },
      pose: ['10 deg', '20 deg', '0 deg'],
    },
    ((x: { chain: never; pose: never }) => kinematics.chainFromDenavitHartenberg(x.chain).pose(x.pose)) as Call,
  ],
  [
    'motorMount',
    { machine, mount, torque: '0.3 N m' },
    ((x: { machine: never; mount: never; torque: never }) =>
      thermal.motorMount(thermal.motor(x.machine), x.mount).network({ torque: x.torque }).steady()) as Call,
  ],
  [
    'network',
    {
      nodes: { chip: { capacity: '4 J/K', loss: '3 W' }, box: { capacity: '120 J/K' }, air: { fixed: '30 degC' } },
      links: [
        { from: 'chip', to: 'box', resistance: '2 K/W' },
        { from: 'box', to: 'air', resistance: '4 K/W' },
      ],
      duration: '10 min',
    },
    ((x: { nodes: never; links: never; duration: never }) => {
      const one = thermal.network(x.nodes, x.links)
      return [one.steady(), one.transient({ duration: x.duration })]
    }) as Call,
  ],
  [
    'solveFor',
    { given: { load: '500 N', friction: 0.2 }, path: 'wrapAngle', result: '2 N' },
    ((x: { given: never; path: never; result: never }) => study.solveFor(slackTension, x.path, x.given, x.result)) as Call,
  ],
  [
    'sweep',
    { over: { friction: [0.1, 0.2], wrapAngle: { from: '1 turn', to: '3 turn', count: 3 } }, fixed: { load: '500 N' } },
    ((x: never) => study.sweep(slackTension, x)) as Call,
  ],
  ['uncertainty', given, ((x: never) => study.uncertainty(slackTension, x, { samples: 200 })) as Call],
  ['sensitivity', given, ((x: never) => study.sensitivity(slackTension, x)) as Call],
  ['bounds', { ...given, friction: study.uniform(0.1, 0.18) }, ((x: never) => study.bounds(slackTension, x)) as Call],
  [
    'fit',
    {
      parameters: { friction: 0.2 },
      fixed: { wrapAngle: '1 turn' },
      data: { load: { unit: 'N', values: [100, 200, 300, 400] } },
      measured: { unit: 'N', values: [30, 55, 88, 115] },
    },
    ((x: never) => study.fit(slackTension, x)) as Call,
  ],
  [
    'optimise',
    {
      vary: { friction: { from: 0.1, to: 0.3 } },
      fixed: { load: '500 N', wrapAngle: '1 turn' },
      goals: { minimise: 'result' },
      evaluations: 160,
    },
    ((x: never) => study.optimise(slackTension, x)) as Call,
  ],
  ['readMaterial', writeMaterial(materialByName('ASA')) as unknown as Specification, readMaterial as Call],
  [
    'allowableStress',
    { material: 'PETG', use: { temperature: '40 degC', duration: '30 day', direction: 'acrossLayers', moisture: 'dry', safetyFactor: 2 } },
    ((x: { material: never; use: never }) => allowableStress(materialByName(x.material), x.use)) as Call,
  ],
]

/** Longest processor time of one call, in milliseconds. */
const LONGEST = 2000

/** Spoils each specification `count` times. */
export function fuzzObjects(count: number, seed: number): Fault[] {
  return TARGETS.flatMap(([name, specification, call], index) => {
    const random = randomStream(seed, index)
    const found = new Map<string, Fault>()
    for (let i = 0; i < count; i++) {
      const { value, changes } = mutated(specification, random)
      const what = faultOf(() => call(value as never), LONGEST, notANumber)
      const sort = what?.replace(/[\d.e+-]+/g, '#')
      if (what !== undefined && sort !== undefined && !found.has(sort)) found.set(sort, { where: name, what, given: changes })
    }
    return [...found.values()]
  })
}

/** What each specification gives as it is: a start that is rejected would test nothing. */
export const starts: readonly (readonly [name: string, call: () => unknown])[] = TARGETS.map(([name, specification, call]) => [
  name,
  () => call(structuredClone(specification) as never),
])
