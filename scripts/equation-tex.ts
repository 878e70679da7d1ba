import { all, create, type FactoryFunctionMap, type MathNode } from 'mathjs'
import { kindWords } from '../src/units/index.js'

const { parse } = create(all as FactoryFunctionMap)

/** An equation of a formula record in LaTeX, with names written as words. `result` is written as the formula's own name. */
export function equationTex(id: string, names: ReadonlySet<string>, equation: string): string {
  const title = kindWords(id.slice(id.indexOf('.') + 1))
  const words = (name: string) => `\\text{${name === 'result' ? title : kindWords(name)}}`
  const parsed = parse(equation)
  const own = new Set([...names, 'result'])
  parsed.traverse((node) => {
    const { isAssignmentNode, object } = node as Partial<Assignment>
    if (isAssignmentNode) own.add((object as Named).name)
  })
  const handler = (node: MathNode, options: object): string | undefined => {
    const { isAssignmentNode, object, value } = node as Partial<Assignment>
    if (isAssignmentNode) return `${words((object as Named).name)} = ${(value as MathNode).toTex(options)}`
    const { isAccessorNode, isSymbolNode, name } = node as Partial<Accessor & Named>
    // `thread.pitch`: the field with its record below it.
    if (isAccessorNode) return `${words(name as string)}_{${(object as MathNode).toTex(options)}}`
    const { isFunctionNode, fn, args } = node as Partial<Call>
    if (isFunctionNode && fn?.name === 'equalText') return args!.map((each) => each.toTex(options)).join(' = ')
    return isSymbolNode && own.has(name as string) ? words(name as string) : undefined
  }
  return parsed.toTex({ parenthesis: 'auto', handler }).trim()
}

type Call = MathNode & { readonly isFunctionNode: true; readonly fn: Named; readonly args: readonly MathNode[] }
type Named = MathNode & { readonly isSymbolNode: true; readonly name: string }
type Assignment = MathNode & { readonly isAssignmentNode: true; readonly object: MathNode; readonly value: MathNode }
type Accessor = MathNode & { readonly isAccessorNode: true; readonly object: MathNode; readonly name: string }
