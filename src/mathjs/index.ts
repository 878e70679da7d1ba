/**
 * The bridge to mathjs: free-form unit text, mathjs unit objects, and the equations of formulas as MathML. A subpath of its own, since loading mathjs takes
 * a while.
 *
 * Text is parsed as a number with units, never evaluated as an expression.
 *
 * @module
 */
import { create, createUnitDependencies, type FactoryFunctionMap, type MathJsInstance, type Unit, unitDependencies } from 'mathjs'
import { foreignUnit, type Kind, Quantity, quantity, refuse } from '../units/index.js'

export { equationMarkup } from './equation-markup.js'
export { type FormulaCard, formulaCard } from './formula-card.js'

/** Units a workshop meets that mathjs lacks, by their definitions (SI Brochure, 9th ed.; NIST SP 811, appendix B). */
const EXTRA: Readonly<Record<string, string>> = {
  turn: `${2 * Math.PI} rad`,
  rpm: `${(2 * Math.PI) / 60} rad/s`,
  krpm: `${(2000 * Math.PI) / 60} rad/s`,
  gn: '9.80665 m/s^2',
  ozf: '0.0625 lbf',
  ksi: '1000 psi',
  tex: '1e-6 kg/m',
  dtex: '1e-7 kg/m',
}

let instance: MathJsInstance | undefined
function mathjs(): MathJsInstance {
  if (instance === undefined) {
    instance = create({ unitDependencies, createUnitDependencies } as FactoryFunctionMap)
    for (const [name, definition] of Object.entries(EXTRA)) instance.createUnit(name, definition)
  }
  return instance
}

/**
 * Reads free-form unit text such as `'0.2 lbf in / deg'`, or a mathjs unit, as a quantity of the given kind.
 * Throws an `InputError` when the text is not a number with units or its dimensions are not those of the kind. A
 * temperature difference can only be read in kelvin: text in degrees names a temperature.
 */
export function fromMathjs<K extends Kind>(kind: K, given: string | Unit): Quantity<K> {
  const unit = typeof given === 'string' ? parsed(kind, given) : given
  if (kind === 'temperatureDifference') {
    if (/deg|cel|fah/i.test(unit.formatUnits()))
      refuse('fromMathjs', 'given', given, 'must be in kelvin: a number of degrees names a temperature, not a difference')
    return new Quantity(unit.toNumber('K'), kind)
  }
  return quantity(kind, unit as never)
}

/** The quantity as a mathjs unit in the kind's SI unit. */
export function toMathjs(given: Quantity<Kind>): Unit {
  return mathjs().unit(given.si, foreignUnit(given.kind))
}

function parsed(kind: Kind, text: string): Unit {
  if (text.length > 200) refuse('fromMathjs', 'given', text, 'must be at most 200 characters')
  try {
    const unit = mathjs().unit(text)
    if (typeof unit.toJSON().value === 'number') return unit
  } catch {
    // mathjs speaks of character positions; the error below names what is accepted
  }
  refuse('fromMathjs', 'given', text, `must be a number with units, such as '0.2 ${foreignUnit(kind)}'`)
}
