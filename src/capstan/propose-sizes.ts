import { bendEfficiency } from './bending.js'
import { workingTension } from './cord.js'
import { pulleyGeometry } from './geometry.js'
import { travelPeakTension } from './limits.js'
import { shaftForce } from './loads.js'
import type { CordStock, DriveWishNumbers } from './propose-wish.js'
import { takeUp, thermalTension } from './take-up.js'
import { pretensionForTorque, travelLimits } from './travel-limits.js'
import { cordToCut, drumLength, groove, matchedDrumLead, pinionLength } from './winding.js'

/** Wrap kept on the drum before each anchor at the end of travel: three times the least of winding drums. */
const KEPT_WRAP = Math.PI / 6
/** Gap between pinion and drum over the cord diameter. */
const GAP_RATIO = 3
/** Angle of the drum that its anchors take where both ends share one track. */
const ANCHOR_ANGLE = Math.PI / 9
/** Cord inside one end fitting over the cord diameter, and loose cord that assembly leaves. */
const END_RATIO = 15
const ASSEMBLY_SLACK = 2e-3

/** Full turns that a clamped cord needs: those that the pinion pays out over the travel, and half a turn on either side of the clamp. */
export const turnsUnderClamp = ({ ratio, travel }: DriveWishNumbers): number => Math.ceil((ratio * travel) / (2 * Math.PI) + 1)

/** Chosen sizes of a design. */
interface Chosen {
  readonly bendRatio: number
  readonly hold: 'clampedMidPinion' | 'frictionOnly'
  readonly pinionTurns: number
}

/** The sizes of one design and what it holds, SI. */
export type DriveSizes = ReturnType<typeof sizesOf>

/** Sizes a drive: pulleys, pretension, lengths, tensions. */
export function sizesOf(x: DriveWishNumbers, cord: CordStock, { bendRatio, hold, pinionTurns }: Chosen) {
  const pinionRadius = (bendRatio * cord.diameter) / 2
  const drumRadius = x.ratio * pinionRadius
  const centreDistance = pinionRadius + drumRadius + GAP_RATIO * cord.diameter
  const { span, pinionWrap, drumWrapAngle } = pulleyGeometry.si({
    arrangement: x.arrangement,
    pinionRadius,
    drumRadius,
    centreDistance,
    pinionTurns,
  })
  const drumWrap = x.travel / 2 + KEPT_WRAP
  const cordOnPulleys = { pinionRadius, drumRadius, span, pinionWrap, drumWrap, travel: x.travel, friction: cord.friction.low, hold }
  const needed = pretensionForTorque.si({
    torque: x.torque,
    drumFriction: undefined,
    requiredReserve: x.requiredReserve,
    ...cordOnPulleys,
  } as never).pretension
  const warming = { axialRigidity: cord.axialRigidity, frameExpansion: x.frameExpansion, cordExpansion: cord.expansion }
  const [cold, warm] = [x.coldest, x.warmest].map((temperatureRise) => thermalTension.si({ ...warming, temperatureRise })) as [
    number,
    number,
  ]
  // What the shelf and the loosening temperature leave must still hold the torque.
  const pretension = (needed - Math.min(0, cold, warm)) / cord.pretensionLeft
  const left = cord.pretensionLeft * pretension + Math.min(0, cold, warm)
  const held = travelLimits.si({ ...cordOnPulleys, axialRigidity: cord.axialRigidity, pretension: left } as never)
  const highest = pretension + Math.max(0, cold, warm)
  const peakTension = travelPeakTension.si({ pretension: highest, torque: x.torque, drumRadius })
  return {
    bendRatio,
    hold,
    pinionTurns,
    pinionRadius,
    drumRadius,
    centreDistance,
    span,
    pinionWrap,
    drumWrap,
    pretension,
    heldTorque: held.holdingTorque,
    peakTension,
    workingTension: workingTension.si({
      breakingStrength: cord.breakingStrength,
      endEfficiency: cord.endEfficiency,
      bendEfficiency: bendEfficiency.si({ bendRatio, leastBendRatio: cord.leastBendRatio, exponent: 1 }),
      designFactor: cord.designFactor,
    }),
    shaftForce: shaftForce.si({
      tautTension: peakTension,
      slackTension: Math.max(0, peakTension - x.torque / drumRadius),
      arrangement: x.arrangement,
      pinionRadius,
      drumRadius,
      centreDistance,
    } as never).force,
    ...windingOf(x, cord, { span, drumRadius, drumWrap, drumWrapAngle, pinionRadius, pinionWrap, pinionTurns, pretension }),
  }
}

/** Pulleys, wraps and pretension of a design, as its winding needs them. */
interface Wound {
  readonly span: number
  readonly drumRadius: number
  readonly drumWrap: number
  readonly drumWrapAngle: number
  readonly pinionRadius: number
  readonly pinionWrap: number
  readonly pinionTurns: number
  readonly pretension: number
}

/** Grooves and lengths of both pulleys, the cord to cut, and the take-up that its stretch needs. */
function windingOf(x: DriveWishNumbers, cord: CordStock, wound: Wound) {
  const { drumWrap, pretension } = wound
  const grooves = groove.si({ cordDiameter: cord.diameter, pitchClearance: 0.2, seatFactor: 0.54, depthFactor: 0.33 })
  const lead = matchedDrumLead.si({ pinionPitch: grooves.pitch, ratio: x.ratio })
  const { workingLength, cutLength } = cordToCut.si({
    span: wound.span,
    drumRadius: wound.drumRadius,
    drumWrapTotal: 2 * drumWrap,
    pinionRadius: wound.pinionRadius,
    pinionWrap: wound.pinionWrap,
    groovePitch: grooves.pitch,
    endLength: END_RATIO * cord.diameter,
    tailLength: 0,
    strain: pretension / cord.axialRigidity,
  })
  const wraps = wound.pinionTurns + 1
  return {
    groovePitch: grooves.pitch,
    grooveDepth: grooves.depth,
    pinionLength: pinionLength.si({ groovePitch: grooves.pitch, wraps, ratio: x.ratio, travel: x.travel, spare: 1 }).length,
    drumLength: drumLength.si({
      drumLead: lead,
      largestWrap: drumWrap + x.travel / 2,
      groovePitch: grooves.pitch,
      tracks: 2 * drumWrap + ANCHOR_ANGLE > wound.drumWrapAngle ? 2 : 1,
    }),
    cutLength,
    takeUp: takeUp.si({
      workingLength,
      pretension,
      axialRigidity: cord.axialRigidity,
      beddingStrain: cord.beddingStrain,
      creepStrain: cord.creepStrain,
      slack: ASSEMBLY_SLACK,
      temperatureRise: x.coldest,
      frameExpansion: x.frameExpansion,
      cordExpansion: cord.expansion,
    }).total,
  }
}
