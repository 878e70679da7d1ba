import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { metricThread, preloadFromTorque, tighteningTorque } from '../../src/fasteners/index.js'
import { formula } from '../../src/formula/index.js'
import { wearDepth } from '../../src/materials/index.js'
import { solveFor } from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'

const memory = [{ level: 'unverified', where: 'test' }] as const
const parabola = formula('test.parabola', {
  inputs: { x: 'ratio', outer: { fields: { shift: 'ratio' } } },
  output: { height: 'ratio', side: { oneOf: ['left', 'right'] } },
  source: memory,
  si: ({ x, outer }) => ({ height: x * x - outer.shift, side: x < 0 ? 'left' : 'right' }),
})
const pole = formula('test.pole', {
  inputs: { x: { kind: 'ratio', min: -2, max: 2 } },
  output: 'ratio',
  source: memory,
  si: ({ x }) => 1 / (x - 0.5),
})

test('wrap angle for a slack tension: ln(500/2)/0.2 = 27.607 rad, by hand', () => {
  const answer = solveFor(slackTension, 'wrapAngle', { load: '500 N', friction: 0.2 }, '2 N')
  expect(answer.state).toBe('solved')
  expect(answer.value.in('rad')).toBeCloseTo(Math.log(250) / 0.2, 10)
  expect(answer.message).toContain('gives 2 N')
})

test('round trip over all magnitudes', () => {
  const decade = fc.double({ min: -6, max: 6, noNaN: true }).map((e) => 10 ** e)
  fc.assert(
    fc.property(
      decade,
      fc.double({ min: 0.01, max: 1, noNaN: true }),
      fc.double({ min: 0.1, max: 30, noNaN: true }),
      (load, friction, wrapAngle) => {
        const slack = slackTension.si({ load, friction, wrapAngle })
        const answer = solveFor(slackTension, 'load', { friction, wrapAngle: [wrapAngle, 'rad'] }, [slack, 'N'])
        expect(Math.abs(answer.value.si / load - 1)).toBeLessThan(1e-9)
      },
    ),
    { numRuns: 50 },
  )
})

describe('several and none', () => {
  test('both roots of a parabola, ascending; nested fields may be solved for', () => {
    const answer = solveFor(parabola, 'x', { outer: { shift: 4 } }, { height: 5 })
    expect(answer.state).toBe('several')
    expect(answer.roots.map((r) => r.si)).toEqual([expect.closeTo(-3, 9), expect.closeTo(3, 9)])
    expect(solveFor(parabola, 'outer.shift', { x: 3, outer: {} }, { height: 5 }).value.si).toBeCloseTo(4, 9)
  })

  test('no root is said plainly, with what the range does give', () => {
    const answer = solveFor(parabola, 'x', { outer: { shift: 0 } }, { height: -1 })
    expect(answer.state).toBe('none')
    expect(answer.message).toMatch(/no x between .* gives -1; there height runs from 0/)
    expect(() => answer.value).toThrow('no x between')
  })

  test('a pole is not a root', () => {
    expect(solveFor(pole, 'x', {}, 0).state).toBe('none')
    expect(solveFor(pole, 'x', {}, 2).value.si).toBeCloseTo(1, 9)
  })

  test('a search between given values stays there', () => {
    expect(solveFor(parabola, 'x', { outer: { shift: 4 } }, { height: 5 }, { between: [0, 10] }).roots).toHaveLength(1)
  })
})

test.each([
  [() => solveFor(slackTension, 'wrapAngel' as never, { load: '500 N', friction: 0.2 } as never, '2 N'), 'did you mean wrapAngle?'],
  [() => solveFor(slackTension, 'wrapAngle', { load: '500 mm' as never, friction: 0.2 }, '2 N'), 'mm is a unit of length'],
  [() => solveFor(slackTension, 'wrapAngle', { load: '500 N' } as never, '2 N'), 'friction is missing'],
  [() => solveFor(slackTension, 'wrapAngle', { load: '500 N', friction: 0.2 }, '2 mm' as never), 'target'],
  [() => solveFor(slackTension, 'wrapAngle', { load: '500 N', friction: 0.2 }, 'NaN N' as never), 'target'],
  [
    () => solveFor(slackTension, 'wrapAngle', { load: '500 N', friction: 0.2 }, '2 N', { between: ['2 turn', '1 turn'] }),
    'a lower value, a higher value',
  ],
  [() => solveFor(parabola, 'x', { outer: { shift: 4 } }, 5 as never), 'must name one output: { height: ratio }'],
  [() => solveFor(parabola, 'side' as never, {} as never, { height: 5 }), 'must be one of x, outer.shift'],
])('bad input %#', (call, message) => {
  expect(call).toThrow(InputError)
  expect(call).toThrow(message)
})

