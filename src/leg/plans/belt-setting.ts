import { shaftForce, spanPitch, spanSideForce, toothBeltLength } from '../../capstan/index.js'
import { bracketRoot } from '../../numeric/index.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type DrivenJoint, driveOf, partOf } from '../numbers.js'

/** Deflection of the middle of a span while it is pushed, as a share of the span: small enough to leave the tension nearly as it is. */
const DEFLECTION = 1 / 50

/** Sizes and settings of a belt drive, SI. @internal */
export interface BeltSetting {
  readonly belt: LegNumbers['belts'][string]
  readonly name: string
  /** Length of the belt, untensioned. */
  readonly length: number
  /** Pitch diameters of both pulleys. */
  readonly small: number
  readonly large: number
  /** Distances of the axes: belt straight without tension, and with its pretension. */
  readonly straight: number
  readonly set: number
  /** Free span at the set distance. */
  readonly span: number
  readonly pretension: number
  /** Pitch of the plucked span at a tension. */
  readonly pitchAt: (tension: number) => number
  /** Deflection of the middle of a span, and the force that makes it at the pretension. */
  readonly deflection: number
  readonly sideForce: number
  /** Force on each axis at rest. */
  readonly axisForce: number
}

/** How a belt drive is set. @internal */
export function beltSetting({ x }: LegModel, joint: DrivenJoint): BeltSetting {
  const drive = driveOf(x, joint, 'belt')
  const belt = partOf(x.belts, drive.belt, 'belt')
  const { smallTeeth, largeTeeth, centreDistance: stated, pretension } = drive
  const { pitch, axialRigidity, massPerLength } = belt
  const around = (centreDistance: number) => toothBeltLength.si({ smallTeeth, largeTeeth, pitch, centreDistance })
  const length = belt.teeth * pitch
  const min = ((pitch * (smallTeeth + largeTeeth)) / (2 * Math.PI)) * (1 + 1e-9)
  /** Distance at which the belt has a length. A belt too short for its pulleys stays at the least one. */
  const axesFor = (wanted: number) => {
    const max = Math.max(2 * stated, wanted)
    return around(min).length >= wanted ? min : bracketRoot((c) => around(c).length - wanted, min, max)
  }
  const set = axesFor(length * (1 + pretension / axialRigidity))
  const { span } = around(set)
  const deflection = DEFLECTION * span
  const radius = (teeth: number) => (pitch * teeth) / (2 * Math.PI)
  return {
    belt,
    name: drive.belt,
    length,
    small: 2 * radius(smallTeeth),
    large: 2 * radius(largeTeeth),
    straight: axesFor(length),
    set,
    span,
    pretension,
    pitchAt: (tension) => spanPitch.si({ span, massPerLength, tension }),
    deflection,
    sideForce: spanSideForce.si({ span, tension: pretension, deflection, axialRigidity }).force,
    axisForce: shaftForce.si({
      arrangement: 'open',
      tautTension: pretension,
      slackTension: pretension,
      pinionRadius: radius(smallTeeth),
      drumRadius: radius(largeTeeth),
      centreDistance: set,
    }).force,
  }
}
