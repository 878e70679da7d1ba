import type { Source } from '../../src/formula/index.js'
import { brakeResistor, busCapacitance, busVoltageRise } from '../../src/thermal/index.js'
import oracle from '../oracles/thermal-brake.json' with { type: 'json' }
import { type Check, printed, published } from './harness.js'

const integrated: Source = {
  level: 'computed',
  where: 'voltage of the bus integrated over time, C dV/dt = P/V − V/R: tests/oracles/thermal-brake.py',
}

export const checks: Check[] = [
  ...published(
    busVoltageRise,
    {
      what: 'the energy of a landing into the capacitors of four controllers',
      given: { voltage: '22 V', capacitance: '2 mF', energy: '8 J' },
      gives: printed(oracle.landing.voltage, 'V'),
      source: integrated,
    },
    {
      what: 'a little energy into many capacitors',
      given: { voltage: '24 V', capacitance: '4.7 mF', energy: '0.2 J' },
      gives: printed(oracle.little.voltage, 'V'),
      source: integrated,
    },
  ),
  ...published(busCapacitance, {
    what: 'capacitors that end at 30 V',
    given: { voltage: '22 V', highestVoltage: '30 V', energy: '8 J' },
    gives: printed(oracle.capacitance.farad, 'F'),
    source: integrated,
  }),
  ...published(brakeResistor, {
    what: '200 W held at 28 V, a switch of 20 A, a pulse every four seconds',
    given: { onVoltage: '28 V', peakPower: '200 W', energy: '8 J', interval: '4 s', switchCurrent: '20 A' },
    gives: {
      highest: printed(oracle.resistor.highest, 'ohm'),
      lowest: printed(oracle.resistor.lowest, 'ohm'),
      meanPower: printed(oracle.mean, 'W'),
      state: 'fits',
    },
    source: integrated,
  }),
]
