import { boxSection } from '../../structures/index.js'
import type { Quantity } from '../../units/index.js'
import type { Leg } from '../document/describe.js'
import { legNumbers } from '../numbers.js'
import { controlSheet } from '../plans/control.js'
import type { ControlSheet } from '../plans/control-sheet.js'
import { type ThroughGeometry, throughGeometry } from '../plans/through-geometry.js'
import { type Driven, driveNumbers, largestTorque } from './drive-numbers.js'
import { type LinkBody, linkBodies } from './link-bodies.js'

/** Options of `legUrdf`. */
export interface UrdfOptions {
  /** Name of the robot in the file. Default: `leg`. */
  readonly name?: string
  /** On which side of the body the leg is. Default: left. */
  readonly side?: 'left' | 'right'
}

const JOINTS = ['hip', 'knee'] as const

/**
 * The leg in the Unified Robot Description Format for simulators: body, hip, upper link, lower link and foot, with masses, inertias, and boxes as shapes;
 * joints with limits of angle, torque, speed, and friction. Frames have x forward, y left, z up; zero is the leg straight down.
 *
 * Links have the mass, centre and inertia of the load cases, with motors, plates, sinks and counterweights where they are mounted; the hip link between the
 * two hip axes has no mass. The foot is a ball as thick as its toes, with its middle at the foot point. The torque limit is the largest that the
 * control sheet allows for any time. The speed limit is the speed of the motor without load at the voltage of the supply, or that of the gearbox. Friction is
 * the drag of the drive. A sideways hip that is held has its holding torque and no speed.
 *
 * The format cannot describe springs, the compliance of the drives, rotor inertia, rods or couplings. A knee that is driven from the hip axis has the lowest
 * torque and speed over its travel. The torque that its drive adds at the hip is left out.
 */
export function legUrdf(leg: Leg, options: UrdfOptions = {}): string {
  const { name = 'leg', side = 'left' } = options
  const { links, foot, robot } = leg
  const offset = (side === 'left' ? 1 : -1) * links.hipOffset.si
  const sheet = controlSheet(leg)
  const through = throughGeometry(legNumbers(leg))
  const bodies = linkBodies(leg)
  const lower = links.lower
  const coupled =
    through === undefined ? '' : `; a ${through.kind} drives the knee from the hip axis: limits of the knee are the least over its travel`
  const comments = `mass of the robot ${robot.mass}, ${robot.legs} legs${coupled}; estimates for trained judgement`
  return [
    '<?xml version="1.0"?>',
    `<!-- ${escaped(leg.name)}: ${escaped(comments)} -->`,
    `<robot name="${escaped(name)}">`,
    '  <link name="body"/>',
    ...sidewaysHip(leg, sheet),
    '  <link name="hip_link"/>',
    ...upright('hip', 'hip_link', 'upper_link', `0 ${number(offset)} 0`, leg, limitsOf(leg, 'hip', sheet)),
    ...body('upper_link', links.upper, bodies.upper, drumOf(leg, 'hip')),
    ...upright('knee', 'upper_link', 'lower_link', `0 0 ${number(-links.upper.length.si)}`, leg, limitsOf(leg, 'knee', sheet, through)),
    ...body('lower_link', lower, bodies.lower, through === undefined ? drumOf(leg, 'knee') : undefined),
    `  <joint name="foot" type="fixed"><parent link="lower_link"/><child link="foot"/><origin xyz="0 0 ${number(-lower.length.si)}"/></joint>`,
    `  <link name="foot">${['visual', 'collision'].map((tag) => `<${tag}><geometry><sphere radius="${number(foot.thickness.si / 2)}"/></geometry></${tag}>`).join('')}</link>`,
    '</robot>',
    '',
  ].join('\n')
}

const number = (x: number) => String(Number(x.toPrecision(9)))
const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;').replaceAll('--', '-')

function sidewaysHip(leg: Leg, sheet: ControlSheet): string[] {
  const joint = leg.joints.sidewaysHip
  if (joint === undefined)
    return ['  <joint name="sideways_hip" type="fixed"><parent link="body"/><child link="hip_link"/><origin xyz="0 0 0"/></joint>']
  const { drive } = joint
  const limits = drive.kind === 'held' ? { effort: drive.torque.si, velocity: 0, friction: 0 } : limitsOf(leg, 'sidewaysHip', sheet)
  return revolute('sideways_hip', 'body', 'hip_link', '0 0 0', '1 0 0', joint.range, limits)
}

