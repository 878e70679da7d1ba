import { expect, test } from 'vitest'
import { slackTension } from '../../src/capstan/index.js'
import {
  bounds,
  failureProbability,
  fit,
  optimise,
  sensitivity,
  solveFor,
  sweep,
  sweepJob,
  uncertainty,
  varianceShares,
} from '../../src/study/index.js'
import { InputError } from '../../src/units/index.js'

const TOOLS = {
  bounds,
  failureProbability,
  fit,
  optimise,
  sensitivity,
  solveFor,
  sweep,
  sweepJob,
  uncertainty,
  varianceShares,
} as unknown as Record<string, (...given: unknown[]) => unknown>

test.each(Object.entries(TOOLS))('%s of what is not a formula is one clear error', (_, tool) => {
  for (const nothing of [undefined, null, 5, {}, () => 1]) expect(() => tool(nothing, {}, {}, {})).toThrow(InputError)
})

test.each(['fit', 'optimise', 'sweep', 'sweepJob'])('%s without a plan is one clear error', (name) => {
  for (const nothing of [undefined, null, 5]) expect(() => TOOLS[name]!(slackTension, nothing)).toThrow(InputError)
})
