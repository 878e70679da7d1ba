import type { LegKernel } from './leg-kernel.js';
export type LimitsSi = Float64Array;
export interface NearestSi {
    readonly q: Float64Array;
    readonly foot: Float64Array;
    readonly miss: number;
    readonly atLimit: readonly [number, number, number];
    readonly directionArbitrary: boolean;
}
export declare function withinTurns(angle: number, lowest: number, highest: number): number;
export declare function nearestReachable(leg: LegKernel, limits: LimitsSi, x: number, y: number, z: number): NearestSi;
