// Where notes begin, and results that other tests only use.
import { describe, expect, test } from 'vitest'
import type { OdeSolution } from '../../src/numeric/index.js'
import { BandedMatrix } from '../../src/thermal/banded.js'
import { extremesOf } from '../../src/thermal/course-extremes.js'
import {
  airProperties,
  cooledSurface,
  motorMount,
  motorsOnPlate,
  naturalConvection,
  plateStore,
  rayleighNumber,
  ringsOnPlate,
} from '../../src/thermal/index.js'
import { readLosses } from '../../src/thermal/network-losses.js'
import type { NetworkNumbers } from '../../src/thermal/network-numbers.js'
import { courseShifts, unshifted } from '../../src/thermal/network-spread.js'
import type { Issue } from '../../src/units/index.js'
import { demoMotor, demoSpecification } from './demo.js'

test('air has no note from −20 to 140 °C', () => {
  for (const temperature of ['-20 degC', '140 degC'] as const) expect(airProperties({ temperature }).conductivity.notes).toBeUndefined()
  for (const temperature of ['-20.1 degC', '140.1 degC'] as const)
    expect(airProperties({ temperature }).conductivity.notes?.[0]?.text).toContain('from −20 to 140 °C')
})

describe('still air', () => {
  test('a surface as warm as the air has the coefficient of the least difference, and a colder one sheds by its own film', () => {
    const plate = { surface: 'verticalPlate', length: 0.1, airTemperature: 300, pressure: 101325, tilt: 0 } as const
    const at = (surfaceTemperature: number) => naturalConvection.si({ ...plate, surfaceTemperature })
    expect(at(300).coefficient).toBeGreaterThan(0)
    expect(at(300).coefficient / at(300.001).coefficient).toBeCloseTo(1, 9)
    for (const surface of [250, 350]) {
      const { rayleigh } = rayleighNumber.si({ surface, air: 300, length: 0.1, pressure: 101325 })
      expect(at(surface).rayleigh / rayleigh).toBeCloseTo(1, 12)
    }
  })

  test('a pipe in still air sheds by free convection alone', () => {
    const pipe = { area: '0.01 m^2', shape: 'horizontalCylinder', length: '40 mm', emissivity: 0 } as const
    const [convection, ...others] = cooledSurface('pipe', { ...pipe, surroundings: { air: '25 degC' } })
    const free = {
      surface: 'horizontalCylinder',
      length: 0.04,
      surfaceTemperature: 298.2,
      airTemperature: 298.15,
      pressure: 101325,
      tilt: 0,
    } as const
    const conductance = (convection as unknown as { conductance: (surface: number) => number }).conductance(298.2)
    expect(conductance / (0.01 * naturalConvection.si(free).coefficient)).toBeCloseTo(1, 12)
    expect(others).toEqual([])
  })

  test('a surface that radiates has a link for it', () => {
    const plate = { area: '0.01 m^2', shape: 'plateUp', length: '40 mm', emissivity: 0.9, surroundings: { air: '25 degC' } } as const
    const links = cooledSurface('plate', plate)
    expect(links.map(({ name }) => name)).toEqual(['plate convection', 'plate radiation'])
    // Four times the black body's law at one temperature on both sides: 4 ε σ T³ A.
    const radiation = (links[1] as unknown as { conductance: (surface: number, seen: number) => number }).conductance(300, 300)
    expect(radiation).toBeCloseTo(4 * 0.9 * 5.670374419e-8 * 300 ** 3 * 0.01, 12)
  })

  test('a heat sink between room and boiling has no note on the air of its film', () => {
    const fins = { width: '40 mm', height: '50 mm', finLength: '12 mm', finThickness: '1 mm', fins: 6, baseThickness: '2 mm' } as const
    const mount = motorMount(demoMotor(), { ...demoSpecification, sink: { ...fins, joint: '1 K/W' } })
    const { temperatures, notes } = mount.network({ torque: '0.3 N m' }).steady()
    expect(temperatures.sink!.si).toBeLessThan(373)
    expect(JSON.stringify(notes)).not.toContain('from −20 to 140')
  })
})

describe('motors on a plate', () => {
  const motor = { backEmfConstant: 0.0955, magnetCoefficient: -0.0011, terminalResistance: 0.2, windingToMount: 1.5, canToAir: 0 } as const

  test('a balance above 450 K of rise does not count', () => {
    const at = (otherLoss: number) => motorsOnPlate.si({ motors: [{ ...motor, torque: 0, otherLoss }], plateResistances: [6], air: 300 })
    expect(at(74).state).toBe('steady')
    expect(at(74).mounts[0]).toBeCloseTo(300 + 444, 6)
    expect(at(76).state).toBe('runaway')
  })

  test('one negative resistance among others is an error', () => {
    const each = { torque: '0.2 N m', backEmfConstant: '0.0955 V s/rad', terminalResistance: '0.2 ohm', windingToMount: '1.5 K/W' } as const
    const plateResistances = ['6 K/W', '-1 K/W', '2 K/W', '6 K/W'] as const
    expect(() => motorsOnPlate({ motors: [each, each], plateResistances, air: '25 degC' })).toThrow(/plateResistances .*none negative/)
  })
})

