import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { bare } from '../../src/formula/index.js'
import { CASES } from '../../src/leg/cases/catalogue.js'
import { motionOver } from '../../src/leg/cases/motion.js'
import { legNumbers, prepare } from '../../src/leg/numbers.js'
import { bareSheet, recordingSheet } from '../../src/leg/sheet.js'
import { describeLeg } from '../../src/leg/specification/describe.js'
import hand from '../oracles/leg-hand.json' with { type: 'json' }

const text = readFileSync(new URL('../../examples/mudflat-leg-first.yaml', import.meta.url), 'utf8')
const leg = prepare(legNumbers(describeLeg(text)))
const motion = (id: keyof typeof CASES) => motionOver(leg, bareSheet, CASES[id].stance(leg, bare)!)
const close = (x: number, expected: number) => expect(Math.abs(x - expected)).toBeLessThan(1e-12 * Math.max(1, Math.abs(expected)))

describe('joint torques against a calculation by hand (oracles/leg-hand.py: triangles and moment balances)', () => {
  test('stand', () => {
    const { hip, knee, sideways, vertical } = motion('stand')
    close(vertical, hand.stand.force)
    close(hip.torque, hand.stand.hip)
    close(knee.torque, hand.stand.knee)
    close(sideways, Math.abs(hand.stand.sideways))
  })

  test('walk: worst of the sampled poses, and root mean square over the stride', () => {
    const { hip, knee, vertical } = motion('walk')
    close(vertical, hand.walk.force)
    close(hip.torque, hand.walk.hip)
    close(knee.torque, hand.walk.knee)
    close(hip.rms, hand.walk.hipRms)
    close(knee.rms, hand.walk.kneeRms)
  })

  test('trot, hop, drop, slope', () => {
    close(motion('trot').hip.torque, hand.trot.hip)
    close(motion('trot').knee.torque, hand.trot.knee)
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
  expect(statics?.results.knee).toMatch(/N m|N mm/)
})

test('an unreachable path is said, and not a number made up', () => {
  const far = { ...CASES.walk.stance(leg, bare)!, stepLength: 0.6 }
  const { reached, farthest, reach } = motionOver(leg, bareSheet, far)
  expect(reached).toBe(false)
  expect(farthest).toBeGreaterThan(reach)
})
