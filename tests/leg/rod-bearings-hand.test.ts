import { describe, expect, test } from 'vitest'
import { compare, comparisonsOf } from '../../src/leg/assess/compare.js'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { legNumbers } from '../../src/leg/index.js'
import { ownLoad } from '../../src/leg/parts/ball-bearings/loads.js'
import { CHECKS } from '../../src/leg/parts/index.js'
import { driveOnPin } from '../../src/leg/parts/pins-and-bosses/loads.js'
import { shaftForce } from '../../src/leg/parts/transmission/questions.js'
import { rodCouple } from '../../src/leg/parts/transmission/rod-ends/couple.js'
import hand from '../oracles/leg-rod-bearings.json' with { type: 'json' }
import { besideLinks, flattened } from './rod-bearing-legs.js'

const calculation = calculationOf(legNumbers(besideLinks))
const comparisons = comparisonsOf(calculation, CHECKS, ['drop', 'stand'])
const found = (id: string) => {
  const [name, joint] = id.split(' ')
  const one = comparisons.find((each) => each.check.id === name && (joint === undefined || each.joint === joint))
  const result = one === undefined ? 'not asked' : compare(calculation, one)
  if (typeof result === 'string') throw new Error(`${id}: ${result}`)
  return result
}
const off = (one: number, other: number) => Math.abs(one / other - 1)
const at = (names: Record<string, string>) =>
  placeOf(calculation, { leg: 'leg', event: 'drop', air: 'normalStill', age: 'new', ...names } as never) as never

describe('the heath carrier, dropped, its rod beside the links (oracles/leg-rod-bearings.py)', () => {
  test.each(Object.entries(hand.rows))('%s', (id, [demand, capacity]) => {
    const own = found(id)
    // 4.37 is printed to three digits, and the balls of the oracle are summed.
    const within = id.endsWith('cocking') ? 1e-4 : 1e-8
    expect(off(own.demand, demand!), `demand ${own.demand}, by hand ${demand}`).toBeLessThan(within)
    if (capacity !== null) expect(off(own.capacity, capacity!), `capacity ${own.capacity}, by hand ${capacity}`).toBeLessThan(1e-6)
  })

  test('what the clamp load of the stack closes and holds, summed over its ring', () => {
    expect(off(found('shaftStack.gape').capacity, hand.stack.gape)).toBeLessThan(1e-8)
    expect(off(found('shaftStack.tip').capacity, hand.stack.tip)).toBeLessThan(1e-8)
  })

  test('and what a year and the cold leave of it', () => {
    const one = comparisonsOf(calculation, CHECKS, ['coldDrop']).find(({ check }) => check.id === 'shaftStack.tip')!
    const result = compare(calculation, one)
    if (typeof result === 'string') throw new Error(result)
    expect(off(result.capacity, hand.stack.tipColdYear)).toBeLessThan(1e-8)
  })

  test('what its nut does to shaft and ring, summed over their sections', () => {
    const tightened = (id: string, load: 'stand' | 'walk') => {
      const one = comparisonsOf(calculation, CHECKS, [load]).find(({ check }) => check.id === id)!
      const result = compare(calculation, one)
      if (typeof result === 'string') throw new Error(`${id}: ${result}`)
      return result
    }
    expect(off(tightened('shaftStack.tightening', 'stand').demand, hand.stack.tightening)).toBeLessThan(1e-8)
    expect(tightened('shaftStack.tightening', 'stand').capacity).toBe(640e6)
  })

  /** Pressure at the edge of the ring of 26 by 12.5 mm: strips across it that only push, their lift found by halving. */
  const atEdge = (force: number, moment: number) => {
    const [outer, inner, n] = [13e-3, 6.25e-3, 20_000]
    const strips = Array.from({ length: n }, (_, i) => {
      const height = outer * ((2 * (i + 0.5)) / n - 1)
      const chord = (radius: number) => 2 * Math.sqrt(Math.max(0, radius ** 2 - height ** 2))
      return { height, area: ((chord(outer) - chord(inner)) * 2 * outer) / n }
    })
    const sums = (lift: number) => {
      let [pushes, turns] = [0, 0]
      for (const { height, area } of strips) {
        const one = Math.max(0, height - lift) * area
        pushes += one
        turns += one * height
      }
      return { pushes, turns }
    }
    let [low, high] = [-1e4 * outer, 0.999 * outer]
    for (let i = 0; i < 100; i++) {
      const middle = (low + high) / 2
      const { pushes, turns } = sums(middle)
      if (turns / pushes > moment / force) high = middle
      else low = middle
    }
    return (force * (outer - low)) / sums(low).pushes
  }
  test.each(['walk', 'drop'] as const)('what clamp load and bending press at the edge of the ring: %s', (load) => {
    const all = comparisonsOf(calculation, CHECKS, [load])
    const of = (id: string) => compare(calculation, all.find(({ check }) => check.id === id)!) as { demand: number; capacity: number }
    const own = of(load === 'walk' ? 'shaftStack.crush' : 'shaftStack.edge')
    const moment = of('shaftStack.gape').demand
    const full = hand.stack.crush * Math.PI * (13e-3 ** 2 - 6.25e-3 ** 2)
    const expected = Math.max(atEdge(full, moment), atEdge(0.55 * full, moment))
    expect(expected / hand.stack.crush).toBeGreaterThan(1.05)
    expect(off(own.demand, expected)).toBeLessThan(1e-4)
  })

  test('the shaft in its stack bears preload, bending, half the torque of its nut, and of a flat that of the drive (VDI 2230-1 for the half)', () => {
    const { preload, perBending, perTorque, nutTorque } = hand.stack.shaft
    const stressOf = (leg: typeof besideLinks, twist: (torque: number) => number) => {
      const own = calculationOf(legNumbers(leg))
      const all = comparisonsOf(own, CHECKS, ['drop'])
      const of = (id: string) => compare(own, all.find(({ check }) => check.id === id)!) as { demand: number; capacity: number }
      const torque = twist(leg === besideLinks ? 0 : of('shaftStack.flat').demand)
      expect(of('shaftStack.shaft').capacity).toBe(640e6)
      return off(
        of('shaftStack.shaft').demand,
        Math.hypot(preload + perBending * of('shaftStack.gape').demand, Math.sqrt(3) * perTorque * torque),
      )
    }
    expect(stressOf(besideLinks, () => nutTorque / 2)).toBeLessThan(1e-8)
    expect(stressOf(flattened, (torque) => nutTorque / 2 + torque)).toBeLessThan(1e-8)
  })

  test('bearings of the knee pin bear what equilibrium in space says, or a little more', () => {
    expect(off(calculation.get(rodCouple, at({})), hand.knee.couple)).toBeLessThan(1e-8)
    // No cord pulls on this knee: its drum sits on the hip axis.
    expect(calculation.get(driveOnPin, at({ joint: 'knee' }))).toBe(0)
    const own = calculation.get(ownLoad, at({ pivot: 'knee' }))
    expect(own).toBeGreaterThanOrEqual(hand.knee.harder)
    expect(own).toBeLessThan(1.02 * hand.knee.harder)
  })

  test('bearings of the drum bear cord and rod pulling the same way, the rod beside their middle', () => {
    const cord = calculation.get(shaftForce, at({ joint: 'knee' }))
    // Moments about the farther bearing, 7.5 mm on the other side of the middle.
    const nearer = (cord * 7.5 + hand.rod * (7.5 + 14)) / 15
    expect(off(calculation.get(ownLoad, at({ pivot: 'drum' })), nearer)).toBeLessThan(1e-8)
  })
})
