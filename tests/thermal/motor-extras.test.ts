import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  insulationClasses,
  insulationRises,
  motorsOnPlate,
  noLoadOnePoint,
  noLoadSplit,
  ringsOnPlate,
  rippleIronLoss,
  windingHotSpot,
} from '../../src/thermal/index.js'

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const motor = {
  backEmfConstant: 0.0955,
  magnetCoefficient: -0.0011,
  terminalResistance: 0.2,
  otherLoss: 0,
  windingToMount: 1.5,
  // Without cooling of its own an idle motor is no fin.
  canToAir: 0,
}

describe('motors on one plate', () => {
  test('a second motor warms the first, and motors that have a balance alone may have none together', () => {
    const plate = [6, 2.5, 2.5, 6]
    fc.assert(
      fc.property(within(0, 0.3), within(0, 0.3), (a, b) => {
        const alone = motorsOnPlate.si({ motors: [{ ...motor, torque: a }], plateResistances: [6], air: 300 })
        const both = motorsOnPlate.si({ motors: [a, b].map((torque) => ({ ...motor, torque })), plateResistances: plate, air: 300 })
        expect(both.state).toBe('steady')
        expect(both.mounts[0]!).toBeGreaterThanOrEqual(alone.mounts[0]! - 1e-6)
        // What enters the plate warms it by its own resistances.
        const heats = both.losses
        expect(both.mounts[0]! - 300).toBeCloseTo(6 * heats[0]! + 2.5 * heats[1]!, 6)
      }),
    )
    const hot = { ...motor, torque: 0.6 }
    expect(motorsOnPlate.si({ motors: [hot], plateResistances: [6], air: 300 }).state).toBe('steady')
    expect(motorsOnPlate.si({ motors: [hot, hot], plateResistances: plate, air: 300 })).toEqual({
      mounts: [],
      windings: [],
      losses: [],
      state: 'runaway',
    })
  })

  test('takes the resistances of a plate as they come, and a wrong number of them is refused', () => {
    const plate = ringsOnPlate({
      x: ['-40 mm', '40 mm'],
      y: ['0 mm', '0 mm'],
      innerRadius: ['6 mm', '6 mm'],
      outerRadius: ['17.5 mm', '17.5 mm'],
      width: '160 mm',
      height: '80 mm',
      thickness: '3 mm',
      conductivity: '167 W/(m K)',
      motorFaceCoefficient: '10 W/(m^2 K)',
      freeFaceCoefficient: '10 W/(m^2 K)',
    })
    const each = { torque: '0.2 N m', backEmfConstant: '0.0955 V s/rad', terminalResistance: '0.2 ohm', windingToMount: '1.5 K/W' } as const
    const both = motorsOnPlate({ motors: [each, each], plateResistances: plate.resistances, air: '25 degC' })
    expect(both.mounts[0]!.si).toBeCloseTo(both.mounts[1]!.si, 6)
    expect(() => motorsOnPlate({ motors: [each, each], plateResistances: ['6 K/W'], air: '25 degC' })).toThrow(
      /plateResistances.*square of the number/s,
    )
  })
})

test('one no-load point: every split lies inside the band, and the band closes at the measured speed', () => {
  fc.assert(
    fc.property(within(50, 300), within(0.1, 20), within(0, 1), within(1, 900), (measuredSpeed, measuredLoss, share, speed) => {
      const { low, high, typical } = noLoadOnePoint.si({ measuredSpeed, measuredLoss, speed })
      // A second point of the true motor gives its split.
      const truth = (w: number) => measuredLoss * (share * (w / measuredSpeed) + (1 - share) * (w / measuredSpeed) ** 2)
      const split = noLoadSplit.si({
        speed1: measuredSpeed,
        loss1: measuredLoss,
        speed2: 2 * measuredSpeed,
        loss2: truth(2 * measuredSpeed),
      })
      const loss = split.constantDrag * speed + split.viscousDrag * speed * speed
      expect(loss).toBeGreaterThanOrEqual(low * (1 - 1e-9) - 1e-12)
      expect(loss).toBeLessThanOrEqual(high * (1 + 1e-9) + 1e-12)
      expect(typical === low || typical === high).toBe(true)
    }),
  )
  const far = noLoadOnePoint({ measuredSpeed: '1000 rpm', measuredLoss: '5 W', speed: '4000 rpm' })
  expect(far.high.notes?.map(({ text }) => text).join()).toContain('between a third and three times')
})

test('ripple vanishes without voltage, and a voltage beyond the modulation is refused', () => {
  const given = { supplyVoltage: '24 V', backEmfConstant: '0.08 V s/rad', viscousDrag: '2e-5 N m s/rad', rotor: 'still' } as const
  expect(rippleIronLoss({ ...given, phaseVoltage: '0 V' }).loss.si).toBe(0)
  expect(() => rippleIronLoss({ ...given, phaseVoltage: '14 V' })).toThrow(/phaseVoltage.*over √3/s)
})

test('a hot spot beyond what the classes allow for is an answer', () => {
  const spot = (loss: '20 W' | '24 W', insulationClass: 'B' | 'F' | 'H') =>
    windingHotSpot({ loss, meanToSurface: '1 K/W', shape: 'layer', insulationClass })
  expect([spot('20 W', 'F').state, spot('24 W', 'F').state, spot('24 W', 'H').state]).toEqual([
    'allowedFor',
    'beyondAllowance',
    'allowedFor',
  ])
  // IEC 60085 and IEC 60034-1: 130 − 40 − 80, 155 − 40 − 105 and 180 − 40 − 125 K.
  expect((['B', 'F', 'H'] as const).map((each) => spot('20 W', each).allowance.si)).toEqual(
    [10, 10, 15].map((kelvin) => expect.closeTo(kelvin, 9)),
  )
})

test('a permitted rise over air of 40 °C leaves the hottest spot 5 to 15 K to the limit of its class (IEC 60034-1 beside IEC 60085)', () => {
  const left = (['A', 'E', 'B', 'F', 'H'] as const).map((name) => insulationClasses[name].in('degC') - 40 - insulationRises[name].in('K'))
  for (const [i, kelvin] of [5, 5, 10, 10, 15].entries()) expect(left[i]).toBeCloseTo(kelvin, 9)
})
