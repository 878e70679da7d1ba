import { readInputs } from '../formula/index.js'
import type { StressConditions } from './allowable.js'

/** Direction of a load in a part made of layers. */
export type Direction = 'alongLayers' | 'acrossLayers' | 'interlayerShear'
/** Moisture state: as printed and dried, in equilibrium with 50 % humidity, or soaked. */
export type Moisture = 'dry' | 'conditioned' | 'saturated'

/** Reads stress conditions: SI numbers, or one `InputError` that lists every issue. */
export const conditionsReader = (where: string, given: StressConditions) =>
  readInputs(
    where,
    {
      direction: { oneOf: ['alongLayers', 'acrossLayers', 'interlayerShear'] },
      temperature: { kind: 'temperature', min: 0 },
      duration: { kind: 'time', min: 0 },
      moisture: { oneOf: ['dry', 'conditioned', 'saturated'] },
      cycles: { kind: 'count', min: 1, optional: true },
      safetyFactor: { kind: 'ratio', min: 1 },
    },
    given as never,
  ) as {
    readonly direction: Direction
    readonly temperature: number
    readonly duration: number
    readonly moisture: Moisture
    readonly cycles: number | undefined
    readonly safetyFactor: number
  }
