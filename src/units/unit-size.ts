import { dimensionOf } from './dimensions.js'

/**
 * What unit names stand for, down to the SI base units: SI Brochure (9th ed., 2019) and NIST SP 811 (2008), appendix B. Prefixes are
 * added by `PREFIXES`. Radians and counts are pure numbers.
 */
const DEFINITIONS: Readonly<Record<string, string>> = {
  '%': '1e-2',
  ppm: '1e-6',
  count: '1',
  rad: '1',
  turn: `${2 * Math.PI} rad`,
  deg: 'turn/360',
  arcmin: 'deg/60',
  arcsec: 'arcmin/60',
  in: '25.4e-3 m',
  ft: '12 in',
  mil: '1e-3 in',
  L: '1e-3 m^3',
  min: '60 s',
  h: '60 min',
  day: '24 h',
  week: '7 day',
  year: '365.25 day',
  Hz: '1/s',
  rpm: 'turn/min',
  gn: '9.80665 m/s^2',
  g: '1e-3 kg',
  t: '1e3 kg',
  lb: '0.45359237 kg',
  oz: 'lb/16',
  tex: 'g/km',
  N: 'kg m/s^2',
  kgf: 'kg gn',
  lbf: 'lb gn',
  ozf: 'oz gn',
  kip: '1e3 lbf',
  Pa: 'N/m^2',
  bar: '1e5 Pa',
  psi: 'lbf/in^2',
  ksi: '1e3 psi',
  J: 'N m',
  eV: '1.602176634e-19 J',
  W: 'J/s',
  hp: '550 lbf ft/s',
  degC: 'K',
  '°C': 'K',
  degR: 'K/1.8',
  degF: 'degR',
  V: 'W/A',
  C: 'A s',
  ohm: 'V/A',
  Wb: 'V s',
  T: 'Wb/m^2',
  H: 'Wb/A',
  F: 'C/V',
}

/** Powers of ten. */
const PREFIXES: Readonly<Record<string, number>> = { n: -9, µ: -6, u: -6, m: -3, c: -2, d: -1, k: 3, M: 6, G: 9 }

/** A product under way: powers of ten are kept apart, so that a decimal multiple of an SI unit has an exact factor. */
interface Product {
  over: number
  under: number
  tens: number
  dim: number
}

/** Takes the units and numbers of a text, such as `J/(kg K)`, into a product: what follows a slash, or its brackets, divides. */
function takeText(product: Product, text: string, power: number): void {
  let group = power
  let next = power
  for (const [part] of text.matchAll(/[/()]|[^ /()]+/g)) {
    if (part === '/') next = -group
    else if (part === '(') group = next
    else if (part === ')') next = group = power
    else {
      const [name, exponent = 1] = part.split('^')
      takeName(product, name as string, next * +exponent)
      next = group
    }
  }
}

function takeName(product: Product, name: string, power: number): void {
  const dim = dimensionOf(name)
  const definition = DEFINITIONS[name]
  if (dim !== 0) product.dim += power * dim
  else if (definition !== undefined) takeText(product, definition, power)
  else if (/\d/.test(name)) {
    const [number, tens = 0] = name.split('e')
    if (power > 0) product.over *= Number(number) ** power
    else product.under *= Number(number) ** -power
    product.tens += +tens * power
  } else {
    product.tens += (PREFIXES[name[0] as string] as number) * power
    takeName(product, name.slice(1), power)
  }
}

/** Where the scales of temperature begin, in kelvin. */
const ZERO_AT: Readonly<Record<string, number>> = { degC: 273.15, '°C': 273.15, degF: 459.67 / 1.8 }

/** A unit: its size in the SI unit, where its scale begins there (0 for all but scales of temperature), and its packed dimensions. */
export interface Unit {
  /** Size of the unit in the SI unit. */
  readonly size: number
  /** Where its scale begins, in the SI unit; 0 for all but scales of temperature. */
  readonly zero: number
  /** Dimensions, packed into one number. */
  readonly dim: number
}

/** Works a unit out from its name. */
export function unitNamed(name: string): Unit {
  const product: Product = { over: 1, under: 1, tens: 0, dim: 0 }
  takeText(product, name, 1)
  const { over, under, tens, dim } = product
  const size = tens < 0 ? over / (under * 10 ** -tens) : (over * 10 ** tens) / under
  return { size, zero: ZERO_AT[name] ?? 0, dim }
}
