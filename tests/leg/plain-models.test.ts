import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import { calculationOf } from '../../src/leg/calculation.js'
import { assess, type CaseId, describeLeg, legNumbers, withFields } from '../../src/leg/index.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import hand from '../oracles/leg-plain-models.json' with { type: 'json' }
import { geared } from './gear-legs.js'

const heath = describeLeg(readFileSync(new URL('../../examples/heath-leg-revised.yaml', import.meta.url), 'utf8'))
const legs = {
  /** Cords at hip and knee, and a rod that the load of the leg pushes. */
  warm: withFields(heath, {
    'robot.mass': '8.3 kg',
    'robot.standHeight': '292 mm',
    'links.upper.length': '157 mm',
    'links.lower.length': '171 mm',
    'links.upper.mass': '0.153 kg',
    'links.lower.mass': '0.137 kg',
    'joints.knee.through.crank': '31 mm',
    'joints.knee.through.rocker': '31 mm',
    'joints.knee.through.rod': '157 mm',
    'joints.knee.through.rockerAngle': '20 deg',
    'joints.knee.through.diameter': '7 mm',
    'joints.knee.through.mass': '0.026 kg',
    'loadCases.events.drop.height': '33 mm',
    'loadCases.events.drop.travel': '70 mm',
    'loadCases.airs.hot.temperature': '41 degC',
  } as never),
  /** A gearbox at the hip and a pair of gears at the knee. */
  cold: withFields(geared, {
    'robot.mass': '1.9 kg',
    'links.upper.mass': '0.061 kg',
    'links.lower.mass': '0.043 kg',
    'loadCases.airs.cold.temperature': '-9 degC',
  } as never),
} as const
const off = (one: number, other: number) => Math.abs(one / other - 1)
/** Form factors of teeth are printed to three digits, and the table of the library is another one. */
const within = (check: string) => (check.startsWith('gear.') ? 5e-3 : 1e-7)

describe.each(['warm', 'cold'] as const)('a %s leg by plain models (oracles/leg-plain-models.py)', (name) => {
  const calculation = calculationOf(legNumbers(legs[name]))
  test.each(Object.entries(hand.rows[name]))('%s', (row, expected) => {
    const [id, check, joint] = row.split(' ') as [CaseId, string, string | undefined]
    const one = comparisonsOf(calculation, CHECKS, [id]).find(
      (each) => each.check.id === check && (joint === undefined || each.joint === joint),
    )!
    const result = compare(calculation, one)
    if (typeof result === 'string') throw new Error(result)
    expect(off(result.demand, expected)).toBeLessThan(within(check))
  })
  const { foot } = assess(legs[name], { cases: ['stand'] })
  test.each(Object.entries(hand.foot[name]))('the foot moves by %s', (cause, [x, z]) => {
    const { worstPerAxis } = foot.error.lines.find((line) => line.name === cause)!
    expect(off(worstPerAxis.x.si, x!)).toBeLessThan(1e-5)
    expect(off(worstPerAxis.z.si, z!)).toBeLessThan(1e-5)
  })
})
