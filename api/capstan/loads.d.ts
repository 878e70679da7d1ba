export declare const shaftForce: import("../formula/formula.js").Formula<{
    readonly arrangement: {
        readonly oneOf: readonly ["crossed", "open"];
    };
    readonly taut: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly slack: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly pinionRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly centreDistance: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly force: "force";
    readonly alongCentres: "force";
    readonly across: "force";
}>;
export declare const drumHoop: import("../formula/formula.js").Formula<{
    readonly tension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly centreLineRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pitch: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly wallOuterRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly boreRadius: {
        readonly kind: "length";
        readonly min: 0;
    };
}, {
    readonly pressure: "stress";
    readonly boreHoopStress: "stress";
}>;
export declare const groovePressure: import("../formula/formula.js").Formula<{
    readonly tension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly centreLineRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly cordDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "stress">;
export declare const bendRatio: import("../formula/formula.js").Formula<{
    readonly centreLineRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly cordDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "ratio">;
export declare const idlerForce: import("../formula/formula.js").Formula<{
    readonly tension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly turnedAngle: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "360 deg";
    };
}, "force">;
