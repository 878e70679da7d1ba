import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Facts } from '../../src/leg/drawings/facts.js'
import { assess, describeLeg, legDrawingNamed } from '../../src/leg/index.js'
import { airTemperature } from '../../src/leg/parts/load/fields.js'
import { heat } from '../../src/leg/parts/motors/heat.js'
import { plateProfile } from '../../src/leg/parts/plates/profile.js'
import { contact, cooling } from '../../src/leg/parts/plates/values.js'
import { chebyshev } from '../../src/numeric/index.js'
import { lawPlace } from '../../src/thermal/chebyshev-law.js'
import { RISES } from '../../src/thermal/cooling-laws.js'

const verdictOf = (name: string) =>
  assess(describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')), { cases: ['hotAfternoon'] })

describe.each(['mudflat-leg-first', 'mudflat-leg-revised', 'orchard-leg-first'])('the plate of the hip of %s', (name) => {
  const verdict = verdictOf(name)
  const facts = new Facts(verdict)
  const at = { ...facts.case('hotAfternoon'), joint: 'hip' }
  const profile = facts.get(plateProfile, at)
  const { mount } = facts.get(heat, at)
  const air = facts.get(airTemperature, at)

  test('sheds the heat that the law of its mount gives, and its ring is below the mounting face by the contact', () => {
    const { mountConductance, mountRadiantShare, radiant } = facts.get(cooling, at)
    const place = lawPlace(RISES, mount - air)
    const far = air + chebyshev(mountRadiantShare, place) * (radiant - air)
    const heatOfLaw = Math.exp(chebyshev(mountConductance, place)) * (mount - far)
    expect(Math.abs(profile.shed / heatOfLaw - 1)).toBeLessThan(1e-3)
    expect(profile.ring).toBeCloseTo(mount - profile.shed * facts.get(contact, at), 9)
  })

  test('has the temperature of its ring as the mean over the ring, and falls from the edge of the motor to its rim', () => {
    const { radii, motorFace, freeFace, ring } = profile
    expect(Math.max(...motorFace)).toBeGreaterThanOrEqual(ring)
    expect(motorFace.at(-1)!).toBeLessThan(ring)
    expect(motorFace.at(-1)!).toBeGreaterThan(air)
    // The edge of the motor is the first of the last 25 radii.
    for (let i = radii.length - 24; i < radii.length; i++) {
      expect(motorFace[i]!).toBeLessThan(motorFace[i - 1]! + 3e-4 * (ring - air))
      expect(freeFace[i]!).toBeLessThan(freeFace[i - 1]! + 3e-4 * (ring - air))
    }
  })

  test('is drawn with its temperatures under the motor and at the rim', () => {
    const rows = legDrawingNamed(verdict, 'plate-heat-hip')?.table.rows ?? []
    const worst = verdict.checks.find(({ id, joint }) => id === 'motor.plate' && joint === 'hip')!
    const drawn = new Facts(verdict)
    const { ring, motorFace } = drawn.get(plateProfile, { ...drawn.case(worst.case), joint: 'hip' })
    const shown = (end: string) => Number(rows.find(([row = '']) => row.endsWith(end))?.[1])
    expect(shown('mean under the motor')).toBeCloseTo(ring - 273.15, 1)
    expect(shown('at the rim')).toBeCloseTo(motorFace.at(-1)! - 273.15, 1)
  })
})

test('a motor without a steady temperature has no curve, and the drawing says why', () => {
  const drawing = legDrawingNamed(
    assess(describeLeg(readFileSync(new URL('../../examples/mudflat-leg-first.yaml', import.meta.url), 'utf8'))),
    'plate-heat-knee',
  )
  expect(drawing?.svg).toMatch(/no steady temperature/i)
})
