import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { Property } from '../../src/formula/index.js'
import { motor, torqueSpeedLimit } from '../../src/thermal/index.js'
import { copperLossAt } from '../../src/thermal/motor-currents.js'
import { InputError, Nm } from '../../src/units/index.js'
import { demoMotor } from './demo.js'

const kv100 = { speedConstant: '100 rpm/V', speedConstantBasis: 'spunPeakLineToLine', terminalResistance: '0.2 ohm' } as const

test('whatever convention describes it, it is the same motor', () => {
  const { torqueConstants: k, backEmfConstant } = motor(kv100)
  const same = [
    motor({ backEmfConstant, terminalResistance: '0.2 ohm' }),
    motor({ torqueConstantPeakPhase: k.peakPhase, terminalResistance: '0.2 ohm' }),
    motor({ torqueConstantRmsPhase: k.rmsPhase, terminalResistance: '0.2 ohm' }),
    motor({ torqueConstantPowerInvariant: k.powerInvariant, terminalResistance: '0.2 ohm' }),
    motor({ torqueConstantDc: k.dcTrapezoidal, terminalResistance: '0.2 ohm' }),
  ]
  for (const each of same) expect(each.motorConstant.si).toBeCloseTo(0.2135288, 7)
})

test('0.6 N m costs 7.895684 W cold, 1.2358 times that at 80 °C, more again with warm magnets', () => {
  const { si } = motor(kv100)
  expect(copperLossAt(si, 0.6, 293.15, 293.15)).toBeCloseTo(7.895684, 6)
  expect(copperLossAt(si, 0.6, 353.15, 293.15) / 7.895684).toBeCloseTo(1.235756, 5)
  expect(copperLossAt(si, 0.6, 293.15, 353.15) / 7.895684).toBeCloseTo(1.14632, 4)
})

test('a resistance measured warm is told at 20 °C', () => {
  expect(motor({ ...kv100, terminalResistance: '0.2471512 ohm', resistanceAt: '80 degC' }).terminalResistance.si).toBeCloseTo(0.2, 6)
})

describe('a description that is not one is refused', () => {
  test.each([
    [{ terminalResistance: '0.2 ohm' }, 'give one of'],
    [{ ...kv100, backEmfConstant: '0.1 V s/rad' }, 'speedConstant and backEmfConstant'],
    [{ speedConstant: '100 rpm/V', terminalResistance: '0.2 ohm' }, 'speedConstantBasis'],
    [{ ...kv100, terminalResistance: '0 ohm' }, 'terminalResistance'],
    [{ ...kv100, noLoad: Array.from({ length: 3 }, () => ({ voltage: '22 V', current: '0.5 A', speed: '2000 rpm' })) }, 'one or two'],
    [{ ...kv100, noLoad: [{ voltage: '1 V', current: '6 A', speed: '100 rpm' }] }, 'noLoad[0].current'],
    [
      {
        ...kv100,
        noLoad: [
          { voltage: '22 V', current: '0.5 A', speed: '2000 rpm' },
          { voltage: '24 V', current: '0.3 A', speed: '2200 rpm' },
        ],
      },
      'grows with speed',
    ],
    [{ torqueConstantPeakPhase: 0.08, terminalResistance: '0.2 ohm' }, 'bare number'],
    [{ torqueConstant: '0.08 N m/A', terminalResistance: '0.2 ohm' }, 'torqueConstant'],
  ])('%#', (given, message) => {
    expect(() => motor(given as never)).toThrow(InputError)
    expect(() => motor(given as never)).toThrow(message)
  })
})

describe('torque-speed limit', () => {
  test('without resistance in the supply it is Kv (V − √3/2 R I)', () => {
    const [point] = torqueSpeedLimit(motor(kv100), [Nm(0.826993343)], { voltage: '24 V' })
    expect(point?.speed.in('rpm')).toBeCloseTo(100 * (24 - (Math.sqrt(3) / 2) * 0.2 * 10), 3)
  })

  test('with sag, voltage, power and speed agree with each other', () => {
    const [point] = torqueSpeedLimit(demoMotor(), [Nm(0.5)], { voltage: '22 V', resistance: '0.1 ohm' })
    const current = (point?.power.si as number) / (point?.voltage.si as number)
    expect(22 - 0.1 * current).toBeCloseTo(point?.voltage.si as number, 8)
  })

  test('a drag that grows with speed takes current: the free speed is that of the no-load test', () => {
    const spun = motor({
      backEmfConstant: '0.0868 V s/rad',
      terminalResistance: '0.18 ohm',
      noLoad: [
        { voltage: '11 V', current: '0.3 A', speed: '1190 rpm' },
        { voltage: '22 V', current: '0.4 A', speed: '2390 rpm' },
      ],
    })
    const [free] = torqueSpeedLimit(spun, [Nm(0)], { voltage: '22 V' })
    const { constantDrag, viscousDrag } = spun.si
    expect(viscousDrag).toBeGreaterThan(0)
    const current = (constantDrag + viscousDrag * free!.speed.si) / ((Math.sqrt(3) / 2) * 0.0868)
    expect(free!.speed.si).toBeCloseTo((22 - (Math.sqrt(3) / 2) * 0.18 * current) / 0.0868, 6)
    const copper = 0.75 * current ** 2 * 0.18
    expect(free!.power.si).toBeCloseTo(copper + (constantDrag + viscousDrag * free!.speed.si) * free!.speed.si, 6)
  })

  test('falls with torque, to a stall that is said', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 3, noNaN: true }), fc.double({ min: 0, max: 0.2, noNaN: true }), (torque, resistance) => {
        const supply = { voltage: '22 V', resistance: [resistance, 'ohm'] } as const
        const [a, b] = torqueSpeedLimit(demoMotor(), [Nm(torque), Nm(torque * 1.05)], supply)
        expect(b?.speed.si).toBeLessThanOrEqual(a?.speed.si as number)
        if (a?.state === 'turns') expect(a.voltage.si).toBeLessThanOrEqual(22)
      }),
      { numRuns: 60 },
    )
    const [far] = torqueSpeedLimit(demoMotor(), [Nm(20)], { voltage: '22 V' })
    expect(far?.state).toBe('stalled')
    const [brown] = torqueSpeedLimit(demoMotor(), [Nm(4)], { voltage: '22 V', resistance: '0.5 ohm' })
    expect(brown?.state).toBe('brownOut')
  })
})

test('a catalogue speed constant gives every torque constant its band, and one per phase is √3 between lines', () => {
  const by = (speedConstantBasis: 'catalogue' | 'spunPeakPhase' | 'spunPeakLineToLine') =>
    motor({ speedConstant: '110 rpm/V', speedConstantBasis, terminalResistance: '0.18 ohm' })
  const { torqueConstants, motorConstant, backEmfConstant } = by('catalogue')
  for (const constant of [...Object.values(torqueConstants), motorConstant, backEmfConstant]) {
    expect(constant).toBeInstanceOf(Property)
    const { low, high } = constant as Property
    expect(low / constant.si).toBeCloseTo(0.95, 12)
    expect(high / constant.si).toBeCloseTo(1.05, 12)
  }
  expect(by('spunPeakLineToLine').torqueConstants.peakPhase).not.toBeInstanceOf(Property)
  expect(by('spunPeakPhase').backEmfConstant.si / by('spunPeakLineToLine').backEmfConstant.si).toBeCloseTo(Math.sqrt(3), 12)
})
