/**
 * Every formula of the library, as data: for reference pages, search, notebooks and tools that work on any formula.
 *
 * @module
 */
import * as capstan from '../capstan/index.js'
import * as fasteners from '../fasteners/index.js'
import type { AnyFormula } from '../formula/index.js'
import * as kinematics from '../kinematics/index.js'
import * as materials from '../materials/index.js'
import * as structures from '../structures/index.js'
import * as thermal from '../thermal/index.js'
import { nearNames } from '../units/index.js'

const isFormula = (value: unknown): value is AnyFormula =>
  typeof value === 'function' && typeof (value as Partial<AnyFormula>).id === 'string' && 'def' in value

/** The modules' namespaces: an explicit list, so that a bundler cannot empty it. */
const MODULES: Readonly<Record<string, object>> = { capstan, kinematics, materials, fasteners, structures, thermal }

/** All formulas by id (`module.exportName`), in the order of the modules. */
export const catalogue: ReadonlyMap<string, AnyFormula> = new Map(
  Object.entries(MODULES).flatMap(([module, exports]) =>
    Object.entries(exports).flatMap(([name, value]): [string, AnyFormula][] => (isFormula(value) ? [[`${module}.${name}`, value]] : [])),
  ),
)

/** The formula of an id such as `'capstan.slackTension'`. Throws a `RangeError` that names the nearest ids. */
export function formulaOf(id: string): AnyFormula {
  const found = catalogue.get(id)
  if (found === undefined) {
    const near = nearNames(id, catalogue.keys())
    throw new RangeError(`no formula '${id.slice(0, 80)}'${near.length > 0 ? `; near it: ${near.join(', ')}` : ''}`)
  }
  return found
}
