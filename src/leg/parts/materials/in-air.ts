import type { LoadDirection } from '../../../materials/index.js'
import { line, type Use, value } from '../../run/index.js'
import { duration } from '../load/durations.js'
import { airTemperature, day } from '../load/fields.js'
import { allowableStress, relaxedModulus } from './values.js'

// What a material does in the air of an event is the same for every part that is made of it.

const strengthFor = (direction: LoadDirection) =>
  value(`material.strengthInAir.${direction}`, ['material', 'event', 'air'], (use, { material }) =>
    allowableStress(use, material, { direction, temperature: use(airTemperature), duration: use(duration) }),
  )

/** The stress that a material bears at the temperature of the air, for the time under load, by the direction of the load. */
export const strengthInAir = {
  alongLayers: strengthFor('alongLayers'),
  acrossLayers: strengthFor('acrossLayers'),
  interlayerShear: strengthFor('interlayerShear'),
} as const

/** Modulus that is left of a strain held in the air for the time under load. */
export const modulusInAir = value('material.modulusInAir', ['material', 'event', 'air'], (use, { material }) =>
  relaxedModulus(use, material, use(airTemperature), use(duration)),
)

const longer = line.largest('time of relaxation', { time: 'time', least: 'time' }, 'time')
/** Time under load, s, a day at least. */
export const dayOrLonger = (use: Use<'event'>): number => use.run(longer, { time: use(duration), least: use(day) })
/** Modulus that is left of a strain held in the air for the time under load, a day at least. */
export const modulusAfterADay = value('material.modulusAfterADay', ['material', 'event', 'air'], (use, { material }) =>
  relaxedModulus(use, material, use(airTemperature), dayOrLonger(use)),
)
