import { describe, expect, test } from 'vitest'
import { shaftFlat } from '../../src/fasteners/index.js'
import { assemblyPlan, assemblyText, assess, checkReserves, legDrawingNamed, legNumbers, withFields } from '../../src/leg/index.js'
import hand from '../oracles/fasteners-flat.json' with { type: 'json' }
import { besideLinks, flattened } from './rod-bearing-legs.js'

const [, large] = hand as [(typeof hand)[0], (typeof hand)[0]]

describe('a flat on the hip shaft instead of a key', () => {
  const { checks, notEvaluated } = assess(flattened, { cases: ['stand', 'drop'] })
  const check = checks.find(({ id }) => id === 'shaftStack.flat')!

  test('its torque is that of a stiff shaft on an elastic bed (oracles/fasteners-flat.py)', () => {
    // The aluminium hub yields at its edge before the shaft of class 8.8 does.
    const strength = 276e6
    expect(Math.abs(check.capacity.si / ((large.torque * strength) / large.edgePressure) - 1)).toBeLessThan(1e-6)
    const friction = notEvaluated.find(({ id }) => id === 'shaftStack.slip')
    expect(friction?.why).toBe('a flat carries the torque of the stack')
    expect(assess(besideLinks, { cases: ['stand'] }).notEvaluated.find(({ id }) => id === 'shaftStack.flat')?.why).toBe(
      'the shaft of the hip has no flat',
    )
  })

  test('a print carries far less', () => {
    const printed = assess(withFields(flattened, { 'shafts.hipShaft.stack.flat.hubMaterial': 'PC' }), { cases: ['drop'] })
    expect(printed.checks.find(({ id }) => id === 'shaftStack.flat')!.capacity.si).toBeLessThan(0.3 * check.capacity.si)
  })

  test('a shallower or shorter flat and a heavier robot leave it less', () => {
    const reserve = (path: string, worse: string) =>
      checkReserves(legNumbers(withFields(flattened, { [path]: worse } as never)), ['drop']).get('shaftStack.flat')!
    const before = checkReserves(legNumbers(flattened), ['drop']).get('shaftStack.flat')!
    for (const [path, worse] of [
      ['shafts.hipShaft.stack.flat.depth', '1 mm'],
      ['shafts.hipShaft.stack.flat.length', '9 mm'],
      ['robot.mass', '9 kg'],
    ] as const)
      expect(reserve(path, worse)).toBeLessThan(before)
  })

  test('plan and drawing show it', () => {
    expect(assemblyText(assemblyPlan(flattened))).toContain('fits the flat of the shaft, 2 mm deep and 14 mm long')
    expect(legDrawingNamed(assess(flattened, { cases: ['stand'] }), 'hip-shaft')?.svg).toContain('flat 2 deep, 14 long')
  })

  test.each([
    [{ depth: '3.5 mm', length: '14 mm', hubMaterial: 'PC' }, /flat.depth is 3.5 mm.*at most a quarter of the shaft \(3 mm\)/],
    [{ depth: '-1 mm', length: '14 mm', hubMaterial: 'PC' }, /flat.depth/],
    [{ depth: '1 mm', length: '14 mm', hubMaterial: 'nothing' }, /flat.hubMaterial/],
  ])('documents that cannot be: %j', (flat, message) => {
    expect(() => withFields(flattened, { 'shafts.hipShaft.stack.flat': flat } as never)).toThrow(message)
  })
  test('one of key and flat', () => {
    const key = { size: '4x4', length: '14 mm', hubDiameter: '30 mm', hubMaterial: 'PC' } as const
    expect(() => withFields(flattened, { 'shafts.hipShaft.stack.key': key })).toThrow(/flat .*must be left out beside a key/)
  })
})

test('the force on the flat turns the shaft, and the bore holds it', () => {
  const given = { shaftDiameter: 0.01, depth: 1e-3, length: 0.01, hubBearingStrength: 3e7, shaftBearingStrength: 6e8 }
  const at = shaftFlat.si({ torque: 3, ...given })
  expect(shaftFlat.si({ torque: at.torqueCapacity, ...given }).edgePressure).toBeCloseTo(3e7, 3)
  // Opposite the flat the bore presses as a cosine over half a turn.
  expect((at.borePressure * 0.005 * 0.01 * Math.PI) / 2).toBeCloseTo(at.force, 6)
  const half = at.width / 2
  expect(at.force * (half - (half - at.pressesFrom) / 3)).toBeCloseTo(3, 9)
})
