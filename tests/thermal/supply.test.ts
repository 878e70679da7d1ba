import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { batteryHeat, busPower, runningTime, speedUnderSag, strideCopperLoss } from '../../src/thermal/index.js'
import oracle from '../oracles/thermal-supply.json' with { type: 'json' }

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const bus = { electronics: 10, accepted: 0, brakeResistor: 0 }
const motor = { count: 1, backEmfConstant: 0.08, terminalResistance: 0.2, drag: 0.01 }

describe('bus power', () => {
  test('motors are summed before what flows back is clipped', () => {
    const ideal = { count: 1, backEmfConstant: 0.08, terminalResistance: 0, drag: 0, speed: 1 }
    let [drawn, returned] = [0, 0]
    const count = 20_000
    for (let i = 0; i < count; i++) {
      const x = ((i + 0.5) / count) * 2 * Math.PI
      const motors = [0, 2].map((phase) => ({ ...ideal, torque: 5 + 20 * Math.sin(x + phase) }))
      const { power } = busPower.si({ ...bus, electronics: 0, motors })
      drawn += Math.max(0, power) / count
      returned += Math.max(0, -power) / count
    }
    expect(drawn).toBeCloseTo(Number(oracle.summed.drawn), 4)
    expect(returned).toBeCloseTo(Number(oracle.summed.returned), 4)
  })

  test('power is conserved: drawn = mechanical + heat + electronics, and what flows back goes somewhere', () => {
    const one = fc.record({ torque: within(-1, 1), speed: within(-90, 90) })
    fc.assert(
      fc.property(fc.array(one, { maxLength: 6 }), within(0, 40), within(0, 40), (drives, accepted, brakeResistor) => {
        const motors = drives.map((drive) => ({ ...motor, ...drive }))
        const y = busPower.si({ motors, electronics: 10, accepted, brakeResistor })
        const mechanical = motors.reduce((sum, { torque, speed }) => sum + torque * speed, 0)
        expect(y.power).toBeCloseTo(mechanical + y.motorHeat + 10, 9)
        const back = Math.max(0, -y.power)
        expect(y.intoBattery + y.intoResistor).toBeLessThanOrEqual(back)
        expect(y.state).toBe(y.power >= 0 ? 'draws' : accepted + brakeResistor >= back ? 'taken' : 'voltageRises')
      }),
    )
  })

  test('more motors at once sag the bus more, down to brown-out', () => {
    const given = {
      openCircuitVoltage: 24,
      batteryResistance: 0.1,
      torque: 1,
      backEmfConstant: 0.08,
      terminalResistance: 0.12,
      electronics: 10,
    }
    const speeds = [1, 2, 4, 8, 18, 20].map((motors) => speedUnderSag.si({ ...given, motors }))
    expect(speeds.map(({ speed }) => speed)).toEqual(speeds.map(({ speed }) => speed).toSorted((a, b) => b - a))
    expect(speeds.map(({ state }) => state)).toEqual(['turns', 'turns', 'turns', 'turns', 'brownOut', 'brownOut'])
    expect(speedUnderSag.si({ ...given, motors: 1, terminalResistance: 2 })).toMatchObject({ state: 'stalled', speed: 0 })
  })
})

describe('battery', () => {
  test('the mean square is never below the square of the mean', () => {
    const part = fc.record({
      current: within(-30, 30),
      share: within(0, 0.3),
      course: fc.constantFrom('constant' as const, 'halfSine' as const),
    })
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 3 }), (parts) => {
        expect(batteryHeat.si({ resistance: 0.1, parts }).overMean).toBeGreaterThanOrEqual(1)
      }),
    )
    expect(() =>
      batteryHeat({
        resistance: '0.1 ohm',
        parts: [
          { current: '1 A', share: 0.7 },
          { current: '1 A', share: 0.7 },
        ],
      }),
    ).toThrow(/parts.*add up to 1 at most/s)
  })

  test('standing shortens the way, and a part that the battery cannot deliver is a brown-out', () => {
    const cells = { energy: 288_000, usable: 0.8, openCircuitVoltage: 24, resistance: 0.1 }
    const at = (walking: number) =>
      runningTime.si({
        ...cells,
        parts: [
          { power: 100, share: walking, speed: 0.4 },
          { power: 40, share: 1 - walking, speed: 0 },
        ],
      })
    const ranges = [0, 0.25, 0.5, 0.75, 1].map((walking) => at(walking).range)
    expect(ranges).toEqual(ranges.toSorted((a, b) => a - b))
    expect(runningTime.si({ ...cells, parts: [{ power: 1500, share: 1, speed: 1 }] })).toMatchObject({
      state: 'brownOut',
      time: 0,
      range: 0,
    })
    expect(runningTime.si({ ...cells, parts: [{ power: 0, share: 1, speed: 0 }] })).toMatchObject({
      state: 'holds',
      range: 0,
      time: Number.POSITIVE_INFINITY,
    })
  })

  test('twelve motors over a stride', () => {
    const given = { dutyFactor: 0.6, ratio: 6, backEmfConstant: 0.08, terminalResistance: 0.2 }
    const legs = [
      [4, 0.5],
      [3, 0.8],
      [3, 0.3],
    ] as const
    const copper = legs.reduce(
      (sum, [stancePeak, swingTorque]) => sum + 4 * strideCopperLoss.si({ ...given, stancePeak, swingTorque }).loss,
      0,
    )
    expect(copper).toBeCloseTo(Number(oracle.stride.copper), 5)
  })
})