/** Torque, speed and friction at a joint. */
interface Limits {
  readonly effort: number
  readonly velocity: number
  readonly friction: number
}

/**
 * Torque, speed and friction of a joint. A knee that is driven through the hip has those of the drum on the hip axis, by the turns of the drum for one of
 * the knee where they are lowest. A gearbox turns no faster than its largest speed.
 */
function limitsOf(leg: Leg, joint: Driven, sheet: ControlSheet, through?: ThroughGeometry): Limits {
  const { signedRatio, friction } = driveNumbers(leg, joint)
  const of = leg.joints[joint] as NonNullable<Leg['joints'][Driven]>
  const motor = leg.motors[of.motor ?? '']
  const { highestSpeed } = of.drive as { readonly highestSpeed?: Quantity<'angularVelocity'> }
  const free = motor === undefined ? 0 : motor.speedConstant.times(leg.supply.voltage).si
  const speed = Math.min(free, highestSpeed?.si ?? free) / Math.abs(signedRatio)
  const max = through?.most((knee) => Math.abs(through.ratio(knee))) ?? 1
  const second = through === undefined ? undefined : leg.joints.knee.through
  const kept = second === undefined || second.kind === 'rod' ? 1 : second.efficiency.si
  const min = through === undefined ? 1 : -through.most((knee) => -Math.abs(through.ratio(knee)))
  return { effort: largestTorque(sheet, joint) * min * kept, velocity: speed / max, friction: friction * max }
}

const upright = (joint: 'hip' | 'knee', parent: string, child: string, xyz: string, leg: Leg, limits: Limits): string[] =>
  revolute(joint, parent, child, xyz, '0 1 0', leg.joints[joint].range, limits)

/** A joint that turns, with its limits. */
function revolute(
  name: string,
  parent: string,
  child: string,
  xyz: string,
  axis: string,
  { lowest, highest }: Leg['joints']['hip']['range'],
  { effort, velocity, friction }: Limits,
): string[] {
  const limit = `<limit lower="${number(lowest.si)}" upper="${number(highest.si)}" effort="${number(effort)}" velocity="${number(velocity)}"/>`
  return [
    `  <joint name="${name}" type="revolute">`,
    `    <parent link="${parent}"/><child link="${child}"/><origin xyz="${xyz}"/><axis xyz="${axis}"/>`,
    `    ${limit}<dynamics damping="0" friction="${number(friction)}"/>`,
    '  </joint>',
  ]
}

type Link = Leg['links']['upper']

/** The radius of the drum on a joint; nothing where there is none. */
function drumOf({ joints }: Leg, joint: (typeof JOINTS)[number]): readonly [radius: number, length: number] | undefined {
  const { drive } = joints[joint]
  if (drive.kind !== 'cord') return undefined
  const { centreLineRadius, grooveDiameter, length } = drive.drum
  return [centreLineRadius?.si ?? (grooveDiameter as Quantity<'length'>).si / 2, length.si]
}

/** A link with what is mounted on it, in the shape of its section, and the drum at its upper end as a picture. */
function body(
  name: string,
  link: Link,
  { mass, centre, inertia }: LinkBody,
  drum: readonly [radius: number, length: number] | undefined,
): string[] {
  const { wall, box } = link.section
  const [depth, width] = [box?.depth.si as number, box?.width.si as number]
  const { area, secondMoment, sidewaysSecondMoment } = boxSection.si({ width, depth, wall: wall.si })
  const l = link.length.si
  // What is mounted counts as points on the axis of the link.
  const about = (link.mass.si * (secondMoment + sidewaysSecondMoment)) / area
  const shape = `<box size="${number(depth)} ${number(width)} ${number(l)}"/>`
  const middle = `<origin xyz="0 0 ${number(-l / 2)}"/><geometry>${shape}</geometry>`
  const round =
    drum === undefined
      ? []
      : [
          `    <visual><origin xyz="0 0 0" rpy="1.57079633 0 0"/><geometry><cylinder radius="${number(drum[0])}" length="${number(drum[1])}"/></geometry></visual>`,
        ]
  return [
    `  <link name="${name}">`,
    `    <inertial><origin xyz="0 0 ${number(-centre)}"/><mass value="${number(mass)}"/>`,
    `      <inertia ixx="${number(inertia)}" ixy="0" ixz="0" iyy="${number(inertia)}" iyz="0" izz="${number(about)}"/></inertial>`,
    `    <visual>${middle}</visual>`,
    `    <collision>${middle}</collision>`,
    ...round,
    '  </link>',
  ]
}
