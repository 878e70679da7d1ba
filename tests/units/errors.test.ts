import { expect, test } from 'vitest'
import { InputError, issue, refuse } from '../../src/units/index.js'

test('refuse throws one issue, as a hand-built InputError would', () => {
  expect(() => refuse('demo.plate', 'motors[1].mass', '5 mm', "must be a mass such as '5 kg'")).toThrow(
    new InputError('demo.plate', [{ path: 'motors[1].mass', given: "'5 mm'", accepts: "must be a mass such as '5 kg'" }]),
  )
  expect(issue('links', undefined, 'must be a list')).toEqual({ path: 'links', given: 'missing', accepts: 'must be a list' })
})
