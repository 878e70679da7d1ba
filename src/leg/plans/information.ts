import { checkReserves } from '../assess/quick.js'
import type { CaseId } from '../cases/events.js'
import type { LegNumbers } from '../leg-numbers.js'
import { isBand, sure } from '../ranges.js'

/** The effect of a field on the verdict. */
export interface Information {
  /** Sum over all checks near their limit of how far the reserve moves (natural logarithm) while the field runs through its range. */
  readonly information: number
  /** The check that moves most. */
  readonly moves: string | undefined
}

/** Reserve above which a check does not decide the verdict. */
const NEAR = 4

/** How far reserves move between two legs. @internal */
export function informationOf(one: LegNumbers, other: LegNumbers, cases?: readonly CaseId[]): Information {
  const [low, high] = [checkReserves(one, cases), checkReserves(other, cases)]
  let [information, most, moves] = [0, 1e-6, undefined as string | undefined]
  for (const [check, a] of low) {
    const b = high.get(check)
    if (b === undefined || Math.min(a, b) > NEAR) continue
    // A reserve of nothing is as bad as a hundredth: a smaller one adds no information.
    const swing = Math.abs(Math.log(Math.max(a, 0.01) / Math.max(b, 0.01)))
    information += swing
    if (swing > most) [most, moves] = [swing, check]
  }
  return { information, moves }
}

/** A leg's numbers with one field at a value, without doubt. @internal */
export function withNumber(x: LegNumbers, path: string, value: number): LegNumbers {
  const put = (at: unknown, [step, ...rest]: readonly string[]): unknown => {
    // What may be left out is a band, but for the rate of a spring.
    if (step === undefined) return isBand(at) || (at === undefined && !path.endsWith('.rate')) ? sure(value) : value
    const record = at as Record<string, unknown>
    return { ...record, [step]: put(record[step], rest) }
  }
  return put(x, path.split('.')) as LegNumbers
}
