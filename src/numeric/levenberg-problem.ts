/** A least-squares problem: find the parameters that make the sum of squared residuals smallest. */
export interface LeastSquaresProblem {
  /** Writes the residuals (prediction minus measurement, divided by its standard deviation if known) for parameters `p`. */
  readonly residuals: (p: Float64Array, out: Float64Array) => void
  /** Number of residuals; at least the number of parameters. */
  readonly count: number
  /** First guess. */
  readonly start: ArrayLike<number>
  /** Lower limits. Default −∞. */
  readonly lower?: ArrayLike<number> | undefined
  /** Upper limits. Default +∞. */
  readonly upper?: ArrayLike<number> | undefined
  /** Writes ∂rᵢ/∂pⱼ row by row (i·n + j). Default: central differences. */
  readonly jacobian?: ((p: Float64Array, out: Float64Array) => void) | undefined
  /** The search ends when a step changes the sum of squares by less than this part. Default 1e-14. */
  readonly fTolerance?: number | undefined
  /** … or the (scaled) parameters by less than this part. Default 1e-12. */
  readonly xTolerance?: number | undefined
  /** Largest number of iterations. Default 500. */
  readonly maxIterations?: number | undefined
  /** Known standard deviation of the (weighted) residuals: 1 when they were divided by theirs. Default: estimated from the residuals. */
  readonly sigma?: number | undefined
}
