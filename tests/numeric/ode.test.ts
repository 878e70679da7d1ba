import { describe, expect, test } from 'vitest'
import { type Derivative, type OdeProblem, type OdeSolution, solveNonStiff, solveStiff } from '../../src/numeric/index.js'
import oracle from '../oracles/numeric-ode.json' with { type: 'json' }

const both: [string, (problem: OdeProblem) => OdeSolution][] = [
  ['solveNonStiff', solveNonStiff],
  ['solveStiff', solveStiff],
]

const robertson: Derivative = (_t, y, out) => {
  const a = 0.04 * y[0]!
  const b = 1e4 * y[1]! * y[2]!
  const c = 3e7 * y[1]! ** 2
  out[0] = -a + b
  out[1] = a - b - c
  out[2] = c
}

const { capacity, links, ambient, power, rise } = oracle.network
const network: Derivative = (_t, y, out) => {
  for (let i = 0; i < 5; i++) out[i] = power[i]! - ambient[i]! * y[i]!
  for (const [i, j, g] of links as [number, number, number][]) {
    const flow = g * (y[i]! - y[j]!)
    out[i] = out[i]! - flow
    out[j] = out[j]! + flow
  }
  for (let i = 0; i < 5; i++) out[i] = out[i]! / capacity[i]!
}

const swing: Derivative = (_t, y, out) => {
  out[0] = y[1]!
  out[1] = -y[0]!
}

describe('stiff reference problems', () => {
  // H. H. Robertson 1966, in E. Hairer, G. Wanner, Solving ODEs II, sec. IV.1; reference values from scipy at 1e-12 (two methods).
  for (const tolerance of [1e-4, 1e-6, 1e-8]) {
    test(`Robertson's kinetics at relative tolerance ${tolerance}`, () => {
      for (const { t, y } of oracle.robertson) {
        const solution = solveStiff({
          derivative: robertson,
          start: 0,
          end: t,
          initial: [1, 0, 0],
          relativeTolerance: tolerance,
          absoluteTolerance: [1e-2 * tolerance, 1e-6 * tolerance, 1e-2 * tolerance],
        })
        for (let i = 0; i < 3; i++) expect(Math.abs(solution.yEnd[i]! / y[i]! - 1)).toBeLessThan(50 * tolerance)
        // Mass is neither made nor lost: the right-hand sides add up to nothing.
        expect(solution.yEnd[0]! + solution.yEnd[1]! + solution.yEnd[2]!).toBeCloseTo(1, 10)
        expect(solution.steps).toBeLessThan(1000)
      }
    })
  }

  test("van der Pol's oscillator, from Hairer & Wanner's test set", () => {
    const solution = solveStiff({
      derivative: (_t, y, out) => {
        out[0] = y[1]!
        out[1] = ((1 - y[0]! ** 2) * y[1]! - y[0]!) / 1e-6
      },
      jacobian: (_t, y, out) => {
        out[0] = 0
        out[1] = 1
        out[2] = (-2 * y[0]! * y[1]! - 1) / 1e-6
        out[3] = (1 - y[0]! ** 2) / 1e-6
      },
      start: 0,
      end: 2,
      initial: [2, 0],
      relativeTolerance: 1e-7,
      absoluteTolerance: 1e-9,
    })
    expect(Math.abs(solution.yEnd[0]! / oracle.vanDerPol.y[0]! - 1)).toBeLessThan(1e-6)
    expect(Math.abs(solution.yEnd[1]! / oracle.vanDerPol.y[1]! - 1)).toBeLessThan(2e-6)
  })

  test('an extremely fast mode dies out instead of ringing (Prothero & Robinson 1974)', () => {
    const solution = solveStiff({
      derivative: (t, y, out) => {
        out[0] = -1e8 * (y[0]! - Math.cos(t)) - Math.sin(t)
      },
      start: 0,
      end: 10,
      initial: [3],
      relativeTolerance: 1e-6,
      absoluteTolerance: 1e-8,
    })
    expect(solution.yEnd[0]).toBeCloseTo(Math.cos(10), 6)
    expect(solution.at(5)[0]).toBeCloseTo(Math.cos(5), 5)
    expect(solution.steps).toBeLessThan(300)
  })
})

