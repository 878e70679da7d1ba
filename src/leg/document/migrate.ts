import { refuse } from '../../units/index.js'
import { DOCUMENT_VERSION } from './fields.js'
import { toVersion3 } from './migrate-1-and-2.js'
import { fromVersion3 } from './migrate-3.js'

/** Sections that version 3 had and version 4 has not. */
const EARLIER_SECTIONS = ['drives', 'motor', 'plate', 'controller', 'shaft']

/** The version of a document. Without `schemaVersion` it is assumed to be current, unless it has sections that only version 3 had. */
export const versionOf = (document: Readonly<Record<string, unknown>>): unknown =>
  document.schemaVersion ?? (EARLIER_SECTIONS.some((name) => name in document) ? 3 : DOCUMENT_VERSION)

/**
 * Brings an older document up to the layout of this library. Throws an `InputError` for a version that this library does not know, and for an upper link
 * that is lighter than what it carries.
 */
export function migrate(document: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const version = versionOf(document)
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1 || version > DOCUMENT_VERSION)
    refuse(
      'describeLeg',
      'schemaVersion',
      version,
      `must be a whole number from 1 to ${DOCUMENT_VERSION}; a newer document needs a newer version of the library`,
    )
  return version < DOCUMENT_VERSION ? fromVersion3(toVersion3(document, version)) : { ...document, schemaVersion: DOCUMENT_VERSION }
}
