import { type Joint, type Prepared } from '../numbers.js';
type Point = readonly [speed: number, torque: number];
interface GaitCloud {
    readonly name: string;
    readonly joint: Joint;
    readonly points: readonly Point[];
    readonly peakTorque: number;
}
export declare function gaitClouds(leg: Prepared): readonly GaitCloud[];
export declare function motorLimit(leg: Prepared): readonly Point[];
export {};
