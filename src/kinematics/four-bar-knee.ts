import type { Inputs, Si } from '../formula/index.js'
import { crankFromRockerInto, rockerFromCrankInto } from './four-bar-angles.js'
import { fourBarDeadPoint } from './four-bar-knee-pose.js'
import { crankOverRocker, crankOverRockerSlope } from './four-bar-rates.js'

/** The inputs of a four-bar between hip and knee. */
export const FOUR_BAR_KNEE = {
  /** Distance between the fixed pivots on the thigh: the crank's and the rocker's. */
  ground: { kind: 'length', above: 0 },
  /** Length of the crank, which the knee's motor turns on the hip axis. */
  crank: { kind: 'length', above: 0 },
  /** Length of the coupler between the two pins. */
  coupler: { kind: 'length', above: 0 },
  /** Length of the rocker, which is fixed to the shank. */
  rocker: { kind: 'length', above: 0 },
  /** Direction of the rocker with the knee straight, from the line hip to knee, right-handed about +y. */
  rockerAngleAtStraightKnee: 'angle',
  /** Direction of the crank with the knee straight, near enough to choose between the two ways to assemble. */
  crankAngleAtStraightKnee: 'angle',
} as const satisfies Inputs

/** The law of a four-bar between hip and knee, or `undefined` where it does not assemble with the knee straight. */
export function fourBarKnee(given: Si<typeof FOUR_BAR_KNEE>): FourBarKnee | undefined {
  const near = given.crankAngleAtStraightKnee
  const pose = new Float64Array(3)
  let best: { readonly side: -1 | 1; readonly off: number } | undefined
  for (const side of [-1, 1] as const) {
    if (!crankFromRockerInto(pose, 0, given, given.rockerAngleAtStraightKnee, side)) continue
    const off = Math.abs(wrapNear(pose[0]! - near, 0))
    if (best === undefined || off < best.off) best = { side, off }
  }
  return best === undefined ? undefined : new FourBarKnee(given, best.side)
}

const wrapNear = (angle: number, near: number) => angle - 2 * Math.PI * Math.round((angle - near) / (2 * Math.PI))

/** What the knee's drum turns by for a knee angle, and its first two derivatives; NaN where the four-bar does not assemble. SI numbers, no allocation. */
export class FourBarKnee {
  private readonly rockerZero: number
  private readonly crankZero: number
  private readonly pinZero: number
  /** Crank, coupler and pin direction of the pose last solved; rocker and coupler in the search for a knee angle. */
  private readonly pose = new Float64Array(3)
  /** Side of the rocker, seen from the crank, with the knee straight. */
  private readonly home: -1 | 1

  constructor(
    private readonly given: Si<typeof FOUR_BAR_KNEE>,
    private readonly side: -1 | 1,
  ) {
    const { pose } = this
    this.rockerZero = given.rockerAngleAtStraightKnee
    crankFromRockerInto(pose, 0, given, this.rockerZero, side)
    this.crankZero = pose[0]!
    this.pinZero = pose[2]!
    const apart = rockerFromCrankInto(pose, 0, given, this.crankZero, -1)
    this.home = apart === undefined && Math.abs(wrapNear(pose[0]! - this.rockerZero, 0)) < 1e-9 ? -1 : 1
  }

  /** The crank's turn from where it is with the knee straight. */
  travel(knee: number): number {
    if (!this.solve(knee)) return Number.NaN
    // The pin's direction turns by less than half a turn from where it was, or from where the rocker turns it: so whole turns can be counted.
    const { ground, rocker } = this.given
    const pinTurn = wrapNear(this.pose[2]! - this.pinZero, rocker < ground ? 0 : knee)
    return this.pose[0]! - this.pose[2]! - (this.crankZero - this.pinZero) + pinTurn
  }

  /** Crank speed over rocker speed. */
  ratio(knee: number): number {
    if (!this.solve(knee)) return Number.NaN
    const { crank, rocker } = this.given
    return crankOverRocker(crank, rocker, this.pose[0]!, this.pose[1]!, this.rockerZero + knee)
  }

  /** Change of the ratio with the rocker's angle. */
  ratioRate(knee: number): number {
    if (!this.solve(knee)) return Number.NaN
    const { crank, coupler, rocker } = this.given
    return crankOverRockerSlope(crank, coupler, rocker, this.pose[0]!, this.pose[1]!, this.rockerZero + knee)
  }

  /** Where the linkage is at a dead point or apart, between a knee angle and another with the straight knee between them. */
  deadPoint(lowest: number, highest: number): ReturnType<typeof fourBarDeadPoint.si> {
    const crankSide = this.side > 0 ? 'positive' : 'negative'
    return fourBarDeadPoint.si({ ...this.given, crankSide, kneeLowest: Math.min(0, lowest), kneeHighest: Math.max(0, highest) })
  }

  /** The knee angle of a travel. The same linkage seen from the crank: the rocker's side that leads back to this travel, the side it has with the knee straight first. */
  inverse(travel: number): number {
    for (let k = 0; k < 2; k++) {
      if (
        rockerFromCrankInto(this.pose, 0, this.given, this.crankZero + travel, k === 0 ? this.home : (-this.home as -1 | 1)) !== undefined
      )
        continue
      const knee = wrapNear(this.pose[0]! - this.rockerZero, 0)
      if (Math.abs(this.travel(knee) - travel) < 1e-9) return knee
    }
    return Number.NaN
  }

  private solve(knee: number): boolean {
    return crankFromRockerInto(this.pose, 0, this.given, this.rockerZero + knee, this.side)
  }
}
