import { requireKeys } from '../formula/index.js'
import type { In } from '../units/index.js'
import { InputError, type Issue } from '../units/index.js'
import { type DutyResult, periodicSteadyState } from './duty.js'
import type { Network } from './network.js'
import { siOf } from './network-losses.js'

/** Intermittent duty (S3): equal cycles of load and rest, 10 minutes by default, to the settled cycle. */
export function intermittentDuty(duty: {
  /** The network with the losses of the load. */
  readonly load: Network
  /** The same network with the losses of the rest. */
  readonly rest: Network
  /** Part of the cycle under load, above 0 and below 1. */
  readonly dutyFactor: In<'ratio'>
  /** Length of a cycle. Default 10 min. */
  readonly period?: In<'time'>
}): DutyResult {
  requireKeys('thermal.intermittentDuty', 'duty', duty, ['load', 'rest', 'dutyFactor', 'period'])
  const { load, rest } = duty
  const { loadTime, restTime } = dutyTimes('thermal.intermittentDuty', duty)
  return periodicSteadyState([
    { network: load, duration: [loadTime, 's'] },
    { network: rest, duration: [restTime, 's'] },
  ])
}

/** Seconds under load and at rest of an intermittent duty. @internal */
export function dutyTimes(
  where: string,
  { dutyFactor, period = '10 min' }: { readonly dutyFactor: In<'ratio'>; readonly period?: In<'time'> | undefined },
) {
  const issues: Issue[] = []
  const factor = siOf('dutyFactor', 'ratio', dutyFactor, issues, 0)
  const cycleTime = siOf('period', 'time', period, issues, 0)
  if (factor >= 1)
    issues.push({
      path: 'dutyFactor',
      given: String(factor),
      accepts: 'must be below 1; a duty that never rests is continuous: use steady()',
    })
  if (issues.length > 0) throw new InputError(where, issues)
  return { loadTime: factor * cycleTime, restTime: (1 - factor) * cycleTime }
}
