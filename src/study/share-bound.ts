import { bracketRoot, regularisedBeta } from '../numeric/index.js'

/** One-sided exact lower bound of a share of which `held` of `draws` were seen (Clopper and Pearson 1934). */
export function leastShare(held: number, draws: number, confidence: number): number {
  if (held === 0) return 0
  // The share at which as many or more would be seen in one of 1/(1 − confidence) trials.
  return bracketRoot((p) => regularisedBeta(p, held, draws - held + 1) - (1 - confidence), 0, 1)
}

/** The most of some draws that may fail so that the share that holds is still shown to be at least `chance`; -1 where no number of failures is few enough. */
export function mostFailures(draws: number, chance: number, confidence: number): number {
  let failures = -1
  while (failures + 1 < draws && leastShare(draws - failures - 1, draws, confidence) >= chance) failures++
  return failures
}
