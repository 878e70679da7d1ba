import { bar, distance, type Figure, type LineClass, minus, type Point, plain, polar, times, View } from '../../drawing/index.js'
import { amountTexts } from '../assess/sentence.js'
import type { CheckResult } from '../check-result.js'
import { reserveText } from '../report/content.js'
import { drawAlong } from './draw-along.js'
import { drawSpring } from './draw-spring.js'
import { drawWeights } from './draw-weights.js'
import { sign } from './facts.js'
import { type Scene, type Spot, spotOf } from './leg-scene.js'
import type { LinkSizes } from './pose.js'
import { spans } from './spans.js'
import { degrees } from './words.js'

const FORCE_LENGTH = 60

/** Draws the leg in its pose, the part of the check marked; returns the arms of the foot force about the joints. */
export function drawPose(figure: Figure, scene: Scene, check: CheckResult, part: string) {
  const { links, knee, foot, joints } = scene
  const view = new View('Hardest pose', { height: 440 })
  const spot = spotOf(check)
  const fails = check.reserve < 1
  const mark = (here: Spot): LineClass => (spot === here && fails ? 'bad' : 'thick')
  const lower = bar({ centre: knee, radius: links.lowerDepth / 2 }, { centre: foot, radius: links.lowerDepth / 4 })
  const upper = bar({ centre: [0, 0], radius: links.upperDepth / 2 }, { centre: knee, radius: links.upperDepth / 2 })
  view.area(upper, { line: mark('upper'), fill: 'tone' }).area(lower, { line: mark('lower'), fill: 'tone' })
  const spots = new Map<Spot, Point>([
    ['hip', [0, 0]],
    ['knee', knee],
    ['upper', times(knee, 0.6)],
    ['lower', [(knee[0] + foot[0]) / 2, (knee[1] + foot[1]) / 2]],
    ['foot', foot],
  ])
  drawWeights(view, scene)
  drawJoints(view, scene, fails ? spot : undefined, spots)
  for (const [name, at] of [
    ['hip', [0, 0]],
    ['knee', knee],
  ] as const)
    view.circle({ centre: at as Point, radius: links.upperDepth / 7 }, mark(name), 'paper')
  view.circle({ centre: foot, radius: links.lowerDepth / 8 }, mark('foot'), 'paper')
  rodOf(view, scene, fails && spot === 'rod', spots)
  drawAlong(view, scene, fails && spot === 'along', spots)
  reach(view, joints[1]!.limits, links)
  ground(view, foot, links)
  const arms = forces(view, scene)
  const [demand, capacity] = amountTexts(check.demand, check.capacity)
  view.label(
    spots.get(spot) ?? [0, 0],
    [`${sign(check)} ${part}`, `demand ${demand}`, `capacity ${capacity}`, `reserve ${reserveText(check.reserve)}`],
    { ink: check.reserve < 1 ? 'bad' : 'ink' },
  )
  labelJoints(view, scene)
  view.dimension([0, 0], [foot[0], foot[1]], 'left')
  figure.view(view)
  return arms
}

/** Limits, spring, motor and drive of each joint; places for the labels of these parts go into `spots`. */
function drawJoints(view: View, scene: Scene, failing: Spot | undefined, spots: Map<Spot, Point>): void {
  const { knee, pose, links } = scene
  for (const { joint, limits, drumTorque, drive, spring } of scene.joints) {
    const centre: Point = joint === 'hip' ? [0, 0] : knee
    const base = joint === 'hip' ? 0 : pose.hip
    limitsOf(view, limits, centre, base, pose[joint], links)
    if (spring !== undefined) {
      const line = failing === `${joint}Spring` ? 'bad' : 'thick'
      spots.set(`${joint}Spring`, drawSpring(view, spring, { joint, centre, base, angle: pose[joint], line }))
    }
    if (drive === undefined) continue
    const axis: Point = scene.throughHip ? [0, 0] : centre
    const motor = polar(axis, drive.distance, motorAngle(scene, joint))
    if (drive.distance > 0)
      view.circle({ centre: axis, radius: drive.drum }, 'thin').circle({ centre: motor, radius: drive.pinion }, 'thin')
    if (drive.can !== undefined) view.circle({ centre: motor, radius: drive.can / 2 }, failing === `${joint}Motor` ? 'bad' : 'hidden')
    spans(view, drive, drumTorque ?? 0, [axis, motor], failing === `${joint}Drive`)
    spots.set(`${joint}Drive`, polar(axis, drive.drum, Math.PI / 4)).set(`${joint}Motor`, motor)
  }
}

