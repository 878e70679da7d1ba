import * as z from 'zod'
import { metaOf } from './fields.js'
import { legSchema } from './schema.js'

/**
 * The JSON Schema (draft 2020-12) of a leg's specification, for editors that complete and check YAML and JSON while they are written.
 * A quantity is a text pattern of number and unit, or a pair.
 */
export function legJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(legSchema, {
    io: 'input',
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema }) => {
      const meta = metaOf(zodSchema)
      if (meta === undefined) return
      for (const key of Object.keys(jsonSchema)) delete (jsonSchema as Record<string, unknown>)[key]
      Object.assign(jsonSchema, meta.json, { description: meta.meaning })
      if (meta.fallback !== undefined) Object.assign(jsonSchema, { default: meta.fallback.value })
    },
  }) as Record<string, unknown>
}
