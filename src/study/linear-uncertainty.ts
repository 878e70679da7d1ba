import { type AnyFormula, NoResultError } from '../formula/index.js'
import { Quantity } from '../units/index.js'
import { limitsAt, modelOf, slope } from './model.js'
import { spreadKind } from './show.js'
import type { UncertainModel } from './uncertain-model.js'
import type { LinearUncertainty } from './uncertainty-result.js'

/** First-order propagation with a correlation matrix. */
export function linearUncertainty(
  formula: AnyFormula,
  { varied, nominal, model }: UncertainModel,
  correlation: Float64Array,
): LinearUncertainty {
  const n = varied.length
  const { kind, name } = model.output
  const paths = varied.map(({ path }) => path)
  const limits = limitsAt(formula, paths)
  const fresh = modelOf(formula, nominal, paths, { kind, name }, [])
  const at = Float64Array.from(varied, (input) => input.nominal)
  const value = fresh.at(at)
  if (Number.isNaN(value)) throw new NoResultError(`${formula.id}: no finite answer exists at the typical values`)
  const effects = varied.map((input, i) => {
    const f = (x: number) => {
      const moved = at.slice()
      moved[i] = x
      return fresh.at(moved)
    }
    // A thousandth of the deviation: small against the curvature over it, large against rounding.
    return slope(f, input.nominal, 1e-3 * input.scatter.deviation, limits[i] as { low: number; high: number }).slope
  })
  const parts = effects.map((effect, i) => effect * (varied[i] as { scatter: { deviation: number } }).scatter.deviation)
  let variance = 0
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) variance += (correlation[i * n + j] as number) * (parts[i] as number) * (parts[j] as number)
  const of = spreadKind(kind)
  const contributions = varied
    .map(({ path, scatter }, i) => ({
      path,
      scatters: scatter.words,
      slope: effects[i] as number,
      deviation: new Quantity(Math.abs(parts[i] as number), of),
      share: variance > 0 ? (parts[i] as number) ** 2 / variance : 0,
    }))
    .sort((a, b) => b.share - a.share)
  return { value: new Quantity(value, kind), deviation: new Quantity(Math.sqrt(Math.max(0, variance)), of), contributions }
}
