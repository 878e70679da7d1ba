import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assessRobot, describeLeg, type Leg, legNumbers, withFields } from '../../src/leg/index.js'
import { legModel } from '../../src/leg/leg-model.js'
import { strideOf } from '../../src/leg/stride-of.js'
import { caseState } from '../../src/leg/what-if.js'
import { Quantity } from '../../src/units/index.js'
import { geared } from './gear-legs.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))

/** A leg with rotors of so many times the inertia and drives without loss, so that what turns with the motors decides. */
function heavy(leg: Leg, times: number): Leg {
  const rotors = Object.entries(leg.motors).map(([name, { rotorInertia }]) => [`motors.${name}.rotorInertia`, rotorInertia.times(times)])
  const lossless = [
    ...(['hip', 'knee'] as const).map((joint) => `joints.${joint}.drive.efficiency`),
    ...(leg.joints.knee.through?.kind === 'belt' ? ['joints.knee.through.efficiency'] : []),
  ].map((path) => [path, 1])
  return withFields(leg, Object.fromEntries([...rotors, ...lossless]))
}

describe('the robot moves the inertia that the load cases move', () => {
  // Two ways of calculating: inverse dynamics in 2400 samples through the coupling of the drives, and the load cases, which look for the peak.
  test.each([
    ['a crossed cord, its motor on the upper link', read('mudflat-leg-revised')],
    ['belts with pulleys, the motor of the knee on the upper link', read('orchard-leg-revised')],
    ['a belt through the hip', read('shingle-leg-revised')],
    ['a gearbox and a pair of gears', geared],
  ])('%s', (_, leg) => {
    const x = heavy(leg, 4)
    const model = legModel(legNumbers(x))
    const stride = strideOf(model, 'walk', { samples: 2400 })
    if (!stride.walkable) throw new Error('the leg walks')
    for (const joint of ['hip', 'knee'] as const) {
      const { drum, transmission } = caseState(model, 'walk').joints[joint]
      const ratio = stride.motors[joint].peakTorque.si / (Math.abs(drum.shaftTorque) / transmission.ratio)
      expect(ratio, joint).toBeGreaterThan(0.999)
      expect(ratio, joint).toBeLessThan(1.001)
    }
  })

  test('what turns with a rotor costs as much as the rotor', () => {
    const more = new Quantity(1e-5, 'momentOfInertia')
    const inGearbox = assessRobot(withFields(geared, { 'joints.hip.drive.inertia': geared.motors.pancake!.rotorInertia.plus(more) }))
    const before = assessRobot(geared)
    expect(inGearbox.gaits.trot.peakPower.si).toBeGreaterThan(before.gaits.trot.peakPower.si)
    const blow = (robot: typeof before) => robot.landings.find(({ event, joint }) => event === 'drop' && joint === 'hip')!.blow.si
    // Toes give first: the blow goes with the root of the inertia behind the drive.
    const { rotorInertia } = geared.motors.pancake!
    const [own, now] = [rotorInertia.si + 1.5e-6, 2 * rotorInertia.si + more.si]
    expect(blow(inGearbox) / blow(before)).toBeCloseTo(Math.sqrt(now / own), 3)
  })
})
