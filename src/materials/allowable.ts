import { bare, type Evaluator, Property, type Source } from '../formula/index.js'
import { type In, InputError, type Note, show } from '../units/index.js'
import { conditionsReader, type Direction, type Moisture } from './conditions.js'
import { type Material, needed } from './record.js'
import {
  amorphousStrengthFactor,
  deratedStrength,
  durationFactor,
  fatigueFactor,
  ROOM,
  tabulatedStrengthFactor,
} from './strength-factors.js'

/** What a stress must be allowed for. Everything that lessens strength must be said; only `cycles` may be left out, for a static load. */
export interface StressConditions {
  /** Direction of the load: along the layers, across them (pulling layers apart), or shear between them. */
  readonly direction: Direction
  /** Temperature of the part. */
  readonly temperature: In<'temperature'>
  /** Time under load. */
  readonly duration: In<'time'>
  /** Moisture state: `dry`, `conditioned` (in equilibrium with 50 % humidity) or `saturated` (soaked). */
  readonly moisture: Moisture
  /** Number of load cycles; left out for a static load. */
  readonly cycles?: In<'count'> | undefined
  /** Safety factor on stress, at least 1. */
  readonly safetyFactor: In<'ratio'>
}

/** One step from data-sheet strength to allowable stress. */
export interface Factor {
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
  readonly factors: readonly Factor[]
  readonly safetyFactor: number
  /** `aboveLimit` or `aboveTable` when the temperature leaves nothing to carry. */
  readonly state: 'usable' | 'aboveLimit' | 'aboveTable'
  readonly notes: readonly Note[]
}

/** The three values of a factor. */
type End = 'low' | 'typical' | 'high'

/** What strength depends on, as plain SI numbers for one end of the ranges: prepare once, evaluate often. */
export interface StrengthNumbers {
  readonly strength: number
  readonly direction: number
  readonly moisture: number
  readonly kept1000Hours: number
  readonly kept1Year: number
  readonly fatigueRatio: number
  /** Glass transition of the amorphous rule, or 0 where a table holds. */
  readonly glassTransition: number
  readonly temperatures: readonly number[]
  readonly shares: readonly number[]
}

const at = (property: Property, end: End) => (end === 'typical' ? property.si : property[end])
const one = (reason: string): Property<'ratio'> => new Property(1, 'ratio', 1, 1, { level: 'commonPractice', where: reason }, reason)

interface Ingredients {
  readonly strength: Property<'stress'>
  readonly direction: Property<'ratio'>
  readonly moisture: Property<'ratio'>
  readonly kept1000Hours: Property<'ratio'>
  readonly kept1Year: Property<'ratio'>
  readonly fatigueRatio: Property<'ratio'> | undefined
}

const VON_MISES: Source = { level: 'commonPractice', where: 'shear yield 0.577 of tensile yield (von Mises)' }

const product = (a: Property<'ratio'>, b: Property<'ratio'>, conditions: string): Property<'ratio'> =>
  new Property(a.si * b.si, 'ratio', a.low * b.low, a.high * b.high, weakest([a.source, b.source]), conditions)

function directionShare(where: string, material: Material, direction: Direction): Property<'ratio'> {
  const layered = material.process === 'fusedFilament' || (material.process === 'sintered' && material.family !== 'magnet')
  if (material.family === 'adhesive') return one('an adhesive has no layers; shear starts from its shear strength')
  if (direction === 'alongLayers') return one('along the layers')
  if (!layered) {
    return direction === 'acrossLayers'
      ? one('no layers: the same in every direction')
      : new Property(0.577, 'ratio', 0.5, 0.6, VON_MISES, 'no layers: shear from tension')
  }
  const across = needed(where, material, 'acrossLayersRatio')
  return direction === 'acrossLayers' ? across : product(across, needed(where, material, 'interlayerShearRatio'), 'shear between layers')
}

function moistureShare(where: string, material: Material, moisture: Moisture): Property<'ratio'> {
  if (moisture === 'dry') return one('dry')
  if (material.family === 'metal' || material.family === 'magnet') return one('takes up no water')
  return needed(where, material, moisture === 'conditioned' ? 'strengthConditionedRatio' : 'strengthSaturatedRatio')
}

