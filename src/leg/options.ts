import { didYouMean, InputError, issue, refuse } from '../units/index.js'
import { ALL_CASE_IDS, type CaseId } from './cases/events.js'

/** Throws for unknown options, because a misspelt one would silently have no effect. */
export function knownOptions(where: string, given: unknown, names: readonly string[]): void {
  if (given === undefined) return
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    refuse(where, 'options', given, `must be a record with ${names.join(', ')}`)
  const surplus = Object.keys(given).filter((name) => !names.includes(name))
  if (surplus.length > 0)
    throw new InputError(
      where,
      surplus.map((name) =>
        issue(
          name,
          (given as Record<string, unknown>)[name],
          `is no option${didYouMean(name, names, ', ')}; options are ${names.join(', ')}`,
        ),
      ),
    )
}

/** Some load cases, in the order of the report. Default: all. Throws an `InputError` for a name that is none. */
export function caseList(where: string, given: readonly CaseId[] | undefined): readonly CaseId[] {
  if (given === undefined) return ALL_CASE_IDS
  const unknown = Array.isArray(given) ? given.filter((id) => !ALL_CASE_IDS.includes(id)) : [given]
  if (unknown.length > 0)
    refuse(
      where,
      'cases',
      unknown[0],
      `must be load cases among ${ALL_CASE_IDS.join(', ')}${typeof unknown[0] === 'string' ? didYouMean(unknown[0], ALL_CASE_IDS) : ''}`,
    )
  return ALL_CASE_IDS.filter((id) => given.includes(id))
}
