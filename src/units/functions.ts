import type { Kind } from './kinds.js'
import { Quantity } from './quantity.js'

/** A function that makes a quantity of one kind from a number in one unit. */
type UnitFunction<K extends Kind> = (x: number) => Quantity<K>

/** A ratio from a number in units of one. */
export const ratio: UnitFunction<'ratio'> = (x) => new Quantity(x, 'ratio')
/** A ratio from a number in %. */
export const percent: UnitFunction<'ratio'> = (x) => new Quantity(x * 0.01, 'ratio')
/** A count from a number in units of one. */
export const count: UnitFunction<'count'> = (x) => new Quantity(x, 'count')
/** A strain from a number in units of one. */
export const strain: UnitFunction<'strain'> = (x) => new Quantity(x, 'strain')
/** A length from a number in m. */
export const m: UnitFunction<'length'> = (x) => new Quantity(x, 'length')
/** A length from a number in mm. */
export const mm: UnitFunction<'length'> = (x) => new Quantity(x * 1e-3, 'length')
/** A length from a number in µm. */
export const um: UnitFunction<'length'> = (x) => new Quantity(x * 1e-6, 'length')
/** A length from a number in in. */
export const inch: UnitFunction<'length'> = (x) => new Quantity(x * 0.0254, 'length')
/** A length from a number in mil. */
export const mil: UnitFunction<'length'> = (x) => new Quantity(x * (0.0254 / 1000), 'length')
/** An angle from a number in rad. */
export const rad: UnitFunction<'angle'> = (x) => new Quantity(x, 'angle')
/** An angle from a number in mrad. */
export const mrad: UnitFunction<'angle'> = (x) => new Quantity(x * 1e-3, 'angle')
/** An angle from a number in deg. */
export const deg: UnitFunction<'angle'> = (x) => new Quantity(x * (Math.PI / 180), 'angle')
/** An angle from a number in turn. */
export const turn: UnitFunction<'angle'> = (x) => new Quantity(x * (2 * Math.PI), 'angle')
/** An area from a number in mm^2. */
export const mm2: UnitFunction<'area'> = (x) => new Quantity(x * 1e-6, 'area')
/** A volume from a number in mm^3. */
export const mm3: UnitFunction<'volume'> = (x) => new Quantity(x * 1e-9, 'volume')
/** A second moment of area from a number in mm^4. */
export const mm4: UnitFunction<'secondMomentOfArea'> = (x) => new Quantity(x * 1e-12, 'secondMomentOfArea')
/** A time from a number in s. */
export const s: UnitFunction<'time'> = (x) => new Quantity(x, 'time')
/** A time from a number in ms. */
export const ms: UnitFunction<'time'> = (x) => new Quantity(x * 1e-3, 'time')
/** A time from a number in min. */
export const minutes: UnitFunction<'time'> = (x) => new Quantity(x * 60, 'time')
/** A time from a number in h. */
export const hours: UnitFunction<'time'> = (x) => new Quantity(x * 3600, 'time')
/** A time from a number in day. */
export const days: UnitFunction<'time'> = (x) => new Quantity(x * 86400, 'time')
/** A time from a number in year. */
export const years: UnitFunction<'time'> = (x) => new Quantity(x * 31557600, 'time')
/** A frequency from a number in Hz. */
export const Hz: UnitFunction<'frequency'> = (x) => new Quantity(x, 'frequency')
/** A velocity from a number in m/s. */
export const mps: UnitFunction<'velocity'> = (x) => new Quantity(x, 'velocity')
/** An acceleration from a number in m/s^2. */
export const mps2: UnitFunction<'acceleration'> = (x) => new Quantity(x, 'acceleration')
/** An angular velocity from a number in rad/s. */
export const radps: UnitFunction<'angularVelocity'> = (x) => new Quantity(x, 'angularVelocity')
/** An angular velocity from a number in rpm. */
export const rpm: UnitFunction<'angularVelocity'> = (x) => new Quantity(x * ((2 * Math.PI) / 60), 'angularVelocity')
/** A mass from a number in kg. */
export const kg: UnitFunction<'mass'> = (x) => new Quantity(x, 'mass')
/** A mass from a number in g. */
export const gram: UnitFunction<'mass'> = (x) => new Quantity(x * 1e-3, 'mass')
/** A moment of inertia from a number in kg m^2. */
export const kgm2: UnitFunction<'momentOfInertia'> = (x) => new Quantity(x, 'momentOfInertia')
/** A moment of inertia from a number in g mm^2. */
export const gmm2: UnitFunction<'momentOfInertia'> = (x) => new Quantity(x * 1e-9, 'momentOfInertia')
/** A density from a number in kg/m^3. */
export const kgpm3: UnitFunction<'density'> = (x) => new Quantity(x, 'density')
/** A force from a number in N. */
export const N: UnitFunction<'force'> = (x) => new Quantity(x, 'force')
/** A force from a number in kN. */
export const kN: UnitFunction<'force'> = (x) => new Quantity(x * 1e3, 'force')
/** A force from a number in lbf. */
export const lbf: UnitFunction<'force'> = (x) => new Quantity(x * (0.45359237 * 9.80665), 'force')
/** A torque from a number in N m. */
export const Nm: UnitFunction<'torque'> = (x) => new Quantity(x, 'torque')
/** A torque from a number in N mm. */
export const Nmm: UnitFunction<'torque'> = (x) => new Quantity(x * 1e-3, 'torque')
/** A stress from a number in Pa (a stress or pressure). */
export const Pa: UnitFunction<'stress'> = (x) => new Quantity(x, 'stress')
/** A stress from a number in MPa (a stress; moduli of elasticity have a kind of their own, see `GPa`). */
export const MPa: UnitFunction<'stress'> = (x) => new Quantity(x * 1e6, 'stress')
/** A modulus from a number in GPa (a modulus of elasticity). */
export const GPa: UnitFunction<'modulus'> = (x) => new Quantity(x * 1e9, 'modulus')
/** A linear stiffness from a number in N/m. */
export const Npm: UnitFunction<'linearStiffness'> = (x) => new Quantity(x, 'linearStiffness')
/** A linear stiffness from a number in N/mm. */
export const Npmm: UnitFunction<'linearStiffness'> = (x) => new Quantity(x * 1e3, 'linearStiffness')
/** A torsional stiffness from a number in N m/rad. */
export const Nmprad: UnitFunction<'torsionalStiffness'> = (x) => new Quantity(x, 'torsionalStiffness')
/** An energy from a number in J. */
export const J: UnitFunction<'energy'> = (x) => new Quantity(x, 'energy')
/** A power from a number in W. */
export const W: UnitFunction<'power'> = (x) => new Quantity(x, 'power')
/** A temperature from a number in K (an absolute temperature). */
export const kelvin: UnitFunction<'temperature'> = (x) => new Quantity(x, 'temperature')
/** A temperature difference from a number in K (a difference of temperatures). */
export const kelvins: UnitFunction<'temperatureDifference'> = (x) => new Quantity(x, 'temperatureDifference')
/** A thermal expansion from a number in ppm/K. */
export const ppmpK: UnitFunction<'thermalExpansion'> = (x) => new Quantity(x * 1e-6, 'thermalExpansion')
/** A thermal conductivity from a number in W/(m K). */
export const WpmK: UnitFunction<'thermalConductivity'> = (x) => new Quantity(x, 'thermalConductivity')
/** A thermal resistance from a number in K/W. */
export const KpW: UnitFunction<'thermalResistance'> = (x) => new Quantity(x, 'thermalResistance')
/** A thermal conductance from a number in W/K. */
export const WpK: UnitFunction<'thermalConductance'> = (x) => new Quantity(x, 'thermalConductance')
/** A heat capacity from a number in J/K. */
export const JpK: UnitFunction<'heatCapacity'> = (x) => new Quantity(x, 'heatCapacity')
/** A voltage from a number in V. */
export const V: UnitFunction<'voltage'> = (x) => new Quantity(x, 'voltage')
/** A current from a number in A. */
export const A: UnitFunction<'current'> = (x) => new Quantity(x, 'current')
/** An electrical resistance from a number in ohm. */
export const ohm: UnitFunction<'electricalResistance'> = (x) => new Quantity(x, 'electricalResistance')
/** A speed constant from a number in rpm/V. */
export const rpmpV: UnitFunction<'speedConstant'> = (x) => new Quantity(x * ((2 * Math.PI) / 60), 'speedConstant')
/** A temperature from a number in degrees Celsius. */
export const degC: UnitFunction<'temperature'> = (x) => new Quantity(x + 273.15, 'temperature')
