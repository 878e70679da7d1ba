export declare const findleyStrain: import("../formula/formula.js").Formula<{
    readonly stress: "stress";
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly creepCoefficient: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly creepExponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
    };
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly referenceTime: {
        readonly kind: "time";
        readonly above: 0;
        readonly default: "1 h";
    };
    readonly strength: {
        readonly kind: "stress";
        readonly above: 0;
        readonly optional: true;
    };
}, "strain">;
export declare const findleySinhStrain: import("../formula/formula.js").Formula<{
    readonly stress: "stress";
    readonly elasticStrain: {
        readonly kind: "strain";
        readonly min: 0;
    };
    readonly elasticStress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly creepStrain: {
        readonly kind: "strain";
        readonly min: 0;
    };
    readonly creepStress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly creepExponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
    };
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly referenceTime: {
        readonly kind: "time";
        readonly above: 0;
        readonly default: "1 h";
    };
}, "strain">;
export declare const creepModulus: import("../formula/formula.js").Formula<{
    readonly stress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly strain: {
        readonly kind: "strain";
        readonly above: 0;
    };
}, "modulus">;
export declare const nortonBaileyStrain: import("../formula/formula.js").Formula<{
    readonly stress: {
        readonly kind: "stress";
        readonly min: 0;
    };
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly referenceStrain: {
        readonly kind: "strain";
        readonly above: 0;
    };
    readonly referenceStress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly referenceTime: {
        readonly kind: "time";
        readonly above: 0;
        readonly default: "1 h";
    };
    readonly stressExponent: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly timeExponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
}, "strain">;
export declare const creepUnderSteps: import("../formula/formula.js").Formula<{
    readonly stresses: {
        readonly list: {
            readonly kind: "stress";
            readonly min: 0;
        };
    };
    readonly durations: {
        readonly list: {
            readonly kind: "time";
            readonly min: 0;
        };
    };
    readonly rule: {
        readonly oneOf: readonly ["strainHardening", "timeHardening"];
        readonly default: "strainHardening";
    };
    readonly referenceStrain: {
        readonly kind: "strain";
        readonly above: 0;
    };
    readonly referenceStress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly referenceTime: {
        readonly kind: "time";
        readonly above: 0;
        readonly default: "1 h";
    };
    readonly stressExponent: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly timeExponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
}, {
    readonly strain: "strain";
    readonly afterEach: {
        readonly list: "strain";
    };
}>;
export declare const findleyTimeToStrain: import("../formula/formula.js").Formula<{
    readonly strain: {
        readonly kind: "strain";
        readonly above: 0;
    };
    readonly stress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly creepCoefficient: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly creepExponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
    };
    readonly referenceTime: {
        readonly kind: "time";
        readonly above: 0;
        readonly default: "1 h";
    };
}, {
    readonly time: "time";
    readonly state: {
        readonly oneOf: readonly ["byCreep", "onLoading"];
    };
}>;
export declare const powerLawRelaxationModulus: import("../formula/formula.js").Formula<{
    readonly compliance: {
        readonly kind: "creepCompliance";
        readonly above: 0;
    };
    readonly creepExponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
    };
}, "modulus">;
export declare const findleyRelaxationModulus: import("../formula/formula.js").Formula<{
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly creepCoefficient: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly creepExponent: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
    };
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly referenceTime: {
        readonly kind: "time";
        readonly above: 0;
        readonly default: "1 h";
    };
}, "modulus">;
