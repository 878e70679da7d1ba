import type { Kind } from '../../units/index.js'
import { Quantity } from '../../units/index.js'
import { plainGoals } from './goals.js'
import { LEGS_MASS } from './judge.js'
import { startOf } from './start.js'
import type { LegStock } from './stock.js'
import type { LegWishData } from './wish-fields.js'

/** A wish with what is taken from its lists. */
export interface WishWithStock {
  readonly wish: LegWishData
  readonly stock: LegStock
}

/** One entry of a wish that may be eased, from 0 (as given) to 1 (as easy as it is tried). */
export interface Easing {
  readonly path: string
  readonly given: Quantity | string
  /** The entry eased by a share of the way. */
  at(share: number): Quantity | string
  put(wished: WishWithStock, share: number): WishWithStock
  /** Whether there is nothing between as given and as easy as it is tried. */
  readonly whole: boolean
}

type NumberEasing = readonly [path: string, easiest: (given: number, wished: WishWithStock) => number]

/** Largest share of its mass that the legs of a robot are eased to. Body, battery, controllers and load are in the rest: an assumption. */
export const MAX_LEG_SHARE = 0.85

/** What is bought more easily than given up, and the value at which each is as easy as it is tried. */
const ON_HAND: readonly NumberEasing[] = [
  [LEGS_MASS, (given) => Math.max(given, MAX_LEG_SHARE)],
  ['printer.bed', (given) => 2 * given],
  ['supply.voltage', (given) => 2 * given],
  ['supply.currentLimit', (given) => 2 * given],
]

/** What the robot shall do, the same way. */
const TASK: readonly NumberEasing[] = [
  ['walk.stepLength', (given) => 0.5 * given],
  ['obstacles.slope', () => 0.01],
  ['obstacles.height', () => 1e-3],
  ['obstacles.drop', () => 1e-3],
  ['walk.speed', (given) => 0.4 * given],
  ['place.stallTime', () => 5],
  ['place.hot', (_, { wish: { place } }) => Math.max(place.cold.si, Math.min(place.hot.si, 288.15))],
  ['robot.mass', (given, wished) => Math.min(given, Math.max(LIGHTEST * given, bearerMass(wished)))],
]

const LIGHTEST = 0.25

/** Mass of the lightest robot that may have legs of these motors, kg: a robot lighter than that is a burden, because its legs outweigh their share. */
function bearerMass({ wish, stock }: WishWithStock): number {
  const { robot } = wish
  const light = { ...wish, robot: { ...robot, mass: new Quantity(LIGHTEST * robot.mass.si, 'mass') } }
  return (robot.legs * plainGoals(light, stock, startOf(light, stock)).mass) / robot.legShare.si
}

/** The polymer that bears most heat of those that most printers take. */
const POLYMER = 'PC'

/** Entries of a wish that may be eased together for what is taken from its lists. Of two ways out the one whose entries are later is found first. */
export const easingsOf = (wished: WishWithStock): Easing[] => [
  ...ON_HAND.flatMap((limit) => numberEasing(wished, limit)),
  ...(wished.stock.frame === POLYMER && wished.stock.drum === POLYMER ? [] : [otherPolymer(wished.stock, POLYMER)]),
  ...TASK.flatMap((limit) => numberEasing(wished, limit)),
]

/** Larger parts, each tried alone: to a light task they are a burden, not an easing. */
export const largerParts = ({ wish, stock }: WishWithStock): Easing[] => [longerMotor(wish, stock.motor), thickerCord(wish, stock.cord)]

/** Nothing where the entry is as easy as it gets. */
function numberEasing(wished: WishWithStock, [path, easiest]: NumberEasing): Easing[] {
  const { wish } = wished
  const [section, name] = path.split('.') as [keyof LegWishData, string]
  const given = (wish[section] as unknown as Record<string, Quantity<Kind>>)[name] as Quantity<Kind>
  const end = easiest(given.si, wished)
  if (end === given.si) return []
  const at = (share: number) => new Quantity(given.si + share * (end - given.si), given.kind)
  const put: Easing['put'] = ({ wish, stock }, share) => ({
    wish: { ...wish, [section]: { ...(wish[section] as object), [name]: at(share) } },
    stock,
  })
  return [{ path, given, at, put, whole: false }]
}

/**
 * A motor of the same diameter and speed constant, up to twice as long. Half the turns on twice the length make the same constant: resistance falls as the length
 * grows, and the surface that sheds the heat of the rated current grows with it.
 */
function longerMotor(wish: LegWishData, name: string): Easing {
  const motor = wish.motors[name] as LegWishData['motors'][string]
  const scaled = <K extends Kind>(x: Quantity<K>, factor: number) => new Quantity(x.si * factor, x.kind)
  return {
    path: `motors.${name}.canLength`,
    given: motor.canLength,
    at: (share) => scaled(motor.canLength, 1 + share),
    put: ({ wish, stock }, share) => ({
      wish: {
        ...wish,
        motors: {
          ...wish.motors,
          [name]: {
            ...motor,
            canLength: scaled(motor.canLength, 1 + share),
            terminalResistance: scaled(motor.terminalResistance, 1 / (1 + share)),
            ratedCurrent: scaled(motor.ratedCurrent, 1 + share),
          },
        },
      } as LegWishData,
      stock,
    }),
    whole: false,
  }
}

/** A cord of the same fibre, up to three times as thick: its strength grows with its section. */
function thickerCord(wish: LegWishData, name: string): Easing {
  const cord = wish.cords[name] as LegWishData['cords'][string]
  const diameter = (share: number) => new Quantity(cord.diameter.si * (1 + 2 * share), 'length')
  return {
    path: `cords.${name}.diameter`,
    given: cord.diameter,
    at: diameter,
    put: ({ wish, stock }, share) => ({
      wish: {
        ...wish,
        cords: {
          ...wish.cords,
          [name]: {
            ...cord,
            diameter: diameter(share),
            breakingStrength: new Quantity(cord.breakingStrength.si * (1 + 2 * share) ** 2, 'force'),
          },
        },
      } as LegWishData,
      stock,
    }),
    whole: false,
  }
}

/** Everything printed from another polymer. */
function otherPolymer({ frame, drum }: LegStock, name: string): Easing {
  const given = [...new Set([frame, drum])].join(' and ')
  return {
    path: 'plastics',
    given,
    at: () => name,
    put: ({ wish, stock }) => ({
      wish: { ...wish, plastics: { [name]: Object.values(wish.plastics)[0], ...wish.plastics } } as LegWishData,
      stock: { ...stock, frame: name, drum: name },
    }),
    whole: true,
  }
}
