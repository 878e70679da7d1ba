export declare const pinShear: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly planes: {
        readonly kind: "count";
        readonly min: 1;
        readonly max: 2;
        readonly whole: true;
        readonly default: 2;
    };
}, {
    readonly averageStress: "stress";
    readonly peakStress: "stress";
}>;
export declare const forkPinBending: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly cheekThickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly gap: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly eyeThickness: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly arm: "length";
    readonly moment: "torque";
    readonly bendingStress: "stress";
    readonly plasticBendingStress: "stress";
}>;
export declare const pinBearing: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly projectedPressure: "stress";
    readonly peakPressure: "stress";
}>;
export declare const lugNetSection: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly stressConcentration: {
        readonly kind: "ratio";
        readonly min: 1;
        readonly default: 1;
    };
}, {
    readonly averageStress: "stress";
    readonly peakStress: "stress";
}>;
export declare const lugTearOut: import("../formula/formula.js").Formula<{
    readonly force: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly edgeDistance: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly planes: {
        readonly oneOf: readonly ["front", "fortyDegrees"];
        readonly default: "front";
    };
}, {
    readonly planeLength: "length";
    readonly shearStress: "stress";
}>;
