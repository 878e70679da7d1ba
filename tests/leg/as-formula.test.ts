import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, describeLeg, governingReserve, legFormula, legNumbers } from '../../src/leg/index.js'
import { solveFor, sweep } from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'

const leg = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-first.yaml', import.meta.url), 'utf8'))

describe('a leg as a formula', () => {
  test('without anything given it is the leg itself', () => {
    expect(legFormula(leg)({}).si).toBe(governingReserve(legNumbers(leg)).reserve)
  })

  test('fields are given at their places, checked and with units', () => {
    const reserve = legFormula(leg, { check: 'cord.slack knee', cases: ['walk'] })
    const half = reserve({ drives: { knee: { pretension: '45 N' } } }).si
    const full = reserve({ drives: { knee: { pretension: '90 N' } } }).si
    expect(full / half).toBeCloseTo(2, 12)
    expect(() => reserve({ drives: { knee: { pretension: '45 mm' } } } as never)).toThrow(/force/)
    expect(() => reserve({ wings: 2 } as never)).toThrow(InputError)
  })

  test('it can be solved for any field', () => {
    const reserve = legFormula(leg, { check: 'cord.slack knee', cases: ['walk'] })
    const { value } = solveFor(reserve, 'drives.knee.pretension', { drives: { knee: {} } }, 1.25, { between: ['10 N', '500 N'] })
    const stiffer = describeLeg({ ...leg, drives: { ...leg.drives, knee: { ...leg.drives.knee, pretension: [value.si, 'N'] } } } as never)
    const check = assess(stiffer, { cases: ['walk'] }).checks.find(({ id, joint }) => id === 'cord.slack' && joint === 'knee')
    expect(check?.reserve).toBeCloseTo(1.25, 8)
  })

  test('it can be swept', () => {
    const reserve = legFormula(leg, { check: 'motor.plate hip', cases: ['walk'] })
    const table = sweep(reserve, { over: { 'motor.terminalResistance': ['0.05 ohm', '0.1 ohm', '0.15 ohm'] } })
    const [little, middle, much] = Array.from(table.in('result', '1')) as [number, number, number]
    expect(little).toBeGreaterThan(middle)
    expect(middle).toBeGreaterThan(much)
  })

  test('an unknown check is refused with the near name', () => {
    expect(() => legFormula(leg, { check: 'cord.slak knee' })).toThrow(/did you mean cord.slack knee/)
    expect(() => legFormula(leg, { check: 'cord.slack' })).toThrow(InputError)
  })
})
