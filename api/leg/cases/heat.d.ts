import { type Evaluator } from '../../formula/index.js';
import type { Joint, Prepared } from '../numbers.js';
import type { JointMotion } from './motion.js';
export interface HeatAsk {
    readonly joint: Joint;
    readonly motion: JointMotion;
    readonly air: number;
    readonly wind: number;
    readonly heating: 'none' | 'held' | 'moving';
    readonly heldFor?: number | undefined;
    readonly steps?: number;
}
export interface Heat {
    readonly motorTorque: number;
    readonly heatingTorque: number;
    readonly motorSpeed: number;
    readonly loadedMotorSpeed: number;
    readonly backEmfConstant: number;
    readonly resistance: number;
    readonly current: number;
    readonly heatingCurrent: number;
    readonly loss: number;
    readonly ironLoss: number;
    readonly winding: number;
    readonly windingMean: number;
    readonly mount: number;
    readonly can: number;
    readonly lossAt20: number;
    readonly resistanceToAir: number;
    readonly rounds: number;
    readonly unsettled: {
        readonly loop: string;
        readonly why: string;
    } | undefined;
}
export declare function heatOf(leg: Prepared, of: Evaluator, ask: HeatAsk): Heat;
