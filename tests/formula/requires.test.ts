import { expect, test } from 'vitest'
import { formula } from '../../src/formula/index.js'
import { InputError } from '../../src/units/index.js'

const wall = formula('test.wall', {
  inputs: { outer: { fields: { diameter: { kind: 'length', above: 0 } } }, bore: { kind: 'length', above: 0 } },
  output: 'length',
  source: [{ level: 'computed', where: 'half the difference' }],
  requires: { 'outer.diameter': { accepts: 'must be larger than the bore', holds: ({ outer, bore }) => outer.diameter > bore } },
  si: ({ outer, bore }) => (outer.diameter - bore) / 2,
})

test('a combination that cannot be is bad input that names its path', () => {
  expect(wall({ outer: { diameter: '10 mm' }, bore: '4 mm' }).in('mm')).toBeCloseTo(3, 12)
  const act = () => wall({ outer: { diameter: '3 mm' }, bore: '4 mm' })
  expect(act).toThrow(InputError)
  expect(act).toThrow("test.wall: outer.diameter is '3 mm'; must be larger than the bore")
})

test('each bad input is told before their combination', () => {
  expect(() => wall({ outer: { diameter: '3 mm' }, bore: '-4 mm' })).toThrow('bore')
  expect(() => wall({ outer: { diameter: '3 mm' }, bore: '-4 mm' })).not.toThrow('larger than the bore')
})
