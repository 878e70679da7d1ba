import { frictionFromTensions } from '../../capstan/index.js'
import { pressFit } from '../../fasteners/index.js'
import { motorWarmUp } from '../../thermal/index.js'
import { type Kind, significant } from '../../units/index.js'
import { calculationOf, placeOf } from '../calculation.js'
import { clampLoadAt } from '../clamp-load-at.js'
import { legModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { materialState, steelOf } from '../material-state.js'
import { bossAt, driveOf, type Joint, pinAt, pinSizeAt } from '../numbers.js'
import { airTemperature, coolingFactor, surroundings } from '../parts/load/fields.js'
import { cooling } from '../parts/plates/values.js'
import { materialOf } from '../schema/tables.js'
import type { CouponOf } from './coupon-logs.js'

/** What a coupon measures: a number for each row, what the leg expects of it, and what a difference means. */
export interface CouponReading {
  readonly what: string
  readonly kind: Kind
  readonly of: (row: readonly number[]) => number
  /** Low, typical and high. SI. */
  readonly expected: readonly [number, number, number]
  /** Readings this many times off are no such coupon. Default 10. */
  readonly far?: number
  /** No such coupon reads more, single ones apart. */
  readonly atMost?: number
  /** A column of which one reading stands in every row. */
  readonly shared?: number
  readonly means: { readonly agrees: string; readonly above: string; readonly below: string }
}

const ROOM_TEMPERATURE = 296.15
/** Any heat capacity that settles within a day, J/K. */
const HEAT_CAPACITY = 400
/** Logarithm of a conductance of next to nothing. */
const NO_CAN = -30
const DAY = 86_400

/** Columns of a coupon's log, and the reading that the leg predicts. */
export function readingOf(x: LegNumbers, { id, of }: CouponOf): CouponReading {
  switch (id) {
    case 'couponHoles':
      return holes(x, of as Joint)
    case 'couponBars':
      return bars(x, of)
    case 'couponSplit':
      return split(x, of as Joint)
    case 'couponDrum':
      return drum(x, of as Joint)
    case 'couponSandwich':
      return sandwich(x, of)
    case 'couponPlate':
      return plate(x, of as Joint)
  }
}

function holes(x: LegNumbers, joint: Joint): CouponReading {
  const scatter = bossAt(x, joint).holeScatter
  return {
    what: `measured less drawn hole of the bosses of the ${joint}`,
    kind: 'length',
    of: ([drawn, measured]) => measured! - drawn!,
    expected: [-2 * scatter, 0, 2 * scatter],
    means: {
      agrees: 'holes come out as drawn',
      above: 'holes come out wider: draw them smaller by that',
      below: 'holes come out narrower: draw them larger by that',
    },
  }
}

function bars(x: LegNumbers, name: string): CouponReading {
  const { acrossLayersRatio: share } = materialOf(name, x.materials)
  return {
    what: `strength of upright over flat bars of ${name}`,
    kind: 'ratio',
    of: ([flat, upright]) => upright! / flat!,
    // Layers hold no better than what they are made of; both scatter.
    atMost: 1.25,
    expected: share === undefined ? [1, 1, 1] : [share.low, share.si, share.high],
    means: {
      agrees: 'layers hold as the material table says',
      above: 'layers hold better than the table says: the leg has more reserve across its layers',
      below: 'layers hold less than the table says: print hotter and slower, dry the filament, and do not rely on reserves across layers',
    },
  }
}

function split(x: LegNumbers, joint: Joint): CouponReading {
  const { axis, outerDiameter, material } = bossAt(x, joint)
  const leg = legModel(x)
  const printed = materialState(leg, material)
  const unit = 1e-5
  const { boreHoopStress } = pressFit.si({
    diameter: pinSizeAt(x, joint).diameter,
    diametralInterference: unit,
    bossDiameter: outerDiameter,
    pinBore: 0,
    boss: printed.elastic(),
    pin: materialState(leg, steelOf(leg)).elastic(),
  })
  const { low, typical, high } = printed.strength(axis === 'alongLayers' ? 'acrossLayers' : 'alongLayers')
  return {
    what: `pin less hole at which a boss of the ${joint} splits (${pinAt(x, joint).size})`,
    kind: 'length',
    of: ([pin, hole]) => pin! - hole!,
    expected: [low, typical, high].map((stress) => (unit * stress) / boreHoopStress) as [number, number, number],
    means: {
      agrees: 'bosses split where the press fit says',
      above: 'bosses bear more than the press fit says: yielding spares them',
      below: 'bosses split early: more walls, another direction of print, or a wider hole',
    },
  }
}

function drum(x: LegNumbers, joint: Joint): CouponReading {
  const { low, typical, high } = driveOf(x, joint, 'cord').friction
  return {
    what: `friction of the cord on a printed drum section of the ${joint}`,
    kind: 'ratio',
    of: ([slackTension, tautTension, wrapAngle]) =>
      frictionFromTensions.si({ slackTension: slackTension!, tautTension: tautTension!, wrapAngle: wrapAngle! }),
    expected: [low, typical, high],
    means: {
      agrees: 'the drum rubs as the pinion is assumed to',
      above: 'the drum rubs more than the pinion is assumed to: it loses more of the torque, and holds it better',
      below: 'the drum rubs less than the pinion is assumed to',
    },
  }
}

function sandwich(x: LegNumbers, group: string): CouponReading {
  const shares = (['pessimistic', 'typical', 'optimistic'] as const).map((end) => {
    const { preload, after } = clampLoadAt(legModel(x, end), group)
    return (days: number) => after(days, ROOM_TEMPERATURE) / preload
  })
  const week = shares.map((share) => share(7)) as [number, number, number]
  return {
    shared: 1,
    what: `clamp load left of the sandwich of ${group}, over what the leg expects at that time`,
    kind: 'ratio',
    of: ([time, first, later]) => later! / first! / shares[1]!(time! / DAY),
    expected: [Math.min(...week) / week[1], 1, Math.max(...week) / week[1]],
    means: {
      agrees: 'the stack settles as calculated',
      above: 'the stack keeps more clamp load than calculated',
      below: 'the stack loses more clamp load than calculated: sleeves, wider washers, or a stiffer print',
    },
  }
}

function plate(x: LegNumbers, joint: Joint): CouponReading {
  const calculation = calculationOf(x)
  const here = calculation.instances.implied(placeOf(calculation, { joint, event: 'stall', air: 'normalStill' })) as never
  const riseOf = (power: number, air: number) => {
    calculation.set(airTemperature, here, air)
    calculation.set(surroundings, here, air)
    const law = calculation.get(cooling, here)
    const { mount } = motorWarmUp.si({
      otherLoss: power,
      initial: air,
      initialStore: air,
      ...law,
      // The heater has no can.
      canConductance: Array.from(law.canConductance, (_, i) => (i === 0 ? NO_CAN : 0)),
      capacity: HEAT_CAPACITY,
      storeCapacity: 0,
      storeConductance: 0,
      time: DAY,
    })
    return mount - air
  }
  const { low, typical, high } = x.environment.coolingFactor
  calculation.set(coolingFactor, here, typical)
  return {
    what: `rise of the heated plate of the ${joint} over what is calculated`,
    kind: 'ratio',
    of: ([power, mount, air]) => (mount! - air!) / riseOf(power!, air!),
    expected: [typical / high, 1, typical / low],
    far: 3,
    means: {
      agrees: 'the plate sheds heat as calculated',
      above: `the plate gets hotter than calculated: it conducts or sheds less. Take ${significant(typical, 2)} over that ratio as the cooling factor until the motor has been measured`,
      below: 'the plate stays cooler than calculated: was there a draught?',
    },
  }
}
