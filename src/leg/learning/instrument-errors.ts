import { INSTRUMENTS } from './instruments.js'
import type { MeasurementId } from './measurements.js'
import type { Parameter } from './model.js'

/** Standard deviations of the instruments of a log, by name. */
export type Accuracy = Readonly<Record<string, number>>

/** The error of an instrument as a parameter: nothing, give or take its accuracy. @internal */
export function errorOf(log: string, id: MeasurementId, name: string, accuracy: Accuracy): Parameter {
  const { what, cure } = INSTRUMENTS[id][name] as (typeof INSTRUMENTS)[MeasurementId][string]
  const deviation = Math.max(accuracy[name] as number, 1e-12)
  const far = 20 * deviation
  return {
    id: `${log}: ${name}`,
    what: `the ${what} (${log})`,
    field: false,
    start: 0,
    low: -far,
    high: far,
    scale: 'plain',
    deviation,
    cure,
  }
}

/** An offset that only the log determines. @internal */
export const freeZero = (log: string, what: string, within: number): Parameter => ({
  id: `${log}: ${what}`,
  what: `the ${what} (${log})`,
  field: false,
  start: 0,
  low: -within,
  high: within,
  scale: 'plain',
  deviation: undefined,
  cure: undefined,
})
