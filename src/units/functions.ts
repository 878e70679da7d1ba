import { type Kind, type KindRow, kindRow, type UnitOf, unitOf } from './kinds.js'
import { Quantity } from './quantity.js'
import type { Unit } from './unit-size.js'

/** A function that makes a quantity of one kind from a number in one unit. */
type UnitFunction<K extends Kind> = (x: number) => Quantity<K>

function unit<K extends Kind>(kind: K, name: UnitOf<K>): UnitFunction<K> {
  let row: KindRow<K> | undefined
  let scale: Unit
  return (x) => {
    if (row === undefined) {
      row = kindRow(kind)
      scale = unitOf(row, name)!
    }
    return new Quantity(x * scale.size + scale.zero, kind, row.dim)
  }
}

/** A ratio from a number in units of one. */
export const ratio = /* @__PURE__ */ unit('ratio', '1')
/** A ratio from a number in %. */
export const percent = /* @__PURE__ */ unit('ratio', '%')
/** A count from a number in units of one. */
export const count = /* @__PURE__ */ unit('count', '1')
/** A strain from a number in units of one. */
export const strain = /* @__PURE__ */ unit('strain', '1')
/** A length from a number in m. */
export const m = /* @__PURE__ */ unit('length', 'm')
/** A length from a number in mm. */
export const mm = /* @__PURE__ */ unit('length', 'mm')
/** A length from a number in µm. */
export const um = /* @__PURE__ */ unit('length', 'µm')
/** A length from a number in in. */
export const inch = /* @__PURE__ */ unit('length', 'in')
/** A length from a number in mil. */
export const mil = /* @__PURE__ */ unit('length', 'mil')
/** An angle from a number in rad. */
export const rad = /* @__PURE__ */ unit('angle', 'rad')
/** An angle from a number in mrad. */
export const mrad = /* @__PURE__ */ unit('angle', 'mrad')
/** An angle from a number in deg. */
export const deg = /* @__PURE__ */ unit('angle', 'deg')
/** An angle from a number in turn. */
export const turn = /* @__PURE__ */ unit('angle', 'turn')
/** An area from a number in mm^2. */
export const mm2 = /* @__PURE__ */ unit('area', 'mm^2')
/** A volume from a number in mm^3. */
export const mm3 = /* @__PURE__ */ unit('volume', 'mm^3')
/** A second moment of area from a number in mm^4. */
export const mm4 = /* @__PURE__ */ unit('secondMomentOfArea', 'mm^4')
/** A time from a number in s. */
export const s = /* @__PURE__ */ unit('time', 's')
/** A time from a number in ms. */
export const ms = /* @__PURE__ */ unit('time', 'ms')
/** A time from a number in min. */
export const minutes = /* @__PURE__ */ unit('time', 'min')
/** A time from a number in h. */
export const hours = /* @__PURE__ */ unit('time', 'h')
/** A time from a number in day. */
export const days = /* @__PURE__ */ unit('time', 'day')
/** A time from a number in year. */
export const years = /* @__PURE__ */ unit('time', 'year')
/** A frequency from a number in Hz. */
export const Hz = /* @__PURE__ */ unit('frequency', 'Hz')
/** A velocity from a number in m/s. */
export const mps = /* @__PURE__ */ unit('velocity', 'm/s')
/** An acceleration from a number in m/s^2. */
export const mps2 = /* @__PURE__ */ unit('acceleration', 'm/s^2')
/** An angular velocity from a number in rad/s. */
export const radps = /* @__PURE__ */ unit('angularVelocity', 'rad/s')
/** An angular velocity from a number in rpm. */
export const rpm = /* @__PURE__ */ unit('angularVelocity', 'rpm')
/** A mass from a number in kg. */
export const kg = /* @__PURE__ */ unit('mass', 'kg')
/** A mass from a number in g. */
export const gram = /* @__PURE__ */ unit('mass', 'g')
/** A moment of inertia from a number in kg m^2. */
export const kgm2 = /* @__PURE__ */ unit('momentOfInertia', 'kg m^2')
/** A moment of inertia from a number in g mm^2. */
export const gmm2 = /* @__PURE__ */ unit('momentOfInertia', 'g mm^2')
/** A density from a number in kg/m^3. */
export const kgpm3 = /* @__PURE__ */ unit('density', 'kg/m^3')
/** A force from a number in N. */
export const N = /* @__PURE__ */ unit('force', 'N')
/** A force from a number in kN. */
export const kN = /* @__PURE__ */ unit('force', 'kN')
/** A force from a number in lbf. */
export const lbf = /* @__PURE__ */ unit('force', 'lbf')
/** A torque from a number in N m. */
export const Nm = /* @__PURE__ */ unit('torque', 'N m')
/** A torque from a number in N mm. */
export const Nmm = /* @__PURE__ */ unit('torque', 'N mm')
/** A stress from a number in Pa (a stress or pressure). */
export const Pa = /* @__PURE__ */ unit('stress', 'Pa')
/** A stress from a number in MPa (a stress; moduli of elasticity have a kind of their own, see `GPa`). */
export const MPa = /* @__PURE__ */ unit('stress', 'MPa')
/** A modulus from a number in GPa (a modulus of elasticity). */
export const GPa = /* @__PURE__ */ unit('modulus', 'GPa')
/** A linear stiffness from a number in N/m. */
export const Npm = /* @__PURE__ */ unit('linearStiffness', 'N/m')
/** A linear stiffness from a number in N/mm. */
export const Npmm = /* @__PURE__ */ unit('linearStiffness', 'N/mm')
/** A torsional stiffness from a number in N m/rad. */
export const Nmprad = /* @__PURE__ */ unit('torsionalStiffness', 'N m/rad')
/** An energy from a number in J. */
export const J = /* @__PURE__ */ unit('energy', 'J')
/** A power from a number in W. */
export const W = /* @__PURE__ */ unit('power', 'W')
/** A temperature from a number in K (an absolute temperature). */
export const kelvin = /* @__PURE__ */ unit('temperature', 'K')
/** A temperature difference from a number in K (a difference of temperatures). */
export const kelvins = /* @__PURE__ */ unit('temperatureDifference', 'K')
/** A thermal expansion from a number in ppm/K. */
export const ppmpK = /* @__PURE__ */ unit('thermalExpansion', 'ppm/K')
/** A thermal conductivity from a number in W/(m K). */
export const WpmK = /* @__PURE__ */ unit('thermalConductivity', 'W/(m K)')
/** A thermal resistance from a number in K/W. */
export const KpW = /* @__PURE__ */ unit('thermalResistance', 'K/W')
/** A thermal conductance from a number in W/K. */
export const WpK = /* @__PURE__ */ unit('thermalConductance', 'W/K')
/** A heat capacity from a number in J/K. */
export const JpK = /* @__PURE__ */ unit('heatCapacity', 'J/K')
/** A voltage from a number in V. */
export const V = /* @__PURE__ */ unit('voltage', 'V')
/** A current from a number in A. */
export const A = /* @__PURE__ */ unit('current', 'A')
/** An electrical resistance from a number in ohm. */
export const ohm = /* @__PURE__ */ unit('electricalResistance', 'ohm')
/** A speed constant from a number in rpm/V. */
export const rpmpV = /* @__PURE__ */ unit('speedConstant', 'rpm/V')
/** A temperature from a number in degrees Celsius. */
export const degC = /* @__PURE__ */ unit('temperature', 'degC')
