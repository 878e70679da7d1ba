import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ringEdgePressure } from '../../src/fasteners/index.js'

const at = (moment: number, innerDiameter = 10e-3, clampLoad = 1200) =>
  ringEdgePressure.si({ clampLoad, outerDiameter: 20e-3, innerDiameter, moment })

describe('pressure at the edge of a clamped ring', () => {
  test('at the moment at which it begins to gape it is twice the mean, and passes into the open joint without a step', () => {
    const gap = (1200 * (20e-3 ** 2 + 10e-3 ** 2)) / (8 * 20e-3)
    const { edgePressure, meanPressure } = at(gap)
    expect(edgePressure / meanPressure).toBeCloseTo(2, 12)
    expect(at(gap * (1 + 1e-9)).state).toBe('gaping')
    expect(at(gap * (1 + 1e-9)).edgePressure / edgePressure).toBeCloseTo(1, 7)
  })

  test('more moment never presses less, and a wider hole presses more while the joint is closed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 13, noNaN: true }), fc.double({ min: 1, max: 1.5, noNaN: true }), (moment, more) => {
        expect(at(moment * more).edgePressure).toBeGreaterThanOrEqual(at(moment).edgePressure * (1 - 1e-9))
      }),
      { seed: 7 },
    )
    expect(at(2, 12e-3).edgePressure).toBeGreaterThan(at(2).edgePressure)
  })

  test('a disc without a hole is taken, and a moment beyond its edge has no bound', () => {
    // Core of a disc: a quarter of its radius.
    expect(at(1200 * 2.5e-3, 0).edgePressure / at(0, 0).meanPressure).toBeCloseTo(2, 9)
    expect(at(12)).toMatchObject({ state: 'tips', edgePressure: Number.POSITIVE_INFINITY })
    expect(() => ringEdgePressure({ clampLoad: '1 N', outerDiameter: '10 mm', innerDiameter: '11 mm', moment: '1 N m' })).toThrow(
      /must be larger than the inner diameter/,
    )
  })
})
