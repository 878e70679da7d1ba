import { type Formula, formula, type Inputs } from '../formula/index.js'
import { InputError, type Kind, oneOfNames, type Quantity, refuse } from '../units/index.js'
import { QuickLeg } from './assess/quick.js'
import { appliesTo } from './cases/check.js'
import { ALL_CASE_IDS, type CaseId, LOAD_CASES } from './cases/events.js'
import type { Leg } from './document/describe.js'
import type { LegData } from './document/fields.js'
import type { CheckName } from './document/names.js'
import { movedInputs } from './earlier-inputs.js'
import { fieldInputs, legInputs } from './formula-inputs.js'
import type { LegNumbers } from './leg-numbers.js'
import { drivenJoints, legNumbers } from './numbers.js'
import { caseList, knownOptions } from './options.js'
import { CHECKS } from './parts/index.js'
import { isBand, type MaterialInputs, type MaterialValues, sure, withMaterialValues } from './ranges.js'
import type { Band } from './schema/field.js'

/** Result and inputs of the formula of a leg. */
export interface LegFormulaOptions {
  /** Load cases to run. Default: those of `assess`. */
  readonly cases?: readonly CaseId[]
  /** One check instead of the governing one: its id, with the joint after a blank where it belongs to one (`'pin.bending knee'`). */
  readonly check?: CheckName | (string & {})
  /**
   * Paths of the values whose ranges studies vary: frictions, shares that are left, properties of materials. `[]` is none. Default: all
   * that carry a range.
   */
  readonly uncertain?: readonly string[]
}

/** Of a union of sections, which is one section to a formula. */
type InputOf<T> = [T] extends [Quantity<infer K extends Kind>]
  ? { readonly kind: K; readonly optional: true }
  : { readonly fields: InputsOf<T>; readonly optional: true }
/** Sections of several kinds as one section with the fields of all. */
type Merged<T> = { readonly [N in T extends unknown ? keyof T : never]: T extends { readonly [M in N]?: infer V } ? V : never }
type InputsOf<T> = InputsOfMerged<Merged<T>>
type InputsOfMerged<T> = {
  readonly [N in keyof T & string as NonNullable<T[N]> extends Quantity
    ? N
    : NonNullable<T[N]> extends readonly unknown[] | number | boolean
      ? never
      : N]: NonNullable<T[N]> extends Band
    ? { readonly kind: 'ratio'; readonly optional: true }
    : NonNullable<T[N]> extends string
      ? { readonly oneOf: readonly NonNullable<T[N]>[]; readonly optional: true }
      : InputOf<NonNullable<T[N]>>
}
/** The quantities and words of a leg at their places, and the properties of its materials, as inputs of a formula; each may be left out. */
export type LegInputs = InputsOf<Omit<LegData, '$schema' | 'schemaVersion' | 'name' | 'remark' | 'materials'>> & {
  readonly materials: MaterialInputs
} & EarlierInputs

type CordDrive = Extract<LegData['joints']['knee']['drive'], { readonly kind: 'cord' }>
/** Paths of version 3, understood for one version. */
type EarlierInputs = InputsOf<{
  readonly drives: { readonly hip: CordDrive; readonly knee: CordDrive }
  readonly motor: LegData['motors'][string]
  readonly plate: LegData['plates'][string] & LegData['plates'][string]['size']
  readonly controller: LegData['controllers'][string]
  readonly sink: NonNullable<LegData['plates'][string]['sink']> & LegData['plates'][string]['size']
  readonly shaft: LegData['shafts'][string]
  readonly print: LegData['prints'][string]
  readonly usage: { readonly walk: LegData['gaits'][string]; readonly trot: LegData['gaits'][string] } & EarlierTimes &
    EarlierLengths & { readonly [N in 'traction' | 'wantedReserve']: Quantity<'ratio'> } & {
      readonly slope: Quantity<'angle'>
      readonly days: Quantity<'count'>
      readonly shelfTemperature: Quantity<'temperature'>
    }
  readonly environment: { readonly [N in 'normalAir' | 'hotAir' | 'coldAir']: Quantity<'temperature'> } & {
    readonly wind: Quantity<'velocity'>
  }
}>
type EarlierTimes = { readonly [N in 'stallTime' | 'shelfTime']: Quantity<'time'> }
type EarlierLengths = { readonly [N in 'hopHeight' | 'dropHeight' | 'landingTravel' | 'touchDownHeight']: Quantity<'length'> }

