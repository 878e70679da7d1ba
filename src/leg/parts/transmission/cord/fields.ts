import { cordFibre, endEfficiency, type FibreName } from '../../../../capstan/index.js'
import { band, field, optional, ranged, reference, word } from '../../../leaves.js'
import type { LegNumbers } from '../../../leg-numbers.js'
import { type DrivenJoint, driveOf, type Joint, partOf, plateOf } from '../../../numbers.js'
import { constant } from '../../../run/index.js'
import type { Band } from '../../../schema/field.js'
import { SECOND_STAGE } from '../../../second-stage.js'

const cordAt = (x: LegNumbers, cord: string) => partOf(x.cords, cord, 'cord')
const cordDrive = (x: LegNumbers, joint: Joint) => driveOf(x, joint, 'cord')

export const diameter = field('cord.diameter', ['cord'], 'length', (x, { cord }) => cordAt(x, cord).diameter)
export const breakingStrength = field('cord.breakingStrength', ['cord'], 'force', (x, { cord }) => cordAt(x, cord).breakingStrength)
export const axialRigidity = field('cord.axialRigidity', ['cord'], 'axialRigidity', (x, { cord }) => cordAt(x, cord).axialRigidity)
export const thermalExpansion = field(
  'cord.thermalExpansion',
  ['cord'],
  'thermalExpansion',
  (x, { cord }) => cordAt(x, cord).thermalExpansion,
)
export const designFactor = field('cord.designFactor', ['cord'], 'ratio', (x, { cord }) => cordAt(x, cord).designFactor)
export const leastBendRatio = field('cord.leastBendRatio', ['cord'], 'ratio', (x, { cord }) => cordAt(x, cord).leastBendRatio)
export const pretensionLeft = band(
  'cord.pretensionLeft',
  'pretension that is left in the cord',
  ['cord'],
  'pluck a span and log its pitch for a month; the pitch goes as the root of the tension',
  (x, { cord }) => cordAt(x, cord).pretensionLeft,
)

const fibreOf = (x: LegNumbers, cord: string) => cordFibre(cordAt(x, cord).fibre as FibreName)
/** How the fibre creeps: by a thermally activated process (UHMWPE), or by a constant amount per decade of time. */
export const creepOfFibre = word('cord.fibre.creep', ['cord'], (x, { cord }) => fibreOf(x, cord).creep)
export const strengthOfFibre = field('cord.fibre.strength', ['cord'], 'stress', (x, { cord }) => fibreOf(x, cord).strength.si, {
  title: 'tensile strength of the fibre',
})
export const serviceTemperature = ranged(
  'cord.fibre.serviceTemperature',
  'service temperature of the fibre',
  ['cord'],
  'temperature',
  'keep a metre of cord under tension at that temperature for a day and measure its stretch',
  (x, { cord }) => fibreOf(x, cord).serviceTemperature,
)

export const arrangement = word('drive.arrangement', ['joint'], (x, { joint }) => cordDrive(x, joint).arrangement)
export const centreDistance = field('drive.centreDistance', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).centreDistance)
/** Pretension that is set over the one that was aimed at. */
export const settingScatter = band(
  'drive.settingScatter',
  'pretension of the cord as it is set over the specified one',
  ['joint'],
  'set the tension ten times and pluck both spans after each',
  (x, { joint }) => {
    const { pretensionScatter } = cordDrive(x, joint)
    return { low: 1 - pretensionScatter, typical: 1, high: 1 + pretensionScatter }
  },
  { level: 'assumption', where: 'scatter of the pretension that the specification gives' },
)
export const pretensionSet = field('drive.pretension', ['joint'], 'force', (x, { joint }) => cordDrive(x, joint).pretension)
export const hold = word('drive.hold', ['joint'], (x, { joint }) => cordDrive(x, joint).hold)
export const efficiency = field('drive.efficiency', ['joint'], 'ratio', (x, { joint }) => cordDrive(x, joint).efficiency)
export const friction = band(
  'drive.friction',
  'friction of the cord on pinion and drum',
  ['joint'],
  'hang two weights over the pinion and read the ratio at which the cord slips, wet and dry',
  (x, { joint }) => cordDrive(x, joint).friction,
  { level: 'unverified', where: 'ranges for braided polymer cord on printed and metal drums' },
)

