import { bare, type Evaluator } from '../formula/index.js'
import type { LoadDirection, MoistureState } from './conditions.js'
import { deratedStrength } from './derated.js'
import { atEnd, type EndOf, oppositeEnd, type RangeEnd } from './range-ends.js'
import { type Material, requireProperty } from './record.js'
import { durationFactor, fatigueFactor } from './strength-factors.js'
import { type StrengthParts, strengthParts } from './strength-parts.js'
import { columnOf } from './temperature-curve.js'
import { amorphousStrengthFactor, ROOM, tabulatedStrengthFactor } from './temperature-factors.js'
import { shiftEndOf, warmShift } from './warm-time.js'

/** What strength depends on, as plain SI numbers for one end of the ranges: prepare once, evaluate often. */
export interface StrengthNumbers {
  /** Short-term strength at 23 °C, Pa. */
  readonly strength: number
  /** Share of it that is left in the direction of the stress. */
  readonly direction: number
  /** Share of it that is left at the moisture. */
  readonly moisture: number
  /** Share of it that is left after 1000 hours under load. */
  readonly kept1000Hours: number
  /** Share of it that is left after a year under load. */
  readonly kept1Year: number
  /** Fatigue strength at a million cycles over the short-term strength. */
  readonly fatigueRatio: number
  /** Activation energy by which heat shortens the time to rupture; 0 where none is known. */
  readonly activationEnergy: number
  /** Temperature above which the shift of time keeps its value. */
  readonly shiftEnd: number
  /** Glass transition of the amorphous rule, or 0 where a table holds. */
  readonly glassTransition: number
  /** Temperatures of the strength curve, K, rising. */
  readonly temperatures: readonly number[]
  /** Shares of the strength at 23 °C at those temperatures. */
  readonly shares: readonly number[]
}

/** Values that scatter in a strength; both shares of time belong to one, and so do all points of a curve. */
export const STRENGTH_KEYS = ['strength', 'direction', 'temperature', 'duration', 'moisture', 'fatigue', 'activation'] as const

export type StrengthKey = (typeof STRENGTH_KEYS)[number]

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
  return numbersOf(where, material, strengthParts(where, material, direction, moisture, cyclic), allAt(end))
}

/** Every value at the end that makes a strength low (or high): a higher activation energy makes time pass faster. */
export const allAt =
  (end: RangeEnd): EndOf<StrengthKey> =>
  (key) =>
    key === 'activation' ? oppositeEnd(end) : end

/** The parts at chosen ends of their ranges. */
export function numbersOf(where: string, material: Material, from: StrengthParts, endOf: EndOf<StrengthKey>): StrengthNumbers {
  const { strengthCurve: curve } = material
  const warm = endOf('temperature')
  const amorphous = curve === undefined && material.family !== 'magnet'
  // A magnet has no curve of strength: it works up to its service temperature and no further.
  const { temperatures, shares } =
    curve !== undefined
      ? columnOf(curve, warm)
      : amorphous
        ? { temperatures: [], shares: [] }
        : { temperatures: [ROOM, atEnd(requireProperty(where, material, 'serviceTemperature'), warm)], shares: [1, 1] }
  return {
    strength: atEnd(from.strength, endOf('strength')),
    direction: atEnd(from.direction, endOf('direction')),
    moisture: atEnd(from.moisture, endOf('moisture')),
    kept1000Hours: atEnd(from.kept1000Hours, endOf('duration')),
    kept1Year: atEnd(from.kept1Year, endOf('duration')),
    fatigueRatio: from.fatigueRatio === undefined ? 1 : atEnd(from.fatigueRatio, endOf('fatigue')),
    activationEnergy: from.activation === undefined ? 0 : atEnd(from.activation, endOf('activation')),
    shiftEnd: shiftEndOf(material, warm),
    glassTransition: amorphous ? atEnd(requireProperty(where, material, 'glassTransitionTemperature'), warm) : 0,
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
 * Stress allowed against rupture in SI numbers from prepared numbers, nothing checked; heat makes the time under load run faster where the
 * activation energy is known; `of` records the chain for a calculation sheet.
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
    duration: of(durationFactor, {
      duration,
      kept1000Hours: x.kept1000Hours,
      kept1Year: x.kept1Year,
      // A minute or less is the short-term test itself.
      shift: duration <= 60 ? 1 : warmShift(temperature, x.activationEnergy, x.shiftEnd, of),
    }),
    moisture: x.moisture,
    fatigue: of(fatigueFactor, { cycles, ratioAtMillion: x.fatigueRatio }),
    safetyFactor,
  })
}
