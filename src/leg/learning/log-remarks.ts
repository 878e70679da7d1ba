import type { Kind } from '../../units/index.js'

/** A column of a log: its name and kind of quantity, and the unit of its header. */
export interface LogColumn {
  readonly name: string
  readonly kind: Kind
  readonly unit: string
}

/** Something found in a log that a reader should know: nothing is dropped without one. */
export interface LogRemark {
  /** Name of the log. */
  readonly log: string
  /** Line of the file, from 1; absent for the file as a whole. */
  readonly line: number | undefined
  /** Kind of the remark. */
  readonly what:
    | 'gap'
    | 'unreadable'
    | 'unit'
    | 'spike'
    | 'order'
    | 'column'
    | 'few readings'
    | 'disagreement'
    | 'duplicate'
    | 'implausible'
    | 'unexpected'
    | 'wrong file'
    | 'misfit'
    | 'instrument'
    | 'confounded'
    | 'format'
  /** The remark in plain words. */
  readonly message: string
}

/** A remark on a log as a whole. */
export const ofLog = (log: string, what: LogRemark['what'], message: string): LogRemark => ({ log, line: undefined, what, message })
