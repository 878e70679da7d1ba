export declare const spanStiffness: import("../formula/formula.js").Formula<{
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
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
    readonly microSlipLength: {
        readonly kind: "length";
        readonly min: 0;
        readonly default: "0 m";
    };
}, "torsionalStiffness">;
export declare const freeArcStiffness: import("../formula/formula.js").Formula<{
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
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
        readonly min: 0;
    };
    readonly drumWrapTaut: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly drumWrapSlack: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, "torsionalStiffness">;
export declare const driveWindup: import("../formula/formula.js").Formula<{
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
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
    readonly hold: {
        readonly oneOf: readonly ["frictionOnly", "clampedMidPinion"];
        readonly default: "frictionOnly";
    };
    readonly contactStiffness: {
        readonly kind: "foundationModulus";
        readonly above: 0;
        readonly optional: true;
    };
}, {
    readonly windup: "angle";
    readonly tangentStiffness: "torsionalStiffness";
    readonly secantStiffness: "torsionalStiffness";
    readonly tautTension: "force";
    readonly slackTension: "force";
    readonly torqueCarried: "torque";
    readonly state: {
        readonly oneOf: readonly ["tight", "slackSpan", "slips"];
    };
}>;
