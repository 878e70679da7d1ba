import { onlyKeys, reader, type Scalar } from '../formula/index.js'
import { type Issue, issue, type Kind } from '../units/index.js'
import type { Design, Range } from './design-choice.js'
import { checkWhole } from './options.js'

/** One input's values: the k-th of its list or grid, and the value at a fraction of its range. */
export interface Axis {
  readonly count: number
  value(index: number): number
  at(fraction: number): number
}

/** The most values of an axis, and the most numbers of a Latin hypercube: both are kept in memory. */
export const MAX_VALUES = 1e8
const NO_AXIS: Axis = { count: 0, value: () => 0, at: () => 0 }

/** Reads what one input is varied over. Adds an issue for each mistake. */
export function axisOf(path: string, scalar: Scalar, given: unknown, design: Design, issues: Issue[]): Axis {
  // Limits of the record hold for every value that will be run; between two ends they hold because a range is monotone.
  const read = reader({ ...scalar, optional: undefined, default: undefined } as unknown as Scalar)
  const number: ReadNumber = (where, x) => read(x, where, issues) as number
  const isRange = typeof given === 'object' && given !== null && 'from' in given && 'to' in given
  if (isRange) return rangeAxis(path, given as Range<Kind>, design, number, issues)
  if (Array.isArray(given) && given.length > 0 && typeof design !== 'object') {
    const values = given.map((x, i) => number(`over.${path}[${i}]`, x))
    return { count: values.length, value: (i) => values[i] as number, at: () => 0 }
  }
  const wanted =
    typeof design === 'object'
      ? 'must be a range { from, to }: sampled designs take no lists'
      : 'must be a list of values or a range { from, to, count }'
  issues.push(issue(`over.${path}`, given, wanted))
  return NO_AXIS
}

type ReadNumber = (where: string, x: unknown) => number

function rangeAxis(path: string, range: Range<Kind>, design: Design, number: ReadNumber, issues: Issue[]): Axis {
  const fields = typeof design === 'object' ? ['from', 'to', 'spacing'] : ['from', 'to', 'count', 'spacing']
  onlyKeys(`over.${path}`, range, fields, issues)
  const from = number(`over.${path}.from`, range.from)
  const to = number(`over.${path}.to`, range.to)
  const log = range.spacing === 'log'
  if (range.spacing !== undefined && range.spacing !== 'linear' && !log)
    issues.push(issue(`over.${path}.spacing`, range.spacing, 'must be one of linear, log'))
  if (log && !(from > 0 && to > 0)) issues.push(issue(`over.${path}`, range, 'a range of constant ratio must be above zero'))
  const at = (fraction: number) => (log ? from * (to / from) ** fraction : from + (to - from) * fraction)
  if (typeof design === 'object') return { count: 0, value: () => 0, at }
  const count = range.count ?? 0
  checkWhole(`over.${path}.count`, range.count, 2, MAX_VALUES, issues)
  return { count, value: (i) => (i === count - 1 ? to : at(i / (count - 1))), at }
}
