import { type Note, Quantity } from '../units/index.js';
import type { DriveState } from './branch.js';
import type { Read } from './drive-specification.js';
import type { PathPoint } from './load-path.js';
import type { TravelEnd } from './travel-loop.js';
import type { TravelPath } from './travel-path.js';
export interface LoadHistory {
    readonly points: readonly {
        readonly torque: Quantity<'torque'>;
        readonly windup: Quantity<'angle'>;
        readonly tautTension: Quantity<'force'>;
        readonly slackTension: Quantity<'force'>;
        readonly looseLength: Quantity<'length'>;
        readonly state: PathPoint['state'];
    }[];
    readonly loss: Quantity<'energy'>;
    readonly lostMotion: Quantity<'angle'>;
    readonly slipped: Quantity<'angle'>;
}
export interface TravelResult {
    readonly points: readonly {
        readonly jointAngle: Quantity<'angle'>;
        readonly pinionAngle: Quantity<'angle'>;
        readonly torque: Quantity<'torque'>;
        readonly tautTension: Quantity<'force'>;
        readonly slackTension: Quantity<'force'>;
    }[];
    readonly end: TravelEnd;
    readonly regime: 'elementStays' | 'between' | 'everyElementPasses';
    readonly peakTension: Quantity<'force'>;
    readonly leastTension: Quantity<'force'>;
    readonly pretensionAtEnd: Quantity<'force'>;
    readonly driftPerCycle: Quantity<'angle'>;
    readonly walkPerCycle: Quantity<'length'> | undefined;
    readonly leastDrumWrap: Quantity<'angle'>;
}
export declare const finely: (values: readonly number[]) => Float64Array;
export declare function historyOf(fine: readonly PathPoint[], about: (peak: number) => readonly Note[] | undefined): LoadHistory;
export declare function travelOf(d: DriveState, path: TravelPath, stepsPerCycle: number, x: Read, about: (peak: number) => readonly Note[] | undefined): TravelResult;
