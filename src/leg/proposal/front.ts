import type { LegGoals } from './goals.js'
import type { JudgedLeg } from './judge.js'
import type { LegStock } from './stock.js'

/** A leg that meets the wish, with what it is good for. */
export interface FoundLeg {
  readonly stock: LegStock
  readonly judged: JudgedLeg
  readonly goals: LegGoals
}

const BEST: readonly (readonly [goal: keyof LegGoals, title: string])[] = [
  ['mass', 'lightest'],
  ['energyPerMetre', 'thriftiest'],
  ['printVolume', 'smallest print'],
  ['cost', 'cheapest'],
  ['margin', 'most reserve'],
]

const small = (goals: LegGoals): number[] => [goals.mass, goals.energyPerMetre, goals.printVolume, goals.cost, -goals.margin]

/** Legs none of which is better than another in everything. */
export const frontOf = (all: readonly FoundLeg[]): FoundLeg[] => {
  const dominated = (candidate: FoundLeg, place: number) =>
    all.some((other, earlier) => {
      const [a, b] = [small(other.goals), small(candidate.goals)]
      // Of legs that are alike in everything the first one stays.
      return a.every((x, i) => x <= (b[i] as number)) && (earlier < place || a.some((x, i) => x < (b[i] as number)))
    })
  return all.filter((candidate, place) => !dominated(candidate, place))
}

/** The best leg of each goal, each leg once with all that it is best at. */
export function pickedFrom(front: readonly FoundLeg[]): { title: string; one: FoundLeg }[] {
  const titles = new Map<FoundLeg, string[]>()
  BEST.forEach(([, title], i) => {
    const best = front.reduce((a, b) => ((small(b.goals)[i] as number) < (small(a.goals)[i] as number) ? b : a))
    titles.set(best, [...(titles.get(best) ?? []), title])
  })
  return [...titles].map(([one, names]) => ({ title: names.join(', '), one }))
}
