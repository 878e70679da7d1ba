import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import { heatAt } from '../../src/leg/heat-under-motion.js'
import { describeLeg, legNumbers } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { motorChecks } from '../../src/leg/parts/motors/checks.js'
import { heatedMotorOf } from '../../src/leg/parts/motors/heat.js'
import { caseState } from '../../src/leg/what-if.js'
import { motorState, motorStateAt } from '../../src/thermal/motor-heat.js'

const numbers = legNumbers(describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8')))
const leg = legModel(numbers)
const { motion } = caseState(leg, 'hotAfternoon').joints.knee

describe('a motor without a steady temperature never looks better than one that has one', () => {
  const ways = [
    ['held for ten minutes', { heating: 'held', heldFor: 600 }],
    ['held for a minute', { heating: 'held', heldFor: 60 }],
    ['held until it settles', { heating: 'held' }],
    ['moving', { heating: 'moving' }],
  ] as const
  test.each(ways)('%s', (_, way) => {
    const states = Array.from({ length: 90 }, (__, k) => {
      const f = 0.3 * 1.05 ** k
      const turned = { ...motion, torque: f * motion.torque, shaftTorque: f * motion.shaftTorque, shaftRms: f * motion.shaftRms }
      return heatAt(leg, { joint: 'knee', motion: turned, air: 313.15, wind: 0, ...way })
    })
    const settled = states.filter(({ unsettled }) => unsettled === undefined)
    expect(settled.length).toBeGreaterThan(10)
    expect(states.length - settled.length).toBeGreaterThan(10)
    for (const of of ['resistance', 'winding', 'windingMean', 'mount', 'can', 'loss'] as const)
      for (const [k, state] of states.entries()) if (k > 0) expect(state[of], `${of} ${k}`).toBeGreaterThanOrEqual(states[k - 1]![of])
    for (const [k, state] of states.entries()) {
      if (k === 0) continue
      const before = states[k - 1]!
      for (const of of ['current', 'heatingCurrent'] as const)
        expect(state[of] / state.heatingTorque, `${of} ${k}`).toBeGreaterThanOrEqual((before[of] / before.heatingTorque) * (1 - 1e-12))
    }
    // By hand: magnets at 700 K keep 1 − 0.0011 · 406.85 of their strength, and a torque takes i = 2 / √3 · torque / back-EMF constant.
    const last = states.at(-1)!
    const [speedConstant, strength] = [leg.x.motors.main!.speedConstant, 1 - 0.0011 * (700 - 293.15)]
    expect(last.current / last.motorTorque).toBeCloseTo((2 / Math.sqrt(3)) * (speedConstant / strength), 9)
    // Copper at 700 K: (234.5 + 426.85) / 254.5 of its resistance at 20 degC; the loss is three quarters of i² R.
    const hot = (leg.x.motors.main!.terminalResistance * (234.5 + 426.85)) / 254.5
    expect(last.loss / (0.75 * last.heatingCurrent ** 2 * hot)).toBeCloseTo(1, 12)
  })
})

test('a motor has a reserve against running away where some rise sheds more heat than enters, and less than 1 where none does', () => {
  const check = motorChecks.find(({ id }) => id === 'motor.runaway')!
  const seen = { settles: 0, runsAway: 0 }
  fc.assert(
    fc.property(
      fc.constantFrom('walk', 'stand', 'slope'),
      fc.constantFrom('hip', 'knee'),
      fc.double({ min: Math.log(0.02), max: Math.log(8), noNaN: true }),
      fc.double({ min: 0.2, max: 12, noNaN: true }),
      (event, joint, logarithm, windingToMount) => {
        const motors = Object.fromEntries(
          Object.entries(numbers.motors).map(([name, motor]) => [
            name,
            { ...motor, terminalResistance: Math.exp(logarithm), windingToMount },
          ]),
        ) as typeof numbers.motors
        const calculation = calculationOf({ ...numbers, motors })
        const place = calculation.instances.implied(placeOf(calculation, { leg: 'leg', air: 'hot', age: 'new', event, joint })) as never
        const m = calculation.get(heatedMotorOf, place)
        const state = motorState()
        let settles = false
        for (let rise = 450; rise > 0.01 && !settles; rise /= 1.002) settles = motorStateAt(m, m.air + rise, state).surplus <= 0
        const reserve = calculation.get(check.capacity, place) / calculation.get(check.demand, place)
        seen[settles ? 'settles' : 'runsAway']++
        if (settles) expect(reserve).toBeGreaterThanOrEqual(1)
        else expect(reserve).toBeLessThan(1 + 1e-6)
      },
    ),
    { numRuns: 150 },
  )
  expect(Math.min(seen.settles, seen.runsAway)).toBeGreaterThan(30)
})
