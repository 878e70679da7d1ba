import { type Kind, Quantity } from '../../units/index.js'
import { Judge, type Judged } from './judge.js'
import type { Entry } from './propose-leg.js'
import { mend } from './search.js'
import type { LegWishData } from './wish-fields.js'
import type { Work } from './work.js'

/** One entry of the wish eased until a leg was found, the others as they are. */
export interface EasedWish {
  readonly path: string
  readonly given: Quantity
  /** The nearest value that a leg was found for; undefined where none was. */
  readonly met: Quantity | undefined
}

/** Why no leg was found. */
export interface LegRefusal {
  /** Checks that the nearest leg breaks, worst first, with reserve over required reserve. */
  readonly broken: readonly (readonly [check: string, margin: number])[]
  /** Taken from the lists for the nearest leg. */
  readonly stock: Entry['stock']
  readonly eased: readonly EasedWish[]
  readonly message: string
}

/** Entries of a wish that may be eased, and the value at which each is easiest. */
const EASINGS: readonly (readonly [path: string, easiest: (given: number, wish: LegWishData) => number])[] = [
  ['robot.mass', (given) => 0.2 * given],
  ['obstacles.drop', () => 1e-3],
  ['obstacles.height', () => 1e-3],
  ['obstacles.slope', () => 0.01],
  ['walk.speed', (given) => 0.3 * given],
  ['place.hot', (_, { place }) => Math.max(place.cold.si, Math.min(place.hot.si, 288.15))],
  ['place.stallTime', () => 5],
]
const HALVINGS = 4
/** Legs judged for one value of one entry: at most this share of all, and not more than this. */
const SHARE = 0.1
const MOST = 160

/** The nearest wish that a leg is found for, one entry of the wish at a time. */
export function nearestLeg(wish: LegWishData, closest: Entry, seed: number, work: Work): LegRefusal {
  const eased = EASINGS.map(([path, easiest]): EasedWish => {
    const given = at(wish, path)
    const judgeAt = (x: number, start: Judged, name: string): Judged => {
      const judge = new Judge(put(wish, path, new Quantity(x, given.kind)), closest.stock)
      return work.do(name, judge, () => mend(judge, start.sizes, seed, Math.min(MOST, Math.floor(SHARE * work.evaluations))))
    }
    let easy = easiest(given.si, wish)
    let best = judgeAt(easy, closest.judged, `ease ${path}`)
    work.tell(`easing ${path}: ${best.deficit === 0 ? 'enough alone' : 'not enough alone'}`)
    if (best.deficit > 0) return { path, given, met: undefined }
    let hard = given.si
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (easy + hard) / 2
      const tried = judgeAt(middle, best, `ease ${path} ${i}`)
      if (tried.deficit === 0) {
        easy = middle
        best = tried
      } else hard = middle
    }
    return { path, given, met: new Quantity(easy, given.kind) }
  })
  const { short } = closest.judged
  return { broken: short, stock: closest.stock, eased, message: sentence(closest, eased) }
}

function sentence({ stock, judged }: Entry, eased: readonly EasedWish[]): string {
  const broken = judged.short
    .slice(0, 4)
    .map(([check, margin]) => `${check} has ${(100 * margin).toPrecision(2)} % of its required reserve`)
  const ways = eased.flatMap(({ path, given, met }) => (met === undefined ? [] : [`${path} ${met} instead of ${given}`]))
  return [
    `No leg was found. The nearest, of ${stock.motor}, ${stock.cord} and ${stock.frame}, falls short: ${broken.length > 0 ? broken.join('; ') : judged.governing}.`,
    ways.length > 0 ? `One change alone is enough: ${ways.join(', or ')}.` : 'Easing one entry of the wish alone was not enough.',
  ].join(' ')
}

function at(wish: LegWishData, path: string): Quantity<Kind> {
  const [section, name] = path.split('.') as [keyof LegWishData, string]
  return (wish[section] as unknown as Record<string, Quantity<Kind>>)[name] as Quantity<Kind>
}

function put(wish: LegWishData, path: string, value: Quantity): LegWishData {
  const [section, name] = path.split('.') as [keyof LegWishData, string]
  return { ...wish, [section]: { ...(wish[section] as object), [name]: value } }
}
