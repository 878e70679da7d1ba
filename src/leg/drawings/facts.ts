import { amountTexts } from '../assess/sentence.js'
import { type CaseId, LOAD_CASES } from '../cases/events.js'
import type { CheckResult } from '../check-result.js'
import { legModel } from '../leg-model.js'
import { legNumbers } from '../numbers.js'
import { reserveText } from '../report/content.js'
import type { Assessment } from '../result.js'
import { strideOf } from '../stride-of.js'
import { LegValues, type Names } from './leg-values.js'
import { calculated } from './not-drawable.js'

export type { Names } from './leg-values.js'

/** Values of an assessed leg for its drawings. Drawings calculate no stress and no temperature: they read them here. */
export class Facts extends LegValues {
  readonly #strides: { [G in 'walk' | 'trot']?: ReturnType<typeof strideOf> } = {}

  constructor(readonly assessment: Assessment) {
    super(legModel(legNumbers(assessment.leg)))
  }

  /** A stride of walk or trot; made once. */
  stride(gait: 'walk' | 'trot'): ReturnType<typeof strideOf> {
    this.#strides[gait] ??= calculated(() => strideOf(this.leg, gait))
    return this.#strides[gait]
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
  `${amountTexts(check.demand, check.capacity).join(' against ')}, reserve ${reserveText(check.reserve)} ${sign(check)}`

/** A check in a sentence of a description. */
export const resultSentence = (check: CheckResult): string =>
  `${capital(check.part)} ${check.mode}: ${amountTexts(check.demand, check.capacity).join(' against ')}, reserve ${reserveText(check.reserve)}, ${check.caseTitle.toLowerCase()}.`

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
