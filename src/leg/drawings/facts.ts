import { amountText } from '../assess/sentence.js'
import { calculationOf, type LegCalculation, placeOf } from '../calculation.js'
import { type CaseId, LOAD_CASES } from '../cases/events.js'
import { type Prepared, prepare } from '../numbers.js'
import { drawnNumbers } from '../plans/bench.js'
import { reserveText } from '../report/content.js'
import type { Assessment, CheckResult } from '../result.js'
import type { Index, Value } from '../run/index.js'
import { strideOf } from '../stride-of.js'

/** Names of instances: a joint, an event, a bolt group. */
export type Names = { readonly [X in Index]?: string }

/** Values of an assessed leg for its drawings. Drawings calculate no stress and no temperature: they read them here. */
export class Facts {
  readonly calculation: LegCalculation
  readonly leg: Prepared
  readonly #strides: { [G in 'walk' | 'trot']?: ReturnType<typeof strideOf> } = {}

  constructor(readonly assessment: Assessment) {
    this.leg = prepare(drawnNumbers(assessment.leg))
    this.calculation = calculationOf(this.leg.x)
    this.leg.kept.calculation = this.calculation
  }

  /** A stride of walk or trot; made once. */
  stride(gait: 'walk' | 'trot'): ReturnType<typeof strideOf> {
    this.#strides[gait] ??= strideOf(this.leg, gait)
    return this.#strides[gait]
  }

  /** A value for instances by name. Throws the error of a value that cannot be calculated. */
  get<T, A extends Index>(of: Value<T, A>, names: Names = {}): T {
    return this.calculation.get(of, this.where(names) as never)
  }

  /** A value, or nothing where it cannot be calculated. */
  tried<T, A extends Index>(of: Value<T, A>, names: Names = {}): T | undefined {
    try {
      return this.get(of, names)
    } catch {
      return undefined
    }
  }

  /** A length in millimetres. */
  mm<A extends Index>(of: Value<number, A>, names: Names = {}): number {
    return 1000 * this.get(of, names)
  }

  /** The name of the instance that a reference stands for, such as a material. */
  named<A extends Index>(index: Index, of: Value<number, A>, names: Names = {}): string {
    return this.calculation.instances.name(index, this.get(of, names))
  }

  /** Instances by name, with what they imply. */
  where(names: Names) {
    return this.calculation.instances.implied(placeOf(this.calculation, { leg: 'leg', ...names }))
  }

  /** Names of the instances of an index. */
  all(index: Index): readonly string[] {
    return this.calculation.instances.all(index).map((of) => this.calculation.instances.name(index, of))
  }

  /** Event, air and age of a load case. */
  case(id: CaseId): Names {
    const { event, air, age } = LOAD_CASES[id]
    return { event, air, age }
  }

  /** The check nearest to its limit among some, named by id, of a joint or of any. */
  worst(ids: readonly string[], joint?: string): CheckResult | undefined {
    return this.assessment.checks.find((check) => ids.includes(check.id) && of(check, joint))
  }

  /** Checks by id, nearest to their limits first. */
  checks(ids: readonly string[], joint?: string): readonly CheckResult[] {
    return this.assessment.checks.filter((check) => ids.includes(check.id) && of(check, joint))
  }
}

const of = (check: CheckResult, joint: string | undefined) => joint === undefined || check.joint === undefined || check.joint === joint

/** Whether a check holds with its required reserve, holds below it, or fails. */
export const sign = ({ reserve, requiredReserve }: CheckResult): '✓' | '!' | '✕' =>
  reserve < 1 ? '✕' : reserve < requiredReserve ? '!' : '✓'

/** Demand, capacity and reserve of a check in one line. */
export const resultText = (check: CheckResult): string =>
  `${amountText(check.demand)} of ${amountText(check.capacity)}, reserve ${reserveText(check.reserve)} ${sign(check)}`

/** A check in a sentence of a description. */
export const resultSentence = (check: CheckResult): string =>
  `${capital(check.part)}, ${check.mode}: ${amountText(check.demand)} of ${amountText(check.capacity)}, reserve ${reserveText(check.reserve)}, ${check.caseTitle.toLowerCase()}.`

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
