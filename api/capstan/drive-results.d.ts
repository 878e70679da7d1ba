import { type Note, Quantity } from '../units/index.js';
import type { DriveState } from './branch.js';
export interface AtFriction<T> {
    readonly atLowFriction: T;
    readonly atHighFriction: T;
}
export interface Windup {
    readonly windup: Quantity<'angle'>;
    readonly tangentStiffness: Quantity<'torsionalStiffness'>;
    readonly secantStiffness: Quantity<'torsionalStiffness'>;
    readonly tautTension: Quantity<'force'>;
    readonly slackTension: Quantity<'force'>;
    readonly torqueCarried: Quantity<'torque'>;
    readonly state: 'tight' | 'slackSpan' | 'slips';
    readonly secantStiffnessAtLeast: Quantity<'torsionalStiffness'>;
    readonly stiffnessAtMost: Quantity<'torsionalStiffness'>;
}
export interface DriveLimits {
    readonly slipTorque: Quantity<'torque'> | undefined;
    readonly slipEstimate: Quantity<'torque'> | undefined;
    readonly slackTorque: Quantity<'torque'> | undefined;
    readonly slackEstimate: Quantity<'torque'>;
}
export declare function limitsOf(d: DriveState, notes: readonly Note[] | undefined): DriveLimits;
export declare function windupOf(d: DriveState, torque: number, about: (peak: number) => readonly Note[] | undefined): Windup;
