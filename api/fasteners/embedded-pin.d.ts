export declare const embeddedPin: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly arm: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly depth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly averagePressure: "stress";
    readonly mouthPressure: "stress";
    readonly mouthPeakPressure: "stress";
    readonly endPressure: "stress";
    readonly pivotDepth: "length";
    readonly moment: "torque";
    readonly momentDepth: "length";
    readonly bendingStress: "stress";
}>;
export declare const embeddedPinElastic: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly arm: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly depth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pinModulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly foundationModulus: {
        readonly kind: "foundationModulus";
        readonly above: 0;
    };
}, {
    readonly slenderness: "ratio";
    readonly mouthPressure: "stress";
    readonly mouthPeakPressure: "stress";
    readonly endPressure: "stress";
    readonly mouthDisplacement: "length";
    readonly moment: "torque";
    readonly bendingStress: "stress";
}>;
