import { frictionFromTensions } from '../../capstan/index.js'
import { pressFit } from '../../fasteners/index.js'
import { studentTQuantile } from '../../numeric/index.js'
import { motorWarmUp } from '../../thermal/index.js'
import { type Kind, Quantity, significant } from '../../units/index.js'
import { calculationOf, placeOf } from '../calculation.js'
import { legModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { materialState, steelOf } from '../material-state.js'
import { bossAt, driveOf, type Joint, pinAt, pinSizeAt } from '../numbers.js'
import { airTemperature, coolingFactor, surroundings } from '../parts/load/fields.js'
import { cooling } from '../parts/plates/values.js'
import { materialOf } from '../schema/tables.js'
import { clampLoadAt } from '../what-if.js'
import { COUPON_COLUMNS, type CouponOf } from './coupon-logs.js'
import { wrongFile } from './doubts.js'
import type { ComparedLog } from './foot.js'
import { type LogRemark, readLog } from './logs.js'
import type { Rows } from './model.js'
import { LEAST_READINGS } from './used-log.js'

/** What a coupon measures: a number for each row, what the leg expects of it, and what a difference means. */
interface Reading {
  readonly what: string
  readonly kind: Kind
  readonly of: (row: readonly number[]) => number
  /** Low, typical and high. SI. */
  readonly expected: readonly [number, number, number]
  /** Readings this many times off are no such coupon. Default 10. */
  readonly far?: number
  /** Gain of the instruments, half-width of 95 %, as a share of the mean. */
  readonly gain: number
  readonly means: { readonly agrees: string; readonly above: string; readonly below: string }
}

/** Readings farther than this from what is expected are no such coupon: a ratio, and for a difference of lengths a millimetre. */
const FAR = 10
const FAR_LENGTH = 1e-3
const ROOM = 296.15
/** Any heat capacity that settles within a day, J/K. */
const HEATED = 400
/** Logarithm of a conductance of next to nothing. */
const NO_CAN = -30
const DAY = 86_400

/** Reads the log of a coupon and sets it beside what the leg expects; absent, with a remark, where it cannot be used. */
export function couponLog(x: LegNumbers, coupon: CouponOf, text: string, remarks: LogRemark[]): ComparedLog | undefined {
  const { log, id } = coupon
  const read = readLog(log, text, COUPON_COLUMNS[id])
  remarks.push(...read.remarks)
  const file = wrongFile(log, read)
  const why =
    file ?? (read.rows.length < LEAST_READINGS ? `${read.rows.length} whole rows; at least ${LEAST_READINGS} are needed` : undefined)
  if (why === undefined) return compareCoupon(x, coupon, read.rows, remarks)
  remarks.push({ log, line: undefined, what: file === undefined ? 'few readings' : 'wrong file', message: why })
  return undefined
}

/** A coupon's log beside what the leg expects; absent, with a remark, where its numbers cannot be those of such a coupon. */
function compareCoupon(x: LegNumbers, coupon: CouponOf, rows: Rows, remarks: LogRemark[]): ComparedLog | undefined {
  const reading = readingOf(x, coupon)
  const values = rows.map(reading.of)
  const mean = values.reduce((sum, y) => sum + y, 0) / values.length
  const [low, typical, high] = reading.expected
  const { far: most = FAR } = reading
  const show = (y: number) => new Quantity(y, reading.kind)
  const far = typical === 0 ? Math.abs(mean) > FAR_LENGTH : !(mean > typical / most && mean < typical * most)
  if (far) {
    remarks.push({
      log: coupon.log,
      line: undefined,
      what: 'implausible',
      message: `${reading.what} comes out as ${show(mean)}, where ${show(typical)} is expected: another unit, swapped columns, or another coupon. The log is not compared`,
    })
    return undefined
  }
  const deviation = Math.sqrt(values.reduce((sum, y) => sum + (y - mean) ** 2, 0) / (values.length - 1))
  const reach = Math.hypot((studentTQuantile(0.975, values.length - 1) * deviation) / Math.sqrt(values.length), reading.gain * mean)
  const interval = [mean - reach, mean + reach] as const
  const state = interval[0] > high ? 'above' : interval[1] < low ? 'below' : 'agrees'
  return {
    log: coupon.log,
    what: reading.what,
    predicted: show(typical),
    band: [show(low), show(high)],
    measured: show(mean),
    interval: [show(interval[0]), show(interval[1])],
    state,
    means: `${reading.means[state]}; single ones scatter by ${show(deviation)}`,
  }
}

function readingOf(x: LegNumbers, { id, of }: CouponOf): Reading {
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

function holes(x: LegNumbers, joint: Joint): Reading {
  const scatter = bossAt(x, joint).holeScatter
  return {
    what: `measured less drawn hole of the bosses of the ${joint}`,
    kind: 'length',
    of: ([drawn, measured]) => measured! - drawn!,
    expected: [-2 * scatter, 0, 2 * scatter],
    gain: 0,
    means: {
      agrees: 'holes come out as drawn',
      above: 'holes come out wider: draw them smaller by that',
      below: 'holes come out narrower: draw them larger by that',
    },
  }
}

function bars(x: LegNumbers, name: string): Reading {
  const { acrossLayersRatio: share } = materialOf(name, x.materials)
  return {
    what: `strength of upright over flat bars of ${name}`,
    kind: 'ratio',
    of: ([flat, upright]) => upright! / flat!,
    expected: share === undefined ? [1, 1, 1] : [share.low, share.si, share.high],
    // One scale for both: its gain cancels.
    gain: 0.01,
    means: {
      agrees: 'layers hold as the material table says',
      above: 'layers hold better than the table says: the leg has more reserve across its layers',
      below: 'layers hold less than the table says: print hotter and slower, dry the filament, and do not rely on reserves across layers',
    },
  }
}

function split(x: LegNumbers, joint: Joint): Reading {
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
    gain: 0.02,
    means: {
      agrees: 'bosses split where the press fit says',
      above: 'bosses bear more than the press fit says: yielding spares them',
      below: 'bosses split early: more walls, another direction of print, or a wider hole',
    },
  }
}

function drum(x: LegNumbers, joint: Joint): Reading {
  const { low, typical, high } = driveOf(x, joint, 'cord').friction
  return {
    what: `friction of the cord on a printed drum section of the ${joint}`,
    kind: 'ratio',
    of: ([slackTension, tautTension, wrapAngle]) =>
      frictionFromTensions.si({ slackTension: slackTension!, tautTension: tautTension!, wrapAngle: wrapAngle! }),
    expected: [low, typical, high],
    gain: 0.05,
    means: {
      agrees: 'the drum rubs as the pinion is assumed to',
      above: 'the drum rubs more than the pinion is assumed to: it loses more of the torque, and holds it better',
      below: 'the drum rubs less than the pinion is assumed to',
    },
  }
}

function sandwich(x: LegNumbers, group: string): Reading {
  const shares = (['pessimistic', 'typical', 'optimistic'] as const).map((end) => {
    const { preload, after } = clampLoadAt(legModel(x, end), group)
    return (days: number) => after(days, ROOM) / preload
  })
  const week = shares.map((share) => share(7)) as [number, number, number]
  return {
    what: `clamp load left of the sandwich of ${group}, over what the leg expects at that time`,
    kind: 'ratio',
    of: ([time, first, later]) => later! / first! / shares[1]!(time! / DAY),
    expected: [Math.min(...week) / week[1], 1, Math.max(...week) / week[1]],
    gain: 0.05,
    means: {
      agrees: 'the stack settles as calculated',
      above: 'the stack keeps more clamp load than calculated',
      below: 'the stack loses more clamp load than calculated: sleeves, wider washers, or a stiffer print',
    },
  }
}

function plate(x: LegNumbers, joint: Joint): Reading {
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
      capacity: HEATED,
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
    gain: 0.05,
    means: {
      agrees: 'the plate sheds heat as calculated',
      above: `the plate gets hotter than calculated: it conducts or sheds less. Take ${significant(typical, 2)} over that ratio as the cooling factor until the motor has been measured`,
      below: 'the plate stays cooler than calculated: was there a draught?',
    },
  }
}
