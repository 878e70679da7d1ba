import { type Given } from '../formula/index.js';
import { Quantity } from '../units/index.js';
export declare const jumpPush: import("../formula/formula.js").Formula<{
    readonly mass: {
        readonly kind: "mass";
        readonly above: 0;
    };
    readonly jumpHeight: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly pushTravel: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly gravity: {
        readonly kind: "acceleration";
        readonly above: 0;
        readonly default: "9.80665 m/s^2";
    };
}, {
    readonly totalForce: "force";
    readonly takeOffSpeed: "velocity";
    readonly pushTime: "time";
    readonly flightTime: "time";
}>;
export declare const dropOnSpring: import("../formula/formula.js").Formula<{
    readonly mass: {
        readonly kind: "mass";
        readonly above: 0;
    };
    readonly dropHeight: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly stiffness: {
        readonly kind: "linearStiffness";
        readonly above: 0;
    };
    readonly gravity: {
        readonly kind: "acceleration";
        readonly above: 0;
        readonly default: "9.80665 m/s^2";
    };
}, {
    readonly peakForce: "force";
    readonly compression: "length";
}>;
export declare const touchDownImpact: import("../formula/formula.js").Formula<{
    readonly speed: {
        readonly kind: "velocity";
        readonly min: 0;
    };
    readonly effectiveMass: {
        readonly kind: "mass";
        readonly above: 0;
    };
    readonly contactStiffness: {
        readonly kind: "linearStiffness";
        readonly above: 0;
    };
}, {
    readonly impulse: "impulse";
    readonly peakForce: "force";
    readonly timeToPeak: "time";
}>;
declare const LANDING: {
    readonly mass: {
        readonly kind: "mass";
        readonly above: 0;
    };
    readonly dropHeight: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly stiffness: {
        readonly kind: "linearStiffness";
        readonly above: 0;
    };
    readonly damping: {
        readonly kind: "linearDamping";
        readonly min: 0;
    };
    readonly gravity: {
        readonly kind: "acceleration";
        readonly above: 0;
        readonly default: "9.80665 m/s^2";
    };
};
export interface Landing {
    readonly peakForce: Quantity<'force'>;
    readonly timeOfPeak: Quantity<'time'>;
    readonly touchDownForce: Quantity<'force'>;
    readonly damperGoverns: boolean;
    readonly compression: Quantity<'length'>;
    readonly touchDownSpeed: Quantity<'velocity'>;
}
export declare function landOnSpringAndDamper(given: Given<typeof LANDING>): Landing;
export {};
