/**
 * Quantities: SI numbers with a kind, read from text, unit functions or foreign unit objects, and printed in engineering units.
 *
 * Conventions: values are stored in SI; absolute temperature and temperature difference are different kinds; an angle is in
 * radians inside and never a bare number at the door; pressure is a stress, a modulus of elasticity is a kind of its own.
 *
 * @module
 */

// Quantities

export { quantity, quantityFromJSON, read } from './given-quantity.js'
export type { Note } from './notes.js'
export { bandText, significant } from './printed.js'
export { ascending, type In, largest, Quantity, type QuantityJSON, smallest } from './quantity.js'

// Unit functions

export {
  A,
  count,
  days,
  deg,
  degC,
  GPa,
  gmm2,
  gram,
  Hz,
  hours,
  inch,
  J,
  JpK,
  KpW,
  kelvin,
  kelvins,
  kg,
  kgm2,
  kgpm3,
  kN,
  lbf,
  MPa,
  m,
  mil,
  minutes,
  mm,
  mm2,
  mm3,
  mm4,
  mps,
  mps2,
  mrad,
  ms,
  N,
  Nm,
  Nmm,
  Nmprad,
  Npm,
  Npmm,
  ohm,
  Pa,
  percent,
  ppmpK,
  rad,
  radps,
  ratio,
  rpm,
  rpmpV,
  s,
  strain,
  turn,
  um,
  V,
  W,
  WpK,
  WpmK,
  years,
} from './functions.js'

// Kinds and their units

export { type Kind, type KindRow, kindNames, kindRow, siUnit, type UnitOf, unitNames, unitOf } from './kinds.js'

// Reading text and reporting errors

export { InputError, type Issue, issue, refuse, show } from './errors.js'
export { nearName, nearNames } from './near.js'
export {
  accepted,
  didYouMean,
  exampleOf,
  type Foreign,
  foreignUnit,
  kindAccepted,
  kindWords,
  oneOfNames,
  type Plain,
  readAny,
  readAt,
} from './reading.js'
