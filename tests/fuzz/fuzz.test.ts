// The fuzz must be able to fail, and its starts must be accepted: rejected starts would test nothing.
import { describe, expect, test } from 'vitest'
import { type AnyFormula, formula, NoResultError } from '../../src/formula/index.js'
import { randomStream } from '../../src/numeric/index.js'
import { InputError, Quantity } from '../../src/units/index.js'
import { textFault } from './documents.js'
import { fuzzFormula } from './formulas.js'
import { answerFault, errorFault, faultOf } from './judge.js'
import { mutated, notANumber } from './mutate.js'
import { starts } from './objects.js'

const record = {
  inputs: { length: { kind: 'length', above: 0 }, way: { oneOf: ['up', 'down'] } },
  source: [{ level: 'assumption', where: 'test' }],
} as const

describe('faults that are found', () => {
  test('an unnamed error', () => {
    const bad = formula('test.bad', {
      ...record,
      output: 'length',
      si: ({ length }) => {
        if (length > 1) throw new TypeError('cannot read')
        return length
      },
    })
    expect(fuzzFormula(bad as unknown as AnyFormula, 100, 1)[0]?.what).toContain('TypeError')
  })

  test('an undeclared word, and an output that is missing', () => {
    const word = formula('test.word', {
      ...record,
      output: { state: { oneOf: ['good'] }, size: 'length' },
      si: () => ({ state: 'bad', size: 1 }) as never,
    })
    expect(fuzzFormula(word as unknown as AnyFormula, 20, 1).map(({ what }) => what)).toContain('state is the undeclared word bad')
    expect(answerFault({ size: 'length' }, {})).toBe('size is not a quantity')
  })

  test.each([
    ['a number that is none', answerFault('length', new Quantity(Number.NaN, 'length')), 'is NaN'],
    ['an undeclared infinity', answerFault('length', new Quantity(Number.POSITIVE_INFINITY, 'length')), 'is Infinity'],
    ['an unlike kind', answerFault('length', new Quantity(1, 'mass')), 'of the kind mass'],
    ['an undeclared output', answerFault({ size: 'length' }, { size: new Quantity(1, 'length'), more: 1 }), 'undeclared output more'],
    ['a list that is none', answerFault({ sizes: { list: 'length' } }, { sizes: 1 }), 'not a list'],
    ['a thrown word', errorFault('no'), 'threw string'],
    ['an error of the engine', errorFault(new RangeError('stack')), 'RangeError'],
    ['a message without an end', errorFault(new NoResultError('x'.repeat(6000))), '6000 characters'],
    ['a message that says undefined', errorFault(new NoResultError('the limit undefined is passed')), 'unclear'],
    ['an issue without advice', errorFault(new InputError('f', [{ path: 'a', given: '1', accepts: '' }])), 'what is accepted'],
    ['a text with NaN', textFault('reserve NaN'), 'prints'],
    ['a tag of the document', textFault('<b><script>alert(1)</script>'), 'tag'],
    ['a field that is not a number', notANumber({ a: [{ b: Number.NaN }] }), 'a.0.b is NaN'],
  ])('%s', (_, fault, expected) => expect(fault).toContain(expected))

  test('a call that takes too long', () => {
    const busy = () => {
      // By processor time, which a busy machine does not stretch.
      const end = process.cpuUsage().user + 5000
      let x = 0
      while (process.cpuUsage().user < end) for (let i = 0; i < 1e5; i++) x += Math.sqrt(x + 1)
      return x
    }
    expect(faultOf(busy, 1, () => undefined)).toContain('at most 1 ms')
  })
})

test('good answers and named errors are no faults', () => {
  expect(answerFault({ kind: 'ratio', infinite: true }, new Quantity(Number.POSITIVE_INFINITY, 'ratio'))).toBeUndefined()
  expect(errorFault(new InputError('f', [{ path: 'a', given: 'NaN', accepts: 'must be a length' }]))).toBeUndefined()
  expect(errorFault(new InputError('f', [{ path: 'a', given: "'undefined'", accepts: 'must be a length' }]))).toBeUndefined()
})

test('changes depend on the seed alone and leave the original as it was', () => {
  const tree = { a: '5 mm', b: { c: 1, d: ['x', 'y'] } }
  const before = structuredClone(tree)
  const of = (seed: number) => Array.from({ length: 20 }, () => mutated(tree, randomStream(seed)))
  expect(of(3)).toEqual(of(3))
  expect(of(3)).not.toEqual(of(4))
  expect(tree).toEqual(before)
})

test.each(starts)('the unchanged specification of %s is accepted', (_, call) => {
  expect(notANumber(call())).toBeUndefined()
})