describe('what the formula itself refuses is no solution', () => {
  const screw = {
    preload: '1 kN',
    thread: metricThread('M4'),
    threadFriction: 0.1,
    headFriction: 0.1,
    bearingDiameter: '6.5 mm',
  } as const
  test('no hole wider than the head: 60.76 mm would give 2 N m', () => {
    const answer = solveFor(tighteningTorque, 'holeDiameter', screw, { torque: '2 N m' })
    expect(answer.state).toBe('none')
    // By hand 1 kN x (0.7 mm / 2 pi + 0.577 x 0.1 x 3.545 mm + 0.1 x (6.5 mm + hole) / 4): 0.48 N m for no hole, 0.64 N m for one as wide as the head.
    expect(answer.message).toMatch(/torque runs from 480\.\d N mm to 64\d\.\d N mm /)
  })
  test('every root can be called', () => {
    const answer = solveFor(tighteningTorque, 'holeDiameter', screw, {
      torque: tighteningTorque({ ...screw, holeDiameter: '4.5 mm' }).torque,
    })
    expect(answer.roots.map((root) => root.in('mm'))).toEqual([expect.closeTo(4.5, 8)])
  })
})

describe('sizes below 1e-12 in SI units are ordinary ones', () => {
  test('a wear rate of 2e-6 mm^3/(N m): depth 0.1 mm = 2e-15 m^2/N x 5 MPa x 10 km', () => {
    const rate = solveFor(wearDepth, 'specificWearRate', { pressure: '5 MPa', distance: '10 km' }, '0.1 mm')
    expect(rate.state).toBe('solved')
    expect(rate.value.in('mm^3/(N m)')).toBeCloseTo(2e-6, 15)
  })
  test('powers of ten from 1e-28 to 1e14, both signs', () => {
    const straight = formula('test.straight', { inputs: { x: 'ratio' }, output: 'ratio', source: memory, si: ({ x }) => x })
    for (let e = -28; e <= 14; e++)
      for (const sign of [1, -1]) {
        const wanted = sign * 10 ** e
        expect(solveFor(straight, 'x', {}, wanted).roots.map((root) => root.si / wanted)).toEqual([expect.closeTo(1, 9)])
      }
  })
})

/** A formula of one ratio. */
const plain = (id: string, si: (x: number) => number, limits: { min?: number; max?: number; above?: number; below?: number } = {}) =>
  formula(`test.${id}`, { inputs: { x: { kind: 'ratio', ...limits } }, output: 'ratio', source: memory, si: ({ x }) => si(x) })
const rootsOf = (si: (x: number) => number, target: number, between?: readonly [number, number]) =>
  solveFor(plain('roots', si), 'x', {}, target, between === undefined ? {} : { between }).roots.map((root) => root.si)

