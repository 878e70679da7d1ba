import type { LegGoals } from './goals.js'
import type { Judge, JudgedLeg } from './judge.js'
import { legsFor, MarginModel, type Sides, stepsTaken, upwards } from './margin-model.js'
import { movedBy, room, SIZES } from './sizes.js'

/** Steps that a size goes at most at first, at the most, and at the least: shorter ones are left to the search size by size. */
const REACH = { first: 3, most: 6, least: 0.3, short: 0.15 }
/** Margins aimed at lie this much above what is required, so that the model's error does not leave a leg just short. */
const ABOVE = 0.005
/** Legs that a model is worth its slopes for. */
const WORTH = 4
/** A model that leaves more than this share of what was missing has become stale. */
const STALE = 0.8

/** Whether a budget holds a model and some legs of it. */
export const affords = (judge: Judge, until: number, sides: Sides): boolean => until - judge.evaluations >= legsFor(sides) + WORTH

/**
 * Mends a leg by models of its margins, each good for as long as it helps. On the way the sum of squares of what is missing falls, as in the model. The leg
 * that is returned lacks least of all of these.
 */
export function mendByModel(judge: Judge, start: JudgedLeg, until: number, progress: (best: JudgedLeg) => void): JudgedLeg {
  let [best, at] = [start, start]
  let sides: Sides = upwards
  while (best.deficit > 0 && at.margins.size > 0 && affords(judge, until, sides)) {
    const before = squares(at)
    const model = new MarginModel(judge, at, sides)
    at = model.best.deficit === 0 ? model.best : mendOnce(judge, model, at, until)
    best = [model.best, at].reduce((a, b) => (b.deficit < a.deficit ? b : a), best)
    progress(best)
    const stale = squares(at) > STALE * before
    if (stale && sides === 'both') return best
    if (stale) sides = 'both'
  }
  return best
}

/** Sum of the squares of what is missing of each check. */
const squares = ({ margins }: JudgedLeg): number =>
  [...margins.values()].reduce((sum, margin) => sum + Math.log(Math.min(1, Math.max(MIN_MARGIN, margin))) ** 2, 0)
const MIN_MARGIN = 1e-4

function mendOnce(judge: Judge, model: MarginModel, start: JudgedLeg, until: number): JudgedLeg {
  let best = start
  let min = squares(start)
  for (let reach = REACH.first; reach >= REACH.least && judge.evaluations < until; ) {
    const t = model.steps(best, { target: ABOVE, reach })
    const tried = judge.judge(stepsTaken(best.sizes, t))
    model.learn(best, tried, t)
    if (tried.deficit === 0) return tried
    const left = tried.margins.size === 0 ? Number.POSITIVE_INFINITY : squares(tried)
    reach = left < STALE * min ? Math.min(REACH.most, 1.5 * reach) : reach / 2
    if (left >= min) continue
    best = tried
    min = left
  }
  return best
}

/** Value of a goal that shall be small. */
export const goalValue = (judge: Judge, goal: keyof LegGoals, judged: JudgedLeg): number =>
  goal === 'margin' ? -judged.margin : judge.goals(judged)[goal]

/** A goal counts as better by this share at least. */
export const BETTER = 1e-6
const ROUNDS = 3
/** Steps back to where all checks hold, and what may be missing before them. */
const RETURNS = 3
const FAR_OFF = 1

/** Makes a leg better at a goal by models of its margins, while all checks hold. */
export function slimByModel(judge: Judge, start: JudgedLeg, goal: keyof LegGoals, until: number): JudgedLeg {
  let best = start
  for (let round = 0; round < ROUNDS && affords(judge, until, upwards); round++) {
    const before = goalValue(judge, goal, best)
    best = slimOnce(judge, best, goal, until)
    if (!(goalValue(judge, goal, best) < before - 0.01 * Math.abs(before))) return best
  }
  return best
}

function slimOnce(judge: Judge, start: JudgedLeg, goal: keyof LegGoals, until: number): JudgedLeg {
  const slopes = goal === 'margin' ? undefined : goalSlopes(judge, goal, start)
  // Slopes on the side on which the goal falls.
  const model = new MarginModel(judge, start, (place) => (slopes === undefined ? 1 : -(slopes[place] as number)))
  let best = start
  let min = goalValue(judge, goal, best)
  for (let reach = 1; reach >= REACH.short && judge.evaluations < until; ) {
    const target = slopes === undefined ? Math.log(best.margin) + 0.05 * reach : ABOVE
    const t = model.steps(best, { target, reach, ...(slopes && { goal: slopes }) })
    let tried = judge.judge(stepsTaken(best.sizes, t))
    model.learn(best, tried, t)
    // The goal pulls the leg a little too far: back to where all checks hold.
    for (let k = 0; k < RETURNS && tried.deficit > 0 && tried.deficit < FAR_OFF && judge.evaluations < until; k++) {
      const back = model.steps(tried, { target: ABOVE, reach })
      const mended = judge.judge(stepsTaken(tried.sizes, back))
      model.learn(tried, mended, back)
      tried = mended
    }
    const value = tried.deficit === 0 ? goalValue(judge, goal, tried) : Number.POSITIVE_INFINITY
    if (value < min - BETTER * Math.abs(min)) {
      best = tried
      min = value
      reach = Math.min(REACH.most, 1.5 * reach)
    } else reach *= 0.6
  }
  return best
}

/** Relative change of a goal with a step of each size. */
function goalSlopes(judge: Judge, goal: keyof LegGoals, { sizes }: JudgedLeg): Float64Array {
  const now = judge.goalOf(goal, sizes) as number
  return Float64Array.from(SIZES, (_, j) => {
    const step = room(sizes, j).most >= 1 ? 1 : -1
    const there = judge.goalOf(
      goal,
      movedBy(sizes, (i) => (i === j ? step : 0)),
    )
    return there === undefined ? 0 : (there / now - 1) / step
  })
}
