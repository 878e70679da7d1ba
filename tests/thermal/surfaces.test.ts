import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  airProperties,
  continuousTorque,
  forcedConvection,
  mixedConvection,
  motorMount,
  naturalConvection,
  nusseltCylinderCrossflow,
  nusseltFlatPlate,
  nusseltPlateUp,
  nusseltVerticalPlate,
  plateFinSinkInDraught,
  pressureAtAltitude,
  radiantFlux,
  radiationCoefficient,
} from '../../src/thermal/index.js'
import { convectionAt } from '../../src/thermal/surface.js'
import { demoLimits, demoMotor, demoSpecification } from './demo.js'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const shapes = ['verticalPlate', 'horizontalCylinder', 'plateUp', 'plateDown', 'tiltedPlate'] as const
const free = (surface: (typeof shapes)[number], length: number, surfaceTemperature: number, pressure = 101325, tilt = 0) =>
  naturalConvection.si({ surface, length, surfaceTemperature, airTemperature: 298.15, pressure, tilt })

describe('still air', () => {
  test('heat shed grows with the difference for every shape and size, and goes to nothing with it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...shapes), between(0.01, 0.5), between(0.5, 120), (shape, length, rise) => {
        const heat = (dT: number) => free(shape, length, 298.15 + dT).coefficient * dT
        expect(heat(1.05 * rise)).toBeGreaterThan(heat(rise) * 1.02)
        expect(Math.abs(heat(1e-6))).toBeLessThan(1e-4)
      }),
    )
  })

  test('thin air: laminar films fall with the root of pressure', () => {
    const pressure = pressureAtAltitude.si({ altitude: 3000 })
    // McAdams' fourth-root law goes exactly so; viscosity and density carry it, conductivity does not change.
    expect(free('plateUp', 0.03, 340, pressure).coefficient / free('plateUp', 0.03, 340).coefficient).toBeCloseTo(Math.sqrt(0.69192), 4)
    const [a, b] = [airProperties.si({ temperature: 300, pressure }), airProperties.si({ temperature: 300, pressure: 101325 })]
    expect(a.conductivity).toBe(b.conductivity)
    expect(a.viscosity / b.viscosity).toBeCloseTo(1 / 0.69192, 4)
  })

  test('a plate tilted by nothing is upright, and by sixty degrees weaker', () => {
    expect(free('tiltedPlate', 0.08, 340).coefficient).toBe(free('verticalPlate', 0.08, 340).coefficient)
    expect(free('tiltedPlate', 0.08, 340, 101325, Math.PI / 3).rayleigh / free('verticalPlate', 0.08, 340).rayleigh).toBeCloseTo(0.5, 12)
  })

  test('film properties and expansion at the mean: taken at the air they would be 2 % off at a large difference', () => {
    const { coefficient, rayleigh } = free('verticalPlate', 0.1, 298.15 + 120)
    const cold = airProperties.si({ temperature: 298.15, pressure: 101325 })
    const wrongRayleigh = (((9.80665 / 298.15) * 120 * 1e-3) / cold.viscosity ** 2) * cold.prandtl
    const wrong = (nusseltVerticalPlate.si({ rayleigh: wrongRayleigh, prandtl: cold.prandtl }) * cold.conductivity) / 0.1
    expect(wrongRayleigh).toBeGreaterThan(1.5 * rayleigh)
    expect(Math.abs(wrong / coefficient - 1)).toBeGreaterThan(0.01)
  })

  test('outside the range of a correlation the result says so', () => {
    const board = naturalConvection({ surface: 'plateDown', length: '5 mm', surfaceTemperature: '60 degC', airTemperature: '25 degC' })
    expect(JSON.stringify(board.coefficient.notes)).toContain('1e5')
    expect(JSON.stringify(nusseltPlateUp({ rayleigh: 100 }).notes)).toContain('1e4')
    expect(() => nusseltPlateUp({ rayleigh: 100 }, { strict: true })).toThrow('1e4')
  })
})

