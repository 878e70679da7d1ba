import { type Issue, issue } from '../units/index.js'

/** Adds an issue unless an option is a whole number within its limits. `otherwise` names what else is accepted. */
export function checkWhole(path: string, given: unknown, min: number, max: number, issues: Issue[], otherwise = ''): void {
  if (Number.isSafeInteger(given) && (given as number) >= min && (given as number) <= max) return
  const limits = max === Number.POSITIVE_INFINITY ? `of at least ${min}` : `from ${min} to ${max}`
  issues.push(issue(path, given, `must be ${otherwise}a whole number ${limits}`))
}

/** Adds an issue unless a seed is an exact whole number. */
export function checkSeed(given: unknown, issues: Issue[], path = 'seed'): void {
  if (!Number.isSafeInteger(given)) issues.push(issue(path, given, 'must be a whole number'))
}

/** Adds an issue unless an option is a share above 0 and below 1. */
export function checkShare(path: string, given: unknown, issues: Issue[]): void {
  if (!(typeof given === 'number' && given > 0 && given < 1)) issues.push(issue(path, given, 'must be a number between 0 and 1'))
}
