import { Quantity } from '../../units/index.js'
import { MAX_LEG_SHARE, type WishWithStock } from './easings.js'
import type { Entry } from './entry.js'
import { type JudgedLeg, LEGS_MASS } from './judge.js'

/** One entry of the wish, eased. */
export interface EasedWish {
  /** The entry, as a path of the wish. */
  readonly path: string
  /** The value in the wish: a quantity, or the polymer that is printed. */
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

/** Largest total deficit of checks other than the mass, for a leg that counts as only too heavy. */
const NEARLY = 0.5
/** Whether a leg falls short by its mass and by hardly anything else. */
export const onlyHeavy = ({ short, deficit }: JudgedLeg): boolean =>
  short.some(([key, margin]) => key === LEGS_MASS && deficit + Math.log(margin) < NEARLY)

/** Why legs that are only too heavy are not helped by the share of their mass: as much as they need leaves no robot. */
export function tooHeavy(judged: JudgedLeg, { robot }: WishWithStock['wish'], ways: LegRefusal['ways']): string {
  if (!onlyHeavy(judged) || ways.some(([first, ...others]) => first?.path === LEGS_MASS && others.length === 0)) return ''
  const [, margin] = judged.short.find(([key]) => key === LEGS_MASS) as readonly [string, number]
  const needed = robot.legShare.si / margin
  if (needed <= MAX_LEG_SHARE) return ''
  const share = new Quantity(needed, 'ratio').toString()
  return ` Its legs are ${share} of the mass of the robot; with more than ${MAX_LEG_SHARE} no room is left for body, battery and load, so ${LEGS_MASS} alone cannot be eased enough.`
}

/** A refusal in words; `ended` is the cap that a search ended at. */
export function sentence({ stock, reasons, ways, contradicts }: Omit<LegRefusal, 'message'>, ended: number | undefined): string {
  const text = (way: readonly EasedWish[]) => way.map(({ path, given, met }) => `${path} ${met} instead of ${given}`).join(' and ')
  const none =
    ended === undefined
      ? 'No change of the entries that were tried is enough, not even of all together.'
      : 'No way out has been found so far.'
  const help =
    ways.length === 0
      ? none
      : [
          contradicts.length > 1 ? `These wishes contradict each other: ${contradicts.join(', ')}. ` : '',
          `A leg was found with ${ways.map(text).join('; or with ')}.`,
        ].join('')
  const end = ended === undefined ? '' : ` The search ended at its cap of ${ended} evaluations; more of them may find a nearer wish.`
  return `No leg was found. The nearest, of ${stock.motor}, ${stock.cord} and ${stock.frame}, falls short: ${reasons.join('; ')}. ${help}${end}`
}
