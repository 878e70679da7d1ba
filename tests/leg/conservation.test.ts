import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { EVENTS, LOAD_CASES } from '../../src/leg/cases/events.js'
import { CASE_IDS, describeLeg, legNumbers } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { driveOf } from '../../src/leg/numbers.js'
import { feetOf, stanceShares } from '../../src/leg/robot/feet.js'
import { caseState } from '../../src/leg/what-if.js'
import { noLoadLoss } from '../../src/thermal/index.js'

const read = (name: string) =>
  legModel(legNumbers(describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))))
const legs = ['mudflat-leg-first', 'mudflat-leg-revised'].map((name) => [name, read(name)] as const)
const close = (x: number, expected: number, part = 1e-9) =>
  expect(Math.abs(x - expected)).toBeLessThan(part * Math.max(1, Math.abs(expected)))

describe.each(legs)('%s', (_, leg) => {
  const { x } = leg
  const states = CASE_IDS.map((id) => ({ ...caseState(leg, id), id, heating: EVENTS[LOAD_CASES[id].event].heating }))

  test('the spans of each drive balance the torque of its joint, and their sum stands on the pin', () => {
    for (const state of states)
      for (const joint of ['hip', 'knee'] as const) {
        const { drive, motion } = state.joints[joint]
        const { drumRadius, pinionRadius } = leg.drives[joint]
        // A drive that slips carries its slip torque and no more: that of mid travel, never less than the least over the travel.
        const carried = (drive.taut - drive.slack) * drumRadius
        if (Math.abs(motion.torque) <= drive.slipTorque) close(carried, Math.abs(motion.torque))
        else expect(carried).toBeGreaterThanOrEqual(drive.slipTorque)
        // Crossed spans lean by asin((R + r) / C): their sum acts along the line of centres, their difference across it.
        const tilt = Math.asin((drumRadius + pinionRadius) / driveOf(x, joint, 'cord').centreDistance)
        // In a landing and a stall the joint has travelled under load, which shifts both spans alike.
        const rare = (EVENTS[LOAD_CASES[state.id].event].tags as readonly string[]).includes('rare')
        const sum = drive.taut + drive.slack + (rare ? 2 * (drive.peak - drive.taut) : 0)
        close(drive.shaftForce, Math.hypot(sum * Math.cos(tilt), (drive.taut - drive.slack) * Math.sin(tilt)))
        close(drive.pinForce, drive.shaftForce + (state.motion?.ground ?? 0))
      }
  })

  test('over a stride the legs push up what the robot weighs', () => {
    const weight = x.robot.mass * 9.80665
    const at = (id: 'walk' | 'trot' | 'stand') => states.find((state) => state.id === id)!.motion!.vertical
    close(at('stand') * x.robot.legs, weight)
    // As the weight passes from foot to foot their forces make up the weight, on average over the stride and so each leg by its mean.
    const { dutyFactor } = x.gaits.walk!
    const mean = stanceShares(x, feetOf(x, 'walk')).map(
      (shares) => (dutyFactor * shares.reduce((sum, one) => sum + one, 0)) / shares.length,
    )
    close(
      mean.reduce((sum, one) => sum + one, 0),
      1,
    )
    expect(at('walk')).toBeGreaterThan((weight * Math.max(...mean)) / dutyFactor)
    // The mean of half a sine is 2 / pi of its peak.
    close((2 / Math.PI) * at('trot') * x.gaits.trot!.dutyFactor * x.robot.legs, weight)
  })

  test('power into each motor is power at the joint and its losses', () => {
    const { dragTorque } = noLoadLoss.si({
      voltage: x.motors.main!.noLoadVoltage,
      current: x.motors.main!.noLoadCurrent,
      terminalResistance: x.motors.main!.terminalResistance,
      speed: x.motors.main!.noLoadVoltage * x.motors.main!.speedConstant,
    })
    for (const state of states)
      for (const joint of ['hip', 'knee'] as const) {
        const { heat, motion } = state.joints[joint]
        if (heat.unsettled !== undefined) continue
        const { ratio } = leg.drives[joint]
        const turns = state.heating !== 'held' && motion.speed > 0
        const asked = state.heating === 'held' ? motion.torque : motion.shaftTorque
        const speed = heat.motorSpeed
        // At the largest torque and the largest speed: shaft power is joint power over the drive's efficiency, and drag.
        const joints = (Math.abs(asked) * speed) / ratio
        close(heat.motorTorque * speed, joints / driveOf(x, joint, 'cord').efficiency + (turns ? dragTorque * speed : 0))
        // Sine currents against a sine EMF: 3/2 of phase peaks; the phase EMF is the line's over root three.
        const electrical = 1.5 * heat.current * ((heat.backEmfConstant * speed) / Math.sqrt(3))
        close(electrical, heat.motorTorque * speed)
        // 3 I²R / 2 of a phase, whose resistance is half of terminal to terminal.
        if (state.heating !== 'none') close(heat.loss, 1.5 * heat.heatingCurrent ** 2 * (heat.resistance / 2), 1e-5)
      }
  })
})
