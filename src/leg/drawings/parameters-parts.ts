import { drivenBy, driveOf, JOINTS, type Joint } from '../numbers.js'
import { PIVOTS } from '../parts/ball-bearings/pivots.js'
import { type BeltSetting, beltSetting } from '../plans/belt-setting.js'
import { gearSetting } from '../plans/gear-setting.js'
import { beltOrCordOf } from '../second-stage.js'
import { SECOND } from './drive-sizes.js'
import type { Facts } from './facts.js'
import { motorSizes } from './motor.js'
import { linkSizes } from './pose.js'
import { hasMotor } from './present.js'
import { seatSizes } from './seat-sizes.js'
import { springSizes } from './spring-sizes.js'
import { degrees } from './words.js'

/** A parameter for a parametric model. */
export type Parameter = readonly [part: string, parameter: string, value: number, unit: 'mm' | 'deg' | '1']

/** Parameters of everything that has no cord: pulleys of belts, gears, the linkage of a rod, plates, links, seats of bearings, holders of springs. */
export const partsOf = (facts: Facts): Parameter[] => [
  ...drivenBy(facts.leg.x, 'belt').flatMap((joint) =>
    beltOf(beltSetting(facts.leg, joint), joint, driveOf(facts.leg.x, joint, 'belt').adjustment),
  ),
  ...(beltOrCordOf(facts.leg.x)?.kind === 'belt'
    ? beltOf(beltSetting(facts.leg, SECOND), 'through', driveOf(facts.leg.x, SECOND, 'belt').adjustment)
    : []),
  ...drivenBy(facts.leg.x, 'gear').flatMap((joint) => gearsOf(facts, joint as Joint)),
  ...rodOf(facts),
  ...linksOf(facts),
  ...JOINTS.flatMap((joint) => [...(hasMotor(facts, joint) ? plateOf(facts, joint) : []), ...springOf(facts, joint)]),
  ...PIVOTS.flatMap((pivot): Parameter[] => {
    const s = seatSizes(facts, pivot)
    if (s === undefined) return []
    const seat = `seat_${pivot}`
    return [
      [seat, 'bore_diameter', s.outer - s.interference, 'mm'],
      [seat, 'width', s.width, 'mm'],
      [seat, 'outer_diameter', s.housing, 'mm'],
      ...(s.spacing === undefined ? [] : [[seat, 'pair_spacing', s.spacing, 'mm'] as const]),
    ]
  }),
]

function beltOf(s: BeltSetting, joint: string, adjustment: number): Parameter[] {
  const pulley = (size: 'small' | 'large'): Parameter[] => [
    [`pulley_${size}_${joint}`, 'teeth', Math.round((Math.PI * s[size]) / s.belt.pitch), '1'],
    [`pulley_${size}_${joint}`, 'tooth_pitch', 1000 * s.belt.pitch, 'mm'],
    [`pulley_${size}_${joint}`, 'pitch_diameter', 1000 * s[size], 'mm'],
    [`pulley_${size}_${joint}`, 'belt_width', 1000 * s.belt.width, 'mm'],
  ]
  return [
    ...pulley('small'),
    ...pulley('large'),
    [`belt_${joint}`, 'teeth', s.belt.teeth, '1'],
    [`belt_${joint}`, 'centre_distance_straight', 1000 * s.straight, 'mm'],
    [`belt_${joint}`, 'centre_distance_tensioned', 1000 * s.set, 'mm'],
    [`belt_${joint}`, 'adjustment', 1000 * adjustment, 'mm'],
  ]
}

