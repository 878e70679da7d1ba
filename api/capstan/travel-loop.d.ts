import type { DriveState } from './branch.js';
export interface TravelPoint {
    readonly jointAngle: number;
    readonly torque: number;
    readonly pinionAngle: number;
    readonly tautTension: number;
    readonly slackTension: number;
    readonly peakTension: number;
}
export type TravelEnd = 'followed' | 'slips' | 'slackSpan' | 'anchorLeavesDrum' | 'clampLeavesPinion';
export declare class Loop {
    private readonly d;
    private readonly by;
    private readonly drumA;
    private readonly drumB;
    private readonly pinion;
    private readonly pinionB;
    private readonly probes;
    private readonly half;
    private Ta;
    private Tb;
    private q;
    private phi;
    private torque;
    private peak;
    leastDrumWrap: number;
    private restLow;
    private restHigh;
    constructor(d: DriveState, by: 'joint' | 'motor');
    stays(): boolean;
    point(): TravelPoint;
    moveTo(angle: number, torque: number, resolution: number): TravelEnd;
    private residual;
    private lineArea;
    private unwound;
    private step;
    private meeting;
    private commit;
}
