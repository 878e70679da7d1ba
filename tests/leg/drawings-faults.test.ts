// A picture that a leg does not allow is a note with its reason. A fault of the program is an error, not a sentence.
import { readFileSync } from 'node:fs'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { NoResultError } from '../../src/formula/index.js'
import { Facts } from '../../src/leg/drawings/facts.js'
import { calculated, NotDrawable, unlessNotDrawable } from '../../src/leg/drawings/not-drawable.js'
import { assess, describeLeg, htmlReport, legDrawingNamed, legDrawings, legPoseDrawing } from '../../src/leg/index.js'
import { NoValueError } from '../../src/leg/no-value.js'
import { mass } from '../../src/leg/parts/robot/fields.js'
import { Calculation } from '../../src/leg/run/index.js'
import { NumericError } from '../../src/numeric/index.js'
import { refuse } from '../../src/units/index.js'

const leg = describeLeg(readFileSync(new URL('../../examples/mudflat-leg-revised.yaml', import.meta.url), 'utf8'))
const verdict = assess(leg, { cases: ['walk', 'drop'] })
const without = (error: unknown) =>
  vi.spyOn(Calculation.prototype, 'get').mockImplementation(() => {
    throw error
  })
afterEach(() => vi.restoreAllMocks())

describe('a value that the sizes of a leg do not allow', () => {
  test('its picture says why; the page has its verdict and the other pictures', () => {
    without(new NoValueError('the bore leaves nothing of the drum'))
    const drawings = legDrawings(verdict)
    const notes = drawings.filter(({ answer }) => answer.endsWith('cannot be drawn'))
    expect(notes.map(({ id }) => id)).toEqual(expect.arrayContaining(['leg', 'pin-knee', 'cord-drive-hip', 'hip-shaft']))
    for (const { description, svg } of notes)
      for (const text of [description, svg]) expect(text).toContain('the bore leaves nothing of the drum')
    expect(legPoseDrawing(verdict, verdict.governing).answer).toBe('The leg cannot be drawn')
    // The charts of the report calculate the same values, and have their own tests.
    vi.restoreAllMocks()
    expect(htmlReport(verdict, { drawings })).toContain('the bore leaves nothing of the drum')
  })

  test.each([
    ['an input that is not accepted', () => refuse('capstan.groove', 'cordDiameter', 0, 'must be above 0 mm')],
    [
      'no result',
      () => {
        throw new NoResultError('x')
      },
    ],
    [
      'no convergence',
      () => {
        throw new NumericError('root', 'noConvergence', 'x')
      },
    ],
    [
      'a size that cannot be',
      () => {
        throw new NoValueError('the leg has no knee')
      },
    ],
  ])('%s is a reason', (_, work) => {
    expect(() => calculated(work)).toThrow(NotDrawable)
    expect(
      unlessNotDrawable(
        () => calculated(work),
        ({ cause }) => (cause as Error).constructor !== NotDrawable,
      ),
    ).toBe(true)
  })
})

describe('a fault of the program', () => {
  test.each([
    ['a method of nothing', new TypeError("Cannot read properties of undefined (reading 'si')")],
    ['a name that is not there', new ReferenceError('x is not defined')],
    ['a loop in the calculation', new Error('motor.heat depends on itself: express the loop with use.settle')],
    ['a call without end', new RangeError('Maximum call stack size exceeded')],
    ['a list that is too long', new RangeError('Invalid array length')],
    ['a range error of another kind', new RangeError('Invalid time value')],
    ['something thrown that is no error', 'x'],
  ])('%s is thrown, not drawn', (_, fault) => {
    without(fault)
    expect(() => legDrawings(verdict)).toThrow(fault as Error)
    expect(() => legDrawingNamed(verdict, 'pin-knee')).toThrow(fault as Error)
    expect(() => legPoseDrawing(verdict, verdict.governing)).toThrow(fault as Error)
    expect(() => new Facts(verdict).tried(mass)).toThrow(fault as Error)
  })

  test('in the engine itself the errors are those that are told apart', () => {
    const endless = (): number => 1 + endless()
    for (const work of [endless, () => Array(-1).length, () => (1).toFixed(200).length, () => 'x'.repeat(2 ** 30).length])
      expect(() => calculated(work)).toThrow(expect.not.objectContaining({ name: 'NotDrawable' }))
  })
})
