import { InputError, show } from '../../units/index.js'
import { migrate as toVersion3 } from '../specification/migrate.js'
import { DOCUMENT_VERSION } from './fields.js'
import { fromVersion3 } from './migrate-3.js'

/**
 * Brings an older document up to the layout of this library; a document without `schemaVersion` is assumed to be current. Throws an `InputError` for
 * a version that this library does not know.
 */
export function migrate(document: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const version = document.schemaVersion ?? DOCUMENT_VERSION
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1 || version > DOCUMENT_VERSION)
    throw new InputError('describeLeg', [
      {
        path: 'schemaVersion',
        given: show(version),
        accepts: `must be a whole number from 1 to ${DOCUMENT_VERSION}; a newer document needs a newer version of the library`,
      },
    ])
  return version < DOCUMENT_VERSION ? fromVersion3(toVersion3(document)) : { ...document }
}