describe('moving air', () => {
  test('faster is never weaker, whatever the shape; a laminar plate follows the root of speed', () => {
    fc.assert(
      fc.property(between(0.1, 20), between(0.005, 0.3), (speed, length) => {
        for (const surface of ['flatPlate', 'cylinder'] as const) {
          const at = (v: number) =>
            forcedConvection.si({ surface, length, speed: v, surfaceTemperature: 330, airTemperature: 300, pressure: 101325 })
          expect(at(1.05 * speed).coefficient).toBeGreaterThan(at(speed).coefficient)
        }
      }),
    )
    const at = (reynolds: number) => nusseltFlatPlate.si({ reynolds, prandtl: 0.7 }).mean
    expect(at(4e4) / at(1e4)).toBeCloseTo(2, 12)
    // Mean over local at the end of a laminar plate.
    const { mean, trailingEdge } = nusseltFlatPlate.si({ reynolds: 1e4, prandtl: 0.7 })
    expect(mean / trailingEdge).toBeCloseTo(2, 12)
    expect(nusseltCylinderCrossflow.si({ reynolds: 0, prandtl: 0.7 })).toBeCloseTo(0.3, 12)
  })

  test('a whiff weaker than buoyancy does not cool less than still air; a strong draught is as if alone', () => {
    const where = (airSpeed: number) => ({ air: 298.15, radiant: 298.15, pressure: 101325, airSpeed })
    for (const shape of shapes) expect(convectionAt(shape, 0.05, 340, where(0.001))).toBe(convectionAt(shape, 0.05, 340, where(0)))
    const alone = forcedConvection.si({
      surface: 'cylinder',
      length: 0.05,
      speed: 5,
      surfaceTemperature: 340,
      airTemperature: 298.15,
      pressure: 101325,
    })
    expect(convectionAt('horizontalCylinder', 0.05, 340, where(5))).toBeCloseTo(alone.coefficient, 9)
    // A can that turns: Reynolds number of the speed of its surface, 300 rad/s at 25 mm.
    const { conductivity, viscosity, prandtl } = airProperties.si({ temperature: (340 + 298.15) / 2, pressure: 101325 })
    const spinning = (0.133 * ((300 * 0.025 * 0.05) / viscosity) ** (2 / 3) * Math.cbrt(prandtl) * conductivity) / 0.05
    expect(convectionAt('horizontalCylinder', 0.05, 340, where(0), 0, 300)).toBeCloseTo(spinning, 9)
  })

  test('mixed: between the stronger alone and the sum when they help, none left when equal ones oppose', () => {
    fc.assert(
      fc.property(between(0.1, 100), between(0.1, 100), (forced, natural) => {
        const mixed = mixedConvection.si({ forced, natural, direction: 'assisting' })
        expect(mixed).toBeGreaterThanOrEqual(Math.max(forced, natural))
        expect(mixed).toBeLessThanOrEqual(forced + natural)
        expect(mixedConvection.si({ forced, natural: forced, direction: 'opposing' })).toBe(0)
      }),
    )
  })

  test('a sink in a draught: more air, more heat; fins of worse metal, less', () => {
    const sink = {
      width: '40 mm',
      height: '40 mm',
      finLength: '20 mm',
      finThickness: '1 mm',
      fins: 6,
      baseThickness: '2 mm',
      joint: '1 K/W',
    } as const
    const mountAt = (airSpeed: number, conductivity: number) =>
      motorMount(demoMotor(), {
        ...demoSpecification,
        sink: { ...sink, conductivity: [conductivity, 'W/(m K)'] },
        surroundings: { air: '38 degC', airSpeed: [airSpeed, 'm/s'] },
      })
        .network({ torque: '0.3 N m' })
        .steady().temperatures.mount?.si as number
    expect(mountAt(1, 167)).toBeLessThan(mountAt(0, 167))
    expect(mountAt(4, 167)).toBeLessThan(mountAt(1, 167))
    expect(mountAt(4, 1)).toBeGreaterThan(mountAt(4, 167) + 0.5)
  })
})

describe('fins in a draught', () => {
  const sinkOf = (fins: number) =>
    ({
      width: '42 mm',
      height: '42 mm',
      finLength: '12 mm',
      finThickness: '1 mm',
      fins,
      baseThickness: '2 mm',
      joint: '1 K/W',
    }) as const
  const mountOf = (fins: number) =>
    motorMount(demoMotor(), { ...demoSpecification, sink: sinkOf(fins), surroundings: { air: '38 degC', airSpeed: '2 m/s' } })

  test('gaps that no air can pass cool next to nothing, and the result says so', () => {
    const [open, close, shut] = [12, 20, 30].map((fins) => continuousTorque(mountOf(fins), demoLimits))
    expect(open!.notes.filter(({ text }) => text.includes('gap wide enough'))).toHaveLength(0)
    expect(close!.torque.si).toBeLessThan(open!.torque.si)
    expect(shut!.torque.si).toBeLessThan(close!.torque.si)
    for (const { notes } of [close!, shut!]) expect(notes.some(({ text }) => text.includes('gap wide enough'))).toBe(true)
  })

  test('the heat is never more than the air of the gaps can carry, and more speed never cools less', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 40 }), between(0.3, 8), between(0.003, 0.03), (fins, speed, finLength) => {
        const x = {
          width: 0.05,
          height: 0.04,
          finLength,
          finThickness: 0.001,
          fins,
          conductivity: 167,
          speed,
          surfaceTemperature: 343,
          airTemperature: 311,
          pressure: 101325,
        }
        const { conductance, gapSpeed, spacing } = plateFinSinkInDraught.si(x)
        const { density } = airProperties.si({ temperature: 327, pressure: 101325 })
        // Beside the gaps only the outer faces of the two outer fins count, in the free stream.
        const outer = 2 * 0.04 * (finLength + 0.0005) * forcedConvection.si({ ...x, surface: 'flatPlate', length: 0.04 }).coefficient
        expect(conductance).toBeLessThan(1.01 * density * 1007 * gapSpeed * spacing * finLength * (fins - 1) + outer)
        expect(gapSpeed).toBeLessThan(speed)
        expect(plateFinSinkInDraught.si({ ...x, speed: 1.1 * speed }).conductance).toBeGreaterThan(conductance)
      }),
    )
  })
})

test('radiation: the coefficient times the difference is the flux, exactly, whichever is hotter', () => {
  fc.assert(
    fc.property(between(0.02, 1), between(200, 600), between(200, 600), (emissivity, surface, surroundings) => {
      fc.pre(Math.abs(surface - surroundings) > 0.1)
      const flux = radiantFlux.si({ emissivity, surface, surroundings, viewFactor: 1 })
      const coefficient = radiationCoefficient.si({ emissivity, surface, surroundings, viewFactor: 1 })
      expect(Math.abs((coefficient * (surface - surroundings)) / flux - 1)).toBeLessThan(1e-9)
    }),
  )
})

test('switches whose own heat runs away leave no steady state', () => {
  const controller = { ...demoSpecification.controller, switchResistance: '500 mohm', junctionToBoard: '60 K/W' } as const
  const mount = motorMount(demoMotor(), { ...demoSpecification, controller })
  expect(mount.network({ torque: '0.4 N m' }).steady().state).toBe('runaway')
})
