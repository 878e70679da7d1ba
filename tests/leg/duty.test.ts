import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bearingLife } from '../../src/fasteners/index.js'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { assess, describeLeg, legNumbers, markdownReport } from '../../src/leg/index.js'
import { stance } from '../../src/leg/parts/load/stance.js'
import { uprightForces } from '../../src/leg/parts/motion/stride-moments.js'

const leg = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))

test('a load that comes and goes creeps less than the largest one that stays for the time of all loads', () => {
  // Superposition after Boltzmann with a creep that slows down: strain = Σ change of load · compliance(time since).
  const compliance = (n: number, c: number, time: number) => (time <= 0 ? 0 : 1 + c * time ** n)
  const share = fc.double({ min: 0, max: 1, noNaN: true })
  fc.assert(
    fc.property(
      fc.double({ min: 0.02, max: 0.6, noNaN: true }),
      fc.double({ min: 0.01, max: 2, noNaN: true }),
      fc.double({ min: 0.3, max: 0.95, noNaN: true }),
      fc.array(share, { minLength: 2, maxLength: 6 }),
      fc.integer({ min: 1, max: 40 }),
      (n, c, dutyFactor, forces, strides) => {
        const part = dutyFactor / forces.length
        const end = strides - 1 + dutyFactor
        let strain = 0
        let before = 0
        for (let stride = 0; stride < strides; stride++)
          for (const [i, force] of [...forces, 0].entries()) {
            strain += (force - before) * compliance(n, c, end - stride - i * part)
            before = force
          }
        expect(strain).toBeLessThanOrEqual(Math.max(...forces) * compliance(n, c, strides * dutyFactor) + 1e-9)
      },
    ),
    { numRuns: 300 },
  )
})

test('bearing life at the largest load of the stance is shorter than at the cubic mean of ISO 281', () => {
  const calculation = calculationOf(legNumbers(leg))
  const found = calculation.get(stance, calculation.instances.implied(placeOf(calculation, { leg: 'leg', event: 'season' })) as never)
  const phases = Array.from({ length: 201 }, (_, i) => i / 200)
  const forces = phases.map((phase) => uprightForces({ ...found, mass: leg.robot.mass.si, gravity: 9.80665 } as never, phase)[0] as number)
  const largest = Math.max(...forces)
  const cubic = Math.cbrt(forces.reduce((sum, force) => sum + force ** 3, 0) / forces.length)
  // Half of the weight at most, 0.85 of that as a cubic mean over the stance, and less with the unloaded swing.
  expect(largest).toBeCloseTo((10.5 * 9.80665) / 2, 1)
  expect(cubic / largest).toBeGreaterThan(0.83)
  expect(cubic / largest).toBeLessThan(0.87)
  const turns = (load: number) => bearingLife.si({ dynamicRating: 4600, load, reliability: '95 %', speed: 1 } as never).turns
  expect(turns(cubic) / turns(largest)).toBeCloseTo((largest / cubic) ** 3, 6)
  expect(turns(cubic) / turns(largest)).toBeGreaterThan(1.5)
})

test('the report says so', () => {
  const report = markdownReport(assess(leg, { cases: ['walk'] }))
  expect(report).toContain('Creep of a walk counts the time that the foot stands, at the largest force of the stance.')
  expect(report).toContain('Bearing life counts every turn')
})
