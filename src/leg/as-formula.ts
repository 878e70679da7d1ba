import { type Formula, formula, type Inputs } from '../formula/index.js'
import { InputError, type Kind, nearName, Quantity, show } from '../units/index.js'
import { checkReserves, governingReserve } from './assess.js'
import { CASE_IDS, type CaseId } from './cases/catalogue.js'
import { CHECKS } from './checks/index.js'
import { type LegNumbers, legNumbers } from './numbers.js'
import type { Leg } from './specification/describe.js'
import type { LegData } from './specification/schema.js'

/** What the formula of a leg answers with. */
export interface LegFormulaOptions {
  /** Load cases to run; all when silent. */
  readonly cases?: readonly CaseId[]
  /** One check instead of the governing one: its id, with the joint after a blank where it belongs to one (`'pin.bending knee'`). */
  readonly check?: string
}

type InputOf<T> =
  T extends Quantity<infer K extends Kind>
    ? { readonly kind: K; readonly optional: true }
    : { readonly fields: InputsOf<T>; readonly optional: true }
type InputsOf<T> = {
  readonly [N in keyof T & string as NonNullable<T[N]> extends Quantity
    ? N
    : NonNullable<T[N]> extends readonly unknown[] | string | number | boolean
      ? never
      : N]: InputOf<NonNullable<T[N]>>
}
/** The quantities of a leg at their places, as inputs of a formula; each may be left out. */
export type LegInputs = InputsOf<Omit<LegData, 'schemaVersion'>>

/**
 * A leg as a formula of its own quantities, for the tools that work on any formula: solve for a field, sweep, sensitivities, uncertainty, optimise.
 *
 * Inputs are the leg's quantities at their paths (`'drives.knee.pretension'`), each with the leg's own value where it is left out; the result is
 * the smallest reserve of the verdict, or the reserve of one check.
 */
export function legFormula(leg: Leg, options: LegFormulaOptions = {}): Formula<LegInputs, 'ratio'> {
  const base = legNumbers(leg)
  const { cases = CASE_IDS, check } = options
  if (check !== undefined) known(check)
  const si = (given: unknown): number => {
    const x = merged(base, given) as LegNumbers
    return check === undefined ? governingReserve(x, cases).reserve : (checkReserves(x, cases).get(check) ?? 0)
  }
  const { defaults: _, ...data } = leg
  return formula('leg.reserve', {
    inputs: inputsOf(data) as Inputs,
    output: 'ratio',
    assumes: ['typical values of everything uncertain'],
    source: [{ level: 'computed', where: 'every check of the leg in its load cases; see the calculation sheet of assess' }],
    si: si as never,
  }) as unknown as Formula<LegInputs, 'ratio'>
}

function known(check: string): void {
  const names = CHECKS.flatMap(({ id, scope }) => (scope === 'leg' ? [id] : [`${id} hip`, `${id} knee`]))
  if (names.includes(check)) return
  const near = nearName(check, names)
  throw new InputError('legFormula', [
    {
      path: 'check',
      given: show(check),
      accepts: `must be one of ${names.join(', ')}${near === undefined ? '' : `; did you mean ${near}?`}`,
    },
  ])
}

/** Inputs of all quantities of a record, at their places; each may be left out. */
function inputsOf(record: object): Record<string, unknown> {
  const inputs: Record<string, unknown> = {}
  for (const [name, value] of Object.entries(record)) {
    if (value instanceof Quantity) inputs[name] = { kind: value.kind as Kind, optional: true }
    else if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
      const fields = inputsOf(value)
      if (Object.keys(fields).length > 0) inputs[name] = { fields, optional: true }
    }
  }
  return inputs
}

/** The base with what is given put in its place; records on the way are copied, the rest is shared. */
function merged(base: unknown, given: unknown): unknown {
  if (given === undefined) return base
  if (typeof given !== 'object' || given === null) return given
  const copy: Record<string, unknown> = { ...(base as Record<string, unknown>) }
  for (const name in given) copy[name] = merged(copy[name], (given as Record<string, unknown>)[name])
  return copy
}