describe('the whole range, whatever its shape', () => {
  test('all 101 roots of sin(pi x) from 0 to 100, both ends included', () => {
    const roots = rootsOf((x) => Math.sin(Math.PI * x), 0, [0, 100])
    expect(roots).toHaveLength(101)
    for (const [k, root] of roots.entries()) expect(root).toBeCloseTo(k, 9)
  })
  test('two close roots of a range that begins at zero', () => {
    expect(rootsOf((x) => (x - 0.9) * (x - 0.92), 0, [0, 1])).toEqual([expect.closeTo(0.9, 12), expect.closeTo(0.92, 12)])
  })
  test('one magnitude after the other beside equal steps', () => {
    expect(rootsOf((x) => Math.log10(x) + 20, 0, [0, 1])).toEqual([expect.closeTo(1e-20, 30)])
    expect(rootsOf((x) => Math.log10(-x) + 20, 0, [-1, 0])).toEqual([expect.closeTo(-1e-20, 30)])
  })
  test('roots that touch, pairs closer than a step, a kink', () => {
    expect(rootsOf((x) => (x - 2) ** 2, 0, [0, 5])).toEqual([expect.closeTo(2, 6)])
    expect(rootsOf((x) => (x - 2) ** 2, 1e-6, [0, 5])).toEqual([expect.closeTo(1.999, 9), expect.closeTo(2.001, 9)])
    expect(rootsOf((x) => Math.abs(x - 2), 0, [0, 5])).toEqual([expect.closeTo(2, 8)])
    expect(rootsOf(Math.cos, 1, [-1, 20])).toEqual([0, 2 * Math.PI, 4 * Math.PI, 6 * Math.PI].map((x) => expect.closeTo(x, 6)))
    expect(rootsOf((x) => (x - 2) ** 2, -1e-6, [0, 5])).toEqual([])
    // Zero by rounding over a short way, and still one root.
    expect(rootsOf((x) => 1 - Math.cos(x), 0, [-1, 1])).toEqual([0])
    expect(rootsOf((x) => 1 - Math.cos(x), 0, [0, 1])).toEqual([0])
  })
  test.each([
    ['x^3', (x: number) => x ** 3, [-1, 2]],
    ['x |x|', (x: number) => x * Math.abs(x), [-1, 2]],
    ['atan^3', (x: number) => Math.atan(x) ** 3, [-1, 2.5]],
    ['x^3, any range', (x: number) => x ** 3, undefined],
  ] as const)('a root of high order at zero: %s', (_, f, between) => {
    expect(rootsOf(f, 0, between)).toEqual([0])
  })
  test('a root of infinite slope', () => {
    expect(rootsOf((x) => Math.cbrt(x - 0.3), 0, [-1, 2])).toEqual([expect.closeTo(0.3, 12)])
  })
  test('a root beside the edge of the domain: x = 0.0505 + 0.01^2', () => {
    expect(rootsOf((x) => Math.sqrt(x - 0.0505), 0.01, [-1, 1])).toEqual([expect.closeTo(0.0506, 12)])
    expect(rootsOf((x) => Math.sqrt(0.0505 - x), 0.01, [-1, 1])).toEqual([expect.closeTo(0.0504, 12)])
    expect(rootsOf((x) => Math.sqrt(x - 0.0505), 0, [-1, 1])).toEqual([expect.closeTo(0.0505, 12)])
  })
  test('both signs, and zero, where nothing limits the input', () => {
    expect(rootsOf((x) => x * x, 9)).toEqual([-3, 3].map((x) => expect.closeTo(x, 12)))
    expect(rootsOf((x) => x * (x + 5e-9) * (x - 3e8), 0)).toEqual([expect.closeTo(-5e-9, 20), 0, expect.closeTo(3e8, 5)])
    expect(rootsOf((x) => x + 5, 0)).toEqual([expect.closeTo(-5, 12)])
  })
  test('limits of the record: closed ends are searched, open ones are not', () => {
    const solve = (limits: object, target: number) =>
      solveFor(
        plain('limits', (x) => x * x, limits),
        'x',
        {},
        target,
      ).roots.map((r) => r.si)
    expect(solve({ min: -3, max: 5 }, 9)).toEqual([-3, expect.closeTo(3, 12)])
    expect(solve({ min: -2, max: 3 }, 9)).toEqual([3])
    expect(solve({ above: -3, below: 3 }, 9 + 1e-6)).toEqual([])
    expect(solve({ above: -3, below: 3 }, 8.9)).toHaveLength(2)
    expect(solve({ above: 0 }, 1e-40)).toEqual([expect.closeTo(1e-20, 30)])
    expect(solve({ below: 0 }, 4)).toEqual([expect.closeTo(-2, 12)])
    expect(solve({ max: -1 }, 4)).toEqual([expect.closeTo(-2, 12)])
    expect(solve({ min: 1e3, max: 1e9 }, 1e12)).toEqual([expect.closeTo(1e6, 3)])
    expect(solve({ min: -1e9, max: -1e3 }, 1e12)).toEqual([expect.closeTo(-1e6, 3)])
    const ran: number[] = []
    solveFor(
      plain('run', (x) => ran.push(x), { above: 0, below: 1 }),
      'x',
      {},
      -1,
    )
    expect(Math.min(...ran)).toBeGreaterThan(0)
    expect(Math.max(...ran)).toBeLessThan(1)
  })
  test('any cubic with three roots in the range', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: -40, max: 40 }), { minLength: 3, maxLength: 3 }), (tenths) => {
        const exact = tenths.map((t) => t / 10 + 0.013).sort((a, b) => a - b)
        const roots = rootsOf((x) => exact.reduce((product, root) => product * (x - root), 1), 0, [-5, 5])
        expect(roots).toEqual(exact.map((root) => expect.closeTo(root, 9)))
      }),
      { seed: 5, numRuns: 60 },
    )
  })
})

