import { create, type FactoryFunctionMap, type MathNode, parseDependencies } from 'mathjs'
import { type AnyFormula, inputsInWords, outputsInWords, titleInWords } from '../formula/index.js'
import { kindWords } from '../units/index.js'

let parse: ((text: string) => MathNode) | undefined

/**
 * The equations of a formula as MathML, which browsers and notebooks show without a script: one element for each line of the record. Names are written as
 * words, `result` as the name of the formula. An empty list for a formula without equations.
 */
export function equationMarkup(formula: AnyFormula): readonly string[] {
  const { def } = formula
  parse ??= (create({ parseDependencies } as FactoryFunctionMap) as unknown as { parse: (text: string) => MathNode }).parse
  const lines = (def.equation ?? []).map((line) => parse?.(line) as Part)
  // Everything but the record's own names, and those that its lines assign, is a unit.
  const paths = [...Object.keys(inputsInWords(def.inputs)), ...Object.keys(outputsInWords(def.output))]
  const own = [...paths.flatMap((path) => path.replaceAll('[]', '').split('.')), ...lines.flatMap(({ object }) => object?.name ?? [])]
  const words = new Map([...own.map((name) => [name, kindWords(name)] as const), ['result', titleInWords(formula)]])
  return lines.map((line) => `<math display="block">${markup(line, words)}</math>`)
}

/** What the writer reads of a node of mathjs. */
interface Part extends MathNode {
  readonly type: string
  readonly name?: string
  readonly value?: unknown
  readonly object?: Part
  readonly content?: Part
  readonly op?: string
  readonly implicit?: boolean
  readonly args?: readonly Part[]
  readonly fn?: Part
  readonly condition?: Part
  readonly trueExpr?: Part
  readonly falseExpr?: Part
}

type Words = ReadonlyMap<string, string>

const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')
const row = (...parts: readonly string[]) => `<mrow>${parts.join('')}</mrow>`
const sign = (text: string) => `<mo>${escaped(text)}</mo>`
const within = (open: string, inner: string, close: string) => row(sign(open), inner, sign(close))
const upright = (text: string) => `<mi mathvariant="normal">${escaped(text)}</mi>`

const SYMBOLS: Readonly<Record<string, string>> = { pi: 'π', Infinity: '∞' }
const SIGNS: Readonly<Record<string, string>> = { '*': '·', '-': '−', '==': '=', '<=': '≤', '>=': '≥' }
const FUNCTIONS: Readonly<Record<string, string>> = { log: 'ln', asin: 'arcsin', acos: 'arccos', atan: 'arctan', sum: '∑', gamma: 'Γ' }

function markup(node: Part, words: Words): string {
  const of = (part: Part | undefined) => markup(part as Part, words)
  switch (node.type) {
    case 'AssignmentNode':
      return row(of(node.object), sign('='), of(node.value as Part))
    case 'ParenthesisNode':
      return within('(', of(node.content), ')')
    case 'ConstantNode':
      return constant(node.value)
    case 'SymbolNode':
      return symbol(node.name as string, words)
    case 'AccessorNode':
      // `thread.pitch`: the field with its record below it.
      return `<msub><mtext>${escaped(kindWords(node.name as string))}</mtext>${of(node.object)}</msub>`
    case 'ConditionalNode':
      return row(sign('{'), `<mtable columnalign="left">${cases(node, words)}</mtable>`)
    case 'OperatorNode':
      return operator(node, words)
    case 'FunctionNode':
      return call(node.fn?.name as string, node.args as readonly Part[], words)
    default:
      throw new Error(`no markup for ${node.type}`)
  }
}

/** What brackets hold, where a fraction bar, a root or a height holds it together. */
const bare = (node: Part, words: Words) => markup(node.type === 'ParenthesisNode' ? (node.content as Part) : node, words)

function operator({ op = '', args = [], implicit }: Part, words: Words): string {
  const [a, b] = args as readonly [Part, Part | undefined]
  if (b === undefined) return row(sign('−'), markup(a, words))
  if (op === '/') return `<mfrac>${bare(a, words)}${bare(b, words)}</mfrac>`
  if (op === '^' || op === '.^') return `<msup>${markup(a, words)}${bare(b, words)}</msup>`
  const between = implicit ? '<mspace width="0.17em"/>' : sign(SIGNS[op] ?? op)
  return row(markup(a, words), between, markup(b, words))
}

function call(name: string, args: readonly Part[], words: Words): string {
  const inner = args.map((each) => markup(each, words))
  const [a = '', b = ''] = inner
  if (name === 'sqrt') return `<msqrt>${a}</msqrt>`
  if (name === 'cbrt') return `<mroot>${a}<mn>3</mn></mroot>`
  if (name === 'abs') return within('|', a, '|')
  if (name === 'floor') return within('⌊', a, '⌋')
  if (name === 'ceil') return within('⌈', a, '⌉')
  if (name === 'equalText') return row(a, sign('='), b)
  if (name === 'dotMultiply') return row(a, sign('·'), b)
  if (name === 'dotPow') return `<msup>${a}${b}</msup>`
  const title = name === 'log10' ? `<msub>${upright('log')}<mn>10</mn></msub>` : upright(FUNCTIONS[name] ?? name)
  return row(title, within('(', inner.join(sign(',')), ')'))
}

function constant(value: unknown): string {
  if (typeof value !== 'number') return `<mtext>${escaped(String(value))}</mtext>`
  const [digits, power] = String(value).split('e')
  if (power === undefined) return `<mn>${digits}</mn>`
  return row(`<mn>${digits}</mn>`, sign('·'), `<msup><mn>10</mn><mn>${Number(power)}</mn></msup>`)
}

function symbol(name: string, words: Words): string {
  const own = words.get(name)
  return own === undefined ? upright(SYMBOLS[name] ?? name) : `<mtext>${escaped(own)}</mtext>`
}

/** One line for each case; a case within the last one follows it. */
function cases({ trueExpr, condition, falseExpr }: Part, words: Words): string {
  const line = (then: Part, when: string) => `<mtr><mtd>${bare(then, words)}</mtd><mtd>${when}</mtd></mtr>`
  const rest = falseExpr?.type === 'ParenthesisNode' ? (falseExpr.content as Part) : (falseExpr as Part)
  const otherwise = rest.type === 'ConditionalNode' ? cases(rest, words) : line(rest, '<mtext>otherwise</mtext>')
  return line(trueExpr as Part, `<mtext>if&#xA0;</mtext>${markup(condition as Part, words)}`) + otherwise
}