/** Reads the argument of a leg's kernel: the leg's numbers with the given ones in their places. */
export const legReader = (leg: Leg) => {
  const base = legNumbers(leg)
  const moved = movedInputs(leg)
  return (given: unknown): LegNumbers => {
    const { materials, ...rest } = moved(given as Record<string, unknown>) as { materials?: MaterialValues }
    const same = merged(base, rest) as LegNumbers
    return materials === undefined ? same : { ...same, materials: withMaterialValues(base.materials, materials) }
  }
}

/**
 * A leg as a formula of its own quantities, for the tools that work on any formula: solve for a field, sweep, sensitivities, uncertainty, optimise.
 *
 * Inputs are the leg's quantities and words at their paths (`'joints.knee.drive.pretension'`, `robot: { mass: '12 kg' }`), each with the leg's own
 * value as its default. The result is the margin of the verdict: the smallest ratio of reserve to required reserve, at least 1 where every check
 * has its required reserve. With `check` the result is the reserve of that check; a `NoResultError` where the check does not apply.
 *
 * Some values carry a range: friction, share of the pretension left, strength left in a cord end (`'joints.knee.drive.friction'`), and properties of the
 * materials that the leg names (`'materials.ASA.modulus'`). They scatter over this range in `uncertainty`, `varianceShares`, `bounds` and
 * `sensitivity` unless a value is given. Magnet grades, fibre temperatures and motor constants stay at their typical values.
 */
export function legFormula(
  /** The leg, from `describeLeg`. */
  leg: Leg,
  /** The check whose reserve is the result, the load cases, and the uncertain values. */
  options: LegFormulaOptions = {},
): Formula<LegInputs, 'ratio'> {
  knownOptions('legFormula', options, ['cases', 'check', 'uncertain'])
  return formulaOf(leg, options, () => legInputs(leg, options.uncertain))
}

/** The same of the fields alone, without the materials' properties: to find those takes a calculation of the leg. */
export const fieldFormula = (leg: Leg, options: Omit<LegFormulaOptions, 'uncertain'>): Formula<LegInputs, 'ratio'> =>
  formulaOf(leg, options, () => fieldInputs(leg))

function formulaOf(leg: Leg, { check, cases: given }: LegFormulaOptions, inputs: () => Inputs): Formula<LegInputs, 'ratio'> {
  const cases = caseList('legFormula', given)
  if (check !== undefined) {
    known(leg, check)
    applicable(check, cases)
  }
  const numbers = legReader(leg)
  const quick = new QuickLeg(cases)
  const si = (given: unknown): number =>
    check === undefined ? quick.governing(numbers(given)).margin : (quick.reserveOf(numbers(given), check) ?? Number.NaN)
  return formula(check === undefined ? 'leg.margin' : 'leg.reserve', {
    inputs: inputs(),
    output: 'ratio',
    assumes: ['typical values of everything uncertain'],
    source: [{ level: 'computed', where: 'every check of the leg in its load cases; see the calculation sheet of assess' }],
    si: si as never,
  }) as unknown as Formula<LegInputs, 'ratio'>
}

function known(leg: Leg, check: string): void {
  const joints = drivenJoints(legNumbers(leg))
  const names = CHECKS.flatMap(({ id, scope }) => (scope === 'leg' ? [id] : joints.map((joint) => `${id} ${joint}`)))
  if (names.includes(check)) return
  refuse('legFormula', 'check', check, oneOfNames(names, check))
}

/** Throws for a check that applies to none of the load cases. */
function applicable(check: string, cases: readonly CaseId[]): void {
  const [id] = check.split(' ')
  const own = ALL_CASE_IDS.filter((caseId) => CHECKS.some((each) => each.id === id && appliesTo(each, LOAD_CASES[caseId].event)))
  if (own.some((id) => cases.includes(id))) return
  throw new InputError('legFormula', [
    { path: 'cases', given: cases.join(', '), accepts: `must include a load case that ${check} applies to: ${own.join(', ')}` },
  ])
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