describe('every value of an interval', () => {
  test('a lock nut: no preload for every torque up to its own', () => {
    const nut = {
      thread: metricThread('M4'),
      threadFriction: 0.1,
      headFriction: 0.1,
      bearingDiameter: '6.5 mm',
      holeDiameter: '4.5 mm',
    } as const
    const answer = solveFor(preloadFromTorque, 'torque', { ...nut, prevailingTorque: '0.9 N m' }, { preload: '0 N' })
    expect(answer.state).toBe('interval')
    expect(answer.intervals).toHaveLength(1)
    expect(answer.intervals[0]?.[0].si).toBe(0)
    expect(answer.intervals[0]?.[1].in('N m')).toBeCloseTo(0.9, 9)
    expect(answer.roots).toEqual([])
    expect(answer.value.si).toBe(0)
    expect(answer.message).toContain('every torque from 0 N m to 900 N mm gives 0 N')
  })
  test('a flat part and a root apart from it', () => {
    const answer = solveFor(
      plain('flat', (x) => Math.max(0, x - 1) * (x - 3)),
      'x',
      {},
      0,
      { between: [-2, 5] },
    )
    expect(answer.intervals.map(([a, b]) => [a.si, b.si])).toEqual([[-2, expect.closeTo(1, 12)]])
    expect(answer.roots.map((root) => root.si)).toEqual([expect.closeTo(3, 12)])
    expect(answer.message).toContain('every x from -2 to 1, and x = 3 gives 0')
  })
  test('over zero, and narrower than a step', () => {
    const over = solveFor(
      plain('over', (x) => Math.sign(x) * Math.max(0, Math.abs(x) - 0.5)),
      'x',
      {},
      0,
    )
    expect(over.intervals.map(([a, b]) => [a.si, b.si])).toEqual([[expect.closeTo(-0.5, 12), expect.closeTo(0.5, 12)]])
    expect(over.roots).toEqual([])
    const narrow = solveFor(
      plain('narrow', (x) => Math.max(0, x - 1e-5)),
      'x',
      {},
      0,
      { between: [0, 100] },
    )
    expect(narrow.intervals.map(([a, b]) => [a.si, b.si])).toEqual([[0, expect.closeTo(1e-5, 12)]])
    expect(narrow.roots).toEqual([])
  })
  test('an asymptote: every value from which the result equals the target to rounding', () => {
    const answer = solveFor(
      plain('asymptote', (x) => 1 - Math.exp(-x), { min: 0 }),
      'x',
      {},
      1,
    )
    expect(answer.state).toBe('interval')
    expect(answer.value.si).toBeGreaterThan(33)
    expect(answer.value.si).toBeLessThan(38)
  })
  test('many roots are counted, not all listed', () => {
    const answer = solveFor(
      plain('many', (x) => Math.sin(Math.PI * x)),
      'x',
      {},
      0,
      { between: [0.5, 100.5] },
    )
    expect(answer.message).toContain('x = 1 or 2 or 3 or 4 or 5 or 6 or 94 more values gives 0')
  })
})

describe('"none" says what was searched', () => {
  const none = (si: (x: number) => number, target: number, between?: readonly [number, number]) =>
    solveFor(plain('none', si), 'x', {}, target, between === undefined ? {} : { between }).message
  test('the steps, equal and by ratio', () => {
    expect(none((x) => x * x, -1, [1, 2])).toContain(
      'no x between 1 and 2 gives -1; there the result runs from 1 to 4 (searched in 400 equal steps)',
    )
    expect(none((x) => x * x, -1, [0, 1])).toContain('(searched in 400 equal steps and 500 steps of equal ratio)')
    expect(none((x) => x * x, -1)).toContain('(searched in 1500 steps of equal ratio)')
    expect(none(() => Number.NaN, -1, [1, 2])).toContain('there the result is nowhere finite')
  })
  test('a jump over the target, and a target within the range of results', () => {
    expect(none((x) => (x < 0.3 ? 0 : 1), 0.5, [0, 1])).toContain('it jumps over 0.5 at x = 0.3')
    const spike = (x: number) => (Math.abs(x - 0.50001) < 1e-7 ? Number.NaN : x < 0.50001 ? x : x + 0.001)
    expect(none(spike, 0.5004, [0, 1])).toMatch(/two solutions may lie within one step|jumps over/)
  })
})

test.each([
  [
    () =>
      solveFor(
        plain('limited', (x) => x, { min: 0, max: 9 }),
        'x',
        {},
        1,
        { between: [-1, 5] },
      ),
    'between',
    'within the limits of x, 0 to 9',
  ],
  [
    () =>
      solveFor(
        plain('limited', (x) => x, { min: 0, max: 9 }),
        'x',
        {},
        1,
        { between: [1, 10] },
      ),
    'between',
    'within the limits',
  ],
  [
    () =>
      solveFor(
        plain('limited', (x) => x),
        'x',
        {},
        1,
        { between: 3 as never },
      ),
    'between',
    'a lower value, a higher value',
  ],
  [
    () =>
      solveFor(
        plain('limited', (x) => x),
        'x',
        {},
        1,
        { samples: 0 },
      ),
    'samples',
    'from 1 to',
  ],
  [
    () =>
      solveFor(
        plain('limited', (x) => x),
        'x',
        {},
        1,
        { samples: 1e12 },
      ),
    'samples',
    'from 1 to',
  ],
  [
    () =>
      solveFor(
        plain('limited', (x) => x),
        7 as never,
        {} as never,
        1,
      ),
    'path',
    'x',
  ],
  [
    () =>
      solveFor(
        plain('limited', (x) => x),
        undefined as never,
        {} as never,
        1,
      ),
    'path',
    'x',
  ],
])('bad range %#', (call, path, accepts) => {
  expect(call).toThrow(InputError)
  expect(call).toThrow(path)
  expect(call).toThrow(accepts)
})
