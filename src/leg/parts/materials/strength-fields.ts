import {
  type LoadDirection,
  type Material,
  type MoistureState,
  type PropertyName,
  type StrengthNumbers,
  strengthNumbers,
} from '../../../materials/index.js'
import { record, word } from '../../leaves.js'
import type { LegNumbers } from '../../leg-numbers.js'
import { leaf, type Names, type Range, type Value } from '../../run/index.js'
import { found, pulled } from './fields.js'

const CREEP_TEST = 'hang a known weight on bars of the material for a month and log when they break'

type StrengthName = keyof Omit<StrengthNumbers, 'temperatures' | 'shares'>
const KINDS = {
  strength: 'stress',
  glassTransition: 'glassTransitionTemperature',
  activationEnergy: 'activationEnergy',
  shiftEnd: 'glassTransitionTemperature',
} as const

/** One number that the strength of a material is made of, with its range. */
function strengthLeaf(
  id: string,
  title: string,
  part: StrengthName,
  measuredBy: string | ((material: Material) => string),
  source: (material: Material) => { source: Range['source'] } | undefined,
  direction: LoadDirection = 'alongLayers',
  moisture: MoistureState = 'dry',
): Value<number, 'material'> {
  const at = (x: LegNumbers, material: string, end: 'low' | 'typical' | 'high') => {
    const record = found(x, material)
    // Metals have a fatigue rule of their own: the size, finish and mean stress of the part.
    if (part === 'fatigueRatio' && record.family === 'metal') return 1
    return strengthNumbers(record, direction, moisture, end, part === 'fatigueRatio')[part]
  }
  return leaf(id, ['material'], {
    title,
    kind: KINDS[part as keyof typeof KINDS] ?? 'ratio',
    read: (x: LegNumbers, { material }: Names) => at(x, material, 'typical'),
    range: (x: LegNumbers, { material }: Names) => {
      const ends = [at(x, material, 'low'), at(x, material, 'high')]
      const [low, high] = [Math.min(...ends), Math.max(...ends)]
      const from = source(found(x, material))
      const test = typeof measuredBy === 'string' ? measuredBy : measuredBy(found(x, material))
      return low < high && from !== undefined ? { low, high, source: from.source, measuredBy: test } : undefined
    },
  })
}

/** Strength along the layers, dry, at room temperature: yield of metals, tensile strength otherwise. */
export const strength = strengthLeaf('material.strength', 'strength of –', 'strength', pulled, (m) =>
  m.family === 'metal' ? m.yieldStrength : m.tensileStrength,
)
const share = (direction: LoadDirection, title: string) =>
  strengthLeaf(`material.share.${direction}`, title, 'direction', pulled, (m) => m.acrossLayersRatio ?? m.yieldStrength, direction)
/** Share of it in a direction. */
export const directionShare = {
  alongLayers: share('alongLayers', 'strength of – along the layers, as a share'),
  acrossLayers: share('acrossLayers', 'strength of – across the layers, as a share'),
  interlayerShear: share('interlayerShear', 'shear strength of – between layers, as a share'),
} as const
const wet = (moisture: MoistureState, property: PropertyName, title: string) =>
  strengthLeaf(`material.share.${moisture}`, title, 'moisture', 'pull bars dry and wet', (m) => m[property], 'alongLayers', moisture)
/** Share of it that a state of moisture leaves. */
export const moistureShare = {
  dry: wet('dry', 'density', 'strength of – when dry, as a share'),
  conditioned: wet('conditioned', 'strengthConditionedRatio', 'strength of – in room air, as a share'),
  saturated: wet('saturated', 'strengthSaturatedRatio', 'strength of – when wet, as a share'),
} as const
export const kept1000Hours = strengthLeaf(
  'material.kept1000Hours',
  'share of its strength that – keeps for 1000 hours',
  'kept1000Hours',
  CREEP_TEST,
  (m) => m.strengthKept1000Hours,
)
export const kept1Year = strengthLeaf(
  'material.kept1Year',
  'share of its strength that – keeps for a year',
  'kept1Year',
  CREEP_TEST,
  (m) => m.strengthKept1Year,
)
export const fatigueRatio = strengthLeaf(
  'material.fatigueRatio',
  'fatigue strength of – over its static strength',
  'fatigueRatio',
  'bend bars to and fro until they crack',
  (m) => m.fatigueRatio,
)
/** Whether its record has a ratio of fatigue. */
export const fatigueKnown = word(
  'material.fatigueKnown',
  ['material'],
  (x, { material }) => found(x, material).fatigueRatio !== undefined && found(x, material).family !== 'metal',
)
/** Glass transition of the amorphous rule, or 0 where a table holds. */
export const strengthTransition = strengthLeaf(
  'material.strengthTransition',
  'glass transition of – for strength',
  'glassTransition',
  'load a bar and warm it until it sags',
  (m) => m.glassTransitionTemperature,
)
/** Activation energy by which heat shortens the time to rupture; 0 where none is known. */
export const strengthActivation = strengthLeaf(
  'material.strengthActivation',
  'activation energy of rupture of –',
  'activationEnergy',
  'log when loaded bars break at two temperatures',
  (m) => m.activationEnergy,
)
/** Temperature above which the shift of time keeps its value. */
export const shiftEnd = strengthLeaf(
  'material.shiftEnd',
  'temperature above which the time shift of – stays the same',
  'shiftEnd',
  'load a bar and warm it until it sags',
  (m) => m.glassTransitionTemperature,
)
/** Share of the strength over temperature where it is not the amorphous rule. */
export const strengthCurve = record(
  'material.strengthCurve',
  ['material'],
  (x, { material }) => {
    const { temperatures, shares } = strengthNumbers(found(x, material), 'alongLayers', 'dry')
    return { temperatures, shares }
  },
  { title: 'strength of – over temperature' },
)
