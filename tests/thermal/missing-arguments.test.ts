import { expect, test } from 'vitest'
import {
  assessMount,
  continuousTorque,
  intermittentDuty,
  network,
  periodicSteadyState,
  reduceNetwork,
  shortTimeDuty,
  simulateOnce,
  timeAtTorque,
  timeConstants,
  timeToLimit,
} from '../../src/thermal/index.js'
import { InputError } from '../../src/units/index.js'

const body = network({ a: { capacity: '1 J/K', loss: '1 W' }, air: { fixed: '20 degC' } }, [{ from: 'a', to: 'air', resistance: '1 K/W' }])
const limits = [{ part: 'plate', node: 'mount', limit: '60 degC' }] as const

const CALLS: readonly (readonly [string, (nothing: never) => unknown])[] = [
  ['assessMount', (nothing) => assessMount(nothing, { torque: '1 N m' }, limits)],
  ['continuousTorque', (nothing) => continuousTorque(nothing, limits)],
  ['timeAtTorque', (nothing) => timeAtTorque(nothing, { torque: '1 N m' }, limits)],
  ['intermittentDuty', (nothing) => intermittentDuty(nothing)],
  ['shortTimeDuty', (nothing) => shortTimeDuty(nothing)],
  ['periodicSteadyState', (nothing) => periodicSteadyState(nothing)],
  ['simulateOnce', (nothing) => simulateOnce([nothing])],
  ['timeConstants', (nothing) => timeConstants(nothing)],
  ['timeToLimit', (nothing) => timeToLimit(nothing, { a: '30 degC' })],
  ['reduceNetwork', (nothing) => reduceNetwork(nothing, ['a'])],
  ['nodes that are kept', (nothing) => reduceNetwork(body, nothing)],
  ['withLosses', (nothing) => body.withLosses(nothing)],
]

test.each(CALLS)('%s without what it needs is one clear error', (_, call) => {
  for (const nothing of [undefined, null, 5]) expect(() => call(nothing as never)).toThrow(InputError)
})
