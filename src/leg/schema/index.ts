/**
 * The grammar of the leg's document: fields as plain data, from which reading, messages, defaults, types and the JSON Schema follow.
 *
 * @module
 */
export type { Band, Data, DataFields, Field, Fields, Given, GivenFields, OwnMaterial, OwnValue, Section, Table } from './field.js'
export { jsonSchemaOf, type SchemaTexts } from './json-schema.js'
export { acceptedBy, isLeaf, type Leaf, meant, Rejection, readLeaf } from './leaf.js'
export { defaultsOf, eachLeaf, exactlyOneIssues, type LegDefault, placeAt, referencesOf, salvaged } from './walk.js'
export { zodOf } from './zod.js'
