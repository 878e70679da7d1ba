// Writes into each formula's reference page what its record says: inputs, outputs, assumptions, validity, sources and checks.
import {
  type Application,
  Comment,
  CommentTag,
  type Context,
  Converter,
  DeclarationReflection,
  PageEvent,
  ReferenceType,
  ReflectionKind,
} from 'typedoc'
import ts from 'typescript'
import { catalogue } from '../src/catalogue/index.js'
import type { AnyFormula, Input, Inputs, OutputField } from '../src/formula/index.js'
import { equationMarkup } from '../src/mathjs/index.js'
import { show } from '../src/units/index.js'
import { checksById } from '../tests/published/evidence.js'
import type { Check } from '../tests/published/harness.js'
import { exampleOf } from './formula-example.js'
import { meaningOf } from './meaning.js'

interface Row {
  readonly name: string
  readonly kind: string
  readonly limits: string
  readonly fallback: string
  readonly meaning: string
}

export function load(app: Application) {
  const written = new Set<string>()
  app.converter.on(Converter.EVENT_CREATE_DECLARATION, (context: Context, reflection: DeclarationReflection) => {
    if (!reflection.kindOf(ReflectionKind.Variable)) return
    const declaration = context.getSymbolFromReflection(reflection)?.valueDeclaration
    const call = declaration !== undefined && ts.isVariableDeclaration(declaration) ? declaration.initializer : undefined
    if (call === undefined || !ts.isCallExpression(call) || call.expression.getText() !== 'formula') return
    const id = (call.arguments[0] as ts.StringLiteral).text
    const formula = catalogue.get(id)
    if (formula === undefined) return app.logger.error(`${id} is not in the catalogue`)
    written.add(id)
    const types = context.checker.getTypeArguments(context.checker.getTypeAtLocation(call) as ts.TypeReference)
    const meaning = (owner: ts.Type | undefined, field: string): string => {
      const text = meaningOf(context.checker, owner, field)
      if (text === '') app.logger.error(`${id}: ${field} has no doc comment`)
      return text
    }
    const typeOf = (owner: ts.Type | undefined, field: string): ts.Type | undefined => {
      const symbol = owner === undefined ? undefined : context.checker.getPropertyOfType(owner, field)
      return symbol === undefined ? undefined : context.checker.getTypeOfSymbol(symbol)
    }
    const comment = reflection.comment ?? new Comment()
    reflection.comment = comment
    comment.summary.push({
      kind: 'text',
      text: page(
        formula,
        inputRows(formula.def.inputs, types[0], '', meaning, typeOf),
        outputRows(formula, types[1], call, meaning),
        checksById.get(id) ?? [],
      ),
    })
    comment.blockTags.push(new CommentTag('@group', [{ kind: 'text', text: 'Formulas' }]))
    // The tables say it better than two pages of literal types.
    if (reflection.type instanceof ReferenceType) delete reflection.type.typeArguments
  })
  app.renderer.on(PageEvent.END, (page: PageEvent) => {
    const { model, contents } = page
    if (contents !== undefined && model instanceof DeclarationReflection && catalogue.has(`${model.parent?.name}.${model.name}`))
      page.contents = contents.replace(/<h1>Variable (\w+)<code class="tsd-tag">Const<\/code>/, '<h1>Formula $1')
  })
  app.converter.on(Converter.EVENT_END, () => {
    for (const id of catalogue.keys()) if (!written.has(id)) app.logger.error(`${id} has no reference page`)
    app.logger.info(`${written.size} formulas written`)
  })
}

type Meaning = (owner: ts.Type | undefined, field: string) => string
type TypeOf = (owner: ts.Type | undefined, field: string) => ts.Type | undefined

function inputRows(inputs: Inputs, owner: ts.Type | undefined, prefix: string, meaning: Meaning, typeOf: TypeOf): Row[] {
  return Object.entries(inputs).flatMap(([name, input]): Row[] => {
    const row = { name: prefix + name, ...inputCells(input), meaning: meaning(owner, name) }
    const inner = typeof input === 'object' && 'list' in input ? input.list : input
    if (typeof inner !== 'object' || !('fields' in inner)) return [row]
    const listed = inner === input ? '' : '[]'
    const own = typeOf(owner, name)
    const fields = typeOf(inner === input ? own : typeOf(own, 'list'), 'fields')
    return [row, ...inputRows(inner.fields, fields, `${prefix}${name}${listed}.`, meaning, typeOf)]
  })
}

