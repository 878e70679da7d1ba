import { fleetAngle, groove, leadMismatch, matchedDrumLead, pinionLength } from '../../capstan/index.js'
import { Quantity } from '../../units/index.js'
import { type DrivenJoint, drivenBy, hasCord, type Joint, jointWords, seenFrom } from '../numbers.js'
import { canDiameter } from '../parts/motors/fields.js'
import * as cord from '../parts/transmission/cord/fields.js'
import { drumRadius, pinionRadius, ratio } from '../parts/transmission/cord/radii.js'
import { branchArc, geometry } from '../parts/transmission/cord/values.js'
import { beltSetting } from '../plans/belt-setting.js'
import { drumRange } from '../plans/bench.js'
import { SECOND_STAGE } from '../second-stage.js'
import type { LegValues } from './leg-values.js'

/** The second stage of a knee that belt or cord drives through the hip, as a joint. */
export const SECOND = SECOND_STAGE as Joint

/** Part that turns with the pinion, behind it: the motor, or of the second stage the drum that the motor turns. */
export function behindPinion(facts: LegValues, joint: DrivenJoint): { readonly diameter: number; readonly name: string } | undefined {
  if (joint !== SECOND) return { diameter: facts.mm(canDiameter, { joint }), name: 'motor' }
  const { x } = facts.leg
  if (hasCord(x, 'knee')) return { diameter: 2 * facts.mm(drumRadius, { joint: 'knee' }), name: 'drum of the motor' }
  return drivenBy(x, 'belt').includes('knee')
    ? { diameter: 1000 * beltSetting(facts.leg, 'knee').large, name: 'pulley of the motor' }
    : undefined
}

/** Geometry of a cord drive, mm and radians. */
export const driveSizes = (facts: LegValues, joint: DrivenJoint) => {
  const at = { joint }
  const { pinionWrap, span } = facts.get(geometry, at)
  const { lowest: low, highest: high } = drumRange(facts.leg, joint)
  const size = {
    crossed: facts.get(cord.arrangement, at) === 'crossed',
    clamped: facts.get(cord.hold, at) === 'clampedMidPinion',
    drum: facts.mm(drumRadius, at),
    pinion: facts.mm(pinionRadius, at),
    cord: facts.mm(cord.diameter, at),
    distance: facts.mm(cord.centreDistance, at),
    pitch: facts.mm(cord.drum.groovePitch, at),
    bore: facts.mm(cord.drum.bore, at),
    pinionLength: facts.mm(cord.pinion.length, at),
    post: facts.mm(cord.anchor.postDiameter, at),
    behind: behindPinion(facts, joint),
    /** Name of the part that the cord is wound around. */
    wound: joint === SECOND ? 'hip drum' : 'pinion',
    ratio: facts.get(ratio, at),
    turns: pinionWrap / (2 * Math.PI),
    /** Distance along the axis of the places where the branches leave the pinion. */
    apart: (pinionWrap / (2 * Math.PI)) * facts.mm(cord.drum.groovePitch, at),
    span: 1000 * span,
    branch: facts.get(branchArc, at),
    /** Part that turns from the low to the high angle: the joint, or the drum of a knee that is driven through the hip. */
    turning: joint === SECOND ? 'knee' : joint === 'knee' && facts.leg.x.joints.knee.through !== undefined ? 'drum' : jointWords(joint),
    /** Where it is seen from: its positive angles turn counter-clockwise. */
    seen: seenFrom(joint),
    /** The end of the axis that is seen from there. */
    end: joint === 'sidewaysHip' ? 'its front' : 'the robot’s left',
    low,
    high,
    middle: (low + high) / 2,
    travel: high - low,
  }
  const pitch = size.pitch / 1000
  const { walk } = pinionLength.si({ groovePitch: pitch, wraps: size.turns, ratio: size.ratio, travel: size.travel, spare: 1 })
  const offset = leadMismatch.si({ pinionPitch: pitch, drumLead: pitch, ratio: size.ratio, travel: size.travel })
  const depth = 1000 * groove({ cordDiameter: new Quantity(facts.get(cord.diameter, at), 'length') }).depth.si
  const outside = depth - size.cord / 2
  return {
    ...size,
    /** Radius of the drum and of the pinion over the rims of their grooves. */
    drumRim: size.drum + outside,
    pinionRim: size.pinion + outside,
    walk: 1000 * walk,
    exit: fleetAngle.si({ axialOffset: offset, span }),
    lead: 1000 * matchedDrumLead.si({ pinionPitch: pitch, ratio: size.ratio }),
  }
}
export type DriveSizes = ReturnType<typeof driveSizes>
