export declare const braidAxialRigidity: import("../formula/formula.js").Formula<{
    readonly filamentModulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly filamentDensity: {
        readonly kind: "density";
        readonly above: 0;
    };
    readonly massPerLength: {
        readonly kind: "massPerLength";
        readonly above: 0;
    };
    readonly braidAngle: {
        readonly kind: "angle";
        readonly min: 0;
        readonly below: "45 deg";
    };
    readonly lateralRatio: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
        readonly default: 0.5;
    };
}, "axialRigidity">;
export declare const wireRopeBreakingLoad: import("../formula/formula.js").Formula<{
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly grade: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly construction: {
        readonly oneOf: readonly ["7x7", "7x19"];
    };
}, "force">;
export declare const wireBendingStress: import("../formula/formula.js").Formula<{
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly wireDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pulleyDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "stress">;
export declare const workingTension: import("../formula/formula.js").Formula<{
    readonly breakingStrength: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly endEfficiency: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly bendEfficiency: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly designFactor: {
        readonly kind: "ratio";
        readonly min: 1;
    };
}, "force">;
export declare const activatedCreepFactor: import("../formula/formula.js").Formula<{
    readonly fromTemperature: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly toTemperature: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly fromStress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly toStress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly activationEnergy: {
        readonly kind: "energy";
        readonly above: 0;
        readonly default: "1.5 eV";
    };
    readonly activationVolume: {
        readonly kind: "volume";
        readonly above: 0;
        readonly default: "0.045 nm^3";
    };
}, "ratio">;
export declare const logarithmicCreep: import("../formula/formula.js").Formula<{
    readonly perDecade: {
        readonly kind: "strain";
        readonly min: 0;
    };
    readonly from: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly to: {
        readonly kind: "time";
        readonly above: 0;
    };
}, "strain">;
export declare const pretensionLeft: import("../formula/formula.js").Formula<{
    readonly pretension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly creepStrain: {
        readonly kind: "strain";
        readonly min: 0;
    };
}, {
    readonly tension: "force";
    readonly state: {
        readonly oneOf: readonly ["taut", "slack"];
    };
}>;
