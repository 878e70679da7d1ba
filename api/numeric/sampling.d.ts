export declare const SOBOL_DIMENSIONS: number;
export interface PointSequence {
    readonly dimensions: number;
    point(index: number, out?: Float64Array): Float64Array;
}
export declare function sobolSequence(dimensions: number, seed?: number): PointSequence;
export declare function latinHypercube(count: number, dimensions: number, seed: number, centred?: boolean): Float64Array;
