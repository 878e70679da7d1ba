import type { Quantity } from '../../units/index.js'
import { type Easing, easingsOf, largerParts, type Wished } from './easings.js'
import type { Entry } from './entry.js'
import { Judge, type Judged } from './judge.js'
import { reasonsOf } from './reasons.js'
import { mend } from './search.js'
import type { LegSizes } from './sizes.js'
import { startOf } from './start.js'
import type { Work } from './work.js'

/** One entry of the wish, eased. */
export interface EasedWish {
  /** The entry, as a path of the wish. */
  readonly path: string
  /** What was wished: a quantity, or the polymer that is printed. */
  readonly given: Quantity | string
  /** The nearest value that a leg was found for. */
  readonly met: Quantity | string
}

/** Why no leg was found. */
export interface LegRefusal {
  /** Checks that the nearest leg breaks, worst first, with reserve over required reserve. */
  readonly broken: readonly (readonly [check: string, margin: number])[]
  /** The same in words. */
  readonly reasons: readonly string[]
  /** Taken from the lists for the nearest leg. */
  readonly stock: Entry['stock']
  /** Ways out, none of which shares an entry with another: the entries that were eased together, each to the nearest value that a leg was found for, the others as they are. None of a way can be left out. */
  readonly ways: readonly (readonly EasedWish[])[]
  /** Entries that contradict each other: those of the ways. Empty where easing did not help. */
  readonly contradicts: readonly string[]
  readonly message: string
}

const MOST_WAYS = 3
const HALVINGS = 4
/** Legs judged for the first leg of the eased wish, and for each change of it: at most this share of all, and not more than this. */
const FIRST = { share: 0.4, most: 1500 }
const CHANGE = { share: 0.1, most: 250 }

/** A leg of a wish with some entries eased, and which they are. */
interface Way {
  readonly eased: readonly Easing[]
  readonly found: Judged
  /** Share of their way that they are eased by. */
  readonly share: number
}

/** Tries of the search for a wish that can be met. */
class Tries {
  #count = 0

  constructor(
    readonly wished: Wished,
    readonly seed: number,
    readonly work: Work,
  ) {}

  /** The best leg of the wish with some entries eased by a share of their way, mended from sizes that are near; without any, from a fresh start. */
  leg(eased: readonly Easing[], share: number, from?: LegSizes): Judged {
    const { wish, stock } = eased.reduce((all, one) => one.put(all, share), this.wished)
    const judge = new Judge(wish, stock)
    const limits = from === undefined ? FIRST : CHANGE
    const most = Math.min(limits.most, Math.floor(limits.share * this.work.evaluations))
    const paths = eased.map(({ path }) => path).join(', ')
    const name = `ease ${this.#count++}, ${paths} by ${share}`
    const start = from ?? startOf(wish, stock)
    if (this.work.left < 1) return { sizes: start, deficit: Number.POSITIVE_INFINITY, margin: 0, governing: '', short: [] }
    const found = this.work.do(name, judge, most, (budget) => mend(judge, start, this.seed, budget))
    this.work.tell(`easing ${paths}: ${found.deficit === 0 ? 'a leg was found' : 'not enough'}`)
    return found
  }

  /**
   * A way out of which no entry can be left out: one after another is put back as it was wished. The leg of an easy wish may be far from that of a harder one, so what is
   * left is tried once more, each time from a fresh start.
   */
  smallest(from: Way): Way {
    return this.#without(
      this.#without(from, ({ found }) => found.sizes),
      () => undefined,
    )
  }

  #without(from: Way, start: (way: Way) => LegSizes | undefined): Way {
    let way = from
    for (const one of from.eased) {
      if (way.eased.length === 1) break
      const fewer = way.eased.filter((each) => each !== one)
      const tried = this.leg(fewer, from.share, start(way))
      if (tried.deficit === 0) way = { ...way, eased: fewer, found: tried }
    }
    return way
  }

  /** The smallest share, of those that halving tries, by which the entries of a way must be eased. */
  share({ eased, found, share }: Way): number {
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
export function nearestLeg(closest: Entry, seed: number, work: Work): LegRefusal {
  const { judge, judged, stock } = closest
  const wished = { wish: judge.wish, stock }
  const tries = new Tries(wished, seed, work)
  const ways: EasedWish[][] = []
  const keep = (way: Way) => {
    const share = tries.share(way)
    ways.push(way.eased.map((one) => ({ path: one.path, given: one.given, met: one.at(share) })))
  }
  let open = easingsOf(wished)
  let sizes: LegSizes | undefined
  while (open.length > 0 && ways.length < MOST_WAYS) {
    const found = tries.leg(open, 1, sizes)
    if (found.deficit > 0) break
    const way = tries.smallest({ eased: open, found, share: 1 })
    sizes ??= found.sizes
    keep(way)
    open = open.filter((one) => !way.eased.includes(one))
  }
  for (const part of largerParts(wished)) {
    // The largest part may be a burden again.
    for (const share of [0.5, 1]) {
      const found = tries.leg([part], share)
      if (found.deficit > 0) continue
      keep({ eased: [part], found, share })
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
  const ended = work.left < 1 ? ' The search for the nearest wish ended at its most legs; more of them may find a nearer one.' : ''
  return { ...refusal, message: `${sentence(refusal)}${ended}` }
}

function sentence({ stock, reasons, ways, contradicts }: Omit<LegRefusal, 'message'>): string {
  const text = (way: readonly EasedWish[]) => way.map(({ path, given, met }) => `${path} ${met} instead of ${given}`).join(' and ')
  const help =
    ways.length === 0
      ? 'No change of the entries that were tried is enough, not even of all together.'
      : [
          contradicts.length > 1 ? `These wishes contradict each other: ${contradicts.join(', ')}. ` : '',
          `A leg was found with ${ways.map(text).join('; or with ')}.`,
        ].join('')
  return `No leg was found. The nearest, of ${stock.motor}, ${stock.cord} and ${stock.frame}, falls short: ${reasons.join('; ')}. ${help}`
}
