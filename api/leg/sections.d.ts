export declare const boxBendingStress: import("../formula/formula.js").Formula<{
    readonly moment: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly depth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly wall: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly axialForce: {
        readonly kind: "force";
        readonly min: 0;
        readonly default: "0 N";
    };
}, {
    readonly stress: "stress";
    readonly secondMoment: "secondMomentOfArea";
    readonly area: "area";
}>;
export declare const roundBendingStress: import("../formula/formula.js").Formula<{
    readonly moment: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly holeDiameter: {
        readonly kind: "length";
        readonly min: 0;
        readonly default: "0 mm";
    };
}, "stress">;
export declare const boxTorsionRigidity: import("../formula/formula.js").Formula<{
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly depth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly wall: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly poissonRatio: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 0.5;
    };
}, "bendingRigidity">;
