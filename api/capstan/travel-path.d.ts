import type { DriveState } from './branch.js';
import { type TravelEnd, type TravelPoint } from './travel-loop.js';
export interface TravelPath {
    readonly points: readonly TravelPoint[];
    readonly end: TravelEnd;
    readonly elementStays: boolean;
    readonly leastDrumWrap: number;
}
export declare function travelPath(d: DriveState, angle: ArrayLike<number>, torque: ArrayLike<number>, resolution: number, by?: 'joint' | 'motor'): TravelPath;
