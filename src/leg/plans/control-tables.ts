import { significant } from '../../units/index.js'
import { entriesOfJoints, jointWords } from '../numbers.js'
import { type Block, heading, led, points, steps, text } from '../report/blocks.js'
import type { JointControl, MotorControl } from './control-joint.js'
import type { ControlSheet } from './control-sheet.js'
import { wordsOfKind } from './drive-facts.js'
import { phrase, shown, table } from './sheet-units.js'

type Rows<T> = readonly (readonly [string, (row: T) => unknown])[]
const turnsOf = (x: { in(unit: 'turn'): number }) => `${significant(x.in('turn'), 5)} turn`
const capital = (words: string) => `${words[0]?.toUpperCase()}${words.slice(1)}`

const MOTOR_ROWS: Rows<MotorControl> = [
  ['pole pairs', (motor) => motor.polePairs ?? 'not given: count them'],
  ['torque per peak phase ampere', (motor) => motor.torqueConstants.peakPhase],
  ['the same, magnets warm', (motor) => motor.warmTorqueConstant],
  ['torque per rms phase ampere', (motor) => motor.torqueConstants.rmsPhase],
  ['torque per power-invariant q ampere', (motor) => motor.torqueConstants.powerInvariant],
  ['phase resistance (half of terminal to terminal), 20 °C', (motor) => motor.phaseResistance],
  ['the same with the winding as hot as walking makes it', (motor) => motor.hottestPhaseResistance],
]

const NONE = 'none calculated'
const JOINT_ROWS: Rows<JointControl> = [
  ['driven by', ({ drive }) => wordsOfKind(drive).drive],
  ['motor turns per joint turn, with sign', ({ ratio, sign }) => significant(sign * ratio.si, 5)],
  ['joint limits', ({ jointLimits: [from, to] }) => phrase`${from} to ${to}`],
  ['motor at these limits', ({ motorLimits: [a, b] }) => `${significant(a.in('turn'), 5)} to ${significant(b.in('turn'), 5)} turn`],
  ['encoder counts per degree of the joint', ({ countsPerAngle }) => significant(countsPerAngle.in('count/deg'), 5)],
  ['joint torque per peak phase ampere', (joint) => joint.jointTorquePerPeakAmpere],
  ['joint torque per rms phase ampere', (joint) => joint.jointTorquePerRmsAmpere],
  ['torque of standing (feed-forward, foot loaded)', (joint) => joint.standTorque],
  ['drag of the motor (feed-forward, with the sign of the speed)', ({ dragTorque, dragCurrent }) => phrase`${dragTorque}, ${dragCurrent}`],
  ['share of the torque lost in the drive', (joint) => significant(joint.driveLoss.si, 2)],
  ['stiffness of the drive at the joint', (joint) => joint.driveStiffness ?? NONE],
  ['free play at the joint', ({ freePlay }) => (freePlay.si === 0 ? 'none' : freePlay)],
  ['inertia of the rotor at the joint', (joint) => joint.reflectedInertia],
  [
    'resonance, motor held / free',
    ({ gains: { motorLocked, motorFree } }) => (motorLocked === undefined ? NONE : phrase`${motorLocked} / ${motorFree}`),
  ],
  ['highest sensible bandwidth', ({ gains }) => phrase`${gains.bandwidth} (${gains.limitedBy})`],
  ['highest sensible stiffness gain, joint / motor', ({ gains }) => phrase`${gains.stiffness} / ${gains.motorStiffness}`],
  ['damping gain with it, joint / motor', ({ gains }) => phrase`${gains.damping} / ${gains.motorDamping}`],
  ['motor torque ripple of one count through it', ({ gains }) => gains.ripple],
]

const headOf = (sheet: ControlSheet) => ['', ...entriesOfJoints(sheet.joints).map(([joint]) => jointWords(joint))]

/** The motors in named conventions. @internal */
export const motorTable = (sheet: ControlSheet): Block =>
  table(
    'The motors in named conventions',
    headOf(sheet),
    MOTOR_ROWS.map(([name, of]) => [name, ...entriesOfJoints(sheet.motors).map(([, motor]) => of(motor))]),
  )

/** Ratios, torques, stiffness and gains of each joint. @internal */
export const jointTable = (sheet: ControlSheet): Block =>
  table(
    'Numbers of each joint',
    headOf(sheet),
    JOINT_ROWS.map(([name, of]) => [name, ...entriesOfJoints(sheet.joints).map(([, joint]) => of(joint))]),
  )