test('a plate that differs from the one before in one size is worked anew', () => {
  const plate = { x: [0.01], y: [0.02], innerRadius: [0.006], outerRadius: [0.0175], width: 0.16, height: 0.12, thickness: 0.003 }
  const rest = {
    conductivity: 167,
    conductivityAcross: undefined,
    motorFaceCoefficient: 10,
    freeFaceCoefficient: 12,
    underMotor: 'covered',
  } as const
  const other = { x: [0.02], y: [0.01], innerRadius: [0.004], outerRadius: [0.02], width: 0.2, height: 0.14, thickness: 0.004 }
  const at = (sizes: typeof plate) => ringsOnPlate.si({ ...sizes, ...rest } as never).resistances[0]!
  for (const name of Object.keys(plate) as (keyof typeof plate)[]) {
    const changed = { ...plate, [name]: other[name] }
    const before = at(plate)
    const after = at(changed)
    at({ ...other, width: 0.3 })
    expect(at(changed), name).toBe(after)
    at({ ...other, width: 0.31 })
    expect(at(plate), name).toBe(before)
    expect(after, name).not.toBe(before)
  }
})

test('cells of a plate are joined alike in either order', () => {
  const [one, other] = [new BandedMatrix(5, 2), new BandedMatrix(5, 2)]
  one.join(1, 3, 0.7)
  other.join(3, 1, 0.7)
  const unit = (k: number) => Float64Array.from({ length: 5 }, (_, i) => (i === k ? 1 : 0))
  for (let k = 0; k < 5; k++) expect(one.times(unit(k))).toEqual(other.times(unit(k)))
  expect(Array.from(one.times(unit(3)))).toEqual([0, -0.7, 0, 0.7, 0])
})

test('the highest value of a probe along a course is that of the course between its steps', () => {
  // One node that warms evenly, and a probe of it that peaks within the second step: sin 2t at π/4.
  const at = (t: number, out = new Float64Array(1)) => out.fill(t)
  const t = Float64Array.of(0, 0.6, 1.2, 1.5)
  const solution = { size: 1, t, tEnd: 1.5, at } as unknown as OdeSolution
  const { highest, highestAt, lowest, integral } = extremesOf(solution, [(y) => Math.sin(2 * y[0]!)])
  expect(highest[0]).toBe(1.5)
  expect(highest[1]).toBeCloseTo(1, 11)
  expect(highestAt[1]).toBeCloseTo(Math.PI / 4, 5)
  expect(lowest[1]).toBe(0)
  expect(integral[1]).toBeCloseTo((1 - Math.cos(3)) / 2, 4)
})

test('the shift of a node that is at rest grows as its own time constant says, however short that is', () => {
  // 1 W through 2 K/W into the air, with a conductance that is a tenth larger; the course lies still from the start.
  const still = (capacity: number): NetworkNumbers => ({
    ...{
      names: ['node'],
      fixedNames: ['air'],
      fixed: Float64Array.of(300),
      capacities: Float64Array.of(capacity),
      notes: [],
      ceiling: 1000,
    },
    links: [{ name: 'film', a: 0, b: 1, g: 0.5, factor: 1 }],
    losses: [{ node: 0, on: [], watts: 1, factor: 1 }],
    spreads: [{ cause: 'film', links: Float64Array.of(0.1), losses: Float64Array.of(0), capacities: Float64Array.of(0) }],
  })
  for (const timeConstant of [0.01, 1000]) {
    const n = still(timeConstant / 2)
    const at = (_: number, out = new Float64Array(1)) => out.fill(302)
    const end = 5 * timeConstant
    const shifts = courseShifts(n, { size: 1, t: Float64Array.of(0, end), tEnd: end, at } as unknown as OdeSolution, unshifted(n))
    // To first order a tenth of the rise, reached exponentially.
    for (const [k, time] of shifts.times.entries())
      expect(Math.abs(shifts.rows[k]![0]![0]! / -0.2 - (1 - Math.exp(-time / timeConstant)))).toBeLessThan(0.01)
  }
})

test('a loss in a node that the network has not is an error', () => {
  const issues: Issue[] = []
  expect(readLosses({ mont: '1 W', can: '2 W' }, ['mount', 'can'], ['mount', 'can', 'air'], 300, issues)).toEqual([
    { node: 1, on: [], watts: 2, factor: 1 },
  ])
  expect(issues.map(({ path, accepts }) => [path, accepts])).toEqual([
    ['nodes.mont.loss', 'must name a node: mount, can; did you mean mount?'],
  ])
})

test('a plate stores heat only from a ring that lies on it', () => {
  const plate = {
    innerRadius: '10 mm',
    width: '90 mm',
    height: '80 mm',
    thickness: '6 mm',
    conductivity: '0.2 W/(m K)',
    time: '60 s',
  } as const
  const store = (outerRadius: '25 mm' | '41 mm', more: object = {}) =>
    plateStore({ ...plate, outerRadius, density: '1200 kg/m^3', specificHeat: '1300 J/(kg K)', ...more })
  expect(store('25 mm').capacity.si).toBeGreaterThan(0)
  expect(() => store('41 mm')).toThrow(/must fit on the plate at its place/)
  expect(() => store('25 mm', { width: '500 mm' })).toThrow(/must be at most five times the width/)
})
