import type { Kind } from '../units/index.js'

/**
 * The properties a material may carry, each with its kind of quantity.
 * The temperatures of a polymer are kinds of their own: a heat deflection temperature is no glass transition.
 */
export const PROPERTY_KINDS = {
  // mechanics; without a suffix: along the layers, dry, 23 °C, minutes
  density: 'density',
  modulus: 'modulus',
  modulusAcrossLayers: 'modulus',
  poissonRatio: 'ratio',
  tensileStrength: 'stress',
  yieldStrength: 'stress',
  proofStress: 'stress',
  shearStrength: 'stress',
  flexuralStrength: 'stress',
  acrossLayersRatio: 'ratio',
  interlayerShearRatio: 'ratio',
  strainLimit: 'strain',
  // time
  strengthKept1000Hours: 'ratio',
  strengthKept1Year: 'ratio',
  creepCoefficient: 'ratio',
  creepExponent: 'ratio',
  activationEnergy: 'activationEnergy',
  // fatigue
  fatigueRatio: 'ratio',
  enduranceLimit: 'stress',
  // temperatures
  glassTransitionTemperature: 'glassTransitionTemperature',
  glassTransitionConditioned: 'glassTransitionTemperature',
  heatDeflectionTemperature045: 'heatDeflectionTemperature045',
  heatDeflectionTemperature180: 'heatDeflectionTemperature180',
  vicatTemperature: 'vicatTemperature',
  meltingTemperature: 'meltingTemperature',
  serviceTemperature: 'serviceTemperature',
  // heat
  thermalConductivity: 'thermalConductivity',
  thermalConductivityAcrossLayers: 'thermalConductivity',
  specificHeat: 'specificHeat',
  thermalExpansion: 'thermalExpansion',
  thermalExpansionAcrossLayers: 'thermalExpansion',
  emissivity: 'ratio',
  // moisture
  moistureConditioned: 'ratio',
  moistureSaturated: 'ratio',
  moistureDiffusivity: 'massDiffusivity',
  moistureSwelling: 'ratio',
  modulusConditionedRatio: 'ratio',
  strengthConditionedRatio: 'ratio',
  modulusSaturatedRatio: 'ratio',
  strengthSaturatedRatio: 'ratio',
  // sliding
  frictionOnSteel: 'ratio',
  frictionOnSteelGreased: 'ratio',
  frictionOnSelf: 'ratio',
  pressureVelocityLimit: 'pressureVelocity',
  specificWearRate: 'specificWearRate',
} as const satisfies Record<string, Kind>

/** The name of a property. */
export type PropertyName = keyof typeof PROPERTY_KINDS

/** The kind of quantity of a property. */
export type KindOf<P extends PropertyName> = (typeof PROPERTY_KINDS)[P]
