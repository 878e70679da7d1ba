import { plain } from '../../drawing/index.js'
import { type DrivenJoint, driveOf, JOINTS } from '../numbers.js'
import type { Assessment } from '../result.js'
import { beltOrCordOf } from '../second-stage.js'
import { driveSizes, SECOND } from './drive-sizes.js'
import { Facts } from './facts.js'
import { grooveSizes } from './groove.js'
import { type Parameter, partsOf } from './parameters-parts.js'
import { pinSizes } from './pin-sizes.js'
import { hasCordDrive, hasPin, hasSidewaysCord } from './present.js'
import { degrees } from './words.js'

/** Holes of a coupon for the fit of a pin, each a step larger than the one before; the hole of the leg is in their middle. */
const COUPON = { holes: 10, step: 0.02 }

/**
 * Parameters of drums, pinions, pulleys, gears, bosses, bearing seats, plates, links, holders of springs and test coupons as CSV, for any parametric CAD: a
 * header, then part, parameter, value and unit. The coupon of a
 * boss is a row of ten holes that rise by 0.02 mm about the hole of the leg, in a bar as thick as the boss is deep.
 */
export function parametersCsv(assessment: Assessment): string {
  const facts = new Facts(assessment)
  const rows: Parameter[] = [
    ...JOINTS.flatMap((joint) => [
      ...(hasCordDrive(facts, joint) ? drumOf(facts, joint, joint) : []),
      ...(hasPin(facts, joint) ? bossOf(facts, joint) : []),
    ]),
    ...(hasSidewaysCord(facts) ? drumOf(facts, 'sidewaysHip', 'sidewaysHip') : []),
    ...(beltOrCordOf(facts.leg.x)?.kind === 'cord' ? drumOf(facts, SECOND, 'through') : []),
    ...partsOf(facts),
  ]
  const line = ([part, parameter, value, unit]: Parameter) => `${part},${parameter},${plain(value, 6).replaceAll('−', '-')},${unit}`
  return `${['part,parameter,value,unit', ...rows.map(line)].join('\n')}\n`
}

function drumOf(facts: Facts, joint: DrivenJoint, name: string): Parameter[] {
  const groove = grooveSizes(facts, joint)
  const drive = driveSizes(facts, joint)
  const { anchor, tensioner } = driveOf(facts.leg.x, joint, 'cord')
  const drum = `drum_${name}`
  const pinion = `pinion_${name}`
  return [
    [drum, 'groove_diameter', groove.drum - groove.cord, 'mm'],
    [drum, 'cord_centre_diameter', groove.drum, 'mm'],
    [drum, 'outer_diameter', groove.drum - groove.cord + 2 * groove.depth, 'mm'],
    [drum, 'bore_diameter', groove.bore, 'mm'],
    [drum, 'length', groove.drumLength, 'mm'],
    [drum, 'groove_pitch', groove.pitch, 'mm'],
    [drum, 'groove_depth', groove.depth, 'mm'],
    [drum, 'groove_seat_radius', groove.seat, 'mm'],
    [drum, 'anchor_post_diameter', drive.post, 'mm'],
    [drum, 'anchor_post_length', 1000 * anchor.postLength, 'mm'],
    [drum, 'anchor_edge_distance', 1000 * anchor.edgeDistance, 'mm'],
    [drum, 'tensioner_travel', 1000 * tensioner.travel, 'mm'],
    [drum, 'wrap_to_anchor_at_mid_travel', degrees(drive.branch), 'deg'],
    [drum, 'travel', degrees(drive.travel), 'deg'],
    [pinion, 'groove_diameter', 2 * drive.pinion - drive.cord, 'mm'],
    [pinion, 'cord_centre_diameter', 2 * drive.pinion, 'mm'],
    [pinion, 'outer_diameter', 2 * drive.pinionRim, 'mm'],
    [pinion, 'length', drive.pinionLength, 'mm'],
    [pinion, 'groove_pitch', groove.pitch, 'mm'],
    [pinion, 'groove_depth', groove.depth, 'mm'],
    [pinion, 'groove_seat_radius', groove.seat, 'mm'],
    [pinion, 'turns', drive.turns, '1'],
    [pinion, 'centre_distance', drive.distance, 'mm'],
    [`coupon_groove_${name}`, 'cord_diameter', groove.cord, 'mm'],
    [`coupon_groove_${name}`, 'groove_pitch', groove.pitch, 'mm'],
    [`coupon_groove_${name}`, 'groove_seat_radius', groove.seat, 'mm'],
    [`coupon_groove_${name}`, 'diameter', groove.drum - groove.cord, 'mm'],
  ]
}

function bossOf(facts: Facts, joint: 'hip' | 'knee'): Parameter[] {
  const s = pinSizes(facts, joint)
  const boss = `boss_${joint}`
  const coupon = `coupon_boss_${joint}`
  return [
    [boss, 'outer_diameter', s.outer, 'mm'],
    [boss, 'hole_diameter', s.hole, 'mm'],
    [boss, 'depth', s.depth, 'mm'],
    [boss, 'edge_distance', s.edge, 'mm'],
    [boss, 'eye_thickness', s.lug, 'mm'],
    [boss, 'side_gap', s.gap, 'mm'],
    [coupon, 'holes', COUPON.holes, '1'],
    [coupon, 'first_hole_diameter', s.hole - ((COUPON.holes - 1) / 2) * COUPON.step, 'mm'],
    [coupon, 'step', COUPON.step, 'mm'],
    [coupon, 'hole_spacing', s.outer, 'mm'],
    [coupon, 'thickness', s.depth, 'mm'],
  ]
}