function inputCells(input: Input): Omit<Row, 'name' | 'meaning'> {
  if (typeof input === 'string') return { kind: input, limits: '', fallback: '' }
  const given = 'default' in input && input.default !== undefined ? plain(input.default) : ''
  const fallback = given !== '' ? given : input.optional === true ? 'optional' : ''
  if ('oneOf' in input) return { kind: 'word', limits: input.oneOf.map((word) => `\`${word}\``).join(', '), fallback }
  if ('list' in input) {
    const item = inputCells(input.list)
    return {
      kind: `list of ${item.kind}`,
      limits: [item.limits, `at least ${input.least ?? 1} of them`].filter(Boolean).join('; '),
      fallback,
    }
  }
  if ('fields' in input) return { kind: 'record', limits: '', fallback }
  if ('curve' in input) return { kind: `curve: ${input.curve[0]} → ${input.curve[1]}`, limits: '', fallback }
  if ('flag' in input) return { kind: 'true or false', limits: '', fallback }
  const { min, max, above, below, whole } = input
  const limits = [
    min !== undefined && `≥ ${plain(min)}`,
    above !== undefined && `> ${plain(above)}`,
    max !== undefined && `≤ ${plain(max)}`,
    below !== undefined && `< ${plain(below)}`,
    whole && 'whole',
  ]
  return { kind: input.kind, limits: limits.filter(Boolean).join(', '), fallback }
}

const plain = (value: unknown): string => (Array.isArray(value) ? value.join(' ') : typeof value === 'object' ? show(value) : String(value))

function outputRows(formula: AnyFormula, owner: ts.Type | undefined, call: ts.CallExpression, meaning: Meaning): Row[] {
  const { output } = formula.def
  if (typeof output === 'string') return [{ name: 'result', kind: output, limits: '', fallback: '', meaning: singleMeaning(call) }]
  if (isInfinite(output))
    return [{ name: 'result', kind: `${output.kind}, may be infinite`, limits: '', fallback: '', meaning: singleMeaning(call) }]
  return Object.entries(output as Readonly<Record<string, OutputField>>).map(([name, field]) => ({
    name,
    ...outputCells(field),
    fallback: '',
    meaning: meaning(owner, name),
  }))
}

const isInfinite = (output: unknown): output is { kind: string; infinite: true } => (output as { infinite?: unknown }).infinite === true

function outputCells(field: OutputField): Pick<Row, 'kind' | 'limits'> {
  if (typeof field === 'string') return { kind: field, limits: '' }
  if ('oneOf' in field) return { kind: 'word', limits: field.oneOf.map((word) => `\`${word}\``).join(', ') }
  return 'list' in field ? { kind: `list of ${field.list}`, limits: '' } : { kind: `${field.kind}, may be infinite`, limits: '' }
}

/** A single output is described above the `output:` line where the description says more than the formula's first sentence. */
function singleMeaning(call: ts.CallExpression): string {
  const record = call.arguments[1]
  if (record === undefined || !ts.isObjectLiteralExpression(record)) return ''
  const property = record.properties.find((each) => each.name?.getText() === 'output')
  const comments = property === undefined ? [] : ts.getJSDocCommentsAndTags(property)
  return comments.map((each) => (typeof each.comment === 'string' ? each.comment : '')).join(' ')
}

function page(formula: AnyFormula, inputs: Row[], outputs: Row[], checks: readonly Check[]): string {
  const { assumes, valid, source } = formula.def
  const list = (title: string, items: readonly string[]) =>
    items.length === 0 ? '' : `\n\n**${title}**\n\n${items.map((item) => `- ${escaped(item)}`).join('\n')}`
  return [
    formula.def.title === undefined ? '' : `\n\nTitle on calculation sheets: ${escaped(formula.def.title)}.\n\n`,
    equations(formula),
    example(formula, checks),
    `\n\n**Inputs**\n\n${tableOf(inputs, ['input', 'kind', 'limits', 'default', 'meaning'])}`,
    `\n\n**Output**\n\n${tableOf(outputs, ['output', 'kind', 'values', '', 'meaning'])}`,
    list('Assumes', assumes ?? []),
    list('Valid where', Object.keys(valid ?? {})),
    list(
      'Sources',
      source.map(({ level, where }) => `${where} (${level})`),
    ),
    list(
      'Checked against',
      checks.map((check) => `${check.what}: ${check.expected}, within ${check.within}. ${check.source.where} (${check.source.level})`),
    ),
    `\n\nId: \`${formula.id}\`\n`,
  ].join('')
}

function example(formula: AnyFormula, checks: readonly Check[]): string {
  const code = exampleOf(formula, checks)
  return code === undefined ? '' : `\n\n**Example**\n\n\`\`\`ts\n${code}\n\`\`\``
}

function equations(formula: AnyFormula): string {
  const lines = equationMarkup(formula)
  return lines.length === 0 ? '' : `\n\n**Equation**\n\n${lines.map((line) => `<div>${line}</div>`).join('\n\n')}`
}

function tableOf(rows: readonly Row[], titles: readonly string[]): string {
  const cells = rows.map((row) => [`\`${row.name}\``, row.kind, row.limits, row.fallback, row.meaning])
  const kept = titles.map((title, i) => title !== '' && (i === 0 || cells.some((row) => row[i] !== '')))
  const line = (row: readonly string[]) =>
    `| ${row
      .filter((_, i) => kept[i])
      .map((cell) => escaped(cell).replaceAll('|', '\\|'))
      .join(' | ')} |`
  return [line(titles), line(titles.map(() => '---')), ...cells.map(line)].join('\n')
}

/** On one line, and with `<` as itself. */
const escaped = (text: string) => text.replaceAll(/\s+/g, ' ').replaceAll('<', '&lt;')
