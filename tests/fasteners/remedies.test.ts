import { expect, test } from 'vitest'
import { type ClampRemedySpecification, clampLoadChart, compareClampRemedies, interferenceChart } from '../../src/fasteners/index.js'

const joint: ClampRemedySpecification = {
  clampLoad: '1500 N',
  boltCompliance: '0.008 um/N',
  printCompliance: '0.06 um/N',
  creep: (time) => 1 + 0.12 * time.in('h') ** 0.25,
  spring: { compliance: '0.3 um/N', flatForce: '2000 N' },
  sleeve: { compliance: '0.006 um/N', shortfall: '0 um' },
  retightenAt: '3 day',
  times: ['0 day', '4 day', '1 year'],
}
const last = (specification: ClampRemedySpecification) =>
  Object.fromEntries(
    compareClampRemedies(specification).map(({ remedy, clampLoads, state }) => [remedy, { newtons: clampLoads.at(-1)!.in('N'), state }]),
  )

test('every remedy beats none, the sleeve beats all', () => {
  const { asItIs, retightened, springWashers, compressionSleeve } = last(joint)
  expect(retightened!.newtons).toBeGreaterThan(asItIs!.newtons)
  expect(springWashers!.newtons).toBeGreaterThan(asItIs!.newtons)
  expect(compressionSleeve!.newtons).toBeGreaterThan(Math.max(retightened!.newtons, springWashers!.newtons))
  expect(compressionSleeve!.newtons).toBeLessThan(1500)
})

test('a remedy that does nothing says so and keeps what no remedy keeps', () => {
  const { asItIs, springWashers, compressionSleeve } = last({
    ...joint,
    spring: { compliance: '0.3 um/N', flatForce: '200 N' },
    sleeve: { compliance: '0.006 um/N', shortfall: '0.2 mm' },
  })
  expect(springWashers).toEqual({ newtons: asItIs!.newtons, state: 'flattened' })
  expect(compressionSleeve).toEqual({ newtons: asItIs!.newtons, state: 'sleeveTooShort' })
})

test('a sleeve as soft as nothing leaves the joint as it is, a rigid one loses nothing', () => {
  const soft = last({ ...joint, sleeve: { compliance: '1e6 um/N', shortfall: '0 um' } })
  expect(soft.compressionSleeve!.newtons / soft.asItIs!.newtons).toBeCloseTo(1, 6)
  expect(last({ ...joint, sleeve: { compliance: '1e-9 um/N', shortfall: '0 um' } }).compressionSleeve!.newtons).toBeCloseTo(1500, 3)
})

test('beside a sleeve the loads of print and sleeve keep in step with the bolt', () => {
  const [print, sleeve, bolt, give] = [0.06, 0.03, 0.008, 3]
  const elastic = last({
    ...joint,
    sleeve: { compliance: [sleeve, 'um/N'], shortfall: '0 um' },
    creep: (time) => 1 + give * -Math.expm1(-time.in('s')),
  }).compressionSleeve!.newtons
  // At last the print is a softer spring: the length it was tightened to is shared by bolt, and sleeve beside crept print.
  const beside = (a: number, b: number) => 1 / (1 / a + 1 / b)
  const tightened = 1500 * (bolt + beside(sleeve, print))
  expect(elastic).toBeCloseTo(tightened / (bolt + beside(sleeve, print * (1 + give))), 0)
})

test('charts are plain data with every series and limit named', () => {
  const clamp = JSON.stringify(clampLoadChart(joint, '500 N'))
  for (const word of ['as it is', 'retightened', 'spring washers', 'compression sleeve', 'needed']) expect(clamp).toContain(word)
  const fit = {
    pinDiameter: '4.008 mm',
    pinScatter: '1 um',
    holeDiameter: '3.95 mm',
    holeScatter: '30 um',
    allowableInterference: '90 um',
  } as const
  const spread = JSON.stringify(interferenceChart(fit))
  expect(spread).toContain('loose 2.7 %')
  expect(spread).toContain('split 14 %')
})
