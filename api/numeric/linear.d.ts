export declare function luFactor(a: Float64Array, n: number, pivots: Int32Array): -1 | 0 | 1;
export declare function luSolve(a: Float64Array, n: number, pivots: Int32Array, b: Float64Array, offset?: number): void;
export declare function solveInPlace(a: Float64Array, n: number, pivots: Int32Array, b: Float64Array): boolean;
export declare function luDeterminant(a: Float64Array, n: number, sign: -1 | 0 | 1): number;
