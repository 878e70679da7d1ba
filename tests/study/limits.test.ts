// Errors that name what was given, whatever it was.
import { describe, expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { boxSection } from '../../src/structures/index.js'
import { normal, solveFor, sweep, uncertainty } from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'

const issuesOf = (act: () => unknown) => {
  try {
    act()
  } catch (error) {
    if (error instanceof InputError) return error.issues
    throw error
  }
  throw new Error('no error')
}

describe('sweeps', () => {
  test('lists of unlike length are counted', () => {
    const over = { friction: [0.1, 0.2], wrapAngle: ['1 turn', '2 turn', '3 turn'] } as const
    const [issue] = issuesOf(() => sweep(slackTension, { over, fixed: { load: '500 N' }, design: 'list' } as never))
    expect(issue).toMatchObject({ path: 'over', given: 'friction: 2, wrapAngle: 3' })
  })

  test('a grid that is too large names what varies, a sample its design', () => {
    const friction = { from: 0.05, to: 0.4, count: 20_000 }
    const wrapAngle = { from: '1 turn', to: '3 turn', count: 20_000 }
    const plan = { over: { friction, wrapAngle }, fixed: { load: '500 N' } }
    expect(issuesOf(() => sweep(slackTension, plan as never))[0]).toMatchObject({ path: 'over', given: '400000000 rows' })
  })

  test('a path into a number is no path', () => {
    const over = { 'load.more': { from: 1, to: 2, count: 3 } }
    expect(issuesOf(() => sweep(slackTension, { over, fixed: {} } as never))[0]).toMatchObject({ path: 'path', given: "'load.more'" })
  })
})

test('a target that names no output is an error of its own', () => {
  for (const target of [null, undefined, 3, '5 mm^2', {}, { area: '5 mm^2', secondMoment: '1 mm^4' }])
    expect(issuesOf(() => solveFor(boxSection, 'wall', { width: '10 mm', depth: '10 mm' }, target as never))[0]).toMatchObject({
      path: 'target',
    })
})

test('one bad coefficient of correlation is one issue', () => {
  const inputs = { load: '500 N', friction: normal(0.2, 0.01), wrapAngle: normal('3 turn', '0.1 turn') } as const
  const correlations = [{ between: ['friction', 'wrapAngle'], coefficient: 2 }]
  const issues = issuesOf(() => uncertainty(slackTension, inputs as never, { correlations } as never))
  expect(issues.map(({ path }) => path)).toEqual(['correlations[0].coefficient'])
})
