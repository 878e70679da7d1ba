import { boxSection } from '../../structures/index.js'
import { type LegCalculation, placeOf } from '../calculation.js'
import { LOAD_CASES } from '../cases/events.js'
import { JOINTS } from '../numbers.js'
import { heat } from '../parts/motors/heat.js'
import { motorMass } from './document.js'
import { densityOf, PINS, pulleys, SINK } from './document-parts.js'
import type { LegSizes } from './sizes.js'
import type { LegStock } from './stock.js'
import type { LegWishData } from './wish-fields.js'

/** Goals of a leg: each is to be small, except the reserve. */
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

/** Goals that follow from the sizes alone. */
export type PlainGoals = Pick<LegGoals, 'mass' | 'printVolume' | 'cost'>

/** Mass, printing time and cost of a leg of given sizes. */
export function plainGoals(wish: LegWishData, stock: LegStock, sizes: LegSizes): PlainGoals {
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
    printVolume: frame + plates + drums,
    cost: 2 * motor.price.si + cordLength(cord.diameter.si, sizes) * cord.price.si + money,
  }
}

/** Heat that the motors of one leg make on a walk, W. */
export function walkingLoss(calculation: LegCalculation): number {
  const { event, air } = LOAD_CASES.walk
  return JOINTS.reduce((sum, joint) => {
    const { loss, ironLoss } = calculation.get(heat, placeOf(calculation, { joint, event, air }) as never)
    return sum + loss + ironLoss
  }, 0)
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
