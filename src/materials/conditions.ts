import { readInputs } from '../formula/index.js'
import type { In } from '../units/index.js'
import type { RangeRule } from './range-ends.js'

/** Direction of a load in a part made of layers. */
export type LoadDirection = 'alongLayers' | 'acrossLayers' | 'interlayerShear'
/** Moisture state: as printed and dried, in equilibrium with 50 % humidity, or soaked. */
export type MoistureState = 'dry' | 'conditioned' | 'saturated'

/** What a stress must be allowed for. Everything that lessens strength must be given; only `cycles` may be absent, for a static load. */
export interface StressConditions {
  /** Direction of the load: along the layers, across them (pulling layers apart), or shear between them. */
  readonly direction: LoadDirection
  /** Temperature of the part. */
  readonly temperature: In<'temperature'>
  /** Time under load. */
  readonly duration: In<'time'>
  /** Moisture state: `dry`, `conditioned` (in equilibrium with 50 % humidity) or `saturated` (soaked). */
  readonly moisture: MoistureState
  /** Number of load cycles. Default: a static load. */
  readonly cycles?: In<'count'> | undefined
  /** Safety factor against rupture, at least 1. */
  readonly safetyFactor: In<'ratio'>
  /**
   * How the ranges of the values combine: `jointScatter` as if each scattered alone, `extremes` with all at their worst ends at once. Default `jointScatter`.
   */
  readonly range?: RangeRule | undefined
}

/** The rule for ranges as an input. */
export const RANGE_RULE = { oneOf: ['jointScatter', 'extremes'], default: 'jointScatter' } as const

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
      range: RANGE_RULE,
    },
    given as never,
  ) as {
    readonly direction: LoadDirection
    readonly temperature: number
    readonly duration: number
    readonly moisture: MoistureState
    readonly cycles: number | undefined
    readonly safetyFactor: number
    readonly range: RangeRule
  }
