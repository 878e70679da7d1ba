import { bracketRoot } from '../numeric/index.js'

/** A relaxation series in SI numbers. */
export interface RelaxationSi {
  /** Modulus after endless time, Pa. */
  readonly longTermModulus: number
  /** Terms of the series. */
  readonly terms: readonly {
    /** Modulus that relaxes, Pa. */
    readonly modulus: number
    /** Relaxation time of the term, s. */
    readonly time: number
  }[]
}

/** A compliance series in SI numbers. */
export interface ComplianceSi {
  /** Compliance at once after loading, 1/Pa. */
  readonly instantCompliance: number
  /** Terms of the series. */
  readonly terms: readonly {
    /** Compliance that is added with time, 1/Pa. */
    readonly compliance: number
    /** Retardation time of the term, s. */
    readonly time: number
  }[]
  /** Viscosity of the flow that never ends, Pa s; absent for a solid. */
  readonly viscosity?: number | undefined
}

const sorted = <T extends { readonly time: number }>(
  terms: readonly T[],
  size: (term: T) => number,
  make: (size: number, time: number) => T,
): T[] => {
  const kept = terms.filter((term) => size(term) > 0).sort((a, b) => a.time - b.time)
  const merged: T[] = []
  for (const term of kept) {
    const last = merged.at(-1)
    if (last !== undefined && last.time === term.time) merged[merged.length - 1] = make(size(last) + size(term), term.time)
    else merged.push(term)
  }
  return merged
}

/** One pole of a transformed response: it adds residue(x)/(x − at). */
interface Pole {
  readonly at: number
  readonly residue: (x: number) => number
}

/**
 * The root of constant + Σ residue/(x − at) between a low end and a high end, either of which may be a pole of the sum.
 * The function is multiplied by the distances to those poles, so that it is finite there; solved in the logarithm, since poles lie decades apart.
 */
function rootBetween(constant: number, poles: readonly Pole[], low: number, high: number): number {
  const atLow = poles.find(({ at }) => at === low)
  const atHigh = poles.find(({ at }) => at === high)
  const others = poles.filter((pole) => pole !== atLow && pole !== atHigh)
  const cleared = (x: number) => {
    const toLow = atLow === undefined ? 1 : x - low
    const toHigh = atHigh === undefined ? 1 : high - x
    let sum = constant
    for (const { at, residue } of others) sum += residue(x) / (x - at)
    sum *= toLow * toHigh
    if (atLow !== undefined) sum += atLow.residue(x) * toHigh
    if (atHigh !== undefined) sum -= atHigh.residue(x) * toLow
    return sum
  }
  const [from, to] = [cleared(low), cleared(high)]
  if (from > 0 === to > 0) return Math.abs(from) < Math.abs(to) ? low : high
  if (low === 0) return bracketRoot(cleared, low, high)
  const x = low * Math.exp(bracketRoot((y) => cleared(low * Math.exp(y)), 0, Math.log(high / low)))
  return Math.min(Math.max(x, low), high)
}

/**
 * The creep compliance that belongs to a relaxation modulus, exactly: retardation times are the roots of the transformed modulus between its
 * relaxation times. (The reciprocal of the modulus is not the compliance.)
 *
 * Source: Park & Schapery 1999, Int. J. Solids Struct. 36:1653 (memory); one root between each pair of poles.
 */
export function complianceFromRelaxationSi(series: RelaxationSi): ComplianceSi {
  const terms = sorted(
    series.terms,
    (t) => t.modulus,
    (modulus, time) => ({ modulus, time }),
  )
  const longTerm = series.longTermModulus
  const instant = longTerm + terms.reduce((sum, { modulus }) => sum + modulus, 0)
  // s Ẽ(s) at s = −x, slowest term first.
  const poles = terms.map(({ modulus, time }): Pole => ({ at: 1 / time, residue: (x) => modulus * x })).reverse()
  const slope = (x: number) => terms.reduce((sum, { modulus, time }) => sum + (modulus * time) / (1 - x * time) ** 2, 0)
  const compliance: { compliance: number; time: number }[] = []
  for (let k = longTerm > 0 ? 0 : 1; k < poles.length; k++) {
    const high = (poles[k] as Pole).at
    const low = k > 0 ? (poles[k - 1] as Pole).at : (high * longTerm) / instant / 2
    const x = rootBetween(longTerm, poles, low, high)
    const size = 1 / (x * slope(x))
    if (size > 0) compliance.push({ compliance: size, time: 1 / x })
  }
  compliance.reverse()
  return { instantCompliance: 1 / instant, terms: compliance, ...(longTerm > 0 ? {} : { viscosity: slope(0) }) }
}

/** The relaxation modulus that belongs to a creep compliance, exactly; the inverse of `complianceFromRelaxationSi`. */
export function relaxationFromComplianceSi(series: ComplianceSi): RelaxationSi {
  const terms = sorted(
    series.terms,
    (t) => t.compliance,
    (compliance, time) => ({ compliance, time }),
  )
  const { instantCompliance: instant, viscosity } = series
  const flow = viscosity === undefined ? 0 : 1 / viscosity
  // s J̃(s) at s = −x, slowest term first; endless flow is a pole at zero.
  const poles = terms.map(({ compliance, time }): Pole => ({ at: 1 / time, residue: () => -compliance / time })).reverse()
  if (flow > 0) poles.unshift({ at: 0, residue: () => -flow })
  const slope = (x: number) =>
    terms.reduce((sum, { compliance, time }) => sum + (compliance * time) / (1 - x * time) ** 2, 0) + flow / x ** 2
  const reach = (terms.reduce((sum, { compliance, time }) => sum + compliance / time, 0) + flow) / instant
  const relaxation: { modulus: number; time: number }[] = []
  for (let k = 0; k < poles.length; k++) {
    const low = (poles[k] as Pole).at
    const x = rootBetween(instant, poles, low, poles[k + 1]?.at ?? low + 2 * reach)
    const size = 1 / (x * slope(x))
    if (size > 0) relaxation.push({ modulus: size, time: 1 / x })
  }
  relaxation.reverse()
  const last = instant + terms.reduce((sum, { compliance }) => sum + compliance, 0)
  return { longTermModulus: flow > 0 ? 0 : 1 / last, terms: relaxation }
}
