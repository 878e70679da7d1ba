import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { cordDrive } from '../../src/capstan/index.js'

// Written by tests/oracles/capstan-losses.py: a string of nodes that move through the loop, what goes in less what comes out.
const oracle = JSON.parse(readFileSync(new URL('../oracles/capstan-losses.json', import.meta.url), 'utf8')) as Record<
  string,
  { pinion: number; mu: number; mu_drum: number; stroke: number; force: number; back: number; loss: number; change: number }
>

test.each(Object.entries(oracle))('micro-slip and creep together are what the string of moving nodes loses: %s', (_, x) => {
  const d = cordDrive({
    pinionRadius: '8 mm',
    drumRadius: '48 mm',
    centreDistance: '60 mm',
    pinionTurns: 0,
    pinionWrap: [x.pinion, 'rad'],
    span: '20 mm',
    drumWrap: '180 deg',
    axialRigidity: '20 kN',
    pretension: '60 N',
    friction: x.mu,
    drumFriction: x.mu_drum,
  })
  const { microSlip, creep } = d.losses({
    torque: [x.force * 0.048, 'N m'],
    returnTorque: [x.back * 0.048, 'N m'],
    stroke: [x.stroke, 'rad'],
    bearingFriction: 0,
    bearingRadius: '1 mm',
    bendingLoss: 0,
  }).atLowFriction
  // The string keeps the square of strain, some 0.4 %, and its nodes enter and leave one at a time.
  expect(Math.abs((microSlip.energy.si + (creep?.energy.si ?? Number.NaN)) / x.loss - 1)).toBeLessThan(0.01)
})
