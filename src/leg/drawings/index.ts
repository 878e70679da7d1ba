import { type Drawing, drawingSvg, Figure, withTitleBlock } from '../../drawing/index.js'
import type { CheckResult } from '../check-result.js'
import { type DrivenJoint, drivenJoints, JOINTS, type Joint } from '../numbers.js'
import { knownOptions } from '../options.js'
import { PIVOTS } from '../parts/ball-bearings/pivots.js'
import type { Assessment } from '../result.js'
import { bearingDrawing } from './bearing.js'
import { beltDriveDrawing } from './belt-drive.js'
import { boltDrawing } from './bolt.js'
import { motorPatternDrawing, stackPatternDrawing } from './bolt-pattern.js'
import { cordDriveDrawing } from './cord-drive.js'
import { counterweightDrawing } from './counterweight.js'
import { strideDrawing, torqueSpeedDrawing } from './curves.js'
import { SECOND } from './drive-sizes.js'
import { Facts } from './facts.js'
import { ferruleDrawing } from './ferrule.js'
import { gearPairDrawing } from './gear-pair.js'
import { grooveDrawing } from './groove.js'
import { heatDrawing } from './heat.js'
import { legDrawing as drawLeg } from './leg.js'
import { motorDrawing } from './motor.js'
import { unlessNotDrawable } from './not-drawable.js'
import { outputStackDrawing } from './output-stack.js'
import { pinDrawing } from './pin.js'
import { plateHeatDrawing } from './plate-heat.js'
import { hasSidewaysCord, motorGroup, stackGroup } from './present.js'
import { reservesDrawing } from './reserves.js'
import { rodDriveDrawing } from './rod-drive.js'
import { shaftDrawing } from './shaft.js'
import { shaftEndDrawing } from './shaft-end.js'
import { springDrawing } from './spring.js'
import { throughDriveDrawing } from './through-drive.js'
import { rejectTitles, type TitleBlockOptions, titleBlockOf } from './title-block.js'
import { yearDrawing } from './year.js'

export { DRAWING_STYLE, toDxf, toTemplate } from '../../drawing/index.js'
export { parametersCsv } from './parameters.js'

/** A drawing of a leg with its picture. */
export interface LegDrawing extends Drawing {
  /** The picture as SVG. */
  readonly svg: string
}

/** Options of `legDrawings`. */
export interface LegDrawingOptions extends TitleBlockOptions {
  /**
   * Whether each picture carries its style and its title block, as a file needs them, or the page does (`DRAWING_STYLE`). Default: file.
   */
  readonly style?: 'file' | 'page'
  /** Drawings by name, such as `leg` or `pin-knee`. Default: all. */
  readonly only?: readonly string[]
}

type Draw = (facts: Facts) => Drawing | undefined

const ofCord: readonly (readonly [name: string, draw: (facts: Facts, joint: DrivenJoint) => Drawing | undefined])[] = [
  ['cord-drive', cordDriveDrawing],
  ['groove', grooveDrawing],
  ['ferrule', ferruleDrawing],
]

const ofMotor: typeof ofCord = [
  ['motor', motorDrawing],
  ['bolt-pattern-motor', motorPatternDrawing],
  ['heat', heatDrawing],
  ['plate-heat', plateHeatDrawing],
]

const ofJoint: readonly (readonly [name: string, draw: (facts: Facts, joint: Joint) => Drawing | undefined])[] = [
  ...ofCord,
  ['pin', pinDrawing],
  ['spring', springDrawing],
  ...ofMotor,
  ['torque-speed', torqueSpeedDrawing],
]

const ofDrive: readonly (readonly [name: string, draw: (facts: Facts, joint: DrivenJoint) => Drawing | undefined])[] = [
  ['belt-drive', beltDriveDrawing],
  ['gear-pair', gearPairDrawing],
  ['output-stack', outputStackDrawing],
]

/** The bolts of the stack and of the motors: one drawing for motors that share a group. */
function boltsOf(facts: Facts): (readonly [name: string, draw: Draw])[] {
  const [stack, hip, knee, sideways] = [
    stackGroup(facts),
    ...(['hip', 'knee', 'sidewaysHip'] as const).map((joint) => motorGroup(facts, joint)),
  ]
  const motor = (group: string, joint?: DrivenJoint) =>
    [`bolt-motor${joint === undefined ? '' : `-${joint}`}`, (facts: Facts) => boltDrawing(facts, group, 'motor', joint)] as const
  return [
    ...(stack === undefined ? [] : [['bolt-stack', (facts: Facts) => boltDrawing(facts, stack, 'stack')] as const]),
    ...(hip !== undefined && hip === knee ? [motor(hip)] : []),
    ...(hip !== undefined && hip !== knee ? [motor(hip, 'hip')] : []),
    ...(knee !== undefined && hip !== knee ? [motor(knee, 'knee')] : []),
    ...(sideways !== undefined && sideways !== hip && sideways !== knee ? [motor(sideways, 'sidewaysHip')] : []),
  ]
}

