import type { Kind } from '../../../../units/index.js'
import { band, field, reference, word } from '../../../leaves.js'
import type { LegNumbers } from '../../../leg-numbers.js'
import { driveOf, type Joint, partOf } from '../../../numbers.js'
import { constant } from '../../../run/index.js'
import { beltOrCordOf, kneePulleyIsLarge, SECOND_STAGE } from '../../../second-stage.js'

const driveIn = (x: LegNumbers, joint: Joint) => driveOf(x, joint, 'belt')
const beltIn = (x: LegNumbers, joint: Joint) => partOf(x.belts, driveIn(x, joint).belt, 'belt')
type Belt = ReturnType<typeof beltIn>
type Drive = ReturnType<typeof driveIn>
type Numbers<T> = { [K in keyof T]: T[K] extends number ? K : never }[keyof T]

const ofBelt = (name: Numbers<Belt>, kind: Kind) =>
  field(`belt.${name}`, ['joint'], kind, (x, { joint }) => beltIn(x, joint)[name] as number)
const ofDrive = (name: Numbers<Drive>, kind: Kind) =>
  field(`beltDrive.${name}`, ['joint'], kind, (x, { joint }) => driveIn(x, joint)[name] as number)

export const pitch = ofBelt('pitch', 'length')
export const teeth = ofBelt('teeth', 'count')
export const width = ofBelt('width', 'length')
export const allowableTension = ofBelt('allowableTension', 'force')
export const breakingStrength = ofBelt('breakingStrength', 'force')
export const toothForce = ofBelt('toothForce', 'force')
export const mostTeeth = ofBelt('mostTeeth', 'count')
export const leastTeeth = ofBelt('leastTeeth', 'count')
export const axialRigidity = ofBelt('axialRigidity', 'axialRigidity')
export const thermalExpansion = ofBelt('thermalExpansion', 'thermalExpansion')
export const massPerLength = ofBelt('massPerLength', 'massPerLength')
export const toothRootWidth = ofBelt('toothRootWidth', 'length')
export const toothHeight = ofBelt('toothHeight', 'length')
export const flankAngle = ofBelt('flankAngle', 'angle')
export const clearance = ofBelt('clearance', 'length')
export const highestTemperature = ofBelt('highestTemperature', 'temperature')
export const friction = band(
  'belt.friction',
  'friction of the belt on its pulleys',
  ['joint'],
  'pull a strip of the belt over a pulley that is held, with a weight on its other end',
  (x, { joint }) => beltIn(x, joint).friction,
  { level: 'unverified', where: 'belts on printed and metal pulleys' },
)
export const pretensionLeft = band(
  'belt.pretensionLeft',
  'pretension that is left in the belt',
  ['joint'],
  'pluck a span and log its pitch for a month; the pitch goes as the root of the tension',
  (x, { joint }) => beltIn(x, joint).pretensionLeft,
)

export const smallTeeth = ofDrive('smallTeeth', 'count')
export const largeTeeth = ofDrive('largeTeeth', 'count')
export const centreDistance = ofDrive('centreDistance', 'length')
export const adjustment = ofDrive('adjustment', 'length')
export const pretensionSet = ofDrive('pretension', 'force')
export const efficiency = ofDrive('efficiency', 'ratio')
export const material = reference('beltDrive.material', ['joint'], 'material', (x, { joint }) => driveIn(x, joint).material)
/** Which pulley sits on the joint: of a drive the large one, of a belt that drives the knee through the hip either. */
export const jointPulley = word('beltDrive.jointPulley', ['joint'], (x, { joint }) => {
  const through = (joint as string) === SECOND_STAGE ? beltOrCordOf(x) : undefined
  return through?.kind !== 'belt' || kneePulleyIsLarge(through) ? ('large' as const) : ('small' as const)
})
/** Whether a motor turns the other pulley, which is then of steel. */
export const onMotor = word('beltDrive.onMotor', ['joint'], (_, { joint }) => (joint as string) !== SECOND_STAGE)
/** Pretension that is set over the one that was aimed at. */
export const settingScatter = band(
  'beltDrive.settingScatter',
  'pretension of the belt as it is set over the specified one',
  ['joint'],
  'set the tension ten times and pluck both spans after each',
  (x, { joint }) => {
    const { pretensionScatter: scatter } = driveIn(x, joint)
    return { low: 1 - scatter, typical: 1, high: 1 + scatter }
  },
  { level: 'assumption', where: 'scatter of the pretension that the specification gives' },
)

/** Factor on the strength of the belt for a load of a moment. */
export const onceFactor = constant('belt.onceFactor', {
  title: 'safety factor on the breaking strength of the belt for a rare load',
  kind: 'ratio',
  typical: 2,
  low: 1.5,
  high: 3,
  source: { level: 'assumption', where: 'half of the strength for loads that are rare' },
  measuredBy: 'pull three strips of the belt to failure, one of them after it has run for a month',
})
/** Density of the small pulley, whose material the document does not name. */
export const pinionDensity = constant('belt.smallPulleyDensity', {
  title: 'density of the small pulley',
  kind: 'density',
  typical: 7850,
  source: { level: 'assumption', where: 'a solid pulley of steel; aluminium has a third of it' },
})
