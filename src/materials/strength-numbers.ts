import { bare, type Evaluator, Property, type Source } from '../formula/index.js'
import { InputError, show } from '../units/index.js'
import type { LoadDirection, MoistureState } from './conditions.js'
import { weakest } from './evidence.js'
import { type Material, requireProperty } from './record.js'
import {
  amorphousStrengthFactor,
  deratedStrength,
  durationFactor,
  fatigueFactor,
  ROOM,
  tabulatedStrengthFactor,
} from './strength-factors.js'
import { columnOf, type RangeEnd } from './temperature-curve.js'

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

/** The properties an allowable stress is made of, each with its range and source. */
export interface StrengthParts {
  readonly strength: Property<'stress'>
  readonly direction: Property<'ratio'>
  readonly moisture: Property<'ratio'>
  readonly kept1000Hours: Property<'ratio'>
  readonly kept1Year: Property<'ratio'>
  readonly fatigueRatio: Property<'ratio'> | undefined
}

const at = (property: Property, end: RangeEnd) => (end === 'typical' ? property.si : property[end])
const one = (reason: string): Property<'ratio'> => new Property(1, 'ratio', 1, 1, { level: 'commonPractice', where: reason }, reason)

const VON_MISES: Source = { level: 'commonPractice', where: 'shear yield 0.577 of tensile yield (von Mises)' }

/** Whether a part is built of layers, so that direction matters. */
export const isLayered = ({ process, family }: Material): boolean =>
  process === 'fusedFilament' || (process === 'sintered' && family !== 'magnet')

/** Whether a material neither creeps nor takes up water at the temperatures of a leg. */
export const isRigid = ({ family }: Material): boolean => family === 'metal' || family === 'magnet'

function directionShare(where: string, material: Material, direction: LoadDirection): Property<'ratio'> {
  if (material.family === 'adhesive') return one('an adhesive has no layers; shear starts from its shear strength')
  if (direction === 'alongLayers') return one('along the layers')
  if (!isLayered(material)) {
    return direction === 'acrossLayers'
      ? one('no layers: the same in every direction')
      : new Property(0.577, 'ratio', 0.5, 0.6, VON_MISES, 'no layers: shear from tension')
  }
  const across = requireProperty(where, material, 'acrossLayersRatio')
  if (direction === 'acrossLayers') return across
  const shear = requireProperty(where, material, 'interlayerShearRatio')
  const high = across.high * shear.high
  if (high > 1)
    throw new InputError(where, [
      {
        path: 'material.interlayerShearRatio',
        given: `${shear} (to ${shear.highest}), times acrossLayersRatio to ${across.highest}`,
        accepts: 'layers cannot be stronger in shear than the material along them: the product must be at most 1',
      },
    ])
  const source = weakest([across.source, shear.source])
  return new Property(across.si * shear.si, 'ratio', across.low * shear.low, high, source, 'shear between layers')
}

function moistureShare(where: string, material: Material, moisture: MoistureState): Property<'ratio'> {
  if (moisture === 'dry') return one('dry')
  if (isRigid(material)) return one('takes up no water')
  return requireProperty(where, material, moisture === 'conditioned' ? 'strengthConditionedRatio' : 'strengthSaturatedRatio')
}

function startingStrength(where: string, material: Material, direction: LoadDirection): Property<'stress'> {
  if (material.family === 'metal') return requireProperty(where, material, 'yieldStrength')
  if (material.family !== 'adhesive') return requireProperty(where, material, 'tensileStrength')
  if (direction === 'interlayerShear') return requireProperty(where, material, 'shearStrength')
  if (material.tensileStrength === undefined && material.shearStrength !== undefined)
    throw new InputError(where, [
      { path: 'direction', given: show(direction), accepts: `must be 'interlayerShear': ${material.name} is rated in shear only` },
    ])
  return requireProperty(where, material, 'tensileStrength')
}

/** The properties that lead to an allowable stress; throws an `InputError` that names one the table lacks. */
export function strengthParts(
  where: string,
  material: Material,
  direction: LoadDirection,
  moisture: MoistureState,
  cyclic: boolean,
): StrengthParts {
  const rigid = isRigid(material)
  if (cyclic && rigid) {
    throw new InputError(where, [
      {
        path: 'cycles',
        given: show(material.name),
        accepts: 'metals need the size, finish and mean stress of the part: use partEnduranceLimit and goodmanSafetyFactor',
      },
    ])
  }
  return {
    strength: startingStrength(where, material, direction),
    direction: directionShare(where, material, direction),
    moisture: moistureShare(where, material, moisture),
    kept1000Hours: rigid ? one('metals do not creep at these temperatures') : requireProperty(where, material, 'strengthKept1000Hours'),
    kept1Year: rigid ? one('metals do not creep at these temperatures') : requireProperty(where, material, 'strengthKept1Year'),
    fatigueRatio: cyclic ? requireProperty(where, material, 'fatigueRatio') : undefined,
  }
}

/**
 * What the strength of a material depends on, as plain numbers for one end of its ranges.
 * `strengthSi` then gives the allowable stress for any temperature, duration, cycles and safety factor at the cost of a few multiplications.
 * Throws an `InputError` when the table lacks a property the case needs.
 */
export function strengthNumbers(
  material: Material,
  direction: LoadDirection,
  moisture: MoistureState,
  end: RangeEnd = 'typical',
  cyclic = false,
): StrengthNumbers {
  const where = 'strengthNumbers'
  return numbersOf(where, material, strengthParts(where, material, direction, moisture, cyclic), end)
}

/** The parts at one end of their ranges. */
export function numbersOf(where: string, material: Material, from: StrengthParts, end: RangeEnd): StrengthNumbers {
  const { strengthCurve: curve } = material
  const amorphous = curve === undefined && material.family !== 'magnet'
  // A magnet has no curve of strength: it works up to its service temperature and no further.
  const { temperatures, shares } =
    curve !== undefined
      ? columnOf(curve, end)
      : amorphous
        ? { temperatures: [], shares: [] }
        : { temperatures: [ROOM, at(requireProperty(where, material, 'serviceTemperature'), end)], shares: [1, 1] }
  return {
    strength: at(from.strength, end),
    direction: at(from.direction, end),
    moisture: at(from.moisture, end),
    kept1000Hours: at(from.kept1000Hours, end),
    kept1Year: at(from.kept1Year, end),
    fatigueRatio: from.fatigueRatio === undefined ? 1 : at(from.fatigueRatio, end),
    glassTransition: amorphous ? at(requireProperty(where, material, 'glassTransitionTemperature'), end) : 0,
    temperatures,
    shares,
  }
}

/** Share of the strength kept at a temperature, and whether the temperature can be used at all. */
export const warmth = (x: StrengthNumbers, temperature: number, of: Evaluator = bare) =>
  x.glassTransition > 0
    ? of(amorphousStrengthFactor, { temperature, glassTransition: x.glassTransition, margin: 15 })
    : of(tabulatedStrengthFactor, { temperature, temperatures: x.temperatures, shares: x.shares })

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
  return of(deratedStrength, {
    strength: x.strength,
    direction: x.direction,
    temperature: warmth(x, temperature, of).factor,
    duration: of(durationFactor, { duration, kept1000Hours: x.kept1000Hours, kept1Year: x.kept1Year }),
    moisture: x.moisture,
    fatigue: of(fatigueFactor, { cycles, ratioAtMillion: x.fatigueRatio }),
    safetyFactor,
  })
}
