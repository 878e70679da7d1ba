import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import type { CaseId } from '../../src/leg/cases/events.js'
import { checkReserves, describeLeg, legNumbers, withFields } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { calculationFor } from '../../src/leg/what-if.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))
const orchard = read('orchard-leg-revised')

function capacities(id: string, cases: readonly CaseId[]): readonly number[] {
  const calculation = calculationFor(legModel(legNumbers(orchard)))
  const checks = CHECKS.filter((check) => check.id === id)
  return comparisonsOf(calculation, checks, cases).map((one) => {
    const found = compare(calculation, one)
    if (typeof found === 'string') throw new Error(found)
    return found.capacity
  })
}

// M5 8.8 at 4.5 N m through 14 mm of aluminium, two washers: mm and N. Thread and head as in ISO 261, 4762 and 7089, friction 0.14.
const helix = (4.48 / 2) * Math.tan(Math.atan(0.8 / (Math.PI * 4.48)) + Math.atan(0.14 / Math.cos(Math.PI / 6)))
const preload = 4500 / (helix + (0.14 * (8.03 + 5.5)) / 4)
const [root, nominal] = [(Math.PI / 4) * 4.019 ** 2, (Math.PI / 4) * 5 ** 2]
/** Substitute lengths of VDI 2230 for head, thread in the grip, engaged thread and nut. */
const bolt = (2 / nominal + (14 + 2 + 2.5) / root + 2 / nominal) / 205e3
/** Two cones of pressure of 30 degrees that meet half way (Shigley 8-19). */
const slope = 2 * 7 * Math.tan(Math.PI / 6)
const cone =
  (Math.PI * 68.9e3 * 5.5 * Math.tan(Math.PI / 6)) / Math.log(((slope + 10 - 5.5) * (10 + 5.5)) / ((slope + 10 + 5.5) * (10 - 5.5)))
const give = bolt + 2 / cone
/** Four machined faces flatten by 3 µm each. */
const settled = preload - 12e-3 / give
/** From 20 °C to −5 °C aluminium shrinks by 23.6 ppm/K and steel by 11.9 ppm/K. */
const lost = (14 * (23.6 - 11.9) * 1e-6 * 25) / give

describe('bolts of steel through layers that grow more than they', () => {
  test('lose clamp load in the cold, as two springs in series do', () => {
    expect(lost / settled).toBeGreaterThan(0.1)
    for (const id of ['stackBolt.slip', 'stackBolt.separation']) {
      const [warm, cold] = capacities(id, ['drop', 'coldDrop']) as [number, number]
      expect(cold / warm, id).toBeCloseTo(1 - lost / settled, 3)
    }
  })
  test('a stack of print that has crept opens in the cold, and its sleeves prevent that', () => {
    const sleeved = read('heath-leg-revised')
    const bare = withFields(sleeved, { 'bolts.motorBolts.sleeves': false, 'bolts.plateBolts.sleeves': false })
    const [as, without] = [sleeved, bare].map((leg) => checkReserves(legNumbers(leg), ['coldDrop']))
    for (const id of ['motorBolt.slip hip', 'motorBolt.slip knee']) {
      expect(without!.get(id), id).toBe(0)
      expect(as!.get(id), id).toBeGreaterThan(0.5)
    }
  })
  test('press harder on warm layers', () => {
    const pressed = (temperature: string) => {
      const warmer = withFields(read('mudflat-leg-first'), { 'loadCases.airs.hot.temperature': temperature })
      return checkReserves(legNumbers(warmer), ['hotDrop']).get('stackBolt.overload') as number
    }
    expect(pressed('60 degC')).toBeLessThan(0.95 * pressed('25 degC'))
  })
})
