import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { atLeast, atMost } from '../../src/formula/index.js'

const number = fc.integer({ min: -5, max: 5 })

test('a limit is used by at most 1 exactly where it is kept, whatever the signs', () => {
  fc.assert(
    fc.property(number, number, (value, limit) => {
      expect(atMost('a', 'ratio', value, limit).use <= 1).toBe(value <= limit)
      expect(atLeast('a', 'ratio', value, limit).use <= 1).toBe(value >= limit)
    }),
    { seed: 1, numRuns: 300 },
  )
})
