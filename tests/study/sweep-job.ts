// Jobs that the tests run here, on threads and in a process of their own (bundled first).
import { formula } from '../../src/formula/index.js'
import { runSweep, sweepJob } from '../../src/study/index.js'

/** @public Used by the process that is killed. */
export { runSweep }

const memory = [{ level: 'unverified', where: 'test' }] as const

/** Numbers of every sort: NaN, infinity, minus zero, words. */
export const wavy = formula('test.wavy', {
  inputs: { a: 'ratio', b: 'length', outer: { fields: { shift: 'ratio' } } },
  output: { height: 'ratio', pole: 'length', side: { oneOf: ['left', 'right', 'größer'] } },
  source: memory,
  si: ({ a, b, outer }) => ({
    height: Math.sqrt(Math.sin(3 * a) - outer.shift),
    pole: b / (a - 1),
    side: a < 0 ? 'left' : b > 0.5 ? 'größer' : 'right',
  }),
})

export const plan = {
  over: { a: { from: -2, to: 2, count: 25 }, b: { from: '0 m', to: '1 m', count: 16 } },
  fixed: { outer: { shift: 0.25 } },
} as const

export const job = sweepJob(wavy, plan)

const dawdle = formula('test.dawdle', {
  inputs: { a: 'ratio' },
  output: 'ratio',
  source: memory,
  si: ({ a }) => {
    let sum = a
    for (let i = 0; i < 2000; i++) sum = Math.sin(sum) + a
    return sum
  },
})
/** The one that is killed on the way. */
export const slow = sweepJob(dawdle, { over: { a: { from: 0, to: 1, count: 200 } } })
/** So many blocks that a kill from outside comes in the midst of them. */
export const long = sweepJob(dawdle, { over: { a: { from: 0, to: 1, count: 2000 } } })

/** @public Taken by name on a thread. */
export const broken = {
  ...job,
  block: () => {
    throw new Error('no block today')
  },
}
