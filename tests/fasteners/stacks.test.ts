import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boltGroupLoads, boltGroupShear, lapShear, pottedFerrule, uniformStackProbability } from '../../src/fasteners/index.js'
import { integrate } from '../../src/numeric/index.js'

const near = (a: number, b: number, relative: number) =>
  expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)))
const range = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('bonds', () => {
  test('shear along a lap adds up to the force, whatever the parts and the temperature', () => {
    fc.assert(
      fc.property(range(1e9, 2e11), range(1e9, 2e11), range(-80, 80), (innerModulus, outerModulus, temperatureChange) => {
        const x = {
          force: 1000,
          width: 0.02,
          overlap: 0.012,
          lap: 'single' as const,
          inner: { thickness: 0.003, modulus: innerModulus, thermalExpansion: 70e-6 },
          outer: { thickness: 0.002, modulus: outerModulus, thermalExpansion: 12e-6 },
          bondThickness: 0.0002,
          shearModulus: 0.6e9,
          temperatureChange,
        }
        const shear = (at: number) => lapShear.si({ ...x, at }).stress
        near(0.02 * integrate(shear, -0.006, 0.006), 1000, 1e-6)
        const { outerEndStress, innerEndStress } = lapShear.si({ ...x, at: 0 })
        expect(Math.abs(shear(0.006) - outerEndStress)).toBeLessThan(1)
        expect(Math.abs(shear(-0.006) - innerEndStress)).toBeLessThan(1)
      }),
      { numRuns: 30 },
    )
  })

  test('a short bond is evenly loaded; a long one is no stronger than its limit', () => {
    const x = {
      force: 150,
      cordDiameter: 0.0016,
      boreDiameter: 0.002,
      cordRigidity: 20000,
      socketRigidity: 1e12,
      shearModulus: 0.5e9,
      shearStrength: 15e6,
      held: 'mouth' as const,
    }
    const short = pottedFerrule.si({ ...x, length: 1e-9 })
    near(short.mouthStress, short.averageStress, 1e-9)
    const long = pottedFerrule.si({ ...x, length: 0.5 })
    near(long.elasticLimit, long.longBondLimit, 1e-9)
    fc.assert(
      fc.property(range(1e-4, 0.1), (length) => {
        const { elasticLimit, plasticLimit } = pottedFerrule.si({ ...x, length })
        expect(elasticLimit).toBeLessThanOrEqual(plasticLimit * (1 + 1e-12))
        expect(elasticLimit).toBeLessThanOrEqual(pottedFerrule.si({ ...x, length: length * 1.1 }).elasticLimit * (1 + 1e-12))
      }),
    )
  })
})

