// Inputs that formulas of finned sinks share.

export const SINK_WIDTH = {
  /** Width of the base across the fins. */
  width: { kind: 'length', above: 0 },
} as const

/** Fins of a sink. */
export const FINS = {
  /** Length of a fin from base to tip. */
  finLength: { kind: 'length', above: 0 },
  /** Thickness of a fin. */
  finThickness: { kind: 'length', above: 0 },
  /** Number of fins. */
  fins: { kind: 'count', min: 2, whole: true },
} as const

export const BASE_TEMPERATURE = {
  /** Temperature of the base. */
  surfaceTemperature: { kind: 'temperature', min: '-60 degC', max: '400 degC' },
} as const
