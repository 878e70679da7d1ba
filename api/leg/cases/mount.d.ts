import type { Evaluator } from '../../formula/index.js';
import type { Prepared } from '../numbers.js';
export interface Surroundings {
    readonly air: number;
    readonly wind: number;
    readonly surroundings: number;
    readonly pressure: number;
}
export declare const mountRingResistance: (leg: Prepared, film: number) => number;
export declare const mountRingResistanceExact: (leg: Prepared, film: number) => number;
export declare function mountConductance(leg: Prepared, of: Evaluator, ringTemperature: number, where: Surroundings): number;
export declare function recordMount(leg: Prepared, of: Evaluator, ringTemperature: number, where: Surroundings): void;
