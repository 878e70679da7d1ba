export declare const activatedPretensionLeft: import("../formula/formula.js").Formula<{
    readonly pretension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly fibreArea: {
        readonly kind: "area";
        readonly above: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly referenceRate: {
        readonly kind: "strainRate";
        readonly min: 0;
    };
    readonly referenceStress: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly referenceTemperature: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly temperature: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
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
}, {
    readonly tension: "force";
    readonly share: "ratio";
}>;
export declare const logarithmicPretensionLeft: import("../formula/formula.js").Formula<{
    readonly pretension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
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
}, {
    readonly tension: "force";
    readonly share: "ratio";
}>;
export declare const bendingCycles: import("../formula/formula.js").Formula<{
    readonly bendRatio: {
        readonly kind: "ratio";
        readonly min: 4;
    };
    readonly tension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly ropeDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly grade: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly b0: "ratio";
    readonly b1: "ratio";
    readonly b2: "ratio";
    readonly b3: "ratio";
    readonly corrections: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly default: 1;
    };
}, "count">;
export declare const wireRopeRigidity: import("../formula/formula.js").Formula<{
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly stretchConstant: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, {
    readonly axialRigidity: "axialRigidity";
    readonly circleModulus: "modulus";
}>;
