export declare const uphillShare: import("../formula/formula.js").Formula<{
    readonly slope: {
        readonly kind: "angle";
        readonly min: 0;
        readonly below: "90 deg";
    };
    readonly tipOverSlope: {
        readonly kind: "angle";
        readonly above: 0;
        readonly max: "90 deg";
    };
}, "ratio">;
