import { boxSection } from '../../structures/index.js'
import { InputError } from '../../units/index.js'
import { legReader } from '../as-formula.js'
import { QuickLeg } from '../assess/quick.js'
import { placeOf } from '../calculation.js'
import { LOAD_CASES } from '../cases/events.js'
import { describeLeg, type Leg } from '../document/describe.js'
import { JOINTS, legNumbers } from '../numbers.js'
import { CHECKS } from '../parts/index.js'
import { heat } from '../parts/motors/heat.js'
import { densityOf, type LegStock, legDocument, motorMass, PINS, PROPOSAL_CASES, pulleys, SINK } from './document.js'
import type { LegSizes } from './sizes.js'
import type { LegWishData } from './wish-fields.js'

/** What a leg is good for: each to be small but the reserve. */
export interface LegGoals {
  /** Mass of one leg: motors, mounts, drums and links, kg. */
  readonly mass: number
  /** Heat that the motors of all legs make for a metre of walking, J/m. */
  readonly energyPerMetre: number
  /** Volume printed for one leg, m³. */
  readonly printVolume: number
  /** Price of motors, cord and polymer of one leg. */
  readonly cost: number
  /** Smallest ratio of reserve to required reserve. */
  readonly margin: number
}

/** One leg of the search: its sizes, how far it is from what is required, and which check that is. */
export interface Judged {
  readonly sizes: LegSizes
  /** Sum over the checks of the logarithm of required over actual reserve, where it falls short; 0 where all hold. */
  readonly deficit: number
  readonly margin: number
  /** The check with the smallest margin, as `pin.bending knee`; or the contradiction of its document. */
  readonly governing: string
  /** Checks that fall short, worst first, with their margins. */
  readonly short: readonly (readonly [key: string, margin: number])[]
}

/** A check that cannot be worked out counts as this much too little. A document that contradicts itself is worse than any that does not. */
const WORST = 8
const CONTRADICTION = 1e4

/** How much is missing in all: logarithms of what is there over what should be. */
const deficitOf = (shares: readonly number[]): number => shares.reduce((sum, share) => sum + Math.min(WORST, -Math.log(share)), 0)

const REQUIRED = new Map(CHECKS.map(({ id, requiredReserve }) => [id, requiredReserve]))

/** Judges legs of one stock from their sizes: the quick form of `assess`, in all of the load cases. */
export class Judge {
  readonly #quick: QuickLeg
  readonly #borne: Record<string, unknown>[] = []
  evaluations = 0

  constructor(
    readonly wish: LegWishData,
    readonly stock: LegStock,
  ) {
    this.#quick = new QuickLeg(PROPOSAL_CASES)
  }

  /** The leg of some sizes, as the public reader returns it. */
  leg(sizes: LegSizes): Leg {
    return describeLeg(legDocument(this.wish, this.stock, sizes))
  }

