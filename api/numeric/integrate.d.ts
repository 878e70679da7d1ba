import type { ScalarFunction } from './root.js';
export interface IntegrateOptions {
    readonly relativeTolerance?: number | undefined;
    readonly absoluteTolerance?: number | undefined;
    readonly breakpoints?: readonly number[] | undefined;
    readonly maxEvaluations?: number | undefined;
}
export interface Integral {
    readonly value: number;
    readonly error: number;
    readonly evaluations: number;
}
export declare function integrate(f: ScalarFunction, lo: number, hi: number, options?: IntegrateOptions): number;
export declare function integrateWithError(f: ScalarFunction, lo: number, hi: number, options?: IntegrateOptions): Integral;
