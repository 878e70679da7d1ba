// Inputs that formulas of solids share.

export const CONDUCTIVITY = {
  /** Conductivity. */
  conductivity: { kind: 'thermalConductivity', above: 0 },
} as const
