import { significant } from '../../units/index.js'
import { JOINTS } from '../numbers.js'
import { type Block, heading, led, type Page, points, steps, table, text } from '../report/blocks.js'
import { markdownPage } from '../report/markdown-blocks.js'
import type { ControlSheet } from './control.js'
import type { JointControl } from './control-joint.js'

/** The control sheet as Markdown. */
export const controlText = (sheet: ControlSheet): string => markdownPage(controlPage(sheet))

/** Angles and torques of a knee that a rod drives. */
const throughBlocks = (through: ControlSheet['throughHip']): Block[] =>
  through === undefined
    ? []
    : [
        heading('Knee through the hip'),
        points(through.rules),
        table(
          'Drum and motor of the knee, thigh straight down',
          ['knee', 'drum', 'motor', 'turns of the drum for one of the knee'],
          through.rows.map((one) => [
            one.kneeAngle,
            one.drumAngle,
            `${significant(one.motorAngle.in('turn'), 5)} turn`,
            significant(one.ratio.si, 4),
          ]),
        ),
      ]

/** The control sheet as a page. @internal */
export function controlPage(sheet: ControlSheet): Page {
  const { motors, joints, gravity, leg } = sheet
  const rows: readonly (readonly [string, (one: JointControl) => unknown])[] = [
    ['motor turns per joint turn, with sign', ({ ratio, sign }) => significant(sign * ratio.si, 5)],
    ['joint limits', ({ jointLimits: [from, to] }) => `${from} to ${to}`],
    ['motor at these limits', ({ motorLimits: [a, b] }) => `${significant(a.in('turn'), 5)} to ${significant(b.in('turn'), 5)} turn`],
    ['encoder counts per degree of the joint', ({ countsPerAngle }) => significant(countsPerAngle.in('count/deg'), 5)],
    ['joint torque per peak phase ampere', (one) => one.jointTorquePerPeakAmpere],
    ['joint torque per rms phase ampere', (one) => one.jointTorquePerRmsAmpere],
    ['torque of standing (feed-forward, foot loaded)', (one) => one.standTorque],
    ['drag of the motor (feed-forward, with the sign of the speed)', ({ dragTorque, dragCurrent }) => `${dragTorque}, ${dragCurrent}`],
    ['share of the torque lost in the drive', (one) => significant(one.driveLoss.si, 2)],
    ['stiffness of the drive at the joint', (one) => one.driveStiffness],
    ['inertia of the rotor at the joint', (one) => one.reflectedInertia],
    ['resonance, motor held / free', ({ gains }) => `${gains.motorLocked} / ${gains.motorFree}`],
    ['highest sensible bandwidth', ({ gains }) => `${gains.bandwidth} (${gains.limitedBy})`],
    ['highest sensible stiffness gain, joint / motor', ({ gains }) => `${gains.stiffness} / ${gains.motorStiffness}`],
    ['damping gain with it, joint / motor', ({ gains }) => `${gains.damping} / ${gains.motorDamping}`],
    ['motor torque ripple of one count through it', ({ gains }) => gains.ripple],
  ]
  const blocks = [
    heading('Conventions'),
    points(sheet.conventions),
    heading('Cautions'),
    points(sheet.cautions),
    heading('Motors'),
    table(
      'The motors in named conventions',
      ['', ...JOINTS],
      [
        ['pole pairs', motors.hip.polePairs ?? 'not given: count them', motors.knee.polePairs ?? 'not given: count them'],
        ['torque per peak phase ampere', motors.hip.torqueConstants.peakPhase, motors.knee.torqueConstants.peakPhase],
        ['the same, magnets warm', motors.hip.warmTorqueConstant, motors.knee.warmTorqueConstant],
        ['torque per rms phase ampere', motors.hip.torqueConstants.rmsPhase, motors.knee.torqueConstants.rmsPhase],
        ['torque per power-invariant q ampere', motors.hip.torqueConstants.powerInvariant, motors.knee.torqueConstants.powerInvariant],
        ['phase resistance (half of terminal to terminal), 20 degC', motors.hip.phaseResistance, motors.knee.phaseResistance],
        ['the same with the winding as hot as walking makes it', motors.hip.hottestPhaseResistance, motors.knee.hottestPhaseResistance],
      ],
    ),
    heading('Signs and phases, step by step'),
    steps(sheet.commissioning),
    heading('Joints'),
    table(
      'Numbers of each joint',
      ['', ...JOINTS],
      rows.map(([name, of]) => [name, ...JOINTS.map((joint) => of(joints[joint]))]),
    ),
    text(
      `Gravity feed-forward${sheet.throughHip === undefined ? '' : ' of the joints, not of the drums'}, leg in the air and the body level: hip ${gravity.thigh} × sin(hip) + ${gravity.shank} × sin(hip + knee); knee ${gravity.shank} × sin(hip + knee).`,
    ),
    ...throughBlocks(sheet.throughHip),
    heading('Current limits and what each protects'),
    table(
      'Current limits',
      [
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
      ],
      JOINTS.flatMap((joint) =>
        joints[joint].currentLimits.map((one) => [
          joint,
          one.what,
          one.duration ?? '',
          one.cautious,
          one.peakPhase,
          one.rmsPhase,
          one.jointTorque,
          one.condition,
          one.protects,
          one.cautiousBy,
        ]),
      ),
    ),
    text(
      'Each limit is the least over cold, ordinary and hot air, a new and a year-old cord, and a pretension set too low and too high. Set the first column: it has every uncertain value at its unfavourable end. The second one takes their typical values, and needs a test stand behind it.',
    ),
    ...JOINTS.filter((joint) => joints[joint].failsAtAnyCurrent.length > 0).flatMap((joint) => [
      led(
        `No current limit helps at the ${joint}:`,
        'these checks fail without any torque in one of those conditions, some of them only at the unfavourable ends of the ranges.',
      ),
      points(joints[joint].failsAtAnyCurrent),
    ]),
    ...JOINTS.filter((joint) => joints[joint].beyondMaximum.length > 0).flatMap((joint) => [
      led(`Beyond the absolute maximum of the ${joint}:`, ''),
      points(joints[joint].beyondMaximum),
    ]),
    heading('Gains: why these and not more'),
    ...JOINTS.flatMap((joint) => [led(joint, ''), points(joints[joint].gains.reasoning)]),
    heading('Torque to current'),
    table(
      'Current for a torque of the joint, losses counted',
      ['joint', 'joint torque', 'magnets at 20 degC, peak phase', 'magnets warm from walking, peak phase'],
      JOINTS.flatMap((joint) => joints[joint].torqueTable.map((one) => [joint, one.jointTorque, one.cold, one.warm])),
    ),
    text('The table shows how current and torque go together, up to the typical maximum. The first column of the limits comes first.'),
    heading('Homing that finds a slipped cord'),
    table(
      'Homing of each joint',
      ['joint', 'current', 'joint torque', 'speed, at most', 'counts from stop to stop', 'tolerance', 'smallest slip that shows'],
      JOINTS.map((joint) => {
        const { homing } = joints[joint]
        return [
          joint,
          homing.current,
          homing.jointTorque,
          homing.speed,
          Math.round(homing.countsBetweenStops.si),
          Math.ceil(homing.tolerance.si),
          homing.smallestSlip,
        ]
      }),
    ),
    table(
      'What to write',
      ['joint', 'motor at the lower stop', 'motor at the upper stop', 'soft limits of the joint', 'soft limits of the motor'],
      JOINTS.map((joint) => {
        const { writeAtStops, inside, softLimits, softMotorLimits, hipHeldAt } = joints[joint].homing
        const turns = (x: { in(unit: 'turn'): number }) => `${significant(x.in('turn'), 5)} turn`
        return [
          joint,
          turns(writeAtStops[0]),
          turns(writeAtStops[1]),
          softLimits?.join(' to ') ?? `none: the drive winds up by so much that ${inside} at each end leave nothing between the stops`,
          softMotorLimits?.map(turns).join(' to ') ?? (hipHeldAt === undefined ? 'none' : 'they move with the hip'),
        ]
      }),
    ),
    steps(joints.hip.homing.procedure),
    heading('Encoder over a shaft magnet'),
    table(
      'Largest error by gap, offset and tilt',
      [
        'gap',
        'offset of sensor and magnet',
        'tilt of each',
        'field',
        'error at the motor',
        ...JOINTS.map((joint) => `at the ${joint}`),
        'torque left',
      ],
      sheet.encoder.map((one) => [
        one.gap,
        one.offset,
        one.tilt,
        one.field,
        one.atMotor,
        ...JOINTS.map((joint) => one.atJoint[joint]),
        one.torqueLeft === undefined ? 'pole pairs not given' : significant(one.torqueLeft.si, 3),
      ]),
    ),
    heading('Supply'),
    points(sheet.supply.steps),
    heading('Assumed values'),
    table(
      'Assumed values and their reasons',
      ['what', 'value', 'reason'],
      sheet.assumed.map((one) => [one.what, one.value, one.why]),
    ),
  ]
  return { title: `${leg.name}: control sheet`, blocks }
}
