import { Property, readInputs, type Source } from '../formula/index.js'
import { type In, type Note, Quantity } from '../units/index.js'
import { allowableStress } from './allowable.js'
import { type MoistureState, RANGE_RULE } from './conditions.js'
import { weakest } from './evidence.js'
import { modulusNotes } from './notes.js'
import { type EndOf, type RangeRule, rangeOf } from './range-ends.js'
import type { Material } from './record.js'
import {
  creepRatio,
  STIFFNESS_KEYS,
  type StiffnessKey,
  type StiffnessNumbers,
  type StiffnessParts,
  softening,
  softeningOf,
  stiffnessNumbersOf,
  stiffnessParts,
  stiffnessSi,
} from './stiffness-numbers.js'

/** What a modulus must hold for. */
export interface ModulusConditions {
  /** Direction of the stress: along the layers or across them. */
  readonly direction: 'alongLayers' | 'acrossLayers'
  /** Temperature of the part. */
  readonly temperature: In<'temperature'>
  /** Time under load. */
  readonly duration: In<'time'>
  /** Moisture state. */
  readonly moisture: MoistureState
  /** Stress the part will carry; given, a stress above half of the short-term strength there leaves a note, since the modulus is a linear one. */
  readonly stress?: In<'stress'> | undefined
  /** How the ranges of the values combine; see `StressConditions`. Default `jointScatter`. */
  readonly range?: RangeRule | undefined
}

/** One step from the data-sheet modulus to the creep modulus. */
export interface ModulusFactor {
  readonly name: 'temperature' | 'moisture' | 'creep'
  readonly typical: number
  readonly low: number
  readonly high: number
  readonly source: Source
  readonly reason: string
}

/** A creep modulus with everything that led to it. */
export interface DesignModulus {
  /** Stress over strain after the time, with its range. */
  readonly modulus: Property<'modulus'>
  /** The modulus it starts from: short-term, dry, 23 °C, in the direction of the stress. */
  readonly start: Property<'modulus'>
  readonly factors: readonly ModulusFactor[]
  /** `aboveLimit` when the temperature leaves no stiffness to count on. */
  readonly state: 'usable' | 'aboveLimit' | 'aboveTable'
  readonly notes: readonly Note[]
}

const WHERE = 'designModulus'

const CONDITIONS = {
  direction: { oneOf: ['alongLayers', 'acrossLayers'] },
  temperature: { kind: 'temperature', min: 0 },
  duration: { kind: 'time', min: 0 },
  moisture: { oneOf: ['dry', 'conditioned', 'saturated'] },
  stress: { kind: 'stress', optional: true },
  range: RANGE_RULE,
} as const

interface ReadConditions {
  readonly direction: ModulusConditions['direction']
  readonly temperature: number
  readonly duration: number
  readonly moisture: MoistureState
  readonly stress: number | undefined
  readonly range: RangeRule
}

/**
 * The modulus to put into elastic formulas for a direction, temperature, time under load and moisture state, with every factor, its range and
 * its source. It can only be lower than the short-term modulus of the table.
 *
 * Creep is Findley's law with the time shifted by Arrhenius (up to the glass transition of a glass) where the table has an activation energy. The range
 * combines the ranges of all values as if each scattered alone; `range: 'extremes'` puts all at their worst ends at once. Throws an `InputError` for
 * conditions that cannot be and for a property the table lacks.
 */
export function designModulus(material: Material, conditions: ModulusConditions): DesignModulus {
  const x = readInputs(WHERE, CONDITIONS, conditions as never) as unknown as ReadConditions
  const from = stiffnessParts(WHERE, material, x.direction, x.moisture)
  const numbers = (endOf: EndOf<StiffnessKey>) => stiffnessNumbersOf(WHERE, material, from, endOf)
  const spread = rangeOf(x.range, STIFFNESS_KEYS, (endOf) => stiffnessSi(numbers(endOf), x.temperature, x.duration))
  const factors = factorsOf(material, from, numbers, x)
  const { state } = softening(
    numbers(() => 'typical'),
    x.temperature,
  )
  const transition =
    x.moisture === 'dry'
      ? material.glassTransitionTemperature
      : (material.glassTransitionConditioned ?? material.glassTransitionTemperature)
  const notes = modulusNotes(material, x, state === 'usable', transition?.si)
  if (x.stress !== undefined) notes.push(...linearRangeNote(material, x, x.stress))
  const modulus = new Property(
    spread.typical,
    'modulus',
    spread.low,
    spread.high,
    weakest([from.modulus.source, ...factors.map(({ source }) => source)]),
    `${material.name}, ${x.direction}, ${Math.round(x.temperature - 273.15)} °C, ${x.moisture}`,
    notes.length > 0 ? notes : undefined,
  )
  return { modulus, start: from.modulus, factors, state, notes }
}

/** A note where the stress lies above half of the low end of the short-term strength: the modulus is a linear one. */
function linearRangeNote(material: Material, x: ReadConditions, stress: number): Note[] {
  const { low: strength } = allowableStress(material, {
    direction: x.direction,
    temperature: [x.temperature, 'K'],
    duration: '0 s',
    moisture: x.moisture,
    safetyFactor: 1,
    range: x.range,
  }).rupture
  if (Math.abs(stress) <= 0.5 * strength) return []
  const text = `stress above half of the low end of the short-term strength there, ${new Quantity(strength, 'stress')}: outside the linear range, the modulus is too high`
  return [{ formula: 'materials.designModulus', text }]
}

/** Every factor on the modulus with its own range. */
function factorsOf(
  material: Material,
  from: StiffnessParts,
  numbers: (endOf: EndOf<StiffnessKey>) => StiffnessNumbers,
  x: ReadConditions,
): ModulusFactor[] {
  const factor = (
    name: ModulusFactor['name'],
    value: (n: StiffnessNumbers) => number,
    keys: readonly StiffnessKey[],
    source: Source,
    reason: string,
  ): ModulusFactor => ({ name, ...rangeOf(x.range, keys, (endOf) => value(numbers(endOf))), source, reason })
  const warm = softeningOf(WHERE, material)
  const factors = [factor('temperature', (n) => softening(n, x.temperature).factor, ['temperature'], warm.source, warm.reason)]
  if (from.moisture !== undefined) factors.push(factor('moisture', (n) => n.moisture, ['moisture'], from.moisture.source, x.moisture))
  const creep = [from.creepCoefficient, from.creepExponent, from.activation].flatMap((part: Property | undefined) => part?.source ?? [])
  if (creep.length > 0)
    factors.push(
      factor(
        'creep',
        (n) => 1 / creepRatio(n, x.temperature, x.duration),
        STIFFNESS_KEYS,
        weakest(creep),
        "Findley's law, time shifted to the temperature",
      ),
    )
  return factors
}
