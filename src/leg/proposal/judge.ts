import { InputError, Quantity } from '../../units/index.js'
import { legReader } from '../as-formula.js'
import { describeLeg, type Leg } from '../document/describe.js'
import { legNumbers } from '../numbers.js'
import { CHECKS } from '../parts/index.js'
import { legDocument, PROPOSAL_CASES } from './document.js'
import { pulleys } from './document-parts.js'
import { type LegGoals, plainGoals, walkingLoss } from './goals.js'
import { QuickLegs } from './quick-legs.js'
import type { LegSizes } from './sizes.js'
import type { LegStock } from './stock.js'
import { BED_MARGIN } from './wish.js'
import type { LegWishData } from './wish-fields.js'

/** One leg of the search: its sizes, how far it is from what is required, and which check that is. */
export interface JudgedLeg {
  readonly sizes: LegSizes
  /** Sum over the checks of the logarithm of required over actual reserve, where it falls short; 0 where all hold. Infinite where the judge gave up. */
  readonly deficit: number
  readonly margin: number
  /** The check with the smallest margin, as `pin.bending knee`; or the contradiction of its document. */
  readonly governing: string
  /** Checks that fall short, worst first, with their margins. */
  readonly short: readonly (readonly [key: string, margin: number])[]
  /** Margins of all checks, and of each under every draw that must be borne; empty where the judge gave up or the document contradicts itself. */
  readonly margins: ReadonlyMap<string, number>
}

/** Deficit of a check that cannot be calculated. A document that contradicts itself is worse than any that does not. */
const MAX_DEFICIT = 8
const CONTRADICTION_DEFICIT = 1e4

/** Name of the limit on the mass of all legs, which is no check of a leg. */
export const LEGS_MASS = 'robot.legShare'

const NO_MARGINS: Pick<JudgedLeg, 'short' | 'margins'> = { short: [], margins: new Map() }

/** Deficit of one check: the logarithm of the required over the actual reserve. */
const deficitOf = (share: number): number => (share >= 1 ? 0 : Math.min(MAX_DEFICIT, -Math.log(Math.max(0, share || 0))))

const REQUIRED = new Map(CHECKS.map(({ id, requiredReserve }) => [id, requiredReserve]))
const requiredOf = (key: string, general: number) => Math.min(REQUIRED.get(key.split(' ')[0] as string) ?? general, general)

/** Failing checks of a leg in one draw. */
interface DrawOutcome {
  readonly deficit: number
  readonly reserves: ReadonlyMap<string, number>
  readonly broken: readonly string[]
}

/** A draw that every leg must pass. It has its own calculations, in which only the sizes change from leg to leg. */
interface RequiredDraw {
  readonly values: Record<string, unknown>
  readonly quick: QuickLegs
}

/** Failing checks of a leg under a draw of its uncertain values: reserves below 1, and their total deficit. */
function outcomeOf(quick: QuickLegs, leg: Leg, values: Record<string, unknown>, max?: number): DrawOutcome {
  const reserves = quick.reserves(legReader(leg)(values), (_, reserve) => deficitOf(reserve), max)
  if (reserves === undefined) return { deficit: Number.POSITIVE_INFINITY, reserves: new Map(), broken: [] }
  const broken = [...reserves].filter(([, reserve]) => !(reserve >= 1))
  return { deficit: broken.reduce((sum, [, reserve]) => sum + deficitOf(reserve), 0), reserves, broken: broken.map(([key]) => key) }
}

/** The part that is larger than the printer's bed: a link with its eyes, a drum, a motor's plate. */
function tooLarge(wish: LegWishData, stock: LegStock, sizes: LegSizes): string | undefined {
  const cord = wish.cords[stock.cord] as LegWishData['cords'][string]
  const motor = wish.motors[stock.motor] as LegWishData['motors'][string]
  const drum = (joint: 'hip' | 'knee') => 2 * pulleys(joint, cord.diameter.si, sizes).drumRadius
  const parts = {
    link: sizes.linkLength + BED_MARGIN,
    'hip drum': drum('hip'),
    'knee drum': drum('knee'),
    'motor plate': motor.canDiameter.si + sizes.plateMargin,
  }
  const { bed } = wish.printer
  const [part] = Object.entries(parts).filter(([, size]) => size > bed.si + 1e-9)
  return part && `${part[0]} of ${new Quantity(part[1], 'length')} is longer than the bed of the printer (${bed})`
}

