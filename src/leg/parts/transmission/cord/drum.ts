import { delamination, drumHoop, drumNeckStress, groovePressure } from '../../../../capstan/index.js'
import { clearanceHole } from '../../../../fasteners/index.js'
import type { Check } from '../../../cases/check.js'
import { record } from '../../../leaves.js'
import { halfLength } from '../../../lines.js'
import { NoValueError } from '../../../no-value.js'
import { driveOf } from '../../../numbers.js'
import { constant, line, type Use, value } from '../../../run/index.js'
import { cycles } from '../../load/durations.js'
import { airTemperature, moment, repeats } from '../../load/fields.js'
import { layered } from '../../materials/fields.js'
import { strengthInAir } from '../../materials/in-air.js'
import { allowableStress } from '../../materials/values.js'
import { driveLoad } from '../../motion/values.js'
import * as cord from './fields.js'
import { drumRadius } from './radii.js'
import { pretension, shaftForce, windup } from './values.js'

const wallRadius = line(
  'outer radius of the wall',
  { centre: 'length', cord: 'length' },
  'length',
  'centre − cord / 2',
  (x) => x.centre - x.cord / 2,
)
const size = line('magnitude of a stress', { stress: 'stress' }, 'stress', '|stress|', ({ stress }) => Math.abs(stress))
const hub = line(
  'outer diameter of the hub',
  { centre: 'length', cord: 'length', bore: 'length', bores: 'ratio' },
  'length',
  'min(2 · centre − cord, bores · bore)',
  (x) => Math.min(2 * x.centre - x.cord, x.bores * x.bore),
)
const bending = line.product('bending moment of the hub', { force: 'force', arm: 'length' }, 'torque')
const clamp = line.product('clamp load of the through-bolts', { bolts: 'count', each: 'force' }, 'force')
const holes = line(
  'share of the section that holes take',
  { bolts: 'count', hole: 'length', outer: 'length', bore: 'length' },
  'ratio',
  'bolts · hole² / (outer² − bore²)',
  (x) => (x.bolts * x.hole ** 2) / (x.outer ** 2 - x.bore ** 2),
)

const hubBores = constant('drum.hubBores', {
  title: 'diameter of the hub over the bore of the drum',
  kind: 'ratio',
  typical: 2,
  source: { level: 'assumption', where: 'the hub that carries the torque is twice the bore, or the drum itself where that is less' },
})
const mostHoles = constant('drum.mostHoles', {
  title: 'largest share of the hub that holes may take',
  kind: 'ratio',
  typical: 0.9,
  source: { level: 'assumption', where: 'holes that take more leave no hub' },
})

/** Strength of the drum's polymer for the time under load. */
export const drumStrength = value('drum.strength', ['joint', 'event', 'air'], (use) =>
  use.at(strengthInAir.alongLayers, { material: use(cord.drum.material) }),
)
/** Strength between or across its layers for a moment, after the strides of a season where they are counted. */
const layerStrength = (use: Use<'joint' | 'event' | 'air'>, direction: 'interlayerShear' | 'acrossLayers'): number => {
  const at = { direction, temperature: use(airTemperature), duration: use(moment) }
  return allowableStress(use, use(cord.drum.material), use(repeats) ? { ...at, cycles: use(cycles) } : at)
}
const interlayerShear = value('drum.interlayerShear', ['joint', 'event', 'air'], (use) => layerStrength(use, 'interlayerShear'))
const acrossLayers = value('drum.acrossLayers', ['joint', 'event', 'air'], (use) => layerStrength(use, 'acrossLayers'))

const hubDiameter = value('drum.hubDiameter', ['joint'], (use) => {
  const bore = use(cord.drum.bore)
  const outer = use.run(hub, { centre: use(drumRadius), cord: use(cord.diameter), bore, bores: use(hubBores) })
  // A hub that is smaller than its bore would have stresses of the wrong sign.
  if (!(outer > bore)) throw new NoValueError('the bore leaves nothing of the drum')
  return outer
})
/** Distance from the middle of the grooves to the end of the drum. */
const arm = value('drum.arm', ['joint'], (use) => use.run(halfLength, { length: use(cord.drum.length) }))

