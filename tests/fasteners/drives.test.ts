import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  bearingCap,
  bearingSeat,
  bearingShoulder,
  frictionDrive,
  frictionFaceTorque,
  parallelKey,
  parallelKeySize,
} from '../../src/fasteners/index.js'
import { integrate } from '../../src/numeric/index.js'

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const near = (a: number, b: number, relative: number) =>
  expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)))

describe('bearing seat', () => {
  const seat = {
    outsideDiameter: 0.022,
    racewayDiameter: 0.0196,
    width: 0.006,
    diametralInterference: 30e-6,
    internalClearance: 10e-6,
    innerRacewayGrowth: 0,
    housing: { diameter: 0.032, modulus: 2e9, poissonRatio: 0.38, thermalExpansion: 80e-6 },
    ring: { modulus: 207e9, poissonRatio: 0.3, thermalExpansion: 12e-6 },
    temperatureChange: 0,
    innerRingWarmer: 0,
    swelling: 0,
    transfer: undefined,
    friction: 0.2,
    load: 'stationary' as const,
  }

  test('a softer housing passes less of its fit on; a rigid, thick one all but the ring at most', () => {
    fc.assert(
      fc.property(range(1e8, 1e11), range(1.05, 3), (modulus, stiffer) => {
        const at = (m: number) => bearingSeat.si({ ...seat, housing: { ...seat.housing, modulus: m } })
        const [soft, stiff] = [at(modulus), at(modulus * stiffer)]
        expect(stiff.transfer).toBeGreaterThan(soft.transfer)
        expect(stiff.clearanceLeft).toBeLessThan(soft.clearanceLeft)
        expect(stiff.transfer).toBeLessThan(1.01)
      }),
    )
  })

  test('a seat that grows less than its ring lets go in the cold', () => {
    const stiff = { ...seat, housing: { ...seat.housing, thermalExpansion: 4e-6 } }
    const { releaseChange } = bearingSeat.si(stiff)
    near(releaseChange, -30e-6 / (0.022 * 8e-6), 1e-12)
    expect(Math.abs(bearingSeat.si({ ...stiff, temperatureChange: releaseChange }).diametralInterference)).toBeLessThan(1e-18)
    expect(bearingSeat.si({ ...seat, housing: { ...seat.housing, thermalExpansion: 12e-6 } }).releaseChange).toBe(Number.POSITIVE_INFINITY)
  })

  test('heat loosens a printed seat steadily, and at the release change nothing is left', () => {
    const { releaseChange } = bearingSeat.si(seat)
    const at = (temperatureChange: number) => bearingSeat.si({ ...seat, temperatureChange })
    near(releaseChange, 30e-6 / (0.022 * 68e-6), 1e-12)
    expect(Math.abs(at(releaseChange).diametralInterference)).toBeLessThan(1e-18)
    expect(at(releaseChange + 0.1)).toMatchObject({ seat: 'looseAllowed', pressure: 0, gripTorque: 0, transfer: 0, clearanceLeft: 10e-6 })
    expect(bearingSeat.si({ ...seat, temperatureChange: releaseChange + 0.1, load: 'rotating' }).seat).toBe('ringCreeps')
    fc.assert(
      fc.property(range(0, 18), range(0.01, 1), (change, more) => {
        expect(at(change + more).gripTorque).toBeLessThan(at(change).gripTorque)
      }),
    )
  })

  test('a measured transfer takes the place of the rings', () => {
    near(bearingSeat.si({ ...seat, transfer: 0.5 }).clearanceLeft, -5e-6, 1e-9)
    expect(bearingSeat.si({ ...seat, transfer: 0.5 }).clearance).toBe('preloaded')
  })

  test('a raceway wider than the ring, a housing narrower than it', () => {
    const given = { ...seat, housing: { diameter: '20 mm', modulus: '2 GPa', poissonRatio: 0.38, thermalExpansion: '80 ppm/K' } } as const
    const quantities = {
      outsideDiameter: '22 mm',
      racewayDiameter: '23 mm',
      width: '6 mm',
      diametralInterference: '30 um',
      internalClearance: '10 um',
      housing: given.housing,
      ring: {},
      temperatureChange: '0 K',
      friction: 0.2,
      load: 'rotating',
    } as const
    expect(() => bearingSeat(quantities)).toThrow(/racewayDiameter is '23 mm'; must be smaller than the outside diameter/)
    expect(() => bearingSeat(quantities)).toThrow(/housing .*must be wider than the bearing/)
  })
})

