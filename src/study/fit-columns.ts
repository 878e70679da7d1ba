import { type AnyFormula, onlyKeys, reader, type Scalar } from '../formula/index.js'
import { type Issue, issue } from '../units/index.js'
import type { Parameter } from './fit-search.js'
import { limitsOf, outputOf } from './model.js'

/** A parameter with its first guess and limits, as numbers. */
export function parameterOf(path: string, scalar: Scalar, guess: unknown, issues: Issue[]): Parameter {
  const read = reader({ ...scalar, optional: undefined, default: undefined } as unknown as Scalar)
  const full =
    typeof guess === 'object' && guess !== null && 'start' in guess
      ? (guess as { start: unknown; low?: unknown; high?: unknown })
      : { start: guess }
  if (full === guess) onlyKeys(`parameters.${path}`, guess, ['start', 'low', 'high'], issues)
  const number = (x: unknown, where: string) => read(x, `parameters.${path}${where}`, issues) as number
  const limits = limitsOf(scalar)
  const start = number(full.start, full === guess ? '.start' : '')
  const open = (limit: unknown, direction: 1 | -1, at: number) =>
    limit !== undefined && Number.isFinite(at)
      ? at + direction * Math.max(Number.MIN_VALUE, 1e-12 * Math.max(Math.abs(at), Math.abs(start)))
      : at
  // An open limit is left by a hair, so that the kernel is never run where its record forbids it.
  const low = full.low === undefined ? open(scalar.above, 1, limits.low) : number(full.low, '.low')
  const high = full.high === undefined ? open(scalar.below, -1, limits.high) : number(full.high, '.high')
  if (start < low || start > high) issues.push(issue(`parameters.${path}.start`, full.start, 'must lie between its low and high'))
  return { path, kind: scalar.kind, start, low, high }
}

/** A logged column as numbers. */
export function columnOf(given: unknown, scalar: Scalar, path: string, issues: Issue[]): Float64Array {
  const read = reader({ ...scalar, optional: undefined, default: undefined } as unknown as Scalar)
  if (Array.isArray(given)) return Float64Array.from(given, (x, i) => read(x, `${path}[${i}]`, issues) as number)
  const { unit, values } = (given ?? {}) as { unit?: unknown; values?: ArrayLike<unknown> }
  if (typeof unit !== 'string' || typeof values !== 'object' || values === null || typeof values.length !== 'number') {
    issues.push(issue(path, given, "must be a list of values, or { unit: 'N', values: [...] }"))
    return new Float64Array(0)
  }
  onlyKeys(path, given, ['unit', 'values'], issues)
  return Float64Array.from({ length: values.length }, (_, i) => read([values[i], unit], `${path}[${i}]`, issues) as number)
}

/** Which output was measured, and its readings. */
export function measuredOf(formula: AnyFormula, given: unknown, issues: Issue[]) {
  const isColumn = Array.isArray(given) || (typeof given === 'object' && given !== null && 'values' in given && 'unit' in given)
  const names = isColumn || typeof given !== 'object' || given === null ? [] : Object.keys(given)
  if (names.length > 1) issues.push({ path: 'measured', given: names.join(', '), accepts: 'must be one output: fit one at a time' })
  const output = outputOf(formula, names[0], issues, 'measured')
  const column = names[0] === undefined ? given : (given as Record<string, unknown>)[names[0]]
  const path = names[0] === undefined ? 'measured' : `measured.${names[0]}`
  return { output, readings: columnOf(column, { kind: output.kind } as Scalar, path, issues) }
}
