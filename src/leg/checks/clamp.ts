import { clampLoadQuasiElastic, embeddingLoss } from '../../fasteners/index.js'
import { bare, type Evaluator } from '../../formula/index.js'
import { arrheniusShift, equivalentTime, findleyStrain } from '../../materials/index.js'
import type { Matter } from '../matter.js'
import { oncePerLegAnd } from '../once.js'
import type { Scene } from '../state.js'
import { BOLT_GROUPS, type BoltGroup, softest, type TightBolt, tightBoltOf } from './bolt-group.js'

/** What each printed face of the stack flattens under its first clamp load. */
const EMBEDDING_PER_FACE = 10e-6
/** Flattening that a sleeve between metal faces leaves. */
const EMBEDDING_OF_SLEEVE = 5e-6
const ROOM = 296.15
const WEEK = 604_800
const HOUR = 3600

/** Clamp load that a season of creep leaves: calendar time at room temperature, and the hours of walking at the temperature the bolts have then. */
export function clampLeft(of: Evaluator, { leg }: Scene, group: BoltGroup, bolt: TightBolt, temperature: number): number {
  const bolts = leg.x.bolts[group]
  const settled = settledLoad(of, leg, group)
  const layer = softest(bolt.layers)
  if (bolts.sleeves || layer.creepCoefficient === 0) return settled
  const { usage } = leg.x
  const walking = usage.days * usage.walkingTime
  const warm = of(equivalentTime, { time: walking, shift: shiftOf(of, layer, temperature) })
  const time = usage.days * 86_400 + warm
  // Tightening again after a week makes good what the first week took; creep goes on from there.
  const creepRatio = bolts.retightened ? grown(of, layer, time) / grown(of, layer, WEEK) : grown(of, layer, time)
  return of(clampLoadQuasiElastic, {
    clampLoad: bolts.retightened ? bolt.preload : settled,
    elasticCompliance: bolt.boltCompliance,
    creepingCompliance: bolt.memberCompliance,
    creepRatio: Math.max(1, creepRatio),
  }).clampLoad
}

/** Clamp load that the flattening of the faces leaves. */
const settledLoad = /* @__PURE__ */ oncePerLegAnd(BOLT_GROUPS, (of, leg, group): number => {
  const bolts = leg.x.bolts[group]
  const { preload, boltCompliance, memberCompliance } = tightBoltOf(bare, leg, group)
  const embedding = bolts.sleeves ? EMBEDDING_OF_SLEEVE : 2 * bolts.stack.length * EMBEDDING_PER_FACE
  return Math.max(0, preload - of(embeddingLoss, { embedding, boltCompliance, memberCompliance }))
})

/** A strain small enough for the linear law. */
const SMALL = 1e-3

/** Strain under a constant load over that at once. */
function grown(of: Evaluator, { modulus, creepCoefficient, creepExponent }: Matter, time: number): number {
  const stress = SMALL * modulus
  return of(findleyStrain, { stress, modulus, creepCoefficient, creepExponent, time, referenceTime: HOUR, strength: undefined }) / SMALL
}

function shiftOf(of: Evaluator, layer: Matter, temperature: number): number {
  const activationEnergy = layer.material.activationEnergy?.si
  if (activationEnergy === undefined) return 1
  return of(arrheniusShift, {
    temperature: Math.min(temperature, layer.softening),
    reference: ROOM,
    activationEnergy,
    glassTransition: layer.softeningKind === 'glassTransition' ? layer.softening : undefined,
  })
}
