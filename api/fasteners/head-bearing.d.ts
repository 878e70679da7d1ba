export declare const headBearing: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly bearingDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly holeDiameter: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly allowablePressure: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, {
    readonly area: "area";
    readonly pressure: "stress";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly allowableForce: "force";
}>;
export declare const washerSpread: import("../formula/formula.js").Formula<{
    readonly headBearing: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly outerDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "length">;
export declare const nutBearingArea: import("../formula/formula.js").Formula<{
    readonly acrossFlats: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly bearingDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly holeDiameter: {
        readonly kind: "length";
        readonly min: 0;
    };
}, {
    readonly ringArea: "area";
    readonly hexagonArea: "area";
}>;
