import { type AssessOptions } from '../assess.js';
import type { Assessment, CheckResult } from '../result.js';
import type { Leg } from '../specification/describe.js';
import { type LegChanges } from './with-fields.js';
export interface ComparedCheck {
    readonly id: string;
    readonly place: string;
    readonly before: CheckResult | undefined;
    readonly after: CheckResult | undefined;
    readonly factor: number | undefined;
}
export interface Comparison {
    readonly changed: readonly {
        readonly path: string;
        readonly before: string;
        readonly after: string;
    }[];
    readonly leg: Leg;
    readonly before: Assessment;
    readonly after: Assessment;
    readonly checks: readonly ComparedCheck[];
}
export declare function compareLegs(leg: Leg, changes: LegChanges, options?: AssessOptions): Comparison;
export declare function comparisonText({ changed, before, after, checks }: Comparison): string;