function gearsOf(facts: Facts, joint: Joint): Parameter[] {
  const s = gearSetting(facts.leg, joint)
  const { module, faceWidth } = driveOf(facts.leg.x, joint, 'gear')
  return [
    ...(['pinion', 'wheel'] as const).flatMap((wheel): Parameter[] => [
      [`gear_${wheel}_${joint}`, 'teeth', s[wheel].teeth, '1'],
      [`gear_${wheel}_${joint}`, 'module', 1000 * module, 'mm'],
      [`gear_${wheel}_${joint}`, 'pressure_angle', 20, 'deg'],
      [`gear_${wheel}_${joint}`, 'pitch_diameter', 1000 * s[wheel].pitch, 'mm'],
      [`gear_${wheel}_${joint}`, 'tip_diameter', 1000 * s[wheel].tip, 'mm'],
      [`gear_${wheel}_${joint}`, 'root_diameter', 1000 * s[wheel].root, 'mm'],
      [`gear_${wheel}_${joint}`, 'face_width', 1000 * faceWidth, 'mm'],
      [`gear_${wheel}_${joint}`, 'teeth_spanned', s[wheel].spanned, '1'],
      [`gear_${wheel}_${joint}`, 'width_over_them', 1000 * s[wheel].thinned, 'mm'],
    ]),
    [`gears_${joint}`, 'centre_distance', 1000 * s.standard, 'mm'],
  ]
}

function rodOf({ leg: { x } }: Facts): Parameter[] {
  const { through } = x.joints.knee
  if (through?.kind !== 'rod') return []
  return [
    ['rod', 'crank', 1000 * through.crank, 'mm'],
    ['rod', 'rocker', 1000 * through.rocker, 'mm'],
    ['rod', 'length_between_pins', 1000 * through.rod, 'mm'],
    ['rod', 'diameter', 1000 * through.diameter, 'mm'],
    ['rod', 'rocker_angle_at_straight_knee', degrees(through.rockerAngle), 'deg'],
    ['rod', 'plane_offset', 1000 * through.planeOffset, 'mm'],
  ]
}

function linksOf(facts: Facts): Parameter[] {
  const s = linkSizes(facts)
  return (['upper', 'lower'] as const).flatMap((link): Parameter[] => {
    const { section } = facts.leg.x.links[link]
    return [
      [`link_${link}`, 'length', s[link], 'mm'],
      ...(section.tube === undefined
        ? ([
            [`link_${link}`, 'width', 1000 * section.box!.width, 'mm'],
            [`link_${link}`, 'depth', 1000 * section.box!.depth, 'mm'],
          ] as const)
        : [[`link_${link}`, 'outer_diameter', 1000 * section.tube, 'mm'] as const]),
      [`link_${link}`, 'wall', 1000 * section.wall, 'mm'],
    ]
  })
}

function plateOf(facts: Facts, joint: Joint): Parameter[] {
  const s = motorSizes(facts, joint)
  const plate = `plate_${joint}`
  return [
    [plate, 'width', s.width, 'mm'],
    [plate, 'height', s.height, 'mm'],
    [plate, 'thickness', s.plate, 'mm'],
    [plate, 'opening_diameter', s.ringInner, 'mm'],
    ...(s.sink === undefined ? [] : [[plate, 'sink_thickness', s.sink, 'mm'] as const]),
    ...(s.holes === undefined
      ? []
      : ([
          [plate, 'bolt_circle', s.holes.circle, 'mm'],
          [plate, 'bolts', s.holes.count, '1'],
          [plate, 'hole_diameter', s.holes.sleeve ?? s.holes.hole, 'mm'],
        ] as const)),
  ]
}

function springOf(facts: Facts, joint: Joint): Parameter[] {
  const s = springSizes(facts, joint)
  if (s === undefined) return []
  const holder = `spring_holder_${joint}`
  if (s.kind === 'torsion')
    return [
      ...(s.mandrel === undefined ? [] : [[holder, 'mandrel_diameter', s.mandrel, 'mm'] as const]),
      [holder, 'body_length_wound_most', s.bodyLength(Math.max(...s.travel.map((angle) => s.state(angle).windup))), 'mm'],
      [holder, 'fixed_leg', s.fixedLeg, 'mm'],
      [holder, 'moving_leg', s.movingLeg, 'mm'],
      [holder, 'seat_length', s.seat, 'mm'],
    ]
  return [
    [holder, 'pin_diameter', s.pin, 'mm'],
    [holder, 'pin_depth', s.depth, 'mm'],
    [holder, 'arm', s.arm, 'mm'],
    [holder, 'fixed_pin_up', s.fixed[1], 'mm'],
    [holder, 'fixed_pin_forward', -s.fixed[0], 'mm'],
    [holder, 'moving_pin_down', -s.straight[1], 'mm'],
    [holder, 'moving_pin_forward', -s.straight[0], 'mm'],
  ]
}
