import { expect, test } from 'vitest'
import {
  braidAxialRigidity,
  cordFibre,
  endEfficiency,
  fibreNames,
  logarithmicPretensionLeft,
  steelCable,
  steelCables,
  thermalTension,
  workingTension,
} from '../../src/capstan/index.js'
import { isProperty, type Property } from '../../src/formula/index.js'

const holds = (p: Property) => {
  expect(p.low).toBeLessThanOrEqual(p.si)
  expect(p.si).toBeLessThanOrEqual(p.high)
  expect(p.source.where.length).toBeGreaterThan(5)
}

test('every fibre lies within its own ranges and says where it comes from', () => {
  for (const name of fibreNames()) {
    const properties = Object.values(cordFibre(name)).filter(isProperty)
    expect(properties.length).toBeGreaterThanOrEqual(7)
    properties.forEach(holds)
  }
})

test('fibres shorten as they warm, and only those of the logarithmic family have a strain per decade', () => {
  for (const name of fibreNames()) {
    const { expansion, creep, creepPerDecade } = cordFibre(name)
    expect(expansion.high).toBeLessThan(0)
    expect(creepPerDecade === undefined).toBe(creep === 'activated')
  }
  expect(cordFibre('UHMWPE standard').expansion.in('ppm/K')).toBeCloseTo(-12, 9)
})

test('what the table holds goes into the formulas as it is', () => {
  const { modulus, density, expansion, creepPerDecade } = cordFibre('LCP')
  const axialRigidity = braidAxialRigidity({
    filamentModulus: modulus,
    filamentDensity: density,
    massPerLength: '1.1 g/m',
    braidAngle: '22 deg',
  })
  const heat = { axialRigidity, frameExpansion: '70 ppm/K', cordExpansion: expansion } as const
  expect(thermalTension({ ...heat, temperatureRise: '10 K' }).in('N')).toBeCloseTo(axialRigidity.si * 74.8e-5, 6)
  if (creepPerDecade === undefined) throw new Error('LCP creeps by the decade')
  const left = logarithmicPretensionLeft({ pretension: '140 N', axialRigidity, perDecade: creepPerDecade, from: '1 h', to: '10 h' })
  expect(left.share.si).toBeCloseTo(1 / (1 + (axialRigidity.si / 140) * 2e-4), 12)
})

test('steel cables: strengths of the standard, rigidity by the stretch constant, ends and design factor on top', () => {
  expect(steelCables()).toHaveLength(18)
  for (const each of steelCables()) {
    const cable = steelCable(each)
    for (const p of Object.values(cable)) if (isProperty(p)) holds(p)
    expect(cable.axialRigidity === undefined).toBe(each.construction === '3x7')
    expect(cable.expansion.low).toBeGreaterThan(0)
  }
  const { diameter, breakingStrength, axialRigidity } = steelCable({ size: '1/8', construction: '7x19', steel: 'stainless' })
  expect(diameter.in('in')).toBeCloseTo(0.125, 12)
  expect(breakingStrength.in('N')).toBeCloseTo(7828.9, 1)
  // Twenty inches under 500 lbf become 20.10368, by a seller's example.
  expect(20 * (1 + (500 * 4.4482216152605) / (axialRigidity?.si ?? 0))).toBeCloseTo(20.10368, 5)
  const working = workingTension({ breakingStrength, endEfficiency: endEfficiency('swagedSleeve'), bendEfficiency: 0.9, designFactor: 5 })
  expect(working.in('N')).toBeCloseTo((7828.87 * 0.95 * 0.9) / 5, 1)
})

test('unknown cords and ends name what there is', () => {
  expect(() => cordFibre('LPC' as never)).toThrow('LCP')
  expect(() => endEfficiency('glue' as never)).toThrow('bondedFerrule')
  expect(() => steelCable({ size: '1/8', construction: '7x7', steel: 'carbon' })).toThrow("size is '1/8' in '7x7'; must be one of 1/32 3x7")
  expect(() => steelCable({ size: '1/8', construction: '7x19', steel: 'brass' as never })).toThrow('carbon or stainless')
})
