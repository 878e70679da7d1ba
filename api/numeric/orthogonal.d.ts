export declare function householder(a: Float64Array, m: number, n: number, b?: Float64Array): void;
export interface SingularValues {
    readonly values: Float64Array;
    readonly vectors: Float64Array;
}
export declare function singularValues(a: Float64Array, n: number, upper?: boolean): SingularValues;
