import { clearanceHole, hexNut, metricThread, propertyClass, socketHead, washer } from '../../../fasteners/index.js'
import { field, optional, record, reference, references, word } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { NoValueError } from '../../no-value.js'
import { JOINTS, partOf } from '../../numbers.js'
import { constant } from '../../run/index.js'

const groupOf = (x: LegNumbers, { boltGroup }: { readonly boltGroup: string }) => partOf(x.bolts, boltGroup, 'group of bolts')
/** How the bolts of a group sit. Throws where the document has another pattern. */
function patternOf<K extends 'rows' | 'circle'>(x: LegNumbers, at: { readonly boltGroup: string }, kind: K) {
  const { pattern } = groupOf(x, at)
  if (pattern.kind === kind) return pattern as Extract<typeof pattern, { readonly kind: K }>
  throw new NoValueError(`the bolts ${at.boltGroup} have no pattern of ${kind}`)
}

export const thread = record('bolts.thread', ['boltGroup'], (x, at) => metricThread.si(groupOf(x, at).thread), {
  title: 'thread of the –',
  table: metricThread,
})
export const head = record('bolts.head', ['boltGroup'], (x, at) => socketHead.si(groupOf(x, at).thread), {
  title: 'screw head of the –',
  table: socketHead,
})
export const ring = record('bolts.washer', ['boltGroup'], (x, at) => washer.si(groupOf(x, at).thread), {
  title: 'washer of the –',
  table: washer,
})
export const nutSizes = record('bolts.nutSizes', ['boltGroup'], (x, at) => hexNut.si(groupOf(x, at).thread), {
  title: 'nut of the –',
  table: hexNut,
})
export const steelOf = record('bolts.propertyClass', ['boltGroup'], (x, at) => propertyClass.si(groupOf(x, at).propertyClass), {
  title: 'steel of the –',
  table: propertyClass,
})
export const holeDiameter = field(
  'bolts.holeDiameter',
  ['boltGroup'],
  'length',
  (x, at) => clearanceHole.si(groupOf(x, at).thread).medium,
  { title: 'clearance hole of the –', table: clearanceHole },
)
export const count = field('bolts.count', ['boltGroup'], 'count', (x, at) => groupOf(x, at).count)
export const tighteningTorque = field('bolts.tighteningTorque', ['boltGroup'], 'torque', (x, at) => groupOf(x, at).tighteningTorque)
export const friction = field('bolts.friction', ['boltGroup'], 'ratio', (x, at) => groupOf(x, at).friction)
export const washers = word('bolts.washers', ['boltGroup'], (x, at) => groupOf(x, at).washers)
export const sleeves = word('bolts.sleeves', ['boltGroup'], (x, at) => groupOf(x, at).sleeves)
export const nut = word('bolts.nut', ['boltGroup'], (x, at) => groupOf(x, at).nut)
export const retightened = word('bolts.retightened', ['boltGroup'], (x, at) => groupOf(x, at).retightened)
export const bossDiameter = optional('bolts.bossDiameter', ['boltGroup'], 'length', (x, at) => groupOf(x, at).bossDiameter)
export const thicknesses = record('bolts.thickness', ['boltGroup'], (x, at) => groupOf(x, at).stack.map(({ thickness }) => thickness))
/** Materials of the clamped layers. */
export const layers = references('bolts.layers', ['boltGroup'], 'material', (x, at) => groupOf(x, at).stack.map(({ material }) => material))

export const distances = record('bolts.distances', ['boltGroup'], (x, at) => patternOf(x, at, 'rows').distances, {
  title: 'distances of the – from the tipping edge',
})
export const leverArm = field('bolts.leverArm', ['boltGroup'], 'length', (x, at) => patternOf(x, at, 'rows').leverArm)
export const circleDiameter = field('bolts.circleDiameter', ['boltGroup'], 'length', (x, at) => patternOf(x, at, 'circle').diameter)

/** How the plate that a group holds is printed, or the plate of the motor that it holds. */
export const print = reference('bolts.print', ['boltGroup'], 'print', (x, { boltGroup }) => {
  const held = Object.values(x.plates).find(({ bolts }) => bolts === boltGroup)
  const joint = JOINTS.find((joint) => x.joints[joint].motorBolts === boltGroup)
  const under = joint === undefined ? undefined : x.plates[x.joints[joint].plate ?? '']
  return (held ?? under)?.print ?? 'default'
})

