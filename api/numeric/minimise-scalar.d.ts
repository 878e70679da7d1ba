import type { ScalarFunction } from './root.js';
export interface ScalarMinimumOptions {
    readonly xTolerance?: number | undefined;
    readonly maxEvaluations?: number | undefined;
}
export interface ScalarMinimum {
    readonly x: number;
    readonly value: number;
    readonly evaluations: number;
}
export declare function minimiseScalar(f: ScalarFunction, lo: number, hi: number, options?: ScalarMinimumOptions): ScalarMinimum;
