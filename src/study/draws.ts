import { NoResultError } from '../formula/index.js'
import { normalQuantile, randomStream } from '../numeric/index.js'
import { type Kind, Quantity } from '../units/index.js'
import { spreadKind } from './show.js'
import { type UncertainModel, type Varied, valueAtScore } from './uncertain-model.js'
import type { Estimate, MonteCarloUncertainty } from './uncertainty-result.js'

const BATCHES = 20

/** How many draws are made. */
export interface DrawPlan {
  readonly samples: number
  readonly seed: number
  readonly coverage: number
  readonly digits: number
  /** Where draws go on until the figures settle: the most of them. */
  readonly most: number | undefined
}

/** Draws and their figures; with a limit, more and more draws until the figures settle. */
export function draws(uncertain: UncertainModel, lower: Float64Array | undefined, plan: DrawPlan): MonteCarloUncertainty {
  const { model } = uncertain
  const draw = drawer(uncertain, lower, plan.seed)
  const summarised = (drawn: Float64Array) => summary(drawn, model.output.kind, plan, model.id)
  let drawn = Float64Array.from({ length: plan.samples }, (_, s) => draw(s))
  let result = summarised(drawn)
  while (plan.most !== undefined && !result.converged && drawn.length < plan.most) {
    // As many as should suffice, but not all on the word of a small sample.
    const next = Math.min(Math.max(1.1 * result.samplesNeeded, 1.5 * drawn.length), 4 * drawn.length, plan.most)
    const before = drawn
    drawn = Float64Array.from({ length: Math.ceil(next) }, (_, s) => (s < before.length ? (before[s] as number) : draw(s)))
    result = summarised(drawn)
  }
  return result
}

/** The result of draw number s. */
function drawer({ varied, model }: UncertainModel, lower: Float64Array | undefined, seed: number): (s: number) => number {
  const n = varied.length
  const x = new Float64Array(n)
  const z = new Float64Array(n)
  return (s) => {
    const random = randomStream(seed, s)
    if (lower === undefined) for (let i = 0; i < n; i++) x[i] = (varied[i] as Varied).scatter.quantile(random.uniform())
    else {
      for (let i = 0; i < n; i++) z[i] = normalQuantile(random.uniform())
      for (let i = 0; i < n; i++) {
        let score = 0
        for (let j = 0; j <= i; j++) score += (lower[i * n + j] as number) * (z[j] as number)
        x[i] = valueAtScore(varied[i] as Varied, score)
      }
    }
    return model.at(x)
  }
}

function summary(drawn: Float64Array, kind: Kind, { seed, coverage, digits }: DrawPlan, id: string): MonteCarloUncertainty {
  const good = drawn.filter((y) => !Number.isNaN(y))
  const gaps = drawn.length - good.length
  if (good.length < drawn.length / 2 || good.length < 100)
    throw new NoResultError(
      `${id}: no finite answer exists for ${gaps} of ${drawn.length} draws; the distributions reach where the formula does not hold`,
    )
  const whole = figures(good, coverage)
  const size = Math.floor(good.length / BATCHES)
  const batches = Array.from({ length: BATCHES }, (_, b) => figures(good.slice(b * size, (b + 1) * size), coverage))
  const of = spreadKind(kind)
  const errorOf = (name: keyof Figures) => {
    const values = batches.map((batch) => batch[name] as number)
    const mean = values.reduce((sum, v) => sum + v, 0) / BATCHES
    return Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (BATCHES - 1) / BATCHES)
  }
  const estimate = (name: 'mean' | 'median' | 'low' | 'high'): Estimate => ({
    value: new Quantity(whole[name], kind),
    error: new Quantity(errorOf(name), of),
  })
  // Half a unit of the last digit of the deviation (JCGM 101:2008, 7.9.2).
  const tolerance = whole.deviation > 0 ? 0.5 * 10 ** (Math.floor(Math.log10(whole.deviation)) + 1 - digits) : 0
  const worst = 2 * Math.max(errorOf('mean'), errorOf('deviation'), errorOf('low'), errorOf('high'))
  const sorted = good.slice().sort()
  return {
    samples: drawn.length,
    seed,
    mean: estimate('mean'),
    deviation: { value: new Quantity(whole.deviation, of), error: new Quantity(errorOf('deviation'), of) },
    median: estimate('median'),
    low: estimate('low'),
    high: estimate('high'),
    shortest: shortest(sorted, coverage).map((y) => new Quantity(y, kind)) as [Quantity<Kind>, Quantity<Kind>],
    gaps,
    digits,
    converged: worst <= tolerance,
    samplesNeeded: worst <= tolerance ? drawn.length : Math.ceil((drawn.length * (worst / tolerance) ** 2) / 1000) * 1000,
    sorted,
  }
}

interface Figures {
  readonly mean: number
  readonly deviation: number
  readonly median: number
  readonly low: number
  readonly high: number
}

function figures(drawn: Float64Array, coverage: number): Figures {
  let mean = 0
  for (const y of drawn) mean += y / drawn.length
  let square = 0
  for (const y of drawn) square += (y - mean) ** 2
  const sorted = drawn.slice().sort()
  const tail = (1 - coverage) / 2
  return {
    mean,
    deviation: Math.sqrt(square / (drawn.length - 1)),
    median: quantileOf(sorted, 0.5),
    low: quantileOf(sorted, tail),
    high: quantileOf(sorted, 1 - tail),
  }
}

/** The sample quantile, linear between order statistics. */
function quantileOf(sorted: Float64Array, fraction: number): number {
  const place = fraction * (sorted.length - 1)
  const i = Math.floor(place)
  const a = sorted[i] as number
  return a + (place - i) * ((sorted[Math.min(i + 1, sorted.length - 1)] as number) - a)
}

function shortest(sorted: Float64Array, coverage: number): [number, number] {
  const held = Math.min(Math.ceil(coverage * sorted.length), sorted.length - 1)
  let best = 0
  const width = (i: number) => (sorted[i + held] as number) - (sorted[i] as number)
  for (let i = 1; i + held < sorted.length; i++) if (width(i) < width(best)) best = i
  return [sorted[best] as number, sorted[best + held] as number]
}
