import { type Property, readInputs, type Source } from '../formula/index.js'
import { type In, Quantity } from '../units/index.js'
import { weakest } from './evidence.js'
import { equilibriumMoisture, moistureFactor, moistureGrowth, uptakeTime, waterUptake } from './moisture.js'
import { type Material, requireProperty } from './record.js'

/** A wall in a climate. */
export interface Climate {
  /** Relative humidity of the air; 1 for immersion. */
  readonly humidity: In<'ratio'>
  /** Time since the wall, dry, came into it. */
  readonly time: In<'time'>
  /** Thickness of the wall, wetted on both faces. */
  readonly thickness: In<'length'>
}

/** What a climate makes of a wall. */
export interface WallMoisture {
  /** Mean water content by mass. */
  readonly water: Quantity<'ratio'>
  /** Water content that it tends to. */
  readonly finalWater: Quantity<'ratio'>
  /** Time to nine tenths of that. */
  readonly ninetyTime: Quantity<'time'>
  /** Share of the dry modulus that is left. */
  readonly modulusShare: Quantity<'ratio'>
  /** Share of the dry strength that is left. */
  readonly strengthShare: Quantity<'ratio'>
  /** Growth of every dimension, as a strain. */
  readonly growth: Quantity<'strain'>
  /** The weakest evidence it rests on. */
  readonly source: Source
}

/**
 * What a damp climate does to a dry printed wall after a time: water by Fick's law, and from its mean the loss of stiffness and strength and the growth.
 * The wet skin is ahead of the mean: a bent wall is weaker than this result until the water has spread. Throws an `InputError` for a climate that cannot be and for a
 * property the table lacks.
 */
export function wallMoistureUptake(material: Material, climate: Climate): WallMoisture {
  const where = 'wallMoistureUptake'
  const x = readInputs(
    where,
    {
      humidity: { kind: 'ratio', min: 0, max: 1 },
      time: { kind: 'time', min: 0 },
      thickness: { kind: 'length', above: 0 },
    },
    climate,
  )
  const used: Property[] = []
  const typical = (name: Parameters<typeof requireProperty>[2]): number => {
    const value = requireProperty(where, material, name) as Property
    used.push(value)
    return value.si
  }
  const conditioned = typical('moistureConditioned')
  const saturated = typical('moistureSaturated')
  const diffusivity = typical('moistureDiffusivity')
  const finalWater = equilibriumMoisture.si({ humidity: x.humidity, conditioned, saturated })
  const moisture = finalWater * waterUptake.si({ time: x.time, thickness: x.thickness, diffusivity })
  const share = (conditionedShare: number, saturatedShare: number) =>
    moistureFactor.si({ moisture, conditioned, saturated, conditionedShare, saturatedShare })
  const ratio = (si: number) => new Quantity(si, 'ratio')
  return {
    water: ratio(moisture),
    finalWater: ratio(finalWater),
    ninetyTime: new Quantity(uptakeTime.si({ share: 0.9, thickness: x.thickness, diffusivity }), 'time'),
    modulusShare: ratio(share(typical('modulusConditionedRatio'), typical('modulusSaturatedRatio'))),
    strengthShare: ratio(share(typical('strengthConditionedRatio'), typical('strengthSaturatedRatio'))),
    growth: new Quantity(moistureGrowth.si({ length: 1, before: 0, after: moisture, swelling: typical('moistureSwelling') }), 'strain'),
    source: weakest(used.map(({ source }) => source)),
  }
}
