import { significant } from '../../units/index.js'
import { entriesOfJoints, jointWords } from '../numbers.js'
import { type Block, heading, led, type Page, points, steps, text } from '../report/blocks.js'
import { markdownPage } from '../report/markdown-blocks.js'
import type { ControlSheet } from './control-sheet.js'
import { homingBlocks, jointTable, limitBlocks, motorTable } from './control-tables.js'
import { phrase, table } from './sheet-units.js'

/** The control sheet as Markdown. */
export const controlText = (sheet: ControlSheet): string => markdownPage(controlPage(sheet))

/** Angles and torques of a knee that is driven through the hip. */
const throughBlocks = (through: ControlSheet['throughHip']): Block[] =>
  through === undefined
    ? []
    : [
        heading('Knee through the hip'),
        points(through.rules),
        table(
          'Drum and motor of the knee, upper link straight down',
          ['knee', 'drum', 'motor', 'turns of the drum for one of the knee'],
          through.rows.map((row) => [
            row.kneeAngle,
            row.drumAngle,
            `${significant(row.motorAngle.in('turn'), 5)} turn`,
            significant(row.ratio.si, 4),
          ]),
        ),
      ]

/** The control sheet as a page. @internal */
export function controlPage(sheet: ControlSheet): Page {
  const { joints, leg } = sheet
  const blocks = [
    heading('Conventions'),
    points(sheet.conventions),
    heading('Cautions'),
    points(sheet.cautions),
    heading('Motors'),
    motorTable(sheet),
    heading('Signs and phases, step by step'),
    steps(sheet.commissioning),
    heading('Joints'),
    jointTable(sheet),
    text(gravityText(sheet)),
    ...throughBlocks(sheet.throughHip),
    heading('Current limits and what each protects'),
    ...limitBlocks(sheet),
    heading('Gains: why these and not more'),
    ...entriesOfJoints(joints).flatMap(([joint, { gains }]) => [led(jointWords(joint), ''), points(gains.reasoning)]),
    heading('Torque to current'),
    table(
      'Current for a torque of the joint, losses counted',
      ['joint', 'joint torque', 'magnets at 20 °C, peak phase', 'magnets warm from walking, peak phase'],
      entriesOfJoints(joints).flatMap(([joint, { torqueTable }]) =>
        torqueTable.map((row) => [jointWords(joint), row.jointTorque, row.cold, row.warm]),
      ),
    ),
    text('The table shows how current and torque go together, up to the typical maximum. The first column of the limits comes first.'),
    ...homingBlocks(sheet),
    heading('Encoder over a shaft magnet'),
    encoderTable(sheet),
    heading('Supply'),
    points(sheet.supply.steps),
    heading('Assumed values'),
    table(
      'Assumed values and their reasons',
      ['what', 'value', 'reason'],
      sheet.assumed.map((row) => [row.what, row.value, row.why]),
    ),
  ]
  return { title: `${leg.name}: control sheet`, blocks }
}

function gravityText({ gravity: { thigh, shank, sideways, springs }, throughHip }: ControlSheet): string {
  const upright = phrase`Gravity feed-forward${throughHip === undefined ? '' : ' of the joints, not of the drums'}, leg in the air and the body level: hip ${thigh} × sin(hip) + ${shank} × sin(hip + knee); knee ${shank} × sin(hip + knee).`
  const beside =
    springs.length === 0
      ? ''
      : ` Subtract the torque of the springs on the joints: ${springs.map((spring) => phrase`${spring.joint} ${spring.torque} at ${spring.angle}`).join('; ')}.`
  return sideways === undefined
    ? upright + beside
    : phrase`${upright} Sideways hip, leg straight down: ${sideways.level} × cos(angle) + ${sideways.hanging} × sin(angle), besides what sits between both hip axes.${beside}`
}

const encoderTable = (sheet: ControlSheet): Block =>
  table(
    'Largest error by gap, offset and tilt',
    [
      'gap',
      'offset of sensor and magnet',
      'tilt of each',
      'field',
      'error at the motor',
      ...entriesOfJoints(sheet.joints).map(([joint]) => `at the ${jointWords(joint)}`),
      'torque left',
    ],
    sheet.encoder.map((row) => [
      row.gap,
      row.offset,
      row.tilt,
      row.field,
      row.atMotor,
      ...entriesOfJoints(row.atJoint).map(([, error]) => error),
      row.torqueLeft === undefined ? 'pole pairs not given' : significant(row.torqueLeft.si, 3),
    ]),
  )
