import { pressFit } from '../../fasteners/index.js'
import { Quantity, significant } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { boltWords } from '../drawings/words.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import { COUPON_COLUMNS, type CouponOf, couponsOf } from '../learning/coupon-logs.js'
import { headerOf } from '../learning/logs.js'
import type { LegModel } from '../leg-model.js'
import { materialState, steelOf } from '../material-state.js'
import { bossAt, type DrivenJoint, driveOf, type Joint, jointWords, motorOf, pinAt, pinSizeAt, plateOf } from '../numbers.js'
import { isPrinted } from '../printed.js'
import { materialOf } from '../schema/tables.js'
import { force, length } from './bench.js'
import { BAR, HOLES } from './coupon-sizes.js'
import { presses } from './fastening-steps.js'
import { phrase } from './sheet-units.js'

/** A coupon to print, load and log; `learn` takes its log. */
export interface CouponSheet {
  /** The name under which `learn` takes its log. */
  readonly log: string
  /** What it is. */
  readonly what: string
  /** How to print it, load it with what a home workshop has, and read it. */
  readonly how: string
  /** Hazards. */
  readonly caution: string
  /** Reading that the leg predicts. */
  readonly expect: string
  /** First lines of the CSV file. */
  readonly csv: string
  /** The coupon: its kind, and what it is for. */
  readonly coupon: CouponOf
}

type Texts = Pick<CouponSheet, 'what' | 'how' | 'caution' | 'expect'>

/** Every coupon of a leg, with how to pull it and its log. @internal */
export const couponKit = (leg: Leg, bench: LegModel): CouponSheet[] =>
  couponsOf(bench.x)
    .filter((coupon) => usefulFor(bench, coupon))
    .map((coupon) => ({
      ...textsOf(bench, coupon),
      log: coupon.log,
      csv: `# ${leg.name}\n# log: ${coupon.log}\n${headerOf(COUPON_COLUMNS[coupon.id])}\n`,
      coupon,
    }))

const BAG = 'A bag on a hook, filled with water from a measured jug: a litre is 9.8 N.'

/** Bosses and clamped parts of metal need no coupon: their strength is that of the table, and they do not creep. */
function usefulFor({ x }: LegModel, { id, of }: CouponOf): boolean {
  if (id === 'couponHoles' || id === 'couponSplit') return isPrinted(x, bossAt(x, of as Joint).material)
  if (id === 'couponBars') return isPrinted(x, of)
  return id !== 'couponSandwich' || (x.bolts[of]?.stack ?? []).some(({ material }) => isPrinted(x, material))
}

function textsOf(bench: LegModel, { id, of }: CouponOf): Texts {
  switch (id) {
    case 'couponHoles':
      return holes(bench, of as Joint)
    case 'couponBars':
      return bars(bench, of)
    case 'couponSplit':
      return split(bench, of as Joint)
    case 'couponDrum':
      return drum(bench, of as DrivenJoint)
    case 'couponSandwich':
      return sandwich(bench, of)
    case 'couponPlate':
      return plate(bench, of as DrivenJoint)
  }
}

function holes(bench: LegModel, joint: Joint): Texts {
  const { hole, engagement } = bossAt(bench.x, joint)
  const press = presses(bench).find((press) => press.joint === joint)
  return {
    what: `ten holes for the pin of the ${joint}`,
    how: phrase`Print the block ${length(engagement)} thick, holes in the direction of the leg's. Measure each hole with drills or pin gauges, twice, a quarter turn apart. Then press a pin into each, a bathroom scale under the vice, and note the hole whose force comes closest. Press two more pins of that fit in, push one out at once and the other after two weeks, and note both forces.`,
    caution: 'A hardened pin can shatter: eye protection, a guide, no hammer.',
    expect: phrase`measured as drawn; the leg's hole is ${length(hole)}, and its pin takes up to ${press?.pressingForce ?? force(0)}`,
  }
}

function bars(bench: LegModel, name: string): Texts {
  const material = materialOf(name, bench.x.materials)
  const stress = (material.tensileStrength ?? material.yieldStrength)?.si ?? 0
  // A bar on two supports: M = F L / 4 over the section modulus b h² / 6.
  const breaking = (2 * stress * BAR.width * BAR.height ** 2) / (3 * BAR.span)
  const share = material.acrossLayersRatio
  return {
    what: `three flat and three upright bars of ${name}`,
    how: phrase`Print them with the walls and the infill of the leg, three lying and three standing. Lay each over two rods ${new Quantity(BAR.span, 'length')} apart, hang the hook in the middle, and load it until it breaks. ${BAG} Weigh what hung there. One row for a flat bar and an upright one. Then hang a quarter of the breaking load on a spare flat bar for two weeks, and note how far it sags after an hour, a day, a week and two weeks, or when it breaks.`,
    caution: 'Pieces fly and the bag falls: eye protection, a box below, feet away.',
    expect: phrase`flat ones near ${force(breaking)} (${significant(breaking / STANDARD_GRAVITY, 2)} kg)${share === undefined ? '' : `, upright ones at ${significant(share.low, 2)} to ${significant(share.high, 2)} of that`}`,
  }
}

