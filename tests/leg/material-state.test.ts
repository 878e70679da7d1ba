import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { describeLeg } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { materialState, steelOf } from '../../src/leg/material-state.js'
import { legNumbers } from '../../src/leg/numbers.js'
import { asa, stainless304 } from '../../src/materials/index.js'

const leg = legModel(legNumbers(describeLeg(readFileSync(new URL('./legs/workbench.yaml', import.meta.url), 'utf8'))))
const state = materialState(leg, 'ASA')

test('a plan reads a material in the moisture of the leg, as the checks do', () => {
  expect(state.elastic()).toEqual({ modulus: asa.modulus.si * asa.modulusSaturatedRatio.si, poissonRatio: asa.poissonRatio.si })
  expect(state.softening()).toBe(asa.glassTransitionTemperature.si)
  expect(state.density()).toBe(asa.density.si)
  expect(steelOf(leg)).toBe('steel 12.9')
})

test('friction without a record is the assumption of the checks, with its range', () => {
  const { low, si, high } = asa.frictionOnSteel
  expect(state.frictionOnSteel()).toEqual({ low, typical: si, high })
  expect('frictionOnSteel' in stainless304).toBe(false)
  expect(materialState(leg, 'stainless 304').frictionOnSteel()).toEqual({ low: 0.1, typical: 0.15, high: 0.3 })
})

test('strength across the layers has the ends of both ranges', () => {
  const { low, typical, high } = state.strength('acrossLayers')
  const [along, share] = [asa.tensileStrength, asa.acrossLayersRatio]
  expect([low, typical, high]).toEqual([along.low * share.low, along.si * share.si, along.high * share.high])
})
