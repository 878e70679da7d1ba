import type { Evaluator } from '../../formula/index.js';
import type { Joint, Prepared } from '../numbers.js';
import type { DriveState } from '../state.js';
export interface DriveAsk {
    readonly joint: Joint;
    readonly torque: number;
    readonly footForce: number;
    readonly air: number;
    readonly age: 'new' | 'year';
}
export declare function driveState(leg: Prepared, of: Evaluator, { joint, torque, footForce, air, age }: DriveAsk): DriveState;
