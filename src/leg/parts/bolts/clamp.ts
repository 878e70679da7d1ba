import { clampLoadQuasiElastic, embeddingLoss } from '../../../fasteners/index.js'
import { equivalentTime, findleyStrain } from '../../../materials/index.js'
import { field } from '../../leaves.js'
import { temperatureRise } from '../../lines.js'
import { line, type Of, type Use, value } from '../../run/index.js'
import { airTemperature, assemblyTemperature, days, hottest, hour, season, walkingTime, walks } from '../load/fields.js'
import { layered, steel } from '../materials/fields.js'
import { timeKept } from '../materials/since-assembly.js'
import { calendar, creepCoefficient, creepExponent, creepShift, modulus, softening, thermalExpansion } from '../materials/values.js'
import { hipOf } from '../motion/instances.js'
import { heat } from '../motors/heat.js'
import { material as plateMaterial } from '../plates/fields.js'
import { year } from '../transmission/pretension-left.js'
import * as bolts from './fields.js'
import { boltCompliance, memberCompliance, preload, weakestLayer } from './values.js'

const flattened = line(
  'flattening of all faces',
  { perFace: { list: 'length' } },
  'length',
  '2 · sum(perFace)',
  (x) => 2 * x.perFace.reduce((sum, depth) => sum + depth, 0),
)
const settledOf = line('clamp load after embedding', { preload: 'force', loss: 'force' }, 'force', 'max(0, preload − loss)', (x) =>
  Math.max(0, x.preload - x.loss),
)
const walked = line.product('time walked in a season', { days: 'count', perDay: 'time' }, 'time')
const stressOf = line.product('stress at a small strain', { strain: 'strain', modulus: 'modulus' }, 'stress')
const grownOf = line.quotient('strain over instantaneous strain', { strain: 'strain', small: 'strain' }, 'ratio')
const since = line.quotient('growth since tightening again', { grown: 'ratio', week: 'ratio' }, 'ratio')
const atLeastOne = line('creep ratio', { ratio: 'ratio', one: 'ratio' }, 'ratio', 'max(one, ratio)', (x) => Math.max(x.one, x.ratio))
const limited = line(
  'temperature of the bolts',
  { mount: 'temperature', softening: 'temperature', beyond: 'temperatureDifference' },
  'temperature',
  'min(mount, softening + beyond)',
  (x) => Math.min(x.mount, x.softening + x.beyond),
)
const halfWay = line(
  'temperature half way from air to mount',
  { motorTemperature: 'temperature', airTemperature: 'temperature' },
  'temperature',
  '(motorTemperature + airTemperature) / 2',
  (x) => (x.motorTemperature + x.airTemperature) / 2,
)

const warmer = line.largest('warmer of now and on the hottest days', { now: 'temperature', walked: 'temperature' }, 'temperature')
const longer = line.largest('time since assembly', { season: 'time', year: 'time' }, 'time')

const growthOf = line(
  'growth of a clamped layer beyond that of its bolt',
  { thickness: 'length', expansion: 'thermalExpansion', ofBolt: 'thermalExpansion', rise: 'temperatureDifference' },
  'length',
  'thickness · (expansion − ofBolt) · rise',
  (x) => x.thickness * (x.expansion - x.ofBolt) * x.rise,
)
const warmingOf = line(
  'clamp load that the change of temperature adds',
  { growths: { list: 'length' }, bolt: 'linearCompliance', layers: 'linearCompliance' },
  'force',
  'sum(growths) / (bolt + layers)',
  (x) => x.growths.reduce((sum, growth) => sum + growth, 0) / (x.bolt + x.layers),
)
export const cooledOf = line(
  'clamp load after a change of temperature',
  { load: 'force', change: 'force' },
  'force',
  'max(0, load + min(0, change))',
  (x) => Math.max(0, x.load + Math.min(0, x.change)),
)
export const warmedOf = line(
  'largest clamp load when the layers are warm',
  { preload: 'force', change: 'force' },
  'force',
  'preload + max(0, change)',
  (x) => x.preload + Math.max(0, x.change),
)

/** Temperature of the motor's bolts: that of their plate. A motor without steady temperature softens the plate, and no more. */
export const motorBoltTemperature = value('bolts.motorTemperature', ['joint', 'event', 'air'], (use) =>
  use.run(limited, {
    mount: use(heat).mount,
    softening: use.at(softening, { material: use(plateMaterial) }),
    beyond: use(bolts.beyondSoftening),
  }),
)
/** Temperature of the stack's bolts: half way from the air to that of the hip's motor bolts. */
export const stackBoltTemperature = value('bolts.stackTemperature', ['leg', 'event', 'air'], (use, at) =>
  use.run(halfWay, {
    motorTemperature: use.at(motorBoltTemperature, { joint: hipOf(use, at.leg) }),
    airTemperature: use(airTemperature),
  }),
)

type At = Use<'event' | 'air'>
const warmestOf = (use: At, now: number, walked: readonly number[]): number =>
  walked.reduce((one, other) => use.run(warmer, { now: one, walked: other }), now)
/**
 * Temperature that the bolts of a motor have crept at: now, or on the hottest days of the season, whichever is warmer. What has crept there does not come back
 * in the cold, nor in a landing.
 */
