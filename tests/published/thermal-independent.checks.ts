import type { Source } from '../../src/formula/index.js'
import {
  adiabaticPulse,
  barFin,
  bridgeConductionLoss,
  bridgeSwitchingLoss,
  continuousLoss,
  copperLoss,
  copperLossForTorque,
  copperLossFromRms,
  currentsForTorque,
  halfSpaceSpreading,
  intermittentOverload,
  layerResistance,
  lumpedResponse,
  magnetDerating,
  motorConstant,
  network,
  noLoadSplit,
  phaseLossesAtStall,
  pressureAtAltitude,
  ringArea,
  rmsTorque,
  runawayLoss,
  shellResistance,
  shortTimeOverload,
  steadyWindingTemperature,
  terminalResistance,
  thickBodyFlux,
  timeToLimit,
} from '../../src/thermal/index.js'
import oracle from '../oracles/motion-and-heat-independent.json' with { type: 'json' }
import { type Check, printed, published, publishedValue } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/motion-and-heat-independent.py` })
const waves = by('waves of three phases over a turn')
const marched = by('loss and temperature worked in turn until they settle')
const boundary = by('boundary-value problem (scipy)')
const inTime = by('integration in time (scipy)')

const { machine, bridge, winding, halfSpace } = oracle
const ke = '0.0954929658551 V s/rad'

const motors: Check[] = [
  ...published(currentsForTorque, {
    given: { torque: '0.6 N m', backEmfConstant: ke },
    gives: {
      peakPhase: printed(machine.peak, 'A'),
      rmsPhase: printed(machine.rms, 'A'),
      powerInvariant: printed(machine.invariant, 'A'),
      dcTrapezoidal: printed(machine.direct, 'A'),
    },
    source: waves,
  }),
  ...published(motorConstant, {
    given: { backEmfConstant: ke, terminalResistance: '0.2 ohm' },
    gives: printed(machine.constant, 'N m/W^0.5'),
    source: waves,
  }),
  ...published(copperLoss, {
    given: { peakPhaseCurrent: '7.255197 A', terminalResistance: '0.2 ohm' },
    gives: printed(machine.loss, 'W'),
    source: waves,
  }),
  ...published(copperLossFromRms, {
    given: { rmsPhaseCurrent: '5.130199 A', terminalResistance: '0.2 ohm' },
    gives: printed(machine.loss, 'W'),
    source: waves,
  }),
  ...published(copperLossForTorque, {
    given: { torque: '0.6 N m', motorConstant: '0.2135288 N m/W^0.5' },
    gives: printed(machine.loss, 'W'),
    source: waves,
  }),
  ...published(phaseLossesAtStall, {
    given: { peakPhaseCurrent: '7.255197 A', terminalResistance: '0.2 ohm' },
    gives: { worst: printed(machine.stall, 'W') },
    source: by('the phase with the most over many angles'),
  }),
  ...published(terminalResistance, {
    given: { legResistance: '0.3 ohm', connection: 'delta' },
    gives: { terminal: printed(oracle.delta, 'ohm') },
    source: by('node voltages of three legs (numpy)'),
  }),
  ...published(magnetDerating, {
    given: { backEmfConstant: ke, magnetTemperature: '80 degC' },
    gives: { lossFactor: printed(oracle.magnets, '1') },
    source: waves,
  }),
  ...published(bridgeConductionLoss, {
    given: { peakPhaseCurrent: '7.2552 A', switchResistance: '3 mohm' },
    gives: printed(bridge.conduction, 'W'),
    source: waves,
  }),
  ...published(bridgeSwitchingLoss, {
    given: { peakPhaseCurrent: '7.2552 A', voltage: '24 V', frequency: '24 kHz', riseTime: '20e-3 us', fallTime: '20e-3 us' },
    gives: { edges: printed(bridge.edges, 'W') },
    source: by('every edge integrated, waves of three phases over a turn'),
  }),
  ...published(noLoadSplit, {
    given: { speed1: '100 rad/s', loss1: '3 W', speed2: '200 rad/s', loss2: '8 W' },
    gives: { constantDrag: printed(oracle.split[0], 'N m'), viscousDrag: printed(oracle.split[1], 'N m s/rad') },
    source: { level: 'referenceLibrary', where: 'numpy: linear system (tests/oracles/motion-and-heat-independent.py)' },
  }),
  ...published(rmsTorque, {
    given: { torques: ['1 N m', '0.5 N m', '0 N m'], durations: ['2 s', '3 s', '5 s'] },
    gives: { torque: printed(oracle.rms, 'N m') },
    source: by('integration over the cycle'),
  }),
  ...published(steadyWindingTemperature, {
    given: { lossAt20: '8 W', thermalResistance: '4 K/W', ambient: '25 degC' },
    gives: { temperature: printed(winding[0], 'degC'), loss: printed(winding[1], 'W'), state: 'steady' },
    source: marched,
  }),
  ...published(runawayLoss, { given: { thermalResistance: '4 K/W' }, gives: printed(oracle.runaway, 'W'), source: marched }),
  ...published(continuousLoss, {
    given: { limit: '120 degC', ambient: '25 degC', thermalResistance: '4 K/W' },
    gives: { lossAt20: printed(oracle.continuous, 'W') },
    source: marched,
  }),
  ...published(adiabaticPulse, {
    given: { heatCapacity: '10 J/K', lossAt20: '100 W', from: '20 degC', to: '120 degC' },
    gives: printed(oracle.pulse, 's'),
    source: inTime,
  }),
]

const bodies: Check[] = [
  ...published(ringArea, {
    given: { innerRadius: '6 mm', outerRadius: '17.5 mm' },
    gives: printed(oracle.ringArea, 'mm^2'),
    source: by('sum over narrow rings'),
  }),
  ...published(layerResistance, {
    given: { thickness: '3 mm', conductivity: '0.2 W/(m K)', area: '849.0154 mm^2' },
    gives: printed(oracle.layer, 'K/W'),
    source: boundary,
  }),
  ...published(shellResistance, {
    given: { innerRadius: '25 mm', outerRadius: '30 mm', conductivity: '0.2 W/(m K)', length: '20 mm' },
    gives: printed(oracle.shell, 'K/W'),
    source: boundary,
  }),
  ...published(barFin, {
    given: {
      length: '2.66227766 mm',
      perimeter: '20 mm',
      section: '10 mm^2',
      conductivity: '0.2 W/(m K)',
      coefficient: '10 W/(m^2 K)',
    },
    gives: { efficiency: printed(oracle.fin, '1') },
    source: boundary,
  }),
  ...published(halfSpaceSpreading, {
    given: { radius: '1 m', conductivity: '1 W/(m K)' },
    gives: { isofluxMean: printed(halfSpace[0], 'K/W'), isofluxCentre: printed(halfSpace[1], 'K/W') },
    source: by('potential of every point of the disc, by quadrature'),
  }),
  ...published(thickBodyFlux, {
    given: { flux: '1 kW/m^2', time: '60 s', conductivity: '0.2 W/(m K)', diffusivity: '0.1230769 mm^2/s' },
    gives: printed(oracle.thickBody, 'K'),
    source: by('finite differences in depth, in time by scipy, extrapolated'),
  }),
  ...published(lumpedResponse, {
    given: { initial: '25 degC', final: '200 degC', heatCapacity: '4 J/K', thermalResistance: '0.5 K/W', time: '2.6 s' },
    gives: { temperature: printed(oracle.lumped, 'degC') },
    source: inTime,
  }),
  ...published(shortTimeOverload, {
    given: { loadTime: '10 min', timeConstant: '10 min' },
    gives: { loss: printed(oracle.short, '1') },
    source: inTime,
  }),
  ...published(intermittentOverload, {
    given: { loadTime: '10 min', period: '20 min', timeConstant: '10 min' },
    gives: { loss: printed(oracle.repeated, '1') },
    source: by('cycles marched until they settle'),
  }),
  ...published(
    pressureAtAltitude,
    {
      what: '1500 m',
      given: { altitude: '1500 m' },
      gives: printed(oracle.pressure[0], 'Pa'),
      source: by('weight of the column, ISO 2533 lapse of 6.5 K/km'),
    },
    {
      what: '3000 m',
      given: { altitude: '3000 m' },
      gives: printed(oracle.pressure[1], 'Pa'),
      source: by('weight of the column, ISO 2533 lapse of 6.5 K/km'),
    },
  ),
  ...(['si', 'low', 'high'] as const).map((end, i) =>
    publishedValue(
      'thermal.timeToLimit',
      `time to a rise of 30 K: ${end === 'si' ? 'typical' : end}`,
      () =>
        timeToLimit(
          network({ a: { capacity: '100 J/K', loss: '10 W' }, air: { fixed: '25 degC' } }, [
            { from: 'a', to: 'air', conductance: '0.25 W/K', scatter: 0.2 },
          ]),
          { a: '55 degC' },
        ).time[end],
      printed(oracle.time[i]!, 's'),
      inTime,
      // The course is followed to 5e-6 K a step.
      '0.0003 %',
    ),
  ),
]

export const checks: Check[] = [...motors, ...bodies]
