import type { Evaluator } from '../../formula/index.js';
import type { Prepared } from '../numbers.js';
import type { Stance } from './motion.js';
export declare const CASE_IDS: readonly ["stand", "walk", "stall", "trot", "hop", "drop", "hotAfternoon", "coldMorning", "slope", "season", "shelf"];
export type CaseId = (typeof CASE_IDS)[number];
export interface LoadCase {
    readonly id: CaseId;
    readonly title: string;
    readonly story: string;
    readonly stance: (leg: Prepared, of: Evaluator) => Stance | undefined;
    readonly air: (leg: Prepared) => number;
    readonly wind: (leg: Prepared) => number;
    readonly heating: 'none' | 'held' | 'moving';
    readonly heldFor?: (leg: Prepared) => number;
    readonly duration: (leg: Prepared) => number;
    readonly cycles: (leg: Prepared) => number;
    readonly age: 'new' | 'year';
}
export declare const CASES: {
    readonly [I in CaseId]: LoadCase;
};
