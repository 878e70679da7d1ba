import { Quantity, refuse } from '../units/index.js'
import type { Leg } from './document/describe.js'
import type { LegData } from './document/fields.js'
import { rejectNotComputed } from './document/not-computed.js'
import type { LegNumbers } from './leg-numbers.js'
import { NoValueError } from './no-value.js'
import { type PinSize, pinOf } from './schema/tables.js'
import { SECOND_STAGE, secondStage } from './second-stage.js'

/** Values that a leg is assessed with: all typical, or every uncertain one at its unfavourable or favourable end. */
export type End = 'pessimistic' | 'typical' | 'optimistic'

/** Every quantity of a leg as its SI number: the form that sweeps vary. */
export const legNumbers = (leg: Leg | LegData): LegNumbers => {
  if (typeof leg !== 'object' || leg === null || typeof leg.environment !== 'object')
    refuse('leg', 'leg', leg, 'must be a leg as describeLeg returns it')
  const { defaults: _, ...data } = leg as Leg
  rejectNotComputed(data)
  return si(data) as LegNumbers
}

function si(value: unknown): unknown {
  if (value instanceof Quantity) return value.si
  if (Array.isArray(value)) return value.map(si)
  if (typeof value !== 'object' || value === null) return value
  const result: Record<string, unknown> = {}
  for (const name in value) result[name] = si((value as Record<string, unknown>)[name])
  return result
}

/** The upright joints of a leg, hip and knee. */
export const JOINTS = ['hip', 'knee'] as const
/** An upright joint of a leg: hip or knee. */
export type Joint = (typeof JOINTS)[number]

/** A joint that may have a motor: hip, knee, or the sideways hip. */
export type DrivenJoint = Joint | 'sidewaysHip'
/** A value for each driven joint. The sideways hip has one where a motor drives it. */
export type OfDrivenJoints<T> = { readonly [J in Joint]: T } & {
  /** Value of the sideways hip; absent where no motor drives it. */
  readonly sidewaysHip?: T
}
/** Calculates a value for each driven joint of a leg. */
export const ofDrivenJoints = <T>(x: LegNumbers, of: (joint: DrivenJoint) => T): OfDrivenJoints<T> =>
  Object.fromEntries(drivenJoints(x).map((joint) => [joint, of(joint)])) as unknown as OfDrivenJoints<T>
/** Each driven joint with its value, hip and knee first. */
export const entriesOfJoints = <T>(of: OfDrivenJoints<T>): readonly (readonly [DrivenJoint, T])[] =>
  (['hip', 'knee', 'sidewaysHip'] as const).flatMap((joint) => {
    const one = of[joint]
    return one === undefined ? [] : [[joint, one] as const]
  })
/** The joints of a leg that motors drive: hip and knee, and a sideways hip that nothing else holds. */
export const drivenJoints = ({ joints: { sidewaysHip } }: LegNumbers): readonly DrivenJoint[] =>
  sidewaysHip === undefined || sidewaysHip.drive.kind === 'held' ? JOINTS : [...JOINTS, 'sidewaysHip']
/** The name of a joint in words. */
export const jointWords = (joint: DrivenJoint): string =>
  joint === 'sidewaysHip' ? 'sideways hip' : (joint as string) === SECOND_STAGE ? 'knee, second stage' : joint

/** Where to look from to see the positive angles of a joint turn counter-clockwise. */
export const seenFrom = (joint: DrivenJoint): string => (joint === 'sidewaysHip' ? 'from its front' : 'from the robot’s left')

/** A text of each driven joint: once where all agree, otherwise each with its joint. */
export function ofJointsInWords(x: LegNumbers, of: (joint: DrivenJoint) => string): string {
  const texts = drivenJoints(x).map((joint) => [joint, of(joint)] as const)
  const [[, first]] = texts as [readonly [DrivenJoint, string]]
  return texts.every(([, text]) => text === first) ? first : texts.map(([joint, text]) => `${text} (${jointWords(joint)})`).join(', ')
}

type JointNumbers = LegNumbers['joints'][Joint]
type DriveOf<K extends JointNumbers['drive']['kind']> = Extract<JointNumbers['drive'], { readonly kind: K }>

/** The drive of a joint, where it is of that kind. Throws a `NoValueError` where it is of another one. */
export function driveOf<K extends JointNumbers['drive']['kind']>(x: LegNumbers, joint: DrivenJoint, kind: K): DriveOf<K> {
  const drive = anyDriveOf(x, joint)
  if (drive.kind === kind) return drive as DriveOf<K>
  throw new NoValueError(`the ${jointWords(joint)} has no ${kind} drive`)
}
/** The drive of a joint of any kind, and the second stage of a knee that belt or cord drives through the hip. */
const anyDriveOf = (x: LegNumbers, joint: DrivenJoint): JointNumbers['drive'] =>
  (joint as string) === SECOND_STAGE ? secondStage(x) : jointOf(x, joint).drive