function ingredients(where: string, material: Material, direction: Direction, moisture: Moisture, cyclic: boolean): Ingredients {
  const metal = material.family === 'metal' || material.family === 'magnet'
  if (cyclic && metal) {
    throw new InputError(where, [
      {
        path: 'cycles',
        given: show(material.name),
        accepts: 'metals need the size, finish and mean stress of the part: use partEnduranceLimit and goodmanSafetyFactor',
      },
    ])
  }
  return {
    strength:
      material.family === 'adhesive' && direction === 'interlayerShear'
        ? needed(where, material, 'shearStrength')
        : material.family === 'metal'
          ? needed(where, material, 'yieldStrength')
          : needed(where, material, 'tensileStrength'),
    direction: directionShare(where, material, direction),
    moisture: moistureShare(where, material, moisture),
    kept1000Hours: metal ? one('metals do not creep at these temperatures') : needed(where, material, 'strengthKept1000Hours'),
    kept1Year: metal ? one('metals do not creep at these temperatures') : needed(where, material, 'strengthKept1Year'),
    fatigueRatio: cyclic ? needed(where, material, 'fatigueRatio') : undefined,
  }
}

const CELSIUS = 273.15

/**
 * What the strength of a material depends on, as plain numbers for one end of its ranges.
 * `strengthSi` then gives the allowable stress for any temperature, duration, cycles and safety factor at the cost of a few multiplications.
 * Throws an `InputError` when the table lacks a property the case needs.
 */
export function strengthNumbers(
  material: Material,
  direction: Direction,
  moisture: Moisture,
  end: End = 'typical',
  cyclic = false,
): StrengthNumbers {
  const from = ingredients('strengthNumbers', material, direction, moisture, cyclic)
  return numbersOf('strengthNumbers', material, from, end)
}

function numbersOf(where: string, material: Material, from: Ingredients, end: End): StrengthNumbers {
  const curve = material.strengthCurve
  const column = end === 'low' ? 1 : end === 'typical' ? 2 : 3
  const amorphous = curve === undefined && material.family !== 'magnet'
  // A magnet has no curve of strength: it works up to its service temperature and no further.
  const service = amorphous || curve !== undefined ? 0 : at(needed(where, material, 'serviceTemperature'), end)
  return {
    strength: at(from.strength, end),
    direction: at(from.direction, end),
    moisture: at(from.moisture, end),
    kept1000Hours: at(from.kept1000Hours, end),
    kept1Year: at(from.kept1Year, end),
    fatigueRatio: from.fatigueRatio === undefined ? 1 : at(from.fatigueRatio, end),
    glassTransition: amorphous ? at(needed(where, material, 'glassTransitionTemperature'), end) : 0,
    temperatures: curve?.points.map(([celsius]) => celsius + CELSIUS) ?? (amorphous ? [] : [ROOM, service]),
    shares: curve?.points.map((point) => point[column]) ?? (amorphous ? [] : [1, 1]),
  }
}

/**
 * Allowable stress in SI numbers from prepared numbers, nothing checked; `of` records the chain for a calculation sheet.
 * Temperature in kelvin, duration in seconds, result in pascal; `cycles` of 1 is a static load.
 */
export function strengthSi(
  x: StrengthNumbers,
  temperature: number,
  duration: number,
  cycles: number,
  safetyFactor: number,
  of: Evaluator = bare,
): number {
  const warm =
    x.glassTransition > 0
      ? of(amorphousStrengthFactor, { temperature, glassTransition: x.glassTransition, margin: 15 }).factor
      : of(tabulatedStrengthFactor, { temperature, temperatures: x.temperatures, shares: x.shares }).factor
  return of(deratedStrength, {
    strength: x.strength,
    direction: x.direction,
    temperature: warm,
    duration: of(durationFactor, { duration, kept1000Hours: x.kept1000Hours, kept1Year: x.kept1Year }),
    moisture: x.moisture,
    fatigue: of(fatigueFactor, { cycles, ratioAtMillion: x.fatigueRatio }),
    safetyFactor,
  })
}

const STRENGTH_OF_EVIDENCE = ['standard', 'published', 'referenceLibrary', 'computed', 'commonPractice', 'memory', 'assumption'] as const

