import { randomStream } from '../../numeric/index.js'
import type { LegGoals } from './goals.js'
import type { Judge, JudgedLeg } from './judge.js'
import { affords, BETTER, goalValue, mendByModel, slimByModel } from './model-search.js'
import { type LegSizes, SIZES, stepped } from './sizes.js'

/** Steps of a size that are tried, the longer ones first while much is missing. */
const FAR = [4, -4, 8, -8, 1, -1, 2, -2]
const NEAR = [1, -1, 2, -2]

/** How a search went on: legs judged, what is still missing. */
export type SearchProgress = (evaluations: number, deficit: number, governing: string) => void

/**
 * Judges a leg, and mends it until all checks hold or nothing helps any more. Models of its margins move many sizes at once. Where those do not help, sizes are tried one
 * by one in a random order. The order comes from the seed alone, so that the same wish gives the same leg.
 * It judges at most `budget` legs, and at least the one that it starts from.
 */
export function mend(judge: Judge, start: LegSizes, seed: number, budget: number, progress?: SearchProgress): JudgedLeg {
  const random = randomStream(seed)
  const until = judge.evaluations + budget
  const tell = ({ deficit, governing }: JudgedLeg) => progress?.(judge.evaluations, deficit, governing)
  let best = judge.judge(start)
  while (best.deficit > 0 && judge.evaluations < until) {
    const before = best.deficit
    best = mendByModel(judge, best, until, tell)
    // Models on both sides of every size help no more, and much is missing: single steps would not find it either.
    if (best.deficit > HOPELESS && best.margins.size > 0 && affords(judge, until, 'both')) return best
    if (best.deficit > WORTH * before) best = sizeBySize(judge, best, random, until, tell)
    // Two sizes at once, where no single one helps: a random pair of steps.
    if (best.deficit > before - 1e-6) {
      const helped = pairs(judge, best, random, until)
      if (helped === undefined) return best
      best = helped
    }
  }
  return best
}

/** One round through the sizes in a random order, keeping each step that leaves less missing. */
function sizeBySize(
  judge: Judge,
  start: JudgedLeg,
  random: ReturnType<typeof randomStream>,
  until: number,
  tell: (best: JudgedLeg) => void,
): JudgedLeg {
  let best = start
  for (const name of shuffled(SIZES, random)) {
    for (const steps of best.deficit > 2 ? FAR : NEAR) {
      if (best.deficit === 0 || judge.evaluations >= until) return best
      const sizes = stepped(best.sizes, name, steps)
      if (sizes === undefined) continue
      const tried = judge.judge(sizes, best.deficit - LESS)
      if (tried.deficit < best.deficit - LESS) best = tried
    }
    tell(best)
  }
  return best
}

const PAIRS = 150
/** So much missing, a factor of seven over all checks together, is not found step by step. */
const HOPELESS = 2
/** Where models leave more than this share of what was missing, single sizes are tried. */
const WORTH = 0.8
/** A step counts only where this much less is missing. */
const LESS = 1e-9

function pairs(judge: Judge, best: JudgedLeg, random: ReturnType<typeof randomStream>, until: number): JudgedLeg | undefined {
  for (let i = 0; i < PAIRS && judge.evaluations < until; i++) {
    let sizes: LegSizes | undefined = best.sizes
    for (let k = 0; k < 2; k++) {
      const name = SIZES[Math.floor(random.uniform() * SIZES.length)] as keyof LegSizes
      sizes = stepped(sizes as LegSizes, name, NEAR[Math.floor(random.uniform() * NEAR.length)] as number) ?? sizes
    }
    const tried = judge.judge(sizes as LegSizes, best.deficit - LESS)
    if (tried.deficit < best.deficit - LESS) return tried
  }
  return undefined
}

/** Makes a leg better at a goal, size by size, while all checks hold. Steps that do not serve the goal are not judged where the sizes alone show that. */
export function slim(judge: Judge, start: JudgedLeg, goal: keyof LegGoals, seed: number, budget: number): JudgedLeg {
  const random = randomStream(seed, 1)
  const of = (judged: JudgedLeg) => goalValue(judge, goal, judged)
  const until = judge.evaluations + budget
  let best = slimByModel(judge, start, goal, until)
  let min = of(best)
  const enough = () => min - BETTER * Math.abs(min)
  for (let better = true; better && judge.evaluations < until; ) {
    better = false
    for (const name of shuffled(SIZES, random))
      for (const steps of [-1, 1]) {
        if (judge.evaluations >= until) return best
        const sizes = stepped(best.sizes, name, steps)
        if (sizes === undefined || (judge.goalOf(goal, sizes) ?? Number.NEGATIVE_INFINITY) >= enough()) continue
        const tried = judge.judge(sizes, 0)
        if (tried.deficit > 0) continue
        const value = of(tried)
        if (value >= enough()) continue
        best = tried
        min = value
        better = true
        break
      }
  }
  return best
}

function shuffled<T>(list: readonly T[], random: ReturnType<typeof randomStream>): T[] {
  const copy = [...list]
  for (let i = copy.length - 1; i > 0; i--) {
    const j = Math.floor(random.uniform() * (i + 1))
    ;[copy[i], copy[j]] = [copy[j] as T, copy[i] as T]
  }
  return copy
}
