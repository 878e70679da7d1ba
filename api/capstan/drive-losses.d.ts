import type { Given, Si } from '../formula/index.js';
import { type Note, Quantity } from '../units/index.js';
import type { DriveState } from './branch.js';
import type { Read } from './drive-specification.js';
import { type PathPoint } from './load-path.js';
export declare const LOSS_CYCLE: {
    readonly torque: "torque";
    readonly returnTorque: "torque";
    readonly stroke: {
        readonly kind: "angle";
        readonly above: 0;
    };
    readonly bearingFriction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly bearingRadius: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly bendingLoss: {
        readonly kind: "ratio";
        readonly min: 0;
    };
};
export type LossCycle = Given<typeof LOSS_CYCLE>;
export interface LossTerm {
    readonly energy: Quantity<'energy'>;
    readonly share: Quantity<'ratio'>;
}
export interface CycleLosses {
    readonly passed: Quantity<'energy'>;
    readonly microSlip: LossTerm;
    readonly creep: LossTerm;
    readonly bearings: LossTerm;
    readonly bending: LossTerm;
    readonly state: PathPoint['state'];
}
export declare function lossesOf(d: DriveState, { arrangement, centreDistance }: Read, cycle: Si<typeof LOSS_CYCLE>, about: (peak: number) => readonly Note[] | undefined): CycleLosses;
