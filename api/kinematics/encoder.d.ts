export declare const encoderStep: import("../formula/formula.js").Formula<{
    readonly countsPerTurn: {
        readonly kind: "count";
        readonly above: 0;
    };
    readonly turnsPerJointTurn: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly default: 1;
    };
}, {
    readonly step: "angle";
    readonly worstError: "angle";
    readonly rmsError: "angle";
}>;
export declare const eccentricityError: import("../formula/formula.js").Formula<{
    readonly eccentricity: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly trackRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly angle: {
        readonly kind: "angle";
        readonly default: "90 deg";
    };
}, {
    readonly error: "angle";
    readonly worstError: "angle";
    readonly firstHarmonic: "angle";
    readonly secondHarmonic: "angle";
}>;
