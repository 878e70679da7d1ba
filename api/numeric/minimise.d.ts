export interface MinimiseOptions {
    readonly lower?: ArrayLike<number> | undefined;
    readonly upper?: ArrayLike<number> | undefined;
    readonly step?: ArrayLike<number> | undefined;
    readonly xTolerance?: number | undefined;
    readonly fTolerance?: number | undefined;
    readonly restarts?: number | undefined;
    readonly maxEvaluations?: number | undefined;
}
export interface Minimum {
    readonly x: Float64Array;
    readonly value: number;
    readonly evaluations: number;
    readonly converged: boolean;
}
export declare function minimise(f: (x: Float64Array) => number, start: ArrayLike<number>, options?: MinimiseOptions): Minimum;
