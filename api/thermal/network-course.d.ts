import { type OdeSolution } from '../numeric/index.js';
import { type NetworkNumbers } from './network-numbers.js';
export interface Watch {
    readonly node: number;
    readonly limit: number;
}
export interface CourseNumbers {
    readonly solution: OdeSolution;
    readonly end: Float64Array;
    readonly state: 'finished' | 'runaway' | 'limit';
}
export declare function courseNumbers(n: NetworkNumbers, initial: Float64Array, duration: number, options?: {
    watch?: readonly Watch[];
    stopAtLimit?: boolean;
    tolerance?: number;
}): CourseNumbers;
export interface Extremes {
    readonly highest: Float64Array;
    readonly highestAt: Float64Array;
    readonly lowest: Float64Array;
    readonly integral: Float64Array;
}
export declare function extremesOf(solution: OdeSolution): Extremes;
export declare function ledgerOf(n: NetworkNumbers, solution: OdeSolution): {
    released: number;
    given: number;
    stored: number;
};
