import { type Formula, formula, type Input, type Inputs, type Property } from '../formula/index.js'
import { InputError, type Kind, nearName, Quantity, show } from '../units/index.js'
import { checkReserves, governingReserve } from './assess.js'
import { CASE_IDS, type CaseId } from './cases/catalogue.js'
import { retentionOf } from './checks/cord.js'
import { CHECKS } from './checks/index.js'
import { JOINTS, type LegNumbers, legNumbers, prepare } from './numbers.js'
import { bandProperty, isBand, type MaterialInputs, type MaterialValues, materialRanges, sure, withMaterialValues } from './ranges.js'
import type { Leg } from './specification/describe.js'
import type { Band } from './specification/fields.js'
import { type LegData, legSchema } from './specification/schema.js'
import { referencesOf } from './specification/walk.js'

/** What the formula of a leg answers with. */
export interface LegFormulaOptions {
  /** Load cases to run; all when silent. */
  readonly cases?: readonly CaseId[]
  /** One check instead of the governing one: its id, with the joint after a blank where it belongs to one (`'pin.bending knee'`). */
  readonly check?: string
  /**
   * Paths of the values whose ranges studies see without being given: frictions, shares that are left, properties of materials. All that
   * carry a range when silent; none for `[]`.
   */
  readonly uncertain?: readonly string[]
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
      : N]: NonNullable<T[N]> extends Band ? { readonly kind: 'ratio'; readonly optional: true } : InputOf<NonNullable<T[N]>>
}
/** The quantities of a leg at their places, and the properties of its materials, as inputs of a formula; each may be left out. */
export type LegInputs = InputsOf<Omit<LegData, 'schemaVersion' | 'materials'>> & { readonly materials: MaterialInputs }

/**
 * A leg as a formula of its own quantities, for the tools that work on any formula: solve for a field, sweep, sensitivities, uncertainty, optimise.
 *
 * Inputs are the leg's quantities at their paths (`'drives.knee.pretension'`), each with the leg's own value where it is left out; the result is
 * the smallest reserve of the verdict, or the reserve of one check. Values that carry a range (friction, share of the pretension left, what an
 * end keeps: `'drives.knee.friction'`; properties of the materials it names: `'materials.ASA.modulus'`) scatter over it in `uncertainty`,
 * `varianceShares`, `bounds` and `sensitivity` unless a value is given. Not among them are the ranges of magnet grades, fibre temperatures and
 * motor constants, which the leg is assessed with at their typical values.
 */
export function legFormula(leg: Leg, options: LegFormulaOptions = {}): Formula<LegInputs, 'ratio'> {
  const base = legNumbers(leg)
  const { cases = CASE_IDS, check, uncertain } = options
  if (check !== undefined) known(check)
  const si = (given: unknown): number => {
    const { materials, ...rest } = given as { materials?: MaterialValues }
    const same = merged(base, rest) as LegNumbers
    const x = materials === undefined ? same : { ...same, materials: withMaterialValues(base.materials, materials) }
    return check === undefined ? governingReserve(x, cases).reserve : (checkReserves(x, cases).get(check) ?? 0)
  }
  return formula('leg.reserve', {
    inputs: legInputs(leg, base, uncertain),
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

/** All inputs of a leg's formula. What has a range has it as its default, where the tools look for it. */
function legInputs(leg: Leg, base: LegNumbers, uncertain: readonly string[] | undefined): Inputs {
  const { defaults: _, materials: __, ...data } = leg
  const prepared = prepare(base)
  // What an end of cord keeps stands in the table where the leg does not say.
  const keeps = Object.fromEntries(JOINTS.map((joint) => [joint, { ...data.drives[joint], endRetention: retentionOf(prepared, joint) }]))
  const inputs = inputsOf({ ...data, drives: keeps })
  const ranges = materialRanges(base, referencesOf(legSchema, leg, 'material'), prepared.moisture)
  const materials: Record<string, Input> = {}
  for (const [name, properties] of ranges) {
    const fields = Object.fromEntries([...properties].map(([property, value]) => [property, ranged(value)]))
    materials[name] = { fields, optional: true }
  }
  const all = { ...inputs, materials: { fields: materials, optional: true } } as Inputs
  if (uncertain === undefined) return all
  const paths = scalarPathsWithDefault(all)
  const unknown = uncertain.filter((path) => !paths.includes(path))
  if (unknown.length > 0)
    throw new InputError(
      'legFormula',
      unknown.map((path) => {
        const near = nearName(path, paths)
        const accepts = `must be one of the values with a range: ${paths.join(', ')}`
        return { path: 'uncertain', given: show(path), accepts: `${accepts}${near === undefined ? '' : `; did you mean ${near}?`}` }
      }),
    )
  return keepDefaults(all, uncertain)
}

const ranged = (value: Property): Input => ({ kind: value.kind, default: value, optional: true }) as Input

/** Paths of the inputs that have a range. */
function scalarPathsWithDefault(inputs: Inputs, prefix = ''): string[] {
  return Object.entries(inputs).flatMap(([name, input]) =>
    typeof input === 'string' || !('fields' in input)
      ? typeof input === 'object' && 'default' in input
        ? [prefix + name]
        : []
      : scalarPathsWithDefault(input.fields, `${prefix}${name}.`),
  )
}

/** The same inputs with ranges at some paths only. */
function keepDefaults(inputs: Inputs, paths: readonly string[], prefix = ''): Inputs {
  return Object.fromEntries(
    Object.entries(inputs).map(([name, input]): [string, Input] => {
      if (typeof input === 'string') return [name, input]
      if ('fields' in input) return [name, { ...input, fields: keepDefaults(input.fields, paths, `${prefix}${name}.`) }]
      if (!('default' in input) || paths.includes(prefix + name)) return [name, input]
      const { default: _, ...rest } = input
      return [name, rest as Input]
    }),
  )
}

/** Inputs of all quantities of a record, at their places; each may be left out. */
function inputsOf(record: object): Record<string, unknown> {
  const inputs: Record<string, unknown> = {}
  for (const [name, value] of Object.entries(record)) {
    if (value instanceof Quantity) inputs[name] = { kind: value.kind as Kind, optional: true }
    else if (isBand(value)) inputs[name] = ranged(bandProperty(value))
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
  if (typeof given === 'number' && (base === undefined || isBand(base))) return sure(given)
  if (typeof given !== 'object' || given === null) return given
  const copy: Record<string, unknown> = { ...(base as Record<string, unknown>) }
  for (const name in given) copy[name] = merged(copy[name], (given as Record<string, unknown>)[name])
  return copy
}
