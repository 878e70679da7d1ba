import { type AssessOptions } from '../assess.js';
import { type Comparison } from '../plans/compare.js';
import type { Leg } from '../specification/describe.js';
import { type LogRemark } from './logs.js';
export type StandLogs = Readonly<Record<string, string>>;
export interface LearnOptions extends AssessOptions {
    readonly spikes?: 'leaveOut' | 'keep';
}
export interface MovedField {
    readonly log: string;
    readonly path: string;
    readonly before: string;
    readonly after: string;
    readonly interval: readonly [string, string] | undefined;
    readonly readings: number;
    readonly state: 'corrected' | 'confirmed' | 'undetermined';
}
export interface Learnt {
    readonly leg: Leg;
    readonly moved: readonly MovedField[];
    readonly remarks: readonly LogRemark[];
    readonly comparison: Comparison;
}
export declare function learn(leg: Leg, logs: StandLogs, options?: LearnOptions): Learnt;
export declare function learntText({ leg, moved, remarks, comparison }: Learnt): string;
