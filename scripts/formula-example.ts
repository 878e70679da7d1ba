// A call of a formula as a reader would write it, made from the first published check with inputs that can be written down, and what it returns.
import type { AnyFormula } from '../src/formula/index.js'
import { Quantity } from '../src/units/index.js'
import type { Check } from '../tests/published/harness.js'

const LONGEST = 900

/** The example as code; nothing where no check has inputs that can be written. */
export function exampleOf(formula: AnyFormula, checks: readonly Check[]): string | undefined {
  const [module, name] = formula.id.split('.') as [string, string]
  for (const { given } of checks) {
    const written = given === undefined ? undefined : literal(given)
    if (written === undefined || written.length > LONGEST) continue
    const result = (formula as unknown as (x: unknown) => unknown)(given)
    return [`import { ${name} } from 'limbwright/${module}'`, '', ...callOf(name, written, result)].join('\n')
  }
  return undefined
}

function callOf(name: string, written: string, result: unknown): string[] {
  if (result instanceof Quantity) return [`${name}(${written}) // ${result}`]
  const lines = Object.entries(result as object).map(
    ([field, value]) => `result.${field} // ${Array.isArray(value) ? `[${value.join(', ')}]` : value}`,
  )
  return [`const result = ${name}(${written})`, ...lines]
}

/** A value as source text; nothing where it holds a function or an object of a class. */
function literal(value: unknown): string | undefined {
  if (value instanceof Quantity) return `'${value}'`
  if (typeof value === 'string') return `'${value.replaceAll("'", "\\'")}'`
  if (typeof value === 'number' || typeof value === 'boolean') return String(value)
  if (Array.isArray(value)) {
    const items = value.map(literal)
    return items.includes(undefined) ? undefined : `[${items.join(', ')}]`
  }
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return undefined
  const fields = Object.entries(value)
    .filter(([, item]) => item !== undefined)
    .map(([name, item]) => [name, literal(item)] as const)
  if (fields.some(([, text]) => text === undefined)) return undefined
  const inner = fields.map(([name, text]) => `${/^[A-Za-z_$][\w$]*$/.test(name) ? name : `'${name}'`}: ${text}`)
  const line = `{ ${inner.join(', ')} }`
  return line.length <= 100 ? line : `{\n${inner.map((text) => `  ${text.replaceAll('\n', '\n  ')},\n`).join('')}}`
}