/** Angle, limits and torque of each joint at the joint, sizes of its drive at the drum. */
function labelJoints(view: View, scene: Scene): void {
  const { knee, pose } = scene
  for (const { joint, torque, limits, drive } of scene.joints) {
    const centre: Point = joint === 'hip' ? [0, 0] : knee
    const [low, high] = limits.map((limit) => plain(degrees(limit), 3))
    view.label(centre, [
      `${joint} ${plain(degrees(pose[joint]), 3)}°`,
      `(${low} to ${high}°)`,
      ...(torque === undefined ? [] : [`${plain(torque, 3)} N m`]),
    ])
    if (drive !== undefined)
      view.label(
        polar(scene.throughHip ? [0, 0] : centre, drive.drum, joint === 'hip' ? 2.4 : -0.6),
        [`${scene.throughHip ? `${joint} ${drive.turned}` : drive.name} Ø${plain(2 * drive.drum, 3)}`, ...drive.lines],
        { ink: 'move' },
      )
  }
}

/**
 * Where the motor of a joint is seen from its drum. The hip's is drawn above it, since no place is given; the knee's on the upper link, or on the body next
 * to the hip's.
 */
function motorAngle({ knee, throughHip }: Scene, joint: string): number {
  if (throughHip) return Math.PI / 2 + (joint === 'hip' ? 0.55 : -0.55)
  return joint === 'hip' ? Math.PI / 2 : Math.atan2(-knee[1], -knee[0])
}

/** Crank, rod and rocker of a knee that is driven from the hip axis. */
function rodOf(view: View, { rod, knee, links }: Scene, heavy: boolean, spots: Map<Spot, Point>): void {
  if (rod === undefined) return
  const { crankPin, rockerPin } = rod
  view
    .line([[0, 0], crankPin], 'thick')
    .line([knee, rockerPin], 'thick')
    .line([crankPin, rockerPin], heavy ? 'bad' : 'thick')
  for (const centre of [crankPin, rockerPin]) view.circle({ centre, radius: links.lowerDepth / 9 }, 'thick', 'paper')
  spots.set('rod', [(crankPin[0] + rockerPin[0]) / 2, (crankPin[1] + rockerPin[1]) / 2])
  view.label(spots.get('rod') as Point, ['rod, crank at', `${plain(degrees(rod.crankAngle), 3)}° from down`])
}

/** Joint limits as an arc with the present angle ticked. `base` is the angle of the link above. */
function limitsOf(view: View, [low, high]: readonly [number, number], centre: Point, base: number, now: number, links: LinkSizes): void {
  const radius = 0.42 * Math.min(links.upper, links.lower)
  const zero = base - Math.PI / 2
  view.arc({ centre, radius }, zero + low, zero + high, 'fine')
  for (const [at, line] of [
    [low, 'thin'],
    [high, 'thin'],
    [now, 'thick'],
  ] as const)
    view.line([polar(centre, radius * 0.93, zero + at), polar(centre, radius * 1.07, zero + at)], line)
}

/** Farthest reach of the foot, at the knee limit nearest to straight. */
function reach(view: View, [low, high]: readonly [number, number], { upper, lower }: LinkSizes): void {
  const straightest = low <= 0 && high >= 0 ? 0 : Math.min(Math.abs(low), Math.abs(high))
  const radius = Math.sqrt(upper ** 2 + lower ** 2 + 2 * upper * lower * Math.cos(straightest))
  view.arc({ centre: [0, 0], radius }, -Math.PI / 2 - 0.13, -Math.PI / 2 + 0.13, 'other')
  view.label(polar([0, 0], radius, -Math.PI / 2 + 0.13), `reach ${plain(radius, 3)}`)
}

function ground(view: View, foot: Point, { upper, lowerDepth }: LinkSizes): void {
  const y = foot[1] - lowerDepth / 8
  const half = upper * 0.28
  view.line([
    [foot[0] - half, y],
    [foot[0] + half, y],
  ])
  const step = half / 6
  for (let i = -6; i < 6; i++)
    view.line(
      [
        [foot[0] + i * step + step, y],
        [foot[0] + i * step, y - step * 0.8],
      ],
      'fine',
    )
}

/** The force on the foot with its line of action and its arms about the joints. */
function forces(view: View, { force: [forward, up], knee, foot, links }: Scene): { readonly hip: number; readonly knee: number } {
  const size = Math.hypot(forward, up)
  if (!(size > 0)) return { hip: 0, knee: 0 }
  const direction: Point = [-forward / size, up / size]
  view.arrow(foot, Math.atan2(direction[1], direction[0]), size, size / FORCE_LENGTH)
  const tall = -foot[1] + links.upperDepth
  view.line([foot, [foot[0] + (direction[0] / direction[1]) * tall, foot[1] + tall]], 'other')
  const arm = (joint: Point) => {
    const off = minus(joint, foot)
    const along = off[0] * direction[0] + off[1] * direction[1]
    const near: Point = [foot[0] + along * direction[0], foot[1] + along * direction[1]]
    const reach = distance(joint, near)
    if (reach > 0.5)
      view
        .line([joint, near], 'fine')
        .label([(joint[0] + near[0]) / 2, (joint[1] + near[1]) / 2], `arm ${plain(reach, 4)}`, { ink: 'force', end: 'dot' })
    return reach
  }
  return { hip: arm([0, 0]), knee: arm(knee) }
}