/** Share of strength that the ends of a joint's cord keep: what the leg says, or the table's value of such an end. */
export function retentionIn(x: LegNumbers, joint: DrivenJoint): Band {
  const { ends: kind, endRetention, cord } = driveOf(x, joint, 'cord')
  if (endRetention !== undefined) return endRetention
  const slippery = cordAt(x, cord).fibre.startsWith('UHMWPE')
  const table = endEfficiency(kind === 'knot' ? (slippery ? 'bowlineUHMWPE' : 'bowline') : kind)
  return { low: table.low, typical: table.si, high: table.high }
}
export const endRetention = band(
  'drive.endRetention',
  'strength that the ends of the cord keep',
  ['joint'],
  'pull five ends of your own make to failure',
  (x, { joint }) => retentionIn(x, joint),
  {
    level: 'assumption',
    where: 'ranges of break tests by others',
  },
)

export const pinion = {
  grooveDiameter: optional('pinion.grooveDiameter', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).pinion.grooveDiameter),
  centreLineRadius: optional('pinion.centreLineRadius', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).pinion.centreLineRadius),
  turns: field('pinion.wraps', ['joint'], 'count', (x, { joint }) => cordDrive(x, joint).pinion.turns),
  length: field('pinion.length', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).pinion.length),
}
export const drum = {
  grooveDiameter: optional('drum.grooveDiameter', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).drum.grooveDiameter),
  centreLineRadius: optional('drum.centreLineRadius', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).drum.centreLineRadius),
  material: reference('drum.material', ['joint'], 'material', (x, { joint }) => cordDrive(x, joint).drum.material),
  bore: field('drum.bore', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).drum.bore),
  length: field('drum.length', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).drum.length),
  groovePitch: field('drum.groovePitch', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).drum.groovePitch),
  throughBolts: field('drum.throughBolts', ['joint'], 'count', (x, { joint }) => cordDrive(x, joint).drum.throughBolts),
  throughBoltThread: word('drum.throughBoltThread', ['joint'], (x, { joint }) => cordDrive(x, joint).drum.throughBoltThread),
  throughBoltClampLoad: field(
    'drum.throughBoltClampLoad',
    ['joint'],
    'force',
    (x, { joint }) => cordDrive(x, joint).drum.throughBoltClampLoad,
  ),
}
export const anchor = {
  postDiameter: field('anchor.postDiameter', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).anchor.postDiameter),
  postLength: field('anchor.postLength', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).anchor.postLength),
  edgeDistance: field('anchor.edgeDistance', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).anchor.edgeDistance),
}
export const tensioner = {
  travel: field('tensioner.travel', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).tensioner.travel),
  slackAtAssembly: field('tensioner.slackAtAssembly', ['joint'], 'length', (x, { joint }) => cordDrive(x, joint).tensioner.slackAtAssembly),
}
/** Material of what carries both pulleys at their distance: the plate at the hip, the upper link at the knee, unless its drum sits on the hip axis. */
export const frameMaterial = reference('drive.frameMaterial', ['joint'], 'material', (x, { joint }) =>
  (joint as string) === SECOND_STAGE || (joint === 'knee' && x.joints.knee.through === undefined)
    ? x.links.upper.material
    : plateOf(x, joint).material,
)

/** Wrap that each branch keeps on the drum before its anchor, at the ends of travel. */
export const leastWrap = constant('cord.leastWrap', {
  title: 'least wrap on the drum at an end of travel',
  kind: 'angle',
  typical: (10 * Math.PI) / 180,
  source: { level: 'assumption', where: 'a ninth of a right angle for play, windup and stops that are not where they should be' },
})
/** Wrap that is left on the pinion between its clamp and a span, at the ends of travel: it holds most of the tension, the clamp the rest. */
export const leastPinionWrap = constant('cord.leastPinionWrap', {
  title: 'least wrap on the pinion before its clamp at an end of travel',
  kind: 'angle',
  typical: Math.PI,
  source: { level: 'assumption', where: 'half a turn before the clamp' },
})
/** A cord with less pretension than this is loose. */
export const looseTension = constant('cord.looseTension', {
  title: 'tension below which a cord is loose',
  kind: 'force',
  typical: 0.5,
  source: { level: 'assumption', where: 'a cord that sags under its own weight' },
})
/** Factor on the strength of the ended, bent cord for a load of a moment. */
export const onceFactor = constant('cord.onceFactor', {
  title: 'safety factor on the breaking strength of the cord for a rare load',
  kind: 'ratio',
  typical: 2,
  low: 1.5,
  high: 3,
  source: { level: 'assumption', where: 'half of the strength for loads that are rare' },
  measuredBy: 'jerk ten ends of your own make with a falling weight, and pull them to failure afterwards',
})
export { activationEnergy, activationVolume, longTension, mostYears, relaxationReference } from './fibre-creep.js'
