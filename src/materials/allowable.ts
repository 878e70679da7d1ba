import { Property, type Source } from '../formula/index.js'
import type { Note } from '../units/index.js'
import { conditionsReader, type StressConditions } from './conditions.js'
import { weakest } from './evidence.js'
import { type Material, requireProperty } from './record.js'
import { arrheniusShift } from './shift.js'
import { amorphousStrengthFactor, durationFactor, fatigueFactor, ROOM } from './strength-factors.js'
import { numbersOf, type StrengthNumbers, strengthParts, strengthSi, warmth } from './strength-numbers.js'

/** One step from data-sheet strength to allowable stress. */
export interface StrengthFactor {
  readonly name: 'direction' | 'temperature' | 'duration' | 'moisture' | 'fatigue'
  readonly typical: number
  readonly low: number
  readonly high: number
  /** Where the range comes from. */
  readonly source: Source
  /** What it stands for, in words. */
  readonly reason: string
}

/** An allowable stress with everything that led to it. */
export interface AllowableStress {
  /** The allowable stress with its range; the ends combine the ends of every factor, so they are wide. */
  readonly stress: Property<'stress'>
  /** The strength it starts from: at 23 °C, dry, short-term, along the layers; of metals the yield strength. */
  readonly strength: Property<'stress'>
  /** Every factor in order. */
  readonly factors: readonly StrengthFactor[]
  readonly safetyFactor: number
  /** `aboveLimit` or `aboveTable` when the temperature leaves nothing to carry. */
  readonly state: 'usable' | 'aboveLimit' | 'aboveTable'
  readonly notes: readonly Note[]
}

const CELSIUS = 273.15

/**
 * The stress a material may carry for a direction, temperature, duration, moisture state and number of cycles, with every factor, its
 * range and its source.
 *
 * The start is the dry short-term strength at 23 °C along the layers (yield strength of metals); it can only be lessened. Above the
 * temperature limit the stress is zero and `state` says so. Throws an `InputError` for conditions that are missing or impossible, and for a
 * property the table does not have.
 */
export function allowableStress(material: Material, conditions: StressConditions): AllowableStress {
  const where = 'allowableStress'
  const c = conditionsReader(where, conditions)
  const from = strengthParts(where, material, c.direction, c.moisture, c.cycles !== undefined)
  const cycles = c.cycles ?? 1
  const [low, typical, high] = (['low', 'typical', 'high'] as const).map((end) => numbersOf(where, material, from, end)) as [
    StrengthNumbers,
    StrengthNumbers,
    StrengthNumbers,
  ]
  const stress = (x: StrengthNumbers) => strengthSi(x, c.temperature, c.duration, cycles, c.safetyFactor)
  const spread = (name: StrengthFactor['name'], value: (x: StrengthNumbers) => number, source: Source, reason: string): StrengthFactor => ({
    name,
    low: value(low),
    typical: value(typical),
    high: value(high),
    source,
    reason,
  })
  const factors: StrengthFactor[] = [
    spread('direction', (x) => x.direction, from.direction.source, from.direction.conditions),
    spread(
      'temperature',
      (x) => warmth(x, c.temperature).factor,
      temperatureSource(material),
      material.strengthCurve?.conditions ??
        (material.family === 'magnet' ? 'up to its service temperature' : 'straight line from 23 °C to 15 K below the glass transition'),
    ),
    spread(
      'duration',
      (x) => durationFactor.si({ duration: c.duration, kept1000Hours: x.kept1000Hours, kept1Year: x.kept1Year }),
      weakest([from.kept1000Hours.source, from.kept1Year.source]),
      from.kept1Year.conditions,
    ),
    spread('moisture', (x) => x.moisture, from.moisture.source, c.moisture),
  ]
  if (from.fatigueRatio !== undefined)
    factors.push(
      spread(
        'fatigue',
        (x) => fatigueFactor.si({ cycles, ratioAtMillion: x.fatigueRatio }),
        from.fatigueRatio.source,
        from.fatigueRatio.conditions,
      ),
    )
  const { state } = warmth(typical, c.temperature)
  const notes = notesFor(material, c, state)
  const source = weakest([from.strength.source, ...factors.map((factor) => factor.source)])
  const conditionsText = `${material.name}, ${c.direction}, ${Math.round(c.temperature - CELSIUS)} °C, ${c.moisture}, safety factor ${c.safetyFactor}`
  return {
    stress: new Property(
      stress(typical),
      'stress',
      stress(low),
      stress(high),
      source,
      conditionsText,
      notes.length > 0 ? notes : undefined,
    ),
    strength: from.strength,
    factors,
    safetyFactor: c.safetyFactor,
    state,
    notes,
  }
}

/** The amorphous rule is an assumption however well the glass transition is known. */
const temperatureSource = (material: Material): Source =>
  material.strengthCurve?.source ??
  (material.family === 'magnet'
    ? requireProperty('allowableStress', material, 'serviceTemperature').source
    : weakest([...amorphousStrengthFactor.def.source, requireProperty('allowableStress', material, 'glassTransitionTemperature').source]))

function notesFor(
  material: Material,
  c: { readonly temperature: number; readonly duration: number; readonly cycles?: number | undefined },
  state: AllowableStress['state'],
): Note[] {
  const notes: Note[] = []
  const say = (text: string) => notes.push({ formula: 'materials.allowableStress', text })
  if (state === 'aboveLimit') say(`${material.name} may carry no continuous load here: within 15 K of its glass transition or above`)
  if (state === 'aboveTable') say(`no strength is known for ${material.name} at this temperature`)
  if (c.duration > 10 * 31557600) say('longer than ten years: the share kept is extrapolated')
  if ((c.cycles ?? 1) > 1e7) say('more than ten million cycles: the S-N line is extrapolated')
  const activation = material.activationEnergy
  if (state === 'usable' && activation !== undefined && c.temperature > ROOM + 5 && c.duration > 3600) {
    const faster = (activationEnergy: number) =>
      Number(
        (1 / arrheniusShift.si({ temperature: c.temperature, reference: ROOM, activationEnergy, glassTransition: undefined })).toPrecision(
          2,
        ),
      )
    say(
      `an hour at this temperature ages the polymer like ${faster(activation.low)} to ${faster(activation.high)} hours at 23 °C; the share kept counts clock time`,
    )
  }
  return notes
}