/** Judges legs of one stock from their sizes: the quick form of `assess`, in all of the load cases. */
export class Judge {
  readonly #quick = new QuickLegs(PROPOSAL_CASES)
  readonly #borne: RequiredDraw[] = []
  evaluations = 0

  constructor(
    readonly wish: LegWishData,
    readonly stock: LegStock,
  ) {}

  /** The leg of some sizes, as the public reader returns it. */
  leg(sizes: LegSizes): Leg {
    return describeLeg(legDocument(this.wish, this.stock, sizes))
  }

  /** Judges a leg, and gives up as soon as more is missing than `max`: a leg that will not be chosen need not be known in full. */
  judge(sizes: LegSizes, max = Number.POSITIVE_INFINITY): JudgedLeg {
    this.evaluations++
    const large = tooLarge(this.wish, this.stock, sizes)
    if (large !== undefined) return { sizes, deficit: CONTRADICTION_DEFICIT, margin: 0, governing: large, ...NO_MARGINS }
    let leg: Leg
    try {
      leg = this.leg(sizes)
    } catch (error) {
      if (!(error instanceof InputError)) throw error
      const [first] = error.issues
      return {
        sizes,
        deficit: CONTRADICTION_DEFICIT * error.issues.length,
        margin: 0,
        governing: `${first?.path} ${first?.accepts}`,
        ...NO_MARGINS,
      }
    }
    const light = this.#allowedMass / plainGoals(this.wish, this.stock, sizes).mass
    const numbers = legNumbers(leg)
    const general = numbers.usage.requiredReserve
    const reserves = this.#quick.reserves(numbers, (key, reserve) => deficitOf(reserve / requiredOf(key, general)), max - deficitOf(light))
    if (reserves === undefined) return { sizes, deficit: Number.POSITIVE_INFINITY, margin: 0, governing: '', ...NO_MARGINS }
    const margins = [...reserves].map(
      ([key, reserve]) => [key, Number.isNaN(reserve) ? 0 : Math.max(0, reserve) / requiredOf(key, general)] as const,
    )
    margins.push([LEGS_MASS, light])
    const short = margins.filter(([, margin]) => margin < 1).sort((a, b) => a[1] - b[1])
    const [governing, margin] = margins.reduce((a, b) => (b[1] < a[1] ? b : a))
    let deficit = short.reduce((sum, [, share]) => sum + deficitOf(share), 0)
    const all = new Map(margins)
    for (const [draw, { values, quick }] of this.#borne.entries()) {
      if (deficit > max) break
      const under = outcomeOf(quick, leg, values, max - deficit)
      deficit += under.deficit
      for (const [key, reserve] of under.reserves) all.set(`${key} in draw ${draw}`, Math.max(0, reserve || 0))
    }
    return { sizes, deficit, margin, governing, short, margins: all }
  }

  /** Mass that one leg may have, kg. */
  get #allowedMass(): number {
    const { mass, legs, legShare } = this.wish.robot
    return (legShare.si * mass.si) / legs
  }

  /** From now on every leg must bear these values of what is uncertain as well: no check may fail under them. */
  bear(values: Record<string, unknown>): void {
    this.#borne.push({ values, quick: new QuickLegs(PROPOSAL_CASES, 3) })
  }

  /** Failing checks of a leg under a draw of its uncertain values: reserves below 1, and their total deficit. */
  under(leg: Leg, values: Record<string, unknown>): DrawOutcome {
    return outcomeOf(this.#quick, leg, values)
  }

  /** Goals of a leg, as numbers. */
  goals({ sizes, margin }: JudgedLeg): LegGoals {
    return { ...plainGoals(this.wish, this.stock, sizes), energyPerMetre: this.#energyPerMetre(sizes), margin }
  }

  /** One goal of some sizes; nothing where it takes the judgement of the whole leg. */
  goalOf(goal: keyof LegGoals, sizes: LegSizes): number | undefined {
    if (goal === 'margin') return undefined
    if (goal !== 'energyPerMetre') return plainGoals(this.wish, this.stock, sizes)[goal]
    try {
      return this.#energyPerMetre(sizes)
    } catch {
      // What has no answer is found short by the judge.
      return undefined
    }
  }

  #energyPerMetre(sizes: LegSizes): number {
    return (this.wish.robot.legs * walkingLoss(this.#quick.load(legNumbers(this.leg(sizes))))) / this.wish.walk.speed.si
  }
}
