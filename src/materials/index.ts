/**
 * Printed polymers and metals: properties with range and source, strength by direction, temperature, time and moisture, creep.
 *
 * Conventions. Along the layers means in the plane of the layers; across is along the build direction, where tension opens layers.
 * A property without a suffix holds along the layers, dry, at 23 °C, for minutes. Stress is nominal, tension positive; strength ratios are
 * shares of the dry short-term strength along the layers. Temperatures of a polymer (glass transition, heat deflection at 0.45 and 1.80 MPa,
 * Vicat, melting, service) are kinds of their own. Water content is by mass, swelling is linear strain per share of water. Fatigue ratios are
 * the largest stress of the cycle at R = 0.1 over tensile strength; of metals they are amplitudes of a fully reversed stress. Clearances are
 * diametral.
 *
 * @module
 */

// Materials by name

export * from './data/index.js'
export {
  type MaterialDocument,
  type PropertyDocument,
  priorsOf,
  type ReadMaterialOptions,
  readMaterial,
  writeMaterial,
} from './document.js'
export { allMaterials, materialByName, materialNames } from './lookup.js'
export { materialJsonSchema } from './material-schema.js'
export type { MaterialName } from './names.js'
export { type OwnProperties, withProperties } from './own-properties.js'
export { doubtsAbout } from './plausibility.js'
export type { RangeEnd, RangeRule } from './range-ends.js'
export {
  defineMaterial,
  type Family,
  type KindOf,
  type Material,
  type MaterialHead,
  type MaterialWith,
  PROPERTY_KINDS,
  type Process,
  type PropertyName,
  type PropertyRow,
  type PropertyRows,
  propertiesOf,
  requireProperty,
} from './record.js'

// Strength

export { type AllowableStress, allowableStress, type StrengthFactor } from './allowable.js'
export * from './combined-stress.js'
export type { LoadDirection, MoistureState, StressConditions } from './conditions.js'
export { deratedModulus, deratedStrength, strainLimitedStress } from './derated.js'
export * from './infill.js'
export * from './layers.js'
export { durationFactor, fatigueFactor } from './strength-factors.js'
export { type StrengthNumbers, strengthNumbers, strengthSi } from './strength-numbers.js'
export type { TemperatureCurve } from './temperature-curve.js'
export { amorphousStrengthFactor, tabulatedStrengthFactor } from './temperature-factors.js'

// Stiffness

export * from './fibre-mixture.js'
export { type DesignModulus, designModulus, type ModulusConditions, type ModulusFactor } from './stiffness.js'

// Creep and relaxation

export * from './ageing.js'
export * from './creep.js'
export { type CurvePoint, isochronousCurve, isometricCurve, type RelaxationCurve, relaxationCurve, timeToStrain } from './creep-curves.js'
export {
  type CreepLaw,
  complianceLaw,
  findleyLaw,
  findleySinhLaw,
  type LinearCreepLaw,
  type LinearLawOptions,
  relaxationLaw,
} from './creep-law.js'
export * from './creep-steps.js'
export { boltzmannStrain, type StressHistoryPoint, type SuperpositionOptions, superposedSi } from './histories.js'
export { type ComplianceSi, complianceFromRelaxationSi, type RelaxationSi, relaxationFromComplianceSi } from './interconversion.js'
export {
  type Compliance,
  type ComplianceSeries,
  complianceFromRelaxation,
  type Relaxation,
  type RelaxationSeries,
  relaxationFromCompliance,
} from './interconversion-series.js'
export * from './power-law-relaxation.js'
export * from './prony.js'
export * from './shift.js'

// Fits of creep and relaxation

export { fitFindley, fitFindleySinh, fitNortonBailey } from './creep-fit.js'
export type { CreepFit, CreepFitOptions, CreepReading } from './creep-readings.js'
export {
  fitActivationEnergy,
  fitRelaxation,
  type RelaxationFit,
  type RelaxationReading,
  type ShiftReading,
} from './relaxation-fit.js'

// Fatigue, friction and wear

export * from './cyclic-life.js'
export * from './endurance-limit.js'
export { type SlidingFriction, type SlidingPair, slidingFriction } from './friction.js'
export * from './metal-fatigue.js'
export * from './plain-bearing.js'
export { SPRING_WIRES, springWire } from './spring-wire.js'

// Moisture

export * from './moisture.js'
export { moistureFactor } from './moisture.js'
export { type Climate, type WallMoisture, wallMoistureUptake } from './wall-moisture.js'

// Temperature limits

export { type ServiceLimit, type ServiceVerdict, serviceMargin, serviceVerdict } from './service.js'

// Tests on coupons

export { type CouponMaterial, type CouponSet, type CouponSetOf, materialFromCoupons, type WarmCoupons } from './coupons.js'
export * from './tolerance-factor.js'

// Charts

export { allowableChart, isochronousChart } from './charts.js'