/** A kind of drive. */
export type DriveKind = JointNumbers['drive']['kind']
/** A driven joint of the document. The sideways hip has neither pin nor shaft of its own. */
export function jointOf(x: LegNumbers, joint: DrivenJoint): JointNumbers {
  const found = x.joints[joint]
  if (found === undefined) throw new NoValueError(`the leg has no ${jointWords(joint)}`)
  return found as JointNumbers
}
/** How a joint is driven. */
export const driveKindOf = (x: LegNumbers, joint: DrivenJoint): DriveKind => anyDriveOf(x, joint).kind
/** The driven joints of one kind of drive. */
export const drivenBy = (x: LegNumbers, kind: DriveKind): readonly DrivenJoint[] =>
  drivenJoints(x).filter((joint) => driveKindOf(x, joint) === kind)
/** The joints that cords drive. */
export const cordJoints = (x: LegNumbers): readonly DrivenJoint[] => drivenBy(x, 'cord')
/** Whether a joint is driven by cord. */
export const hasCord = (x: LegNumbers, joint: DrivenJoint): boolean => driveKindOf(x, joint) === 'cord'

/** The entry of a section by its name. Throws a `NoValueError` where a part of the leg is missing. */
export function partOf<T>(section: { readonly [name: string]: T }, name: string | undefined, what: string): T {
  const part = name === undefined ? undefined : section[name]
  if (part === undefined) throw new NoValueError(`the leg has no ${what}`)
  return part
}
/** Motor of a joint; below, its controller, plate, pin and boss. */
export const motorOf = (x: LegNumbers, joint: DrivenJoint) => partOf(x.motors, jointOf(x, joint).motor, `motor at the ${jointWords(joint)}`)
export const controllerOf = (x: LegNumbers, joint: DrivenJoint) =>
  partOf(x.controllers, jointOf(x, joint).controller, `controller at the ${jointWords(joint)}`)
export const plateOf = (x: LegNumbers, joint: DrivenJoint) => partOf(x.plates, jointOf(x, joint).plate, `plate at the ${jointWords(joint)}`)
export const pinAt = (x: LegNumbers, joint: Joint) => partOf(x.pins, x.joints[joint].pin, `pin at the ${joint}`)
/** The size of a joint's pin. */
export const pinSizeAt = (x: LegNumbers, joint: Joint): PinSize => pinOf(pinAt(x, joint).size)
export const bossAt = (x: LegNumbers, joint: Joint) => partOf(x.bosses, x.joints[joint].boss, `boss at the ${joint}`)
/** The hip shaft and its bearings. */
export const shaftOf = (x: LegNumbers) => partOf(x.shafts, x.joints.hip.shaft, 'hip shaft')
export const bearingsOf = (x: LegNumbers) => partOf(x.bearings, shaftOf(x).bearings, 'hip bearings')
/** The bonded end of a joint's cord; absent where its ends are made otherwise. */
export const bondedEndOf = (x: LegNumbers, joint: DrivenJoint) => {
  const { ends, end } = driveOf(x, joint, 'cord')
  return ends === 'bondedFerrule' && end !== undefined ? x.ends[end] : undefined
}
/** Still or moving air of the document, by name. */
export const airNamed = (x: LegNumbers, name: string) => partOf(x.loadCases.airs, name, `air called ${name}`)
/** Joint limits as a range. */
export const rangeOf = (x: LegNumbers, joint: DrivenJoint) => jointOf(x, joint).range
/** The gaits that every leg has. */
export const gaitNamed = (x: LegNumbers, name: 'walk' | 'trot') => partOf(x.gaits, name, `gait called ${name}`)
/** How long a blocked leg pushes before it is switched off. */
export function stallTimeOf({ loadCases }: LegNumbers): number {
  const { stall } = loadCases.events
  if (stall?.kind === 'stall') return stall.time
  throw new NoValueError('the leg has no event called stall')
}
/** Days walked in a season. */
export const seasonDays = (x: LegNumbers): number => partOf(x.loadCases.ages, 'season', 'age called season').daysWalked
/** Outer sizes of the box section of a link. */
export function boxOf(x: LegNumbers, link: 'upper' | 'lower') {
  const { box, wall } = x.links[link].section
  if (box === undefined) throw new NoValueError(`the ${link} link has no box section`)
  return { ...box, wall }
}
/** The toes of the foot. */
export function toesOf(x: LegNumbers) {
  if (x.foot.kind === 'toes') return x.foot
  throw new NoValueError('the foot has no toes')
}