const hoopStress = value('drum.hoopStress', ['joint', 'air', 'age'], (use) => {
  const { boreHoopStress } = use.run(drumHoop, {
    tension: use(pretension),
    centreLineRadius: use(drumRadius),
    pitch: use(cord.drum.groovePitch),
    wallOuterRadius: use.run(wallRadius, { centre: use(drumRadius), cord: use(cord.diameter) }),
    boreRadius: use.run(halfLength, { length: use(cord.drum.bore) }),
  })
  return use.run(size, { stress: boreHoopStress })
})
const pressure = value('drum.groovePressure', ['joint', 'event', 'air', 'age'], (use) =>
  use.run(groovePressure, {
    tension: use(windup).tautTension,
    centreLineRadius: use(drumRadius),
    cordDiameter: use(cord.diameter),
  }),
)
const torsionStress = value(
  'drum.torsionStress',
  ['joint', 'event', 'air', 'age'],
  (use) =>
    use.run(drumNeckStress, {
      torque: use(driveLoad),
      sidePull: use(shaftForce),
      arm: use(arm),
      outerDiameter: use(hubDiameter),
      boreDiameter: use(cord.drum.bore),
    }).torsionStress,
)
const holeOf = record('drum.throughBoltHole', ['joint'], (x, { joint }) => {
  const { throughBoltThread } = driveOf(x, joint, 'cord').drum
  return throughBoltThread === undefined ? 0 : clearanceHole.si(throughBoltThread).medium
})
const layerStress = value('drum.layerStress', ['joint', 'event', 'air', 'age'], (use) => {
  const [outer, bore, bolts] = [use(hubDiameter), use(cord.drum.bore), use(cord.drum.throughBolts)]
  const holeShare = use.run(holes, { bolts, hole: use(holeOf), outer, bore })
  if (holeShare > use(mostHoles)) throw new NoValueError('the holes of the through-bolts leave less than a tenth of the hub')
  return use.run(delamination, {
    bendingMoment: use.run(bending, { force: use(shaftForce), arm: use(arm) }),
    axialForce: 0,
    clampLoad: use.run(clamp, { bolts, each: use(cord.drum.throughBoltClampLoad) }),
    outerDiameter: outer,
    boreDiameter: bore,
    allowableAcrossLayers: use(acrossLayers),
    holeShare,
  }).layerStress
})

const unlessSolid = value('drum.unlessSolid', ['joint'], (use) =>
  use.at(layered, { material: use(cord.drum.material) }) ? undefined : 'the drum has no layers',
)

const LAYERS = ['walks', 'moves', 'shock', 'repeats'] as const
/** Checks of the drum of each drive. */
export const drumChecks: readonly Check[] = [
  {
    id: 'drum.hoop',
    part: 'printed drum',
    mode: 'creeps in under the wound cord',
    consequence: 'fails to work',
    kind: 'stress',
    scope: 'joint',
    when: ['keepsTension', 'walks'],
    demand: hoopStress,
    capacity: drumStrength,
    demandIs: 'the hoop stress at the bore of the drum',
    capacityIs: 'the long-term strength of its polymer',
    remedy: 'less pretension, a wider groove pitch, a smaller bore, or a metal bush in the bore',
  },
  {
    id: 'drum.groove',
    part: 'groove of the drum',
    mode: 'is cut by the cord',
    consequence: 'fails to work',
    kind: 'stress',
    scope: 'joint',
    when: ['bearsLoad'],
    demand: pressure,
    capacity: drumStrength,
    demandIs: 'the pressure of the taut cord on the groove',
    capacityIs: 'the strength of the polymer for the time under load',
    remedy: 'a larger drum, a thicker cord, or a harder polymer',
  },
  {
    id: 'drum.layers',
    part: 'printed drum',
    mode: 'shears between its layers',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: LAYERS,
    demand: torsionStress,
    capacity: interlayerShear,
    unless: unlessSolid,
    demandIs: 'the shear stress between layers from the joint torque, in a hub of twice the bore',
    capacityIs: 'the shear strength between layers (after the strides of a season)',
    remedy: 'a larger hub, bolts through the layers, or print the drum lying on its side',
  },
  {
    id: 'drum.split',
    part: 'printed drum',
    mode: 'comes apart between its layers',
    consequence: 'breaks',
    kind: 'stress',
    scope: 'joint',
    when: LAYERS,
    demand: layerStress,
    capacity: acrossLayers,
    unless: unlessSolid,
    demandIs:
      'the pull across the layers of a hub of twice the bore, from the sideways pull of the cord less the clamp load of through-bolts',
    capacityIs: 'the strength across layers (after the strides of a season)',
    remedy: 'bolts through the layers, a larger hub, or print the drum lying on its side',
  },
]
