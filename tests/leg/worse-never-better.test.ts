import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { reserveOf } from '../../src/leg/assess/compare.js'
import { assess, type CaseId, checkReserves, describeLeg, legNumbers, withFields } from '../../src/leg/index.js'

const leg = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
const checked = (fields: Parameters<typeof withFields>[1], id: string, cases: readonly CaseId[], joint?: string) => {
  const { checks, notEvaluated } = assess(withFields(leg, fields), { cases })
  const check = checks.find((one) => one.id === id && (joint === undefined || one.joint === joint))
  return { check, why: notEvaluated.find((one) => one.id === id)?.why }
}

test('a limit that is exceeded without any demand has no reserve', () => {
  expect(reserveOf(0, -3)).toBe(0)
  expect(reserveOf(-2, -3)).toBe(0)
  expect(reserveOf(-3, -2)).toBe(1000)
  expect(reserveOf(0, 0)).toBe(1000)
})

test('a supply that browns out never looks better than one that just holds', () => {
  const reserves = ['70 mohm', '300 mohm', '1 ohm', '3 ohm'].map(
    (internalResistance) =>
      checked({ 'supply.internalResistance': internalResistance, 'supply.currentLimit': '0.5 A' }, 'supply.current', ['trot']).check!,
  )
  expect(reserves.at(-1)!.notes).toContain('the supply browns out: it cannot deliver the power')
  expect(Math.max(...reserves.map(({ reserve }) => reserve))).toBeLessThan(0.5)
})

test('bolt holes that leave nothing of the hub fail, however hard the bolts clamp', () => {
  const split = (thread: string) =>
    checked(
      {
        'joints.knee.drive.drum.throughBolts': 12,
        'joints.knee.drive.drum.throughBoltThread': thread,
        'joints.knee.drive.drum.throughBoltClampLoad': '2 kN',
      },
      'drum.split',
      ['walk'],
      'knee',
    ).check!
  expect(split('M2').reserve).toBeGreaterThan(1)
  expect(split('M8').reserve).toBe(0)
  expect(split('M8').sentence).toContain('the holes of the through-bolts leave less than a tenth of the hub')
})

test('a bore that leaves nothing of the drum is rejected, and fails in sweeps, however the radius is given', () => {
  const { drive } = leg.joints.knee
  if (drive.kind !== 'cord') throw new Error('the example has a cord drive')
  const { grooveDiameter: _, ...drum } = drive.drum
  const given = (bore: string) => withFields(leg, { 'joints.knee.drive.drum': { ...drum, centreLineRadius: '44.8 mm', bore } })
  expect(() => given('90 mm')).toThrow(/drum.bore is 90 mm.*must be smaller than the diameter at the bottom of the groove \(88 mm\)/)
  const x = legNumbers(given('16 mm'))
  const { knee } = x.joints
  const wide = {
    ...knee,
    drive: { ...knee.drive, drum: { ...drum, centreLineRadius: 0.0448, bore: 0.09, length: 0.014, groovePitch: 0.002 } },
  }
  const reserves = checkReserves({ ...x, joints: { ...x.joints, knee: wide as never } }, ['walk'])
  expect(reserves.get('drum.layers knee')).toBe(0)
  expect(reserves.get('drum.split knee')).toBe(0)
})

test('a hop touches down at the height of touch-down, not at the standing height', () => {
  const demand = (touchDownHeight: string) =>
    checked(
      { 'loadCases.events.hop.touchDownHeight': touchDownHeight, 'loadCases.events.hop.travel': '20 mm' },
      'cord.slack',
      ['hop'],
      'knee',
    ).check!.demand.si
  expect(demand('270 mm')).toBeGreaterThan(1.1 * demand('330 mm'))
})

test('a layer that softens under a plate that holds is still judged for the pressure of the heads', () => {
  const { stack } = leg.bolts
  const { check, why } = checked(
    { 'bolts.stack': { ...stack, sleeves: false, stack: stack!.stack.map((layer) => ({ ...layer, material: 'PLA' })) } },
    'stackBolt.headPressure',
    ['hotAfternoon'],
  )
  expect(why).toBeUndefined()
  expect(check!.reserve).toBeLessThan(1)
})

test('a foot path that comes too near to the hip is out of reach', () => {
  const { check } = checked(
    {
      'links.lower.length': '245 mm',
      'gaits.walk.clearance': '250 mm',
      'joints.knee.range': { lowest: '5 deg', highest: '179 deg' },
      'joints.knee.drive.pinion.length': '20 mm',
    },
    'leg.reach',
    ['walk'],
  )
  expect(check!.reserve).toBe(0)
  expect(check!.sentence).toContain('the foot path comes nearer to the hip than the foot of the folded leg')
})

describe('a slope that no load case walks gets no verdict', () => {
  test.each([
    ['loadCases.events.slopeUp.direction', 'across', /slopeUp.direction is 'across'; is not calculated yet/],
    ['loadCases.events.slopeUp.angle', '-10 deg', /slopeUp.angle .*is not calculated yet: it must be 0 deg or uphill/],
    ['loadCases.events.slopeDown.angle', '10 deg', /slopeDown.angle .*is not calculated yet: it must be 0 deg or downhill/],
  ])('%s', (path, given, message) => {
    expect(() => assess(withFields(leg, { [path]: given }))).toThrow(message)
  })
})
