// Evaluates the equations of a formula record with the units of mathjs and compares them with the kernel.
import { all, create, type FactoryFunctionMap, type MathNode, type Unit } from 'mathjs'
import type { AnyFormula, Input, Inputs, OutputField } from '../../src/formula/index.js'
import { kindRow, Quantity } from '../../src/units/index.js'

const math = create(all as FactoryFunctionMap)

type Value = number | Unit
interface Scope {
  [name: string]: unknown
}

/** An SI number of a kind as a mathjs unit of the base units; a plain number where it has no dimensions, as an angle has none. */
function unitOf(kind: string, si: number): Value {
  const { dim } = kindRow(kind as never)
  const unit = dim === 0 ? '' : new Quantity(0, 'derived', dim).toString().replace(/^0 /, '')
  return unit === '' ? si : math.unit(si, unit)
}

function inputValue(input: Input, x: unknown): unknown {
  if (x === undefined) return undefined
  if (typeof input === 'string') return unitOf(input, x as number)
  if ('kind' in input) return unitOf(input.kind, x as number)
  if ('list' in input) return (x as unknown[]).map((item) => inputValue(input.list, item))
  if ('fields' in input) return scopeOf(input.fields, x as Scope)
  return x
}

const scopeOf = (inputs: Inputs, x: Scope): Scope =>
  Object.fromEntries(Object.entries(inputs).flatMap(([name, input]) => (x[name] === undefined ? [] : [[name, inputValue(input, x[name])]])))

/** What a kernel returned, by name; `result` where there is one output. */
function outputsOf({ def: { output } }: AnyFormula, y: unknown): Scope {
  const value = (field: OutputField, each: unknown): unknown => {
    if (typeof field === 'string') return unitOf(field, each as number)
    if ('list' in field) return Array.from(each as ArrayLike<number>, (item) => unitOf(field.list, item))
    return 'kind' in field ? unitOf(field.kind, each as number) : each
  }
  if (typeof output === 'string' || 'infinite' in output) return { result: value(output as OutputField, y) }
  return Object.fromEntries(Object.entries(output).map(([name, field]) => [name, value(field as OutputField, (y as Scope)[name])]))
}

/** How far two values may be apart: rounding in an assignment, the tolerance of a solver in an equation that it solves. */
const OF_ASSIGNMENT = 1e-9
const OF_SOLVER = 1e-6

/** In words, why two values do not agree; nothing where they do. */
function difference(a: unknown, b: unknown, tolerance: number): string | undefined {
  if (Array.isArray(a) || Array.isArray(b)) {
    const [one, other] = [a, b].map((each) => (Array.isArray(each) ? each : [each])) as [unknown[], unknown[]]
    if (one.length !== other.length) return `${one.length} values, not ${other.length}`
    return one.map((each, i) => difference(each, other[i], tolerance)).find((each) => each !== undefined)
  }
  if (typeof a !== typeof b || (math.isUnit(a) && !(a as unknown as { equalBase(other: unknown): boolean }).equalBase(b)))
    return `${String(a)} and ${String(b)} have unlike dimensions`
  const [x, y] = [a, b].map((each) => (math.isUnit(each) ? each.toSI().toJSON().value : each) as number) as [number, number]
  const near = x === y || Math.abs(x - y) <= tolerance * Math.max(Math.abs(x), Math.abs(y))
  return near ? undefined : `${x} is not ${y}`
}

/** Where the equations of a record disagree with its kernel at some SI inputs. */
export function disagreements(formula: AnyFormula, x: unknown, y: unknown, equations = formula.def.equation ?? []): string[] {
  const outputs = outputsOf(formula, y)
  const scope: Scope = scopeOf(formula.def.inputs, x as Scope)
  return equations.flatMap((text) => {
    const node = math.parse(text)
    const found = compare(node, scope, outputs)
    return found === undefined ? [] : [`${text}: ${found}`]
  })
}

function compare(node: MathNode, scope: Scope, outputs: Scope): string | undefined {
  const { isAssignmentNode, isOperatorNode, fn, args, object, value } = node as unknown as {
    isAssignmentNode?: boolean
    isOperatorNode?: boolean
    fn?: string
    args?: [MathNode, MathNode]
    object?: { name: string }
    value?: MathNode
  }
  if (isAssignmentNode && object !== undefined && value !== undefined) {
    const { name } = object
    const computed: unknown = plain(value.evaluate(scope))
    scope[name] = computed
    return name in outputs ? difference(computed, outputs[name], OF_ASSIGNMENT) : undefined
  }
  if (isOperatorNode && fn === 'equal' && args !== undefined) {
    const known = { ...outputs, ...scope }
    return difference(plain(args[0].evaluate(known)), plain(args[1].evaluate(known)), OF_SOLVER)
  }
  return 'is neither an assignment nor an equation with =='
}

const plain = (value: unknown): unknown => (math.isMatrix(value) ? value.toArray() : value)

/** The outputs that the equations of a record determine. */
export function determined(formula: AnyFormula): string[] {
  const names = typeof formula.def.output === 'string' || 'infinite' in formula.def.output ? ['result'] : Object.keys(formula.def.output)
  const used = new Set<string>()
  for (const text of formula.def.equation ?? [])
    math.parse(text).traverse((node) => {
      const { isSymbolNode, name } = node as unknown as { isSymbolNode?: boolean; name?: string }
      if (isSymbolNode && name !== undefined) used.add(name)
    })
  return names.filter((name) => used.has(name))
}
