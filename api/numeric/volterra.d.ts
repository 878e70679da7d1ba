export type StepResponse = (elapsed: number, applied: number) => number;
export interface GradedTimesOptions {
    readonly first?: number | undefined;
    readonly exponent?: number | undefined;
}
export declare function gradedTimes(end: number, count: number, options?: GradedTimesOptions): Float64Array;
export declare function hereditary(times: ArrayLike<number>, response: StepResponse, history: ArrayLike<number>): Float64Array;
export declare function invertHereditary(times: ArrayLike<number>, response: StepResponse, result: ArrayLike<number>): Float64Array;
export interface VolterraProblem {
    readonly times: ArrayLike<number>;
    readonly forcing: (t: number) => number;
    readonly kernel: (t: number, s: number) => number;
    readonly term?: ((s: number, u: number) => number) | undefined;
}
export declare function solveVolterra(problem: VolterraProblem): Float64Array;
