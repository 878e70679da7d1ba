import { didYouMean, InputError, type Issue, issue } from '../units/index.js'

/** Whether something is a plain record, which fields can be read from. */
export const isRecord = (given: unknown): given is Readonly<Record<string, unknown>> =>
  typeof given === 'object' && given !== null && !Array.isArray(given)

/**
 * Adds an issue for a record that is none, and for each of its fields that has no meaning there: a misspelt field would have no effect. Returns whether its fields can be read.
 */
export function onlyKeys(path: string, given: unknown, known: readonly string[], issues: Issue[]): boolean {
  if (!isRecord(given)) {
    issues.push(issue(path, given, `must be a record of ${known.join(', ')}`))
    return false
  }
  for (const key of Object.keys(given))
    if (!known.includes(key))
      issues.push(
        issue(
          path === '' ? key : `${path}.${key}`,
          given[key],
          `is not a field here${didYouMean(key, known, ', ')}; fields are ${known.join(', ')}`,
        ),
      )
  return true
}

/** Throws for what `onlyKeys` finds. */
export function requireKeys(where: string, path: string, given: unknown, known: readonly string[]): void {
  const issues: Issue[] = []
  onlyKeys(path, given, known, issues)
  if (issues.length > 0) throw new InputError(where, issues)
}
