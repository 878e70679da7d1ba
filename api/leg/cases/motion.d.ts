import { FootPath } from '../../kinematics/index.js';
import type { Prepared } from '../numbers.js';
import type { Sheet } from '../sheet.js';
export interface JointMotion {
    torque: number;
    rms: number;
    speed: number;
    loadedSpeed: number;
    lowest: number;
    highest: number;
}
export interface Motion {
    readonly vertical: number;
    readonly forward: number;
    readonly hip: JointMotion;
    readonly knee: JointMotion;
    readonly sideways: number;
    readonly farthest: number;
    readonly reach: number;
    readonly reached: boolean;
}
export interface Stance {
    readonly gravity: number;
    readonly mass: number;
    readonly legShare: number;
    readonly dutyFactor: number;
    readonly shape: 'rectangular' | 'halfSine';
    readonly traction: number;
    readonly speed: number;
    readonly stepLength: number;
    readonly clearance: number;
    readonly height: number;
}
export declare const branchOf: (leg: Prepared) => number;
export declare function motionOver(leg: Prepared, sheet: Sheet, stance: Stance): Motion;
export declare function pathOf({ x }: Prepared, stance: Stance, stridePeriod: number): FootPath;
export declare function poseOf(leg: Prepared): readonly [number, number, number];
