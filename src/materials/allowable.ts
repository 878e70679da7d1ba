import { Property, type Source } from '../formula/index.js'
import type { Note } from '../units/index.js'
import { conditionsReader, type StressConditions } from './conditions.js'
import { strainLimitedStress } from './derated.js'
import { weakest } from './evidence.js'
import { allowableNotes } from './notes.js'
import { atEnd, type EndOf, type RangeRule, rangeOf, type Spread } from './range-ends.js'
import { type Material, requireProperty } from './record.js'
import { STIFFNESS_KEYS, softeningOf, stiffnessNumbersOf, stiffnessParts, stiffnessSi } from './stiffness-numbers.js'
import { durationFactor, fatigueFactor } from './strength-factors.js'
import { allAt, numbersOf, STRENGTH_KEYS, type StrengthNumbers, strengthSi, warmth } from './strength-numbers.js'
import { strengthParts } from './strength-parts.js'
import { amorphousStrengthFactor } from './temperature-factors.js'
import { warmShift } from './warm-time.js'

/** One step from data-sheet strength to the stress allowed against rupture. */
export interface StrengthFactor {
  readonly name: 'direction' | 'temperature' | 'duration' | 'moisture' | 'fatigue'
  readonly typical: number
  readonly low: number
  readonly high: number
  /** Where the range comes from. */
  readonly source: Source
  /** Its meaning, in words. */
  readonly reason: string
}

/** An allowable stress with everything that led to it. */
export interface AllowableStress {
  /** The allowable stress: the lower of the two criteria, at typical values and at each end of the range. */
  readonly stress: Property<'stress'>
  /** The criterion that gives the lower stress at typical values. */
  readonly governs: 'rupture' | 'designStrain'
  /** Stress allowed against rupture: the strength times every factor, over the safety factor. */
  readonly rupture: Property<'stress'>
  /** Stress that the design strain allows. Absent where the material has no design strain or no creep data. */
  readonly designStrain?: Property<'stress'>
  /** The strength it starts from: at 23 °C, dry, short-term, along the layers; of metals the yield strength. */
  readonly strength: Property<'stress'>
  /** Every factor on the strength, in order. */
  readonly factors: readonly StrengthFactor[]
  readonly safetyFactor: number
  /** `aboveLimit` or `aboveTable` when the temperature leaves nothing to carry. */
  readonly state: 'usable' | 'aboveLimit' | 'aboveTable'
  readonly notes: readonly Note[]
}

const WHERE = 'allowableStress'
const CELSIUS = 273.15

type Conditions = ReturnType<typeof conditionsReader>
type Key = (typeof STRENGTH_KEYS)[number] | (typeof STIFFNESS_KEYS)[number] | 'strainLimit'

/** A criterion: its stress for chosen ends of the ranges, and what it rests on. */
interface Criterion {
  readonly si: (endOf: EndOf<Key>) => number
  readonly keys: readonly Key[]
  readonly source: Source
}

/**
 * The stress a material may carry for a direction, temperature, duration, moisture state and number of cycles, with every factor, its
 * range and its source.
 *
 * It is the lower of two criteria, and `governs` names it. Against rupture: the dry short-term strength at 23 °C along the layers (yield strength of metals),
 * lessened by every factor and divided by the safety factor; heat counts as more time under load where the activation energy is known. Against the
 * design strain: that strain times the creep modulus at the temperature and time, without a safety factor, since a design strain carries its own margin.
 *
 * The range combines the ranges of all values as if each scattered alone (`range: 'extremes'` puts all at their worst ends at once). Above the temperature
 * limit the stress is zero and `state` gives the reason. Throws an `InputError` for conditions that are missing or impossible, and for a property the table lacks.
 */
export function allowableStress(material: Material, conditions: StressConditions): AllowableStress {
  const c = conditionsReader(WHERE, conditions)
  const from = strengthParts(WHERE, material, c.direction, c.moisture, c.cycles !== undefined)
  const cycles = c.cycles ?? 1
  const numbers = (endOf: EndOf<Key>) => numbersOf(WHERE, material, from, endOf)
  const factors = factorsOf(material, from, c)
  const rupture: Criterion = {
    si: (endOf) => strengthSi(numbers(endOf), c.temperature, c.duration, cycles, c.safetyFactor),
    keys: STRENGTH_KEYS,
    source: weakest([from.strength.source, ...factors.map((factor) => factor.source)]),
  }
  const strain = strainCriterion(material, c, (endOf) => strengthSi(numbers(endOf), c.temperature, 0, 1, 1), rupture.source)
  const text = `${material.name}, ${c.direction}, ${Math.round(c.temperature - CELSIUS)} °C, ${c.moisture}, safety factor ${c.safetyFactor}`
  const { state } = warmth(
    numbers(() => 'typical'),
    c.temperature,
  )
  const notes = allowableNotes(material, c, state, strain === undefined)
  const property = (spread: Spread, source: Source) =>
    new Property(spread.typical, 'stress', spread.low, spread.high, source, text, notes.length > 0 ? notes : undefined)
  const ofRupture = property(spreadOf(c.range, rupture), rupture.source)
  const rest = { strength: from.strength, factors, safetyFactor: c.safetyFactor, state, notes }
  if (strain === undefined) return { stress: ofRupture, governs: 'rupture', rupture: ofRupture, ...rest }
  const ofStrain = property(spreadOf(c.range, strain), strain.source)
  const governs = ofStrain.si < ofRupture.si ? 'designStrain' : 'rupture'
  const lower = {
    typical: Math.min(ofRupture.si, ofStrain.si),
    low: Math.min(ofRupture.low, ofStrain.low),
    high: Math.min(ofRupture.high, ofStrain.high),
  }
  const stress = property(lower, (governs === 'rupture' ? rupture : strain).source)
  return { stress, governs, rupture: ofRupture, designStrain: ofStrain, ...rest }
}

