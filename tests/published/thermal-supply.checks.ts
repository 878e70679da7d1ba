import type { Source } from '../../src/formula/index.js'
import { batteryHeat, busPower, costOfTransport, runningTime, speedUnderSag, strideCopperLoss, supplySag } from '../../src/thermal/index.js'
import oracle from '../oracles/thermal-supply.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/thermal-supply.py` })
const terminals = by('volts times amperes at the terminals of each motor')
const fixedPoint = by('fixed point of the bus voltage')
const integrated = by('integration over time')

const motor = { backEmfConstant: '0.08 V s/rad', terminalResistance: '0.2 ohm', drag: '10 mN m' } as const
const battery = { openCircuitVoltage: '24 V', resistance: '0.1 ohm' } as const
const cells = { energy: '80 W h', usable: 0.8, ...battery } as const
const { bus, down, sag, pulse, mixed, walking, mission, transport, knee, hip, sideways } = oracle

export const checks: Check[] = [
  ...published(
    busPower,
    {
      what: 'twelve motors, four of them driven back',
      given: {
        motors: [
          { count: 4, torque: '0.4 N m', speed: '30 rad/s', ...motor },
          { count: 4, torque: '0.6 N m', speed: '-20 rad/s', ...motor },
          { count: 4, torque: '-0.2 N m', speed: '50 rad/s', ...motor },
        ],
        electronics: '10 W',
      },
      gives: { power: printed(bus.power, 'W'), motorHeat: printed(bus.motorHeat, 'W'), state: 'draws' },
      source: terminals,
    },
    {
      what: 'a robot that is lowered, 50 W into the battery and a resistor of 20 W',
      given: {
        motors: [{ count: 4, torque: '0.5 N m', speed: '-60 rad/s', ...motor }],
        electronics: '10 W',
        accepted: '50 W',
        brakeResistor: '20 W',
      },
      gives: {
        power: printed(down.power, 'W'),
        motorHeat: printed(down.motorHeat, 'W'),
        intoBattery: '50.00 W',
        intoResistor: '20.00 W',
        state: 'voltageRises',
      },
      source: terminals,
    },
  ),
  ...published(supplySag, {
    what: 'bus of twelve motors',
    given: { ...battery, power: printed(bus.power, 'W') },
    gives: { voltage: printed(bus.voltage, 'V'), current: printed(bus.current, 'A'), mostPower: printed(bus.most, 'W'), state: 'holds' },
    source: fixedPoint,
  }),
  ...published(speedUnderSag, {
    what: 'four motors at 1 N m',
    given: {
      openCircuitVoltage: '24 V',
      batteryResistance: '0.1 ohm',
      motors: 4,
      torque: '1 N m',
      backEmfConstant: '0.08 V s/rad',
      terminalResistance: '0.12 ohm',
      electronics: '10 W',
    },
    gives: { speed: printed(sag.speed, 'rad/s'), busVoltage: printed(sag.voltage, 'V'), state: 'turns' },
    source: fixedPoint,
  }),
  ...published(
    batteryHeat,
    {
      what: 'half-sine pulses of 20 A, half of the time',
      given: { resistance: '0.1 ohm', parts: [{ current: '20 A', share: 0.5, course: 'halfSine' }] },
      gives: {
        heat: printed(pulse.heat, 'W'),
        meanCurrent: printed(pulse.mean, 'A'),
        rmsCurrent: printed(pulse.rms, 'A'),
        overMean: printed(pulse.overMean, '1'),
      },
      source: integrated,
    },
    {
      what: 'a pulse, a constant draw and a return',
      given: {
        resistance: '0.1 ohm',
        parts: [
          { current: '20 A', share: 0.3, course: 'halfSine' },
          { current: '6 A', share: 0.2 },
          { current: '-2 A', share: 0.4 },
        ],
      },
      gives: {
        heat: printed(mixed.heat, 'W'),
        meanCurrent: printed(mixed.mean, 'A'),
        rmsCurrent: printed(mixed.rms, 'A'),
        overMean: printed(mixed.overMean, '1'),
      },
      source: integrated,
    },
  ),
  ...published(
    runningTime,
    {
      what: 'walking all the time',
      given: { ...cells, parts: [{ power: '100 W', share: 1, speed: '0.4 m/s' }] },
      gives: {
        cellPower: printed(walking.cells, 'W'),
        time: printed(walking.time, 's'),
        range: printed(walking.range, 'm'),
        state: 'holds',
      },
      source: fixedPoint,
    },
    {
      what: 'walking half of the time',
      given: {
        ...cells,
        parts: [
          { power: '100 W', share: 0.5, speed: '0.4 m/s' },
          { power: '40 W', share: 0.5 },
        ],
      },
      gives: {
        cellPower: printed(mission.cells, 'W'),
        time: printed(mission.time, 's'),
        range: printed(mission.range, 'm'),
        state: 'holds',
      },
      source: fixedPoint,
    },
  ),
  ...published(
    costOfTransport,
    {
      what: 'robot of 6 kg',
      given: { power: '100 W', mass: '6 kg', speed: '0.4 m/s' },
      gives: { energyPerDistance: printed(transport.perMetre, 'J/m'), costOfTransport: printed(transport.cost, '1') },
      source: by('battery run down step by step; weight lifted over the way for the same energy'),
    },
    {
      what: 'a running robot of 33 kg at 6 m/s, which drew 973 W',
      given: { power: '973 W', mass: '33 kg', speed: '6 m/s' },
      gives: { costOfTransport: 0.5 },
      source: {
        level: 'published',
        where: 'S. Seok and others, Design Principles for Energy Efficient Legged Locomotion, abstract (author copy read)',
      },
    },
  ),
  ...published(
    strideCopperLoss,
    ...(
      [
        ['knee', '4 N m', '0.5 N m', knee],
        ['hip', '3 N m', '0.8 N m', hip],
        ['sideways hip', '3 N m', '0.3 N m', sideways],
      ] as const
    ).map(([what, stancePeak, swingTorque, expected]) => ({
      what,
      given: {
        stancePeak,
        swingTorque,
        dutyFactor: 0.6,
        ratio: 6,
        backEmfConstant: '0.08 V s/rad' as const,
        terminalResistance: '0.2 ohm' as const,
      },
      gives: { loss: printed(expected.loss, 'W'), rmsTorque: printed(expected.rms, 'N m') },
      source: integrated,
    })),
  ),
]
