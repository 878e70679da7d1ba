import type { LogColumn } from './logs.js';
export declare const MEASUREMENTS: readonly ["cordFriction", "windup", "pretension", "pullOut", "heating", "footDeflection"];
export type MeasurementId = (typeof MEASUREMENTS)[number];
export declare const COLUMNS: {
    readonly [M in MeasurementId]: readonly LogColumn[];
};
export interface FitParameter {
    readonly path: string | undefined;
    readonly start: number;
    readonly low: number;
    readonly high: number;
}
export type Estimate = {
    readonly kind: 'scatter';
    readonly path: string;
    readonly value: (row: readonly number[]) => number;
    readonly high: number;
} | {
    readonly kind: 'curve';
    readonly parameters: readonly FitParameter[];
    readonly predict: (p: ArrayLike<number>, rows: readonly (readonly number[])[]) => number[];
    readonly measured: (row: readonly number[]) => number;
} | {
    readonly kind: 'comparison';
};