/** The weakest of several sources: what a result that rests on all of them is worth. */
export const weakest = (sources: readonly Source[]): Source =>
  sources.reduce((worst, source) =>
    STRENGTH_OF_EVIDENCE.indexOf(source.level) > STRENGTH_OF_EVIDENCE.indexOf(worst.level) ? source : worst,
  )

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
  const from = ingredients(where, material, c.direction, c.moisture, c.cycles !== undefined)
  const cycles = c.cycles ?? 1
  const ends = (['low', 'typical', 'high'] as const).map((end) => {
    const x = numbersOf(where, material, from, end)
    return { x, stress: strengthSi(x, c.temperature, c.duration, cycles, c.safetyFactor) }
  }) as [Ended, Ended, Ended]
  const [low, typical, high] = ends
  const warm = ends.map(({ x }) => warmth(x, c.temperature)) as [Warm, Warm, Warm]
  const factors: Factor[] = [
    factorOf('direction', from.direction, from.direction.conditions),
    {
      name: 'temperature',
      low: warm[0].factor,
      typical: warm[1].factor,
      high: warm[2].factor,
      source: temperatureSource(material),
      reason: material.strengthCurve?.conditions ?? 'straight line from 23 °C to 15 K below the glass transition',
    },
    spread('duration', ends, (x) => durationFactor.si({ duration: c.duration, kept1000Hours: x.kept1000Hours, kept1Year: x.kept1Year }), {
      source: weakest([from.kept1000Hours.source, from.kept1Year.source]),
      reason: from.kept1Year.conditions,
    }),
    factorOf('moisture', from.moisture, c.moisture),
  ]
  if (from.fatigueRatio !== undefined)
    factors.push(
      spread('fatigue', ends, (x) => fatigueFactor.si({ cycles, ratioAtMillion: x.fatigueRatio }), {
        source: from.fatigueRatio.source,
        reason: from.fatigueRatio.conditions,
      }),
    )
  const notes = notesFor(material, c, warm[1].state)
  const source = weakest([from.strength.source, ...factors.map((factor) => factor.source)])
  const conditionsText = `${material.name}, ${c.direction}, ${Math.round(c.temperature - CELSIUS)} °C, ${c.moisture}, safety factor ${c.safetyFactor}`
  return {
    stress: new Property(typical.stress, 'stress', low.stress, high.stress, source, conditionsText, notes.length > 0 ? notes : undefined),
    strength: from.strength,
    factors,
    safetyFactor: c.safetyFactor,
    state: warm[1].state,
    notes,
  }
}

/** The amorphous rule is an assumption however well the glass transition is known. */
const temperatureSource = (material: Material): Source =>
  material.strengthCurve?.source ??
  (material.family === 'magnet'
    ? needed('allowableStress', material, 'serviceTemperature').source
    : weakest([...amorphousStrengthFactor.def.source, needed('allowableStress', material, 'glassTransitionTemperature').source]))

interface Ended {
  readonly x: StrengthNumbers
  readonly stress: number
}
interface Warm {
  readonly factor: number
  readonly state: AllowableStress['state']
}

const warmth = (x: StrengthNumbers, temperature: number): Warm =>
  x.glassTransition > 0
    ? amorphousStrengthFactor.si({ temperature, glassTransition: x.glassTransition, margin: 15 })
    : tabulatedStrengthFactor.si({ temperature, temperatures: x.temperatures, shares: x.shares })

const factorOf = (name: Factor['name'], { si, low, high, source }: Property, reason: string): Factor => ({
  name,
  typical: si,
  low,
  high,
  source,
  reason,
})

function spread(
  name: Factor['name'],
  [low, typical, high]: readonly [Ended, Ended, Ended],
  value: (x: StrengthNumbers) => number,
  rest: Pick<Factor, 'source' | 'reason'>,
): Factor {
  return { name, low: value(low.x), typical: value(typical.x), high: value(high.x), ...rest }
}

function notesFor(
  material: Material,
  c: { readonly temperature: number; readonly duration: number; readonly cycles?: number | undefined },
  state: AllowableStress['state'],
): Note[] {
  const say = (text: string): Note => ({ formula: 'materials.allowableStress', text })
  const notes: Note[] = []
  if (state === 'aboveLimit')
    notes.push(say(`${material.name} may carry no continuous load here: within 15 K of its glass transition or above`))
  if (state === 'aboveTable') notes.push(say(`no strength is known for ${material.name} at this temperature`))
  if (c.duration > 10 * 31557600) notes.push(say('longer than ten years: the share kept is extrapolated'))
  if ((c.cycles ?? 1) > 1e7) notes.push(say('more than ten million cycles: the S-N line is extrapolated'))
  const activation = material.activationEnergy
  if (state === 'usable' && activation !== undefined && c.temperature > ROOM + 5 && c.duration > 3600) {
    const faster = (energy: number) => Math.exp((energy / 8.314462618) * (1 / ROOM - 1 / c.temperature))
    const digits = (x: number) => Number(x.toPrecision(2))
    notes.push(
      say(
        `an hour at this temperature ages the polymer like ${digits(faster(activation.low))} to ${digits(faster(activation.high))} hours at 23 °C; the share kept counts clock time`,
      ),
    )
  }
  return notes
}
