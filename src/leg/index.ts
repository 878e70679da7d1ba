/**
 * One leg as one specification: what each load case asks of every part, and what gives first.
 *
 * @module
 */
export { describeLeg, type Leg } from './specification/describe.js'
export { legJsonSchema } from './specification/json-schema.js'
export { migrate } from './specification/migrate.js'
export { type LegData, type LegSpecification, SCHEMA_VERSION } from './specification/schema.js'
export type { LegDefault } from './specification/walk.js'
