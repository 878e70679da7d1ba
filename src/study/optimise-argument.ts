import { type AnyFormula, recordReader } from '../formula/index.js'
import { type Issue, Quantity } from '../units/index.js'
import type { Axis, Choices } from './optimise-plan.js'
import { withValueAt } from './path.js'

/** Everything but the continuous values, read once for every combination of options that comes up. */
export function readings(formula: AnyFormula, fixed: unknown, axes: readonly Axis[], choices: readonly Choices[], issues: Issue[]) {
  const middle = axes.map(({ low, high }) => low + (high - low) / 2)
  const read = recordReader(formula.def.inputs, true)
  const known = new Map<string, Record<string, unknown>>()
  const at = (options: readonly number[], found: Issue[]) =>
    read(fullArgument(fixed, axes, choices, [...middle, ...options]), '', found) as Record<string, unknown>
  // Every option is read once beside the first options of the other choices, so that bad entries are found at the door.
  choices.forEach(({ name, options }, c) => {
    options.forEach(([option], o) => {
      const found: Issue[] = []
      at(
        choices.map((_, k) => (k === c ? o : 0)),
        found,
      )
      for (const issue of found)
        if (!issues.some(({ path, given }) => path === issue.path && given === issue.given))
          issues.push({ ...issue, accepts: `${issue.accepts} (choices.${name}.${option})` })
    })
  })
  if (choices.length === 0) at([], issues)
  return (options: readonly number[]) => {
    const key = options.join(',')
    let found = known.get(key)
    if (found === undefined) {
      found = at(options, [])
      known.set(key, found)
    }
    return found
  }
}

/** The argument of a checked call at a point. */
export function fullArgument(
  fixed: unknown,
  axes: readonly Axis[],
  choices: readonly Choices[],
  x: ArrayLike<number>,
): Record<string, unknown> {
  let argument = merged({}, fixed)
  choices.forEach(({ options }, c) => {
    argument = merged(argument, (options[x[axes.length + c] as number] as readonly [string, unknown])[1])
  })
  axes.forEach(({ path, kind }, i) => {
    argument = withValueAt(argument, path, new Quantity(x[i] as number, kind))
  })
  return argument
}

const isRecord = (x: unknown): x is Record<string, unknown> =>
  typeof x === 'object' &&
  x !== null &&
  !Array.isArray(x) &&
  (x as { kind?: unknown }).kind === undefined &&
  typeof (x as { toNumber?: unknown }).toNumber !== 'function'

function merged(base: Record<string, unknown>, over: unknown): Record<string, unknown> {
  const result: Record<string, unknown> = { ...base }
  for (const [name, value] of Object.entries((over ?? {}) as object))
    result[name] = isRecord(value) && isRecord(result[name]) ? merged(result[name] as Record<string, unknown>, value) : value
  return result
}
