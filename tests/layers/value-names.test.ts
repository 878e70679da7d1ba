import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { expect, test } from 'vitest'

const source = fileURLToPath(new URL('../../src/leg/', import.meta.url))

/** Functions that define a value, a field or a constant by its id. */
const DEFINES = /^(value|field|optional|word|record|references?|band|ranged|constant|question|law|leaf)$/
/** An id: the part, and the name in it. */
const ID = /^\w+\.[\w.]+$/

interface Texts {
  /** Ids of values that a file defines. */
  readonly defined: readonly string[]
  /** Other texts of the file, but not the ids of checks and formulas that it defines. */
  readonly others: readonly string[]
}

function textsOf(code: string): Texts {
  const tree = ts.createSourceFile('a.ts', code, ts.ScriptTarget.Latest, true)
  const texts = { defined: [] as string[], others: [] as string[] }
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteralLike(node)) {
      const { parent } = node
      const made =
        ts.isCallExpression(parent) && parent.arguments[0] === node && DEFINES.test(parent.expression.getText()) && ID.test(node.text)
      const named = ts.isPropertyAssignment(parent) && parent.name.getText() === 'id'
      if (made) texts.defined.push(node.text)
      else if (!named) texts.others.push(node.text)
    }
    ts.forEachChild(node, visit)
  }
  visit(tree)
  return texts
}

const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'))
const read = new Map(files.map((file) => [file, textsOf(readFileSync(source + file, 'utf8'))]))

/** Left: a table of the properties of a material that its leaves are made of, under ids that a helper puts together. */
const LEFT = ['parts/materials/fields.ts material.strengthCurve']

// A list of what a function reads would have to name values by text: what is read is known from the values themselves.
test('no file of the leg names a value by text but where it is defined, and in one table that is left', () => {
  const defined = new Set([...read.values()].flatMap((one) => one.defined))
  expect(defined.size).toBeGreaterThan(500)
  // A field of the document, one of a wish and a check may have the name of a value.
  const names = new Set(read.get('document/names.ts')?.others)
  const repeated = [...read].flatMap(([file, { others }]) =>
    file.startsWith('document/') || file.startsWith('proposal/')
      ? []
      : others.filter((text) => defined.has(text) && !names.has(text)).map((text) => `${file} ${text}`),
  )
  expect(repeated).toEqual(LEFT)
})

test('a value that is named by text is found', () => {
  const { defined, others } = textsOf(
    "export const a = value('cord.rise', [], (use) => 1)\nconst after = ['cord.rise', 'cord.pull']\nconst f = { id: 'cord.free' }",
  )
  expect(defined).toEqual(['cord.rise'])
  expect(others).toEqual(['cord.rise', 'cord.pull'])
})
