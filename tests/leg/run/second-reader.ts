import type { AnyFormula } from '../../../src/formula/index.js'
import type { Sheet, SheetStep } from '../../../src/leg/run/index.js'

/**
 * A reader of calculation sheets that knows nothing of the leg: it works every formula again by its id and every line from its printed equation,
 * with inputs taken along the links, and returns the results.
 */
export function workAgain(
  sheet: Sheet,
  formulas: ReadonlyMap<string, AnyFormula>,
): { results: (number | undefined)[]; problems: string[] } {
  const problems: string[] = []
  const made: unknown[] = []
  const numberAt = (link: SheetStep['from'][string]): number => {
    const whole = link.of === 'leaf' ? sheet.leaves[link.number]?.value : made[link.number]
    const number =
      link.path === '' ? whole : link.path.split('.').reduce<unknown>((at, name) => (at as Record<string, unknown>)?.[name], whole)
    return (link.negative === true ? -1 : 1) * (number as number)
  }
  for (const [i, step] of sheet.steps.entries()) {
    const x = structuredClone(step.x) as Record<string, unknown>
    for (const [path, link] of Object.entries(step.from)) put(x, path, numberAt(link))
    const formula = formulas.get(step.formula)
    if (step.equation !== undefined) {
      const y = evaluate(step.equation, x as Record<string, number | readonly number[]>)
      if (!near(y, step.y as number)) problems.push(`${step.formula}: ${step.equation} is ${y}, the sheet says ${step.y}`)
      made[i] = step.y
    } else if (formula === undefined) {
      problems.push(`${step.formula} is not a known formula`)
      made[i] = step.y
    } else {
      made[i] = formula.si(x as never)
      if (!alike(made[i], step.y))
        problems.push(`${step.formula}: ${JSON.stringify(made[i])} again, ${JSON.stringify(step.y)} on the sheet`)
    }
  }
  for (const { title, x, next, within, settled } of sheet.loops)
    if (settled && !(Math.abs(next - x) <= within)) problems.push(`${title}: from ${x} to ${next} is more than ${within}`)
  return {
    results: sheet.results.map(({ from, number }) =>
      from === undefined ? (WRITTEN.includes(number) ? number : undefined) : numberAt(from),
    ),
    problems,
  }
}

/** Numbers that a value may write itself. */
const WRITTEN = [0, 1, Number.POSITIVE_INFINITY]

const near = (a: number, b: number) => Object.is(a, b) || Math.abs(a - b) <= 1e-14 * Math.max(Math.abs(a), Math.abs(b))

function alike(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || a === null || typeof b !== 'object' || b === null) return Object.is(a, b)
  return Object.entries(a).every(([name, value]) => alike(value, (b as Record<string, unknown>)[name]))
}

function put(record: Record<string, unknown>, path: string, number: number): void {
  const names = path.split('.')
  const last = names.pop() as string
  const at = names.reduce<Record<string, unknown>>((inner, name) => inner[name] as Record<string, unknown>, record)
  at[last] = number
}

const TOKEN = /\s*(\d+(?:\.\d+)?(?:e[+-]?\d+)?|[\p{L}_][\p{L}\p{Nd}_]*|[-+−·×/^²³√(),|])/uy

const FUNCTIONS: Readonly<Record<string, (...x: number[]) => number>> = {
  max: Math.max,
  min: Math.min,
  abs: Math.abs,
  log: Math.log,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  hypot: Math.hypot,
  round: Math.round,
  sum: (...x) => x.reduce((total, one) => total + one, 0),
}

/** The value of a printed equation: + − · / ^ ² ³ √, |x|, parentheses, π and some functions; a list spreads into a function's arguments. */
export function evaluate(equation: string, x: Readonly<Record<string, number | readonly number[]>>): number {
  const tokens: string[] = []
  TOKEN.lastIndex = 0
  for (let at = 0; at < equation.trimEnd().length; at = TOKEN.lastIndex) {
    TOKEN.lastIndex = at
    const token = TOKEN.exec(equation)?.[1]
    if (token === undefined) throw new Error(`cannot read '${equation.slice(at)}'`)
    tokens.push(token)
  }
  let next = 0
  const take = (...wanted: string[]): string | undefined => (wanted.includes(tokens[next] ?? '') ? tokens[next++] : undefined)
  const sum = (): number => {
    let total = product()
    for (let sign = take('+', '-', '−'); sign !== undefined; sign = take('+', '-', '−'))
      total = sign === '+' ? total + product() : total - product()
    return total
  }
  const product = (): number => {
    let total = signed()
    for (let sign = take('·', '×', '/'); sign !== undefined; sign = take('·', '×', '/'))
      total = sign === '/' ? total / signed() : total * signed()
    return total
  }
  const signed = (): number => (take('-', '−') === undefined ? power() : -signed())
  const power = (): number => {
    const base = atom()
    const sign = take('^', '²', '³')
    return sign === undefined ? base : sign === '^' ? base ** signed() : base ** (sign === '²' ? 2 : 3)
  }
  const args = (): number[] => {
    const all: number[] = []
    do {
      const name = tokens[next]
      const list = name === undefined ? undefined : x[name]
      if (typeof list === 'object') {
        next++
        all.push(...list)
      } else all.push(sum())
    } while (take(',') !== undefined)
    return all
  }
  const closed = (inner: number, close: string): number => {
    if (take(close) === undefined) throw new Error(`'${close}' is missing in ${equation}`)
    return inner
  }
  const atom = (): number => {
    if (take('(') !== undefined) return closed(sum(), ')')
    if (take('|') !== undefined) return closed(Math.abs(sum()), '|')
    if (take('√') !== undefined) return Math.sqrt(atom())
    const token = tokens[next++] ?? 'the end'
    if (token === 'π') return Math.PI
    const inner = FUNCTIONS[token]
    if (inner !== undefined && take('(') !== undefined) {
      const given = args()
      if (take(')') === undefined) throw new Error(`')' is missing in ${equation}`)
      return inner(...given)
    }
    const given = x[token] ?? Number(token)
    if (typeof given !== 'number' || Number.isNaN(given)) {
      if (Number.isNaN(x[token] as number)) return Number.NaN
      throw new Error(`'${token}' is not an input of ${equation}`)
    }
    return given
  }
  const result = sum()
  if (next < tokens.length) throw new Error(`'${tokens[next]}' was not read in ${equation}`)
  return result
}
