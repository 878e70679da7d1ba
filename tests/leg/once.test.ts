import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { bare, type Evaluator } from '../../src/formula/index.js'
import { assess, CASE_IDS, checkReserves, describeLeg, legNumbers } from '../../src/leg/index.js'
import { prepare } from '../../src/leg/numbers.js'
import { oncePerLeg, oncePerLegAnd } from '../../src/leg/once.js'
import { Strength } from '../../src/leg/strength.js'
import { materialByName, strengthNumbers, strengthSi } from '../../src/materials/index.js'

const leg = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
const recording: Evaluator = (formula, x) => formula.si(x)

describe('work done once for a leg', () => {
  test('is done once where nothing is recorded, anew where something is, and anew for another leg or a changed copy', () => {
    let runs = 0
    const work = oncePerLeg((_, { x }) => {
      runs++
      return x.robot.mass
    })
    const prepared = prepare(legNumbers(leg))
    expect([work(bare, prepared), work(bare, prepared), runs]).toEqual([prepared.x.robot.mass, prepared.x.robot.mass, 1])
    work(recording, prepared)
    expect(runs).toBe(2)
    const copy = { ...prepared, x: { ...prepared.x, robot: { ...prepared.x.robot, mass: 99 } } }
    expect([work(bare, copy), work(bare, prepared), runs]).toEqual([99, prepared.x.robot.mass, 3])
    work(bare, prepare(legNumbers(leg)))
    expect(runs).toBe(4)
  })

  test('keeps names and pieces of work apart', () => {
    const one = oncePerLegAnd(['hip', 'knee'], (_, __, joint) => `${joint} one`)
    const two = oncePerLegAnd(['hip', 'knee'], (_, __, joint) => `${joint} two`)
    const prepared = prepare(legNumbers(leg))
    const all = () => [one(bare, prepared, 'hip'), one(bare, prepared, 'knee'), two(bare, prepared, 'hip'), two(bare, prepared, 'knee')]
    expect(all()).toEqual(['hip one', 'knee one', 'hip two', 'knee two'])
    expect(all()).toEqual(['hip one', 'knee one', 'hip two', 'knee two'])
  })
})

test('a strength that was kept is the one that was asked for: temperature, duration and cycles', () => {
  const numbers = strengthNumbers(materialByName('ASA'), 'alongLayers', 'dry', 'typical', true)
  const strength = new Strength(numbers)
  for (let round = 0; round < 3; round++)
    for (const temperature of [283, 293, 313, 333])
      for (const duration of [1, 3600, 1e6])
        for (const cycles of [1, 1e3, 1e6, 1e7])
          expect(strength.at(bare, temperature, duration, cycles)).toBe(strengthSi(numbers, temperature, duration, cycles, 1))
})

test('the fast form gives each check the reserve of the explained one, whatever legs were asked about before', { timeout: 120_000 }, () => {
  const changes: readonly ((data: Record<string, Record<string, unknown>>) => unknown)[] = [
    () => ({}),
    ({ robot }) => ({ robot: { ...robot, mass: '12 kg' } }),
    ({ usage }) => ({ usage: { ...usage, days: 300, standingTime: '9 h' } }),
    ({ environment }) => ({ environment: { ...environment, hotAir: '47 degC', humidity: 0.2 } }),
    ({ bolts }) => ({ bolts: { ...bolts, stack: { ...(bolts?.stack as object), sleeves: false } } }),
    ({ plate }) => ({ plate: { ...plate, thickness: '9 mm', material: 'PETG' } }),
  ]
  const legs = changes.map((change) => describeLeg({ ...leg, ...(change(leg as never) as object) } as never))
  const explained = legs.map((each) => {
    const { checks } = assess(each)
    return new Map(checks.map(({ id, joint, reserve }) => [joint === undefined ? id : `${id} ${joint}`, reserve]))
  })
  const numbers = legs.map((each) => legNumbers(each))
  for (const order of [
    [0, 1, 2, 3, 4, 5],
    [5, 3, 1, 4, 0, 2],
  ])
    for (const i of order) expect(checkReserves(numbers[i]!, CASE_IDS)).toEqual(explained[i])
})
