import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { describeLeg, legNumbers } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { driveAt } from '../../src/leg/what-if.js'

const leg = legModel(legNumbers(describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))))
const state = (stroke: number) => driveAt(leg, { joint: 'knee', torque: 5, stroke, footForce: 0, air: 293.15, age: 'new' })

test('a short stroke is sized by pretension plus torque over radius, a long repeated one by what its cord stores', () => {
  expect(state(0.7).peak).toBeCloseTo(185 + 5 / 0.0448, 9)
  // Mean tension of a raising stroke: F x (2 + x) / (2 (1 + x)) over the pretension at its end, x = R stroke / 2 span, and half the pull on top.
  const span = Math.sqrt(0.118 ** 2 - (0.0448 + 0.008) ** 2)
  const pull = 5 / (2 * 0.0448)
  const x = (0.0448 * 12) / (2 * span)
  expect(state(12).peak).toBeCloseTo(185 + pull + (pull * x * (2 + x)) / (2 * (1 + x)), 9)
  expect(state(12).peak).toBeGreaterThan(state(0.7).peak)
})
