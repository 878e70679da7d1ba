/** Why a numerical routine could not give an answer. */
export type NumericFailure =
  /** The two ends of the interval do not enclose a change of sign. */
  | 'noBracket'
  /** The function returned NaN or infinity where a number was needed. */
  | 'notFinite'
  /** The allowed number of evaluations or steps was used up. */
  | 'noConvergence'
  /** The argument lies outside the table or the function's domain. */
  | 'outOfRange'
  /** The request itself is malformed (lengths differ, an option is not positive …). */
  | 'badArgument'
  /** The system of equations has no unique solution. */
  | 'singular'

/** A value as `NumericError` shows it: a short number, a short list, or text. */
const show = (value: unknown): string => {
  if (typeof value === 'number') return String(value)
  if (Array.isArray(value) || ArrayBuffer.isView(value)) {
    const list = Array.from(value as ArrayLike<unknown>)
    const head = list.slice(0, 6).map(show).join(', ')
    return list.length > 6 ? `[${head}, … ${list.length} values]` : `[${head}]`
  }
  return String(value)
}

/**
 * A numerical routine cannot give what was requested.
 *
 * The message is one sentence with the numbers in it; the same facts are fields, so that a caller who knows
 * what the plain numbers stand for can say it in the user's words and units.
 */
export class NumericError extends Error {
  override readonly name = 'NumericError'
  /** The routine that failed, by its exported name. */
  readonly routine: string
  /** The kind of failure. */
  readonly reason: NumericFailure
  /** What was requested, and the numbers met on the way, by name. */
  readonly details: Readonly<Record<string, unknown>>

  constructor(routine: string, reason: NumericFailure, explanation: string, details: Readonly<Record<string, unknown>> = {}) {
    const facts = Object.entries(details)
      .map(([key, value]) => `${key} = ${show(value)}`)
      .join(', ')
    super(`${routine}: ${explanation}${facts === '' ? '' : ` (${facts})`}`)
    this.routine = routine
    this.reason = reason
    this.details = details
  }
}
