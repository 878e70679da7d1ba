import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { calculationOf, placeOf } from '../../src/leg/calculation.js'
import type { StanceId } from '../../src/leg/cases/events.js'
import { describeLeg } from '../../src/leg/document/describe.js'
import { legNumbers } from '../../src/leg/numbers.js'
import { stride } from '../../src/leg/parts/motion/values.js'
import hand from '../oracles/leg-hand.json' with { type: 'json' }

const text = readFileSync(new URL('../../examples/mudflat-leg-first.yaml', import.meta.url), 'utf8')
const x = legNumbers(describeLeg(text))
const calculation = calculationOf(x)
const motion = (id: StanceId) => calculation.get(stride, placeOf(calculation, { leg: 'leg', stance: id }) as never)
const close = (x: number, expected: number, within = 1e-12) =>
  expect(Math.abs(x - expected)).toBeLessThan(within * Math.max(1, Math.abs(expected)))
/** A peak of the swing is looked for until a step would raise it by less than a millionth. */
const PEAK = 1e-5

describe('joint torques against a calculation by hand (oracles/leg-hand.py: triangles, moment balances, positions differentiated twice)', () => {
  test('stand', () => {
    const m = motion('stand')
    const { vertical } = m
    close(vertical, hand.stand.force)
    close(m.hipTorque, hand.stand.hip)
    close(m.kneeTorque, hand.stand.knee)
    close(m.sidewaysTorque, Math.abs(hand.stand.sideways))
    expect(m.hipShaftTorque).toBe(m.hipTorque)
  })

  test.each(['walk', 'trot'] as const)(
    '%s: largest torque through the cord and at the motor, and root mean square over the stride',
    (id) => {
      const m = motion(id)
      close(m.hipTorque, hand[id].hip)
      close(m.kneeTorque, hand[id].knee)
      close(m.hipShaftTorque, hand[id].hipShaft, id === 'trot' ? PEAK : undefined)
      close(m.kneeShaftTorque, hand[id].kneeShaft, id === 'trot' ? PEAK : undefined)
      close(m.hipShaftRms, hand[id].hipShaftRms)
      close(m.kneeShaftRms, hand[id].kneeShaftRms)
    },
  )

  test('a blocked leg carries, and speeds nothing up', () => {
    const m = motion('blocked')
    close(m.hipTorque, hand.stall.hip)
    close(m.kneeTorque, hand.stall.knee)
    expect(m.hipShaftTorque).toBe(m.hipTorque)
    expect(m.hipSpeed).toBe(0)
  })

  test('walk, hop, drop, slope', () => {
    close(motion('walk').vertical, hand.walk.force)
    close(motion('drop').vertical, hand.drop.force)
    close(motion('drop').kneeTorque, hand.drop.knee)
    close(motion('hop').vertical, hand.hop.force)
    close(motion('slope').vertical, hand.slope.force)
    close(motion('slope').forward, hand.slope.forward)
  })
})

test('an unreachable path is reported as out of reach, with its farthest point', () => {
  const far = calculationOf({ ...x, gaits: { ...x.gaits, walk: { ...x.gaits.walk!, stepLength: 0.6 } } })
  const { reached, farthest } = far.get(stride, placeOf(far, { leg: 'leg', stance: 'walk' }) as never)
  expect(reached).toBe('no')
  expect(farthest).toBeGreaterThan(x.links.upper.length + x.links.lower.length)
})
