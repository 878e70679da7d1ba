import type { DriveCoupling } from './coupling.js';
import type { FootPath } from './foot-path.js';
import type { ThreeJointLeg } from './leg.js';
import type { LegDynamics } from './leg-dynamics.js';
export type GroundReactionSi = (out: Float64Array, stancePhase: number, foot: Float64Array) => void;
export interface StrideFailure {
    readonly timeSi: number;
    readonly reason: 'unreachable' | 'jointLimits' | 'singular' | 'driveApart';
    readonly foot: readonly [number, number, number];
}
export interface StrideSamples {
    readonly count: number;
    readonly time: Float64Array;
    readonly weight: Float64Array;
    readonly stance: Uint8Array;
    readonly foot: Float64Array;
    readonly footVelocity: Float64Array;
    readonly groundReaction: Float64Array;
    readonly jointAngle: Float64Array;
    readonly jointRate: Float64Array;
    readonly jointAcceleration: Float64Array;
    readonly jointTorque: Float64Array;
    readonly actuatorRate: Float64Array;
    readonly actuatorAcceleration: Float64Array;
    readonly actuatorTorque: Float64Array;
}
export interface StrideInputs {
    readonly leg: ThreeJointLeg;
    readonly path: FootPath;
    readonly branch: number;
    readonly dynamics?: LegDynamics | undefined;
    readonly coupling: DriveCoupling;
    readonly groundReaction: GroundReactionSi;
    readonly samples: number;
}
export declare function sampleStride({ leg, path, branch, dynamics, coupling, groundReaction, samples, }: StrideInputs): StrideSamples | StrideFailure;
