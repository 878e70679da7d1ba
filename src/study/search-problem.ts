/** A candidate: its variables (choices as whole numbers), its goals (all to be made small) and how far it breaks its constraints. */
export interface Candidate {
  readonly x: Float64Array
  readonly goals: Float64Array
  /** Sum of the scaled violations; 0 when all constraints hold, infinite where the formula has no answer. */
  readonly violation: number
  /** How far each side of each constraint is exceeded, scaled; not above zero where it holds. */
  readonly excess: Float64Array
  /** Results there, as the problem needs them for its answer: the formula need not run again. */
  readonly results?: ArrayLike<number>
}

/** A search problem on plain numbers. */
export interface Problem {
  /** Lowest and highest value of each variable; for a choice 0 and the number of options minus one. */
  readonly low: Float64Array
  readonly high: Float64Array
  /** Whether a variable is a choice between options without order. */
  readonly choice: readonly boolean[]
  readonly goals: number
  /** Whether some constraint is an equality, which hardly a random point keeps. */
  readonly equalities: boolean
  run(x: Float64Array): Candidate
}

/**
 * Whether one candidate is at least as good in everything and better in something; broken constraints count first, those broken by no more than
 * `slack` as kept.
 */
export function dominates(a: Candidate, b: Candidate, slack = 0): boolean {
  if (a.violation > slack || b.violation > slack) return a.violation < b.violation
  let better = false
  for (let k = 0; k < a.goals.length; k++) {
    if ((a.goals[k] as number) > (b.goals[k] as number)) return false
    if ((a.goals[k] as number) < (b.goals[k] as number)) better = true
  }
  return better
}

/** The candidate with the least violation, then the least first goal. */
export const bestOf = (crowd: readonly Candidate[]): Candidate =>
  crowd.reduce((best, each) =>
    each.violation < best.violation || (each.violation === best.violation && (each.goals[0] as number) < (best.goals[0] as number))
      ? each
      : best,
  )
