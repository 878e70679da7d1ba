import { type Chart } from '../chart/index.js';
import type { FootPath } from './foot-path.js';
import type { ThreeJointLeg } from './leg.js';
import type { MotorDemand, Walkable } from './stride-demand.js';
export declare function reachChart(leg: ThreeJointLeg, path: FootPath, title?: string): Chart;
export type MotorLimitSi = readonly (readonly [speed: number, torque: number])[];
export declare function torqueSpeedChart(motor: MotorDemand, limit?: MotorLimitSi, title?: string): Chart;
export declare function strideTorqueChart(stride: Walkable, title?: string): Chart;
export declare function footErrorChart(leg: ThreeJointLeg, path: FootPath, covarianceAt: (q: Float64Array) => ArrayLike<number>, options?: {
    readonly enlarged?: number;
    readonly ellipses?: number;
    readonly title?: string;
}): Chart;
