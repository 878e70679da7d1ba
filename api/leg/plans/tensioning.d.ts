import type { Quantity } from '../../units/index.js';
import type { Joint } from '../numbers.js';
export interface Winding {
    readonly joint: Joint;
    readonly arrangement: 'crossed' | 'open';
    readonly layAt: Quantity<'angle'>;
    readonly pinionTurns: Quantity<'count'>;
    readonly halfTurns: Quantity<'count'>;
    readonly drumWrap: Quantity<'angle'>;
    readonly leastDrumWrap: Quantity<'angle'>;
    readonly branches: readonly [BranchWinding, BranchWinding];
}
export interface BranchWinding {
    readonly pulls: 'towards larger angles' | 'towards smaller angles';
    readonly onDrum: 'clockwise' | 'counter-clockwise';
    readonly onPinion: 'clockwise' | 'counter-clockwise';
}
export interface TensionerSetting {
    readonly joint: Joint;
    readonly thread: string;
    readonly pretension: Quantity<'force'>;
    readonly start: Quantity<'length'>;
    readonly set: Quantity<'length'>;
    readonly end: Quantity<'length'>;
    readonly travel: Quantity<'length'>;
    readonly spare: Quantity<'length'>;
    readonly turnsToStart: Quantity<'count'>;
    readonly turnsToSet: Quantity<'count'>;
    readonly tensionPerTurn: Quantity<'force'>;
    readonly screwTorque: Quantity<'torque'>;
    readonly state: 'selfLocking' | 'overhauls';
}
export declare const SCREW_FRICTION = 0.14;
