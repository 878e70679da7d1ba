export declare const excess: (x: number) => number;
export declare const arcWindup: import("../formula/formula.js").Formula<{
    readonly tension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly storedTension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly centreLineRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly wrapAngle: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
}, {
    readonly feed: "length";
    readonly compliance: "linearCompliance";
    readonly slipArc: "angle";
    readonly state: {
        readonly oneOf: readonly ["within", "atAnchor"];
    };
}>;
export declare const arcRecovery: import("../formula/formula.js").Formula<{
    readonly peakTension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly tension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly storedTension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly centreLineRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
}, {
    readonly recovered: "length";
    readonly remaining: "length";
    readonly lostMotion: "length";
    readonly reversedArc: "angle";
}>;
export declare const arcCycleLoss: import("../formula/formula.js").Formula<{
    readonly amplitude: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly pretension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly centreLineRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
}, "energy">;
export declare const microSlipLength: import("../formula/formula.js").Formula<{
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly contactStiffness: {
        readonly kind: "foundationModulus";
        readonly above: 0;
    };
}, "length">;
