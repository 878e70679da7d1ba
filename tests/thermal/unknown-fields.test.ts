import { describe, expect, test } from 'vitest'
import {
  assessMount,
  calibrate,
  checkLimits,
  continuousTorque,
  fitStepResponse,
  intermittentTorque,
  network,
  timeAtTorque,
} from '../../src/thermal/index.js'
import { degC, InputError } from '../../src/units/index.js'
import { demoLimits, demoMount } from './demo.js'

const box = () =>
  network({ box: { capacity: '100 J/K', loss: '5 W' }, air: { fixed: '20 degC' } }, [{ from: 'box', to: 'air', resistance: '2 K/W' }])

describe('a field that has no meaning, or is missing, is named and never ignored', () => {
  test.each<readonly [string, () => unknown, string]>([
    ['a node', () => network({ box: { loss: '5 W', capacty: '3 J/K' } as never, air: { fixed: '20 degC' } }, []), 'did you mean capacity'],
    [
      'a link',
      () => network({ box: {}, air: { fixed: '20 degC' } }, [{ from: 'box', too: 'air', resistance: '5 K/W' } as never]),
      'did you mean to',
    ],
    [
      'an end that is missing',
      () => network({ box: {}, air: { fixed: '20 degC' } }, [{ from: 'box', resistance: '5 K/W' } as never]),
      'links[0].to is missing',
    ],
    [
      'an end that is a number',
      () => network({ box: {}, air: { fixed: '20 degC' } }, [{ from: 'box', to: 3, resistance: '5 K/W' } as never]),
      'links[0].to is 3',
    ],
    ['no links', () => network({ box: {}, air: { fixed: '20 degC' } }, undefined as never), 'links'],
    ['no nodes', () => network(undefined as never, []), 'nodes'],
    ['a node that is none', () => network({ box: 3 } as never, []), 'nodes.box is 3'],
    ['options', () => network({ air: { fixed: '20 degC' } }, [], { cieling: '500 K' } as never), 'did you mean ceiling'],
    [
      'a law of loss',
      () =>
        network({ box: { loss: { on: ['box'], watts: () => 1, note: 3 } as never }, air: { fixed: '20 degC' } }, [
          { from: 'box', to: 'air', resistance: '2 K/W' },
        ]),
      'did you mean notes',
    ],
    ['a course', () => box().transient({ duration: '1 h', limit: { box: '30 degC' } } as never), 'did you mean limits'],
    ['no course', () => box().transient(undefined as never), 'must be a record'],
    ['factors', () => box().scaled({ link: {} } as never), 'did you mean links'],
    ['what was measured', () => calibrate(box(), { stedy: { box: '30 degC' } } as never), 'did you mean steady'],
    ['a curve', () => fitStepResponse({ time: [], temperatures: [] } as never), 'did you mean times'],
    ['limits that are no list', () => checkLimits({ a: degC(20) }, { part: 'a' } as never), 'must be a list'],
    ['a limit', () => checkLimits({ a: degC(20) }, [{ part: 'glue', node: 'a', limt: '50 degC' } as never]), 'did you mean limit'],
    ['a limit without a node', () => checkLimits({ a: degC(20) }, [{ part: 'glue' } as never]), 'limits[0].node'],
    [
      'a node of every record',
      () => checkLimits({ a: degC(20) }, [{ part: 'glue', node: 'toString', limit: '50 degC' }]),
      'must name a node',
    ],
    [
      'a node of every record, in a mount',
      () => assessMount(demoMount(), { torque: '0.1 N m' }, [{ part: 'a', node: 'constructor', limit: '50 degC' }]),
      'must name a node',
    ],
    ['its limits', () => continuousTorque(demoMount(), undefined as never), 'must be a list'],
    ['a load', () => demoMount().network({ torqe: '0.1 N m' } as never), 'did you mean torque'],
    ['no load', () => demoMount().network(undefined as never), 'must be a record'],
    ['a duty', () => intermittentTorque(demoMount(), demoLimits, undefined as never), 'must be a record'],
    [
      'a load with limits',
      () => timeAtTorque(demoMount(), { torque: '0.1 N m', sped: '3 rad/s' } as never, demoLimits),
      'did you mean speed',
    ],
  ])('%s', (_, run, message) => {
    expect(run).toThrow(InputError)
    expect(run).toThrow(message)
  })
})
