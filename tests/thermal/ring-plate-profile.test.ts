import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ringOnPlate, ringPlateProfile } from '../../src/thermal/index.js'
import oracle from '../oracles/thermal-plate-profile.json' with { type: 'json' }

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const anyPlate = fc.record({
  innerRadius: between(0, 0.01),
  outerRadius: between(0.014, 0.022),
  plateRadius: between(0.03, 0.06),
  thickness: between(1e-3, 0.01),
  conductivity: between(0.15, 200),
  motorFaceCoefficient: between(1, 50),
  freeFaceCoefficient: between(1, 50),
  underMotor: fc.constantFrom('covered', 'open'),
})
/** Edges and middles of a number of equal steps. */
const steps = (from: number, to: number, count: number) => ({
  step: (to - from) / count,
  middles: Array.from({ length: count }, (_, i) => from + ((to - from) * (i + 0.5)) / count),
})
/** Integral over a ring of the plate of values at the middles of its steps. */
const over = (middles: readonly number[], step: number, values: readonly number[]) =>
  middles.reduce((sum, radius, i) => sum + 2 * Math.PI * radius * step * values[i]!, 0)

test.each(oracle.plates)('finite volumes: faces of a plate of k $k along, $kz across, t $t, covered $covered', (row) => {
  const found = ringPlateProfile.si({
    innerRadius: row.a1,
    outerRadius: row.a2,
    plateRadius: row.b,
    thickness: row.t,
    conductivity: row.k,
    conductivityAcross: row.kz,
    motorFaceCoefficient: row.h1,
    freeFaceCoefficient: row.h2,
    underMotor: row.covered ? 'covered' : 'open',
    radii: row.radii,
  })
  // The mesh error of the reference, seen as its change between two meshes; where the motor covers its face, the modes that are not coupled leave 0.2 %.
  const within = row.covered ? 2e-3 : row.change
  found.motorFace.forEach((rise, i) => {
    expect(Math.abs(rise / row.motorFace[i]! - 1), `motor face at ${row.radii[i]}`).toBeLessThan(within)
  })
  found.freeFace.forEach((rise, i) => {
    expect(Math.abs(rise / row.freeFace[i]! - 1), `free face at ${row.radii[i]}`).toBeLessThan(within)
  })
})

test('the mean over the ring is the resistance of the plate, as the model of the mount has it', () => {
  fc.assert(
    fc.property(anyPlate, (plate) => {
      const { middles, step } = steps(plate.innerRadius, plate.outerRadius, 400)
      const { motorFace, ring } = ringPlateProfile.si({ ...plate, conductivityAcross: undefined, radii: middles })
      expect(ring).toBe(ringOnPlate.si({ ...plate, conductivityAcross: undefined }).ring)
      const mean = over(middles, step, motorFace) / (Math.PI * (plate.outerRadius ** 2 - plate.innerRadius ** 2))
      expect(Math.abs(mean / ring - 1)).toBeLessThan(1e-3)
    }),
    { numRuns: 25, seed: 16 },
  )
})

test('the films take the one watt that enters', () => {
  fc.assert(
    fc.property(anyPlate, (plate) => {
      const { outerRadius, plateRadius, motorFaceCoefficient, freeFaceCoefficient } = plate
      const [under, outside] = [steps(0, outerRadius, 200), steps(outerRadius, plateRadius, 300)]
      const at = (radii: readonly number[]) => ringPlateProfile.si({ ...plate, conductivityAcross: undefined, radii })
      const [inner, outer] = [at(under.middles), at(outside.middles)]
      const open = plate.underMotor === 'open' ? over(under.middles, under.step, inner.motorFace) : 0
      const motor = open + over(outside.middles, outside.step, outer.motorFace)
      const free = over(under.middles, under.step, inner.freeFace) + over(outside.middles, outside.step, outer.freeFace)
      expect(Math.abs(motorFaceCoefficient * motor + freeFaceCoefficient * free - 1)).toBeLessThan(1e-3)
    }),
    { numRuns: 25, seed: 16 },
  )
})

test('outside the ring both faces fall all the way to the rim', () => {
  fc.assert(
    fc.property(anyPlate, (plate) => {
      const radii = Array.from({ length: 40 }, (_, i) => plate.outerRadius + ((plate.plateRadius - plate.outerRadius) * i) / 39)
      const { motorFace, freeFace, ring } = ringPlateProfile.si({ ...plate, conductivityAcross: undefined, radii })
      // The modes that are cut off or not coupled ripple by this part of the ring's rise.
      const ripple = 3e-4 * ring
      for (let i = 1; i < radii.length; i++) {
        expect(motorFace[i]!).toBeLessThan(motorFace[i - 1]! + ripple)
        expect(freeFace[i]!).toBeLessThan(freeFace[i - 1]! + ripple)
      }
      expect(motorFace.at(-1)!).toBeLessThan(motorFace[0]!)
    }),
    { numRuns: 40, seed: 16 },
  )
})

test('a radius beyond the plate, and no radius, are refused by name', () => {
  const good = {
    innerRadius: '6 mm',
    outerRadius: '17.5 mm',
    plateRadius: '45 mm',
    thickness: '6 mm',
    conductivity: '0.2 W/(m K)',
    motorFaceCoefficient: '10 W/(m^2 K)',
    freeFaceCoefficient: '10 W/(m^2 K)',
  } as const
  expect(ringPlateProfile({ ...good, radii: ['17.5 mm', '45 mm'] }).motorFace[0]!.si).toBeGreaterThan(10)
  expect(() => ringPlateProfile({ ...good, radii: ['46 mm'] })).toThrow('none beyond the plate')
  expect(() => ringPlateProfile({ ...good, radii: [] })).toThrow('radii')
  expect(() => ringPlateProfile({ ...good, innerRadius: '20 mm', radii: ['20 mm'] })).toThrow('smaller than the outer radius')
})
