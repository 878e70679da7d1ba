import {
  cycleTension,
  driveWindup,
  pulleyGeometry,
  shaftForce,
  thermalTension,
  travelLimits,
  travelPeakTension,
} from '../../capstan/index.js'
import type { Evaluator } from '../../formula/index.js'
import { JOINTS, type Joint, type Prepared } from '../numbers.js'
import { oncePerLegAnd } from '../once.js'
import type { DriveState } from '../state.js'

/** What one drive is asked in one load case. */
export interface DriveAsk {
  readonly joint: Joint
  /** Largest joint torque, without sign. */
  readonly torque: number
  /** Angle the joint runs through under it. */
  readonly stroke: number
  readonly footForce: number
  readonly air: number
  readonly age: 'new' | 'year'
}

/** Arcs and spans of one drive. */
const geometryOf = /* @__PURE__ */ oncePerLegAnd(JOINTS, (of, leg, joint) => {
  const { pinionRadius, drumRadius } = leg.drives[joint]
  const { arrangement, centreDistance, pinion } = leg.x.drives[joint]
  return of(pulleyGeometry, { arrangement, pinionRadius, drumRadius, centreDistance, pinionTurns: pinion.wraps })
})

/** A pretension below this is none, N: the cord hangs. */
const LOOSE = 0.5

/** Tensions of one drive in one load case, at its temperature and age. */
export function driveState(leg: Prepared, of: Evaluator, { joint, torque, stroke, footForce, air, age }: DriveAsk): DriveState {
  const { pinionRadius, drumRadius, cord, friction, pretensionLeft } = leg.drives[joint]
  const drive = leg.x.drives[joint]
  const frame = joint === 'hip' ? leg.plate : leg.links.upper
  const thermal = of(thermalTension, {
    axialRigidity: cord.axialRigidity,
    temperatureRise: air - leg.x.environment.assemblyTemperature,
    frameExpansion: frame.thermalExpansion,
    cordExpansion: cord.thermalExpansion,
  })
  const aged = drive.pretension * (age === 'year' ? pretensionLeft : 1)
  const pretension = Math.max(LOOSE, aged + thermal)
  const geometry = geometryOf(of, leg, joint)
  // Anchors opposite each other at mid travel: each branch has half of the drum's arc.
  const drumWrap = geometry.drumWrapAngle / 2
  const wound = of(driveWindup, {
    torque,
    axialRigidity: cord.axialRigidity,
    pretension,
    pinionRadius,
    drumRadius,
    span: geometry.span,
    pinionWrap: geometry.pinionWrap,
    drumWrapTaut: drumWrap,
    drumWrapSlack: drumWrap,
    friction,
    drumFriction: undefined,
    hold: drive.hold,
    contactStiffness: undefined,
  })
  const { from, to } = leg.x.joints[joint]
  const limits = (hold: 'frictionOnly' | 'clampedMidPinion') =>
    of(travelLimits, {
      axialRigidity: cord.axialRigidity,
      pretension,
      pinionRadius,
      drumRadius,
      span: geometry.span,
      pinionWrap: geometry.pinionWrap,
      drumWrap,
      // Where the travel unwinds an anchor, the cord holds on no drum arc at all; the assembly plan reports that.
      travel: Math.min(to - from, 2 * drumWrap),
      friction,
      drumFriction: undefined,
      hold,
    })
  const slip = drive.hold === 'frictionOnly' ? limits('frictionOnly').slipTorque : Number.POSITIVE_INFINITY
  const travelled = of(travelPeakTension, { pretension, torque, drumRadius })
  const cycled = of(cycleTension, { pretension, torque, drumRadius, span: geometry.span, stroke, loadedStroke: 'raising' }).peak
  const shaft = of(shaftForce, {
    arrangement: drive.arrangement,
    tautTension: wound.tautTension,
    slackTension: wound.slackTension,
    pinionRadius,
    drumRadius,
    centreDistance: drive.centreDistance,
  })
  return {
    pretension,
    hangs: aged + thermal < LOOSE,
    thermalTension: thermal,
    taut: wound.tautTension,
    slack: wound.slackTension,
    peak: Math.max(wound.tautTension, travelled, cycled),
    // Of a cord that does not slip: slipping is a limit of its own.
    slackTorque: limits('clampedMidPinion').slackTorque,
    slipTorque: slip,
    shaftForce: shaft.force,
    pinForce: shaft.force + footForce,
    windup: wound.windup,
    stiffness: wound.tangentStiffness,
    pinionWrap: geometry.pinionWrap,
    drumWrapAngle: geometry.drumWrapAngle,
    span: geometry.span,
  }
}
