import { type NetworkNumbers } from './network-numbers.js';
export interface SteadyNumbers {
    readonly state: 'steady' | 'runaway';
    readonly T: Float64Array;
    readonly residual: number;
}
export declare function steadyNumbers(n: NetworkNumbers, start?: Float64Array): SteadyNumbers;
export declare function damped(slope: Float64Array, work: Float64Array, size: number): boolean;
export declare function bandsAt(n: NetworkNumbers, T: Float64Array): Float64Array;