describe('groups and stacks', () => {
  const bolts = fc.array(fc.record({ x: range(-0.1, 0.1), y: range(-0.1, 0.1), area: range(1e-6, 1e-4) }), { minLength: 2, maxLength: 8 })
  const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0)

  test('bolt forces balance the load, and turn with the frame', () => {
    fc.assert(
      fc.property(bolts, range(-500, 500), range(-500, 500), range(-0.2, 0.2), range(0, 6.28), (group, fx, fy, at, angle) => {
        fc.pre(group.some(({ x, y }) => Math.hypot(x - group[0]!.x, y - group[0]!.y) > 1e-2))
        const made = boltGroupShear.si({ bolts: group, forceX: fx, forceY: fy, atX: at, atY: -at, moment: 3 })
        const size = 1e-9 * (1 + made.largest)
        expect(Math.abs(sum(made.alongX) - fx)).toBeLessThan(size)
        expect(Math.abs(sum(made.alongY) - fy)).toBeLessThan(size)
        const moments = group.map(({ x, y }, i) => x * made.alongY[i]! - y * made.alongX[i]!)
        expect(Math.abs(sum(moments) - (at * fy + at * fx + 3))).toBeLessThan(size)
        const turn = (x: number, y: number) =>
          [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)] as const
        const [forceX, forceY] = turn(fx, fy)
        const [atX, atY] = turn(at, -at)
        const turnedGroup = group.map(({ x, y, area }) => ({ x: turn(x, y)[0], y: turn(x, y)[1], area }))
        const turned = boltGroupShear.si({ bolts: turnedGroup, forceX, forceY, atX, atY, moment: 3 })
        for (let i = 0; i < group.length; i++) expect(Math.abs(turned.sizes[i]! - made.sizes[i]!)).toBeLessThan(size)
      }),
    )
  })

  const widestTriangle = (group: readonly { x: number; y: number }[]) =>
    Math.max(
      0,
      ...group.flatMap((a) =>
        group.map((b) => Math.abs((a.x - group[0]!.x) * (b.y - group[0]!.y) - (a.y - group[0]!.y) * (b.x - group[0]!.x))),
      ),
    )

  test('in space they balance force and moment, and do not care where the frame stands', () => {
    const vector = fc.record({ x: range(-300, 300), y: range(-300, 300), z: range(-300, 300) })
    fc.assert(
      fc.property(bolts, vector, vector, range(0, 6.28), range(-1, 1), (group, force, turn, angle, moved) => {
        fc.pre(widestTriangle(group) > 1e-4)
        const at = { x: 0.03, y: -0.02, z: 0.05 }
        const moment = { x: turn.x / 10, y: turn.y / 10, z: turn.z / 10 }
        const made = boltGroupLoads.si({ bolts: group, force, at, moment })
        const size = 1e-6 * (1 + Math.max(...made.tensions.map(Math.abs)))
        expect(Math.abs(sum(made.tensions) - force.z)).toBeLessThan(size)
        const aboutX = moment.x + at.y * force.z - at.z * force.y
        const aboutY = moment.y + at.z * force.x - at.x * force.z
        expect(Math.abs(sum(group.map(({ y }, i) => y * made.tensions[i]!)) - aboutX)).toBeLessThan(size)
        expect(Math.abs(sum(group.map(({ x }, i) => -x * made.tensions[i]!)) - aboutY)).toBeLessThan(size)
        const rotated = <T extends { x: number; y: number }>(v: T): T => ({
          ...v,
          x: v.x * Math.cos(angle) - v.y * Math.sin(angle),
          y: v.x * Math.sin(angle) + v.y * Math.cos(angle),
        })
        const shifted = <T extends { x: number; y: number }>(v: T): T => ({ ...v, x: v.x + moved, y: v.y - moved })
        const there = boltGroupLoads.si({
          bolts: group.map((bolt) => shifted(rotated(bolt))),
          force: rotated(force),
          at: shifted(rotated(at)),
          moment: rotated(moment),
        })
        made.tensions.forEach((tension, i) => {
          expect(Math.abs(there.tensions[i]! - tension)).toBeLessThan(size)
          expect(Math.abs(there.shears[i]! - made.shears[i]!)).toBeLessThan(1e-6 * (1 + made.largestShear))
        })
        expect(made.largestShear).toBe(Math.max(...made.shears))
      }),
    )
  })

  test('the exact stack is even about zero and at most a half above it', () => {
    fc.assert(
      fc.property(fc.array(range(0.1, 1), { minLength: 1, maxLength: 8 }), range(0.001, 3), (tolerances, limit) => {
        const above = uniformStackProbability.si({ tolerances, limit }).exceedance
        const below = 1 - uniformStackProbability.si({ tolerances, limit: -limit }).exceedance
        expect(Math.abs(above - below)).toBeLessThan(1e-9)
        expect(above).toBeGreaterThanOrEqual(-1e-9)
        expect(above).toBeLessThanOrEqual(0.5 + 1e-9)
      }),
    )
  })

  test('beyond all that can add up the chance is nothing, and on the other side all', () => {
    const tolerances = [1e-4, 3e-5, 2e-4]
    for (const limit of [3.3e-4 * (1 + 1e-12), 1, 1e9]) {
      expect(uniformStackProbability.si({ tolerances, limit }).exceedance).toBe(0)
      expect(uniformStackProbability.si({ tolerances, limit: -limit }).exceedance).toBe(1)
    }
    expect(uniformStackProbability.si({ tolerances, limit: 3.2e-4 }).exceedance).toBeGreaterThan(0)
  })

  test('the exact stack stays between the chances of its sure part, however unlike the widths', () => {
    fc.assert(
      fc.property(fc.array(range(-6, 0), { minLength: 1, maxLength: 11 }), range(-0.9, 0.9), (decades, limit) => {
        const small = decades.map((decade) => 10 ** decade * 0.005)
        const spread = sum(small)
        const { exceedance } = uniformStackProbability.si({ tolerances: [1, ...small], limit })
        expect(exceedance).toBeGreaterThanOrEqual((1 - limit - spread) / 2 - 1e-12)
        expect(exceedance).toBeLessThanOrEqual((1 - limit + spread) / 2 + 1e-12)
      }),
    )
  })
})
