import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { describeLeg, editLegText, learn } from '../../src/leg/index.js'
import { roundedBand, roundedQuantity, roundedScatter } from '../../src/leg/learning/rounded.js'

const read = (name: string) => readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8')

describe('a number that was learnt has the digits that its error leaves', () => {
  test.each([
    // A standard error of 3 N leaves tenths: they move it by at most 0.05 N, a sixtieth of it.
    [173.28461, [167.4, 179.2], 'force', '173.3 N'],
    [173.28461, [114, 232], 'force', '173 N'],
    [24_317.2, [22_300, 26_300], 'axialRigidity', '24.3 kN'],
    [0.71234567, [0.61, 0.81], 'thermalResistance', '0.712 K/W'],
    [0.012345678, [0.0121, 0.0126], 'length', '12.35 mm'],
  ] as const)('%s in %s', (value, interval, kind, text) => {
    expect(`${roundedQuantity(value, interval, kind)}`).toBe(text)
  })

  test('at most a twentieth of its standard error is lost', () => {
    let seed = 1
    const next = () => {
      seed = (seed * 16_807) % 2_147_483_647
      return seed / 2_147_483_647
    }
    for (let i = 0; i < 500; i++) {
      const value = 10 ** (8 * next() - 4)
      const error = value * 10 ** (-3 * next())
      const interval = [value - 1.96 * error, value + 1.96 * error] as const
      for (const kind of ['force', 'length', 'speedConstant', 'angle'] as const)
        expect(Math.abs(roundedQuantity(value, interval, kind).si - value)).toBeLessThanOrEqual(0.0501 * error)
      const [low, typical, high] = roundedBand({ value, interval, spread: interval } as never)
      expect(Math.abs(typical - value)).toBeLessThanOrEqual(0.0501 * error)
      expect(low).toBeLessThanOrEqual(Math.min(typical, interval[0] > 0 ? interval[0] : typical))
      expect(high).toBeGreaterThanOrEqual(interval[1] * (1 - 1e-12))
      expect(roundedScatter(error / value)).toBeGreaterThanOrEqual((error / value) * (1 - 1e-12))
    }
  })
})

test('the document that is written reads back as the leg that was learnt', () => {
  const text = read('mudflat-leg-first.yaml')
  const leg = describeLeg(text)
  const { leg: learnt, moved } = learn(
    leg,
    { 'windup knee': read('stand-logs/windup-knee.csv'), 'pretension knee': read('stand-logs/pretension-knee.csv') },
    { cases: ['stand'] },
  )
  const written = moved.filter(({ state }) => state === 'corrected' || state === 'confirmed').map(({ path }) => path)
  expect(written.length).toBeGreaterThan(0)
  const at = (of: unknown, path: string) => path.split('.').reduce<unknown>((inner, name) => (inner as Record<string, unknown>)[name], of)
  const edited = editLegText(text, Object.fromEntries(written.map((path) => [path, at(learnt, path)])))
  for (const path of written) {
    const [before, after] = [learnt, describeLeg(edited)].map((one) => JSON.stringify(at(one, path)))
    expect(after, path).toBe(before)
  }
  // No number in the lines that were written has more than five digits.
  const lines = edited.split('\n').filter((line) => !text.includes(line))
  expect(lines.length).toBeGreaterThan(0)
  for (const line of lines) expect(line).not.toMatch(/\d{6}|\d\.\d{5}/)
})