  judge(sizes: LegSizes): Judged {
    this.evaluations++
    const document = legDocument(this.wish, this.stock, sizes)
    let leg: Leg
    try {
      leg = describeLeg(document)
    } catch (error) {
      if (!(error instanceof InputError)) throw error
      const [first] = error.issues
      return { sizes, deficit: CONTRADICTION * error.issues.length, margin: 0, governing: `${first?.path} ${first?.accepts}`, short: [] }
    }
    const numbers = legNumbers(leg)
    const general = numbers.usage.requiredReserve
    const margins = [...this.#quick.reserves(numbers)].map(([key, reserve]) => {
      const required = Math.min(REQUIRED.get(key.split(' ')[0] as string) ?? general, general)
      return [key, Number.isNaN(reserve) ? 0 : Math.max(0, reserve) / required] as const
    })
    const short = margins.filter(([, margin]) => margin < 1).sort((a, b) => a[1] - b[1])
    const [governing, margin] = margins.reduce((a, b) => (b[1] < a[1] ? b : a))
    const borne = this.#borne.reduce((sum, values) => sum + this.under(leg, values).deficit, 0)
    return { sizes, deficit: borne + deficitOf(short.map(([, m]) => m)), margin, governing, short }
  }

  /** From now on every leg must bear these values of what is uncertain as well: no check may fail under them. */
  bear(values: Record<string, unknown>): void {
    this.#borne.push(values)
  }

  /** What fails of a leg under values of what is uncertain: reserves below 1, and by how much in all. */
  under(leg: Leg, values: Record<string, unknown>): { readonly deficit: number; readonly broken: readonly string[] } {
    const broken = [...this.#quick.reserves(legReader(leg)(values))].filter(([, reserve]) => !(reserve >= 1))
    return { deficit: deficitOf(broken.map(([, reserve]) => Math.max(0, reserve || 0))), broken: broken.map(([key]) => key) }
  }

  /** What a leg is good for. */
  goals({ sizes, margin }: Judged): LegGoals {
    const { wish, stock } = this
    const frame = linkVolume(sizes) + bossVolume(sizes)
    const motor = wish.motors[stock.motor] as LegWishData['motors'][string]
    const cord = wish.cords[stock.cord] as LegWishData['cords'][string]
    const sheet = (motor.canDiameter.si + sizes.plateMargin) ** 2
    const plates = 2 * sheet * sizes.plateThickness
    const sinks = 2 * sheet * sizes.sinkThickness * densityOf(SINK)
    const drums = drumVolume(cord.diameter.si, sizes)
    const printed = (frame + plates) * densityOf(stock.frame) + drums * densityOf(stock.drum)
    const price = (name: string) => (wish.plastics[name] as unknown as { si: number }).si
    const money = (frame + plates) * densityOf(stock.frame) * price(stock.frame) + drums * densityOf(stock.drum) * price(stock.drum)
    return {
      mass: 2 * motorMass(wish, stock) + sinks + printed,
      energyPerMetre: (wish.robot.legs * this.#walkingLoss(sizes)) / wish.walk.speed.si,
      printVolume: frame + plates + drums,
      cost: 2 * motor.price.si + cordLength(cord.diameter.si, sizes) * cord.price.si + money,
      margin,
    }
  }

  /** Heat that the motors of one leg make on a walk. */
  #walkingLoss(sizes: LegSizes): number {
    const calculation = this.#quick.load(legNumbers(this.leg(sizes)))
    const { event, air } = LOAD_CASES.walk
    return JOINTS.reduce((sum, joint) => {
      const { loss, ironLoss } = calculation.get(heat, placeOf(calculation, { joint, event, air }) as never)
      return sum + loss + ironLoss
    }, 0)
  }
}

function linkVolume({ linkLength, upperDepth, upperWall, lowerDepth, lowerWall }: LegSizes): number {
  const area = (depth: number, wall: number) => boxSection.si({ width: 0.75 * depth, depth, wall }).area
  return linkLength * (area(upperDepth, upperWall) + area(lowerDepth, lowerWall))
}

/** Two bosses to a joint. */
function bossVolume(sizes: LegSizes): number {
  const boss = (place: number, over: number, cheek: number) => (Math.PI / 2) * (over * (PINS[place] as number) * 1e-3) ** 2 * cheek
  return boss(sizes.hipPin, sizes.hipBoss, sizes.hipCheek) + boss(sizes.kneePin, sizes.kneeBoss, sizes.kneeCheek)
}

function drumVolume(diameter: number, sizes: LegSizes): number {
  return JOINTS.reduce((sum, joint) => sum + Math.PI * pulleys(joint, diameter, sizes).drumRadius ** 2 * 0.014, 0)
}

/** Cord of both drives, tails included: twice the spans, the drum once round and the pinion four times. */
function cordLength(diameter: number, sizes: LegSizes): number {
  return JOINTS.reduce((sum, joint) => {
    const { pinionRadius, drumRadius } = pulleys(joint, diameter, sizes)
    return sum + 2 * (pinionRadius + drumRadius) + 2 * Math.PI * (drumRadius + 4 * pinionRadius) + 0.3
  }, 0)
}
