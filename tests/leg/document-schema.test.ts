import { describe, expect, test } from 'vitest'
import { legJsonSchema } from '../../src/leg/document/json-schema.js'

interface Schema {
  readonly [name: string]: unknown
}
const schema = legJsonSchema() as Schema

describe('the JSON Schema of the document', () => {
  test('every property is described', () => {
    const bare: string[] = []
    const visit = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return
      for (const [name, value] of Object.entries(node as Schema)) {
        if (name === 'properties')
          for (const [field, inner] of Object.entries(value as Record<string, Schema>))
            if (inner.description === undefined && inner.const === undefined && !/\.(size|box)$/.test(path)) bare.push(`${path}.${field}`)
        visit(value, `${path}.${name}`)
      }
    }
    visit(schema.properties, '')
    // Ends of bands and places of tuples are named by what holds them.
    expect(bare.filter((path) => !/(low|typical|high|width|height|depth|basedOn)$/.test(path))).toEqual([])
  })

  test('a quantity is one definition with a readable message and an example', () => {
    const { mass } = schema.$defs as { mass: { anyOf: [{ pattern: string; patternErrorMessage: string; examples: string[] }] } }
    const [text] = mass.anyOf
    const pattern = new RegExp(text.pattern)
    expect(pattern.test('10.5 kg')).toBe(true)
    expect(pattern.test('10.5 N')).toBe(false)
    expect(text.patternErrorMessage).toContain('must be a quantity of mass')
    expect(text.examples[0]).toMatch(pattern)
    expect(JSON.stringify(schema).length).toBeLessThan(156_000)
  })

  test('names of materials, threads and fibres complete', () => {
    const text = JSON.stringify(schema)
    for (const name of ['ASA', 'aluminium 6061-T6', 'M4', 'ISO 8734 4 mm m6', 'LCP']) expect(text, name).toContain(`"${name}"`)
  })
})
