// Inputs that formulas of films and radiation share.

export const AIR_PRESSURE = {
  /** Air pressure. */
  pressure: { kind: 'stress', above: 0, default: '101325 Pa' },
} as const

export const MOUNT_AIR = {
  /** Temperature of the air. */
  air: { kind: 'temperature', min: '-60 degC', max: '100 degC' },
} as const

export const PRANDTL = {
  /** Prandtl number. */
  prandtl: { kind: 'ratio', above: 0 },
} as const

export const SURFACE_TEMPERATURE = {
  /** Temperature of the surface. */
  surfaceTemperature: { kind: 'temperature', min: '-60 degC', max: '600 degC' },
} as const

export const AIR_TEMPERATURE = {
  /** Temperature of the air. */
  airTemperature: { kind: 'temperature', min: '-60 degC', max: '200 degC' },
} as const

export const EMISSIVITY = {
  /** Emissivity of the surface. */
  emissivity: { kind: 'ratio', min: 0, max: 1 },
} as const
