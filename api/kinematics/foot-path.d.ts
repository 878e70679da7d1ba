import { type Given } from '../formula/index.js';
import { type In, Quantity } from '../units/index.js';
import { type Vector3 } from './vectors.js';
export declare const strideTiming: import("../formula/formula.js").Formula<{
    readonly stridePeriod: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly dutyFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly bodySpeed: {
        readonly kind: "velocity";
        readonly min: 0;
    };
}, {
    readonly stanceTime: "time";
    readonly swingTime: "time";
    readonly stanceSweep: "length";
    readonly strideLength: "length";
}>;
declare const SPECIFICATION: {
    readonly midStance: {
        readonly fields: {
            x: "length";
            y: "length";
            z: "length";
        };
    };
    readonly stanceSweep: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly stridePeriod: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly dutyFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly heading: {
        readonly kind: "angle";
        readonly default: "0 deg";
    };
    readonly lift: {
        readonly kind: "length";
        readonly min: 0;
        readonly default: "0 mm";
    };
    readonly swing: {
        readonly oneOf: readonly ["cycloid", "cubic", "quintic", "matched"];
        readonly default: "matched";
    };
    readonly liftShape: {
        readonly oneOf: readonly ["cosine", "smooth"];
        readonly default: "smooth";
    };
    readonly swingPoints: {
        readonly list: {
            readonly fields: {
                readonly forward: "length";
                readonly up: "length";
            };
        };
        readonly optional: true;
    };
};
export interface FootPathSpecification extends Given<typeof SPECIFICATION> {
}
export interface FootState {
    readonly phase: 'stance' | 'swing';
    readonly position: Vector3<'length'>;
    readonly velocity: Vector3<'velocity'>;
    readonly acceleration: Vector3<'acceleration'>;
}
export declare class FootPath {
    private readonly given;
    readonly periodSi: number;
    readonly dutyFactor: number;
    readonly stanceTimeSi: number;
    readonly bodySpeedSi: number;
    readonly clearanceSi: number;
    private readonly forward;
    private readonly up;
    private readonly work;
    private readonly shape;
    get bodySpeed(): Quantity<'velocity'>;
    get clearance(): Quantity<'length'>;
    at(time: In<'time'>): FootState;
    stateInto(out: Float64Array, offset: number, time: number): boolean;
    private highest;
}
export declare function footPath(given: FootPathSpecification): FootPath;
export {};
