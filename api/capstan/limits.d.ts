export declare const slackLimitTorque: import("../formula/formula.js").Formula<{
    readonly pretension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "torque">;
export declare const slipLimitTorque: import("../formula/formula.js").Formula<{
    readonly pretension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly pinionWrapAngle: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, "torque">;
export declare const pretensionForTorque: import("../formula/formula.js").Formula<{
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly pinionWrapAngle: {
        readonly kind: "angle";
        readonly above: 0;
    };
    readonly safety: {
        readonly kind: "ratio";
        readonly min: 1;
        readonly default: 1.3;
    };
}, {
    readonly pretension: "force";
    readonly againstSlip: "force";
    readonly againstSlack: "force";
}>;
export declare const travelPeakTension: import("../formula/formula.js").Formula<{
    readonly pretension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "force">;
export declare const strokeTension: import("../formula/formula.js").Formula<{
    readonly pretension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly span: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly stroke: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, {
    readonly taut: "force";
    readonly slack: "force";
}>;
