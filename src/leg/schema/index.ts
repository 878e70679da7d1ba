/**
 * The grammar of the leg's document: fields as plain data, from which reading, messages, defaults, types and the JSON Schema follow.
 *
 * @module
 */
export type { Field, Fields, OwnMaterial, OwnValue, Section } from './field.js'
export type { DataFields, GivenFields } from './field-types.js'
export { jsonSchemaOf } from './json-schema.js'
export { acceptedBy, designations, type Leaf, meant, readable } from './leaf.js'
export { defaultsOf, eachLeaf, exactlyOneIssues, type LegDefault, placeAt, referencesOf, salvaged } from './walk.js'
/** Not in the declarations, which need no zod so. @internal */
export { zodOf } from './zod.js'
