import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { metricThread, tighteningTorque } from '../../src/fasteners/index.js'
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
  [() => solveFor(slackTension, 'wrapAngle', { load: '500 N', friction: 0.2 }, '2 mm' as never), 'wanted'],
  [() => solveFor(slackTension, 'wrapAngle', { load: '500 N', friction: 0.2 }, 'NaN N' as never), 'wanted'],
  [
    () => solveFor(slackTension, 'wrapAngle', { load: '500 N', friction: 0.2 }, '2 N', { between: ['2 turn', '1 turn'] }),
    'a lower and a higher',
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
    expect(answer.message).toMatch(/torque runs from 480\.\d N mm to 6[34]\d\.\d N mm$/)
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
