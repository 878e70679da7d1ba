import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { assess, type CaseId, describeLeg, withFields } from '../../src/leg/index.js'

const read = (name: string) => describeLeg(readFileSync(new URL(`../../examples/${name}-leg-revised.yaml`, import.meta.url), 'utf8'))
const leg = read('mudflat')
const verdict = (of: typeof leg, change: Readonly<Record<string, unknown>>, cases: readonly CaseId[]) =>
  assess(Object.keys(change).length === 0 ? of : withFields(of, change as never), { cases })
const check = (of: ReturnType<typeof verdict>, id: string, joint?: string) => {
  const found = of.checks.find((one) => one.id === id && (joint === undefined || one.joint === joint))
  if (found === undefined) throw new Error(`${id} was not evaluated: ${of.notEvaluated.find((one) => one.id === id)?.why}`)
  return found
}

describe('legs that would break without the checks that look for it', () => {
  test('a thin brittle link that bends enough in the warm shatters in a landing in the cold', () => {
    const thin = { 'links.lower.material': 'PLA', 'links.lower.section.wall': '0.8 mm', 'loadCases.airs.cold.temperature': '-25 degC' }
    const after = verdict(leg, thin, ['coldDrop'])
    expect(check(after, 'lowerLink.bending').reserve).toBeGreaterThan(1)
    expect(check(after, 'lowerLink.brittle').reserve).toBeLessThan(1)
    expect(check(verdict(leg, {}, ['coldDrop']), 'lowerLink.brittle').reserve).toBeGreaterThan(1)
  })

  test('the ring of a bearing splits a printed seat that is pressed too tight', () => {
    const tight = verdict(leg, { 'bearings.hip.seatInterference': '0.5 mm' }, ['coldMorning'])
    expect(check(tight, 'bearing.seatSplit').reserve).toBeLessThan(0.6)
    expect(tight.passes).toBe(false)
  })

  test('screws strip a shallow thread in the motor, and the longest that stays clear of the winding is named', () => {
    const shallow = verdict(leg, { 'motors.main.tapDepth': '2 mm' }, ['stand'])
    expect(check(shallow, 'motorBolt.length').reserve).toBeLessThan(1)
    expect(check(shallow, 'motorBolt.strip').reserve).toBeLessThan(check(verdict(leg, {}, ['stand']), 'motorBolt.strip').reserve)
    // Two layers of 4 and 7 mm, a washer of half a millimetre, and the hole.
    expect(check(shallow, 'motorBolt.length', 'knee').notes.join()).toMatch(/no screw may be longer than 13\.5 mm/)
  })

  test('printed faces flatten under a screw more than metal ones, and by how much is a range', () => {
    const bare = { 'bolts.stack.sleeves': false }
    const aluminium = [7, 8].map((mm) => ({ material: 'aluminium 6061-T6', thickness: `${mm} mm` }))
    const printed = check(verdict(leg, bare, ['walk']), 'stackBolt.slip')
    const metal = check(verdict(leg, { ...bare, 'bolts.stack.stack': aluminium }, ['walk']), 'stackBolt.slip')
    expect(printed.reserve).toBeLessThan(metal.reserve)
    for (const one of [printed, metal]) {
      expect(one.reserve).toBeGreaterThan(1)
      expect(one.range.worst as number).toBeLessThan(0.7 * one.reserve)
    }
    expect(printed.reliesOn.map(({ what }) => what).join()).toContain('embedding of a printed face')
    expect(metal.reliesOn.map(({ what }) => what).join()).toContain('embedding of a machined face')
  })

  test.each([
    ['cord.slack', leg],
    ['belt.jump', read('orchard')],
  ])('%s counts that its pretension is set by hand', (id, of) => {
    const scatter = (share: number) => verdict(of, { 'joints.knee.drive.pretensionScatter': share }, ['coldDrop'])
    const [careful, rough] = [0.02, 0.3].map((share) => check(scatter(share), id, 'knee'))
    expect(rough!.reserve).toBeCloseTo(careful!.reserve, 9)
    expect(rough!.range.worst as number).toBeLessThan(0.85 * (careful!.range.worst as number))
  })

  test('a heavier motor on the upper link loads what swings it and feeds it', () => {
    const [light, heavy] = ['0.41 kg', '1.4 kg'].map((mass) => verdict(leg, { 'motors.main.mass': mass }, ['walk', 'trot']))
    for (const [id, joint] of [
      ['supply.current', undefined],
      ['motor.swing', 'hip'],
    ] as const)
      expect(check(heavy!, id, joint).reserve, id).toBeLessThan(check(light!, id, joint).reserve)
    expect(() => withFields(leg, { 'motors.main.mass': '11 kg' })).toThrow(/heavier than one link with what it carries/)
  })

  test.each([
    ['a slow loop', { 'controllers.main.loopRate': '100 Hz' }],
    ['a slow bus', { 'controllers.main.busDelay': '6 ms' }],
  ])('%s shakes the leg on its cord', (_, change) => {
    expect(check(verdict(leg, {}, ['walk']), 'controller.delay', 'knee').reserve).toBeGreaterThan(1)
    expect(check(verdict(leg, change, ['walk']), 'controller.delay', 'knee').reserve).toBeLessThan(0.6)
  })
})
