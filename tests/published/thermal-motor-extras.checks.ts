import type { Source } from '../../src/formula/index.js'
import { motorsOnPlate, noLoadOnePoint, rippleIronLoss, windingHotSpot } from '../../src/thermal/index.js'
import oracle from '../oracles/thermal-motor-extras.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/thermal-motor-extras.py` })
const switched = by('bridge followed in time, eddy currents as resistors')
const marched = by('mounting faces as stores, marched in time')

const motors = [
  {
    torque: '0.3 N m',
    backEmfConstant: '0.0955 V s/rad',
    terminalResistance: '0.2 ohm',
    otherLoss: '0.3 W',
    windingToMount: '1.5 K/W',
    canToAir: '30 mW/K',
  },
  { torque: '0.22 N m', backEmfConstant: '0.0955 V s/rad', terminalResistance: '0.2 ohm', windingToMount: '1.5 K/W', canToAir: '30 mW/K' },
  {
    torque: '0.1 N m',
    backEmfConstant: '0.12 V s/rad',
    magnetCoefficient: '-0.12 %/K',
    terminalResistance: '0.35 ohm',
    otherLoss: '0.1 W',
    windingToMount: '2 K/W',
  },
] as const
const kelvinPerWatt = (rows: readonly number[]) => rows.map((r) => [r, 'K/W'] as const)
const balanced = (expected: { mounts: string[]; windings: string[]; losses: string[] }) => ({
  mounts: expected.mounts.map((t) => printed(t, 'degC')),
  windings: expected.windings.map((t) => printed(t, 'degC')),
  losses: expected.losses.map((p) => printed(p, 'W')),
  state: 'steady' as const,
})

export const checks: Check[] = [
  ...published(
    rippleIronLoss,
    ...(['low', 'high'] as const).flatMap((voltage) =>
      (['turning', 'still'] as const).map((rotor) => ({
        what: `${voltage} voltage, ${rotor}`,
        given: {
          supplyVoltage: '24 V' as const,
          phaseVoltage: voltage === 'low' ? ('1.2 V' as const) : ('11 V' as const),
          backEmfConstant: '0.08 V s/rad' as const,
          viscousDrag: '2e-5 N m s/rad' as const,
          rotor,
        },
        gives: { rippleVoltage: printed(oracle[voltage][rotor][0], 'V'), loss: printed(oracle[voltage][rotor][1], 'W') },
        source: switched,
      })),
    ),
  ),
  ...published(
    windingHotSpot,
    ...(['layer', 'roundBundle'] as const).map((shape) => ({
      what: shape,
      given: { loss: '1 W' as const, meanToSurface: '1 K/W' as const, shape, insulationClass: 'F' as const },
      gives: { hottestRise: printed(oracle.spot[shape], 'K') },
      source: by('finite differences'),
    })),
  ),
  ...published(
    motorsOnPlate,
    {
      what: 'one',
      given: { motors: [motors[0]], plateResistances: kelvinPerWatt([6]), air: '40 degC' },
      gives: balanced(oracle.alone),
      source: marched,
    },
    {
      what: 'two',
      given: { motors: motors.slice(0, 2), plateResistances: kelvinPerWatt([6, 2.5, 2.5, 6.5]), air: '40 degC' },
      gives: balanced(oracle.pair),
      source: marched,
    },
    {
      what: 'three',
      given: { motors, plateResistances: kelvinPerWatt([6, 2.5, 1, 2.5, 6.5, 1.5, 1, 1.5, 7]), air: '25 degC' },
      gives: balanced(oracle.three),
      source: marched,
    },
  ),
  ...published(
    noLoadOnePoint,
    ...(
      [
        ['half', '1200 rpm'],
        ['twice', '4800 rpm'],
      ] as const
    ).map(([name, speed]) => ({
      what: `${name} the measured speed`,
      given: { measuredSpeed: '2400 rpm' as const, measuredLoss: '11.95 W' as const, speed },
      gives: { typical: printed(oracle[name].constant, 'W'), low: printed(oracle[name].low, 'W'), high: printed(oracle[name].high, 'W') },
      source: by('scan of all splits'),
    })),
  ),
]
