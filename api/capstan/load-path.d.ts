import type { DriveState } from './branch.js';
export interface PathPoint {
    readonly torque: number;
    readonly windup: number;
    readonly tautTension: number;
    readonly slackTension: number;
    readonly slipped: number;
    readonly looseLength: number;
    readonly state: 'tight' | 'slips' | 'slackSpan';
}
export declare function loadPath(d: DriveState, drive: 'torque' | 'angle', steps: ArrayLike<number>): PathPoint[];
