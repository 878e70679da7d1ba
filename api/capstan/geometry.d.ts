export declare const centreLineRadius: import("../formula/formula.js").Formula<{
    readonly grooveDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly cordDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "length">;
export declare const reductionRatio: import("../formula/formula.js").Formula<{
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pinionRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "ratio">;
export declare const pulleyGeometry: import("../formula/formula.js").Formula<{
    readonly arrangement: {
        readonly oneOf: readonly ["crossed", "open"];
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
    readonly extraTurns: {
        readonly kind: "count";
        readonly min: 0;
        readonly default: 0;
    };
}, {
    readonly pinionWrapAngle: "angle";
    readonly drumWrapAngle: "angle";
    readonly span: "length";
    readonly loopPerCentreDistance: "ratio";
}>;
