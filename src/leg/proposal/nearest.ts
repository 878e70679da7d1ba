import { type Easing, easingsOf, largerParts, type WishWithStock } from './easings.js'
import type { Entry } from './entry.js'
import { Judge, type JudgedLeg, LEGS_MASS } from './judge.js'
import { reasonsOf } from './reasons.js'
import { type EasedWish, type LegRefusal, onlyHeavy, sentence, tooHeavy } from './refusal.js'
import { mend } from './search.js'
import type { LegSizes } from './sizes.js'
import { startOf } from './start.js'
import type { WorkPieces } from './work.js'

const MAX_WAYS = 3
const HALVINGS = 4
/** Legs judged with everything eased, for a first leg of other eased wishes, and for each change of one: at most this share of all, and not more than this. */
const ALL = { share: 0.5, most: Number.POSITIVE_INFINITY }
const FIRST = { share: 0.1, most: 1500 }
const CHANGE = { share: 0.025, most: 250 }

/** A leg of a wish with some entries eased, and which they are. */
interface RelaxedLeg {
  readonly eased: readonly Easing[]
  readonly found: JudgedLeg
  /** Share of their way that they are eased by. */
  readonly share: number
}

/** A leg that no evaluation was left for. */
const unjudged = (sizes: LegSizes): JudgedLeg => ({
  sizes,
  deficit: Number.POSITIVE_INFINITY,
  margin: 0,
  governing: '',
  short: [],
  margins: new Map(),
})

/** Tries of the search for a wish that can be met. */
class Attempts {
  #count = 0
  /** Legs that all tries together may judge. */
  readonly cap: number
  /** Legs judged in the longest try that ended at its cap before a leg was found; nothing where none did. */
  capped: number | undefined

  constructor(
    readonly wished: WishWithStock,
    readonly seed: number,
    readonly work: WorkPieces,
    readonly search: typeof mend,
  ) {
    this.cap = work.left
  }

  /** The best leg of the wish with some entries eased by a share of their way, mended from sizes that are near; without any, from a fresh start. */
  leg(eased: readonly Easing[], share: number, from?: LegSizes, limits = from === undefined ? FIRST : CHANGE): JudgedLeg {
    const { wish, stock } = eased.reduce((all, easing) => easing.put(all, share), this.wished)
    const judge = new Judge(wish, stock)
    const max = Math.min(limits.most, Math.floor(limits.share * this.cap))
    const paths = eased.map(({ path }) => path).join(', ')
    const name = `ease ${this.#count++}, ${paths} by ${share}`
    const start = from ?? startOf(wish, stock)
    const cap = Math.min(max, this.work.left)
    const before = this.work.used
    const found = cap < 1 ? unjudged(start) : this.work.do(name, judge, cap, (budget) => this.search(judge, start, this.seed, budget))
    const short = found.deficit > 0
    if (short && this.work.used - before >= cap) this.capped = Math.max(this.capped ?? 0, cap)
    this.work.tell(`easing ${paths}: ${short ? 'not enough' : 'a leg was found'}`)
    return found
  }

  /**
   * A way out of which no entry can be left out: one after another is put back as it was wished. The leg of an easy wish may be far from that of a harder one, so what is
   * left is tried once more, each time from a fresh start.
   */
  smallest(from: RelaxedLeg): RelaxedLeg {
    return this.#without(
      this.#without(from, ({ found }) => found.sizes),
      () => undefined,
    )
  }

  #without(from: RelaxedLeg, start: (way: RelaxedLeg) => LegSizes | undefined): RelaxedLeg {
    let way = from
    for (const easing of from.eased) {
      if (way.eased.length === 1) break
      const fewer = way.eased.filter((each) => each !== easing)
      const tried = this.leg(fewer, from.share, start(way))
      if (tried.deficit === 0) way = { ...way, eased: fewer, found: tried }
    }
    return way
  }

  /** The smallest share, of those that halving tries, by which the entries of a way must be eased. */
  share({ eased, found, share }: RelaxedLeg): number {
    let [easy, hard, best] = [share, 0, found]
    if (eased.every(({ whole }) => whole)) return easy
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (easy + hard) / 2
      const tried = this.leg(eased, middle, best.sizes)
      if (tried.deficit === 0) {
        easy = middle
        best = tried
      } else hard = middle
    }
    return easy
  }
}

/**
 * The nearest wishes that a leg is found for. All entries eased at once give a first leg; then one entry after another is put back as it was wished, for as long as a leg
 * is found. What is left is a way out. The next way is looked for among the other entries.
 */
export function nearestLeg(closest: Entry, seed: number, work: WorkPieces, search = mend): LegRefusal {
  const { judge, judged, stock } = closest
  const wished = { wish: judge.wish, stock }
  const tries = new Attempts(wished, seed, work, search)
  const ways: EasedWish[][] = []
  let open = easingsOf(wished)
  const keep = (way: RelaxedLeg) => {
    open = open.filter((easing) => !way.eased.includes(easing))
    const share = tries.share(way)
    ways.push(way.eased.map((easing) => ({ path: easing.path, given: easing.given, met: easing.at(share) })))
  }
  // A search that holds the legs to their mass ends near a sound leg that is somewhat too heavy: it is looked for from there.
  const heavier = onlyHeavy(judged) ? open.filter(({ path }) => path === LEGS_MASS) : []
  const heavy = heavier.length > 0 && tries.leg(heavier, 1, judged.sizes)
  if (heavy && heavy.deficit === 0) keep({ eased: heavier, found: heavy, share: 1 })
  let sizes: LegSizes | undefined
  while (open.length > 0 && ways.length < MAX_WAYS) {
    const found = tries.leg(open, 1, sizes, sizes === undefined ? ALL : FIRST)
    if (found.deficit > 0) break
    const way = tries.smallest({ eased: open, found, share: 1 })
    sizes ??= found.sizes
    keep(way)
  }
  for (const part of largerParts(wished)) {
    // A larger part is heavier, and the largest may be a burden again.
    const eased = [...open.filter(({ path }) => path === LEGS_MASS), part]
    for (const share of [0.5, 1]) {
      const found = tries.leg(eased, share)
      if (found.deficit > 0) continue
      keep(tries.smallest({ eased, found, share }))
      break
    }
  }
  const refusal = {
    broken: judged.short,
    reasons: reasonsOf(closest),
    stock,
    ways,
    contradicts: [...new Set(ways.flatMap((way) => way.map(({ path }) => path)))],
  }
  const ended = work.left < 1 ? tries.cap : ways.length === 0 ? tries.capped : undefined
  return { ...refusal, message: sentence(refusal, ended) + tooHeavy(judged, judge.wish, ways) }
}