describe('a heat network of five nodes against the matrix exponential', () => {
  for (const [name, solve] of both) {
    test(name, () => {
      const solution = solve({
        derivative: network,
        start: 0,
        end: 3600,
        initial: new Float64Array(5),
        relativeTolerance: 1e-7,
        absoluteTolerance: 1e-6,
      })
      for (const { t, y } of rise) {
        const got = solution.at(t)
        for (let i = 0; i < 5; i++) expect(Math.abs(got[i]! - y[i]!)).toBeLessThan(1e-5 * Math.max(...y))
      }
    })
  }
})

describe('order and dense output', () => {
  for (const [name, solve] of both) {
    test(`${name}: the error follows the tolerance, at the end and between the steps`, () => {
      let before = Infinity
      for (const tolerance of [1e-4, 1e-6, 1e-8, 1e-10]) {
        const solution = solve({
          derivative: swing,
          start: 0,
          end: 20,
          initial: [0, 1],
          relativeTolerance: tolerance,
          absoluteTolerance: tolerance,
        })
        let error = 0
        for (let t = 0; t <= 20; t += 0.0371) error = Math.max(error, Math.abs(solution.at(t)[0]! - Math.sin(t)))
        expect(error).toBeLessThan(200 * tolerance)
        expect(error).toBeLessThan(0.2 * before)
        before = error
      }
    })

    test(`${name}: the interpolant meets the steps and writes into a given array`, () => {
      const solution = solve({ derivative: swing, start: 1, end: 4, initial: [1, 0] })
      const out = new Float64Array(2)
      for (let k = 0; k < solution.t.length; k++) {
        expect(solution.at(solution.t[k]!, out)).toBe(out)
        expect(out[0]).toBe(solution.y[2 * k])
      }
      expect(solution.t[0]).toBe(1)
      expect(solution.tEnd).toBe(4)
    })
  }
})

describe('events', () => {
  // A ball thrown up from the ground: y = 3 t - 4.905 t²; lands at 6/9.81.
  const ball: Derivative = (_t, y, out) => {
    out[0] = y[1]!
    out[1] = -9.81
  }
  for (const [name, solve] of both) {
    test(`${name}: a terminal event ends the motion where it happens`, () => {
      const solution = solve({
        derivative: ball,
        start: 0,
        end: 10,
        initial: [0, 3],
        events: [{ value: (_t, y) => y[0]!, direction: 'falling', terminal: true }, { value: (_t, y) => y[1]! }],
      })
      expect(solution.ended).toBe('event')
      expect(solution.tEnd).toBeCloseTo(6 / 9.81, 10)
      expect(solution.yEnd[1]).toBeCloseTo(-3, 9)
      expect(solution.events.map((e) => e.event)).toEqual([1, 0])
      expect(solution.events[0]!.t).toBeCloseTo(3 / 9.81, 10)
      expect(() => solution.at(1)).toThrowError(expect.objectContaining({ reason: 'outOfRange' }))
      expect(solution.at(solution.tEnd)[0]).toBeCloseTo(0, 10)
    })

    test(`${name}: every crossing is found, by direction`, () => {
      const solve1 = (direction: 'rising' | 'falling' | 'either') =>
        solve({
          derivative: swing,
          start: 0,
          end: 30,
          initial: [0, 1],
          relativeTolerance: 1e-9,
          absoluteTolerance: 1e-9,
          events: [{ value: (_t, y) => y[0]!, direction }],
        })
      const multiples = (list: OdeSolution) => list.events.map((e) => e.t / Math.PI)
      for (const [k, x] of multiples(solve1('either')).entries()) expect(x).toBeCloseTo(k + 1, 6)
      expect(multiples(solve1('either'))).toHaveLength(9)
      expect(multiples(solve1('falling')).map(Math.round)).toEqual([1, 3, 5, 7, 9])
      expect(multiples(solve1('rising')).map(Math.round)).toEqual([2, 4, 6, 8])
    })

    test(`${name}: a condition that is met and lost again within one step is still seen`, () => {
      const solution = solve({
        derivative: (_t, _y, out) => {
          out[0] = 1
        },
        start: 0,
        end: 1,
        initial: [0],
        firstStep: 1,
        events: [{ value: (t) => (t - 0.3) * (t - 0.7) }],
      })
      expect(solution.steps).toBeLessThan(4)
      expect(solution.events.map((e) => e.t)).toEqual([expect.closeTo(0.3, 9), expect.closeTo(0.7, 9)])
    })
  }
})

