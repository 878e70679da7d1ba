import type { AnyFormula } from '../formula/index.js'
import { InputError, type Issue, type Kind, Quantity, readAt, refuse } from '../units/index.js'
import { limitsOf } from './model.js'
import { scalarAt, scalarOutputs } from './path.js'

/** The target result. */
export interface Wanted {
  readonly name: string
  readonly kind: Kind
  readonly si: number
}

export function targetOf(formula: AnyFormula, target: unknown): Wanted {
  const outputs = scalarOutputs(formula.def.output)
  const single = outputs.length === 1 && outputs[0]?.name === ''
  const names = single ? [''] : typeof target === 'object' && target !== null ? Object.keys(target) : []
  const output = outputs.find(({ name }) => name === names[0])
  if (names.length !== 1 || output === undefined) {
    const accepts = `must name one output: ${outputs.map(({ name, kind }) => `{ ${name}: ${kind} }`).join(' or ')}`
    refuse('solveFor', 'target', target, accepts)
  }
  const value = single ? target : (target as Record<string, unknown>)[output.name]
  return { ...output, si: siAt('target', output.kind, value) }
}

function siAt(path: string, kind: Kind, given: unknown): number {
  const issues: Issue[] = []
  const si = readAt(path, kind, given, issues)
  if (issues.length > 0) throw new InputError('solveFor', issues)
  return si
}

/** The magnitudes that are searched where an input has no limit, SI: every unit of every kind lies well between, wear rates included. */
export const SMALLEST = 1e-30
const LARGEST = 1e15

/** Where the input is searched. */
export interface SearchRange {
  readonly kind: Kind
  /** Ends of the search, SI; an open limit itself is left out. */
  readonly lowest: number
  readonly highest: number
  /** The ends as printed. */
  readonly from: number
  readonly to: number
  /** Whether both ends mean something, so that equal steps between them do. */
  readonly bounded: boolean
}

export function rangeOf(formula: AnyFormula, path: string, between: unknown): SearchRange {
  const scalar = scalarAt(formula, path)
  const { kind } = scalar
  const limits = limitsOf(scalar)
  const bounded = between !== undefined || (Number.isFinite(limits.low) && Number.isFinite(limits.high))
  const [from, to] = between === undefined ? [Math.max(limits.low, -LARGEST), Math.min(limits.high, LARGEST)] : endsOf(between, kind)
  if (from < limits.low || to > limits.high)
    refuse(
      'solveFor',
      'between',
      between,
      `must lie within the limits of ${path}, ${new Quantity(limits.low, kind)} to ${new Quantity(limits.high, kind)}`,
    )
  // An open limit is left by a hair, so that the kernel is never run where its record forbids it.
  const hair = (limit: number) => Math.max(SMALLEST, Math.abs(limit) * 2 ** -52)
  const lowest = scalar.above !== undefined && from === limits.low ? from + hair(from) : from
  const highest = scalar.below !== undefined && to === limits.high ? to - hair(to) : to
  return { kind, lowest, highest, from, to, bounded }
}

function endsOf(between: unknown, kind: Kind): [number, number] {
  if (Array.isArray(between) && between.length === 2) {
    const [from, to] = [siAt('between[0]', kind, between[0]), siAt('between[1]', kind, between[1])]
    if (from < to) return [from, to]
  }
  refuse('solveFor', 'between', between, 'must be [a lower value, a higher value]')
}
