import { materialNames } from '../../materials/index.js'
import { jsonSchemaOf } from '../schema/index.js'
import { DOCUMENT_VERSION, documentFields } from './fields.js'
import meanings from './meanings.json' with { type: 'json' }

/**
 * The JSON Schema (draft 2020-12) of a leg's document, for editors that complete and check YAML and JSON while they are written. A quantity is a
 * text of number and unit, or a pair. The package ships it as `limbwright/leg.schema.json`.
 */
export function legJsonSchema(): Record<string, unknown> {
  const texts = meanings as Readonly<Record<string, string>>
  const schema = jsonSchemaOf(documentFields, {
    meaning: (path) => texts[path],
    names: (section) => (section === 'materials' ? materialNames() : section === 'prints' ? ['default'] : []),
  }) as Record<string, unknown>
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `urn:limbwright:leg:${DOCUMENT_VERSION}`,
    title: 'The document of one robot leg',
    ...schema,
    properties: {
      $schema: { type: 'string', description: 'The schema of this document, as a path or an address.' },
      ...(schema.properties as object),
    },
  }
}