function split(bench: LegModel, joint: Joint): Texts {
  const { outerDiameter, engagement, material } = bossAt(bench.x, joint)
  const { boreHoopStress } = pressFit.si({
    diameter: pinSizeAt(bench.x, joint).diameter,
    diametralInterference: 1e-5,
    bossDiameter: outerDiameter,
    pinBore: 0,
    boss: materialState(bench, material).elastic(),
    pin: materialState(bench, steelOf(bench)).elastic(),
  })
  return {
    what: `bosses of the ${joint} to split`,
    how: phrase`Print six bosses of ${length(outerDiameter)} by ${length(engagement)}, with holes from the drawn one down in steps of ${new Quantity(2 * HOLES.step, 'length')}. Measure each hole, press a pin in, and look along the layers with a lamp. Log pin and hole of those that split, at least three.`,
    caution: 'A splitting boss throws its pin: a cloth over the vice, eye protection.',
    expect: phrase`every 10 µm of pin over hole stretch the bore by ${new Quantity(boreHoopStress, 'stress')}; none splits at the fit of the leg (${pinAt(bench.x, joint).size})`,
  }
}

function drum(bench: LegModel, joint: DrivenJoint): Texts {
  const { friction, drum: body } = driveOf(bench.x, joint, 'cord')
  return {
    what: `half a drum of the ${jointWords(joint)} with its groove`,
    how: `Print half of the drum of ${body.material} and clamp it, groove upward. Lay the cord over it, hang half a litre of water on one end, and pull the other with a luggage scale, down and outward, until the cord creeps. Wrap is the angle between both directions: half a turn, then a quarter, then a sixth; three readings each.`,
    caution: 'Weights fall: work low over a box, feet away.',
    expect: `taut over slack ${significant(Math.exp(friction.low * Math.PI), 3)} to ${significant(Math.exp(friction.high * Math.PI), 3)} at half a turn`,
  }
}

function sandwich(bench: LegModel, group: string): Texts {
  const bolts = bench.x.bolts[group]
  const stack = (bolts?.stack ?? []).map(({ material, thickness }) => phrase`${length(thickness)} of ${material}`).join(' and ')
  return {
    what: `a bolted sandwich like that of the ${boltWords(group)}`,
    how: phrase`Print four tiles of 25 mm square: ${stack}, sleeves as in the leg. Bolt each with ${bolts?.thread} and a nut on the far side, ${new Quantity(bolts?.tighteningTorque ?? 0, 'torque')}. Loosen the first at once, the others after an hour, a day and a week, each with a lever of 100 mm and a luggage scale: the pull at which it starts to turn. One row each, with that of the first. Tighten one more until its thread, nut or print gives, and note that torque and the depth of the thread.`,
    caution: 'A slipping lever hits knuckles: pull towards free space.',
    expect: 'the torque to loosen falls as the clamp load does; friction under head and thread cancels between equal sandwiches',
  }
}

function plate(bench: LegModel, joint: DrivenJoint): Texts {
  const { size, thickness, material } = plateOf(bench.x, joint)
  const { mountInnerDiameter, mountOuterDiameter } = motorOf(bench.x, joint)
  return {
    what: `the plate of the ${jointWords(joint)} with a heater instead of its motor`,
    how: phrase`${isPrinted(bench.x, material) ? 'Print' : 'Take'} the plate (${length(size.width)} by ${length(size.height)}, ${length(thickness)} of ${material}) and fit its sink, if it has one. Screw a metal ring of ${length(mountInnerDiameter)} to ${length(mountOuterDiameter)} with two power resistors on it to the motor's place. Hang it upright in still air. Set a voltage, wait an hour, and log volts times amperes, the ring, and the air 200 mm beside. Three powers: the ring at 10, 20 and 30 K above the air.`,
    caution:
      'The ring burns skin and softens polymers: never above the softening of the plate less 30 K, never alone, nothing that burns beside it.',
    expect: 'the rise that the leg calculates, within the range of the cooling factor',
  }
}
