import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { bare } from '../../src/formula/index.js'
import { CASES } from '../../src/leg/cases/catalogue.js'
import { motionOver } from '../../src/leg/cases/motion.js'
import { legNumbers, prepare } from '../../src/leg/numbers.js'
import { bareSheet, recordingSheet } from '../../src/leg/sheet.js'
import { describeLeg } from '../../src/leg/specification/describe.js'
import { Quantity } from '../../src/units/index.js'
import hand from '../oracles/leg-hand.json' with { type: 'json' }

const text = readFileSync(new URL('../../examples/mudflat-leg-first.yaml', import.meta.url), 'utf8')
const leg = prepare(legNumbers(describeLeg(text)))
const motion = (id: keyof typeof CASES) => motionOver(leg, bareSheet, CASES[id].stance(leg, bare)!)
const close = (x: number, expected: number) => expect(Math.abs(x - expected)).toBeLessThan(1e-12 * Math.max(1, Math.abs(expected)))

describe('joint torques against a calculation by hand (oracles/leg-hand.py: triangles, moment balances, positions differentiated twice)', () => {
  test('stand', () => {
    const { hip, knee, sideways, vertical } = motion('stand')
    close(vertical, hand.stand.force)
    close(hip.torque, hand.stand.hip)
    close(knee.torque, hand.stand.knee)
    close(sideways, Math.abs(hand.stand.sideways))
    expect(hip.shaftTorque).toBe(hip.torque)
  })

  test.each(['walk', 'trot'] as const)(
    '%s: largest torque through the cord and at the motor, and root mean square over the stride',
    (id) => {
      const { hip, knee } = motion(id)
      close(hip.torque, hand[id].hip)
      close(knee.torque, hand[id].knee)
      close(hip.shaftTorque, hand[id].hipShaft)
      close(knee.shaftTorque, hand[id].kneeShaft)
      close(hip.shaftRms, hand[id].hipShaftRms)
      close(knee.shaftRms, hand[id].kneeShaftRms)
    },
  )

  test('a blocked leg carries, and speeds nothing up', () => {
    const { hip, knee } = motion('stall')
    close(hip.torque, hand.stall.hip)
    close(knee.torque, hand.stall.knee)
    expect(hip.shaftTorque).toBe(hip.torque)
    expect(hip.speed).toBe(0)
  })

  test('walk, hop, drop, slope', () => {
    close(motion('walk').vertical, hand.walk.force)
    close(motion('drop').vertical, hand.drop.force)
    close(motion('drop').knee.torque, hand.drop.knee)
    close(motion('hop').vertical, hand.hop.force)
    close(motion('slope').vertical, hand.slope.force)
    close(motion('slope').forward, hand.slope.forward)
  })
})

test('a recording sheet changes no number, and shows the worst pose', () => {
  const sheet = recordingSheet()
  sheet.open('walk')
  expect(motionOver(leg, sheet, CASES.walk.stance(leg, sheet.of)!)).toEqual(motion('walk'))
  const [force, statics] = sheet.steps(['walk'])
  expect(force?.formula).toBe('kinematics.stanceForce')
  expect(statics?.inputs.groundReactionForward).toBe(String(new Quantity(0.15 * hand.walk.force, 'force')))
  // The knee's is the largest of the walk, and the sheet works it out anew.
  expect(statics?.results.knee).toBe(String(new Quantity(hand.walk.knee, 'torque')))
})

test('an unreachable path is said, and not a number made up', () => {
  const far = { ...CASES.walk.stance(leg, bare)!, stepLength: 0.6 }
  const { reached, farthest, reach } = motionOver(leg, bareSheet, far)
  expect(reached).toBe(false)
  expect(farthest).toBeGreaterThan(reach)
})
