export { InputError, type Issue, show } from './errors.js';
export { A, count, days, deg, degC, GPa, gmm2, gram, Hz, hours, inch, J, JpK, KpW, kelvin, kelvins, kg, kgm2, kgpm3, kN, lbf, MPa, m, mil, minutes, mm, mm2, mm3, mm4, mps, mps2, mrad, ms, N, Nm, Nmm, Nmprad, Npm, Npmm, ohm, Pa, percent, ppmpK, rad, radps, ratio, rpm, rpmpV, s, strain, turn, um, V, W, WpK, WpmK, years, } from './functions.js';
export { KINDS, type Kind, siUnit, type UnitOf } from './kinds.js';
export { nearName, nearNames } from './near.js';
export { type Foreign, foreignUnit, type In, kindWords, type Note, type Plain, Quantity, type QuantityJSON, quantity, quantityFromJSON, read, significant, UnreadableQuantity, } from './quantity.js';
