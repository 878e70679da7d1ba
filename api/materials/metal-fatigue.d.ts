export declare const partEnduranceLimit: import("../formula/formula.js").Formula<{
    readonly tensileStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly finish: {
        readonly oneOf: readonly ["ground", "machined", "hotRolled", "forged"];
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly loading: {
        readonly oneOf: readonly ["bending", "axial", "torsion"];
        readonly default: "bending";
    };
    readonly rotating: {
        readonly flag: true;
        readonly default: true;
    };
    readonly temperature: {
        readonly kind: "temperature";
        readonly above: 0;
        readonly default: "20 degC";
    };
    readonly reliability: {
        readonly kind: "ratio";
        readonly min: 0.5;
        readonly below: 1;
        readonly default: 0.99;
    };
    readonly specimenLimit: {
        readonly kind: "stress";
        readonly above: 0;
        readonly optional: true;
    };
}, {
    readonly limit: "stress";
    readonly specimen: "stress";
    readonly surface: "ratio";
    readonly equivalentDiameter: "length";
    readonly size: "ratio";
    readonly load: "ratio";
    readonly warmth: "ratio";
    readonly reliable: "ratio";
}>;
export declare const goodmanSafetyFactor: import("../formula/formula.js").Formula<{
    readonly alternating: {
        readonly kind: "stress";
        readonly min: 0;
    };
    readonly mean: "stress";
    readonly enduranceLimit: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly tensileStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly yieldStrength: {
        readonly kind: "stress";
        readonly above: 0;
        readonly optional: true;
    };
}, {
    readonly factor: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly fatigue: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly firstCycle: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly governs: {
        readonly oneOf: readonly ["fatigue", "yield"];
    };
}>;
export declare const reversedStress: import("../formula/formula.js").Formula<{
    readonly alternating: {
        readonly kind: "stress";
        readonly min: 0;
    };
    readonly mean: "stress";
    readonly tensileStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, "stress">;
export declare const steelLife: import("../formula/formula.js").Formula<{
    readonly reversed: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly tensileStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly enduranceLimit: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly thousandCycleShare: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 0.9;
    };
}, {
    readonly cycles: {
        readonly kind: "count";
        readonly infinite: true;
    };
    readonly coefficient: "stress";
    readonly exponent: "ratio";
    readonly state: {
        readonly oneOf: readonly ["endless", "finite", "lowCycle"];
    };
}>;
