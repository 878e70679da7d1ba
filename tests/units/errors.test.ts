import { expect, test } from 'vitest'
import { InputError, issue, type Kind, quantity, refuse } from '../../src/units/index.js'

test('refuse throws one issue, as a hand-built InputError would', () => {
  expect(() => refuse('demo.plate', 'motors[1].mass', '5 mm', "must be a mass such as '5 kg'")).toThrow(
    new InputError('demo.plate', [{ path: 'motors[1].mass', given: "'5 mm'", accepts: "must be a mass such as '5 kg'" }]),
  )
  expect(issue('links', undefined, 'must be a list')).toEqual({ path: 'links', given: 'missing', accepts: 'must be a list' })
})

test('a message names the unit that is missing or was meant, and a whole number where one is counted', () => {
  const rejected = (kind: Kind, given: unknown) => {
    try {
      quantity(kind, given as never)
    } catch (error) {
      return (error as InputError).issues[0]?.accepts
    }
    return undefined
  }
  expect(rejected('force', '100')).toMatch(/^must be a force such as '5 N': '100' has no unit; units of force are mN, N,/)
  expect(rejected('length', '5 inches')).toMatch(/did you mean in\?$/)
  expect(rejected('time', '1 yr')).toMatch(/did you mean year\?$/)
  expect(rejected('count', undefined)).toBe('must be a count such as 3')
  expect(rejected('ratio', undefined)).toBe('must be a ratio such as 0.2')
})
