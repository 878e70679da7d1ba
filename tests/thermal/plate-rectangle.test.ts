import { describe, expect, test } from 'vitest'
import { rectangleExcess } from '../../src/thermal/plate-rectangle.js'

const aluminium = {
  innerRadius: 6e-3,
  outerRadius: 17.5e-3,
  plateRadius: Math.sqrt((50e-3 * 120e-3) / Math.PI),
  thickness: 3e-3,
  conductivity: 167,
  density: 2700,
  specificHeat: 896,
  rectangle: { width: 50e-3, height: 120e-3 },
  entry: 'even',
  underMotor: 'open',
} as const

describe('what a rectangle resists beyond the round plate of its area', () => {
  const excess = rectangleExcess(aluminium)

  test('goes on beyond the films that are tabulated, with no step but the error of the table, under a thousandth', () => {
    for (const film of [0.5, 300]) {
      const [inside, outside] = [film === 300 ? 299.999 : 0.50001, film === 300 ? 300.001 : 0.49999]
      expect(Math.abs(excess(outside, outside) / excess(inside, inside) - 1)).toBeLessThan(1e-3)
      expect(Math.abs(excess(outside, 20) / excess(inside, 20) - 1)).toBeLessThan(1e-3)
    }
  })

  test('fades where a strong film lets no heat reach the edges, and is finite without a film', () => {
    expect(excess(3000, 3000)).toBeLessThan(0.8 * excess(300, 300))
    expect(excess(1e6, 1e6)).toBeLessThan(0.01 * excess(300, 300))
    const none = excess(0, 0)
    expect(Number.isFinite(none)).toBe(true)
    expect(excess(1e-3, 1e-3) / none).toBeCloseTo(1, 4)
    expect(none).toBeGreaterThan(excess(0.5, 0.5))
  })
})
