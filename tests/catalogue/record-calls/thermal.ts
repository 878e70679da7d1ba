import * as thermal from '../../../src/thermal/index.js'
import { demoLimits, demoMotor, demoMount, demoSpecification } from '../../thermal/demo.js'
import { one, type RecordCall, several } from './call.js'

const machineOf = {
  speedConstant: '110 rpm/V',
  speedConstantBasis: 'catalogue',
  terminalResistance: '0.18 ohm',
  noLoad: [{ voltage: '22 V', current: '0.5 A', speed: '2350 rpm' }],
  polePairs: 7,
  inertia: '120 g cm^2',
}
const machine = demoMotor()
const mount = demoMount()
const warm = mount.network({ torque: '0.2 N m' })
const cold = mount.network({ torque: '0 N m' })
const box = thermal.network({ box: { capacity: '100 J/K', loss: '5 W' }, air: { fixed: '20 degC' } }, [
  { from: 'box', to: 'air', resistance: '2 K/W', name: 'film', scatter: 0.2 },
])
const fiveNumbers = {
  canDiameter: '63 mm',
  canLength: '32 mm',
  speedConstant: '110 rpm/V',
  terminalResistance: '75 mohm',
  ratedCurrent: '30 A',
} as const
const can63 = thermal.typicalMotor(fiveNumbers)
const limits = demoLimits.map((each) => ({ ...each }))
export const calls: readonly RecordCall[] = [
  one('motor', machineOf, (x) => thermal.motor(x)),
  one(
    'motorMount',
    {
      ...demoSpecification,
      insert: { diameter: '60 mm', thickness: '2 mm' },
      surroundings: { air: '38 degC', airSpeed: '1 m/s' },
    },
    (x) => thermal.motorMount(machine, x),
  ),
  one(
    'motorMount with fins',
    {
      body: demoSpecification.body,
      plate: { ...demoSpecification.plate },
      sink: {
        width: '42 mm',
        height: '42 mm',
        finLength: '12 mm',
        finThickness: '1 mm',
        fins: 6,
        baseThickness: '2 mm',
        joint: '1 K/W',
      },
      surroundings: demoSpecification.surroundings,
    },
    (x) => thermal.motorMount(machine, x),
  ),
  one('motorMount.network', { torque: '0.2 N m', speed: '3 rad/s' }, (x) => mount.network(x)),
  one('motorMount.scaled', { links: {}, capacities: {} }, (x) => mount.scaled(x)),
  one('motorMount.changed', { surroundings: { air: '30 degC' } }, (x) => mount.changed(x)),
  several(
    'network',
    {
      nodes: { chip: { capacity: '4 J/K', loss: '3 W' }, air: { fixed: '30 degC' } },
      links: [{ from: 'chip', to: 'air', resistance: '2 K/W' }],
      options: { ceiling: '500 K' },
    },
    (x) => thermal.network(x.nodes, x.links, x.options),
  ),
  one('network.transient', { duration: '10 min', initial: { box: '30 degC' }, limits: { box: '60 degC' } }, (x) => box.transient(x)),
  one('network.withLosses', { box: '6 W' }, (x) => box.withLosses(x)),
  one('network.scaled', { links: { film: 1.1 }, capacities: { box: 0.9 } }, (x) => box.scaled(x)),
  several('calibrate', { measured: { steady: { box: '31 degC' } }, options: { sensor: '1 K', capacityScatter: 0.2 } }, (x) =>
    thermal.calibrate(box, x.measured, x.options),
  ),
  one('calibrate with a log', { log: { times: ['0 s', '60 s'], temperatures: { box: ['20 degC', '22.7 degC'] } } }, (x) =>
    thermal.calibrate(box, x),
  ),
  several('assessMount', { load: { torque: '0.2 N m' }, limits }, (x) => thermal.assessMount(mount, x.load, x.limits)),
  several('continuousTorque', { limits, options: { speed: '3 rad/s' } }, (x) => thermal.continuousTorque(mount, x.limits, x.options)),
  several('intermittentTorque', { limits, duty: { dutyFactor: 0.5, period: '60 s' } }, (x) =>
    thermal.intermittentTorque(mount, x.limits, x.duty),
  ),
  several('timeAtTorque', { load: { torque: '0.9 N m' }, limits }, (x) => thermal.timeAtTorque(mount, x.load, x.limits)),
  several('checkLimits', { limits: limits.filter(({ node }) => node !== 'hottestPhase') }, (x) =>
    thermal.checkLimits(warm.steady().temperatures as never, x.limits),
  ),
  one('intermittentDuty', { dutyFactor: 0.5, period: '60 s' }, (x) => thermal.intermittentDuty({ load: warm, rest: cold, ...x })),
  one('shortTimeDuty', { loadTime: '60 s', restTime: '600 s' }, (x) => thermal.shortTimeDuty({ load: warm, rest: cold, ...x })),
  several('periodicSteadyState', { first: { duration: '30 s' }, second: { duration: '60 s' } }, (x) =>
    thermal.periodicSteadyState([
      { network: warm, ...x.first },
      { network: cold, ...x.second },
    ]),
  ),
  one('simulateOnce', { duration: '30 s' }, (x) => thermal.simulateOnce([{ network: warm, ...x }])),
  several('timeToLimit', { limit: { box: '25 degC' }, initial: { box: '20 degC' } }, (x) => thermal.timeToLimit(box, x.limit, x.initial)),
  one('timeConstants', { box: '30 degC' }, (x) => thermal.timeConstants(box, x)),
  one('reduceNetwork', { box: '30 degC' }, (x) => thermal.reduceNetwork(box, ['box'], x)),
  several(
    'compareMountRemedies',
    { limits, extra: { name: 'longer', duty: { dutyFactor: 0.5, period: '60 s' } }, at: { torque: '0.2 N m' } },
    (x) => thermal.compareMountRemedies(mount, x.limits, [{ mount, ...x.extra }], x.at),
  ),
  one('standardRemedies', { limits, part: 'plate', by: '20 K' }, (x) => thermal.standardRemedies(mount, x)),
  one('typicalMotor', fiveNumbers, (x) => thermal.typicalMotor(x)),
  one(
    'proposeMount',
    {
      torque: '0.3 N m',
      polymer: { conductivity: '0.2 W/(m K)', density: '1070 kg/m^3', specificHeat: '1300 J/(kg K)', limit: '85 degC' },
      width: '84 mm',
      height: '96 mm',
      thickness: '8 mm',
      air: '30 degC',
    },
    (x) => thermal.proposeMount({ motor: can63, ...x }),
  ),
  one('fitStepResponse', { times: ['0 s', '60 s', '120 s', '240 s'], temperatures: ['20 degC', '30 degC', '35 degC', '38 degC'] }, (x) =>
    thermal.fitStepResponse(x),
  ),
  one(
    'cooledSurface',
    { shape: 'verticalPlate', length: '60 mm', area: '3600 mm^2', emissivity: 0.9, surroundings: { air: '25 degC' } },
    (x) => thermal.cooledSurface('wall', x),
  ),
  one('torqueSpeedLimit', { voltage: '22 V', resistance: '50 mohm' }, (x) => thermal.torqueSpeedLimit(machine, [], x)),
]
