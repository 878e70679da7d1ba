import { InputError, show } from '../../units/index.js'
import { SCHEMA_VERSION } from './schema.js'

type Document = Record<string, unknown>

/** What brings a document of one version up to the next; the key is the version it starts from. */
const STEPS: Readonly<Record<number, (document: Document) => Document>> = {
  // Version 1 had one `air` temperature and no section of its own for the weather.
  1: ({ air, ...rest }) => (air === undefined ? rest : { ...rest, environment: { ...(rest.environment as object), normalAir: air } }),
  // Version 2 had a layer height, which no check used, and a duty factor of hops, which follows from height and travel.
  2: ({ print, usage, ...rest }) => ({
    ...rest,
    ...(print === undefined ? {} : { print: without(print, 'layerHeight') }),
    ...(usage === undefined ? {} : { usage: without(usage, 'hopDutyFactor') }),
  }),
}

function without(section: unknown, name: string): unknown {
  if (typeof section !== 'object' || section === null || Array.isArray(section)) return section
  const { [name]: _, ...rest } = section as Document
  return rest
}

/**
 * Brings an older specification up to the layout of this library, one version at a time; a document without `schemaVersion` is taken to be current.
 * Throws an `InputError` for a version that this library does not know.
 */
export function migrate(document: Readonly<Document>): Document {
  const given = document.schemaVersion ?? SCHEMA_VERSION
  if (typeof given !== 'number' || !Number.isInteger(given) || given < 1 || given > SCHEMA_VERSION) {
    throw new InputError('describeLeg', [
      {
        path: 'schemaVersion',
        given: show(given),
        accepts: `must be a whole number from 1 to ${SCHEMA_VERSION}; a newer document needs a newer version of the library`,
      },
    ])
  }
  let current: Document = { ...document }
  for (let version = given; version < SCHEMA_VERSION; version++) current = (STEPS[version] as (d: Document) => Document)(current)
  return { ...current, schemaVersion: SCHEMA_VERSION }
}