const spreadOf = (rule: RangeRule, { keys, si }: Criterion): Spread => rangeOf(rule, keys, si)

/** The criterion of the design strain, or nothing where the material has no such limit or its creep is not known. */
function strainCriterion(
  material: Material,
  c: Conditions,
  shortTermStrength: (endOf: EndOf<Key>) => number,
  strengthSource: Source,
): Criterion | undefined {
  const limit = material.strainLimit
  if (limit === undefined || material.creepCoefficient === undefined || material.creepExponent === undefined) return undefined
  const direction = c.direction === 'alongLayers' ? 'alongLayers' : 'acrossLayers'
  const from = stiffnessParts(WHERE, material, direction, c.moisture)
  // In pure shear the largest principal strain is tau (1 + nu) / E: crazes open across it.
  const shear = c.direction === 'interlayerShear' ? 1 + requireProperty(WHERE, material, 'poissonRatio').si : 1
  return {
    si: (endOf) =>
      strainLimitedStress.si({
        shortTermStrength: shortTermStrength(endOf),
        modulus: stiffnessSi(stiffnessNumbersOf(WHERE, material, from, endOf), c.temperature, c.duration) / shear,
        strainLimit: atEnd(limit, endOf('strainLimit')),
        duration: c.duration,
      }),
    keys: [...new Set<Key>([...STRENGTH_KEYS, ...STIFFNESS_KEYS, 'strainLimit'])],
    source: weakest([
      strengthSource,
      limit.source,
      ...Object.values(from).flatMap((part: Property | undefined) => part?.source ?? []),
      softeningOf(WHERE, material).source,
    ]),
  }
}

/** Every factor on the strength with its own range. */
function factorsOf(material: Material, from: ReturnType<typeof strengthParts>, c: Conditions): StrengthFactor[] {
  const cycles = c.cycles ?? 1
  const [low, typical, high] = (['low', 'typical', 'high'] as const).map((end) => numbersOf(WHERE, material, from, allAt(end))) as [
    StrengthNumbers,
    StrengthNumbers,
    StrengthNumbers,
  ]
  const factor = (name: StrengthFactor['name'], value: (x: StrengthNumbers) => number, source: Source, reason: string): StrengthFactor => ({
    name,
    low: value(low),
    typical: value(typical),
    high: value(high),
    source,
    reason,
  })
  const duration = (x: StrengthNumbers) =>
    durationFactor.si({
      duration: c.duration,
      kept1000Hours: x.kept1000Hours,
      kept1Year: x.kept1Year,
      shift: warmShift(c.temperature, x.activationEnergy, x.shiftEnd),
    })
  const sourcesOfTime = [
    from.kept1000Hours.source,
    from.kept1Year.source,
    ...(from.activation === undefined ? [] : [from.activation.source]),
  ]
  const factors = [
    factor('direction', (x) => x.direction, from.direction.source, from.direction.conditions),
    factor('temperature', (x) => warmth(x, c.temperature).factor, temperatureSource(material), temperatureReason(material)),
    factor('duration', duration, weakest(sourcesOfTime), from.kept1Year.conditions),
    factor('moisture', (x) => x.moisture, from.moisture.source, c.moisture),
  ]
  const { fatigueRatio } = from
  if (fatigueRatio !== undefined)
    factors.push(
      factor('fatigue', (x) => fatigueFactor.si({ cycles, ratioAtMillion: x.fatigueRatio }), fatigueRatio.source, fatigueRatio.conditions),
    )
  return factors
}

const temperatureReason = (material: Material): string =>
  material.strengthCurve?.conditions ??
  (material.family === 'magnet' ? 'up to its service temperature' : 'straight line from 23 °C to 15 K below the glass transition')

/** The amorphous rule is an assumption however well the glass transition is known. */
const temperatureSource = (material: Material): Source =>
  material.strengthCurve?.source ??
  (material.family === 'magnet'
    ? requireProperty(WHERE, material, 'serviceTemperature').source
    : weakest([...amorphousStrengthFactor.def.source, requireProperty(WHERE, material, 'glassTransitionTemperature').source]))
