import { bare, type Evaluator, type Property, type Source } from '../formula/index.js'
import type { MoistureState } from './conditions.js'
import { findleyStrain } from './creep.js'
import { deratedModulus } from './derated.js'
import { atEnd, type EndOf } from './range-ends.js'
import { type Material, requireProperty } from './record.js'
import { isLayered, isRigid } from './strength-parts.js'
import { columnOf, type TemperatureCurve } from './temperature-curve.js'
import { amorphousStrengthFactor, tabulatedStrengthFactor } from './temperature-factors.js'
import { shiftEndOf, warmShift } from './warm-time.js'

/** Values that scatter in the modulus of a loaded part. */
export const STIFFNESS_KEYS = ['modulus', 'temperature', 'moisture', 'creepCoefficient', 'creepExponent', 'activation'] as const
export type StiffnessKey = (typeof STIFFNESS_KEYS)[number]

/** What stiffness depends on, as plain SI numbers for chosen ends of the ranges. */
export interface StiffnessNumbers {
  readonly modulus: number
  readonly moisture: number
  /** 0 for a material that does not creep at the temperatures of a leg. */
  readonly creepCoefficient: number
  readonly creepExponent: number
  readonly activationEnergy: number
  readonly shiftEnd: number
  /** Glass transition of a glass, or 0 where a table (or nothing) holds. */
  readonly glassTransition: number
  readonly temperatures: readonly number[]
  readonly shares: readonly number[]
}

/** The properties a modulus is made of. */
export interface StiffnessParts {
  readonly modulus: Property<'modulus'>
  readonly moisture: Property<'ratio'> | undefined
  readonly creepCoefficient: Property<'ratio'> | undefined
  readonly creepExponent: Property<'ratio'> | undefined
  readonly activation: Property<'activationEnergy'> | undefined
}

/** A glass keeps its stiffness while its strength falls: only where its transition is not known is the curve of strength used instead. */
const isGlass = ({ family, glassTransitionTemperature }: Material) => family === 'amorphous' && glassTransitionTemperature !== undefined

/** The curve of stiffness over temperature, if one applies. */
export const stiffnessCurveOf = (material: Material): TemperatureCurve | undefined =>
  material.modulusCurve ?? (isGlass(material) ? undefined : material.strengthCurve)

/** Where the loss of stiffness with temperature comes from, and what it is. */
export function softeningOf(where: string, material: Material): { readonly source: Source; readonly reason: string } {
  const curve = stiffnessCurveOf(material)
  if (curve !== undefined)
    return material.modulusCurve !== undefined
      ? { source: curve.source, reason: curve.conditions }
      : {
          source: { level: 'assumption', where: `modulus assumed to fall like strength: ${curve.source.where}` },
          reason: 'stiffness assumed to fall with temperature as strength does',
        }
  return material.family === 'amorphous'
    ? {
        source: requireProperty(where, material, 'glassTransitionTemperature').source,
        reason: 'a glass keeps its stiffness to 15 K below its transition; the effect of temperature is in the creep',
      }
    : { source: { level: 'commonPractice', where: 'no loss' }, reason: 'hardly falls at these temperatures' }
}

/** The properties that lead to a modulus. Throws an `InputError` that names one the table lacks. */
export function stiffnessParts(
  where: string,
  material: Material,
  direction: 'alongLayers' | 'acrossLayers',
  moisture: MoistureState,
): StiffnessParts {
  const rigid = isRigid(material)
  const across = direction === 'acrossLayers' && isLayered(material)
  return {
    modulus: requireProperty(where, material, across ? 'modulusAcrossLayers' : 'modulus'),
    moisture:
      moisture === 'dry' || rigid
        ? undefined
        : requireProperty(where, material, moisture === 'conditioned' ? 'modulusConditionedRatio' : 'modulusSaturatedRatio'),
    creepCoefficient: rigid ? undefined : requireProperty(where, material, 'creepCoefficient'),
    creepExponent: rigid ? undefined : requireProperty(where, material, 'creepExponent'),
    activation: rigid ? undefined : material.activationEnergy,
  }
}

/** The parts at chosen ends of their ranges. */
export function stiffnessNumbersOf(where: string, material: Material, from: StiffnessParts, endOf: EndOf<StiffnessKey>): StiffnessNumbers {
  const value = (property: Property | undefined, key: StiffnessKey, otherwise: number) =>
    property === undefined ? otherwise : atEnd(property, endOf(key))
  const curve = stiffnessCurveOf(material)
  const warm = endOf('temperature')
  const { temperatures, shares } = curve === undefined ? { temperatures: [], shares: [] } : columnOf(curve, warm)
  const glass = curve === undefined && material.family === 'amorphous'
  return {
    modulus: value(from.modulus, 'modulus', 0),
    moisture: value(from.moisture, 'moisture', 1),
    creepCoefficient: value(from.creepCoefficient, 'creepCoefficient', 0),
    creepExponent: value(from.creepExponent, 'creepExponent', 0),
    activationEnergy: value(from.activation, 'activation', 0),
    shiftEnd: shiftEndOf(material, warm),
    glassTransition: glass ? atEnd(requireProperty(where, material, 'glassTransitionTemperature'), warm) : 0,
    temperatures,
    shares,
  }
}

/** Share of the modulus kept at a temperature, and whether the temperature can be used at all. */
export function softening(
  x: StiffnessNumbers,
  temperature: number,
  of: Evaluator = bare,
): { readonly factor: number; readonly state: 'usable' | 'aboveLimit' | 'aboveTable' } {
  if (x.glassTransition > 0) {
    const { state } = of(amorphousStrengthFactor, { temperature, glassTransition: x.glassTransition, margin: 15 })
    return { factor: state === 'usable' ? 1 : 0, state }
  }
  if (x.temperatures.length === 0) return { factor: 1, state: 'usable' }
  return of(tabulatedStrengthFactor, { temperature, temperatures: x.temperatures, shares: x.shares })
}

/** Time of a short-term test, s: what creeps within it at a temperature is in the measured curve of stiffness. */
const SHORT_TERM = 60

const grown = (x: StiffnessNumbers, time: number, of: Evaluator): number =>
  of(findleyStrain, {
    stress: 1,
    modulus: 1,
    creepCoefficient: x.creepCoefficient,
    creepExponent: x.creepExponent,
    time,
    referenceTime: 3600,
    strength: undefined,
  })

/**
 * Total strain over the strain at once, after a time at a temperature.
 * Where a measured curve says how stiffness falls with temperature, the creep of its first minute is not counted twice.
 */
export function creepRatio(x: StiffnessNumbers, temperature: number, duration: number, of: Evaluator = bare): number {
  if (x.creepCoefficient === 0) return 1
  const shift = warmShift(temperature, x.activationEnergy, x.shiftEnd, of)
  const after = grown(x, duration / shift, of)
  if (shift === 1 || x.temperatures.length === 0) return after
  return Math.max(1, (after * grown(x, SHORT_TERM, of)) / grown(x, SHORT_TERM / shift, of))
}

/** Modulus for elastic formulas in SI numbers from prepared numbers, nothing checked; temperature in kelvin, duration in seconds. */
export const stiffnessSi = (x: StiffnessNumbers, temperature: number, duration: number, of: Evaluator = bare): number =>
  of(deratedModulus, {
    modulus: x.modulus,
    temperature: softening(x, temperature, of).factor,
    moisture: x.moisture,
    creepRatio: creepRatio(x, temperature, duration, of),
  })
