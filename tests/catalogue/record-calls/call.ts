/** A function or method, its records, and the call with them. */
export interface RecordCall {
  readonly name: string
  readonly given: Record<string, unknown>
  readonly call: (given: never) => unknown
  /** Whether `given` only holds the arguments: its own names are those of this test. */
  readonly severalArguments: boolean
}

const made =
  (severalArguments: boolean) =>
  // The records are what plain JavaScript can pass, so that calls take anything.
  // biome-ignore lint/suspicious/noExplicitAny: see above
  (name: string, given: Record<string, unknown>, call: (given: any) => unknown): RecordCall => ({ name, given, call, severalArguments })

/** A call with one record. */
export const one = made(false)

/** A call with several records, each under a name of its own. */
export const several = made(true)
