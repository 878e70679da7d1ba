import type { LegNumbers } from '../leg-numbers.js'
import { cordJoints, drivenJoints, JOINTS, type Joint, jointOf } from '../numbers.js'
import type { LogColumn } from './logs.js'

/** Printable coupons, by the property that each measures. */
export const COUPONS = ['couponHoles', 'couponBars', 'couponSplit', 'couponDrum', 'couponSandwich', 'couponPlate'] as const
/** One kind of coupon. */
export type CouponId = (typeof COUPONS)[number]

/** Columns of the log of each coupon. */
export const COUPON_COLUMNS: { readonly [C in CouponId]: readonly LogColumn[] } = {
  couponHoles: [
    { name: 'drawn hole', kind: 'length', unit: 'mm' },
    { name: 'measured hole', kind: 'length', unit: 'mm' },
  ],
  couponBars: [
    { name: 'flat breaking force', kind: 'force', unit: 'N' },
    { name: 'upright breaking force', kind: 'force', unit: 'N' },
  ],
  couponSplit: [
    { name: 'pin diameter', kind: 'length', unit: 'mm' },
    { name: 'measured hole', kind: 'length', unit: 'mm' },
  ],
  couponDrum: [
    { name: 'slack tension', kind: 'force', unit: 'N' },
    { name: 'taut tension', kind: 'force', unit: 'N' },
    { name: 'wrap angle', kind: 'angle', unit: 'turn' },
  ],
  couponSandwich: [
    { name: 'time', kind: 'time', unit: 'day' },
    { name: 'torque to loosen at once', kind: 'torque', unit: 'N m' },
    { name: 'torque to loosen', kind: 'torque', unit: 'N m' },
  ],
  couponPlate: [
    { name: 'power', kind: 'power', unit: 'W' },
    { name: 'mount temperature', kind: 'temperature', unit: 'degC' },
    { name: 'air temperature', kind: 'temperature', unit: 'degC' },
  ],
}

/** A coupon of a leg: its kind, and the joint, the material or the group of bolts that it is for. */
export interface CouponOf {
  /** Its kind. */
  readonly id: CouponId
  /** The joint, the material or the group of bolts. */
  readonly of: string
  /** The name under which `learn` takes its log. */
  readonly log: string
}

/** Every coupon of a leg. */
export function couponsOf(x: LegNumbers): CouponOf[] {
  const pressed = JOINTS.filter((joint) => x.joints[joint].pin !== undefined && x.joints[joint].boss !== undefined)
  const drums = cordJoints(x)
  const plates = drivenJoints(x).filter((joint) => jointOf(x, joint).motor !== undefined && jointOf(x, joint).plate !== undefined)
  const one = (id: CouponId) => (of: string) => ({ id, of, log: `${id} ${of}` })
  return [
    ...pressed.map(one('couponHoles')),
    ...printsOf(x, pressed).map(one('couponBars')),
    ...pressed.map(one('couponSplit')),
    ...drums.map(one('couponDrum')),
    ...Object.keys(x.bolts).map(one('couponSandwich')),
    ...plates.map(one('couponPlate')),
  ]
}

/** Materials of bosses, links and plates, each once. */
function printsOf(x: LegNumbers, pressed: readonly Joint[]): string[] {
  const bosses = pressed.map((joint) => x.bosses[x.joints[joint].boss as string]?.material)
  const all = [...bosses, x.links.upper.material, x.links.lower.material, ...Object.values(x.plates).map(({ material }) => material)]
  return [...new Set(all)].filter((name) => name !== undefined)
}
