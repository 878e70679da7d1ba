import type { Source } from '../../src/formula/index.js'
import { motorOperatingPoint } from '../../src/kinematics/index.js'
import {
  biotNumber,
  discSpreadingEstimate,
  dragLoss,
  electricalPower,
  finCount,
  forcedConvection,
  leadLoss,
  motorTorqueBand,
  noLoadLoss,
  nusseltFlatPlate,
  nusseltVerticalPlateLaminar,
  thermalDiffusivity,
  wireGauge,
} from '../../src/thermal/index.js'
import oracle from '../oracles/thermal-parts.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const by = (model: string): Source => ({ level: 'computed', where: `${model}: tests/oracles/thermal-parts.py` })
const layer = by('similarity solution of the boundary layer')
const terminals = by('current of the motor in time, volts times amperes')
const gauges: Source = { level: 'standard', where: 'ASTM B258 (two reproductions read); annealed copper at 20 °C' }
const code: Source = {
  level: 'standard',
  where: 'NFPA 70, chapter 9, table 8: solid copper at 75 °C, ohm per 1000 ft (read in a reproduction)',
}
const library = (call: string): Source => ({ level: 'referenceLibrary', where: `fluids.core.${call}` })

export const checks: Check[] = [
  ...published(
    biotNumber,
    {
      given: { coefficient: '1000 W/(m^2 K)', length: '1.2 m', conductivity: '300 W/(m K)' },
      gives: { biot: 4.0, state: 'distributed' },
      source: library('Biot'),
    },
    {
      given: { coefficient: '10000 W/(m^2 K)', length: '0.01 m', conductivity: '4000 W/(m K)' },
      gives: { biot: 0.025, state: 'lumped' },
      source: library('Biot'),
    },
  ),
  ...published(thermalDiffusivity, {
    given: { conductivity: '0.02 W/(m K)', density: '1 kg/m^3', specificHeat: '1000 J/(kg K)' },
    gives: '2e-05 m^2/s',
    within: '1e-9 %',
    source: library('thermal_diffusivity'),
  }),
  ...published(nusseltFlatPlate, {
    what: 'laminar, air',
    given: { reynolds: 4e4, prandtl: 0.7 },
    gives: { mean: printed(oracle.flatMean, '1'), trailingEdge: printed(oracle.flatLocal, '1') },
    within: '1 %',
    source: layer,
  }),
  ...published(nusseltVerticalPlateLaminar, {
    what: 'air, Grashof number 5e8',
    given: { rayleigh: 3.6e8, prandtl: 0.72 },
    gives: printed(oracle.vertical, '1'),
    within: '1 %',
    source: layer,
  }),
  ...published(forcedConvection, {
    what: 'plate of 80 mm in air at 3 m/s',
    given: { surface: 'flatPlate', length: '80 mm', speed: '3 m/s', surfaceTemperature: '60 degC', airTemperature: '20 degC' },
    gives: { coefficient: printed(oracle.forced, 'W/(m^2 K)') },
    within: '1 %',
    source: by("boundary layer with Sutherland's laws for air"),
  }),
  ...published(
    wireGauge,
    {
      what: 'gauge 24',
      given: { gauge: 24 },
      gives: { diameter: '0.511 mm', area: '0.205 mm^2', resistancePerLength: '84.2 mohm/m' },
      source: gauges,
    },
    {
      what: 'gauge 12',
      given: { gauge: 12 },
      gives: { diameter: '2.05 mm', area: '3.31 mm^2', resistancePerLength: '5.21 mohm/m' },
      source: gauges,
    },
    { what: 'gauge 0000', given: { gauge: -3 }, gives: { diameter: '11.7 mm', area: '107 mm^2' }, source: gauges },
  ),
  ...published(
    leadLoss,
    ...(
      [
        [4110, '3.07 ohm'],
        [6530, '1.93 ohm'],
      ] as const
    ).map(([mils, resistance]) => ({
      what: `1000 ft of ${mils} circular mils`,
      given: {
        area: [(Math.PI / 4) * mils * 25.4e-6 ** 2, 'm^2'] as const,
        length: '12000 in' as const,
        current: '1 A' as const,
        conductors: 1,
        temperature: '75 degC' as const,
      },
      gives: { resistance },
      source: code,
    })),
  ),
  ...published(
    electricalPower,
    ...(
      [
        ['motoring', '0.8 N m', '120 rad/s', oracle.motoring],
        ['braking', '-0.8 N m', '10 rad/s', oracle.braking],
        ['regenerating', '-0.8 N m', '120 rad/s', oracle.regenerating],
      ] as const
    ).map(([state, torque, speed, { copper, mechanical, electrical }]) => ({
      what: state,
      given: { torque, speed, copperLoss: printed(copper, 'W') },
      gives: { mechanical: printed(mechanical, 'W'), electrical: printed(electrical, 'W'), state },
      source: terminals,
    })),
  ),
  ...published(motorOperatingPoint, {
    given: { torque: '0.8 N m', speed: '120 rad/s', torqueConstant: '0.08 N m/A', resistance: '0.2 ohm' },
    gives: {
      current: printed(oracle.point.current, 'A'),
      voltage: printed(oracle.point.voltage, 'V'),
      mechanicalPower: printed(oracle.motoring.mechanical, 'W'),
      copperLoss: printed(oracle.motoring.copper, 'W'),
      electricalPower: printed(oracle.motoring.electrical, 'W'),
    },
    within: '0.0001 %',
    source: terminals,
  }),
  ...published(noLoadLoss, {
    given: { voltage: '22 V', current: '0.5 A', terminalResistance: '0.18 ohm', speed: '246 rad/s' },
    gives: { loss: printed(oracle.noLoad.loss, 'W'), dragTorque: printed(oracle.noLoad.drag, 'N mm') },
    source: by('back electromotive force by root finding, and its torque'),
  }),
  ...published(dragLoss, {
    given: { constantDrag: '6 mN m', viscousDrag: '4e-5 N m s/rad', speed: '150 rad/s' },
    gives: printed(oracle.drag, 'W'),
    source: by('kinetic energy of a rotor that coasts'),
  }),
  ...published(motorTorqueBand, {
    given: { jointTorque: '5 N m', ratio: 6.2, efficiency: 0.92, backEfficiency: 0.85 },
    gives: {
      raising: printed(oracle.reduction[0], 'N m'),
      frictionless: printed(oracle.reduction[1], 'N m'),
      lowering: printed(oracle.reduction[2], 'N m'),
    },
    source: by('ledger of power through the reduction, by root finding'),
  }),
  ...published(finCount, {
    given: { width: '42 mm', spacing: '3.1 mm', thickness: '1 mm' },
    gives: `${oracle.fins} 1`,
    source: by('fins placed one by one'),
  }),
  ...published(
    discSpreadingEstimate,
    {
      given: { sourceRatio: 0.3, thicknessRatio: 0.2, biot: 0.5 },
      gives: { mean: printed(oracle.disc.mean, '1') },
      within: '10 %',
      source: by('Bessel series (scipy); the estimate claims a tenth'),
    },
    {
      given: { sourceRatio: 0.3, thicknessRatio: 0.2, biot: 0.5 },
      gives: { peak: printed(oracle.disc.peak, '1') },
      within: '33 %',
      source: by('Bessel series (scipy); the estimate claims a third'),
    },
  ),
]
