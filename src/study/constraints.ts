import { type AnyFormula, reader, type Scalar } from '../formula/index.js'
import { type Issue, issue, type Kind, oneOfNames, Quantity, show } from '../units/index.js'
import { scalarOutputs } from './path.js'
import { spreadKind } from './show.js'

/** A constraint on an output as numbers. */
export interface Limit {
  readonly name: string
  readonly min: number
  readonly max: number
  /** By what a violation of each side is divided, so that constraints of all kinds weigh alike; NaN where the limit is zero and tells no size. */
  readonly scale: { readonly min: number; readonly max: number }
  readonly words: string
  readonly equality: boolean
}

/** Numeric outputs by name, `result` where the formula has one. */
export const namedOutputs = (formula: AnyFormula) =>
  scalarOutputs(formula.def.output).map(({ name, kind }) => ({ name: name === '' ? 'result' : name, kind }))

/** The output of a name. Adds an issue where there is none. */
export function outputNamed(formula: AnyFormula, name: unknown, path: string, issues: Issue[]): { name: string; kind: Kind } | undefined {
  const outputs = namedOutputs(formula)
  const found = outputs.find((output) => output.name === name)
  if (found !== undefined) return found
  const names = outputs.map((output) => output.name)
  issues.push(issue(path, name, oneOfNames(names, name)))
  return undefined
}

/** Reads the constraints. Adds an issue for each that cannot be. */
export function limitsOf(formula: AnyFormula, constraints: Record<string, unknown>, issues: Issue[]): Limit[] {
  return Object.entries(constraints).flatMap(([name, given]) => {
    const output = outputNamed(formula, name, `constraints.${name}`, issues)
    if (output === undefined) return []
    const { equals, within, min, max, ...others } = (given ?? {}) as Record<string, unknown>
    const surplus = Object.keys(others)
    const equality = equals !== undefined && min === undefined && max === undefined
    const range = equals === undefined && within === undefined && (min !== undefined || max !== undefined)
    if (surplus.length > 0 || !(equality || range)) {
      issues.push(issue(`constraints.${name}`, given, 'must be { min }, { max }, both, or { equals, within }'))
      return []
    }
    return equality ? equalityOf(output, equals, within, issues) : rangeOf(output, min, max, issues)
  })
}

type Output = { readonly name: string; readonly kind: Kind }

function rangeOf({ name, kind }: Output, min: unknown, max: unknown, issues: Issue[]): Limit[] {
  const read = reader({ kind } as Scalar)
  const side = (which: 'min' | 'max', given: unknown, otherwise: number) =>
    given === undefined ? otherwise : (read(given, `constraints.${name}.${which}`, issues) as number)
  const [low, high] = [side('min', min, Number.NEGATIVE_INFINITY), side('max', max, Number.POSITIVE_INFINITY)]
  if (low > high)
    issues.push({ path: `constraints.${name}`, given: `${show(min)} to ${show(max)}`, accepts: 'must be a lower and a higher limit' })
  const words = [
    Number.isFinite(low) && `${name} at least ${new Quantity(low, kind)}`,
    Number.isFinite(high) && `${name} at most ${new Quantity(high, kind)}`,
  ]
  const scale = { min: Math.abs(low) || Number.NaN, max: Math.abs(high) || Number.NaN }
  return [{ name, min: low, max: high, scale, words: words.filter(Boolean).join(' and '), equality: false }]
}

/** How closely an output equals a value, relative. */
const EQUAL = 1e-6

function equalityOf({ name, kind }: Output, equals: unknown, within: unknown, issues: Issue[]): Limit[] {
  const before = issues.length
  const value = reader({ kind } as Scalar)(equals, `constraints.${name}.equals`, issues) as number
  const spread = spreadKind(kind)
  const tolerance =
    within === undefined
      ? EQUAL * Math.abs(value)
      : (reader({ kind: spread, above: 0 } as Scalar)(within, `constraints.${name}.within`, issues) as number)
  if (issues.length > before) return []
  if (!(tolerance > 0)) {
    issues.push(issue(`constraints.${name}.within`, within, 'must be given: an output equals zero only to within a tolerance'))
    return []
  }
  const scale = Math.abs(value) || Number.NaN
  const words = `${name} equal to ${new Quantity(value, kind)} within ${new Quantity(tolerance, spread)}`
  return [{ name, min: value - tolerance, max: value + tolerance, scale: { min: scale, max: scale }, words, equality: true }]
}

/** How far a value exceeds each finite side of a limit, scaled; negative where it is kept. */
export function excessOf({ min, max, scale }: Limit, value: number): number[] {
  return [
    ...(min === Number.NEGATIVE_INFINITY ? [] : [(min - value) / scale.min]),
    ...(max === Number.POSITIVE_INFINITY ? [] : [(value - max) / scale.max]),
  ]
}

/** Whether a value breaks a limit; one that is not a number does. */
export const breaks = ({ min, max }: Limit, value: number): boolean => !(value >= min && value <= max)

/** Random points that give the size of an output whose limit is zero. */
const PROBES = 32

/** How many points it takes to weigh the limits: none where each tells its own size. */
export const probesFor = (limits: readonly Limit[]): number =>
  limits.some(({ scale }) => Number.isNaN(scale.min) || Number.isNaN(scale.max)) ? PROBES : 0
