import {
  airProperties,
  continuousTorque,
  intermittentTorque,
  motor,
  motorMount,
  mountPlate,
  network,
  type PartLimit,
  periodicSteadyState,
  ringOnPlate,
  timeAtTorque,
} from '../src/thermal/index.js'
import type { Row } from './harness.js'

const machine = motor({ speedConstant: '110 rpm/V', speedConstantBasis: 'catalogue', terminalResistance: '0.18 ohm' })
const mount = motorMount(machine, {
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
  },
  plate: {
    width: '80 mm',
    height: '80 mm',
    thickness: '7 mm',
    conductivity: '0.2 W/(m K)',
    density: '1070 kg/m^3',
    specificHeat: '1300 J/(kg K)',
  },
  surroundings: { air: '38 degC' },
})
const limits: readonly PartLimit[] = [
  { part: 'plate', node: 'mount', limit: '85 degC' },
  { part: 'magnets', node: 'can', limit: '80 degC' },
]
// Winding, stator, can, mount and the plate's store: five temperatures, films and radiation on plate and can, hot copper.
const load = mount.si.network(0.3, 0)
const rest = mount.si.network(0, 0)
const constant = network(
  {
    winding: { capacity: '23.1 J/K', loss: '6 W' },
    stator: { capacity: '105 J/K', loss: '0.5 W' },
    can: { capacity: '37 J/K' },
    mount: { capacity: '78 J/K' },
    board: { capacity: '13.5 J/K', loss: '0.9 W' },
    air: { fixed: '25 degC' },
  },
  [
    { from: 'winding', to: 'stator', conductance: '1.2 W/K' },
    { from: 'stator', to: 'can', conductance: '0.15 W/K' },
    { from: 'stator', to: 'mount', conductance: '0.25 W/K' },
    { from: 'mount', to: 'board', conductance: '0.02 W/K' },
    { from: 'can', to: 'air', conductance: '0.06 W/K' },
    { from: 'mount', to: 'air', conductance: '0.05 W/K' },
    { from: 'board', to: 'air', conductance: '0.04 W/K' },
  ],
)

const ours = (run: (times: number) => unknown) => ({ name: 'limbwright', run })

export const rows: Row[] = [
  {
    work: 'steady network of five nodes, constant links',
    ours: ours((times) => {
      let sum = 0
      for (let i = 0; i < times; i++) sum += constant.si.steady().T[0]!
      return sum
    }),
    bound: { atMostSeconds: 100e-6 },
  },
  {
    work: 'steady motor on its printed plate: five nodes, films, radiation, hot copper',
    ours: ours((times) => {
      let sum = 0
      for (let i = 0; i < times; i++) sum += load.si.steady().T[0]!
      return sum
    }),
    bound: { atMostSeconds: 100e-6 },
  },
  {
    work: 'an hour of that motor warming, with a limit watched',
    ours: ours((times) => {
      let sum = 0
      for (let i = 0; i < times; i++) sum += load.transient({ duration: '1 h', limits: { mount: '85 degC' } }).peaks.mount!.temperature.si
      return sum
    }),
    bound: { atMostSeconds: 5e-3 },
  },
  {
    work: 'continuous torque of that motor, and what governs',
    ours: ours((times) => {
      let sum = 0
      for (let i = 0; i < times; i++) sum += continuousTorque(mount, limits).torque.si
      return sum
    }),
    bound: { atMostSeconds: 3e-3 },
  },
  {
    work: 'settled cycle of that motor, 3 of 10 minutes under load',
    ours: ours((times) => {
      let sum = 0
      for (let i = 0; i < times; i++)
        sum += periodicSteadyState([
          { network: load, duration: '180 s' },
          { network: rest, duration: '420 s' },
        ]).peaks.mount!.temperature.si
      return sum
    }),
  },
  {
    work: 'time of that motor at 0.7 N m to the first limit, with its band',
    ours: ours((times) => {
      let sum = 0
      for (let i = 0; i < times; i++) sum += timeAtTorque(mount, { torque: '0.7 N m' }, limits).time.high
      return sum
    }),
  },
  {
    work: 'torque of that motor in cycles of 10 minutes, a quarter under load',
    ours: ours((times) => {
      let sum = 0
      for (let i = 0; i < times; i++) sum += intermittentTorque(mount, limits, { dutyFactor: 0.25 }).torque.si
      return sum
    }),
  },
  {
    work: 'printed plate under a ring, built and solved once by finite volumes',
    ours: ours((times) => {
      let sum = 0
      for (let i = 0; i < times; i++)
        sum += mountPlate({
          innerRadius: '6 mm',
          outerRadius: '17.5 mm',
          plateRadius: [45 + 1e-6 * (i % 10), 'mm'],
          thickness: '7 mm',
          conductivity: '0.2 W/(m K)',
          motorFaceCoefficient: '10 W/(m^2 K)',
          freeFaceCoefficient: '10 W/(m^2 K)',
        }).resistance.si
      return sum
    }),
  },
  {
    work: 'ring on a plate by its series',
    ours: ours((times) => {
      let sum = 0
      for (let i = 0; i < times; i++)
        sum += ringOnPlate.si({
          innerRadius: 6e-3,
          outerRadius: 17.5e-3,
          plateRadius: 45e-3,
          thickness: 6e-3,
          conductivity: 0.2,
          motorFaceCoefficient: 10 + 1e-6 * (i % 10),
          freeFaceCoefficient: 10,
          underMotor: 'open',
        }).ring
      return sum
    }),
  },
  {
    work: 'properties of air',
    ours: ours((times) => {
      let sum = 0
      for (let i = 0; i < times; i++) sum += airProperties.si({ temperature: 300 + (i & 63), pressure: 101325 }).conductivity
      return sum
    }),
  },
]
