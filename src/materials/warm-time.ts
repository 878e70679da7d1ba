import { bare, type Evaluator } from '../formula/index.js'
import type { Material } from './record.js'
import { arrheniusShift, equivalentTime } from './shift.js'
import { ROOM } from './temperature-factors.js'

/**
 * Shift factor of time from a temperature to 23 °C. Cold is not credited: below 23 °C it is 1, and so it is without an activation energy (0).
 * Above `highest` the shift keeps its value there.
 */
export const warmShift = (temperature: number, activationEnergy: number, highest: number, of: Evaluator = bare): number =>
  activationEnergy === 0 || temperature <= ROOM
    ? 1
    : of(arrheniusShift, {
        temperature: Math.min(temperature, Math.max(highest, ROOM)),
        reference: ROOM,
        activationEnergy,
        glassTransition: undefined,
      })

/** Time at 23 °C that does what a time at a temperature does, by the same shift. */
export function timeAtRoom(duration: number, temperature: number, activationEnergy: number, highest: number, of: Evaluator = bare): number {
  const shift = warmShift(temperature, activationEnergy, highest, of)
  return shift === 1 ? duration : of(equivalentTime, { time: duration, shift })
}

/** Temperature up to which Arrhenius's law is carried: the glass transition of a glass; a semicrystalline polymer has no such end below melting. */
export const shiftEndOf = ({ family, glassTransitionTemperature: glass }: Material, end: 'low' | 'typical' | 'high'): number =>
  family !== 'amorphous' || glass === undefined ? Number.POSITIVE_INFINITY : end === 'typical' ? glass.si : glass[end]
