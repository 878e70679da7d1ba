import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula } from '../../src/formula/index.js'
import { randomStream } from '../../src/numeric/index.js'
// Renamed here: a bare `fitted(` reads as a focused test to the linter.
import { fit as fitted } from '../../src/study/index.js'
import { InputError, N } from '../../src/units/index.js'
import { regressions } from '../numeric/nist.data.js'

const memory = [{ level: 'unverified', where: 'test' }] as const
const x = 'ratio'

/** A regression of the archive as a formula of its parameters and of x. */
const asFormula = ({ model }: (typeof regressions)[number]) =>
  formula('test.regression', {
    inputs: {
      b1: x,
      b2: x,
      b3: { kind: x, default: 0 },
      b4: { kind: x, default: 0 },
      b5: { kind: x, default: 0 },
      b6: { kind: x, default: 0 },
      b7: { kind: x, default: 0 },
      x,
    },
    output: 'ratio',
    source: memory,
    si: (b) => model(Float64Array.of(b.b1, b.b2, b.b3, b.b4, b.b5, b.b6, b.b7), b.x),
  })

describe('certified regressions (NIST StRD) through a formula, from both published starts', () => {
  for (const r of regressions)
    test(r.name, () => {
      for (const start of r.starts) {
        const result = fitted(asFormula(r), {
          parameters: Object.fromEntries(start.map((b, i) => [`b${i + 1}`, b])),
          data: { x: r.x },
          measured: r.y,
        })
        expect(result.converged).toBe(true)
        r.certified.forEach((b, i) => {
          expect(result.value(`b${i + 1}`).si / b).toBeCloseTo(1, 6)
          expect(result.parameters[i]!.standardError!.si / r.standardErrors[i]!).toBeCloseTo(1, 5)
        })
        expect(result.sumOfSquares / r.sumOfSquares).toBeCloseTo(1, 9)
      }
    })
})

const line = formula('test.line', {
  inputs: { slope: x, offset: { kind: x, min: 0 }, twin: x, idle: x, t: x },
  output: { y: 'force', z: 'force' },
  source: memory,
  si: ({ slope, offset, twin, t }) => ({ y: slope * twin * t + offset, z: t }),
})
const ts = Array.from({ length: 30 }, (_, i) => 0.1 * i)
const noisy = (seed: number, sd: number) => {
  const random = randomStream(seed)
  return { unit: 'N', values: ts.map((t) => 3 * t + 1 + random.normal(0, sd)) } as const
}

test('friction from logged tensions: found exactly from exact readings, units converted', () => {
  const wraps = [1, 2, 3, 4] as const
  const result = fitted(slackTension, {
    parameters: { friction: 0.3 },
    data: { wrapAngle: { unit: 'turn', values: wraps } },
    measured: { unit: 'kN', values: wraps.map((turns) => 0.5 * Math.exp(-0.17 * 2 * Math.PI * turns)) },
    fixed: { load: '500 N' },
  })
  expect(result.value('friction').si).toBeCloseTo(0.17, 9)
  expect(result.confounded).toEqual([])
})

test('a straight line: textbook standard errors and a 95 % interval that covers as often as it says', () => {
  let covered = 0
  for (let seed = 1; seed <= 200; seed++) {
    const result = fitted(line, {
      parameters: { slope: 1, offset: 5 },
      data: { t: ts },
      measured: { y: noisy(seed, 0.2) },
      fixed: { twin: 1, idle: 0 },
    })
    const [slope] = result.parameters
    if (slope!.interval![0].si <= 3 && 3 <= slope!.interval![1].si) covered++
    if (seed === 1) {
      const mean = ts.reduce((sum, t) => sum + t, 0) / ts.length
      const sxx = ts.reduce((sum, t) => sum + (t - mean) ** 2, 0)
      expect(slope!.standardError!.si).toBeCloseTo(result.deviation.in('N' as never) / Math.sqrt(sxx), 8)
      expect(result.degreesOfFreedom).toBe(28)
      // Student's t, two-sided 95 %, 28 degrees of freedom, from any table: 2.048.
      const [low, high] = slope!.interval!
      expect((high.si - low.si) / 2 / slope!.standardError!.si).toBeCloseTo(2.048, 3)
      expect(result.checks.map(({ check }) => check)).toEqual(['outliers', 'runs', 'serial correlation', 'normality'])
    }
  }
  // Binomial 200 × 0.95: outside 176 to 199 has a chance of about 1e-4.
  expect(covered).toBeGreaterThan(176)
  expect(covered).toBeLessThan(200)
})

