import { expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import { formula } from '../../src/formula/index.js'
import { bounds, fit as fitted, normal, optimise, sensitivity, uncertainty, uniform } from '../../src/study/index.js'

const drum = formula('test.drum', {
  inputs: { rim: { fields: { radius: 'length' } }, room: 'temperature' },
  output: { size: 'length', warmth: 'temperature' },
  source: [{ level: 'unverified', where: 'test' }],
  si: ({ rim, room }) => ({ size: rim.radius, warmth: room }),
})
const rim = { radius: '5 mm' } as const

// What the compiler refuses (checked by the type-check, which fails when a line below is accepted) is refused at run time too.
test.each([
  // @ts-expect-error a length is no friction
  [() => uncertainty(slackTension, { load: '500 N', friction: normal('5 mm', '1 mm'), wrapAngle: '1 turn' })],
  // @ts-expect-error an input is missing
  [() => uncertainty(slackTension, { load: '500 N', friction: normal(0.2, 0.01) })],
  // @ts-expect-error of several outputs one must be named
  [() => uncertainty(drum, { rim, room: normal('20 degC', '2 K') })],
  // @ts-expect-error a temperature spreads by a difference
  [() => uncertainty(drum, { rim, room: normal('20 degC', '2 degC') }, { output: 'size' })],
  // @ts-expect-error an unknown output
  [() => sensitivity(drum, { rim, room: '20 degC' }, { output: 'sise' })],
  // @ts-expect-error an unknown path
  [() => sensitivity(drum, { rim, room: '20 degC' }, { output: 'size', inputs: ['rim.radios'] })],
  // @ts-expect-error a range of another kind
  [() => bounds(slackTension, { load: uniform('1 m', '2 m'), friction: 0.2, wrapAngle: '1 turn' })],
  // @ts-expect-error readings of another kind
  [() => fitted(slackTension, { parameters: { friction: 0.2 }, data: {}, measured: ['1 m'], fixed: { load: '5 N', wrapAngle: '1 rad' } })],
  // @ts-expect-error an unknown parameter
  [() => fitted(slackTension, { parameters: { frict: 0.2 }, data: {}, measured: ['1 N'], fixed: { load: '5 N', wrapAngle: '1 rad' } })],
  // @ts-expect-error an unknown goal
  [() => optimise(drum, { vary: { 'rim.radius': { from: '1 mm', to: '2 mm' } }, fixed: { room: '20 degC' }, goals: { minimise: 'sise' } })],
  [
    () =>
      optimise(drum, {
        vary: { 'rim.radius': { from: '1 mm', to: '2 mm' } },
        fixed: { room: '20 degC' },
        goals: { minimise: 'size' },
        // @ts-expect-error a limit of another kind
        constraints: { size: { max: '5 N' } },
      }),
  ],
  [
    () =>
      optimise(drum, {
        fixed: { room: '20 degC' },
        goals: { minimise: 'size' },
        // @ts-expect-error an option that sets what is no input
        choices: { rim: { small: { rym: { radius: '5 mm' } } } },
      }),
  ],
])('refused %#', (call) => expect(call).toThrow(/must|is not an input|did you mean|missing/))

test('what is right is accepted, nested records and temperatures too', () => {
  const result = uncertainty(
    drum,
    { rim: { radius: normal('5 mm', '0.1 mm') }, room: normal('20 degC', '2 K') },
    { output: 'warmth', samples: 400 },
  )
  expect(result.linear.value.in('degC' as never)).toBeCloseTo(20, 9)
  expect(result.linear.deviation.kind).toBe('temperatureDifference')
  expect(result.linear.deviation.si).toBeCloseTo(2, 9)
  expect(result.linear.contributions.find(({ path }) => path === 'rim.radius')?.share).toBeCloseTo(0, 12)
})
