import { type CaseId } from './cases/catalogue.js';
import { type End, type Joint, type LegNumbers } from './numbers.js';
import type { Assessment } from './result.js';
import type { Leg } from './specification/describe.js';
export interface AssessOptions {
    readonly cases?: readonly CaseId[];
}
export declare function assess(leg: Leg, options?: AssessOptions): Assessment;
export interface QuickVerdict {
    readonly reserve: number;
    readonly id: string;
    readonly joint: Joint;
    readonly case: CaseId;
}
export declare function governingReserve(x: LegNumbers, cases?: readonly CaseId[], end?: End): QuickVerdict;
export declare const checkReserves: (x: LegNumbers, cases?: readonly CaseId[], end?: End) => Map<string, number>;