const LIMIT_HEAD = [
  'joint',
  'limit',
  'for',
  'set to, peak phase',
  'typical values, peak phase',
  'rms phase',
  'joint torque',
  'lowest in',
  'protects',
  'what sets the first column',
]

/** Conditions of which each limit is the lowest. */
function corners(joints: readonly JointControl[]): string {
  const kinds = joints.map(({ drive }) => drive)
  const ages = [...new Set(kinds.flatMap((kind) => wordsOfKind(kind).ages ?? []))]
  const old = ages.length === 0 ? '' : `, a new and a year-old ${ages.join(' or ')}`
  const set = kinds.includes('cord') ? ', and a pretension set too low and too high' : ''
  return `Each limit is the least over cold, ordinary and hot air${old}${set}.`
}

/** Current limits and what each protects. @internal */
export function limitBlocks(sheet: ControlSheet): Block[] {
  const joints = entriesOfJoints(sheet.joints)
  return [
    table(
      'Current limits',
      LIMIT_HEAD,
      joints.flatMap(([joint, { currentLimits }]) =>
        currentLimits.map((currentLimit) => [
          jointWords(joint),
          currentLimit.what,
          currentLimit.duration ?? '',
          currentLimit.cautious,
          currentLimit.peakPhase,
          currentLimit.rmsPhase,
          currentLimit.jointTorque,
          currentLimit.condition,
          currentLimit.protects,
          currentLimit.cautiousBy,
        ]),
      ),
    ),
    text(
      `${corners(joints.map(([, joint]) => joint))} Set the first column: it has every uncertain value at its unfavourable end. The second one takes their typical values, and needs a test stand behind it.`,
    ),
    ...joints.flatMap(([joint, { failsAtAnyCurrent }]) =>
      failsAtAnyCurrent.length === 0
        ? []
        : [
            led(
              `No current limit helps at the ${jointWords(joint)}:`,
              'these checks fail without any torque in one of those conditions, some of them only at the unfavourable ends of the ranges.',
            ),
            points(failsAtAnyCurrent),
          ],
    ),
    ...joints.flatMap(([joint, { beyondMaximum }]) =>
      beyondMaximum.length === 0 ? [] : [led(`Beyond the absolute maximum of the ${jointWords(joint)}:`, ''), points(beyondMaximum)],
    ),
  ]
}

/** The homing run of each joint: what to set, what to write, and how. @internal */
export function homingBlocks(sheet: ControlSheet): Block[] {
  const joints = entriesOfJoints(sheet.joints)
  const procedures = new Map<string, string[]>()
  for (const [joint, { homing }] of joints) {
    const key = homing.procedure.join('\n')
    procedures.set(key, [...(procedures.get(key) ?? []), jointWords(joint)])
  }
  return [
    heading(
      joints.every(([, { drive }]) => drive === 'cord') ? 'Homing that finds a slipped cord' : 'Homing that finds what has slipped or worn',
    ),
    table(
      'Homing of each joint',
      ['joint', 'current', 'joint torque', 'speed, at most', 'counts from stop to stop', 'tolerance', 'smallest slip that shows'],
      joints.map(([joint, { homing }]) => [
        jointWords(joint),
        homing.current,
        homing.jointTorque,
        homing.speed,
        Math.round(homing.countsBetweenStops.si),
        Math.ceil(homing.tolerance.si),
        homing.smallestSlip,
      ]),
    ),
    table(
      'What to write',
      ['joint', 'motor at the lower stop', 'motor at the upper stop', 'soft limits of the joint', 'soft limits of the motor'],
      joints.map(
        ([
          joint,
          {
            homing: { writeAtStops, inside, softLimits, softMotorLimits, hipHeldAt },
          },
        ]) => [
          jointWords(joint),
          turnsOf(writeAtStops[0]),
          turnsOf(writeAtStops[1]),
          softLimits?.map(shown).join(' to ') ??
            phrase`none: the drive winds up by so much that ${inside} at each end leave nothing between the stops`,
          softMotorLimits?.map(turnsOf).join(' to ') ?? (hipHeldAt === undefined ? 'none' : 'they move with the hip'),
        ],
      ),
    ),
    ...[...procedures].flatMap(([key, of]) => [
      ...(procedures.size === 1 ? [] : [led(`${capital(of.join(', '))}:`, '')]),
      steps(key.split('\n')),
    ]),
  ]
}