describe('jumps', () => {
  for (const [name, solve] of both) {
    test(`${name}: a load that switches is met exactly at its stops`, () => {
      // One node heated with 10 W for 100 s, off for 100 s, and so on: closed form by steps.
      const tau = 60
      const heated = (t: number) => Math.floor(t / 100) % 2 === 0
      const stops = [100, 200, 300, 400]
      const solution = solve({
        derivative: (t, y, out) => {
          out[0] = ((heated(t) ? 10 : 0) - y[0]!) / tau
        },
        start: 0,
        end: 500,
        initial: [0],
        stops,
        relativeTolerance: 1e-8,
        absoluteTolerance: 1e-8,
      })
      let y = 0
      for (let k = 0; k < 5; k++) y = (k % 2 === 0 ? 10 : 0) + (y - (k % 2 === 0 ? 10 : 0)) * Math.exp(-100 / tau)
      expect(solution.yEnd[0]).toBeCloseTo(y, 6)
      for (const stop of stops) expect(solution.t).toContain(stop)
      expect(solution.rejected).toBeLessThanOrEqual(5)
    })

    test(`${name}: stops that coincide with the ends or lie outside do nothing`, () => {
      const plain = solve({ derivative: swing, start: 0, end: 3, initial: [1, 0] })
      const stopped = solve({ derivative: swing, start: 0, end: 3, initial: [1, 0], stops: [-1, 0, 3, 7] })
      expect(stopped.yEnd).toEqual(plain.yEnd)
    })
  }
})

describe('bad problems', () => {
  const good: OdeProblem = { derivative: swing, start: 0, end: 1, initial: [1, 0] }
  const bad: [string, Partial<OdeProblem>][] = [
    ['end before start', { end: -1 }],
    ['no state', { initial: [] }],
    ['state not finite', { initial: [1, Number.NaN] }],
    ['tolerances of zero', { relativeTolerance: 0, absoluteTolerance: 0 }],
    ['one tolerance for two states', { absoluteTolerance: [1e-6] }],
    ['negative step', { maxStep: -1 }],
  ]
  for (const [name, solve] of both) {
    for (const [what, change] of bad) {
      test(`${name}: ${what}`, () =>
        expect(() => solve({ ...good, ...change })).toThrowError(expect.objectContaining({ reason: 'badArgument' })))
    }

    test(`${name}: a solution that grows without limit is reported with time and state`, () => {
      // y' = y², y(0) = 1 is infinite at t = 1.
      const explode = () =>
        solve({
          derivative: (_t, y, out) => {
            out[0] = y[0]! ** 2
          },
          start: 0,
          end: 2,
          initial: [1],
        })
      expect(explode).toThrowError(expect.objectContaining({ name: 'NumericError', routine: name }))
      try {
        explode()
      } catch (error) {
        expect((error as { details: { t: number } }).details.t).toBeCloseTo(1, 3)
      }
    })

    test(`${name}: a right-hand side that is not a number is reported`, () => {
      expect(() =>
        solve({
          ...good,
          derivative: (t, _y, out) => {
            out[0] = t > 0.5 ? Number.NaN : 1
            out[1] = 0
          },
        }),
      ).toThrowError(expect.objectContaining({ reason: 'notFinite' }))
    })

    test(`${name}: the step limit holds`, () => {
      expect(() => solve({ ...good, end: 1000, maxSteps: 10 })).toThrowError(expect.objectContaining({ reason: 'noConvergence' }))
    })

    test(`${name}: with dense: false only the end is kept`, () => {
      const lean = solve({ ...good, dense: false })
      expect(lean.t).toEqual(Float64Array.of(0, 1))
      expect(lean.yEnd).toEqual(solve(good).yEnd)
      expect(() => lean.at(0.5)).toThrow('dense: false')
    })
  }
})
