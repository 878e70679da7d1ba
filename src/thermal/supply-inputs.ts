// Inputs that formulas of the supply share.

export const OPEN_CIRCUIT_VOLTAGE = {
  /** Voltage of the battery without load. */
  openCircuitVoltage: { kind: 'voltage', above: 0 },
} as const

export const SUPPLY_RESISTANCE = {
  /** Resistance of battery, connectors and leads, there and back. */
  resistance: { kind: 'electricalResistance', min: 0 },
} as const