/** Every drawing by its name. */
const allOf = (facts: Facts): readonly (readonly [name: string, draw: Draw])[] => [
  ['leg', drawLeg],
  ['reserve-bars', reservesDrawing],
  ...JOINTS.flatMap((joint) => ofJoint.map(([name, draw]) => [`${name}-${joint}`, (facts: Facts) => draw(facts, joint)] as const)),
  ...[...(hasSidewaysCord(facts) ? ofCord : []), ...ofMotor].map(
    ([name, draw]) => [`${name}-sidewaysHip`, (facts: Facts) => draw(facts, 'sidewaysHip')] as const,
  ),
  ...drivenJoints(facts.leg.x).flatMap((joint) =>
    ofDrive.map(([name, draw]) => [`${name}-${joint}`, (facts: Facts) => draw(facts, joint)] as const),
  ),
  ...(['upper', 'lower'] as const).map((link) => [`counterweight-${link}`, (facts: Facts) => counterweightDrawing(facts, link)] as const),
  ...PIVOTS.map((pivot) => [`bearing-${pivot}`, (facts: Facts) => bearingDrawing(facts, pivot)] as const),
  ['rod-drive', rodDriveDrawing],
  ['through-drive', throughDriveDrawing],
  ['groove-through', (facts) => grooveDrawing(facts, SECOND)],
  ['ferrule-through', (facts) => ferruleDrawing(facts, SECOND)],
  ...boltsOf(facts),
  ['bolt-pattern-stack', stackPatternDrawing],
  ['hip-shaft', shaftDrawing],
  ['shaft-end', shaftEndDrawing],
  ['stride', strideDrawing],
  ['year', yearDrawing],
]

/**
 * Drawings of an assessed leg: the leg in the hardest pose of its governing check, drives by cord, belt, gear and
 * gearbox, direct drives, sections of its joints, heat, curves. Each has an
 * answer, a description and a table of its dimensions. A part that the leg does not have gives no drawing.
 */
export function legDrawings(assessment: Assessment, options: LegDrawingOptions = {}): readonly LegDrawing[] {
  knownOptions('legDrawings', options, OPTIONS)
  rejectTitles('legDrawings', options)
  const { only } = options
  const facts = new Facts(assessment)
  return allOf(facts).flatMap(([name, draw]) => {
    if (only !== undefined && !only.includes(name)) return []
    const drawing = drawn(name, () => draw(facts))
    return drawing === undefined ? [] : [finished(facts, drawing, options)]
  })
}

const OPTIONS = ['style', 'only', 'date', 'by', 'checkedBy'] as const
type Finish = Omit<LegDrawingOptions, 'only'>

/** A drawing with its title block and its picture; in a page, title and signatures are those of the page. */
function finished(facts: Facts, drawing: Drawing, options: Finish): LegDrawing {
  const { style = 'file' } = options
  const titleBlock = titleBlockOf(facts, drawing, options)
  const titled = titleBlock === undefined ? drawing : { ...drawing, titleBlock }
  const page = style === 'file' ? withTitleBlock(titled) : titled
  return { ...page, svg: drawingSvg(page, { style }) }
}

/**
 * A drawing; where a value that it needs cannot be calculated, a note that says which, so that the other pictures and the verdict beside them are there.
 * Every other error is a fault of the program, and passes.
 */
const drawn = <T extends Drawing | undefined>(id: string, draw: () => T): T | Drawing =>
  unlessNotDrawable(draw, ({ message }) => {
    const part = id.replaceAll('-', ' ')
    return new Figure({ id, title: `Drawing of the ${part}`, answer: `The ${part} cannot be drawn` })
      .text(`${message}.`)
      .say(`${message}.`)
      .done()
  })

/** One drawing of an assessed leg by its name, such as `leg` or `pin-knee`; `undefined` where the leg has no such part. */
export const legDrawingNamed = (assessment: Assessment, name: string, options: Finish = {}): LegDrawing | undefined =>
  legDrawings(assessment, { ...options, only: [name] })[0]

/** The leg in the hardest pose of one of its checks, the failing part marked, with its poses over stance and landing. */
export function legPoseDrawing(assessment: Assessment, check: CheckResult, options: Finish = {}): LegDrawing {
  knownOptions('legPoseDrawing', options, OPTIONS)
  rejectTitles('legPoseDrawing', options)
  const facts = new Facts(assessment)
  return finished(
    facts,
    drawn('leg', () => drawLeg(facts, check)),
    options,
  )
}
