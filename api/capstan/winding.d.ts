export declare const groove: import("../formula/formula.js").Formula<{
    readonly cordDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pitchClearance: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly default: 0.2;
    };
    readonly seatFactor: {
        readonly kind: "ratio";
        readonly min: 0.5;
        readonly default: 0.54;
    };
    readonly depthFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly default: 0.33;
    };
}, {
    readonly pitch: "length";
    readonly seatRadius: "length";
    readonly depth: "length";
    readonly land: "length";
}>;
export declare const pinionLength: import("../formula/formula.js").Formula<{
    readonly groovePitch: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly wraps: {
        readonly kind: "count";
        readonly min: 0;
    };
    readonly ratio: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly travel: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly spare: {
        readonly kind: "count";
        readonly min: 0;
        readonly default: 1;
    };
}, {
    readonly length: "length";
    readonly walk: "length";
}>;
export declare const drumLength: import("../formula/formula.js").Formula<{
    readonly drumLead: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly largestWrap: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly groovePitch: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly tracks: {
        readonly kind: "count";
        readonly min: 1;
        readonly max: 2;
        readonly whole: true;
        readonly default: 2;
    };
}, "length">;
export declare const matchedDrumLead: import("../formula/formula.js").Formula<{
    readonly pinionPitch: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly ratio: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, "length">;
export declare const fleetAngle: import("../formula/formula.js").Formula<{
    readonly axialOffset: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly span: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "angle">;
export declare const leadMismatch: import("../formula/formula.js").Formula<{
    readonly pinionPitch: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly drumLead: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly ratio: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly travel: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, "length">;
export declare const cordToCut: import("../formula/formula.js").Formula<{
    readonly span: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly drumWrapTotal: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly pinionRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pinionWrap: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly groovePitch: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly endLength: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly tailLength: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly strain: {
        readonly kind: "strain";
        readonly min: 0;
        readonly default: 0;
    };
}, {
    readonly cutLength: "length";
    readonly workingLength: "length";
}>;
