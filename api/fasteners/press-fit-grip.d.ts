export declare const pressFitGrip: import("../formula/formula.js").Formula<{
    readonly pressure: {
        readonly kind: "stress";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
}, {
    readonly axialForce: "force";
    readonly torque: "torque";
}>;
export declare const pressFitHold: import("../formula/formula.js").Formula<{
    readonly pressure: {
        readonly kind: "stress";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly axialForce: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly reserveWanted: {
        readonly kind: "ratio";
        readonly min: 1;
        readonly default: 2;
    };
}, {
    readonly demand: "force";
    readonly capacity: "force";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly retention: {
        readonly oneOf: readonly ["frictionHolds", "positiveRetentionNeeded"];
    };
}>;
export declare const spinningInsertion: import("../formula/formula.js").Formula<{
    readonly straightForce: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly feed: {
        readonly kind: "velocity";
        readonly above: 0;
    };
    readonly spin: {
        readonly kind: "angularVelocity";
        readonly min: 0;
    };
}, {
    readonly axialForce: "force";
    readonly torque: "torque";
}>;
