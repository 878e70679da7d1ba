import type { LegNumbers } from '../leg-numbers.js'
import { beltOrCordOf } from '../second-stage.js'
import { throughRatio } from '../through-ratio.js'
import { rodGeometry } from './rod-geometry.js'

/** A knee that is driven from a drum on the hip axis, as plans read it, SI. */
export interface ThroughGeometry {
  /** Belt, cord or rod from there to the knee. */
  readonly kind: 'rod' | 'belt' | 'cord'
  /** Limits of the knee. */
  readonly lowest: number
  readonly highest: number
  /** Knee angle at which the drum counts as zero with the thigh straight down. */
  readonly zeroKnee: number
  /** The knee angle at which the drum is half way between its angles at both limits. */
  readonly middle: number
  /** Angle of the drum, zero with the thigh straight down and the knee at `zeroKnee`. */
  drum(hip: number, knee: number): number
  /** Turns of the drum for one of the knee, thigh held; negative where they turn against each other. */
  ratio(knee: number): number
  /** The largest of something over the travel of the knee. */
  most(of: (knee: number) => number): number
}

/** Belt or cord between two pulleys: one ratio over the whole travel. */
class PulleyGeometry implements ThroughGeometry {
  readonly zeroKnee = 0

  constructor(
    readonly kind: 'belt' | 'cord',
    readonly lowest: number,
    readonly highest: number,
    private readonly turns: number,
  ) {}

  get middle(): number {
    return (this.lowest + this.highest) / 2
  }

  drum(hip: number, knee: number): number {
    return hip + this.turns * knee
  }

  ratio(_knee: number): number {
    return this.turns
  }

  most(of: (knee: number) => number): number {
    return Math.max(of(this.lowest), of(this.highest))
  }
}

/** How the drum of a knee on the hip axis follows hip and knee; absent where the motor of the knee sits on the upper link. */
export function throughGeometry(x: LegNumbers): ThroughGeometry | undefined {
  const [through, turns] = [beltOrCordOf(x), throughRatio(x)]
  if (through === undefined || turns === undefined) return rodGeometry(x)
  const { lowest, highest } = x.joints.knee.range
  return new PulleyGeometry(through.kind, lowest, highest, turns)
}
