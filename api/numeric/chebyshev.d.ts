export declare function chebyshev(coefficients: readonly number[], x: number): number;