export const boltModulus = constant('bolts.modulus', {
  title: 'modulus of elasticity of steel bolts',
  kind: 'modulus',
  typical: 205e9,
  source: { level: 'unverified', where: 'VDI 2230-1: 205 GPa for steel bolts at room temperature' },
})
/** Modulus of the metal that a bolt is screwed into: a third of the bolt's, as of aluminium. */
export const tappedModulus = constant('bolts.tappedModulus', {
  title: 'modulus of elasticity of metal with tapped holes',
  kind: 'modulus',
  typical: 205e9 / 3,
  source: { level: 'assumption', where: 'aluminium face of a motor: a third of the modulus of steel' },
})
export const shearRatio = constant('bolts.shearRatio', {
  title: 'shear strength of a bolt over its tensile strength',
  kind: 'ratio',
  typical: 0.6,
  source: { level: 'commonPractice', where: 'shear strength of bolts 0.6 of their tensile strength' },
})
/** Head diameters of boss beyond which a printed boss behaves as an endless plate. */
export const wideBoss = constant('bolts.wideBoss', {
  title: 'diameter of the boss over that of the bolt head at which the boss counts as an endless plate',
  kind: 'ratio',
  typical: 3,
  source: { level: 'assumption', where: 'the cone of pressure ends within three head diameters' },
})
/** Half angle of the cone of pressure in the clamped parts. */
export const coneAngle = constant('bolts.coneAngle', {
  title: 'half angle of the pressure cone',
  kind: 'angle',
  typical: Math.PI / 6,
  source: { level: 'commonPractice', where: 'half angle of the pressure cone 30 deg' },
})
/** Share of the yield strength that tightening may use. */
export const utilisation = constant('bolts.utilisation', {
  title: 'share of the yield strength for tightening',
  kind: 'ratio',
  typical: 0.9,
  source: { level: 'commonPractice', where: 'preload at nine tenths of yield, as in VDI 2230-1' },
})
const FLATTENING_TEST = 'tighten a stack of yours over a load washer or a marked bolt length, and again after a day'
/** Flattening of each printed face of the stack under its first clamp load. */
export const embeddingPerFace = constant('bolts.embeddingPerFace', {
  title: 'embedding of a printed face',
  kind: 'length',
  typical: 10e-6,
  low: 4e-6,
  high: 15e-6,
  source: { level: 'assumption', where: 'a printed face is rougher than a machined one, which flattens by 2 to 4 µm' },
  measuredBy: FLATTENING_TEST,
})
/** Flattening of each machined face of a stack. */
export const embeddingPerMetalFace = constant('bolts.embeddingPerMetalFace', {
  title: 'embedding of a machined face',
  kind: 'length',
  typical: 3e-6,
  low: 1.5e-6,
  high: 4e-6,
  source: { level: 'unverified', where: 'VDI 2230-1: 2 to 4 µm for each pair of machined faces and for the thread' },
  measuredBy: FLATTENING_TEST,
})
/** Flattening of a stack whose sleeves carry the clamp load between metal faces. */
export const embeddingOfSleeves = constant('bolts.embeddingOfSleeves', {
  title: 'embedding of a stack with metal sleeves',
  kind: 'length',
  typical: 5e-6,
  low: 3e-6,
  high: 11e-6,
  source: { level: 'unverified', where: 'VDI 2230-1: 3 µm in the thread and 2.5 to 4 µm for each metal face' },
  measuredBy: FLATTENING_TEST,
})
/** Clearance of a printed pocket around its nut. */
export const pocketClearance = constant('bolts.pocketClearance', {
  title: 'clearance of a nut in its printed pocket',
  kind: 'length',
  typical: 0.15e-3,
  low: 0.05e-3,
  high: 0.3e-3,
  source: { level: 'commonPractice', where: 'printed pockets a tenth or two of a millimetre over size' },
  measuredBy: 'measure ten pockets of your printer across the flats',
})
/** A plate this far above its softening has lost its strength; hotter makes no difference. */
export const beyondSoftening = constant('bolts.beyondSoftening', {
  title: 'rise above softening at which a clamped part has no strength left',
  kind: 'temperatureDifference',
  typical: 60,
  source: { level: 'assumption', where: 'no print carries a load 60 K above its softening' },
})
/** Margin below its softening within which a print is not judged for pressure: the plate's own check does that. */
export const softeningMargin = constant('bolts.softeningMargin', {
  title: 'margin below softening for the pressure under bolt heads',
  kind: 'temperatureDifference',
  typical: 15,
  source: { level: 'commonPractice', where: '15 K below the glass transition for parts that bear load for long' },
})
/** A strain small enough for the linear law of creep. */
export const smallStrain = constant('bolts.smallStrain', {
  title: 'strain within the linear law of creep',
  kind: 'strain',
  typical: 1e-3,
  source: { level: 'assumption', where: 'creep strain over elastic strain does not depend on the stress at small strains' },
})
export const week = constant('bolts.week', {
  title: 'length of a week',
  kind: 'time',
  typical: 604_800,
  source: { level: 'standard', where: 'ISO 80000-3: 7 d' },
})
/** Time for which a nut presses on its pocket while it is tightened. */
export const tighteningTime = constant('bolts.tighteningTime', {
  title: 'duration of tightening a nut',
  kind: 'time',
  typical: 60,
  source: { level: 'assumption', where: 'a minute with the key' },
})
/** Largest ratio of a reserve that is stated. */
export const largestReserve = constant('bolts.largestReserve', {
  title: 'largest reserve of a bolt joint that is stated',
  kind: 'ratio',
  typical: 1e4,
  source: { level: 'assumption', where: 'a larger reserve means no more than plenty' },
})
