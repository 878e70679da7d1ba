import type { LoadCase } from './cases/catalogue.js';
import type { Heat } from './cases/heat.js';
import type { JointMotion, Motion } from './cases/motion.js';
import type { Joint, Prepared } from './numbers.js';
export interface DriveState {
    readonly pretension: number;
    readonly hangs: boolean;
    readonly thermalTension: number;
    readonly taut: number;
    readonly slack: number;
    readonly peak: number;
    readonly slackTorque: number;
    readonly slipTorque: number;
    readonly shaftForce: number;
    readonly pinForce: number;
    readonly windup: number;
    readonly stiffness: number;
    readonly pinionWrapAngle: number;
    readonly span: number;
}
export interface JointState {
    readonly joint: Joint;
    readonly motion: JointMotion;
    readonly drive: DriveState;
    readonly heat: Heat;
}
export interface CaseState {
    readonly case: LoadCase;
    readonly motion: Motion | undefined;
    readonly joints: {
        readonly [J in Joint]: JointState;
    };
    readonly air: number;
    readonly duration: number;
    readonly cycles: number;
}
export interface Scene {
    readonly leg: Prepared;
    readonly state: CaseState;
    readonly joint: Joint;
    readonly walkTorque: (joint: Joint) => number;
}
