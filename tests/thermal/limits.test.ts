// Where the notes on validity begin.
import { expect, test } from 'vitest'
import { airProperties } from '../../src/thermal/index.js'

test('air has no note from −20 to 140 °C', () => {
  for (const temperature of ['-20 degC', '140 degC'] as const) expect(airProperties({ temperature }).conductivity.notes).toBeUndefined()
  for (const temperature of ['-20.1 degC', '140.1 degC'] as const)
    expect(airProperties({ temperature }).conductivity.notes?.[0]?.text).toContain('from −20 to 140 °C')
})