describe('axial retention of a bearing', () => {
  const lip = { seatDiameter: 0.022, contactDiameter: 0.021, lipBore: 0.019, thickness: 0.003 }
  const strengths = { compressiveStrength: 40e6, shearStrength: 10e6, bendingStrength: 30e6 }

  test('at its capacity just one stress of the lip is at its strength, none beyond', () => {
    fc.assert(
      fc.property(range(0.0005, 0.01), range(0.015, 0.0205), range(1e6, 1e8), (thickness, lipBore, shearStrength) => {
        const x = { ...lip, ...strengths, thickness, lipBore, shearStrength, clampLoad: 0 }
        const { capacity } = bearingShoulder.si({ ...x, thrust: 1 })
        const full = bearingShoulder.si({ ...x, thrust: capacity })
        const uses = [full.pressure / 40e6, full.shearStress / shearStrength, full.bendingStress / 30e6]
        near(Math.max(...uses), 1, 1e-12)
        near(bearingShoulder.si({ ...x, clampLoad: capacity / 2, thrust: capacity / 2 }).reserve, 1, 1e-12)
      }),
    )
  })

  test('at its capacity the cap is about to lift or a screw is full', () => {
    fc.assert(
      fc.property(range(10, 2000), range(0.01, 0.95), range(1.01, 5), (clampLoad, loadFactor, reserve) => {
        const x = { screws: 4, clampLoad, loadFactor, screwCapacity: clampLoad * reserve }
        const { capacity, governedBy } = bearingCap.si({ ...x, thrust: 1 })
        const full = bearingCap.si({ ...x, thrust: capacity * (1 - 1e-9) })
        if (governedBy === 'screws') near(full.screwLoad, x.screwCapacity, 1e-8)
        else expect(full.faceLoad).toBeLessThan(1e-6 * clampLoad)
        expect(full.state).toBe('closed')
      }),
    )
  })
})

describe('drives', () => {
  test('both spreads of load on a ring are the integral of friction over it', () => {
    fc.assert(
      fc.property(range(0, 0.9), (bore) => {
        const x = { clampLoad: 100, friction: 0.2, outerDiameter: 2, innerDiameter: 2 * bore }
        const ring = (pressure: (r: number) => number) => {
          const load = integrate((r) => pressure(r) * r, bore, 1)
          return (100 * 0.2 * integrate((r) => pressure(r) * r * r, bore, 1)) / load
        }
        near(
          frictionFaceTorque.si({ ...x, pressure: 'uniform' }),
          ring(() => 1),
          1e-9,
        )
        near(
          frictionFaceTorque.si({ ...x, pressure: 'worn' }),
          ring((r) => 1 / Math.max(r, 1e-300)),
          1e-9,
        )
      }),
    )
  })

  const face = { outerDiameter: 0.02, innerDiameter: 0.01, friction: 0.2, surface: 'printed' as const, allowablePressure: 20e6 }

  test('more clamp load drives more until it crushes the print', () => {
    fc.assert(
      fc.property(range(10, 4000), range(1.01, 1.5), (clampLoad, more) => {
        const x = { faces: [face, face], path: 'inParallel' as const, torque: 1 }
        near(
          frictionDrive.si({ ...x, clampLoad: clampLoad * more }).slipTorque,
          more * frictionDrive.si({ ...x, clampLoad }).slipTorque,
          1e-12,
        )
      }),
    )
    expect(frictionDrive.si({ faces: [face], path: 'inParallel', torque: 0.1, clampLoad: 6000 }).state).toBe('facesCrushed')
    expect(frictionDrive.si({ faces: [face], path: 'inParallel', torque: 0, clampLoad: 0 }).state).toBe('keyNeeded')
  })

  const key = {
    torque: '1 N m',
    direction: 'reversing',
    shaftDiameter: '10 mm',
    length: '12 mm',
    hub: { material: 'printed', outerDiameter: '24 mm', bearingStrength: '30 MPa', tensileStrength: '12 MPa' },
    shaftBearingStrength: '300 MPa',
    keyShearStrength: '200 MPa',
  } as const

  test('a key taken from the table, and what it warns of in a print', () => {
    const { width, height, shaftDepth, hubDepth } = parallelKeySize('4x4')
    const made = parallelKey({ ...key, width, height, shaftDepth, hubDepth })
    expect(made.reserve.notes?.[0]?.text).toContain('beats its way loose')
    expect(made.governedBy).toBe('hubCrushing')
    expect(() => parallelKeySize('4x5')).toThrow(/must be a parallel key: near it are .*4x4/)
  })

  test('a hub without a wall over the keyway, a keyway too shallow', () => {
    const sizes = { width: '4 mm', height: '4 mm', shaftDepth: '2.5 mm', hubDepth: '1.8 mm' } as const
    const thin = { ...key.hub, outerDiameter: '13 mm' } as const
    expect(() => parallelKey({ ...key, ...sizes, hub: thin })).toThrow(/hub .*must leave a wall over the keyway/)
    expect(() => parallelKey({ ...key, ...sizes, hubDepth: '1 mm' })).toThrow(
      /hubDepth is '1 mm'; must be at least the part of the key that is outside/,
    )
    expect(() => frictionDrive({ clampLoad: '1 kN', faces: [], path: 'inParallel', torque: '1 N m' })).toThrow(/faces/)
  })
})
