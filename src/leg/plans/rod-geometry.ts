import { fourBarKneePose, rodForce } from '../../kinematics/index.js'
import { bracketRoot } from '../../numeric/index.js'
import type { LegNumbers } from '../leg-numbers.js'
import { kneeLinkage, rodOf } from '../parts/transmission/through-hip/fields.js'

/** Poses over the travel of the knee at which a lever is looked for. */
const POSES = 100

/** A knee that a rod drives from a drum on the hip axis, as plans read it: angles of crank, rod and drum, SI. */
export class RodGeometry {
  readonly kind = 'rod' as const
  readonly #linkage: ReturnType<typeof kneeLinkage>
  readonly lowest: number
  readonly highest: number
  /** Knee angle at which the drum counts as zero with the thigh straight down: the straight knee, or the nearest end of its travel where that is out of reach. */
  readonly zeroKnee: number
  readonly #zero: number

  constructor(x: LegNumbers) {
    this.#linkage = kneeLinkage(x)
    const { lowest, highest } = x.joints.knee.range
    this.lowest = lowest
    this.highest = highest
    const straight = this.pose(0).state === 'drives'
    this.zeroKnee = straight ? 0 : Math.abs(lowest) < Math.abs(highest) ? lowest : highest
    this.#zero = this.pose(this.zeroKnee).crankAngle
  }

  /** Directions and ratio at a knee angle. */
  pose(kneeAngle: number) {
    return fourBarKneePose.si({ ...this.#linkage, kneeAngle })
  }

  /** Angle of the drum, zero with the thigh straight down and the knee at `zeroKnee`. */
  drum(hip: number, knee: number): number {
    return hip + this.pose(knee).crankAngle - this.#zero
  }

  /** Turns of the drum for one of the knee, thigh held. */
  ratio(knee: number): number {
    return this.pose(knee).ratio
  }

  /** Force of the rod for a torque of one newton metre at the drum. */
  forcePerTorque(knee: number): number {
    const { ratio, crankAngle, couplerAngle, rockerAngle } = this.pose(knee)
    const { crank, rocker } = this.#linkage
    return Math.abs(rodForce.si({ kneeTorque: ratio, crank, rocker, crankAngle, couplerAngle, rockerAngle }).force)
  }

  /** Turn of the knee for a rod that is one metre longer, thigh and drum held. */
  kneePerLength(knee: number): number {
    const { couplerAngle, rockerAngle } = this.pose(knee)
    return 1 / (this.#linkage.rocker * Math.sin(couplerAngle - rockerAngle))
  }

  /** The largest of something over the travel of the knee. */
  most(of: (knee: number) => number): number {
    let largest = Number.NEGATIVE_INFINITY
    for (let i = 0; i <= POSES; i++) largest = Math.max(largest, of(this.lowest + ((this.highest - this.lowest) * i) / POSES))
    return largest
  }

  /** The knee angle at which the crank stands half way between its directions at both limits. */
  get middle(): number {
    const [a, b] = [this.pose(this.lowest).crankAngle, this.pose(this.highest).crankAngle]
    return bracketRoot((knee) => this.pose(knee).crankAngle - (a + b) / 2, this.lowest, this.highest)
  }
}

/** The rod of a leg; absent where the motor of the knee sits on the upper link. */
export const rodGeometry = (x: LegNumbers): RodGeometry | undefined => (rodOf(x) === undefined ? undefined : new RodGeometry(x))
