import * as kinematics from '../../../src/kinematics/index.js'
import { one, type RecordCall, several } from './call.js'

const point = (x: number, y: number, z: number) => ({ x: `${x} mm`, y: `${y} mm`, z: `${z} mm` }) as const
const xyz = (x: number, y: number, z: number, unit: string) => ({ x: `${x} ${unit}`, y: `${y} ${unit}`, z: `${z} ${unit}` })
const per = (a: string) => ({ sidewaysHip: a, hip: a, knee: a })
const geometry = {
  hipOffset: '58 mm',
  upperLink: '165 mm',
  lowerLink: '180 mm',
  limits: { hip: { lowest: '-80 deg', highest: '70 deg' }, knee: { lowest: '12 deg', highest: '140 deg' } },
} as const
const angles = { sidewaysHip: '0 deg', hip: '-30 deg', knee: '60 deg' } as const
const leg = kinematics.threeJointLeg(geometry)
const pathOf = {
  midStance: point(0, 58, -285),
  stanceSweep: '110 mm',
  stridePeriod: '0.5 s',
  dutyFactor: 0.5,
  lift: '40 mm',
  swing: 'matched',
} as const
const path = kinematics.footPath(pathOf)
const masses = {
  hipLink: { mass: '620 g', centreOfMass: point(0, 35, 0) },
  upperLink: { mass: '340 g', centreOfMass: point(0, 0, -70), inertia: { xx: '900 kg mm^2', yy: '900 kg mm^2', zz: '150 kg mm^2' } },
  lowerLink: { mass: '160 g', centreOfMass: point(0, 0, -85) },
} as const
const dynamics = kinematics.legDynamics(leg, masses)
const coupling = kinematics.driveCoupling({ knee: 'cordFromHip', ratio: 1 })
const rotary = {
  ratio: 6.2,
  efficiency: 0.93,
  backEfficiency: 0.9,
  rotorInertia: '70 kg mm^2',
  motor: { torqueConstant: '0.087 N m/A', resistance: '0.14 ohm', noLoadCurrent: '0.7 A' },
}
const rates = per('2 rad/s')
const limit = { maxRate: '6 rad/s', maxAcceleration: '80 rad/s^2', rampTime: '20 ms' }
const corners = [
  [200, 120],
  [200, -120],
  [-200, 120],
  [-200, -120],
] as const
const feet = corners.map(([x, y]) => ({ at: point(x, y, 0) }))
const places = corners.map(([x, y]) => ({ x: `${x} mm`, y: `${y} mm` }))
const chainOf = {
  screws: [
    { axis: { x: 1, y: 0, z: 0 }, point: point(0, 0, 0) },
    { axis: { x: 0, y: 1, z: 0 }, point: point(0, 58, 0) },
    { axis: { x: 0, y: 1, z: 0 }, point: point(0, 58, -165) },
  ],
  tool: { position: point(0, 58, -345) },
  links: [
    { mass: '1 kg', centreOfMass: point(0, 0, 0), inertia: { xx: '0.01 kg m^2', yy: '0.01 kg m^2', zz: '0.01 kg m^2' } },
    { mass: '1 kg', centreOfMass: point(0, 58, -80), inertia: { xx: '0.01 kg m^2', yy: '0.01 kg m^2', zz: '0.01 kg m^2' } },
    { mass: '1 kg', centreOfMass: point(0, 58, -250), inertia: { xx: '0.01 kg m^2', yy: '0.01 kg m^2', zz: '0.01 kg m^2' } },
  ],
}
const chain = kinematics.chainFromScrews(chainOf as never)
const values = ['0 deg', '20 deg', '40 deg'] as const
const push = { force: xyz(0, 0, 10, 'N'), moment: xyz(0, 0, 0, 'N m') }
const section = kinematics.workspaceSection(leg, {
  y: '58 mm',
  x: { lowest: '-100 mm', highest: '100 mm' },
  z: { lowest: '-330 mm', highest: '-200 mm' },
  step: '10 mm',
})
const strideOf = { load: { mass: '10.5 kg', legShare: 0.25 }, drives: { sidewaysHip: rotary, hip: rotary, knee: rotary } }
export const calls: readonly RecordCall[] = [
  one('threeJointLeg', geometry, (x) => kinematics.threeJointLeg(x)),
  one('threeJointLeg.footPosition', angles, (x) => leg.footPosition(x)),
  one('threeJointLeg.jointPositions', angles, (x) => leg.jointPositions(x)),
  one('threeJointLeg.jointAngles', point(20, 58, -290), (x) => leg.jointAngles(x)),
  one('threeJointLeg.jacobian', angles, (x) => leg.jacobian(x)),
  one('threeJointLeg.torqueFromFootPush', { angles, footPush: xyz(0, 0, -20, 'N') }, (x) => leg.torqueFromFootPush(x)),
  one('threeJointLeg.torqueFromGroundReaction', { angles, groundReaction: xyz(0, 0, 20, 'N') }, (x) => leg.torqueFromGroundReaction(x)),
  one('threeJointLeg.footPushFromTorque', { angles, torque: per('1 N m') }, (x) => leg.footPushFromTorque(x)),
  one('threeJointLeg.footVelocity', { angles, rates }, (x) => leg.footVelocity(x)),
  one('threeJointLeg.jointRates', { angles, footVelocity: xyz(0.1, 0, 0, 'm/s') }, (x) => leg.jointRates(x)),
  one('threeJointLeg.singularity', angles, (x) => leg.singularity(x)),
  one('footPath', pathOf, (x) => kinematics.footPath(x)),
  one('legDynamics', { ...masses, rotors: { hip: { ratio: 6, rotorInertia: '70 kg mm^2' } } }, (x) => kinematics.legDynamics(leg, x)),
  one('legDynamics.inverseDynamics', { angles, rates, accelerations: per('3 rad/s^2'), groundReaction: xyz(0, 0, 20, 'N') }, (x) =>
    dynamics.inverseDynamics(x),
  ),
  one('legDynamics.forwardDynamics', { angles, rates, torque: per('1 N m') }, (x) => dynamics.forwardDynamics(x)),
  one('legDynamics.gravityTorque', angles, (x) => dynamics.gravityTorque(x)),
  one('legDynamics.coriolisTorque', { angles, rates }, (x) => dynamics.coriolisTorque(x)),
  one('legDynamics.massMatrix', angles, (x) => dynamics.massMatrix(x)),
  one('legDynamics.centreOfMass', angles, (x) => dynamics.centreOfMass(x)),
  several('legDynamics.effectiveMass', { given: { angles, direction: { x: 0, y: 0, z: 1 } }, rotors: per('3000 kg mm^2') }, (x) =>
    dynamics.effectiveMass(x.given, { coupling, rotorInertiaAtOutput: x.rotors }),
  ),
  one('legDynamics.effectiveMass through drives', { rotorInertiaAtOutput: per('3000 kg mm^2') }, (x) =>
    dynamics.effectiveMass({ angles, direction: { x: 0, y: 0, z: 1 } }, { coupling, ...x }),
  ),
  one('driveCoupling', { knee: 'cordFromHip', ratio: 1 }, (x) => kinematics.driveCoupling(x)),
  one('driveCoupling.actuatorAngles', angles, (x) => coupling.actuatorAngles(x)),
  one('driveCoupling.jointAngles', angles, (x) => coupling.jointAngles(x)),
  one('driveCoupling.actuatorRates', { angles, rates }, (x) => coupling.actuatorRates(x)),
  one('driveCoupling.actuatorTorques', { angles, torque: per('1 N m') }, (x) => coupling.actuatorTorques(x)),
  one('driveCoupling.jointTorques', { angles, torque: per('1 N m') }, (x) => coupling.jointTorques(x)),
  one('strideDemand', strideOf, (x) => kinematics.strideDemand({ leg, path, dynamics, coupling, ...x })),
  one('strideTable', { rate: '100 Hz', load: strideOf.load }, (x) => kinematics.strideTable({ leg, path, ...x })),
  one('footError', { angles, sources: [{ name: 'encoder', at: 'joint', ...per('0.1 deg') }] }, (x) => kinematics.footError(leg, x)),
  one('footStiffness', { angles, driveStiffness: per('500 N m/rad'), groundReaction: xyz(0, 0, 30, 'N') }, (x) =>
    kinematics.footStiffness(leg, x),
  ),
  one('footSpeedLimit', { angles, rateLimits: rates, direction: { x: 1, y: 0, z: 0 } }, (x) => kinematics.footSpeedLimit(leg, x)),
  one('footPushLimit', { angles, torqueLimits: per('3 N m'), direction: { x: 0, y: 0, z: 1 } }, (x) => kinematics.footPushLimit(leg, x)),
  one('manipulability', angles, (x) => kinematics.manipulability(leg, x)),
  one(
    'workspaceSection',
    { y: '58 mm', x: { lowest: '-50 mm', highest: '50 mm' }, z: { lowest: '-330 mm', highest: '-250 mm' }, step: '10 mm' },
    (x) => kinematics.workspaceSection(leg, x),
  ),
  one('largestStepBox', { leastLift: '20 mm' }, (x) => kinematics.largestStepBox(section, x)),
  one('footErrorChart', { enlarged: 50, ellipses: 4 }, (x) => kinematics.footErrorChart(leg, path, () => new Float64Array(9), x)),
  one('supportPolygon', { feet: places, centreOfMass: point(20, 5, 280), mass: '10.5 kg' }, (x) => kinematics.supportPolygon(x)),
  one('footForces', { feet, friction: 0.5, mass: '10.5 kg', centreOfMass: point(30, 0, 280) }, (x) => kinematics.footForces(x)),
  one(
    'gait',
    {
      feet: places,
      gait: 'walk',
      dutyFactor: 0.8,
      stridePeriod: '1 s',
      forward: '0.15 m/s',
      mass: '10.5 kg',
      centreOfMass: point(0, 0, 280),
    },
    (x) => kinematics.gait(x),
  ),
  one('jointMove', { from: angles, to: { ...angles, knee: '90 deg' }, limits: { sidewaysHip: limit, hip: limit, knee: limit } }, (x) =>
    kinematics.jointMove(x),
  ),
  one('landOnSpringAndDamper', { mass: '10.5 kg', dropHeight: '120 mm', stiffness: '9 N/mm', damping: '150 N s/m' }, (x) =>
    kinematics.landOnSpringAndDamper(x),
  ),
  one(
    'floatingRobot',
    {
      body: { mass: '6 kg', centreOfMass: point(10, 0, 25), inertia: { xx: '0.03 kg m^2', yy: '0.09 kg m^2', zz: '0.1 kg m^2' } },
      legs: [{ at: point(190, 60, 0), ...masses }],
    },
    (x) => kinematics.floatingRobot({ ...x, legs: x.legs.map((each: object) => ({ leg, ...each })) }),
  ),
  one('fourBar', { ground: '60 mm', crank: '20 mm', coupler: '55 mm', rocker: '40 mm' }, (x) => kinematics.fourBar(x)),
  one('fourBar.at', { crankAngle: '40 deg', assembly: 'open' }, (x) =>
    kinematics.fourBar({ ground: '60 mm', crank: '20 mm', coupler: '55 mm', rocker: '40 mm' }).at(x),
  ),
  one('chainFromScrews', chainOf, (x) => kinematics.chainFromScrews(x)),
  one(
    'chainFromDenavitHartenberg',
    { convention: 'modified', rows: [{ a: '0 mm' }, { a: '165 mm' }, { a: '180 mm', type: 'turning' }] },
    (x) => kinematics.chainFromDenavitHartenberg(x),
  ),
  one(
    'serialChain.inverse',
    {
      position: point(20, 58, -300),
      seed: values,
      limits: [
        { lowest: '-1 rad', highest: '1 rad' },
        { lowest: '-2 rad', highest: '2 rad' },
        { lowest: '-2 rad', highest: '2 rad' },
      ],
    },
    (x) => chain.inverse(x),
  ),
  one('serialChain.inverseDynamics', { values, rates: [0, 0, 0], accelerations: [0, 0, 0], toolPush: push }, (x) =>
    chain.inverseDynamics(x),
  ),
  one('serialChain.forwardDynamics', { values, rates: [0, 0, 0], efforts: [0, 0, 0], toolPush: push }, (x) => chain.forwardDynamics(x)),
  one('serialChain.effectiveMass', { x: 0, y: 0, z: 1 }, (x) => chain.effectiveMass(values as never, x)),
]
