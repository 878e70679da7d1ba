import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { looseNutPressure, nutInPocket } from '../../src/fasteners/index.js'

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const nut = { torque: 1, acrossFlats: 0.007, height: 0.003, flats: 6, compressiveStrength: 60e6 }
const bed = { wallModulus: 2e9, wallDepth: 0.004 }

describe('nut in a loose pocket', () => {
  test('clearance raises the pressure and lowers the torque it stands, down to none when it spins', () => {
    fc.assert(
      fc.property(range(0, 1.05e-3), range(1e-6, 1e-4), (clearance, more) => {
        const close = nutInPocket.si({ ...nut, clearance })
        const loose = nutInPocket.si({ ...nut, clearance: clearance + more })
        expect(loose.roundingTorque).toBeLessThan(close.roundingTorque)
        expect(loose.yieldTorque).toBeLessThan(close.yieldTorque)
        expect(loose.cornerPressure).toBeGreaterThan(close.cornerPressure)
        expect(loose.freeAngle).toBeGreaterThan(close.freeAngle)
        expect(close.holdAngle).toBeGreaterThanOrEqual(close.freeAngle)
      }),
    )
    const free = nutInPocket.si({ ...nut, clearance: 1.1e-3 })
    expect(free).toMatchObject({ state: 'spinsFree', roundingTorque: 0, cornerPressure: Number.POSITIVE_INFINITY, contactWidth: 0 })
    expect(nutInPocket.si({ ...nut, torque: 0, clearance: 1.1e-3 }).cornerPressure).toBe(0)
  })

  test('a trace of clearance changes a trace: no jump from the pocket that fits', () => {
    const close = nutInPocket.si({ ...nut, clearance: 0 })
    const trace = nutInPocket.si({ ...nut, clearance: 1e-11 })
    expect(Math.abs(trace.roundingTorque / close.roundingTorque - 1)).toBeLessThan(1e-4)
    expect(Math.abs(trace.cornerPressure / close.cornerPressure - 1)).toBeLessThan(1e-3)
  })

  test('elastic corners press harder with torque and with clearance', () => {
    fc.assert(
      fc.property(range(0.01, 0.4), range(1.01, 1.3), range(1e-6, 3e-4), (torque, more, clearance) => {
        const x = { ...nut, ...bed, torque, clearance }
        const base = looseNutPressure.si(x)
        expect(looseNutPressure.si({ ...x, torque: torque * more }).cornerPressure).toBeGreaterThan(base.cornerPressure)
        expect(looseNutPressure.si({ ...x, clearance: clearance * more }).cornerPressure).toBeGreaterThan(base.cornerPressure)
        expect(base.contactWidth).toBeLessThan(nut.acrossFlats / Math.sqrt(3))
      }),
    )
  })

  test('a stiff wall in a pocket that fits has the plain triangle: 12T over six flats, a², height', () => {
    const { cornerPressure } = looseNutPressure.si({ ...nut, ...bed, wallModulus: 2e15, clearance: 0 })
    expect(Math.abs(cornerPressure / (12 / (6 * (0.007 ** 2 / 3) * 0.003)) - 1)).toBeLessThan(1e-5)
    expect(nutInPocket.si({ ...nut, clearance: 0 }).cornerPressure).toBeCloseTo(12 / (6 * (0.007 ** 2 / 3) * 0.003), 0)
  })

  test('at the first touch nothing presses, and a torque that soft walls cannot hold turns the nut through', () => {
    expect(looseNutPressure.si({ ...nut, ...bed, torque: 0, clearance: 2e-4 })).toMatchObject({ cornerPressure: 0, state: 'elastic' })
    expect(looseNutPressure.si({ ...nut, ...bed, torque: 50, clearance: 2e-4 })).toMatchObject({
      cornerPressure: Number.POSITIVE_INFINITY,
      state: 'turnsThrough',
    })
  })
})

test('the width in touch is what an outline of the turned nut cuts off, and its force has the torque', () => {
  /** Where the flat before a corner crosses the wall above it, measured from the corner along the flat. */
  const cut = (turn: number, clearance: number) => {
    const radius = nut.acrossFlats / Math.sqrt(3)
    const corner = (k: number) => {
      const angle = Math.PI / 3 + (k * Math.PI) / 3 + turn
      return [radius * Math.cos(angle), radius * Math.sin(angle)] as const
    }
    const wall = (nut.acrossFlats + clearance) / 2
    const [from, to] = [corner(0), corner(1)]
    return (nut.acrossFlats / Math.sqrt(3)) * ((from[1] - wall) / (from[1] - to[1]))
  }
  fc.assert(
    fc.property(range(1e-5, 5e-4), range(0.02, 0.6), (clearance, torque) => {
      const { contactWidth, holdAngle, flatForce, cornerPressure } = nutInPocket.si({ ...nut, torque, clearance })
      expect(Math.abs(contactWidth / cut(holdAngle, clearance) - 1)).toBeLessThan(1e-6)
      expect(Math.abs(flatForce / ((cornerPressure * contactWidth * nut.height) / 2) - 1)).toBeLessThan(1e-9)
      const loose = looseNutPressure.si({ ...nut, ...bed, torque: torque / 10, clearance })
      expect(loose.state).not.toBe('turnsThrough')
      expect(Math.abs(loose.contactWidth / cut(loose.turn, clearance) - 1)).toBeLessThan(1e-6)
    }),
  )
})
