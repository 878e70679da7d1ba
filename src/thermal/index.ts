/**
 * Heat in a motor and its mount: losses, the ways heat leaves, networks in time, and which limit is met first.
 *
 * Conventions. Temperatures are absolute and differ in kind from differences. One motor description (peak line-to-line back-EMF per
 * rad/s and terminal resistance) gives every torque constant; a constant's kind says which current it is per, and a peak phase current is
 * never an rms one. Losses "at 20 °C" are what the same current would lose in cold copper. Heat flow is positive from the first named to the second. A
 * plate's faces are the motor's face and the free face; the mount temperature is that of the ring where motor and plate touch, never a plate mean.
 * Film properties are taken at the mean of surface and fluid, expansion at 1/T in kelvin. Gravity is 9.80665 m/s².
 *
 * Hot motors burn and batteries catch fire: results are estimates for trained judgement, and local codes come first.
 *
 * @module
 */

// Motor constants

export { type Motor, type MotorSpecification, motor } from './motor.js'
export {
  backEmfConstant,
  currentsForTorque,
  motorConstant,
  motorTorqueBand,
  terminalResistance,
  torqueConstants,
} from './motor-constants.js'
export { dragLoss, noLoadLoss, noLoadOnePoint, noLoadSplit } from './no-load.js'

// Losses

export { bridgeConductionLoss, bridgeSwitchingLoss } from './controller.js'
export {
  copperLoss,
  copperLossForTorque,
  copperLossFromRms,
  hottestPhaseRise,
  magnetDerating,
  phaseLossesAtStall,
  rmsTorque,
} from './copper.js'
export { adiabaticPulse, continuousLoss, hotResistance, runawayLoss, steadyWindingTemperature, windingHeatCapacity } from './hot-winding.js'
export { rippleIronLoss } from './ripple-loss.js'
export { windingHotSpot } from './winding-hot-spot.js'

// Air, convection and radiation

export { ATMOSPHERE, airProperties, GRAVITY, pressureAtAltitude, rayleighNumber } from './air.js'
export {
  forcedConvection,
  mixedConvection,
  nusseltCylinderCrossflow,
  nusseltFlatPlate,
  nusseltRotatingCylinder,
} from './forced-convection.js'
export {
  naturalConvection,
  nusseltHorizontalCylinder,
  nusseltPlateDown,
  nusseltPlateUp,
  nusseltVerticalPlate,
  nusseltVerticalPlateLaminar,
} from './natural-convection.js'
export { radiantFlux, radiationCoefficient, STEFAN_BOLTZMANN } from './radiation.js'
export { type CooledSurface, cooledSurface, type Surroundings } from './surface.js'
export { surfaceCoefficient } from './surface-coefficient.js'

// Conduction and solids

export { biotNumber, contactConductance, layerResistance, ringArea, shellResistance, surfaceResistance } from './conduction.js'
export { annularFin, barFin, straightFin } from './fins.js'
export { discSpreading, discSpreadingEstimate, halfSpaceSpreading, ringSpreading } from './spreading.js'
export {
  intermittentOverload,
  lumpedResponse,
  shortTimeOverload,
  thermalDiffusivity,
  thickBodyFlux,
  thickBodyStep,
  wallResponse,
} from './transient-solids.js'

// Plate and mount

export { canLaw, mountLaw } from './cooling-laws.js'
export { motorsOnPlate } from './motors-on-plate.js'
export { type MotorMount, motorMount } from './mount.js'
export { mountFilm } from './mount-film.js'
export type { MotorLoad } from './mount-loads.js'
export { mountPlate } from './mount-plate.js'
export type { MountSpecification } from './mount-specification.js'
export { plateLaw } from './plate-law.js'
export { plateStore } from './plate-store.js'
export { LONGEST_PLATE, ringOnRectangularPlate, ringsOnPlate } from './rectangular-plate.js'
export { ringOnPlate } from './ring-plate.js'
export { ringPlateProfile } from './ring-plate-profile.js'

// Heat sinks and remedies

export { compareMountRemedies, type Remedy, type RemedyRow } from './remedies.js'
export { bestFinSpacing, finCount, plateFinSink } from './sink.js'
export { plateFinSinkInDraught } from './sink-in-draught.js'
export { type BetterPolymer, standardRemedies } from './standard-remedies.js'

// Networks and measured constants

export { calibrate } from './calibrate.js'
export type { Calibration, Correction } from './calibration.js'
export {
  type Factors,
  type Loss,
  type Network,
  type NetworkLink,
  type NetworkNode,
  network,
  type Scatter,
  type SteadyTemperatures,
  type Temperatures,
  type Transient,
  type TransientRequest,
} from './network.js'
export { reduceNetwork, timeConstants } from './network-reduce.js'
export { type FittedStepResponse, fitStepResponse } from './step-response.js'
export type { TemperatureLog } from './temperature-log.js'

// Duty and limits

export { type DutyResult, type Phase, periodicSteadyState, shortTimeDuty, simulateOnce } from './duty.js'
export { intermittentDuty } from './intermittent-duty.js'
export {
  checkLimits,
  insulationAgeing,
  type LimitVerdict,
  type PartLimit,
  type PartVerdict,
  polymerLimit,
  temperatureMargin,
} from './limits.js'
export { motorBalance } from './motor-balance.js'
export { motorStall, motorWarmUp } from './motor-stall.js'
export { assessMount, continuousTorque, type MountVerdict } from './operating.js'
export { intermittentTorque, type TimeAtTorque, timeAtTorque } from './operating-duty.js'
export { runawayTorque } from './runaway-torque.js'
export { type TimeToLimit, timeToLimit } from './time-to-limit.js'
export type { TorqueLimit } from './torque-limits.js'
export { type SupplySpecification, type TorqueSpeedPoint, torqueSpeedLimit } from './torque-speed.js'

// Supply and battery

export { batteryHeat, costOfTransport, runningTime, strideCopperLoss } from './battery-run.js'
export { brakeResistor, busCapacitance, busVoltageRise } from './brake.js'
export { busPower, speedUnderSag } from './bus-power.js'
export { electricalPower, leadLoss, speedAtCurrent, supplySag, wireGauge } from './supply.js'

// Tables

export {
  adhesiveLimits,
  emissivities,
  insulationClasses,
  insulationRises,
  magnetGrades,
  type ThermalMaterial,
  thermalMaterials,
  touchThresholds,
} from './tables.js'

// Choosing a mount and a motor

export { type MountWish, type ProposedMount, proposeMount } from './propose.js'
export { type FiveNumbers, type TypicalMotor, typicalMotor } from './propose-motor.js'

// Charts

export { remedyChart, temperatureChart, torqueDutyChart } from './charts.js'
