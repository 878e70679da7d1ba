export interface LeastSquaresProblem {
    readonly residuals: (p: Float64Array, out: Float64Array) => void;
    readonly count: number;
    readonly start: ArrayLike<number>;
    readonly lower?: ArrayLike<number> | undefined;
    readonly upper?: ArrayLike<number> | undefined;
    readonly jacobian?: ((p: Float64Array, out: Float64Array) => void) | undefined;
    readonly fTolerance?: number | undefined;
    readonly xTolerance?: number | undefined;
    readonly maxIterations?: number | undefined;
    readonly sigma?: number | undefined;
}
export interface Undetermined {
    readonly parameters: readonly number[];
    readonly direction: Float64Array;
}
export interface LeastSquaresFit {
    readonly parameters: Float64Array;
    readonly residuals: Float64Array;
    readonly sumOfSquares: number;
    readonly degreesOfFreedom: number;
    readonly sigma: number;
    readonly covariance: Float64Array;
    readonly standardErrors: Float64Array;
    readonly atLimit: readonly number[];
    readonly rank: number;
    readonly condition: number;
    readonly undetermined: readonly Undetermined[];
    readonly iterations: number;
    readonly evaluations: number;
    readonly ended: 'converged' | 'limit';
}
export declare function fitLeastSquares(problem: LeastSquaresProblem): LeastSquaresFit;
