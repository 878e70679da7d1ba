import type { Source } from '../../src/formula/index.js'
import {
  backEmfConstant,
  bridgeSwitchingLoss,
  contactConductance,
  hotResistance,
  motorTorqueBand,
  nusseltFlatPlate,
  nusseltPlateUp,
  phaseLossesAtStall,
  polymerLimit,
  speedAtCurrent,
  supplySag,
  torqueConstants,
  windingHeatCapacity,
} from '../../src/thermal/index.js'
import { published } from './harness.js'

const computed = (where: string): Source => ({ level: 'computed', where })
const arithmetic = (where: string): Source => ({ level: 'arithmetic', where })

const BRIDGE = { peakPhaseCurrent: '10 A', voltage: '0 V', frequency: '20 kHz', riseTime: '0 s', fallTime: '0 s' } as const

/** The less usual cases of drive, supply and films: each by hand from the published formula. */
export const checks = [
  ...published(backEmfConstant, {
    what: 'free speed in six-step drive, 100 rpm/V',
    given: { speedConstant: '100 rpm/V', basis: 'noLoadSixStep' },
    gives: { typical: '0.1 V s/rad', low: '0.1 V s/rad', high: '0.1 V s/rad' },
    within: '1e-9',
    source: arithmetic('60/(2π · 100) · π/3 = 0.1'),
  }),
  ...published(backEmfConstant, {
    what: 'catalogue speed constant, 5 % either way',
    given: { speedConstant: '100 rpm/V', basis: 'catalogue' },
    gives: { typical: '0.0954930 V s/rad', low: '0.0907183 V s/rad', high: '0.1002676 V s/rad' },
    source: arithmetic('9.54930/Kv times 0.95 and 1.05'),
  }),
  ...published(torqueConstants, {
    what: 'six-step drive, sinusoidal and flat-topped EMF',
    given: { backEmfConstant: '0.0954929658551 V s/rad' },
    gives: { dcSinusoidal: '0.0911891 N m/A', dcTrapezoidal: '0.0954930 N m/A' },
    source: arithmetic('9.119/Kv and 9.549/Kv'),
  }),
  ...published(hotResistance, {
    what: 'aluminium conductor, 20 to 80 degC',
    given: { resistance: '1 ohm', temperature: '80 degC', conductor: 'aluminium' },
    gives: '1.244898 ohm',
    source: { level: 'standard', where: 'change-of-resistance formula, K = 225.0 (safety-standard excerpt): 305/245' },
  }),
  ...published(phaseLossesAtStall, {
    what: 'a sixth of a turn between two phases',
    given: { peakPhaseCurrent: '10 A', terminalResistance: '0.2 ohm', electricalAngle: '30 deg' },
    gives: { a: '7.5 W', b: '0 W', c: '7.5 W', worst: '7.5 W', timesRotatingShare: '1.5 1' },
    within: '1e-9',
    source: arithmetic('10² · 0.1 times cos² of 30, −90 and 150 degrees'),
  }),
  ...published(windingHeatCapacity, {
    what: '60 g of copper in 10 g of insulation',
    given: { conductorMass: '60 g', insulationMass: '10 g' },
    gives: '35.1 J/K',
    source: arithmetic('60 · 0.385 + 10 · 1.2'),
  }),
  ...published(motorTorqueBand, {
    what: 'a worse efficiency when the load drives',
    given: { jointTorque: '3 N m', ratio: 6, efficiency: 0.95, backEfficiency: 0.8 },
    gives: { raising: '0.526316 N m', frictionless: '0.5 N m', lowering: '0.4 N m' },
    source: arithmetic('power balance, by hand'),
  }),
  ...published(
    bridgeSwitchingLoss,
    {
      what: 'diodes in 100 ns of dead time',
      given: { ...BRIDGE, deadTime: '0.1 us' },
      gives: { deadTime: '0.0611155 W', total: '0.0611155 W' },
      source: arithmetic('3 · 0.8 · 2/π · 10 · 2 · 100 ns · 20 kHz'),
    },
    {
      what: 'six gates of 50 nC',
      given: { ...BRIDGE, gateCharge: '5e-8 C' },
      gives: { gates: '0.06 W' },
      within: '1e-9',
      source: arithmetic('6 · 50 nC · 10 V · 20 kHz'),
    },
    {
      what: 'standing still, 24 V, 20+20 ns, 24 kHz',
      given: {
        ...BRIDGE,
        peakPhaseCurrent: '7.2552 A',
        voltage: '24 V',
        frequency: '24 kHz',
        riseTime: '0.02 us',
        fallTime: '0.02 us',
        rotor: 'still',
      },
      gives: { edges: '0.167160 W' },
      source: arithmetic('½ · 24 · 2 · 7.2552 · 40 ns · 24 kHz: phase currents of 1, ½ and ½ of the peak'),
    },
  ),
  ...published(speedAtCurrent, {
    what: 'with 100 µH and seven pole pairs',
    given: {
      voltage: '24 V',
      backEmfConstant: '0.0954929658551 V s/rad',
      terminalResistance: '0.2 ohm',
      peakPhaseCurrent: '10 A',
      phaseInductance: '100 uH',
      polePairs: 7,
    },
    gives: { speed: '231.46529 rad/s', state: 'turns' },
    source: computed('(R i + ω λ)² + (ω L i)² = V²/3, by bisection'),
  }),
  ...published(supplySag, {
    what: '1500 W of a supply that has 1440 W',
    given: { openCircuitVoltage: '24 V', resistance: '0.1 ohm', power: '1500 W' },
    gives: { voltage: '12 V', current: '120 A', mostPower: '1440 W', state: 'brownOut' },
    within: '1e-9',
    source: arithmetic('maximum power transfer, by hand'),
  }),
  ...published(contactConductance, {
    what: 'air in a gap of twice 2 µm of roughness',
    given: {
      conductivity1: '2 W/(m K)',
      conductivity2: '2 W/(m K)',
      roughness: '2 um',
      slope: 0.1,
      pressure: '0 Pa',
      hardness: '100 MPa',
      gapConductivity: '0.026 W/(m K)',
    },
    gives: { solid: '0 W/(m^2 K)', gap: '6500 W/(m^2 K)', total: '6500 W/(m^2 K)' },
    within: '1e-9',
    source: arithmetic('0.026/4e-6'),
  }),
  ...published(nusseltPlateUp, {
    what: 'turbulent, Ra 1e9',
    given: { rayleigh: 1e9 },
    gives: '150 1',
    within: '1e-9',
    source: arithmetic('0.15 · 1000 (Lloyd & Moran 1974)'),
  }),
  ...published(nusseltFlatPlate, {
    what: 'with transition, Re 1e6, Pr 0.7',
    given: { reynolds: 1e6, prandtl: 0.7 },
    gives: { mean: '1299.485 1' },
    source: arithmetic('(0.037 · 1e6^0.8 − 871) · 0.7^(1/3)'),
  }),
  ...published(
    polymerLimit,
    {
      what: 'deflection under heavy load below the guarded glass transition',
      given: { glassTransition: '105 degC', heatDeflection180: '82 degC', heatDeflection045: '95 degC' },
      gives: { temperature: '82 degC' },
      source: arithmetic('least of 90, 82 and 95, by hand'),
    },
    {
      what: 'light load, a guard of 5 K',
      given: { glassTransition: '105 degC', heatDeflection045: '95 degC', guard: '5 K' },
      gives: { temperature: '95 degC' },
      source: arithmetic('least of 100 and 95, by hand'),
    },
  ),
]
