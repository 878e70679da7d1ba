/** Points to inspect again after some time. */
export interface FollowUp {
  /** When to look again. */
  readonly when: 'after a day' | 'after a week'
  /** The point to inspect. */
  readonly what: string
  /** Share expected to be left by then, and the work to do. */
  readonly expect: string
}