test('what the readings cannot tell is said: a factor twice over, and an input without effect', () => {
  const result = fitted(line, {
    parameters: { slope: 1, twin: 2, idle: 1 },
    data: { t: ts },
    measured: { y: noisy(3, 0.1) },
    fixed: { offset: 1 },
  })
  const messages = result.confounded.map(({ message }) => message)
  expect(messages).toContainEqual(expect.stringContaining('slope and twin cannot be told apart'))
  expect(messages).toContainEqual(expect.stringContaining('idle has no effect'))
  expect(result.parameters.map(({ state }) => state)).toEqual(['undetermined', 'undetermined', 'undetermined'])
  // the product is told all the same
  expect(result.value('slope').si * result.value('twin').si).toBeCloseTo(3, 0)
})

test('two parameters that only nearly coincide are said to be told apart poorly', () => {
  const decay = formula('test.decay', {
    inputs: { a: x, k: x, t: x },
    output: 'ratio',
    source: memory,
    si: ({ a, k, t }) => a * Math.exp(-k * t),
  })
  const random = randomStream(5)
  const late = Array.from({ length: 12 }, (_, i) => 100 + 0.5 * i)
  const result = fitted(decay, {
    parameters: { a: 1, k: 0.01 },
    data: { t: late },
    measured: late.map((t) => Math.exp(-0.01 * t) + random.normal(0, 1e-4)),
  })
  expect(Math.abs(result.correlation('a', 'k'))).toBeGreaterThan(0.98)
  expect(result.confounded[0]?.message).toContain('told apart poorly')
})

test('a parameter pressed against its limit has no error and says why', () => {
  const result = fitted(line, {
    parameters: { slope: 1, offset: 5 },
    data: { t: ts },
    measured: { y: { unit: 'N', values: ts.map((t) => 3 * t - 1) } },
    fixed: { twin: 1, idle: 0 },
  })
  expect(result.parameters[1]).toMatchObject({ state: 'atLimit', standardError: undefined })
  expect(result.toMarkdown()).toContain('at its limit')
})

describe('residual checks find what is wrong', () => {
  const run = (values: readonly number[], deviation?: number) =>
    fitted(line, {
      parameters: { slope: 1, offset: 1 },
      data: { t: ts },
      measured: { y: { unit: 'N', values } },
      fixed: { twin: 1, idle: 0 },
      ...(deviation === undefined ? {} : { deviation: N(deviation) }),
    })
  const failed = (result: ReturnType<typeof run>) => result.checks.filter(({ holds }) => !holds).map(({ check }) => check)

  test('nothing, in good readings', () => expect(failed(run(noisy(1, 0.2).values, 0.2))).toEqual([]))
  test('a spike: named, kept', () => {
    const result = run(noisy(1, 0.2).values.map((y, i) => (i === 13 ? y + 5 : y)))
    expect(failed(result)).toContain('outliers')
    expect(result.checks[0]?.readings).toEqual([13])
    expect(result.residuals).toHaveLength(30)
  })
  test('a wrong shape', () => {
    const result = run(ts.map((t) => t * t))
    expect(failed(result)).toEqual(expect.arrayContaining(['runs', 'serial correlation']))
    expect(result.toMarkdown()).toContain('LOOK')
    expect(JSON.parse(JSON.stringify(result.chart)).description).toContain('Durbin-Watson')
  })
  test('more scatter than was said', () => expect(failed(run(noisy(2, 0.2).values, 0.05))).toContain('size'))
})

const good = { parameters: { slope: 1, offset: 1 }, data: { t: ts }, measured: { y: noisy(1, 0.1) }, fixed: { twin: 1, idle: 0 } } as const
test.each([
  [() => fitted(line, { ...good, parameters: {} }), 'at least one input'],
  [() => fitted(line, { ...good, parameters: { slop: 1 } as never }), 'did you mean slope?'],
  [() => fitted(line, { ...good, data: { t: [1, 2] } }), 'one value for each of 30 readings'],
  [() => fitted(line, { ...good, data: { t: ts.with(4, Number.NaN) } }), 'data.t[4] is NaN; must be finite'],
  [() => fitted(line, { ...good, measured: { y: { unit: 'mm' as never, values: ts } } }), 'measured.y[0]'],
  [() => fitted(line, { ...good, measured: { q: ts } as never }), 'must be one of y, z'],
  [() => fitted(line, { ...good, measured: { y: noisy(1, 1), z: noisy(1, 1) } }), 'one at a time'],
  [() => fitted(line, { ...good, parameters: { slope: 1, t: 1 } as never }), 'one or the other'],
  [
    () => fitted(line, { ...good, parameters: { offset: { start: 3, low: 4, high: 5 } } as never, fixed: { slope: 1, twin: 1, idle: 0 } }),
    'between its low and high',
  ],
  [() => fitted(line, { ...good, fixed: { twin: 1 } }), 'idle is missing'],
  [() => fitted(line, { ...good, data: { t: [1] }, measured: { y: ['1 N'] } }), 'at least as many'],
  [() => fitted(line, { ...good, deviation: N(-1) }), 'above zero'],
])('bad input %#', (call, message) => {
  expect(call).toThrow(InputError)
  expect(call).toThrow(message)
})
