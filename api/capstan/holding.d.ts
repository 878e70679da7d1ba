import { type DriveState } from './branch.js';
export declare function slipPoint(d: DriveState): {
    taut: number;
    slack: number;
};
export declare const slipTorque: import("../formula/formula.js").Formula<{
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly pretension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly pinionRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly span: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pinionWrap: {
        readonly kind: "angle";
        readonly above: 0;
    };
    readonly drumWrapTaut: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly drumWrapSlack: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly drumFriction: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly optional: true;
    };
}, {
    readonly torque: "torque";
    readonly tautTension: "force";
    readonly slackTension: "force";
}>;
export declare const slackTorque: import("../formula/formula.js").Formula<{
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly pretension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly pinionRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly span: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pinionWrap: {
        readonly kind: "angle";
        readonly above: 0;
    };
    readonly drumWrapTaut: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly drumWrapSlack: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly drumFriction: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly optional: true;
    };
}, {
    readonly torque: "torque";
    readonly tautTension: "force";
    readonly windup: "angle";
}>;