export const motorBoltHottest = value('bolts.motorHottest', ['joint', 'event', 'air'], (use) => {
  const air = use(hottest)
  return warmestOf(
    use,
    use(motorBoltTemperature),
    use(walks).map((event) => use.at(motorBoltTemperature, { event, air })),
  )
})
/** The same of the stack's bolts. */
export const stackBoltHottest = value('bolts.stackHottest', ['leg', 'event', 'air'], (use) => {
  const air = use(hottest)
  return warmestOf(
    use,
    use(stackBoltTemperature),
    use(walks).map((event) => use.at(stackBoltTemperature, { event, air })),
  )
})

/** Flattening of a face of a clamped layer: printed faces are rougher than machined ones. */
const embeddingOf = (use: Use<never>, material: Of<'material'>): number =>
  use(use.at(layered, { material }) ? bolts.embeddingPerFace : bolts.embeddingPerMetalFace)

/** Clamp load that the flattening of the faces leaves. */
export const settledLoad = value('bolts.settledLoad', ['boltGroup'], (use) => {
  const embedding = use(bolts.sleeves)
    ? use(bolts.embeddingOfSleeves)
    : use.run(flattened, { perFace: use(bolts.layers).map((material) => embeddingOf(use, material)) })
  const loss = use.run(embeddingLoss, { embedding, boltCompliance: use(boltCompliance), memberCompliance: use(memberCompliance) })
  return use.run(settledOf, { preload: use(preload), loss })
})

/** Clamp load that layers and bolts change by at a temperature, since they grow by different amounts; a sleeve grows as its bolt. Of stiff layers, as they were at first. */
function warming(use: Use<'boltGroup'>, temperature: number): number {
  const rise = use.run(temperatureRise, { air: temperature, assembly: use(assemblyTemperature) })
  const ofBolt = use.at(thermalExpansion, { material: use(steel) })
  const thicknesses = use(bolts.thicknesses)
  const growths = use(bolts.layers).map((material, i) =>
    use.run(growthOf, { thickness: thicknesses[i] as number, expansion: use.at(thermalExpansion, { material }), ofBolt, rise }),
  )
  return use.run(warmingOf, { growths, bolt: use(boltCompliance), layers: use(memberCompliance) })
}
/** Largest clamp load at a temperature: what warm layers add soon creeps away, and presses until then. */
export const clampWarm = (use: Use<'boltGroup'>, temperature: number): number =>
  use(bolts.sleeves) ? use(preload) : use.run(warmedOf, { preload: use(preload), change: warming(use, temperature) })

/** Strain under a constant load over the strain at once. */
export function grown(use: Use<never>, material: Of<'material'>, time: number): number {
  const [own, small] = [use.at(modulus, { material }), use(bolts.smallStrain)]
  const strain = use.run(findleyStrain, {
    stress: use.run(stressOf, { strain: small, modulus: own }),
    modulus: own,
    creepCoefficient: use.at(creepCoefficient, { material }),
    creepExponent: use.at(creepExponent, { material }),
    time,
    referenceTime: use(hour),
    strength: undefined,
  })
  return use.run(grownOf, { strain, small })
}

/** Time since assembly: a season, and in load cases of a year later that year. */
export const sinceAssembly = value('bolts.sinceAssembly', ['age'], (use, at) =>
  use.nameOf('age', at.age) === 'new' ? use(season) : use.run(longer, { season: use(season), year: use(year) }),
)
/**
 * Clamp load after a time of creep, in ordinary air, and the hours of walking in a season at the temperature that the bolts have then.
 * Tightening again after a week makes good the loss of the first week; creep goes on from there. In the cold the layers shrink more than their bolts:
 * a walk starts with motors as cold as the air.
 */
export function clampLeft(use: Use<'boltGroup'>, time: number, temperature: number, coldest: number): number {
  if (use(bolts.sleeves)) return use(settledLoad)
  return use.run(cooledOf, { load: crept(use, time, temperature), change: warming(use, coldest) })
}

/** Clamp load that creep leaves. */
function crept(use: Use<'boltGroup'>, time: number, temperature: number): number {
  const settled = use(settledLoad)
  const layer = weakestLayer(use)
  if (use.at(creepCoefficient, { material: layer }) === 0) return settled
  const walking = use.run(walked, { days: use(days), perDay: use(walkingTime) })
  const shift = creepShift(use, layer, temperature)
  const warm = use.run(equivalentTime, { time: walking, shift })
  const all = grown(use, layer, use.run(calendar, { season: timeKept(use, layer, time), warm }))
  const again = use(bolts.retightened)
  const ratio = again ? use.run(since, { grown: all, week: grown(use, layer, timeKept(use, layer, use(bolts.week))) }) : all
  return use.run(clampLoadQuasiElastic, {
    clampLoad: again ? use(preload) : settled,
    elasticCompliance: use(boltCompliance),
    creepingCompliance: use(memberCompliance),
    creepRatio: use.run(atLeastOne, { ratio, one: 1 }),
  }).clampLoad
}

/** Temperature of the bolts of a chart or a plan; the checks use those of motor and stack. */
export const boltTemperature = field('bolts.temperature', [], 'temperature', (x) => x.environment.assemblyTemperature)
/** Clamp load at that temperature. */
export const clampLoadAtTemperature = value('bolts.clampLoadAtTemperature', ['boltGroup'], (use) =>
  clampLeft(use, use(season), use(boltTemperature), use(boltTemperature)),
)
